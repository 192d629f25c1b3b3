import { UNITS, unitBySymbol, type Unit } from '../quantities/units.js';
import type { Dictionary } from '../text/lexicon.js';
import { findTerms } from '../text/terms.js';
import { tokenise } from '../text/tokens.js';
import { unitIn } from './columns.js';
import { isSpace, trim } from './lines.js';
import type { Cell, SourceLine } from './rows.js';

/** Cells of a web page's table that copying has run together: "KücheStückGewicht (g)" over "Topf 0,9 l Titan1109". */

/** Whether a line is the head of such a table: a column of counts and one of masses named in it, and no figure. */
export function isFusedHead(text: string, line: SourceLine, dictionary: Dictionary): boolean {
  if (line.end - line.start > 80 || line.end - line.start < 8 || !hasCapitals(text, line)) return false;
  const meanings = new Set<unknown>();
  let words = 0;
  for (const [start, end] of parts(text, line)) {
    const tokens = tokenise(text, start, end);
    if (tokens.some((token) => token.type === 'number')) return false;
    words += tokens.filter((token) => token.type === 'word').length;
    for (const term of findTerms(tokens, dictionary)) if (term.role === 'column') meanings.add(term.value);
  }
  return (
    words <= 7 && meanings.has('quantity') && (meanings.has('mass') || meanings.has('total') || meanings.has('each'))
  );
}

/** Heads are written with capitals, two at least, and without figures: a quick look that spares most lines the rest. */
function hasCapitals(text: string, line: SourceLine): boolean {
  let capitals = 0;
  for (let at = line.start; at < line.end; at++) {
    const code = text.charCodeAt(at);
    if (isDigit(code)) return false;
    if (code > 64 && code < 91) capitals++;
  }
  return capitals > 1;
}

const SEAM = /(?<=\p{Ll})(?=\p{Lu})/gu;

/** Stretches between a small letter and a capital: "KücheStückGewicht" holds three. */
function parts(text: string, line: SourceLine): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  let start = line.start;
  for (const { index } of text.slice(line.start, line.end).matchAll(SEAM)) {
    found.push([start, line.start + index]);
    start = line.start + index;
  }
  return [...found, [start, line.end]];
}

export function unitOfHead(text: string, line: SourceLine, dictionary: Dictionary): Unit {
  const tokens = tokenise(text, line.start, line.end);
  const unit = unitIn(tokens, findTerms(tokens, dictionary));
  return unit?.dimension === 'mass' || unit?.dimension === 'ounce' ? unit : UNITS.g;
}

/** The name and the digits that stick to its end; undefined where none do. */
export function fusedCells(text: string, line: SourceLine, unit: Unit): Cell[] | undefined {
  const [start, whole] = trim(text, line.start, line.end);
  const end = beforeUnit(text, start, whole);
  let at = end;
  while (at > start && isDigit(text.charCodeAt(at - 1))) at--;
  const before = text.charAt(at - 1);
  if (end - at < 2 || end - at > 6 || at === start || before.toLowerCase() === before.toUpperCase()) return undefined;
  return [
    { start, end: at, column: { meaning: 'item', head: '' } },
    { start: at, end, column: { meaning: 'fused', unit, head: '' } },
  ];
}

/** Where the figure ends, before the unit that may follow it: "Pot1118 g". */
function beforeUnit(text: string, start: number, end: number): number {
  let at = end;
  while (at > start && end - at < 3 && isLetter(text.charCodeAt(at - 1))) at--;
  if (at === end || unitBySymbol(text.slice(at, end).toLowerCase())?.dimension !== 'mass') return end;
  while (at > start && isSpace(text.charCodeAt(at - 1))) at--;
  return isDigit(text.charCodeAt(at - 1)) ? at : end;
}

function isLetter(code: number): boolean {
  return (code > 64 && code < 91) || (code > 96 && code < 123);
}

function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}
