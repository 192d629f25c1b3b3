import { takesFlame } from '../kit/vessel.js';
import { valueOf } from '../model/given.js';
import type { Kit, Vessel } from '../model/kit.js';
import { countOf, type Party } from './count.js';

/** More pots of one group than these are never looked at. */
const MOST_POTS = 12;

/** People who use the same pots, how many such groups there are, and the pots of one, as indices in `kit.vessels`. */
export interface Group {
  readonly people: number;
  readonly alike: number;
  readonly vessels: readonly number[];
}

/**
 * The groups that vessels can be shared out to: all people with what is there for all; each cook group with its own; each person with one of their
 * own. Vessels come in the order given, and a group's keep it.
 */
export function groupsOf(kit: Kit, order: readonly number[], party: Party): readonly Group[] {
  const { people, groups } = party;
  const copies = (of: (vessel: Vessel) => boolean, most = MOST_POTS) =>
    order
      .filter((index) => of(kit.vessels[index]!))
      .flatMap((index) => Array<number>(Math.min(most, valueOf(kit.vessels[index]!.quantity) ?? 1)).fill(index))
      .slice(0, most);
  const shared = copies((vessel) => !vessel.perPerson && !vessel.perGroup);
  const each = copies((vessel) => vessel.perGroup);
  return [
    ...(shared.length === 0 ? [] : [{ people, alike: 1, vessels: shared }]),
    ...(each.length === 0 ? [] : [{ people: Math.ceil(people / groups), alike: groups, vessels: each }]),
  ];
}

/** One vessel for each person, the first of the order; null where there are not enough. */
export function oneEach(kit: Kit, order: readonly number[], party: Party): readonly number[] | null {
  const found: number[] = [];
  for (const index of order) {
    const count = Math.min(countOf(kit.vessels[index]!, party), party.people - found.length);
    for (let i = 0; i < count; i++) found.push(index);
    if (found.length >= party.people) return found;
  }
  return null;
}

/** A vessel to melt snow in: no pan, and metal where its line says nothing else. */
export function isMetal(vessel: Vessel): boolean {
  return vessel.kind !== 'pan' && takesFlame(vessel);
}

/** To the brim, mL; 0 where it is not known. */
export function brimOf(kit: Kit, vessels: readonly number[]): number {
  return vessels.reduce((sum, index) => sum + (valueOf(kit.vessels[index]!.capacityMl) ?? 0), 0);
}
