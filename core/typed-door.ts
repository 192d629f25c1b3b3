/** What every door has, whether it reads lists or not. */
export { checkPot, lookFor, type CheckOptions, type WordingOptions } from './pot.js';
export { finish } from './steps.js';
export type { LookFor } from './look-for.js';
export { remark } from './report/remark.js';
export {
  countSentences,
  isTicked,
  letterParagraphs,
  letterParts,
  letterSay,
  LETTER_SECTIONS,
  writeLetter,
  type LetterChoice,
  type LetterFormat,
  type LetterParagraph,
  type LetterPart,
} from './report/letter.js';
export { parseMeasure } from './reading/quantities/index.js';
export type { Language } from './report/language.js';
export * from './figures.js';
export type { Check } from './model/check.js';
export type * from './model/finding.js';
export type * from './model/given.js';
export type * from './model/item.js';
export type * from './model/measure.js';
export type * from './model/pot.js';
export type * from './model/reading.js';
export type * from './model/report.js';
export type * from './model/source.js';
export type * from './model/span.js';
export type * from './model/trip.js';
