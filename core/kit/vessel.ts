import { MISSING, valueOf, type Given } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import { volumeMl } from '../physics/vessel.js';

/** What the outside dimensions of a vessel hold, mL: a frustum or a box; missing where a dimension is. */
export function outsideVolume(
  vessel: Pick<Vessel, 'diameterMm' | 'baseDiameterMm' | 'heightMm' | 'boxMm'>,
): Given<number> {
  const height = valueOf(vessel.heightMm);
  const rim = valueOf(vessel.diameterMm);
  const box = valueOf(vessel.boxMm);
  if (height === undefined) return MISSING;
  if (box !== undefined) {
    const [length, width] = box;
    return worked(
      volumeMl({ kind: 'box', lengthMm: length, widthMm: width, heightMm: height }),
      phrase`${length} × ${width} × ${height} mm outside`,
    );
  }
  if (rim === undefined) return MISSING;
  const base = valueOf(vessel.baseDiameterMm) ?? rim;
  return worked(
    volumeMl({ kind: 'round', rimMm: rim, baseMm: base, heightMm: height }),
    base === rim ? phrase`Ø ${rim} × ${height} mm outside` : phrase`Ø ${rim} to ${base} × ${height} mm outside`,
  );
}

function worked(value: number, from: string): Given<number> {
  return { grounds: 'worked-out', value, from, cites: ['cp-label-volume'] };
}

/** Stated capacity, else what the outside dimensions hold. */
export function capacityOf(
  vessel: Pick<Vessel, 'statedCapacityMl' | 'diameterMm' | 'baseDiameterMm' | 'heightMm' | 'boxMm'>,
): Given<number> {
  return vessel.statedCapacityMl.grounds === 'missing' ? outsideVolume(vessel) : vessel.statedCapacityMl;
}

/** How many of each vessel of a set, when the line's count is of the vessels or of the sets. */
export function eachOf(quantity: Given<number>, vessels: number): Given<number> {
  if (quantity.grounds === 'missing' || vessels === 1) return quantity;
  const sets = quantity.value % vessels === 0 ? quantity.value / vessels : quantity.value;
  return { ...quantity, value: Math.max(1, sets) };
}

/** Plastic and wood are for no flame. */
export function takesFlame({ material }: Pick<Vessel, 'material'>): boolean {
  const made = valueOf(material);
  return made !== 'plastic' && made !== 'wood';
}
