import type { ColumnMeaning, UnitName } from '../../data/words/words.js';
import { UNITS, unitByName, unitBySymbol, type Unit } from '../quantities/units.js';
import type { Dictionary } from '../text/lexicon.js';
import { findTerms, type Term } from '../text/terms.js';
import { tokenise, type Token } from '../text/tokens.js';
import type { Cell, Column } from './rows.js';

/** A mass needs no more than its unit to be a column of masses. */
const OF_DIMENSION: Readonly<Record<string, ColumnMeaning>> = {
  mass: 'mass',
  ounce: 'mass',
  volume: 'capacity',
  length: 'size',
};

/** Reads a cell as the head of a column; undefined where it is none. */
export function columnOf(text: string, cell: Cell, dictionary: Dictionary): Column | undefined {
  if (cell.end - cell.start > 40) return undefined;
  const tokens = tokenise(text, cell.start, cell.end, true).filter((token) => token.fold !== '*');
  const head = text.slice(cell.start, cell.end);
  if (tokens.some((token) => token.type === 'number')) return undefined;
  const terms = findTerms(tokens, dictionary);
  const unit = unitIn(tokens, terms);
  const columns = terms.filter((term) => term.role === 'column');
  const first = tokens.findIndex((token) => token.type === 'word' || token.fold === '#');
  if (isCountForEach(tokens, terms, first)) return { meaning: 'person', head };
  const lead = columns.find((term) => term.first === first);
  const covered = columns.filter((term) => term.value !== 'ignore' || term.first === first);
  if (lead === undefined) {
    if (unit !== undefined && tokens.filter((token) => token.type === 'word').length <= 2)
      return { meaning: OF_DIMENSION[unit.dimension] ?? 'ignore', unit, head };
    return undefined;
  }
  const words = tokens.filter((token) => token.type === 'word').length;
  if (words > 4 && lead.last - lead.first < 1) return undefined;
  let meaning = lead.value as ColumnMeaning;
  const each = covered.some((term) => term.value === 'each');
  const total = covered.some((term) => term.value === 'total');
  const massy =
    covered.some((term) => term.value === 'mass') ||
    (unit !== undefined && (unit.dimension === 'mass' || unit.dimension === 'ounce'));
  if ((massy || meaning === 'each') && each) meaning = 'each';
  else if (massy && total) meaning = 'total';
  else if (massy && (meaning === 'quantity' || meaning === 'unit' || meaning === 'size' || meaning === 'item'))
    meaning = 'mass';
  return unit === undefined ? { meaning, head } : { meaning, unit, head };
}

/** "Per person", "Anzahl pro Person": what the column counts, each person brings. One word ("each", "jeder") may be of pieces, or an owner. */
function isCountForEach(tokens: readonly Token[], terms: readonly Term[], first: number): boolean {
  const person = terms.find(
    (term) => term.role === 'perPerson' && (term.last > term.first || tokens[term.first]?.fold === 'pp'),
  );
  if (person === undefined || terms.some((term) => term.role === 'each' && term.first === person.first)) return false;
  return (
    person.first === first ||
    terms.some((term) => term.role === 'column' && term.first === first && term.value === 'quantity')
  );
}

/** Beside a column that counts for each person, "per group" and "shared" head the count of what all share. */
function isCountForAll(text: string, cell: Cell, dictionary: Dictionary): boolean {
  const terms = findTerms(tokenise(text, cell.start, cell.end, true), dictionary);
  return terms.some((term) => term.role === 'shared' || term.role === 'perGroup');
}

/** The unit that a head names: "Weight (g)", "oz ea", "weight_kg". */
export function unitIn(tokens: readonly Token[], terms: readonly Term[]): Unit | undefined {
  for (const [i, token] of tokens.entries()) {
    const term = terms.find((t) => t.role === 'unit' && t.first === i);
    if (term !== undefined) {
      const unit = unitByName(term.value as UnitName);
      if (unit.dimension !== 'temperature') return unit;
    }
    if (token.type !== 'word') continue;
    if (token.fold === 'fl') return UNITS.floz;
    const unit = unitBySymbol(token.fold);
    if (
      unit !== undefined &&
      unit.dimension !== 'other' &&
      unit.dimension !== 'temperature' &&
      token.fold !== 'in' &&
      token.fold !== 'm' &&
      token.fold !== 'pt'
    )
      return unit;
  }
  return undefined;
}

/** The columns that a row heads; undefined where it is no head. `sure` where the format itself says it is one. */
export function columnsOf(
  text: string,
  cells: readonly Cell[],
  dictionary: Dictionary,
  sure: boolean,
): (Column | undefined)[] | undefined {
  if (cells.length < 2) return undefined;
  const heads = cells.map((cell) => columnOf(text, cell, dictionary));
  const columns = heads.some((head) => head?.meaning === 'person') ? withShared(text, cells, heads, dictionary) : heads;
  const named = columns.filter((column) => column !== undefined).length;
  const filled = cells.filter((cell) => cell.end > cell.start).length;
  if (sure || (named >= 2 && named * 2 >= filled)) return columns;
  return named === 1 && filled === 2 && columns[0] === undefined && isSection(text, cells[0]!, dictionary)
    ? columns
    : undefined;
}

/** "Kitchen, g": the name of a section heads its things. */
function isSection(text: string, cell: Cell, dictionary: Dictionary): boolean {
  const tokens = tokenise(text, cell.start, cell.end, true);
  return findTerms(tokens, dictionary).some(
    ({ role, first, last }) => role === 'section' && first === 0 && last === tokens.length - 1,
  );
}

function withShared(
  text: string,
  cells: readonly Cell[],
  heads: readonly (Column | undefined)[],
  dictionary: Dictionary,
): (Column | undefined)[] {
  return heads.map((head, i) => {
    const cell = cells[i];
    const open = head === undefined || head.meaning === 'category';
    return open && cell !== undefined && isCountForAll(text, cell, dictionary)
      ? { meaning: 'quantity', head: text.slice(cell.start, cell.end) }
      : head;
  });
}

/** Where no head names the column of the things: the first that no other meaning has taken. */
export function withItemColumn(columns: readonly (Column | undefined)[]): (Column | undefined)[] {
  const item = columns.findIndex((column) => column?.meaning === 'item');
  if (item >= 0)
    return columns.map((column, i) =>
      // The same head again begins a table beside the first.
      column?.meaning === 'item' && i > item && column.head.trim() !== columns[item]?.head.trim()
        ? { ...column, meaning: 'notes' }
        : column,
    );
  const at = columns.findIndex((column) => column === undefined || column.meaning === 'notes');
  return columns.map((column, i) => (i === at ? { meaning: 'item', head: '' } : column));
}
