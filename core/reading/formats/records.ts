import type { Dictionary, Role } from '../text/lexicon.js';
import { findTerms } from '../text/terms.js';
import { tokenise } from '../text/tokens.js';
import { columnOf } from './columns.js';
import { isSpace, trim } from './lines.js';
import { afterBullet } from './plain.js';
import type { Cell, Column, Row, SourceLine } from './rows.js';

/** Lines of one record at most. */
const MOST_FIELDS = 24;
const LONGEST_KEY = 32;
const WRAPS = '"\'“”{}[],';

interface Field {
  /** What its key means; undefined where no column bears such a head. */
  readonly column: Column | undefined;
  readonly key: Cell;
  readonly value: Cell;
  /** Characters before its key. */
  readonly indent: number;
  /** A bullet or an opening brace stands before it. */
  readonly opens: boolean;
}

/**
 * A thing told in fields, one a line: "- name: Pot 650 ml", "weight_oz: 5.7", "notes: …", or the same as JSON. Gives it as one row whose cells
 * have the keys for heads. Only what begins with the name is a record: "- pot: 1 L" is a line of a list.
 */
export function recordAt(
  text: string,
  lines: readonly SourceLine[],
  at: number,
  dictionary: Dictionary,
): Row | undefined {
  const line = lines[at];
  if (line === undefined) return undefined;
  const first = fieldOf(text, line, dictionary);
  if (first?.column?.meaning !== 'item' || !(first.opens || isOpen(text, lines[at - 1]))) return undefined;
  const cells: Cell[] = [{ ...first.value, column: first.column }];
  let last = line;
  let known = false;
  for (let i = at + 1; i < lines.length && i - at < MOST_FIELDS; i++) {
    const next = lines[i];
    const field = next === undefined ? undefined : fieldOf(text, next, dictionary);
    if (next === undefined || field === undefined || field.opens || field.indent < first.indent) break;
    if (field.column?.meaning === 'item') break;
    known ||= field.column !== undefined;
    cells.push(cellOf(text, field, dictionary));
    last = next;
  }
  if (cells.length < 2 || !known) return undefined;
  return { line: line.number, lastLine: last.number, type: 'item', cells, level: 0, bullet: true, quoted: false };
}

/** "lid: yes" is read as it stands; of a key that says nothing here the value is none of ours. */
function cellOf(text: string, { column, key, value }: Field, dictionary: Dictionary): Cell {
  if (column !== undefined) return { ...value, column };
  const told = findTerms(tokenise(text, key.start, key.end, true), dictionary).some(({ role }) => TRAITS.has(role));
  return told ? { start: key.start, end: value.end } : { ...value, column: { meaning: 'ignore', head: '' } };
}

const TRAITS: ReadonlySet<Role> = new Set(['kind', 'handles', 'bail', 'dimension', 'holds', 'fuelTypes']);

/** Nothing, or only an opening brace, stands on the line. */
function isOpen(text: string, line: SourceLine | undefined): boolean {
  if (line === undefined) return true;
  const [start, end] = trim(text, line.start, line.end);
  return start === end || (end - start === 1 && text[start] === '{');
}

/** "weight_oz: 5.7", "\"name\": \"Pot\",": a key of few words, a colon, and a value on the same line. */
function fieldOf(text: string, line: SourceLine, dictionary: Dictionary): Field | undefined {
  const [own, end] = trim(text, line.start, line.end);
  let start = afterBullet(text, own, end);
  if (text[start] === '{') start++;
  const opens = start > own;
  [start] = trim(text, start, end);
  const colon = text.indexOf(':', start);
  if (colon < 0 || colon >= end || colon === start || colon - start > LONGEST_KEY) return undefined;
  if (!isSpace(text.charCodeAt(colon + 1))) return undefined;
  const key = unwrapped(text, start, colon);
  const value = unwrapped(text, colon + 1, end);
  if (key.end <= key.start || value.end <= value.start) return undefined;
  return { column: columnOf(text, key, dictionary), key, value, indent: start - line.start, opens };
}

/** Without the quotes, braces and commas of the format. */
function unwrapped(text: string, from: number, to: number): Cell {
  let [start, end] = trim(text, from, to);
  while (start < end && WRAPS.includes(text.charAt(start))) start++;
  while (end > start && WRAPS.includes(text.charAt(end - 1))) end--;
  [start, end] = trim(text, start, end);
  return { start, end };
}
