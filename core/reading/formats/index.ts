import type { Steps } from '../../steps.js';
import type { Dictionary } from '../text/lexicon.js';
import { countOf, delimited, piped, spaced } from './cells.js';
import { columnsOf, withItemColumn } from './columns.js';
import { htmlRows, htmlTable, isHtml } from './html.js';
import { fusedCells, isFusedHead, unitOfHead } from './fused.js';
import { recordAt } from './records.js';
import type { Unit } from '../quantities/units.js';
import { fieldRow } from './fields.js';
import { trim } from './lines.js';
import { unwound } from './beside.js';
import { unstacked } from './stacked.js';
import { withForms } from './blocks.js';
import { plainRow } from './plain.js';
import type { Cell, Column, Row, SourceLine } from './rows.js';

/** So many lines are one step. */
const LINES_A_STEP = 128;

/** Parts the lines of a text, as far as they are read, into rows, in the form it is written in. */
export function* rowsOf(text: string, read: readonly SourceLine[], dictionary: Dictionary): Steps<readonly Row[]> {
  if (isHtml(text)) return unstacked(text, htmlRows(text, read, dictionary), dictionary);
  const lines = unwound(text, read);
  const delimiter = delimiterOf(text, lines);
  const rows: Row[] = [];
  let table: Table | undefined;
  let fused: Unit | undefined;
  for (let i = 0; i < lines.length; i++) {
    if (i % LINES_A_STEP === 0) yield;
    const line = lines[i];
    if (line === undefined) continue;
    const html = htmlTable(text, lines, i);
    if (html.length > 0) {
      rows.push(...htmlRows(text, html, dictionary));
      i += html.length - 1;
      continue;
    }
    const record = recordAt(text, lines, i, dictionary);
    if (record !== undefined) {
      rows.push(record);
      i += (record.lastLine ?? record.line) - record.line;
      continue;
    }
    const cut = cellsOf(text, line, lines[i - 1], lines[i + 1], delimiter);
    if (cut === undefined) {
      const aligned = alignedHead(text, line, dictionary);
      if (aligned !== undefined) {
        table = { columns: withItemColumn(aligned.columns), by: 'place', starts: aligned.starts, line };
        rows.push({ ...plainRow(text, line, undefined), type: 'columns' });
        continue;
      }
      if (isFusedHead(text, line, dictionary)) {
        fused = unitOfHead(text, line, dictionary);
        rows.push({ ...plainRow(text, line, undefined), type: 'heading', level: 3 });
        continue;
      }
      const run = fused === undefined ? undefined : fusedCells(text, line, fused);
      if (run !== undefined) {
        rows.push({ line: line.number, type: 'item', cells: run, level: 0, bullet: true, quoted: false });
        continue;
      }
      if (table?.by === 'place') {
        const cells = byPlace(text, line, table);
        if (cells !== undefined) {
          rows.push({ line: line.number, type: 'item', cells, level: 0, bullet: true, quoted: false });
          continue;
        }
        if (line.end > line.start) table = undefined;
      } else if (table !== undefined)
        table = {
          ...table,
          parted: table.parted === 'prose' || line.end - line.start > LONGEST_HEAD ? 'prose' : 'head',
        };
      rows.push(plainRow(text, line, lines[i + 1]));
      continue;
    }
    if (table?.by !== cut.by || !goesOn(table, cut.cells.length)) table = undefined;
    if (cut.rule) {
      rows.push({ line: line.number, type: 'rule', cells: [], level: 0, bullet: false, quoted: false });
      continue;
    }
    const after = lines[i + 1];
    const headed = cut.by === 'pipe' && after !== undefined && isDelimiterRow(text, after);
    const columns = headed || !hasDigits(text, line) ? columnsOf(text, cut.cells, dictionary, headed) : undefined;
    if (columns !== undefined) {
      table = { columns: withItemColumn(columns), by: cut.by, starts: [], line };
      rows.push({ line: line.number, type: 'columns', cells: cut.cells, level: 0, bullet: false, quoted: false });
      continue;
    }
    table ??= { columns: [], by: cut.by, starts: [], line };
    const field = cut.by === 'comma' ? undefined : fieldRow(text, cut.cells, line.number, dictionary);
    if (field !== undefined) {
      rows.push(field);
      continue;
    }
    const known = table.columns;
    rows.push({
      line: line.number,
      type: 'item',
      cells: withColumns(cut.cells, known),
      level: 0,
      bullet: true,
      quoted: false,
    });
  }
  return withForms(text, unstacked(text, withoutNumbering(text, rows), dictionary));
}

interface Table {
  readonly columns: readonly (Column | undefined)[];
  readonly by: 'pipe' | 'tab' | 'comma' | 'place';
  /** Of columns told apart by place: where each begins in its line. */
  readonly starts: readonly number[];
  readonly line: SourceLine;
  /** What stands between its rows: a blank line or a heading, or a line of prose. */
  readonly parted?: 'head' | 'prose';
}

/** Below a heading a row has the table's columns unless it has more; below prose where it has as many, three or more. */
function goesOn({ parted, columns }: Table, cells: number): boolean {
  if (parted === undefined) return true;
  return parted === 'head' ? cells <= columns.length : cells === columns.length && cells > 2;
}

/** The longest heading, in characters, between the rows of one table; a longer line is prose. */
const LONGEST_HEAD = 60;

export function withColumns(cells: readonly Cell[], columns: readonly (Column | undefined)[]): Cell[] {
  return cells.map((cell, i) => {
    const column = columns[i];
    return column === undefined ? cell : { ...cell, column };
  });
}

/** From so many rows on, 1, 2, 3 and so on are hardly counts. */
const NUMBERED = 4;

/** A first column of 1, 2, 3 and so on numbers the rows of a table: it counts nothing. */
function withoutNumbering(text: string, rows: Row[]): Row[] {
  let run: number[] = [];
  const flush = () => {
    if (run.length >= NUMBERED)
      for (const at of run) {
        const { cells, ...row } = rows[at]!;
        const [first, ...others] = cells;
        rows[at] = { ...row, cells: [{ ...first!, column: { meaning: 'ignore', head: '' } }, ...others] };
      }
    run = [];
  };
  for (const [at, { cells, type }] of rows.entries()) {
    const [first] = cells;
    if (type === 'rule' || (cells.length > 1 && first?.end === first?.start)) continue;
    const digits = first === undefined || cells.length < 2 ? 0 : first.end - first.start;
    const number = digits > 0 && digits < 4 ? Number(text.slice(first!.start, first!.end)) : 0;
    if (number !== run.length + 1) flush();
    if (number === run.length + 1) run.push(at);
  }
  flush();
  return rows;
}

interface Cut {
  readonly cells: readonly Cell[];
  readonly by: 'pipe' | 'tab' | 'comma';
  readonly rule: boolean;
}

function cellsOf(
  text: string,
  line: SourceLine,
  before: SourceLine | undefined,
  after: SourceLine | undefined,
  delimiter: ',' | ';' | undefined,
): Cut | undefined {
  if (line.end === line.start) return undefined;
  const pipes = countOf(text, line.start, line.end, '|');
  if (pipes > 0) {
    if (isDelimiterRow(text, line)) return { cells: [], by: 'pipe', rule: true };
    const [start] = trim(text, line.start, line.end);
    const neighbour = [before, after].some(
      (other) => other !== undefined && countOf(text, other.start, other.end, '|', 3) > 0,
    );
    if (
      text[start] === '|' ||
      (neighbour && pipes > 1) ||
      (pipes > 0 && after !== undefined && isDelimiterRow(text, after)) ||
      (pipes > 0 && before !== undefined && isDelimiterRow(text, before))
    )
      return { cells: piped(text, line.start, line.end), by: 'pipe', rule: false };
  }
  const [, end] = trim(text, line.start, line.end);
  if (countOf(text, line.start, end, '\t') > 0) {
    const cells = delimited(text, line.start, line.end, '\t');
    const [start] = trim(text, line.start, line.end);
    const indented = countOf(text, start, end, '\t') === 0;
    const neighbour = [before, after].some(
      (other) => other !== undefined && countOf(text, trim(text, other.start, other.end)[0], other.end, '\t', 2) > 0,
    );
    if (!indented || (neighbour && text[line.end - 1] === '\t')) return { cells, by: 'tab', rule: false };
  }
  if (delimiter !== undefined)
    return { cells: delimited(text, line.start, line.end, delimiter), by: 'comma', rule: false };
  return undefined;
}

/** Heads of columns have no figures: a quick look that spares the rows below. */
function hasDigits(text: string, line: SourceLine): boolean {
  for (let at = line.start; at < line.end; at++) {
    const code = text.charCodeAt(at);
    if (code >= 48 && code <= 57) return true;
  }
  return false;
}

function isDelimiterRow(text: string, line: SourceLine): boolean {
  const [start, end] = trim(text, line.start, line.end);
  if (end - start < 3 || end - start > 2000) return false;
  let dashes = 0;
  for (let at = start; at < end; at++) {
    const char = text[at] ?? '';
    if (char === '-') dashes++;
    else if (!'|:+ ='.includes(char)) return false;
  }
  return dashes > 2 && (countOf(text, start, end, '|') > 0 || countOf(text, start, end, '+') > 1);
}

/** The mark that parts the fields, where nearly every line has as many of it: a file of comma-separated values. */
function delimiterOf(text: string, lines: readonly SourceLine[]): ',' | ';' | undefined {
  const full = lines.filter((line) => line.end > line.start).slice(0, 200);
  if (full.length < 3) return undefined;
  for (const mark of [';', ','] as const) {
    const counts = full.map((line) => countOf(text, line.start, line.end, mark));
    // The head may have more columns than the rows fill: "TYPE,CONTENT,PRIORITY,DATE" over "task,Mug,4".
    for (const usual of new Set(counts.slice(0, 2))) {
      if (usual < 2) continue;
      const alike = counts.filter((count) => Math.abs(count - usual) <= (mark === ';' ? 1 : 0)).length;
      if (alike * 10 >= full.length * 8) return mark;
    }
  }
  return undefined;
}

/** A head set in columns by wide gaps: "ITEM    NO.   SIZE   WEIGHT". */
function alignedHead(
  text: string,
  line: SourceLine,
  dictionary: Dictionary,
): { columns: (Column | undefined)[]; starts: number[] } | undefined {
  if (line.end - line.start > 200) return undefined;
  const cells = spaced(text, line.start, line.end);
  if (cells.length < 3) return undefined;
  const columns = columnsOf(text, cells, dictionary, false);
  return columns === undefined ? undefined : { columns, starts: cells.map((cell) => cell.start - line.start) };
}

/** Cells of a line under such a head: each belongs to the column that begins nearest to it. */
function byPlace(text: string, line: SourceLine, table: Table): Cell[] | undefined {
  const cells = spaced(text, line.start, line.end);
  if (cells.length < 2) return undefined;
  const placed: Cell[] = [];
  for (const cell of cells) {
    let best = 0;
    const middle = (i: number) => Math.abs((table.starts[i] ?? 0) - (cell.start - line.start));
    for (let i = 1; i < table.starts.length; i++) if (middle(i) < middle(best)) best = i;
    const column = table.columns[best];
    placed.push(column === undefined ? cell : { ...cell, column });
  }
  return placed;
}
