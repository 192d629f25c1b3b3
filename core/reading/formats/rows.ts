import type { ColumnMeaning } from '../../data/words/words.js';
import type { Unit } from '../quantities/units.js';

/** A line of the text as pasted, without its break. */
export interface SourceLine {
  /** 1-based. */
  readonly number: number;
  readonly start: number;
  readonly end: number;
}

/** What a column holds, and the unit its head gives. */
export interface Column {
  /** `fused`: count and mass, run together by copying. `person`: the count for each person. */
  readonly meaning: ColumnMeaning | 'fused' | 'person';
  readonly unit?: Unit;
  /** Which of the tables side by side, or of the quantity columns. */
  readonly head: string;
}

export interface Cell {
  readonly start: number;
  readonly end: number;
  readonly column?: Column;
}

/** What the reader goes through one after the other: a bullet, a table row, a heading, a paragraph. */
export interface Row {
  /** 1-based line that it begins on. */
  readonly line: number;
  /** The line of its last cell, where its cells stand one below the other. */
  readonly lastLine?: number;
  readonly type: 'item' | 'heading' | 'paragraph' | 'columns' | 'rule';
  /** One, or one for each column. */
  readonly cells: readonly Cell[];
  /** How deep it stands: spaces of indent, or the level of the heading. */
  readonly level: number;
  /** What the bullet says: ticked off, quoted. */
  readonly bullet: boolean;
  /** In a quotation ("> pot"). */
  readonly quoted: boolean;
  /** What the lines around it make of a line without a bullet: a wrapped paragraph, or a list. */
  readonly form?: 'prose' | 'list';
}
