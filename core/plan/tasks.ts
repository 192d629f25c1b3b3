import { SNOW_KG_PER_M3 } from '../data/snow.js';
import { valueOf } from '../model/given.js';
import type { Range, SumLine } from '../model/finding.js';
import type { Vessel } from '../model/kit.js';
import type { Task } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { heat, hold } from '../physics/heating.js';
import { meltSnow } from '../physics/snow.js';
import { same, surfacesOf, type Heat } from './flame.js';

/** Water melted for a person to drink and cook with, L a day: planned inside what practitioners give (`cp-snow-water-day`). */
const MELT_L = 3.5;
/** Water as it is found: a cold stream; melted snow is at 0 °C. */
const STREAM_C = 10;
/** Minutes that food simmers, where it is cooked in the pot: assumed. */
const SIMMER_MIN: Range = { low: 5, likely: 10, high: 20 };
/** Water that stays in the pot to start each load, as a share of it (`cp-snow-starter`). */
const STARTER = 0.1;
const ENDS = ['low', 'likely', 'high'] as const;

export function eachEnd(value: (end: keyof Range) => number): Range {
  return { low: value('low'), likely: value('likely'), high: value('high') };
}

/** Snow to water of 0 °C, load by load; the starter soaks into the snow, so that each load packs the pot to its brim. */
export function meltTask(people: number, capacityMl: number, trip: GroundedTrip, flame: Heat): Task {
  const litres = people * MELT_L;
  const snow = valueOf(trip.snow) ?? 'packed';
  const starterMl = capacityMl * STARTER;
  const { loads, energyKj, minutes, grams } = meltSnow({
    ...flame,
    litres,
    roomMl: capacityMl + starterMl,
    starterMl,
    snowKgPerM3: SNOW_KG_PER_M3[snow],
    snowC: Math.max(-60, Math.min(0, valueOf(trip.lowC) ?? 0)),
  });
  return {
    id: 'melt',
    litres: same(litres),
    rounds: eachEnd((end) => Math.ceil(loads[end])),
    energyKj,
    minutes,
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
    people,
    eachMl,
    pot,
    capacityMl,
    roomMl,
    boilC,
    trip,
    flame,
  }: {
    readonly people: number;
    readonly eachMl: Range;
    readonly pot: Vessel;
    readonly capacityMl: number;
    readonly roomMl: number;
    readonly boilC: number;
    readonly trip: GroundedTrip;
    readonly flame: Heat;
  },
): Task | null {
  const meals = id === 'meal' ? (valueOf(trip.hotMealsPerDay) ?? 1) : 1;
  const litres = eachEnd((end) => (people * meals * eachMl[end]) / 1000);
  const rounds = eachEnd((end) => Math.ceil((1000 * litres[end]) / roomMl));
  const fromC = startC(valueOf(trip.waterFrom) ?? 'liquid');
  const simmers = id === 'meal' && valueOf(trip.mealStyle) !== 'boil-only';
  const runs = eachOf((end) => {
    const massKg = litres[end] / Math.max(1, rounds[end]);
    const surfaces = surfacesOf(pot, capacityMl, 1000 * massKg);
    const heated = heat({ ...flame, ...surfaces, massKg, fromC: fromC[end], toC: boilC });
    const minutes = simmers ? SIMMER_MIN[end] : 0;
    return { heated, minutes, held: hold({ ...flame, ...surfaces, atC: boilC, minutes }) };
  });
  const out = eachOf((end) => {
    const { heated, minutes, held } = runs[end];
    if (!heated.reaches) return null;
    const times = rounds[end];
    return {
      energyKj: times * (heated.energyKj[end] + held.energyKj),
      minutes: times * (heated.minutes[end] + minutes),
      grams: times * (heated.grams[end] + held.grams[end]),
    };
  });
  if (ENDS.some((end) => out[end] === null)) return null;
  const of = (name: 'energyKj' | 'minutes' | 'grams'): Range => eachEnd((end) => out[end]?.[name] ?? 0);
  return {
    id,
    litres,
    rounds,
    energyKj: of('energyKj'),
    minutes: of('minutes'),
    grams: of('grams'),
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
      ...fuelLines(of('energyKj'), of('grams'), flame),
    ],
  };
}

function eachOf<T>(value: (end: keyof Range) => T): Record<keyof Range, T> {
  return { low: value('low'), likely: value('likely'), high: value('high') };
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
