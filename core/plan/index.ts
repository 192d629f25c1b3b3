import type { Kit } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import type { GroundedTrip } from '../model/trip.js';
import { sizeUp } from './sizing.js';

/** Works the day out once, so that every check reads the same figures. */
export function planDay({ kit, trip }: { readonly kit: Kit; readonly trip: GroundedTrip }): DayPlan {
  return { ...sizeUp({ kit, trip }), tasks: [], perDay: null, tripGrams: null, carriedGrams: null };
}
