import type { Given } from './given.js';

export const MEAL_STYLES = ['boil-only', 'simmer', 'scratch'] as const;
/** Water for food rehydrated elsewhere; cooked in the pot; real cooking, frying, baking. */
export type MealStyle = (typeof MEAL_STYLES)[number];

export const WATER_FROM = ['liquid', 'snow', 'either'] as const;
export type WaterFrom = (typeof WATER_FROM)[number];

export const SNOWS = ['new', 'settled', 'wind-packed', 'packed'] as const;
/** Snow as it goes into the pot; packed is pressed by hand. */
export type Snow = (typeof SNOWS)[number];

export const WINDS = ['calm', 'breeze', 'windy'] as const;
export type Wind = (typeof WINDS)[number];

export const SEASONS = ['spring', 'summer', 'autumn', 'winter'] as const;
export type Season = (typeof SEASONS)[number];

/** The question a kit is judged against, as the person sets it. */
export interface Trip {
  readonly people: number;
  readonly days: number;
  readonly mealStyle: MealStyle;
  /** Whether the hot drinks come from the same pot as the meal. */
  readonly drinkFromPot: boolean;
  readonly waterFrom: WaterFrom;
  readonly snow: Snow;
  /** Lowest temperature expected, °C. */
  readonly lowC: number;
  /** Highest altitude they cook at, m above sea level. */
  readonly altitudeM: number;
  readonly cookAt: 'stove' | 'fire';
  readonly wind: Wind;
  /** Hot meals a person a day. */
  readonly hotMealsPerDay: number;
  readonly season: Season;
}

/** A trip with the grounds of each of its values; `season` alone may be missing. */
export type GroundedTrip = { readonly [K in keyof Trip]: Given<Trip[K]> };

/** What the text says of the trip; a value that is not said is absent. */
export type TripHints = { readonly [K in keyof Trip]?: Given<Trip[K]> } & {
  /** Alike groups that each cook on their own ("2 cook groups of 4": 2). */
  readonly cookGroups?: Given<number>;
  /** People in one of them, who share one pot ("2 cook groups of 4", "one set per four": 4). */
  readonly peoplePerPot?: Given<number>;
  /** Fires are said to be forbidden (false) or allowed (true). */
  readonly firesAllowed?: Given<boolean>;
  /** The list is for a group of young people. */
  readonly youthGroup?: Given<boolean>;
  /** The gas canister is turned over, so that it gives liquid. */
  readonly canisterTurned?: Given<boolean>;
  /** They mean to cook in a tent, a porch, a vestibule, a hut or a van. */
  readonly cooksInside?: Given<boolean>;
};
