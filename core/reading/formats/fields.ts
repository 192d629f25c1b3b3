import type { ColumnMeaning } from '../../data/words/words.js';
import type { Dictionary } from '../text/lexicon.js';
import { columnOf } from './columns.js';
import type { Cell, Row } from './rows.js';

const FIELDS: ReadonlySet<ColumnMeaning | 'fused' | 'person'> = new Set<ColumnMeaning>([
  'mass',
  'each',
  'capacity',
  'size',
  'material',
]);
const LONGEST_LABEL = 24;

/** "Capacity, 1.3 L": a row of a table that describes one thing is a label and what it says, as a line "Capacity: 1.3 L" is. */
export function fieldRow(text: string, cells: readonly Cell[], line: number, dictionary: Dictionary): Row | undefined {
  const [label, value] = cells;
  if (label === undefined || value === undefined || cells.length > 2 || value.end === value.start) return undefined;
  if (label.end === label.start || label.end - label.start > LONGEST_LABEL) return undefined;
  const meaning = columnOf(text, label, dictionary)?.meaning;
  if (meaning === undefined || !FIELDS.has(meaning)) return undefined;
  const cell = { start: label.start, end: value.end };
  return { line, type: 'paragraph', cells: [cell], level: 0, bullet: false, quoted: false };
}
