import { valueOf } from '../model/given.js';
import type { Item } from '../model/item.js';
import type { Stretch } from './items/stretch.js';

/** From this many words a text can be told for a story, where it names a thing in fewer than one of so many words. */
const STORY_WORDS = 150;
const WORDS_A_THING = 40;
/** Words of a line without a bullet that may be an entry of a list. */
const LONGEST_ENTRY = 12;

/**
 * Tells a text that tells and lists nothing: long lines in which kit is named seldom, and never with a figure.
 * A kettle in a novel is nobody's kettle.
 */
export class Tale {
  private words = 0;
  /** Those in rows that are no entries of a list. */
  private told = 0;

  hear({ tokens, row }: Stretch): void {
    this.words += tokens.length;
    if (!row.bullet && row.cells.length === 1 && tokens.length > LONGEST_ENTRY) this.told += tokens.length;
  }

  isStory(items: readonly Item[]): boolean {
    return (
      this.told >= STORY_WORDS &&
      this.told > items.length * WORDS_A_THING &&
      this.told * 2 > this.words &&
      !items.some(hasFigure)
    );
  }
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
