import { takesFlame } from '../kit/vessel.js';
import { GRADES, type Grade, type Range } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import type { Meal } from '../model/plan.js';
import type { Party } from './count.js';
import { boilJob, type Circumstances, type Job } from './jobs.js';
import { put, turnsOf, waysOf, type Lane } from './lanes.js';
import type { Portions } from './portions.js';
import { brimOf, groupsOf, oneEach, type Group } from './pots.js';
import { eachEnd, same } from './ranges.js';
import { fillings, gradeOf, ROUNDS } from './rounds.js';

/** A way to cook the meal, and where it puts the pots. */
export interface MealPlan {
  readonly meal: Meal;
  readonly assigned: readonly (readonly Job[])[];
  /** Its grade, or what a flame too weak for a pot costs where that is worse. */
  readonly grade: Grade;
}

/**
 * The best way to cook one hot meal: by grade, then turns, then minutes, then pots. Ways are: the largest one, two, three … pots for all, the same for
 * each cook group, and a pot for each person. Null where no pot has a capacity.
 */
export function planMeal(
  party: Party,
  lanes: readonly Lane[],
  portions: Portions,
  about: Circumstances,
): MealPlan | null {
  const { kit } = about;
  const ways = ordersOf(cookedIn(kit), lanes, portions, about).flatMap((order) => {
    const own = party.people > 1 ? oneEach(kit, order, party) : null;
    return [
      ...groupsOf(kit, order, party).flatMap((group) => shared(group, lanes, portions, about)),
      ...(own === null ? [] : oneForEach(own, party.people, lanes, portions, about)),
    ];
  });
  return ways.reduce<MealPlan | null>((best, way) => (best === null || isBetter(way, best) ? way : best), null);
}

/** The pots with a capacity, largest first; those that a flame would melt only where there is no other. */
function cookedIn(kit: Kit): readonly number[] {
  const sized = kit.pots.filter(({ capacityMl }) => capacityMl.grounds !== 'missing');
  const fit = sized.filter(takesFlame);
  return (fit.length > 0 ? fit : sized).map((pot) => kit.vessels.indexOf(pot));
}

/** All pots, largest first; and without those that no flame boils, full or with one portion, where another does. */
function ordersOf(
  all: readonly number[],
  lanes: readonly Lane[],
  { ceiling, fullMl }: Portions,
  about: Circumstances,
): readonly (readonly number[])[] {
  const burners = [...new Set(lanes.map(({ burner }) => burner))];
  const boiling = (most: number) =>
    all.filter((index) => {
      const litres = same(Math.min(most, brimOf(about.kit, [index]) * ceiling) / 1000);
      const job = boilJob('meal', index, litres, same(1), about);
      return burners.some((burner) => burner === null || job.boils(burner));
    });
  const orders = [boiling(Infinity), boiling(fullMl)].filter(({ length }) => length > 0 && length < all.length);
  return [all, ...orders];
}

/** What a flame too weak for a pot costs. */
function stallGrade(assigned: readonly (readonly Job[])[], lanes: readonly Lane[]): Grade {
  const stalls = assigned.flatMap((jobs, i) => {
    const { burner } = lanes[i]!;
    return burner === null ? [] : jobs.filter((job) => !job.boils(burner)).map((job) => job.over(burner).stall);
  });
  if (stalls.some((stall) => stall?.cure === null)) return 'falls-short';
  return stalls.length > 0 ? 'costs-you' : 'holds-up';
}

/** The ways of a group that shares its pots: with the largest, the two largest … */
function shared(group: Group, lanes: readonly Lane[], portions: Portions, about: Circumstances): MealPlan[] {
  return group.vessels.flatMap((_, i) => {
    const vessels = group.vessels.slice(0, i + 1);
    const brimMl = brimOf(about.kit, vessels);
    const roomMl = brimMl * portions.ceiling;
    const needMl = eachEnd((end) => group.people * portionMl(portions)[end]);
    const servings = eachEnd((end) => fillings(needMl[end], roomMl));
    const jobs = jobsOf(vessels, group.alike, servings, about, (vessel) =>
      eachEnd((end) => (needMl[end] * brimOf(about.kit, [vessel])) / brimMl / servings[end]),
    );
    return waysOf(jobs, lanes).map((assigned) => {
      const turns = eachEnd((end) => servings[end] * turnsOf(assigned));
      const waitsMin = waits(assigned, lanes, turns, about);
      const grade = gradeOf(turns, group.people);
      return {
        meal: {
          people: group.people,
          alike: group.alike,
          own: false,
          vessels,
          brimMl,
          roomMl,
          servings,
          turns,
          waitsMin,
          grade,
        },
        assigned,
        grade: worse(grade, stallGrade(assigned, lanes)),
      };
    });
  });
}

/** Each with a pot of their own: judged by the smallest; who waits for the flame eats hot all the same. */
function oneForEach(
  own: readonly number[],
  people: number,
  lanes: readonly Lane[],
  portions: Portions,
  about: Circumstances,
): MealPlan[] {
  const smallest = own[own.length - 1]!;
  const brimMl = brimOf(about.kit, [smallest]);
  const roomMl = brimMl * portions.ceiling;
  const needMl = portionMl(portions);
  const servings = eachEnd((end) => fillings(needMl[end], roomMl));
  const jobs = jobsOf(own, 1, servings, about, () => eachEnd((end) => needMl[end] / servings[end]));
  const alone = gradeOf(servings, 1);
  return waysOf(jobs, lanes).map((assigned) => {
    const turns = eachEnd((end) => servings[end] * turnsOf(assigned));
    const waitsMin = waits(assigned, lanes, turns, about);
    const waiting =
      turnsOf(assigned) === 1 ? 'holds-up' : (waitsMin ?? 0) > ROUNDS.waitsMin ? 'falls-short' : 'costs-you';
    return {
      meal: {
        people: 1,
        alike: people,
        own: true,
        vessels: [smallest],
        brimMl,
        roomMl,
        servings,
        turns,
        waitsMin,
        grade: worse(alone, waiting),
      },
      assigned,
      grade: worse(worse(alone, waiting), stallGrade(assigned, lanes)),
    };
  });
}

function portionMl({ leastMl, fullMl }: Portions): Range {
  return { low: leastMl, likely: (leastMl + fullMl) / 2, high: fullMl };
}

/** One job a pot, of each group; alike pots share the work that is done once. */
function jobsOf(
  vessels: readonly number[],
  alike: number,
  servings: Range,
  about: Circumstances,
  turnMl: (vessel: number) => Range,
): Job[] {
  const meals = valueOf(about.trip.hotMealsPerDay) ?? 1;
  const turns = eachEnd((end) => (meals === 0 ? 1 : meals) * servings[end]);
  const byVessel = new Map<number, Job>();
  return vessels.flatMap((vessel) => {
    const ml = turnMl(vessel);
    const job =
      byVessel.get(vessel) ??
      boilJob(
        'meal',
        vessel,
        eachEnd((end) => ml[end] / 1000),
        turns,
        about,
      );
    byVessel.set(vessel, job);
    return Array<Job>(alike).fill(job);
  });
}

/** Minutes from the first turn's end to the last's; null where nothing is worked out. */
function waits(
  assigned: readonly (readonly Job[])[],
  lanes: readonly Lane[],
  turns: Range,
  { trip }: Circumstances,
): number | null {
  const meals = valueOf(trip.hotMealsPerDay) ?? 1;
  const placed = put(lanes, assigned).filter((_, i) => assigned[i]!.length > 0);
  if (meals === 0 || placed.some(({ uses }) => uses.some(({ task, heated }) => task === 'meal' && heated === null)))
    return null;
  const minutes = Math.max(
    ...placed.map(({ uses }) =>
      uses.reduce((sum, { task, heated }) => sum + (task === 'meal' ? (heated?.minutes.likely ?? 0) : 0), 0),
    ),
  );
  return (minutes / meals) * (1 - 1 / Math.max(1, turns.likely));
}

function worse(a: Grade, b: Grade): Grade {
  return GRADES.indexOf(a) <= GRADES.indexOf(b) ? a : b;
}

function isBetter(a: MealPlan, b: MealPlan): boolean {
  const by = [
    GRADES.indexOf(b.grade) - GRADES.indexOf(a.grade),
    GRADES.indexOf(b.meal.grade) - GRADES.indexOf(a.meal.grade),
    a.meal.turns.high - b.meal.turns.high,
    a.meal.turns.low - b.meal.turns.low,
    // Another flame is a smaller thing to add than a pot.
    a.meal.servings.high - b.meal.servings.high,
    Math.round((a.meal.waitsMin ?? 0) - (b.meal.waitsMin ?? 0)),
    a.meal.vessels.length * a.meal.alike - b.meal.vessels.length * b.meal.alike,
  ];
  return (by.find((difference) => difference !== 0) ?? 0) < 0;
}
