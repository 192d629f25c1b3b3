import { trim } from './lines.js';
import type { Row } from './rows.js';

/** Characters that the lines of a wrapped paragraph have on average; entries of a list are shorter. */
const LEAST_LENGTH = 45;
/** Lines of few words that make a list of a text whose other lists have bullets, and their characters on average. */
const LEAST_ENTRIES = 4;
const LONGEST_ENTRY = 30;
const STOPS = '.!?:;。';

/**
 * Marks adjacent lines without bullets by what they are together: a paragraph of prose that is broken into lines, of which none is an entry
 * of a list, short as it may be; or a list.
 */
export function withForms(text: string, rows: readonly Row[]): readonly Row[] {
  const out: Row[] = [];
  for (let from = 0; from < rows.length;) {
    let to = from;
    while (to < rows.length && isLine(rows[to]) && (to === from || rows[to]!.line === rows[to - 1]!.line + 1)) to++;
    const block = rows.slice(from, Math.max(to, from + 1));
    const form = to - from < 2 ? undefined : isProse(text, block) ? 'prose' : isList(block) ? 'list' : undefined;
    out.push(...(form === undefined ? block : block.map((row): Row => ({ ...row, form }))));
    from = Math.max(to, from + 1);
  }
  return out;
}

function isLine(row: Row | undefined): boolean {
  return row?.type === 'paragraph' && !row.bullet && row.cells.length === 1;
}

/** Long lines, of which one at least goes on in the next with a small letter. */
function isProse(text: string, rows: readonly Row[]): boolean {
  const lines = rows.map(({ cells: [cell] }) => trim(text, cell?.start ?? 0, cell?.end ?? 0));
  if (lines.some(([start, end]) => hasGap(text, start, end))) return false;
  const full = lines.slice(0, -1);
  const length = full.reduce((sum, [start, end]) => sum + end - start, 0);
  if (length < LEAST_LENGTH * full.length) return false;
  const goesOn = full.filter(([, end], i) => {
    const next = text.charAt(lines[i + 1]?.[0] ?? 0);
    return !STOPS.includes(text.charAt(end - 1)) && next === next.toLowerCase() && next !== next.toUpperCase();
  });
  return goesOn.length * 3 >= full.length;
}

/** Adjacent lines of few words. */
function isList(rows: readonly Row[]): boolean {
  const length = rows.reduce((sum, { cells: [cell] }) => sum + (cell?.end ?? 0) - (cell?.start ?? 0), 0);
  return rows.length >= LEAST_ENTRIES && length <= LONGEST_ENTRY * rows.length;
}

/** Wide gaps and leaders of dots part columns. */
function hasGap(text: string, start: number, end: number): boolean {
  for (let at = start + 1; at < end; at++)
    if (text[at] === '\t' || (text[at] === text[at - 1] && text[at] === '.' && text[at + 1] === '.')) return true;
  return false;
}
