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
export type Sizing = Pick<
  DayPlan,
  'pot' | 'meltPot' | 'roomMl' | 'ceiling' | 'leastMl' | 'fullMl' | 'drinkMl' | 'boilC' | 'airPressureKpa' | 'evidence'
>;

/** Which pot cooks and which melts, how much of it counts, and how hot water gets there. */
export function sizeUp({ kit, trip }: { readonly kit: Kit; readonly trip: GroundedTrip }): Sizing {
  const cooking = largest(kit.pots);
  // A lid matters less than not having to melt in a mug.
  const roomy = kit.vessels.filter((vessel) => isMetal(vessel) && vessel.kind !== 'mug');
  const melting =
    largest(roomy.filter(isLidded)) ?? largest(roomy) ?? largest(kit.vessels.filter((vessel) => isMetal(vessel)));
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

/** A vessel to melt snow in: no pan, and metal where its line says nothing else. */
export function isMetal(vessel: Vessel): boolean {
  const material = valueOf(vessel.material);
  return vessel.kind !== 'pan' && material !== 'plastic' && material !== 'wood';
}

function isLidded(vessel: Vessel): boolean {
  return valueOf(vessel.lid) === true;
}
