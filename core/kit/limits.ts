import { FUEL_LIMITS, outOfLimits, POT_LIMITS, STOVE_LIMITS, type Limits } from '../input/limits.js';
import { MISSING, type Given } from '../model/given.js';
import type { Item } from '../model/item.js';
import type { InputProblem } from '../model/report.js';

type Measured =
  'massG' | 'diameterMm' | 'baseDiameterMm' | 'heightMm' | 'burnerMm' | 'supportsMm' | 'fuelMassG' | 'fuelVolumeMl';

/** What each figure of an item may be, whatever it is of: the widest limits that apply. */
const LIMITS: Readonly<Record<Measured, Limits>> = {
  massG: { ...POT_LIMITS.mass, least: 0, than: 'anyone carries in one piece' },
  diameterMm: POT_LIMITS.diameter,
  baseDiameterMm: POT_LIMITS.baseDiameter,
  heightMm: POT_LIMITS.height,
  burnerMm: STOVE_LIMITS.burnerDiameter,
  supportsMm: STOVE_LIMITS.armSpan,
  fuelMassG: FUEL_LIMITS.mass,
  fuelVolumeMl: FUEL_LIMITS.volume,
};
const VESSEL_KINDS = new Set<Item['kind']>(['pot', 'mug', 'kettle', 'pan']);

/** The item without the figures that no such thing can have; each is told as a problem of its line. */
export function withinLimits(item: Item, problems: InputProblem[]): Item {
  const kept = <T extends Given<number>>(given: T, limits: Limits): T | Given<number> => {
    if (given.grounds === 'missing') return given;
    const problem = outOfLimits(`line.${item.line}`, String(given.value), given.value, limits);
    if (problem) problems.push(problem);
    return problem ? MISSING : given;
  };
  const figures = Object.fromEntries(
    (Object.entries(LIMITS) as [Measured, Limits][]).map(([field, limits]) => [field, kept(item[field], limits)]),
  ) as Pick<Item, Measured>;
  if (!VESSEL_KINDS.has(item.kind)) return { ...item, ...figures };
  return {
    ...item,
    ...figures,
    capacitiesMl: item.capacitiesMl.map((capacity) => kept(capacity, POT_LIMITS.capacity)),
  };
}
