import { valueOf } from '../model/given.js';
import type { Counted } from '../model/kit.js';
import type { GroundedTrip, TripHints } from '../model/trip.js';

/** Who cooks: all of them, and the groups they cook in. */
export interface Party {
  readonly people: number;
  /** Groups that cook on their own and carry the same; 1 where nothing is told. */
  readonly groups: number;
}

export function partyOf(trip: GroundedTrip, hints: TripHints): Party {
  const people = valueOf(trip.people) ?? 1;
  const each = hints.peoplePerPot && valueOf(hints.peoplePerPot);
  const told = (hints.cookGroups && valueOf(hints.cookGroups)) ?? (each ? Math.ceil(people / each) : 1);
  return { people, groups: Math.max(1, Math.min(people, told)) };
}

/** How many of a thing all carry together; one where the list does not count it. */
export function countOf({ quantity, perPerson, perGroup }: Counted, { people, groups }: Party): number {
  return (valueOf(quantity) ?? 1) * (perPerson ? people : perGroup ? groups : 1);
}
