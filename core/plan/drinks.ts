import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import type { Party } from './count.js';
import { boilJob, type Circumstances, type Job } from './jobs.js';
import { put, type Lane } from './lanes.js';
import type { MealPlan } from './meal.js';
import type { Portions } from './portions.js';
import { brimOf, isMetal } from './pots.js';
import { same } from './ranges.js';
import { fillings } from './rounds.js';

/** Lanes with the hot drinks on them: from the meal's own pots, or from a kettle or a pot that the meal leaves free, whichever is ready first. */
export function withDrinks(
  { meal, assigned }: MealPlan,
  lanes: readonly Lane[],
  party: Party,
  portions: Portions,
  about: Circumstances,
): readonly Lane[] {
  const { kit } = about;
  const job = (vessel: number, people: number, share = 1) => {
    const needMl = people * portions.drinkMl * share;
    const turns = fillings(needMl, brimOf(kit, [vessel]) * portions.ceiling);
    return boilJob('drinks', vessel, same(needMl / 1000 / turns), same(turns), about);
  };
  const { own } = meal;
  const part = kept((vessel) => job(vessel, meal.people, brimOf(kit, [vessel]) / meal.brimMl));
  const whole = kept((vessel) => job(vessel, meal.people));
  // What stands on a place stays there: one pot of each group makes the drinks, or all of them do.
  const one = oneOfEach(
    assigned,
    ({ vessel }) => own || vessel === meal.vessels[0],
    own ? party.people : meal.alike,
  ).map((jobs) => jobs.map(({ vessel }) => whole(vessel)));
  const ways = [
    ...freeVessels(kit, assigned.flat(), party).map(({ vessel, groups }) =>
      onFreest(Array<Job>(groups).fill(job(vessel, Math.ceil(party.people / groups))), lanes),
    ),
    put(lanes, one),
    ...(own
      ? []
      : [
          put(
            lanes,
            assigned.map((jobs) => jobs.map(({ vessel }) => part(vessel))),
          ),
        ]),
  ];
  return ways.reduce((best, way) => (ready(way) < ready(best) ? way : best));
}

/** So many of the jobs that fit, one from each place before a second from any. */
function oneOfEach(
  assigned: readonly (readonly Job[])[],
  fits: (job: Job) => boolean,
  many: number,
): readonly (readonly Job[])[] {
  const fit = assigned.map((jobs) => jobs.filter(fits));
  const taken = fit.map(() => 0);
  let left = many;
  for (let round = 0; left > 0 && fit.some((jobs) => jobs.length > round); round++)
    fit.forEach((jobs, i) => {
      if (left > 0 && jobs.length > round) {
        taken[i]!++;
        left--;
      }
    });
  return fit.map((jobs, i) => jobs.slice(0, taken[i]));
}

/** One job a vessel, so that what is alike is worked out once. */
function kept(make: (vessel: number) => Job): (vessel: number) => Job {
  const known = new Map<number, Job>();
  return (vessel) => {
    const job = known.get(vessel) ?? make(vessel);
    known.set(vessel, job);
    return job;
  };
}

/** A kettle, or the largest other vessel that the meal does not use: of all, and of each group. */
function freeVessels(kit: Kit, meal: readonly Job[], { groups }: Party): { vessel: number; groups: number }[] {
  const free = kit.vessels.flatMap((vessel, index) => {
    const taken = meal.filter((job) => job.vessel === index).length;
    const each = vessel.perGroup ? groups : 1;
    const left = !vessel.perPerson && (valueOf(vessel.quantity) ?? 1) * each - taken >= each;
    const sized = vessel.capacityMl.grounds !== 'missing' && vessel.kind !== 'mug';
    return left && sized && isMetal(vessel) ? [{ vessel: index, groups: each, kettle: vessel.kind === 'kettle' }] : [];
  });
  return [true, false].flatMap((perGroup) => {
    const own = free.filter(({ vessel }) => kit.vessels[vessel]!.perGroup === perGroup);
    return own.filter((one) => one === (own.find(({ kettle }) => kettle) ?? own[0]));
  });
}

/** Each job on the place where it is itself ready first, one after another. */
function onFreest(jobs: readonly Job[], lanes: readonly Lane[]): readonly Lane[] {
  return jobs.reduce((at, job) => {
    const ways = at.map((lane) => put([lane], [[job]])[0]!);
    const first = ways.reduce((best, way, i) => (ready([way]) < ready([ways[best]!]) ? i : best), 0);
    return at.map((lane, i) => (i === first ? ways[i]! : lane));
  }, lanes);
}

/** Minutes until all is done; without end where something never boils. */
function ready(lanes: readonly Lane[]): number {
  const never = lanes.some(({ burner, uses }) => burner !== null && uses.some(({ heated }) => heated === null));
  const stalls = lanes.reduce((sum, { uses }) => sum + uses.filter(({ stall }) => stall !== null).length, 0);
  return never ? Infinity : 1e6 * stalls + Math.max(...lanes.map(({ busy }) => busy.likely));
}
