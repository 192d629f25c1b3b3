import type { Range } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import type { DayPlan, Task } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { burns, heatUnder, same } from './flame.js';
import { carriedGrams } from './fuel.js';
import { guesses } from './guesses.js';
import { sizeUp, type Sizing } from './sizing.js';
import { boilTask, eachEnd, meltTask, type Stall } from './tasks.js';

/** Works the day out once, so that every check reads the same figures. */
export function planDay({ kit, trip }: { readonly kit: Kit; readonly trip: GroundedTrip }): DayPlan {
  const sizing = sizeUp({ kit, trip });
  const all = tasksOf(kit, trip, sizing);
  const stall = all.find((task) => 'stallsC' in task);
  // A flame too weak to boil the water leaves no day to work out.
  const tasks = stall === undefined ? all.filter((task): task is Task => 'id' in task) : [];
  const perDay = tasks.length === 0 ? null : totals(tasks, trip);
  const days = valueOf(trip.days) ?? 1;
  const flame = burns(kit, trip);
  return {
    ...sizing,
    burns: flame,
    stallsC: stall?.stallsC ?? null,
    tasks,
    assumptions: tasks.length === 0 ? [] : assumed(kit, trip, sizing, tasks),
    perDay,
    tripGrams: perDay && eachEnd((end) => days * perDay.grams[end]),
    carriedGrams: carriedGrams(kit.fuels, flame, valueOf(trip.people) ?? 1),
  };
}

function tasksOf(
  kit: Kit,
  trip: GroundedTrip,
  { pot, meltPot, roomMl, boilC, ...portions }: Sizing,
): readonly (Task | Stall)[] {
  const cooking = pot === null ? undefined : kit.vessels[pot];
  const capacityMl = cooking && valueOf(cooking.capacityMl);
  const flame = cooking && heatUnder(kit, trip, cooking);
  if (cooking === undefined || capacityMl === undefined || roomMl === null || !flame) return [];
  const common = { pot: cooking, capacityMl, roomMl, boilC, trip, flame };
  const { leastMl, fullMl, drinkMl } = portions;
  const melting = meltPot === null ? undefined : kit.vessels[meltPot];
  const meltMl = melting && valueOf(melting.capacityMl);
  const meltFlame = melting && heatUnder(kit, trip, melting);
  return [
    ...(valueOf(trip.waterFrom) !== 'liquid' && melting && meltMl !== undefined && meltFlame
      ? [meltTask(melting, meltMl, trip, meltFlame)]
      : []),
    ...(valueOf(trip.hotMealsPerDay) === 0
      ? []
      : [boilTask('meal', { ...common, eachMl: { low: leastMl, likely: (leastMl + fullMl) / 2, high: fullMl } })]),
    ...(valueOf(trip.drinkFromPot) === true ? [boilTask('drinks', { ...common, eachMl: same(drinkMl) })] : []),
  ];
}

function assumed(kit: Kit, trip: GroundedTrip, { pot }: Sizing, tasks: readonly Task[]): DayPlan['assumptions'] {
  const cooking = pot === null ? undefined : kit.vessels[pot];
  if (cooking === undefined) return [];
  return [...(heatUnder(kit, trip, cooking)?.assumptions ?? []), ...guesses(cooking, trip, tasks)];
}

/** All tasks; where snow is only possible, the least is a day without melting and the likely one melts half. */
function totals(tasks: readonly Task[], trip: GroundedTrip): NonNullable<DayPlan['perDay']> {
  const melted: Range = valueOf(trip.waterFrom) === 'either' ? { low: 0, likely: 0.5, high: 1 } : same(1);
  const all = (name: 'minutes' | 'grams'): Range =>
    eachEnd((end) => tasks.reduce((sum, task) => sum + task[name][end] * (task.id === 'melt' ? melted[end] : 1), 0));
  // What is heated for the meal is part of what was melted.
  const litres = eachEnd((end) =>
    Math.max(
      ...tasks.filter(({ id }) => id === 'melt').map((task) => task.litres[end] * melted[end]),
      tasks.filter(({ id }) => id !== 'melt').reduce((sum, task) => sum + task.litres[end], 0),
    ),
  );
  return { litres, minutes: all('minutes'), grams: all('grams') };
}
