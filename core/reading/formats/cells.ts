import { trim } from './lines.js';
import type { Cell } from './rows.js';

/**
 * Parts a stretch of delimited text into cells, with places in the text as pasted. A quoted cell may hold the delimiter
 * and doubled quotes; an unclosed quote is an ordinary character.
 */
export function delimited(text: string, start: number, end: number, delimiter: string): Cell[] {
  const cells: Cell[] = [];
  let at = start;
  for (;;) {
    let open = at;
    while (open < end && text[open] === ' ') open++;
    const quoted = text[open] === '"' && delimiter !== '|' ? closingQuote(text, open, end, delimiter) : -1;
    if (quoted >= 0) {
      cells.push({ start: open + 1, end: quoted });
      at = quoted + 1;
      while (at < end && text[at] !== delimiter) at++;
    } else {
      const from = at;
      while (at < end && (text[at] !== delimiter || (delimiter === '|' && text[at - 1] === '\\'))) at++;
      const [a, b] = trim(text, from, at);
      cells.push({ start: a, end: b });
    }
    if (at >= end) break;
    at++;
    if (at === end) {
      cells.push({ start: at, end: at });
      break;
    }
  }
  return cells;
}

/** The quote that closes the one at `open`: followed by the delimiter or the end. −1 where there is none. */
function closingQuote(text: string, open: number, end: number, delimiter: string): number {
  for (let at = open + 1; at < end; at++) {
    if (text[at] !== '"') continue;
    if (text[at + 1] === '"' && at + 1 < end) {
      at++;
      continue;
    }
    let next = at + 1;
    while (next < end && text[next] === ' ') next++;
    return next >= end || text[next] === delimiter ? at : -1;
  }
  return -1;
}

/** The cells of a row of a pipe table, without the empty ones outside the outer pipes. */
export function piped(text: string, start: number, end: number): Cell[] {
  const [a, b] = trim(text, start, end);
  const from = text[a] === '|' ? a + 1 : a;
  const to = text[b - 1] === '|' && b - 1 > from && text[b - 2] !== '\\' ? b - 1 : b;
  return delimited(text, from, to, '|');
}

/** Cells of a line set in columns by wide gaps. */
export function spaced(text: string, start: number, end: number): Cell[] {
  const [a, b] = trim(text, start, end);
  const cells: Cell[] = [];
  let from = a;
  for (let at = a; at <= b; at++) {
    const here = text.charCodeAt(at);
    const gap = here === 9 || (here === 32 && text.charCodeAt(at + 1) === 32);
    if (at < b && !gap) continue;
    if (at > from) cells.push({ start: from, end: at });
    while (at < b && (text[at] === ' ' || text[at] === '\t')) at++;
    from = at;
    if (at >= b) break;
    at--;
  }
  return cells;
}

const QUOTE = 34;

/** How often a character stands in a stretch outside quotes; stops at `most`. */
export function countOf(text: string, start: number, end: number, char: string, most = 64): number {
  const code = char.charCodeAt(0);
  let n = 0;
  let quoted = false;
  for (let at = start; at < end && n < most; at++) {
    const here = text.charCodeAt(at);
    if (here === QUOTE && (quoted || at === start || text.charCodeAt(at - 1) === code)) quoted = !quoted;
    else if (here === code && !quoted) n++;
  }
  return n;
}
