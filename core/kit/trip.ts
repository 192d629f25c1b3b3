import { valueOf, type Given, type Missing } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import type { GroundedTrip, Season, Trip, TripHints } from '../model/trip.js';

/** What is assumed of a trip that says nothing, and how to replace it. */
const DEFAULTS: {
  readonly [K in Exclude<keyof Trip, 'season' | 'waterFrom' | 'lowC' | 'cookAt'>]: {
    value: Trip[K];
    because: string;
    replaceWith: string;
  };
} = {
  people: { value: 1, because: phrase`nothing says how many people`, replaceWith: phrase`set the number of people` },
  days: { value: 1, because: phrase`nothing says how long`, replaceWith: phrase`set the number of days` },
  mealStyle: {
    value: 'simmer',
    because: phrase`nothing says how they cook, and most people cook in the pot at times`,
    replaceWith: phrase`choose boil-only, simmer or scratch`,
  },
  drinkFromPot: {
    value: true,
    because: phrase`hot drinks come from the same pot unless it is said otherwise`,
    replaceWith: phrase`say that drinks are made elsewhere`,
  },
  snow: {
    value: 'packed',
    because: phrase`snow is pressed into the pot by hand`,
    replaceWith: phrase`choose the snow`,
  },
  altitudeM: { value: 0, because: phrase`no altitude is given`, replaceWith: phrase`set the altitude` },
  wind: { value: 'breeze', because: phrase`it is seldom calm outdoors`, replaceWith: phrase`choose the wind` },
  hotMealsPerDay: {
    value: 1,
    because: phrase`one hot meal a day is usual`,
    replaceWith: phrase`set the hot meals a day`,
  },
};

/** Lowest temperature assumed by season, °C. */
const LOW_BY_SEASON: Record<Season, number> = { spring: 0, summer: 5, autumn: 0, winter: -10 };

/** Why a temperature is assumed. */
const NO_LOW: Record<Season, string> = {
  spring: phrase`no temperature is given for spring`,
  summer: phrase`no temperature is given for summer`,
  autumn: phrase`no temperature is given for autumn`,
  winter: phrase`no temperature is given for winter`,
};

type Text = { readonly [K in keyof Trip]?: Given<Trip[K]> };

/**
 * The trip as judged: what the person set, else what the text says, else what is usual with the person, else a stated default.
 * `hasStove` tells where they cook, when nobody does: by a stove, or by fuel for one.
 */
export function groundTrip(
  set: Partial<Trip>,
  hints: TripHints,
  hasStove: boolean,
  usual: Partial<Trip> = {},
): GroundedTrip {
  const given = <K extends keyof Trip>(name: K): Given<Trip[K]> | undefined => {
    const value = set[name];
    if (value !== undefined) return { grounds: 'stated', value, typed: true };
    const said = (hints as Text)[name];
    const habit = usual[name];
    if (said !== undefined || habit === undefined) return said;
    return {
      grounds: 'assumed',
      value: habit,
      because: phrase`it is your default`,
      replaceWith: phrase`set it for this trip`,
    };
  };
  const orDefault = <K extends keyof typeof DEFAULTS>(name: K): Given<Trip[K]> =>
    given(name) ?? { grounds: 'assumed', ...DEFAULTS[name] };

  const missing: Missing = { grounds: 'missing' };
  const season = given('season') ?? missing;
  const lowC = given('lowC');
  return {
    people: orDefault('people'),
    days: orDefault('days'),
    mealStyle: orDefault('mealStyle'),
    drinkFromPot: orDefault('drinkFromPot'),
    waterFrom: given('waterFrom') ?? assumedWater(valueOf(season), lowC === undefined ? undefined : valueOf(lowC)),
    snow: orDefault('snow'),
    lowC: lowC ?? assumedLow(valueOf(season)),
    altitudeM: orDefault('altitudeM'),
    cookAt: given('cookAt') ?? assumedPlace(hasStove),
    wind: orDefault('wind'),
    hotMealsPerDay: orDefault('hotMealsPerDay'),
    season,
  };
}

function assumedWater(season: Season | undefined, lowC: number | undefined): Given<Trip['waterFrom']> {
  const replaceWith = phrase`say where the water comes from: liquid, snow or either`;
  if (season === 'winter')
    return { grounds: 'assumed', value: 'either', because: phrase`in winter snow may be the only water`, replaceWith };
  if (lowC !== undefined && lowC <= -5)
    return {
      grounds: 'assumed',
      value: 'either',
      because: phrase`in such cold snow may be the only water`,
      replaceWith,
    };
  return { grounds: 'assumed', value: 'liquid', because: phrase`nothing speaks of snow`, replaceWith };
}

function assumedLow(season: Season | undefined): Given<number> {
  return {
    grounds: 'assumed',
    value: LOW_BY_SEASON[season ?? 'summer'],
    because: season === undefined ? phrase`neither temperature nor season is given` : NO_LOW[season],
    replaceWith: phrase`set the lowest temperature`,
  };
}

function assumedPlace(hasStove: boolean): Given<Trip['cookAt']> {
  // A kit without any stove may still be cold food: a fire is assumed only for judging the pot, and is shown as a guess.
  return hasStove
    ? {
        grounds: 'assumed',
        value: 'stove',
        because: phrase`there is a stove, or fuel for one`,
        replaceWith: phrase`say that they cook at a fire`,
      }
    : { grounds: 'assumed', value: 'fire', because: phrase`no stove is named`, replaceWith: phrase`add the stove` };
}
