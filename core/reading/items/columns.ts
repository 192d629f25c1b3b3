import { phrase } from '../../model/phrase.js';
import type { Span } from '../../model/span.js';
import type { Cell, Column, Row } from '../formats/rows.js';
import { valueBefore } from '../quantities/scale.js';
import { unitAfter, unitMarks } from '../quantities/unit-near.js';
import { unitBySymbol, UNITS, type Unit } from '../quantities/units.js';
import type { MassUnits } from '../usual-units.js';
import type { Dictionary } from '../text/lexicon.js';
import { findTerms } from '../text/terms.js';
import { tokenise, type Token } from '../text/tokens.js';
import { assumed, isMissing, stated, type Draft } from './draft.js';

interface Figure {
  readonly value: number;
  readonly span: Span;
}

/** What the columns of figures of a table row say. */
export interface ColumnFigures {
  readonly quantity?: Figure;
  readonly perPerson?: true;
  /** The column of owners says "everyone". */
  readonly ownedByEach?: true;
  readonly each?: Figure;
  readonly total?: Figure;
  readonly mass?: Figure;
  /** The column of masses gives what is in it ("2 kg filling"). */
  readonly net?: true;
  /** Nothing tells the unit of the masses. */
  readonly guessed?: true;
  /** Count and mass were run together: both are a guess. */
  readonly fused?: true;
}

/** Columns that are read here as figures; the others are read as words. */
const FIGURES = new Set(['quantity', 'person', 'each', 'total', 'mass', 'unit', 'fused']);

/** The cells whose words tell of the thing. */
export function wordCells(text: string, row: Row): Cell[] {
  return row.cells.filter(
    (cell) =>
      cell.end > cell.start &&
      !(
        !isAmount(text, cell) &&
        !namesThings(text, cell) &&
        cell.column !== undefined &&
        (FIGURES.has(cell.column.meaning) ||
          cell.column.meaning === 'ignore' ||
          cell.column.meaning === 'owner' ||
          cell.column.meaning === 'category')
      ),
  );
}

/** "200 ml" in the column of counts: an amount, which tells of the thing as words do. */
function isAmount(text: string, cell: Cell): boolean {
  if (
    (cell.column?.meaning !== 'quantity' && cell.column?.meaning !== 'person') ||
    cell.end - cell.start < LEAST_AMOUNT
  )
    return false;
  const [number, unit] = tokenise(text, cell.start, cell.end, true);
  const dimension = unitBySymbol(unit?.fold ?? '')?.dimension;
  return number?.number !== undefined && (dimension === 'volume' || dimension === 'mass' || dimension === 'ounce');
}

/** Under "Personal kit" may stand things as well as their counts; a tick or a "yes" is neither. */
function namesThings(text: string, cell: Cell): boolean {
  return (
    cell.column?.meaning === 'person' &&
    tokenise(text, cell.start, cell.end, true).some(({ type, fold }) => type === 'word' && fold.length > LONGEST_TICK)
  );
}

const LONGEST_TICK = 3;

/** A digit and a letter. */
const LEAST_AMOUNT = 2;

/** How many columns a table has that stands beside another of the same heads ("Tent, g, Kitchen, g"); all of them where there is one. */
function widthOf({ cells }: Row): number {
  const seen = new Map<string, number>();
  for (const [at, { column }] of cells.entries()) {
    const head = column?.head.trim().toLowerCase() ?? '';
    if (head === '' || !FIGURES.has(column?.meaning ?? '')) continue;
    const first = seen.get(head);
    const width = at - (first ?? at);
    if (width > 1 && !FIGURES.has(cells[width]?.column?.meaning ?? '')) return width;
    if (first === undefined) seen.set(head, at);
  }
  return cells.length;
}

/** Where the table of a cell begins, of those side by side in a row. */
export function besideOf(row: Row, cell: number): number {
  return cell - (cell % widthOf(row));
}

/** The cells of the table that begins at `start`. */
export function besideRow(row: Row, start: number): Row {
  return { ...row, cells: row.cells.slice(start, start + widthOf(row)) };
}

export function figuresOf(
  text: string,
  row: Row,
  dictionary: Dictionary,
  { usual, guessed }: Pick<MassUnits, 'usual' | 'guessed'>,
): ColumnFigures {
  const figures: { -readonly [K in keyof ColumnFigures]: ColumnFigures[K] } = {};
  const unitCell = row.cells.find((cell) => cell.column?.meaning === 'unit');
  const rowUnit =
    unitCell === undefined ? undefined : unitBySymbol(text.slice(unitCell.start, unitCell.end).trim().toLowerCase());
  let pounds: { column: Column; figure: Figure } | undefined;
  for (const cell of row.cells) {
    const { column } = cell;
    if (column === undefined || cell.end <= cell.start) continue;
    if (column.meaning === 'owner' && isEverybody(text, cell, dictionary)) figures.ownedByEach = true;
    if ((column.meaning === 'quantity' || column.meaning === 'person') && !namesThings(text, cell)) {
      const person = column.meaning === 'person';
      const count = isAmount(text, cell) ? undefined : countOf(text, cell, dictionary);
      if (person && (count?.value === 0 || isDenial(text, cell, dictionary))) continue;
      if (person) figures.perPerson = true;
      if (count !== undefined && (person || figures.quantity === undefined)) figures.quantity = count;
    } else if (column.meaning === 'fused') {
      const digits = text.slice(cell.start, cell.end);
      figures.fused = true;
      figures.quantity = { value: Number(digits[0]), span: [cell.start, cell.start + 1] };
      figures.mass = { value: Number(digits.slice(1)) * (column.unit?.factor ?? 1), span: [cell.start + 1, cell.end] };
    } else if (column.meaning === 'each' || column.meaning === 'total' || column.meaning === 'mass') {
      const unit = column.unit ?? rowUnit ?? usual;
      if (unit === undefined && guessed !== undefined) figures.guessed = true;
      const figure = massOf(text, cell, dictionary, unit ?? guessed);
      if (figure !== undefined && figures[column.meaning] === undefined) {
        figures[column.meaning] = figure;
        if (findTerms(tokenise(text, cell.start, cell.end, true), dictionary).some((term) => term.role === 'net'))
          figures.net = true;
      } else if (figure !== undefined && splits(pounds, column, figure)) {
        figures[column.meaning] = { value: pounds!.figure.value + figure.value, span: pounds!.figure.span };
      }
      pounds = unit?.id === 'lb' && figure !== undefined ? { column, figure } : undefined;
    }
  }
  return figures;
}

/** "9" under "lb" and "4" under "oz" right beside it: one mass of two columns. The same mass twice would be 144 oz. */
function splits(pounds: { column: Column; figure: Figure } | undefined, column: Column, { value }: Figure): boolean {
  if (pounds?.column.meaning !== column.meaning || column.unit?.id !== 'oz') return false;
  return Number.isInteger(pounds.figure.value / UNITS.lb.factor) && value < UNITS.lb.factor;
}

/** The count of a cell, in digits or in words. */
function countOf(text: string, cell: Cell, dictionary: Dictionary): Figure | undefined {
  const tokens = tokenise(text, cell.start, cell.end, true);
  const digits = tokens.find((token) => token.number?.whole === true);
  if (digits?.number !== undefined) return { value: digits.number.value, span: [digits.start, digits.end] };
  const word = findTerms(tokens, dictionary).find((term) => term.role === 'number' && Number.isInteger(term.value));
  if (word === undefined) return undefined;
  return { value: Number(word.value), span: [tokens[word.first]?.start ?? 0, tokens[word.last]?.end ?? 0] };
}

function isEverybody(text: string, cell: Cell, dictionary: Dictionary): boolean {
  return findTerms(tokenise(text, cell.start, cell.end, true), dictionary).some((term) => term.role === 'perPerson');
}

/** "no", "–": nobody brings it. */
function isDenial(text: string, cell: Cell, dictionary: Dictionary): boolean {
  const tokens = tokenise(text, cell.start, cell.end, true);
  return (
    tokens.every((token) => token.fold === '-' || token.fold === '–') ||
    findTerms(tokens, dictionary).some((term) => term.role === 'no')
  );
}

/** The mass of a cell, g; undefined without a number or any unit. */
function massOf(text: string, cell: Cell, dictionary: Dictionary, headUnit: Unit | undefined): Figure | undefined {
  const tokens = tokenise(text, cell.start, cell.end, true).filter((token) => token.fold !== '*' && token.fold !== '~');
  const terms = findTerms(tokens, dictionary);
  const near = unitMarks(terms);
  const at = tokens.findIndex((token) => token.number !== undefined);
  const first = tokens[at];
  if (first?.number === undefined || Number.isNaN(first.number.value)) return undefined;
  const found = unitAfter(tokens, at, near, false);
  const unit = found?.unit ?? headUnit;
  if (unit === undefined || (unit.dimension !== 'mass' && unit.dimension !== 'ounce')) return undefined;
  let value = valueBefore(first.number, unit);
  let last = found?.last ?? at;
  const next = tokens[at + 1];
  if (
    found === undefined &&
    next?.number !== undefined &&
    first.number.whole &&
    first.number.digits <= 3 &&
    next.number.whole &&
    next.number.digits === 3 &&
    tokens.length === 2
  ) {
    value = value * 1000 + next.number.value;
    last = at + 1;
  }
  let grams = value * unit.factor;
  const more = found === undefined ? undefined : tokens[found.last + 1];
  if (unit.id === 'lb' && more?.number !== undefined && found !== undefined) {
    grams += more.number.value * UNITS.oz.factor;
    last = unitAfter(tokens, found.last + 1, near, false)?.last ?? found.last + 1;
  }
  return { value: grams, span: [first.start, (tokens[last] as Token).end] };
}

/** Gives the figures of the columns to the thing of the row; a mass stands with the first of several. */
export function applyFigures(drafts: readonly Draft[], figures: ColumnFigures): void {
  if (figures.fused === true) return applyGuess(drafts, figures);
  for (const draft of drafts)
    if (figures.quantity !== undefined) draft.quantity = stated(figures.quantity.value, figures.quantity.span);
  // "Mugs, 4, everyone": four of all people together.
  const each = figures.ownedByEach === true && (figures.quantity?.value ?? 1) === 1;
  if (figures.perPerson === true || each) for (const draft of drafts) draft.perPerson = true;
  const draft = drafts.find(({ kind }) => kind !== 'other-cook' && kind !== 'utensil') ?? drafts[0];
  if (draft === undefined || !isMissing(draft.massG)) return;
  const mass = figures.each ?? figures.mass ?? figures.total;
  if (mass === undefined || mass.value <= 0) return;
  if (figures.net === true && draft.kind === 'fuel') {
    draft.fuelMassG = stated(mass.value, mass.span);
    return;
  }
  draft.massG =
    figures.guessed === true
      ? assumed(mass.value, UNIT_GUESSED, phrase`write the unit`, mass.span)
      : stated(mass.value, mass.span);
  if (figures.each !== undefined) draft.massBasis = 'each';
  else if (figures.mass === undefined) draft.massBasis = 'line';
  else if (
    figures.total !== undefined &&
    figures.quantity !== undefined &&
    figures.quantity.value > 1 &&
    Math.abs(figures.total.value - figures.mass.value * figures.quantity.value) < 0.02 * figures.total.value
  )
    draft.massBasis = 'each';
}

const UNIT_GUESSED = phrase`the column shows no unit; figures this large are taken as grams`;

function applyGuess([draft]: readonly Draft[], { quantity, mass }: ColumnFigures): void {
  if (draft === undefined || quantity === undefined || mass === undefined) return;
  const because = phrase`figures run together by copying: the first digit is taken as the count`;
  const replaceWith = phrase`write the count and the mass apart`;
  draft.quantity = assumed(quantity.value, because, replaceWith, quantity.span);
  if (mass.value > 0) draft.massG = assumed(mass.value, because, replaceWith, mass.span);
}
