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
  const free = freeVessel(kit, assigned.flat());
  const own = meal.people === 1 && meal.alike > 1;
  const part = kept((vessel) => job(vessel, meal.people, brimOf(kit, [vessel]) / meal.brimMl));
  const whole = kept((vessel) => job(vessel, meal.people));
  // What stands on a place stays there: one pot of each group makes the drinks, or all of them do.
  let left = own ? party.people : meal.alike;
  const one = assigned.map((jobs) =>
    jobs.filter(({ vessel }) => (own || vessel === meal.vessels[0]) && left-- > 0).map(({ vessel }) => whole(vessel)),
  );
  const ways = [
    ...(free === undefined ? [] : [onFreest(job(free, party.people), lanes)]),
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

/** One job a vessel, so that what is alike is worked out once. */
function kept(make: (vessel: number) => Job): (vessel: number) => Job {
  const known = new Map<number, Job>();
  return (vessel) => {
    const job = known.get(vessel) ?? make(vessel);
    known.set(vessel, job);
    return job;
  };
}

/** A kettle, or the largest other vessel that all share and the meal does not use. */
function freeVessel(kit: Kit, meal: readonly Job[]): number | undefined {
  const free = kit.vessels.flatMap((vessel, index) => {
    const taken = meal.filter((job) => job.vessel === index).length;
    const shared = !vessel.perPerson && !vessel.perGroup && (valueOf(vessel.quantity) ?? 1) > taken;
    const sized = vessel.capacityMl.grounds !== 'missing' && vessel.kind !== 'mug';
    return shared && sized && isMetal(vessel) ? [index] : [];
  });
  return free.find((index) => kit.vessels[index]!.kind === 'kettle') ?? free[0];
}

/** The job on the place where it is ready first. */
function onFreest(job: Job, lanes: readonly Lane[]): readonly Lane[] {
  const ways = lanes.map((_, i) =>
    put(
      lanes,
      lanes.map((_, j) => (i === j ? [job] : [])),
    ),
  );
  return ways.reduce((best, way) => (ready(way) < ready(best) ? way : best));
}

/** Minutes until all is done; without end where something never boils. */
function ready(lanes: readonly Lane[]): number {
  const never = lanes.some(({ burner, uses }) => burner !== null && uses.some(({ heated }) => heated === null));
  const stalls = lanes.reduce((sum, { uses }) => sum + uses.filter(({ stall }) => stall !== null).length, 0);
  return never ? Infinity : 1e6 * stalls + Math.max(...lanes.map(({ busy }) => busy.likely));
}
