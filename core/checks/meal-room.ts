import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';
import { eaters } from '../plan/fill.js';

/** Does the pot hold the meal, and in how many rounds? */
export const mealRoom = defineCheck({
  id: 'meal-room',
  title: 'Room for the meal',
  asks: 'Does the pot hold one hot meal for those who eat from it, in how many rounds?',
  costs: 'The meal comes in rounds, or boils over.',
  needs: ['onePot', 'pots', 'stoves', 'trip', 'plan'],
  cites: ['cp-meal-portion', 'cp-fill-ceiling'],
  limits: 'Portions are what most people eat; a meal rehydrated in its bag needs only its water.',
  options: {
    /** A shortfall under this share is inside what labels are off by: measured −2 to +7 % (`cp-label-tolerance`). */
    labelSlack: 0.02,
    /** Rounds from which it falls short: for one, and for several from one pot (common practice). */
    failsAt: { one: 2, several: 3 },
    boilOnlyCeiling: 0.9,
  },
  messages: {
    'one-round': 'One meal for {people} fits in one round.',
    'least-only': 'The least portion fits in one round; a full one takes two.',
    rounds: 'One meal takes {rounds#} rounds.',
    'size-missing': 'Without its size, nobody can tell whether it holds a meal.',
    'no-pot': 'There is a stove and nothing on the list to cook in.',
    margin: '{room#} of {need}',
    'margin-missing': 'size not given',
    'margin-none': 'no pot',
    bigger: 'A pot of {brim} or more.',
    'bigger-or-boil': 'A pot of {brim} or more. Or boil-only in this one: {boilRoom} of room.',
    'add-pot': 'Add a pot of {brim} or more.',
    question: '“{name}”: how much does it hold?',
    brimLine: 'to the brim',
    potsLine: 'pots like it',
    ceilingLine: 'the share that is filled, {style}',
    roomLine: 'room in one round',
    needLine: 'one meal for {people}, 473–591 mL a head',
    'boil-only': 'water alone',
    simmer: 'when it simmers',
    scratch: 'when it is cooked in',
    onePerson: 'one person',
    manyPeople: '{count#} people',
  },
  judge({ onePot, pots, stoves, trip, plan }, options): Verdict[] {
    const pot = pots.find((vessel) => valueOf(vessel.capacityMl) !== undefined) ?? pots[0];
    const style = valueOf(trip.mealStyle) ?? 'simmer';
    if (pot === undefined) {
      if (onePot || stoves.length === 0) return [];
      const brim = figure(upTo10(plan.leastMl / plan.ceiling), 'mL');
      const evidence = [{ message: 'margin-none', found: 'absent' } as const, stoves[0]!.evidence];
      return [
        { grade: 'falls-short', message: 'no-pot', margin: 'margin-none', figures: { brim }, evidence, fix: 'add-pot' },
      ];
    }
    const capacity = pot.capacityMl;
    if (capacity.grounds === 'missing') {
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

    const people = eaters(pot, trip);
    const alike = people === 1 ? 1 : (valueOf(pot.quantity) ?? 1);
    const brim = capacity.value * alike;
    const room = brim * plan.ceiling;
    const rounds = (needMl: number, roomMl = room) =>
      Math.ceil((needMl * people) / (roomMl * (1 + options.labelSlack)) - 1e-9);
    const least = rounds(plan.leastMl);
    const full = rounds(plan.fullMl);
    const fails = people === 1 ? options.failsAt.one : options.failsAt.several;
    const grade = least >= fails ? 'falls-short' : full === 1 ? 'holds-up' : 'costs-you';
    // The smallest pot that lifts the grade: out of "falls short", or to a full portion in one round.
    const wanted = grade === 'falls-short' ? (plan.leastMl * people) / (fails - 1) : plan.fullMl * people;
    const boilRoom = brim * options.boilOnlyCeiling;
    const boiled = rounds(plan.leastMl, boilRoom);
    const boilHelps = plan.ceiling < options.boilOnlyCeiling && boiled < least && boiled < fails;
    const need = {
      low: plan.leastMl * people,
      likely: ((plan.leastMl + plan.fullMl) / 2) * people,
      high: plan.fullMl * people,
    };
    const figures: Figures = {
      people: people === 1 ? 'onePerson' : 'manyPeople',
      count: figure(people, 'people'),
      room: figure(room, 'mL', 0),
      need: figure(need, 'mL', 0),
      rounds: figure({ low: least, likely: least, high: full }, 'rounds'),
      brim: figure(upTo10(wanted / plan.ceiling / alike), 'mL'),
      boilRoom: figure(boilRoom, 'mL', 0),
      style,
    };
    const sum: SumLine[] = [
      { sign: '', figure: figure(capacity.value, 'mL', 0), label: 'brimLine', grounds: capacity.grounds },
      ...(alike > 1 ? [{ sign: '×', figure: figure(alike, ''), label: 'potsLine', grounds: 'stated' } as const] : []),
      {
        sign: '×',
        figure: figure(plan.ceiling, '', 2),
        label: 'ceilingLine',
        grounds: 'common-practice',
        cites: ['cp-fill-ceiling'],
      },
      { sign: '=', figure: figure(room, 'mL', 0), label: 'roomLine', grounds: 'worked-out' },
      {
        sign: '',
        figure: figure(need, 'mL', 0),
        label: 'needLine',
        grounds: 'common-practice',
        cites: ['cp-meal-portion'],
      },
    ];
    return [
      {
        grade,
        message: full === 1 ? 'one-round' : least === 1 ? 'least-only' : 'rounds',
        margin: 'margin',
        figures,
        sum,
        evidence: [pot.evidence],
        ...(grade === 'holds-up' ? {} : { fix: boilHelps ? 'bigger-or-boil' : 'bigger' }),
        assumptions: assumed([
          [phrase`the number of people`, trip.people],
          [phrase`how they cook`, trip.mealStyle],
          [phrase`what the pot holds`, capacity],
        ]),
        item: pot.item,
      },
    ];
  },
});

function upTo10(ml: number): number {
  return Math.ceil(ml / 10 - 1e-9) * 10;
}
