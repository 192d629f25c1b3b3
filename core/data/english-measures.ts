import { en } from './words/en.js';
import type { Words } from './words/words.js';

/** The fields of `Words` that a measure is typed with. */
const MEASURING: readonly (keyof Words)[] = [
  'language',
  'name',
  'decimal',
  'numbers',
  'article',
  'to',
  'and',
  'units',
  'us',
  'imperial',
  'imperialSigns',
];

/** The English words that a measure is typed with. The build writes them out, so that a page loads these and no others. */
export const MEASURES = {
  ...Object.fromEntries(MEASURING.map((name) => [name, en[name]])),
  trip: { minus: en.trip.minus },
} as unknown as Words;
