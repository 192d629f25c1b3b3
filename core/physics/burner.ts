import { BASE_CLASS_MM, HEAT_SOURCES, type HeatSource } from '../data/stoves.js';
import type { Range } from '../model/finding.js';
import type { FuelType } from '../model/item.js';
import type { SourceId } from '../model/source.js';
import { assertWithin } from './range.js';

export interface Burner {
  readonly fuel: FuelType;
  /** Heat of the burning fuel, W, on the lower heating value. */
  readonly powerW: Range;
  /** Share of it that ends up in a lidded pot in still air, 0 to 1. */
  readonly efficiency: Range;
  readonly cites: readonly SourceId[];
}

/**
 * What a kind of stove, or an open fire, gives a pot of a base diameter: power and efficiency as ranges out of published rows.
 * Efficiency goes by three widths of base (see `core/data/stoves`), not by a law: none is published that we trust.
 * @param baseMm 20 to 1000 mm; where it is left out, the range spans every width and the likely value is a narrow pot's.
 */
export function burnerFor(source: HeatSource, baseMm?: number): Burner {
  const { fuel, powerW, efficiency, cites } = HEAT_SOURCES[source];
  if (baseMm === undefined) {
    const { slim, narrow, wide } = efficiency;
    return { fuel, powerW, efficiency: { low: slim.low, likely: narrow.likely, high: wide.high }, cites };
  }
  assertWithin('The base of the pot', baseMm, 20, 1000, ' mm');
  return { fuel, powerW, efficiency: efficiency[baseClass(baseMm)], cites };
}

function baseClass(baseMm: number): 'slim' | 'narrow' | 'wide' {
  if (baseMm < BASE_CLASS_MM.slimUnder) return 'slim';
  return baseMm < BASE_CLASS_MM.wideFrom ? 'narrow' : 'wide';
}
