import type { Correction, Reading, Report, UnitSystem } from '../core/index.js';

/** Fields as typed; what cannot be used among them is told beside the field. */
export type Fields = Readonly<Record<string, string | number | boolean>>;

/** All that the person typed, as plain JSON: what a page keeps to give it back later. */
export interface Draft {
  readonly entrance: 'list' | 'pot';
  readonly text: string;
  readonly corrections: readonly Correction[];
  /** By the names of `Trip`; what is not in it is taken from the list or assumed. */
  readonly trip: Fields;
  /** By the names of `PotInput` and `StoveInput`. */
  readonly pot: Fields;
  readonly stove: Fields;
  /** What is ticked and written of an answer to send; empty until one is begun. */
  readonly letter: Fields;
  /** null: as the list is written. */
  readonly units: UnitSystem | null;
}

export const EMPTY_DRAFT: Draft = {
  entrance: 'list',
  text: '',
  corrections: [],
  trip: {},
  pot: {},
  stove: {},
  letter: {},
  units: null,
};

/** A report with the draft it is of. */
export interface Judged {
  readonly draft: Draft;
  readonly report: Report;
  /** The reading before any correction, to show what a corrected value was. */
  readonly asRead: Reading;
}

/** Whether anything is typed that can be judged; a name alone is not. */
export function isAsked({ entrance, text, pot }: Draft): boolean {
  return entrance === 'list' ? text.trim() !== '' : Object.keys(pot).some((name) => name !== 'name');
}
