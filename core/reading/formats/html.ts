import type { Dictionary } from '../text/lexicon.js';
import { tagEnd } from '../text/fold.js';
import { columnsOf, withItemColumn } from './columns.js';
import { fieldRow } from './fields.js';
import { trim } from './lines.js';
import type { Cell, Column, Row, SourceLine } from './rows.js';

const BLOCKS = new Set([
  'p',
  'div',
  'li',
  'ul',
  'ol',
  'tr',
  'table',
  'thead',
  'tbody',
  'br',
  'h1',
  'h2',
  'h3',
  'h4',
  'h5',
  'h6',
  'hr',
  'dt',
  'dd',
  'dl',
  'section',
  'article',
  'header',
  'footer',
  'figure',
  'caption',
  'blockquote',
  'pre',
  'body',
  'html',
  'head',
  'main',
]);

/** A text that begins with a tag and has blocks of its own is HTML. */
export function isHtml(text: string): boolean {
  const [start] = trim(text, 0, Math.min(text.length, 2000));
  if (text[start] !== '<' || tagEnd(text, start, text.length) === 0) return false;
  return ['<li', '<td', '<p', '<tr', '<h', '<br', '<div', '<table', '<ul', '<meta'].some((tag) =>
    text
      .slice(start, start + 20_000)
      .toLowerCase()
      .includes(tag),
  );
}

/** The lines from one that opens a table in HTML to the one that closes it, in a text that is none. */
export function htmlTable(text: string, lines: readonly SourceLine[], at: number): readonly SourceLine[] {
  if (!holds(text, lines[at], '<table')) return [];
  const end = lines.findIndex((line, i) => i >= at && i < at + MOST_LINES && holds(text, line, '</table'));
  return end < 0 ? [] : lines.slice(at, end + 1);
}

const MOST_LINES = 400;

function holds(text: string, line: SourceLine | undefined, tag: string): boolean {
  return line !== undefined && text.slice(line.start, line.end).toLowerCase().includes(tag);
}

interface Tag {
  readonly name: string;
  readonly closing: boolean;
  readonly end: number;
}

/** Rows of HTML, in these lines of a text: a table's rows with their cells, and what stands in any other block. One pass over them. */
export function htmlRows(text: string, lines: readonly SourceLine[], dictionary: Dictionary): Row[] {
  const rows: Row[] = [];
  let columns: readonly (Column | undefined)[] = [];
  let cells: Cell[] | undefined;
  let heads = 0;
  let cellStart = -1;
  const textEnd = lines.at(-1)?.end ?? 0;
  let blockStart = lines[0]?.start ?? 0;
  let block = 'p';
  let depth = 0;
  /** The last term of a list of definitions: what is said of it right below belongs to it. */
  let named: Row | undefined;
  let lineIndex = 0;
  const lineOf = (at: number) => {
    while (lineIndex + 1 < lines.length && (lines[lineIndex + 1]?.start ?? 0) <= at) lineIndex++;
    return lines[lineIndex]?.number ?? 1;
  };
  const flush = (end: number) => {
    const [a, b] = trim(text, blockStart, end);
    if (b > a && hasWords(text, a, b)) {
      const type =
        /^h[1-6]$/.test(block) || block === 'caption'
          ? 'heading'
          : block === 'li' || block === 'dt' || block === 'dd'
            ? 'item'
            : 'paragraph';
      const cell = { start: a, end: Math.min(b, a + 20_000) };
      const term = block === 'dd' ? rows.at(-1) : undefined;
      if (term !== undefined && term === named) {
        rows[rows.length - 1] = {
          ...term,
          cells: [...term.cells, { ...cell, column: { meaning: 'notes', head: '' } }],
        };
        return;
      }
      rows.push({
        line: lineOf(a),
        type,
        cells: [cell],
        level: type === 'heading' ? Number(block[1]) || 3 : depth,
        bullet: type === 'item',
        quoted: false,
      });
      if (block === 'dt') named = rows.at(-1);
    }
  };
  for (let at = text.indexOf('<', blockStart); at >= 0 && at < textEnd; at = text.indexOf('<', at)) {
    const tag = tagAt(text, at);
    if (tag === undefined) {
      at++;
      continue;
    }
    const { name, closing, end } = tag;
    if (name === 'td' || name === 'th') {
      if (cellStart >= 0 && cells !== undefined) {
        const [a, b] = trim(text, cellStart, at);
        cells.push({ start: a, end: b });
      }
      cellStart = closing ? -1 : end;
      if (!closing && name === 'th') heads++;
      blockStart = end;
    } else if (name === 'tr') {
      if (cells !== undefined) {
        if (cellStart >= 0) {
          const [a, b] = trim(text, cellStart, at);
          cells.push({ start: a, end: b });
        }
        cellStart = -1;
        const row = tableRow(text, cells, lineOf(cells[0]?.start ?? at), columns, heads >= cells.length, dictionary);
        if (row.type === 'columns') columns = row.columns ?? [];
        if (cells.length > 0) rows.push(row);
      } else flush(at);
      cells = closing ? undefined : [];
      heads = 0;
      blockStart = end;
    } else if (BLOCKS.has(name) && cells === undefined) {
      flush(at);
      if (name === 'ul' || name === 'ol') depth += closing ? -1 : 1;
      if (name === 'table') columns = [];
      block = closing ? 'p' : name;
      blockStart = end;
    }
    at = end;
  }
  if (cells === undefined) flush(textEnd);
  return rows;
}

function tableRow(
  text: string,
  cells: readonly Cell[],
  line: number,
  columns: readonly (Column | undefined)[],
  headed: boolean,
  dictionary: Dictionary,
): Row & { columns?: readonly (Column | undefined)[] } {
  const base = { line, level: 0, bullet: true, quoted: false };
  const found = columnsOf(text, cells, dictionary, headed && cells.length > 1);
  if (found !== undefined) return { ...base, type: 'columns', cells, columns: withItemColumn(found) };
  const field = fieldRow(text, cells, line, dictionary);
  if (field !== undefined) return field;
  const placed = cells.map((cell, i) => {
    const column = columns[i];
    return column === undefined ? cell : { ...cell, column };
  });
  return { ...base, type: 'item', cells: placed };
}

function hasWords(text: string, start: number, end: number): boolean {
  for (let at = start; at < end; at++) {
    if (text[at] === '<') {
      const close = tagEnd(text, at, end);
      if (close > 0) {
        at = close - 1;
        continue;
      }
    }
    if (text.charCodeAt(at) > 32) return true;
  }
  return false;
}

function tagAt(text: string, at: number): Tag | undefined {
  if (text.startsWith('<!--', at)) {
    const close = text.indexOf('-->', at);
    return { name: '!', closing: false, end: close < 0 ? text.length : close + 3 };
  }
  const end = tagEnd(text, at, text.length);
  if (end === 0) return undefined;
  const closing = text[at + 1] === '/';
  let to = at + (closing ? 2 : 1);
  const from = to;
  while (to < end && /[a-z0-9!]/i.test(text[to] ?? '')) to++;
  return { name: text.slice(from, to).toLowerCase(), closing, end };
}
