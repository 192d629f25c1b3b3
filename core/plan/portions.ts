import { valueOf } from '../model/given.js';
import type { DayPlan } from '../model/plan.js';
import type { GroundedTrip, MealStyle } from '../model/trip.js';
import { boilingPointC, pressurePa } from '../physics/air.js';

/** Share of the brim that may be filled, by meal style: common practice (`cp-fill-ceiling`). */
const CEILING: Readonly<Record<MealStyle, number>> = { 'boil-only': 0.9, simmer: 0.67, scratch: 0.67 };

/** One person's meal and drink, mL: 16 and 20 US fl oz (`cp-meal-portion`), a cup (`cp-hot-drink`). */
const PORTION = { leastMl: 473, fullMl: 591, drinkMl: 240 } as const;

/** What the plan knows without any pot or flame. */
export type Portions = Pick<DayPlan, 'ceiling' | 'leastMl' | 'fullMl' | 'drinkMl' | 'boilC' | 'airPressureKpa'>;

/** How much each eats, how full a pot may be, and how hot water gets there. */
export function portionsOf(trip: GroundedTrip): Portions {
  const altitudeM = valueOf(trip.altitudeM) ?? 0;
  return {
    ceiling: CEILING[valueOf(trip.mealStyle) ?? 'simmer'],
    ...PORTION,
    boilC: boilingPointC(altitudeM),
    airPressureKpa: pressurePa(altitudeM) / 1000,
  };
}
