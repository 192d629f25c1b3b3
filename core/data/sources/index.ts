import type { Source, SourceId } from '../../model/source.js';
import { FOOD_SOURCES } from './food.js';
import { FUEL_SOURCES } from './fuels.js';
import { HAZARD_SOURCES } from './hazards.js';
import { NEED_SOURCES } from './needs.js';
import { PRACTICE_SOURCES } from './practice.js';
import { SNOW_SOURCES } from './snow.js';
import { STABILITY_SOURCES } from './stability.js';
import { STOVE_SOURCES } from './stoves.js';
import { UNIT_SOURCES } from './units.js';
import { WATER_SOURCES } from './water.js';

/** The bibliography: all that a figure of the report can rest on. */
export const SOURCES: readonly Source[] = [
  ...UNIT_SOURCES,
  ...WATER_SOURCES,
  ...FUEL_SOURCES,
  ...STOVE_SOURCES,
  ...SNOW_SOURCES,
  ...NEED_SOURCES,
  ...HAZARD_SOURCES,
  ...STABILITY_SOURCES,
  ...FOOD_SOURCES,
  ...PRACTICE_SOURCES,
];

const BY_ID: ReadonlyMap<SourceId, Source> = new Map(SOURCES.map((source) => [source.id, source]));

/**
 * The entry of the bibliography with this id.
 * @throws TypeError where there is none: a citation is written by hand, so that is a slip in the code.
 */
export function sourceById(id: SourceId): Source {
  const source = BY_ID.get(id);
  if (source === undefined) throw new TypeError(`No source has the id "${id}": add it to core/data/sources.`);
  return source;
}
