import type { Assumption } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import type { Use } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { SIMMER_MIN, STREAM_C } from './jobs.js';

/** What the day takes for granted of the water, the simmering and the pots, in words. */
export function guesses(kit: Kit, trip: GroundedTrip, uses: readonly Use[]): Assumption[] {
  const boils = uses.some(({ task }) => task !== 'melt');
  const simmers = uses.some(({ task }) => task === 'meal') && valueOf(trip.mealStyle) !== 'boil-only';
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
  if (uses.some(({ vessel }) => kit.vessels[vessel]!.diameterMm.grounds === 'missing'))
    found.push({
      what: phrase`a pot as wide as it is tall`,
      because: phrase`its width is not given`,
      replaceWith: phrase`give its diameter and height`,
    });
  return found;
}
