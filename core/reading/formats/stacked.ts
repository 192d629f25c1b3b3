import { unitBySymbol } from '../quantities/units.js';
import type { Dictionary } from '../text/lexicon.js';
import { columnOf } from './columns.js';
import { trim } from './lines.js';
import type { Column, Row } from './rows.js';

/** Tables whose cells copying has set one below the other: "Pot 1.3 L", "1" and "185 g" on three lines, "Stove", "1" and "90 g" on the next three. */

/** So many rows of one form are a table: one figure may stand below a name by chance. */
const LEAST_ROWS = 2;
/** Rows of a name and one figure must be more. */
const LEAST_PAIRS = 3;
const MOST_CELLS = 8;
const MOST_COUNT = 24;
const LONGEST_FIGURE = 14;

/** A `count` may be a count, a `number` is too large or no whole one, a `measure` brings its unit. */
type Shape = 'name' | 'count' | 'number' | 'measure' | 'none';

/** A line, and what it looks like. */
interface Place {
  readonly row: Row;
  readonly shape: Shape;
}

/** Rows found, and the place after the last of them. */
interface Found {
  readonly rows: readonly Row[];
  readonly end: number;
  /** Cells of each. */
  readonly length: number;
}

type Columns = readonly (Column | undefined)[];

/** Puts the cells of such tables side by side again. */
export function unstacked(text: string, rows: readonly Row[], dictionary: Dictionary): readonly Row[] {
  let figures = 0;
  for (const row of rows) if (isFigure(shapeOf(text, row))) figures++;
  if (figures < LEAST_ROWS) return rows;
  const places = rows.filter((row) => row.type !== 'rule').map((row) => ({ row, shape: shapeOf(text, row) }));
  const out: Row[] = [];
  let known = 0;
  for (let at = 0; at < places.length;) {
    const found = headed(text, places, at, dictionary) ?? bare(text, places, at, known);
    known = found?.length ?? known;
    out.push(...(found?.rows ?? [places[at]!.row]));
    at = found?.end ?? at + 1;
  }
  return out;
}

function isFigure(shape: Shape): boolean {
  return shape === 'count' || shape === 'number' || shape === 'measure';
}

/** What a line of its own looks like; a bullet or a row of a table is no cell. */
function shapeOf(text: string, { cells, type, bullet }: Row): Shape {
  const [cell] = cells;
  if (cell === undefined || cells.length > 1 || bullet || type !== 'paragraph') return 'none';
  const [start, end] = trim(text, cell.start, cell.end);
  const code = text.charCodeAt(start);
  const digit = code >= 48 && code <= 57;
  if (end - start > LONGEST_FIGURE || !(digit || text[start] === 'x' || text[start] === '×')) return 'name';
  const parts = /^[x×]?\s?(\d{1,5}(?:[.,]\d{1,3})?)\s?(\p{L}{0,3}|×)\.?$/u.exec(text.slice(start, end));
  if (parts === null) return 'name';
  const unit = parts[2]!.toLowerCase();
  if (unit !== '' && unit !== 'x' && unit !== '×')
    return (unitBySymbol(unit)?.dimension ?? 'other') === 'other' ? 'name' : 'measure';
  const value = Number(parts[1]);
  return Number.isInteger(value) && value <= MOST_COUNT ? 'count' : 'number';
}

/** Rows below heads that stand one below the other too; between them may stand the names of sections. */
function headed(text: string, places: readonly Place[], at: number, dictionary: Dictionary): Found | undefined {
  const columns: Column[] = [];
  while (columns.length < MOST_CELLS) {
    const place = places[at + columns.length];
    const [cell] = place?.row.cells ?? [];
    if (place?.shape !== 'name' || cell === undefined) break;
    const column = columnOf(text, cell, dictionary);
    if (column === undefined) break;
    columns.push(column);
  }
  if (columns[0]?.meaning !== 'item' || !columns.some(isOfFigures)) return undefined;
  const from = at + columns.length;
  const rows: Row[] = places.slice(at, from).map(({ row }) => ({ ...row, type: 'columns' }));
  let end = from;
  let found = 0;
  for (let next = from; next < places.length;) {
    const group = places.slice(next, next + columns.length);
    const fits =
      group.length === columns.length &&
      group.every(({ shape }, i) => (isOfFigures(columns[i]!) ? isFigure(shape) : i > 0 || shape === 'name'));
    if (fits && follow(group)) {
      rows.push(sideBySide(group, columns));
      next += columns.length;
      end = next;
      found++;
    } else if (group[0]?.shape === 'name' && !isFigure(group[1]?.shape ?? 'none') && group[0].row.cells.length === 1) {
      rows.push(group[0].row);
      next++;
    } else break;
  }
  while (found > 0 && rows.at(-1)?.lastLine === undefined) rows.pop();
  return found < LEAST_ROWS ? undefined : { rows, end, length: columns.length };
}

function isOfFigures({ meaning }: Column): boolean {
  return meaning === 'quantity' || meaning === 'mass' || meaning === 'each' || meaning === 'total';
}

/** Rows without a head: a name and figures, again and again, as many and of the same form. Of a `known` length one is enough. */
function bare(text: string, places: readonly Place[], at: number, known: number): Found | undefined {
  const length = rowLength(places, at);
  if (length < 2 || length > MOST_CELLS) return undefined;
  const groups = [places.slice(at, at + length)];
  for (let next = at + length; rowLength(places, next) === length; next += length)
    groups.push(places.slice(next, next + length));
  const shapes = groups[0]!.map((_place, i) => groups.map((group) => group[i]!.shape));
  const alike = shapes.map(([first], i) =>
    shapes[i]!.every((shape) => shape === first || (shape !== 'measure' && first !== 'measure')),
  );
  const measured = shapes.some((column) => column[0] === 'measure');
  const least = length === 2 ? LEAST_PAIRS : length === known ? 1 : LEAST_ROWS;
  if (groups.length < least || !alike.every(Boolean)) return undefined;
  if (length === 2 && (measured || areNumbered(text, groups))) return undefined;
  const columns = shapes.map((column, i): Column | undefined =>
    i === 0 || column[0] === 'measure'
      ? undefined
      : { meaning: column.every((shape) => shape === 'count') ? 'quantity' : 'ignore', head: '' },
  );
  return { rows: groups.map((group) => sideBySide(group, columns)), end: at + groups.length * length, length };
}

/** 1, 2, 3 and so on number the names: they count nothing. */
function areNumbered(text: string, groups: readonly (readonly Place[])[]): boolean {
  return groups.every((group, i) => {
    const [cell] = group[1]!.row.cells;
    return Number(text.slice(cell!.start, cell!.end)) === i + 1;
  });
}

/** A name and the figures right below it, up to the next name; 0 where no name stands. */
function rowLength(places: readonly Place[], at: number): number {
  if (places[at]?.shape !== 'name') return 0;
  let end = at + 1;
  while (isFigure(places[end]?.shape ?? 'none') && follow([places[end - 1]!, places[end]!])) end++;
  return end - at;
}

/** Each on the line below the one before, or the one after that. */
function follow(places: readonly Place[]): boolean {
  return places.every(({ row }, i) => i === 0 || row.line - places[i - 1]!.row.line <= 2);
}

function sideBySide(group: readonly Place[], columns: Columns): Row {
  const cells = group.flatMap(({ row }, i) => {
    const column = columns[i];
    return row.cells.map((cell) => (column === undefined ? cell : { ...cell, column }));
  });
  const { line, level, quoted } = group[0]!.row;
  return { line, lastLine: group.at(-1)!.row.line, type: 'item', cells, level, bullet: true, quoted };
}
