import { valueOf } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import { fillHeightMm, volumeMl, type VesselShape } from '../physics/vessel.js';

/** What is planned to stand in a pot: mL, the height of its fill line over the base, mm, and the outside shape. */
export interface Fill {
  readonly ml: number;
  readonly mm: number;
  readonly shape: Extract<VesselShape, { kind: 'round' }>;
}

/** This pot's part of the full portions of those who eat from it, or the room where that is less; null where a dimension or the capacity is missing. */
export function plannedFill(pot: Vessel, plan: DayPlan): Fill | null {
  const capacity = valueOf(pot.capacityMl);
  const rimMm = valueOf(pot.diameterMm);
  const heightMm = valueOf(pot.heightMm);
  if (capacity === undefined || rimMm === undefined || heightMm === undefined) return null;
  const { people, brimMl } = plan.meal ?? { people: 1, brimMl: capacity };
  const ml = Math.min(capacity * plan.ceiling, plan.fullMl * people * Math.min(1, capacity / brimMl));
  const shape = { kind: 'round', rimMm, baseMm: valueOf(pot.baseDiameterMm) ?? rimMm, heightMm } as const;
  // Stated capacity and outside dimensions disagree a little: the share of the brim is what stands in the pot.
  return { ml, mm: fillHeightMm(shape, Math.min(1, ml / capacity) * volumeMl(shape)), shape };
}
