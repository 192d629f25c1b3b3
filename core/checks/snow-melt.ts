import { defineCheck, figure, type Verdict } from '../model/check.js';
import { SNOW_KG_PER_M3 } from '../data/snow.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { assumed } from '../plan/assumed.js';

/** When water comes from snow, is there a pot to melt it? */
export const snowMelt = defineCheck({
  id: 'snow-melt',
  title: 'Melting snow',
  asks: 'When water comes from snow, is there a pot to melt it in, and at what price?',
  costs: 'Hours over the stove, much fuel, or no water.',
  needs: ['onePot', 'vessels', 'stoves', 'trip', 'plan'],
  cites: ['cp-winter-pot', 'cp-snow-loads', 'cp-snow-starter', 'cuffey-paterson'],
  limits:
    'Experts melt in small pots by choice; the price is shown, the choice is theirs. Snow differs from slope to slope.',
  options: {
    /** Pot wanted, mL: for one, for two, for each further person, and at most (`cp-winter-pot`). */
    one: 2000,
    two: 3000,
    further: 500,
    most: 5000,
    /** Shares of the wanted pot from which it holds up, and costs you. */
    holds: 0.9,
    costs: 0.65,
  },
  messages: {
    enough: 'A {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.',
    small: 'A {have} pot means {loads#} loads of snow a day.',
    'small-if': 'If snow is the water, a {have} pot means {loads#} loads a day.',
    'no-price': 'A {have} pot is small to melt the water of {people}.',
    'no-price-good': 'A {have} pot is large enough to melt the water of {people}.',
    'no-pot': 'Nothing on the list melts snow: no metal pot.',
    'size-missing': 'Without its size, nobody can tell whether it melts enough snow.',
    margin: '{have} of {wanted}',
    'margin-none': 'no melt pot',
    'margin-missing': 'size not given',
    'fix-bigger': 'A lidded metal pot of {better} or more: {betterLoads#} loads.',
    'fix-add': 'Add a lidded metal pot of {wanted}.',
    question: '“{name}”: how much does it hold?',
    'caution-dry': 'A dry pot of snow scorches. Start with water in it, feed snow so that it stays slush, lid on.',
    onePerson: 'one person',
    waterLine: 'a day, {each} for {people}',
    potLine: 'the pot, to the brim',
    snowLine: 'water in {snow} snow, by volume',
    loadsLine: 'loads a day',
    minutesLine: 'over the stove a day',
    gramsLine: 'fuel a day',
    packed: 'hand-packed',
    settled: 'settled',
    'wind-packed': 'wind-packed',
    new: 'new',
  },
  judge({ onePot, vessels, stoves, trip, plan }, options): Verdict[] {
    const water = valueOf(trip.waterFrom);
    if (water === undefined || water === 'liquid') return [];
    const people = valueOf(trip.people) ?? 1;
    const wanted = people === 1 ? options.one : Math.min(options.most, options.two + options.further * (people - 2));
    const melter = plan.meltPot === null ? undefined : vessels[plan.meltPot];
    const who = people === 1 ? 'onePerson' : `${people} people`;
    if (melter === undefined) {
      const [unsized] = vessels.filter((vessel) => vessel.capacityMl.grounds === 'missing' && vessel.kind === 'pot');
      if (unsized !== undefined) {
        const question = {
          ...(unsized.item === null ? {} : { item: unsized.item }),
          field: 'capacityMl',
          message: 'question',
        } as const;
        return [
          {
            grade: 'cant-tell',
            message: 'size-missing',
            margin: 'margin-missing',
            figures: { name: unsized.name },
            evidence: [unsized.evidence],
            question,
            item: unsized.item,
          },
        ];
      }
      if (onePot || (stoves.length === 0 && vessels.length === 0)) return [];
      const evidence = [{ quote: 'no metal pot', found: 'absent' } as const];
      return [
        {
          grade: 'falls-short',
          message: 'no-pot',
          margin: 'margin-none',
          figures: { wanted: figure(wanted / 1000, 'L', 1) },
          evidence,
          fix: 'fix-add',
        },
      ];
    }
    const have = valueOf(melter.capacityMl) ?? 0;
    const share = have / wanted;
    const grade = share >= options.holds ? 'holds-up' : share >= options.costs ? 'costs-you' : 'falls-short';
    const melt = plan.tasks.find((task) => task.id === 'melt');
    const snow = valueOf(trip.snow) ?? 'packed';
    const density = SNOW_KG_PER_M3[snow];
    // The smallest pot that lifts the grade, up to the next 100 mL.
    const better = Math.ceil((wanted * (grade === 'falls-short' ? options.costs : options.holds)) / 100 - 1e-9) * 100;
    const scaled = (loads: number) => Math.ceil((loads * have) / better - 1e-9);
    const figures: Figures = {
      people: who,
      have: figure(have / 1000, 'L', 1),
      wanted: figure(wanted / 1000, 'L', 1),
      better: figure(better / 1000, 'L', 1),
      snow,
      ...(melt === undefined
        ? {}
        : {
            loads: figure(melt.rounds, 'loads'),
            each: figure(melt.litres.likely / people, 'L', 1),
            betterLoads: figure(
              { low: scaled(melt.rounds.low), likely: scaled(melt.rounds.likely), high: scaled(melt.rounds.high) },
              'loads',
            ),
          }),
    };
    const sum: SumLine[] =
      melt === undefined
        ? []
        : [
            {
              sign: '',
              figure: figure(melt.litres.likely, 'L', 1),
              label: 'waterLine',
              grounds: 'common-practice',
              cites: ['cp-snow-water-day'],
            },
            {
              sign: '÷',
              figure: figure(have / 1000, 'L', 1),
              label: 'potLine',
              grounds: melter.capacityMl.grounds === 'missing' ? 'assumed' : melter.capacityMl.grounds,
            },
            {
              sign: '÷',
              figure: figure(
                { low: density.low / 1000, likely: density.likely / 1000, high: density.high / 1000 },
                '',
                2,
              ),
              label: 'snowLine',
              grounds: snow === 'packed' ? 'common-practice' : 'published',
              cites: [snow === 'packed' ? 'cp-snow-loads' : 'cuffey-paterson'],
            },
            { sign: '=', figure: figure(melt.rounds, ''), label: 'loadsLine', grounds: 'worked-out' },
            { sign: '', figure: figure(melt.minutes, 'min', 0), label: 'minutesLine', grounds: 'worked-out' },
            { sign: '', figure: figure(melt.grams, 'g', 0), label: 'gramsLine', grounds: 'worked-out' },
          ];
    const small = water === 'snow' ? 'small' : 'small-if';
    return [
      {
        grade,
        message:
          melt === undefined
            ? grade === 'holds-up'
              ? 'no-price-good'
              : 'no-price'
            : grade === 'holds-up'
              ? 'enough'
              : small,
        margin: 'margin',
        figures,
        sum,
        evidence: [melter.evidence],
        ...(grade === 'holds-up' ? {} : { fix: melt === undefined ? 'fix-add' : 'fix-bigger' }),
        assumptions: assumed([
          ['where the water comes from', trip.waterFrom],
          ['the number of people', trip.people],
          ['the snow', trip.snow],
        ]),
        cautions: grade === 'holds-up' ? [] : ['caution-dry'],
        item: melter.item,
      },
    ];
  },
});
