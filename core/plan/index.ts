import type { Range } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import type { DayPlan, Task } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { heatUnder, same } from './flame.js';
import { sizeUp, type Sizing } from './sizing.js';
import { boilTask, eachEnd, meltTask } from './tasks.js';

/** Works the day out once, so that every check reads the same figures. */
export function planDay({ kit, trip }: { readonly kit: Kit; readonly trip: GroundedTrip }): DayPlan {
  const sizing = sizeUp({ kit, trip });
  const tasks = tasksOf(kit, trip, sizing);
  const perDay = tasks.length === 0 ? null : totals(tasks, trip);
  const days = valueOf(trip.days) ?? 1;
  return {
    ...sizing,
    tasks,
    assumptions: tasks.length === 0 ? [] : assumed(kit, trip, sizing),
    perDay,
    tripGrams: perDay && eachEnd((end) => days * perDay.grams[end]),
    carriedGrams: carried(kit),
  };
}

function tasksOf(kit: Kit, trip: GroundedTrip, { pot, meltPot, roomMl, boilC, ...portions }: Sizing): readonly Task[] {
  const cooking = pot === null ? undefined : kit.vessels[pot];
  const capacityMl = cooking && valueOf(cooking.capacityMl);
  const flame = cooking && heatUnder(kit, trip, cooking);
  if (cooking === undefined || capacityMl === undefined || roomMl === null || !flame) return [];
  const people = valueOf(trip.people) ?? 1;
  const common = { people, pot: cooking, capacityMl, roomMl, boilC, trip, flame };
  const { leastMl, fullMl, drinkMl } = portions;
  const melting = meltPot === null ? undefined : kit.vessels[meltPot];
  const meltMl = melting && valueOf(melting.capacityMl);
  const meltFlame = melting && heatUnder(kit, trip, melting);
  const wanted = [
    valueOf(trip.waterFrom) !== 'liquid' && meltMl !== undefined && meltFlame
      ? meltTask(people, meltMl, trip, meltFlame)
      : undefined,
    valueOf(trip.hotMealsPerDay) === 0
      ? undefined
      : boilTask('meal', { ...common, eachMl: { low: leastMl, likely: (leastMl + fullMl) / 2, high: fullMl } }),
    valueOf(trip.drinkFromPot) === true ? boilTask('drinks', { ...common, eachMl: same(drinkMl) }) : undefined,
  ];
  // A flame too weak to boil the water leaves no day to work out.
  if (wanted.includes(null)) return [];
  return wanted.filter((task) => task !== undefined && task !== null);
}

function assumed(kit: Kit, trip: GroundedTrip, { pot }: Sizing): DayPlan['assumptions'] {
  const cooking = pot === null ? undefined : kit.vessels[pot];
  return (cooking && heatUnder(kit, trip, cooking)?.assumptions) ?? [];
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

/** Net fuel for the first stove, g; null where some of it is not known, or where the fuel is found on the way. */
function carried(kit: Kit): number | null {
  const type = kit.stoves[0] && valueOf(kit.stoves[0].type);
  const burns = type === 'integrated' ? 'gas' : type;
  if (burns === 'wood') return null;
  const fuels = kit.fuels.filter(({ type: fuel }) => burns === undefined || (valueOf(fuel) ?? burns) === burns);
  if (fuels.length === 0) return null;
  return fuels.reduce<number | null>((sum, { netG, quantity }) => {
    const net = valueOf(netG);
    return sum === null || net === undefined ? null : sum + net * (valueOf(quantity) ?? 1);
  }, 0);
}
