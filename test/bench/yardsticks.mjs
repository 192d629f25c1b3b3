/** What reading is held against, in the same run: it is the ratio that is told, for milliseconds are the machine's. */
import { createRequire } from 'node:module';
import { extractMeasurements } from 'parse-ingredient';

const { Culture, recognizeDimension } = createRequire(import.meta.url)('@microsoft/recognizers-text-number-with-unit');

/** Numbers with their unit, words, signs: what any reader of such text begins with, and nothing more. */
const PIECE = /(\d+(?:[.,]\d+)?)[ \t]?(ml|cl|dl|l|kg|g|oz|lb|mm|cm|in|qt)?|\p{L}+|\s+|./uy;

/** (a) A bare split and one sticky regular expression over every line. Gives how many pieces it found. */
export function splitAndStick(text) {
  let pieces = 0;
  for (const line of text.split('\n')) {
    PIECE.lastIndex = 0;
    while (PIECE.exec(line) !== null) pieces++;
  }
  return pieces;
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
