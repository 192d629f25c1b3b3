import { FUEL_LIMITS, outOfLimits, POT_LIMITS, STOVE_LIMITS, type Limits } from '../input/limits.js';
import { MISSING, type Given } from '../model/given.js';
import type { Item } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import type { InputProblem } from '../model/report.js';

type Measured =
  'massG' | 'diameterMm' | 'baseDiameterMm' | 'heightMm' | 'burnerMm' | 'supportsMm' | 'fuelMassG' | 'fuelVolumeMl';

/** What each figure of an item may be, whatever it is of: the widest limits that apply. */
const LIMITS: Readonly<Record<Measured, Limits>> = {
  massG: { ...POT_LIMITS.mass, least: 0, than: phrase`anyone carries in one piece` },
  diameterMm: POT_LIMITS.diameter,
  baseDiameterMm: POT_LIMITS.baseDiameter,
  heightMm: POT_LIMITS.height,
  burnerMm: STOVE_LIMITS.burnerDiameter,
  supportsMm: STOVE_LIMITS.armSpan,
  fuelMassG: FUEL_LIMITS.mass,
  fuelVolumeMl: FUEL_LIMITS.volume,
};
const MEASURED = Object.keys(LIMITS) as Measured[];
const VESSEL_KINDS = new Set<Item['kind']>(['pot', 'mug', 'kettle', 'pan']);

/** The item without the figures that no such thing can have; each is told as a problem of its line. */
export function withinLimits(item: Item, problems: InputProblem[]): Item {
  const isOut = (given: Given<number>, limits: Limits): boolean => {
    if (given.grounds === 'missing') return false;
    const problem = outOfLimits(`line.${item.line}`, String(given.value), given.value, limits);
    if (problem) problems.push(problem);
    return problem !== null;
  };
  const out = MEASURED.filter((field) => isOut(item[field], LIMITS[field]));
  const kept = out.length === 0 ? item : { ...item, ...Object.fromEntries(out.map((field) => [field, MISSING])) };
  if (!VESSEL_KINDS.has(item.kind)) return kept;
  const { capacitiesMl } = item;
  const fits = capacitiesMl.map((capacity) => (isOut(capacity, POT_LIMITS.capacity) ? MISSING : capacity));
  return fits.includes(MISSING) ? { ...kept, capacitiesMl: fits } : kept;
}
