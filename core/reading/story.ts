import { valueOf } from '../model/given.js';
import type { Item } from '../model/item.js';
import type { Stretch } from './items/stretch.js';

/** From this many words a text can be told for a story, where it names a thing in fewer than one of so many words. */
const STORY_WORDS = 150;
const WORDS_A_THING = 40;

/**
 * A text that tells and lists nothing: long lines in which kit is named seldom, and never with a figure.
 * A kettle in a novel is nobody's kettle.
 */
export function isStory(items: readonly Item[], stretches: readonly Stretch[]): boolean {
  if (items.some(hasFigure)) return false;
  const words = stretches.reduce((sum, stretch) => sum + stretch.tokens.length, 0);
  const inBullets = stretches.filter((stretch) => stretch.row.bullet || stretch.row.cells.length > 1);
  return words >= STORY_WORDS && words > items.length * WORDS_A_THING && inBullets.length * 4 < stretches.length;
}

function hasFigure(item: Item): boolean {
  const { massG, diameterMm, heightMm, sizeMm, burnerMm, fuelMassG, fuelVolumeMl } = item;
  return (
    item.capacitiesMl.length > 0 ||
    [massG, diameterMm, heightMm, sizeMm, burnerMm, fuelMassG, fuelVolumeMl].some(
      (given) => valueOf(given) !== undefined,
    )
  );
}
