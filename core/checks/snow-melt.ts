import { defineCheck, figure, type Verdict } from '../model/check.js';
import { SNOW_KG_PER_M3 } from '../data/snow.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import { loadsPerLitre } from '../physics/snow.js';
import { assumed } from '../plan/assumed.js';
import { MELT_POT, meltPotWantedMl } from '../plan/melt.js';
import { isMetal } from '../plan/pots.js';
import { times } from '../plan/ranges.js';

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
  options: MELT_POT,
  messages: {
    together: 'The {pots#} pots, {have} in all, melt the water of {people}: {loads#} {loads:load|loads} of each a day.',
    'together-if':
      'If snow is the water, the {pots#} pots, {have} in all, melt that of {people}: {loads#} {loads:load|loads} of each a day.',
    'enough-if': 'If snow is the water, a {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.',
    enough: 'A {have} pot melts the water of {people}: {loads#} {loads:load|loads} a day.',
    small: 'A {have} pot means {loads#} {loads:load|loads} of snow a day.',
    'small-if': 'If snow is the water, a {have} pot means {loads#} {loads:load|loads} a day.',
    'no-price': 'A {have} pot is small to melt the water of {people}.',
    'no-price-good': 'A {have} pot is large enough to melt the water of {people}.',
    'no-price-if': 'If snow is the water, a {have} pot is small to melt the water of {people}.',
    'no-price-good-if': 'If snow is the water, a {have} pot is large enough for {people}.',
    'no-pot': 'No pot to melt snow in: none of metal.',
    'no-pot-if': 'If snow is the water, there is no pot to melt it in: none of metal.',
    'size-missing': 'Without its size, nobody can tell whether it melts enough snow.',
    'size-missing-if': 'If snow is the water, nobody can tell without its size whether the pot melts enough.',
    margin: '{have} of {wanted}',
    'margin-none': 'no melt pot',
    'margin-missing': 'size not given',
    'fix-bigger': 'A lidded metal pot of {better} or more: {betterLoads#} {betterLoads:load|loads}.',
    'fix-add': 'Add a lidded metal pot of {wanted}.',
    question: '“{name}”: how much does it hold?',
    'caution-dry': 'A dry pot of snow scorches. Start with water in it, feed snow so that it stays slush, lid on.',
    absent: 'no metal pot',
    onePerson: 'one person',
    manyPeople: '{count#} people',
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
    const maybe = water === 'either' ? '-if' : '';
    const { melt: melters } = plan;
    const everybody = valueOf(trip.people) ?? 1;
    const people = melters?.people ?? everybody;
    const wanted = meltPotWantedMl(people);
    const who = people === 1 ? 'onePerson' : 'manyPeople';
    const have = melters?.brimMl ?? 0;
    const share = have / wanted;
    const grade = share >= options.holds ? 'holds-up' : share >= options.costs ? 'costs-you' : 'falls-short';
    // A pot without a size may be the larger one.
    const unsized = vessels.find(
      (vessel) => vessel.kind === 'pot' && vessel.capacityMl.grounds === 'missing' && isMetal(vessel),
    );
    if (unsized !== undefined && grade !== 'holds-up') {
      return [
        {
          grade: 'cant-tell',
          message: `size-missing${maybe}`,
          margin: 'margin-missing',
          figures: { name: unsized.name },
          evidence: [unsized.evidence],
          question: {
            ...(unsized.item === null ? {} : { item: unsized.item }),
            field: 'capacityMl',
            message: 'question',
          },
          item: unsized.item,
        },
      ];
    }
    if (melters === null) {
      const [other] = vessels;
      if (other === undefined && stoves.length === 0) return [];
      return [
        {
          grade: 'falls-short',
          message: `no-pot${maybe}`,
          margin: 'margin-none',
          figures: { wanted: figure(wanted / 1000, 'L', 1) },
          evidence: onePot && other !== undefined ? [other.evidence] : [{ message: 'absent', found: 'absent' }],
          fix: 'fix-add',
        },
      ];
    }
    const melt = plan.tasks.find((task) => task.id === 'melt');
    const snow = valueOf(trip.snow) ?? 'packed';
    const density = SNOW_KG_PER_M3[snow];
    // The smallest pot that holds up, up to the next 100 mL.
    const betterMl = Math.ceil((wanted * options.holds) / 100 - 1e-9) * 100;
    const litres = times(melters.eachL, people);
    const loads = (kgPerM3: number, end: 'low' | 'likely' | 'high') =>
      Math.ceil(litres[end] * loadsPerLitre(betterMl, kgPerM3) - 1e-9);
    const figures: Figures = {
      people: who,
      count: figure(people, 'people'),
      pots: figure(melters.vessels.length, ''),
      have: figure(have / 1000, 'L', 1),
      wanted: figure(wanted / 1000, 'L', 1),
      better: figure(betterMl / 1000, 'L', 1),
      snow,
      ...(melt === undefined
        ? {}
        : {
            loads: figure(melt.rounds, 'loads'),
            each: figure(melters.eachL, 'L', 1),
            betterLoads: figure(
              {
                low: loads(density.high, 'low'),
                likely: loads(density.likely, 'likely'),
                high: loads(density.low, 'high'),
              },
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
              figure: figure(litres, 'L', 1),
              label: 'waterLine',
              grounds: 'common-practice',
              cites: ['cp-snow-water-day'],
            },
            {
              sign: '÷',
              figure: figure(have / 1000, 'L', 1),
              label: 'potLine',
              grounds: melters.vessels.length > 1 ? 'worked-out' : groundsOf(vessels[melters.vessels[0]!]!),
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
            {
              sign: '',
              figure: figure(times(melt.grams, people / everybody), 'g', 0),
              label: 'gramsLine',
              grounds: 'worked-out',
            },
          ];
    const large = grade === 'holds-up';
    const message =
      melt === undefined
        ? large
          ? 'no-price-good'
          : 'no-price'
        : large
          ? melters.vessels.length > 1
            ? 'together'
            : 'enough'
          : 'small';
    return [
      {
        grade,
        message: `${message}${maybe}`,
        margin: 'margin',
        figures,
        sum,
        evidence: [...new Set(melters.vessels)].map((index) => vessels[index]!.evidence),
        ...(grade === 'holds-up' ? {} : { fix: melt === undefined ? 'fix-add' : 'fix-bigger' }),
        assumptions: assumed([
          [phrase`where the water comes from`, trip.waterFrom],
          [phrase`the number of people`, trip.people],
          [phrase`the snow`, trip.snow],
        ]),
        cautions: ['caution-dry'],
        item: vessels[melters.vessels[0]!]!.item,
      },
    ];
  },
});

function groundsOf({ capacityMl }: Vessel): 'stated' | 'worked-out' | 'assumed' {
  return capacityMl.grounds === 'missing' ? 'assumed' : capacityMl.grounds;
}
