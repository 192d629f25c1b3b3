import type { Assumption, Range } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { FuelType } from '../model/item.js';
import type { Kit } from '../model/kit.js';
import type { DayPlan, FuelNeed, Place, Use } from '../model/plan.js';
import type { GroundedTrip, TripHints } from '../model/trip.js';
import { burnerFor } from '../physics/burner.js';
import { fuelHeatingValueJPerKg } from '../physics/fuel.js';
import { partyOf, type Party } from './count.js';
import { withDrinks } from './drinks.js';
import { burnersOf, mixOf, type Burner } from './flame.js';
import { carriedGrams } from './fuel.js';
import { guesses } from './guesses.js';
import { lanesOf, placesOf, put, type Lane } from './lanes.js';
import { planMeal } from './meal.js';
import { planMelt } from './melt.js';
import { portionsOf } from './portions.js';
import { eachEnd, mostOf, same, sumOf, times } from './ranges.js';
import { tasksOf } from './tasks.js';

/** Places of a group for drinks and snow, beside those of the meal. */
const SPARE_PLACES = 4;

/** Works the day out once, so that every check reads the same figures. */
export function planDay({
  kit,
  trip,
  hints = {},
}: {
  readonly kit: Kit;
  readonly trip: GroundedTrip;
  readonly hints?: TripHints;
}): DayPlan {
  const party = partyOf(trip, hints);
  const portions = portionsOf(trip);
  const burners = burnersOf(kit, trip, party);
  const about = { kit, trip, boilC: portions.boilC };
  const bare = lanesOf(burners, party.people + SPARE_PLACES * party.groups);
  const melt = planMelt(party, bare, about);
  const meal = planMeal(party, bare, portions, about);
  const melts = valueOf(trip.waterFrom) !== 'liquid' && melt !== null;
  let lanes = melts ? put(bare, melt.assigned, meltedShare(trip)) : bare;
  if (meal !== null && valueOf(trip.hotMealsPerDay) !== 0) lanes = put(lanes, meal.assigned);
  const eatenMin = eaten(lanes);
  if (meal !== null && valueOf(trip.drinkFromPot) === true) lanes = withDrinks(meal, lanes, party, portions, about);

  const places = placesOf(lanes);
  const uses = places.flatMap((place) => place.uses);
  const main = burners[0];
  const fuels = main === undefined ? [] : fuelNeeds(kit, burners, main, places, trip, party);
  const heated = main !== undefined && uses.length > 0 && uses.every((use) => use.heated !== null);
  const tasks = heated ? tasksOf(places, fuels, kit, trip, party, meal?.meal ?? null) : [];
  const perDay = heated ? totals(lanes, places, fuels, trip) : null;
  const days = valueOf(trip.days) ?? 1;
  return {
    groups: party.groups,
    meal: meal?.meal ?? null,
    melt: melt?.melt ?? null,
    places,
    ...portions,
    burns: main?.burns ?? null,
    tasks,
    perDay,
    eatenMin: heated ? eatenMin : null,
    tripGrams: perDay && times(perDay.grams, days),
    carriedGrams: carriedInAll(fuels),
    fuels,
    assumptions: heated ? [...assumptionsOf(burners, places), ...guesses(kit, trip, uses)] : [],
  };
}

/** Where snow is only possible, the least is a day without melting and the likely one melts half. */
function meltedShare(trip: GroundedTrip): Range {
  return valueOf(trip.waterFrom) === 'either' ? { low: 0, likely: 0.5, high: 1 } : same(1);
}

/** Minutes until the last meal is done; null without one. */
function eaten(lanes: readonly Lane[]): Range | null {
  const cooking = lanes.filter(({ uses }) => uses.some(({ task }) => task === 'meal'));
  return cooking.length === 0 ? null : mostOf(cooking.map(({ busy }) => busy));
}

/** The kinds of fuel of the flames that there are, and how much of each a day takes. */
function fuelNeeds(
  kit: Kit,
  burners: readonly Burner[],
  main: Burner,
  places: readonly Place[],
  trip: GroundedTrip,
  party: Party,
): FuelNeed[] {
  const kinds = [...new Set(burners.map(({ burns }) => burns))];
  const useful = (burns: FuelType, { source }: Burner) => {
    return fuelHeatingValueJPerKg(burns, mixOf(kit.fuels)) * burnerFor(source).efficiency.likely;
  };
  return kinds.map((burns) => {
    const burner = burners.find((one) => one.burns === burns)!;
    const uses = places.filter((place) => place.burns === burns).flatMap(usesOf);
    // A fuel of unknown kind is counted once: for the main flame.
    const fuels = burns === main.burns ? kit.fuels : kit.fuels.filter(({ type }) => valueOf(type) === burns);
    return {
      burns,
      grams: sumOf(uses.map((use) => counted(use, trip, 'grams'))),
      carriedG: carriedGrams(fuels, burns, party),
      worth: burns === main.burns ? 1 : useful(burns, burner) / useful(main.burns, main),
    };
  });
}

/** The uses of a place, once for each that does the same. */
function usesOf({ uses, alike }: Place): Use[] {
  return Array<readonly Use[]>(alike).fill(uses).flat();
}

function counted({ task, heated }: Use, trip: GroundedTrip, name: 'grams'): Range {
  if (heated === null) return same(0);
  const share = task === 'melt' ? meltedShare(trip) : same(1);
  return eachEnd((end) => share[end] * heated[name][end]);
}

/** What is carried for all flames, in grams of the main fuel; null where some of it is not known, and where the main fuel is wood. */
function carriedInAll(fuels: readonly FuelNeed[]): number | null {
  const [main, ...others] = fuels;
  if (main === undefined || main.burns === 'wood') return null;
  // What is not carried for another flame is none; what is carried and not weighed is not known.
  const own = main.carriedG;
  return own === null ? null : others.reduce((sum, { carriedG, worth }) => sum + (carriedG ?? 0) * worth, own);
}

function totals(
  lanes: readonly Lane[],
  places: readonly Place[],
  fuels: readonly FuelNeed[],
  trip: GroundedTrip,
): NonNullable<DayPlan['perDay']> {
  const uses = places.flatMap(usesOf);
  const share = meltedShare(trip);
  const litres = (melt: boolean) =>
    sumOf(uses.filter(({ task }) => (task === 'melt') === melt).map((use) => use.litres));
  const [melted, heated] = [litres(true), litres(false)];
  return {
    // What is heated for the meal is part of what was melted.
    litres: eachEnd((end) => Math.max(share[end] * melted[end], heated[end])),
    minutes: mostOf(lanes.map(({ busy }) => busy)),
    grams: sumOf(fuels.map(({ grams, worth }) => times(grams, worth))),
  };
}

function assumptionsOf(burners: readonly Burner[], places: readonly Place[]): Assumption[] {
  const used = burners.filter(({ stove }) => places.some((place) => place.stove === stove));
  const all = used.flatMap(({ assumptions }) => assumptions);
  return all.filter((one, i) => all.findIndex(({ what }) => what === one.what) === i);
}
