import type { Range } from '../model/finding.js';
import type { Place, Use } from '../model/plan.js';
import type { Burner } from './flame.js';
import type { Job } from './jobs.js';
import { eachEnd, same } from './ranges.js';

/** A heat place while the day is being planned. `burner` is null where nothing burns. */
export interface Lane {
  readonly burner: Burner | null;
  readonly uses: readonly Use[];
  /** Minutes at which each use begins, likely. */
  readonly starts: readonly number[];
  /** Minutes until it is free. */
  readonly busy: Range;
  /** Fuel, g. */
  readonly grams: Range;
}

/** Places that can ever be in use: no more than people, and some for drinks and snow. */
export function lanesOf(burners: readonly Burner[], most: number): readonly Lane[] {
  const all = burners.flatMap((burner) => Array<Burner>(Math.min(burner.places, most)).fill(burner)).slice(0, most);
  return (all.length === 0 ? [null] : all).map((burner) => ({
    burner,
    uses: [],
    starts: [],
    busy: same(0),
    grams: same(0),
  }));
}

/** Jobs over the lanes, each where fewest stand already. With `boiling` only where it boils, and what boils in fewest places first; else anywhere. */
export function assign(jobs: readonly Job[], lanes: readonly Lane[], boiling = true): readonly (readonly Job[])[] {
  const fits = (job: Job, { burner }: Lane) => burner === null || job.boils(burner);
  const choosy = new Map(jobs.map((job) => [job, lanes.filter((lane) => fits(job, lane)).length]));
  const order = boiling ? [...jobs].sort((a, b) => choosy.get(a)! - choosy.get(b)!) : jobs;
  const on = lanes.map((): Job[] => []);
  for (const job of order) {
    const fit = boiling ? on.filter((_, i) => fits(job, lanes[i]!)) : on;
    // Where it boils nowhere, any place is as good as another.
    const free = fit.length > 0 ? fit : on;
    free.reduce((best, there) => (there.length < best.length ? there : best)).push(job);
  }
  return on;
}

/** The ways to put jobs on flames: where they boil, and on all flames where some do not boil everywhere. */
export function waysOf(jobs: readonly Job[], lanes: readonly Lane[]): readonly (readonly (readonly Job[])[])[] {
  const everywhere = jobs.every((job) => lanes.every(({ burner }) => burner === null || job.boils(burner)));
  return everywhere ? [assign(jobs, lanes)] : [assign(jobs, lanes), assign(jobs, lanes, false)];
}

/** How often the flames are used one after another. */
export function turnsOf(assigned: readonly (readonly Job[])[]): number {
  return Math.max(...assigned.map((jobs) => jobs.length));
}

/** The lanes with jobs put on them. `share` is the part of a day's minutes that counts: snow that only may have to be melted. */
export function put(
  lanes: readonly Lane[],
  assigned: readonly (readonly Job[])[],
  share: Range = same(1),
): readonly Lane[] {
  return lanes.map((lane, i) => (assigned[i] ?? []).reduce((at, job) => putOne(at, job, share), lane));
}

function putOne({ burner, uses, starts, busy, grams }: Lane, job: Job, share: Range): Lane {
  const done = burner === null ? { heated: null, stall: null } : job.over(burner);
  const { task, vessel, litres, turns } = job;
  return {
    burner,
    uses: [...uses, { task, vessel, litres, turns, ...done }],
    starts: [...starts, busy.likely],
    busy: eachEnd((end) => busy[end] + share[end] * (done.heated?.minutes[end] ?? 0)),
    grams: eachEnd((end) => grams[end] + share[end] * (done.heated?.grams[end] ?? 0)),
  };
}

/** Lanes that are used, those that do the same as one. */
export function placesOf(lanes: readonly Lane[]): readonly Place[] {
  const places = new Map<string, Place>();
  for (const { burner, uses, starts, busy, grams } of lanes) {
    if (uses.length === 0) continue;
    const stove = burner?.stove ?? null;
    const key = JSON.stringify([stove, uses.map(({ task, vessel, litres }) => [task, vessel, litres])]);
    const known = places.get(key);
    const heated = uses.every((use) => use.heated !== null);
    places.set(
      key,
      known
        ? { ...known, alike: known.alike + 1 }
        : {
            stove,
            burns: burner?.burns ?? null,
            alike: 1,
            uses,
            startMin: starts,
            minutes: heated ? busy : null,
            grams: heated ? grams : null,
          },
    );
  }
  return [...places.values()];
}
