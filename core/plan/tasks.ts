import { SNOW_KG_PER_M3 } from '../data/snow.js';
import { valueOf } from '../model/given.js';
import type { Range, SumLine } from '../model/finding.js';
import type { Vessel } from '../model/kit.js';
import type { Task } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { heat, hold } from '../physics/heating.js';
import { meltSnow } from '../physics/snow.js';
import { eaters } from './fill.js';
import { same, surfacesOf, type Heat } from './flame.js';

/** Water melted for a person to drink and cook with, L a day: planned inside what practitioners give (`cp-snow-water-day`). */
const MELT_L = 3.5;
/** Water as it is found: a cold stream; melted snow is at 0 °C. */
export const STREAM_C = 10;
/** Minutes that food simmers, where it is cooked in the pot: assumed. */
export const SIMMER_MIN: Range = { low: 5, likely: 10, high: 20 };
/** Water that stays in the pot to start each load, as a share of it (`cp-snow-starter`). */
const STARTER = 0.1;

/** A flame too weak for its pot, and where it stalls, °C. */
export interface Stall {
  readonly stallsC: number;
}

export function eachEnd(value: (end: keyof Range) => number): Range {
  return { low: value('low'), likely: value('likely'), high: value('high') };
}

/** Where each person cooks in a pot of their own: how many pots, and how many of them have to wait for one another. */
function potsOf(pot: Vessel, trip: GroundedTrip): { people: number; pots: number; turns: number } {
  const people = valueOf(trip.people) ?? 1;
  const pots = people / eaters(pot, trip);
  // Who is told to carry a pot is told to carry what heats it; several pots on a list share its stove.
  return { people, pots, turns: pot.perPerson ? 1 : pots };
}

/** Snow to water of 0 °C, load by load; the starter soaks into the snow, so that each load packs the pot to its brim. */
export function meltTask(pot: Vessel, capacityMl: number, trip: GroundedTrip, flame: Heat): Task {
  const { people, pots, turns } = potsOf(pot, trip);
  const litres = people * MELT_L;
  const snow = valueOf(trip.snow) ?? 'packed';
  const starterMl = capacityMl * STARTER;
  const { loads, ...each } = meltSnow({
    ...flame,
    litres: litres / pots,
    roomMl: capacityMl + starterMl,
    starterMl,
    snowKgPerM3: SNOW_KG_PER_M3[snow],
    snowC: Math.max(-60, Math.min(0, valueOf(trip.lowC) ?? 0)),
  });
  const energyKj = eachEnd((end) => pots * each.energyKj[end]);
  const grams = eachEnd((end) => pots * each.grams[end]);
  return {
    id: 'melt',
    litres: same(litres),
    rounds: eachEnd((end) => Math.ceil(loads[end])),
    energyKj,
    minutes: eachEnd((end) => turns * each.minutes[end]),
    grams,
    sum: [
      line('', people, 'people', 'people'),
      {
        sign: '×',
        figure: { value: MELT_L, unit: 'L' },
        label: 'melt-each',
        grounds: 'common-practice',
        cites: ['cp-snow-water-day'],
      },
      { sign: '=', figure: { value: litres, unit: 'L' }, label: 'water', grounds: 'worked-out' },
      ...fuelLines(energyKj, grams, flame),
    ],
  };
}

/** Water brought to the boil in fillings of the pot; food that is cooked in it simmers on. */
export function boilTask(
  id: 'meal' | 'drinks',
  {
    eachMl,
    pot,
    capacityMl,
    roomMl,
    boilC,
    trip,
    flame,
  }: {
    readonly eachMl: Range;
    readonly pot: Vessel;
    readonly capacityMl: number;
    readonly roomMl: number;
    readonly boilC: number;
    readonly trip: GroundedTrip;
    readonly flame: Heat;
  },
): Task | Stall {
  const { people, pots, turns } = potsOf(pot, trip);
  const meals = id === 'meal' ? (valueOf(trip.hotMealsPerDay) ?? 1) : 1;
  const litres = eachEnd((end) => (people * meals * eachMl[end]) / 1000);
  const rounds = eachEnd((end) => Math.ceil((1000 * litres[end]) / pots / roomMl - 1e-9));
  const fromC = startC(valueOf(trip.waterFrom) ?? 'liquid');
  const simmers = id === 'meal' && valueOf(trip.mealStyle) !== 'boil-only';
  const oneRound = (end: keyof Range): Stall | Pick<Task, 'energyKj' | 'minutes' | 'grams'> => {
    const massKg = litres[end] / pots / Math.max(1, rounds[end]);
    const surfaces = surfacesOf(pot, capacityMl, 1000 * massKg);
    const heated = heat({ ...flame, ...surfaces, massKg, fromC: fromC[end], toC: boilC });
    if (!heated.reaches) return heated;
    const minutes = simmers ? SIMMER_MIN[end] : 0;
    const held = hold({ ...flame, ...surfaces, atC: boilC, minutes });
    return {
      energyKj: eachEnd((e) => heated.energyKj[e] + held.energyKj),
      minutes: eachEnd((e) => heated.minutes[e] + minutes),
      grams: eachEnd((e) => heated.grams[e] + held.grams[e]),
    };
  };
  const [least, usual, most] = [oneRound('low'), oneRound('likely'), oneRound('high')];
  if ('stallsC' in least) return least;
  if ('stallsC' in usual) return usual;
  if ('stallsC' in most) return most;
  const all = (name: 'energyKj' | 'minutes' | 'grams', at: number): Range => ({
    low: at * rounds.low * least[name].low,
    likely: at * rounds.likely * usual[name].likely,
    high: at * rounds.high * most[name].high,
  });
  const energyKj = all('energyKj', pots);
  const grams = all('grams', pots);
  return {
    id,
    litres,
    rounds,
    energyKj,
    minutes: all('minutes', turns),
    grams,
    sum: [
      line('', people, 'people', 'people'),
      ...(meals === 1 ? [] : [line('×', meals, '', 'meals')]),
      {
        sign: '×',
        figure: { value: eachMl, unit: 'mL' },
        label: `${id}-each`,
        grounds: 'common-practice',
        cites: [id === 'meal' ? 'cp-meal-portion' : 'cp-hot-drink'],
      },
      { sign: '=', figure: { value: litres, unit: 'L' }, label: 'water', grounds: 'worked-out' },
      ...fuelLines(energyKj, grams, flame),
    ],
  };
}

/** °C that water starts from; the warmest is the low end. Between stream and snow, halfway is likely. */
function startC(from: 'liquid' | 'snow' | 'either'): Range {
  if (from === 'snow') return { low: 0, likely: 0, high: 0 };
  if (from === 'liquid') return { low: STREAM_C, likely: STREAM_C, high: STREAM_C };
  return { low: STREAM_C, likely: STREAM_C / 2, high: 0 };
}

function line(sign: SumLine['sign'], value: number, unit: 'people' | '', label: string): SumLine {
  return { sign, figure: { value, unit }, label, grounds: 'stated' };
}

/** Heat ÷ what of the fuel's heat reaches the pot = grams. */
function fuelLines(energyKj: Range, grams: Range, flame: Heat): SumLine[] {
  const useful = eachEnd((end) => energyKj[end] / grams[end]);
  return [
    { sign: '', figure: { value: energyKj, unit: 'kJ' }, label: 'heat', grounds: 'worked-out', cites: ['iapws-95'] },
    {
      sign: '÷',
      figure: {
        value: {
          low: Math.min(useful.low, useful.likely, useful.high),
          likely: useful.likely,
          high: Math.max(useful.low, useful.likely, useful.high),
        },
        unit: 'kJ',
      },
      label: 'useful',
      grounds: 'published',
      cites: [...flame.cites, 'cp-wind-factor'],
    },
    { sign: '=', figure: { value: grams, unit: 'g' }, label: 'fuel', grounds: 'worked-out' },
  ];
}
