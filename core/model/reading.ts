import type { CorrectableField, Item } from './item.js';
import type { Span } from './span.js';
import type { TripHints } from './trip.js';

/** What became of a line: an item or a trip hint was read from it; it is about something else; nobody could tell. */
export type LineUse = 'used' | 'not-cook-kit' | 'not-understood';

export interface Line {
  /** 1-based number. */
  readonly number: number;
  /** Where it stands, without its line break. */
  readonly span: Span;
  /** `blank` lines are not counted. */
  readonly use: LineUse | 'blank';
  /** Why, as a clause, where a reader would wonder ("a total", "nothing here names cook kit"). */
  readonly because?: string;
}

/** A thing that a sentence names where it is not plain whether it goes along. It counts for nothing until a correction (field `passing`) counts it. */
export interface Passing extends Item {
  /** Why it is not counted, as a clause. */
  readonly because: string;
}

/** What was understood from a text. */
export interface Reading {
  readonly items: readonly Item[];
  /** Things named in passing, in the order of the text: of each kind, size and material one, and none that the items hold already. */
  readonly passing: readonly Passing[];
  readonly lines: readonly Line[];
  readonly trip: TripHints;
  /** The languages its words were found in, the commonest first ("en"). */
  readonly languages: readonly string[];
  /** The units it is mostly written in. */
  readonly units: 'metric' | 'us' | 'imperial';
  /** Sentences about the text as a whole: line breaks lost, cut at a limit. */
  readonly notes: readonly string[];
}

/** A value the person put right. It finds its place by the line's own words, so it survives edits elsewhere. */
export interface Correction {
  /** The whole line as it stands in the text. */
  readonly quote: string;
  /** Which of the lines with exactly these words, from 0. */
  readonly occurrence: number;
  /** Which item of that line, from 0; one past the last adds an item (field `kind`). */
  readonly item: number;
  /** `passing` counts a thing that the line names in passing, with the value true; `item` is then which of those that were read there, from 0. */
  readonly field: CorrectableField | 'passing';
  /** For `capacityMl`: which vessel of the set, from 0. */
  readonly vessel?: number;
  /** A measure as typed ("1.1 l"), a word ("titanium"), yes or no; null for unknown. */
  readonly value: string | number | boolean | null;
}
