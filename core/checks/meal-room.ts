import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import type { Meal } from '../model/plan.js';
import { assumed } from '../plan/assumed.js';
import { fillings, ROUNDS } from '../plan/rounds.js';

/** Does the pot hold the meal, and in how many rounds? */
export const mealRoom = defineCheck({
  id: 'meal-room',
  title: 'Room for the meal',
  asks: 'Do the pots on the flames hold one hot meal for those who eat from them, in how many rounds?',
  costs: 'The meal comes in rounds, or boils over.',
  needs: ['onePot', 'pots', 'vessels', 'stoves', 'trip', 'plan'],
  cites: ['cp-meal-portion', 'cp-fill-ceiling'],
  limits: 'Portions are what most people eat; a meal rehydrated in its bag needs only its water.',
  options: { ...ROUNDS, boilOnlyCeiling: 0.9 },
  messages: {
    'one-round': 'One meal for {people} fits in one round.',
    'side-by-side': 'One meal for {people} fits in {pots#} pots side by side.',
    waits: 'Each has a pot of their own: the last eats {wait} after the first.',
    'waits-unknown': 'Each has a pot of their own, and the flames are used {rounds#} times one after another.',
    'least-only': 'The least portion fits in one round; a full one takes two.',
    rounds: 'One meal takes {rounds#} rounds.',
    'size-missing': 'Without its size, nobody can tell whether it holds a meal.',
    'no-pot': 'There is a stove and nothing on the list to cook in.',
    margin: '{room#} of {need}',
    'margin-missing': 'size not given',
    'margin-none': 'no pot',
    bigger: 'A pot of {brim} or more.',
    'bigger-or-boil': 'A pot of {brim} or more. Or boil-only in this one: {boilRoom} of room.',
    beside: 'A pot of {beside} beside what is there, on a flame of its own.',
    flames: 'Flames for {flames#} pots at once.',
    'add-pot': 'Add a pot of {brim} or more.',
    question: '“{name}”: how much does it hold?',
    brimLine: 'to the brim',
    besideLine: 'and beside it',
    ceilingLine: 'the share that is filled, {style}',
    roomLine: 'room in one round',
    needLine: 'one meal for {people}, 473–591 mL a head',
    'boil-only': 'water alone',
    simmer: 'when it simmers',
    scratch: 'when it is cooked in',
    onePerson: 'one person',
    manyPeople: '{count#} people',
  },
  judge({ onePot, pots, vessels, stoves, trip, plan }, options): Verdict[] {
    const pot = pots[0];
    const { meal } = plan;
    const style = valueOf(trip.mealStyle) ?? 'simmer';
    if (pot === undefined) {
      if (onePot || stoves.length === 0) return [];
      const brim = figure(upTo10(plan.leastMl / plan.ceiling), 'mL');
      const evidence = [{ message: 'margin-none', found: 'absent' } as const, stoves[0]!.evidence];
      return [
        { grade: 'falls-short', message: 'no-pot', margin: 'margin-none', figures: { brim }, evidence, fix: 'add-pot' },
      ];
    }
    if (meal === null) {
      const field = onePot || pot.item === null ? {} : { item: pot.item };
      const question = { ...field, field: 'capacityMl', message: 'question' } as const;
      return [
        {
          grade: 'cant-tell',
          message: 'size-missing',
          margin: 'margin-missing',
          figures: { name: pot.name },
          evidence: [pot.evidence],
          question,
          item: pot.item,
        },
      ];
    }

    const { people, brimMl, roomMl, grade } = meal;
    const used = meal.vessels.map((index) => vessels[index]!);
    const [largest, ...others] = used;
    const need = {
      low: plan.leastMl * people,
      likely: ((plan.leastMl + plan.fullMl) / 2) * people,
      high: plan.fullMl * people,
    };
    // The smallest change that lifts the grade: out of "falls short", or to a full portion in one round.
    const fails = people === 1 ? options.failsAt.one : options.failsAt.several;
    const once = Math.round(meal.turns.low / meal.servings.low);
    const wanted = grade === 'falls-short' ? need.low / (fails - 1) : need.high;
    const boilRoom = brimMl * options.boilOnlyCeiling;
    const boiled = fillings(need.low, boilRoom) * once;
    const boilHelps = plan.ceiling < options.boilOnlyCeiling && boiled < meal.turns.low && boiled < fails;
    const waits = meal.servings.high === 1 && once > 1;
    const fix = waits ? 'flames' : others.length > 0 ? 'beside' : boilHelps ? 'bigger-or-boil' : 'bigger';
    const figures: Figures = {
      people: people === 1 ? 'onePerson' : 'manyPeople',
      count: figure(people, 'people'),
      pots: figure(used.length, ''),
      room: figure(roomMl, 'mL', 0),
      need: figure(need, 'mL', 0),
      rounds: figure(meal.turns, 'rounds'),
      brim: figure(upTo10(wanted / plan.ceiling), 'mL'),
      beside: figure(upTo10(Math.max(0, wanted / plan.ceiling - brimMl)), 'mL'),
      flames: figure(meal.own ? meal.alike : used.length * meal.alike, ''),
      wait: figure(meal.waitsMin ?? 0, 'min', 0),
      boilRoom: figure(boilRoom, 'mL', 0),
      style,
    };
    const brimLine = (vessel: Vessel, sign: SumLine['sign']): SumLine => ({
      sign,
      figure: figure(valueOf(vessel.capacityMl) ?? 0, 'mL', 0),
      label: sign === '' ? 'brimLine' : 'besideLine',
      grounds: vessel.capacityMl.grounds === 'missing' ? 'assumed' : vessel.capacityMl.grounds,
    });
    const sum: SumLine[] = [
      brimLine(largest!, ''),
      ...others.map((vessel) => brimLine(vessel, '+')),
      {
        sign: '×',
        figure: figure(plan.ceiling, '', 2),
        label: 'ceilingLine',
        grounds: 'common-practice',
        cites: ['cp-fill-ceiling'],
      },
      { sign: '=', figure: figure(roomMl, 'mL', 0), label: 'roomLine', grounds: 'worked-out' },
      {
        sign: '',
        figure: figure(need, 'mL', 0),
        label: 'needLine',
        grounds: 'common-practice',
        cites: ['cp-meal-portion'],
      },
    ];
    const told = [...new Set(used)];
    return [
      {
        grade,
        message: messageOf(meal),
        margin: 'margin',
        figures,
        sum,
        evidence: told.map(({ evidence }) => evidence),
        ...(grade === 'holds-up' ? {} : { fix }),
        assumptions: assumed([
          [phrase`the number of people`, trip.people],
          [phrase`how they cook`, trip.mealStyle],
          ...told.map(({ capacityMl }) => [phrase`what the pot holds`, capacityMl] as const),
        ]),
        item: largest!.item,
      },
    ];
  },
});

function messageOf({ own, servings, turns, vessels, waitsMin }: Meal): string {
  if (turns.high === 1) return vessels.length > 1 ? 'side-by-side' : 'one-round';
  if (own && servings.high === 1) return waitsMin === null ? 'waits-unknown' : 'waits';
  return turns.low === 1 && turns.high === 2 ? 'least-only' : 'rounds';
}

function upTo10(ml: number): number {
  return Math.ceil(ml / 10 - 1e-9) * 10;
}
