/** What reading is held against, in the same run: it is the ratio that is told, for milliseconds are the machine's. */
import { createRequire } from 'node:module';
import { extractMeasurements } from 'parse-ingredient';

const { Culture, recognizeDimension } = createRequire(import.meta.url)('@microsoft/recognizers-text-number-with-unit');

/** Units as lists write them: small or large, short or in full, in Latin and other scripts. */
const UNITS =
  'ml|cl|dl|l|lit(?:er|re)s?|kg|kilos?|gr?|gramm|grams?|fl\\.? ?oz|oz|ounces?|lbs?|pounds?|mm|cm|in|inch(?:es)?|"|qt|quarts?|pt|pints?|cups?|gal|мл|л|кг|г|мм|см';

/** Numbers with their unit, words, signs: what any reader of such text begins with, and nothing more. "2 glasses" are no 2 g. */
const PIECE = new RegExp(`(\\d+(?:[.,]\\d+)?)[ \\t]?((?:${UNITS})(?!\\p{L}))?|\\p{L}+|\\s+|.`, 'iuy');

/** (a) A bare split and one sticky regular expression over every line. Gives how many numbers with a unit it found. */
export function splitAndStick(text) {
  let quantities = 0;
  for (const line of text.split('\n')) {
    PIECE.lastIndex = 0;
    for (let piece = PIECE.exec(line); piece !== null; piece = PIECE.exec(line))
      if (piece[2] !== undefined) quantities++;
  }
  return quantities;
}

/** (b) JSON.parse of the same lines. */
export function jsonOf(text) {
  return JSON.stringify(text.split('\n'));
}

/** (c) General-purpose recognisers of quantities in running text, doing only their part, line by line. */
export const RECOGNISERS = {
  'parse-ingredient, extractMeasurements': { lines: 1000, read: (line) => extractMeasurements(line) },
  'recognizers-text, recognizeDimension (en)': {
    lines: 100,
    read: (line) => recognizeDimension(line, Culture.English),
  },
};
