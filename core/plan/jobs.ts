import { SNOW_KG_PER_M3 } from '../data/snow.js';
import { valueOf } from '../model/given.js';
import type { Range } from '../model/finding.js';
import type { Kit } from '../model/kit.js';
import type { Heated, Stall, StallCure, TaskId } from '../model/plan.js';
import type { GroundedTrip, Wind } from '../model/trip.js';
import { heat, hold } from '../physics/heating.js';
import { loadsPerLitre, meltSnow } from '../physics/snow.js';
import { heatUnder, surfacesOf, type Burner, type Heat } from './flame.js';
import { eachEnd } from './ranges.js';

/** Water as it is found: a cold stream; melted snow is at 0 °C. */
export const STREAM_C = 10;
/** Minutes that food simmers, where it is cooked in the pot: assumed. */
export const SIMMER_MIN: Range = { low: 5, likely: 10, high: 20 };
/** Water that stays in the pot to start each load, as a share of it (`cp-snow-starter`). */
const STARTER = 0.1;

/** What a job takes over one flame. */
export interface Done {
  readonly heated: Heated | null;
  readonly stall: Stall | null;
}

/** One pot's share of a task in a day, before it has its place. */
export interface Job {
  readonly task: TaskId;
  /** Index in `kit.vessels`. */
  readonly vessel: number;
  /** L a day. */
  readonly litres: Range;
  /** Fillings a day; packings with snow hang on the snow alone. */
  readonly turns: Range;
  /** Whether this flame brings it to the boil; snow melts over any. */
  boils(burner: Burner): boolean;
  over(burner: Burner): Done;
}

/** What every job of a day has in common. */
export interface Circumstances {
  readonly kit: Kit;
  readonly trip: GroundedTrip;
  readonly boilC: number;
}

/** Water that one pot brings to the boil in turns; food that is cooked in it simmers on. */
export function boilJob(
  task: TaskId,
  vessel: number,
  /** Of one turn, L. */
  turnL: Range,
  /** A day. */
  turns: Range,
  about: Circumstances,
): Job {
  const { kit, trip, boilC } = about;
  const pot = kit.vessels[vessel]!;
  const capacityMl = valueOf(pot.capacityMl) ?? 0;
  const wind = valueOf(trip.wind) ?? 'breeze';
  const fromC = startC(valueOf(trip.waterFrom) ?? 'liquid');
  const simmers = task === 'meal' && valueOf(trip.mealStyle) !== 'boil-only';
  const once = (end: keyof Range, flame: Heat, lidded: boolean): { stallsC: number } | Heated => {
    const massKg = turnL[end];
    const bare = surfacesOf(pot, capacityMl, 1000 * massKg);
    const surfaces = lidded ? { ...bare, lid: true } : bare;
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
  const tried = (burner: Burner, lidded: boolean, wind: Wind): { stallsC: number } | Heated => {
    const flame = heatUnder(burner, pot, kit, wind);
    const [low, likely, high] = [
      once('low', flame, lidded),
      once('likely', flame, lidded),
      once('high', flame, lidded),
    ];
    if ('stallsC' in low) return low;
    if ('stallsC' in likely) return likely;
    if ('stallsC' in high) return high;
    const all = (name: keyof Heated): Range => ({
      low: turns.low * low[name].low,
      likely: turns.likely * likely[name].likely,
      high: turns.high * high[name].high,
    });
    return { energyKj: all('energyKj'), minutes: all('minutes'), grams: all('grams') };
  };
  const asItIs = kept((burner) => tried(burner, false, wind));
  return {
    task,
    vessel,
    litres: eachEnd((end) => turns[end] * turnL[end]),
    turns,
    boils: (burner) => !('stallsC' in asItIs(burner)),
    over: kept((burner): Done => {
      const plain = asItIs(burner);
      if (!('stallsC' in plain)) return { heated: plain, stall: null };
      for (const cure of CURES) {
        const cured = tried(burner, cure !== 'calm', cure === 'lid' ? wind : 'calm');
        if (!('stallsC' in cured)) return { heated: cured, stall: { atC: plain.stallsC, cure } };
      }
      return { heated: null, stall: { atC: plain.stallsC, cure: null } };
    }),
  };
}

/** What may help a flame that stalls, the cheapest first. */
const CURES: readonly StallCure[] = ['lid', 'calm', 'lid-calm'];

/** Snow to water of 0 °C, load by load; the starter soaks into the snow, so that each load packs the pot to its brim. */
export function meltJob(vessel: number, litres: Range, { kit, trip }: Circumstances): Job {
  const pot = kit.vessels[vessel]!;
  const capacityMl = valueOf(pot.capacityMl) ?? 0;
  const starterMl = capacityMl * STARTER;
  const snowKgPerM3 = SNOW_KG_PER_M3[valueOf(trip.snow) ?? 'packed'];
  const thick = { low: snowKgPerM3.high, likely: snowKgPerM3.likely, high: snowKgPerM3.low };
  return {
    task: 'melt',
    vessel,
    litres,
    turns: eachEnd((end) => Math.ceil(litres[end] * loadsPerLitre(capacityMl, thick[end]) - 1e-9)),
    boils: () => true,
    over: kept((burner): Done => {
      const flame = heatUnder(burner, pot, kit, valueOf(trip.wind) ?? 'breeze');
      const melted = (end: keyof Range) =>
        meltSnow({
          ...flame,
          litres: litres[end],
          roomMl: capacityMl + starterMl,
          starterMl,
          snowKgPerM3,
          snowC: Math.max(-60, Math.min(0, valueOf(trip.lowC) ?? 0)),
        });
      const [low, likely, high] = [melted('low'), melted('likely'), melted('high')];
      const all = (name: keyof Heated): Range => ({
        low: low[name].low,
        likely: likely[name].likely,
        high: high[name].high,
      });
      return {
        heated: { energyKj: all('energyKj'), minutes: all('minutes'), grams: all('grams') },
        stall: null,
      };
    }),
  };
}

/** Answers of one job, by the line of the stove: all its places are alike. */
function kept<T>(work: (burner: Burner) => T): (burner: Burner) => T {
  const known = new Map<number | null, T>();
  return (burner) => {
    const before = known.get(burner.stove);
    if (before !== undefined) return before;
    const now = work(burner);
    known.set(burner.stove, now);
    return now;
  };
}

/** °C that water starts from; the warmest is the low end. Between stream and snow, halfway is likely. */
function startC(from: 'liquid' | 'snow' | 'either'): Range {
  if (from === 'snow') return { low: 0, likely: 0, high: 0 };
  if (from === 'liquid') return { low: STREAM_C, likely: STREAM_C, high: STREAM_C };
  return { low: STREAM_C, likely: STREAM_C / 2, high: 0 };
}
