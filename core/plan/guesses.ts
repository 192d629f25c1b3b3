import type { Assumption } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import type { Task } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { SIMMER_MIN, STREAM_C } from './tasks.js';

/** What the day takes for granted of the water, the simmering and the pot, in words. */
export function guesses(pot: Vessel, trip: GroundedTrip, tasks: readonly Task[]): Assumption[] {
  const boils = tasks.some(({ id }) => id !== 'melt');
  const simmers = tasks.some(({ id }) => id === 'meal') && valueOf(trip.mealStyle) !== 'boil-only';
  const found: Assumption[] = [];
  if (boils && valueOf(trip.waterFrom) !== 'snow')
    found.push({
      what: phrase`water of ${STREAM_C} °C to start with`,
      because: phrase`nothing says how cold the water is, and a cold stream has about that`,
      replaceWith: phrase`count about 1 % less fuel for each degree it is warmer`,
    });
  if (simmers)
    found.push({
      what: phrase`a simmer of ${SIMMER_MIN.low}–${SIMMER_MIN.high} min`,
      because: phrase`nothing says how long the food simmers`,
      replaceWith: phrase`choose boil-only where the food only takes up hot water`,
    });
  if (pot.diameterMm.grounds === 'missing')
    found.push({
      what: phrase`a pot as wide as it is tall`,
      because: phrase`its width is not given`,
      replaceWith: phrase`give its diameter and height`,
    });
  return found;
}
