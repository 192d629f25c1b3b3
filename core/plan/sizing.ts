import { valueOf } from '../model/given.js';
import type { Kit, Vessel } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import type { GroundedTrip, MealStyle } from '../model/trip.js';
import { boilingPointC, pressurePa } from '../physics/air.js';

/** Share of the brim that may be filled, by meal style: common practice (`cp-fill-ceiling`). */
const CEILING: Readonly<Record<MealStyle, number>> = { 'boil-only': 0.9, simmer: 0.67, scratch: 0.67 };

/** One person's meal and drink, mL: 16 and 20 US fl oz (`cp-meal-portion`), a cup (`cp-hot-drink`). */
const PORTION = { leastMl: 473, fullMl: 591, drinkMl: 240 } as const;

/** The part of the plan that needs no flame. */
export type Sizing = Omit<DayPlan, 'tasks' | 'assumptions' | 'perDay' | 'tripGrams' | 'carriedGrams'>;

/** Which pot cooks and which melts, how much of it counts, and how hot water gets there. */
export function sizeUp({ kit, trip }: { readonly kit: Kit; readonly trip: GroundedTrip }): Sizing {
  const cooking = largest(kit.pots);
  const melting = largest(kit.vessels.filter(melts)) ?? largest(kit.vessels.filter(metal));
  const index = (vessel: Vessel | undefined) => (vessel === undefined ? null : kit.vessels.indexOf(vessel));
  const altitudeM = valueOf(trip.altitudeM) ?? 0;
  const ceiling = CEILING[valueOf(trip.mealStyle) ?? 'simmer'];
  const capacity = cooking && valueOf(cooking.capacityMl);
  return {
    pot: index(cooking),
    meltPot: index(melting),
    roomMl: capacity === undefined ? null : capacity * ceiling,
    ceiling,
    ...PORTION,
    boilC: boilingPointC(altitudeM),
    airPressureKpa: pressurePa(altitudeM) / 1000,
    evidence: cooking === undefined ? [{ quote: 'no pot', found: 'absent' }] : [cooking.evidence],
  };
}

/** Vessels come largest first; one whose capacity is missing cannot be chosen. */
function largest(vessels: readonly Vessel[]): Vessel | undefined {
  return vessels.find((vessel) => vessel.capacityMl.grounds !== 'missing');
}

function metal(vessel: Vessel): boolean {
  const material = valueOf(vessel.material);
  return vessel.kind !== 'pan' && material !== 'plastic' && material !== 'wood';
}

function melts(vessel: Vessel): boolean {
  return metal(vessel) && valueOf(vessel.lid) === true;
}
