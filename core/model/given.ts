import type { SourceId } from './source.js';
import type { Span } from './span.js';

/** A value and the grounds it stands on. Every figure that a check uses is one. */
export type Given<T> = Stated<T> | WorkedOut<T> | Assumed<T> | Missing;

/** In the list, or entered by the person. */
export interface Stated<T> {
  readonly grounds: 'stated';
  /** The value; of a range, its lower end. */
  readonly value: T;
  /** The upper end, where the text gives a range ("8-10 qt"). */
  readonly most?: T;
  /** Where it stands in the text; absent for a value typed into a field. */
  readonly span?: Span;
  /** Entered by the person: in a field, or as a correction of what was read. Outranks the text. */
  readonly typed?: true;
}

/** Follows from other values. */
export interface WorkedOut<T> {
  readonly grounds: 'worked-out';
  readonly value: T;
  /** The values it follows from, in words ("Ø 130 × 90 mm"). */
  readonly from: string;
  readonly cites: readonly SourceId[];
  /** Where the text gives what it follows from. */
  readonly span?: Span;
}

/** A guess or a default: shown as such, with its reason, and replaceable. */
export interface Assumed<T> {
  readonly grounds: 'assumed';
  readonly value: T;
  /** The reason, as a clause: "a bare number beside a pot is taken as millilitres". */
  readonly because: string;
  /** What to add or correct to replace it: "write the unit: 750 ml". */
  readonly replaceWith: string;
  /** The text it is guessed from; absent for a default. */
  readonly span?: Span;
}

export interface Missing {
  readonly grounds: 'missing';
}

export const MISSING: Missing = { grounds: 'missing' };

/** The value, or undefined where it is missing. */
export function valueOf<T>(given: Given<T>): T | undefined {
  return given.grounds === 'missing' ? undefined : given.value;
}
