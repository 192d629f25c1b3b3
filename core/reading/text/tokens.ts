import { fold, isLetter, isUnspaced, PICTURE, TAG } from './fold.js';
import { isDigit, scanNumber, type NumberText } from './numbers.js';
import { spelling } from './spelling.js';

/** A word, a number or a sign of one stretch of text, with its place in the text as pasted. */
export interface Token {
  readonly type: 'word' | 'number' | 'sign';
  readonly start: number;
  readonly end: number;
  /** Folded: "kochtopf"; of a number, empty; of a sign, the sign. */
  readonly fold: string;
  /** What stands before it: nothing, a space, or a wide gap (a tab, two spaces or more). */
  readonly gap: Gap;
  readonly number: NumberText | undefined;
}
export type Gap = 0 | 1 | 2;

/** Stretches that are skipped: addresses, marks of a format. Sorted. */
export type Skips = readonly (readonly [start: number, end: number])[];

/** Reads a stretch of text into tokens. Never throws; linear in its length. */
export function tokenise(text: string, start: number, end: number, html = false): Token[] {
  const { codes, from, to, length } = fold(text, start, end, html);
  const tokens: Token[] = [];
  let gap: Gap = 0;
  let spaces = 0;
  let at = 0;
  while (at < length) {
    const code = codes[at] ?? 0;
    if (code === 32 || code === 160 || code === TAG || code === PICTURE) {
      spaces += code === TAG || isWide(text.charCodeAt(from[at] ?? 0)) ? 2 : code === PICTURE ? 0 : 1;
      gap = spaces > 1 ? 2 : 1;
      at++;
      continue;
    }
    if (code === 46 && isLeader(codes, at, length)) {
      while (
        at < length &&
        (codes[at] === 46 || codes[at] === 32 || codes[at] === 160) &&
        !isFractionOrPoint(codes, at, length)
      )
        at++;
      gap = 2;
      spaces = 2;
      continue;
    }
    const number = isDigit(code) || isFractionOrPoint(codes, at, length) ? scanNumber(codes, at, length) : undefined;
    const type = number !== undefined ? 'number' : isLetter(code) ? 'word' : 'sign';
    const until = number?.end ?? (type === 'word' ? endOfWord(codes, at, length) : at + 1);
    tokens.push({
      type,
      start: from[at] ?? end,
      end: to[until - 1] ?? end,
      fold: number !== undefined ? '' : code === TIMES && until === at + 1 ? 'x' : spelling(codes, at, until),
      gap,
      number,
    });
    gap = 0;
    spaces = 0;
    at = until;
  }
  return tokens;
}

/** The same token with a wider gap before it. All tokens are made with the same fields in the same order: so they are read fastest. */
export function parted(token: Token, gap: Gap): Token {
  const { type, start, end, fold, number } = token;
  return { type, start, end, fold, gap, number };
}

/** The Cyrillic letter that stands for "times" where it stands alone: "450 г х 3". */
const TIMES = 'х'.charCodeAt(0);

const LONGEST_WORD = 60;

function endOfWord(codes: Uint16Array, at: number, length: number): number {
  let until = at + 1;
  if (isUnspaced(codes[at] ?? 0)) return until;
  const most = Math.min(length, at + LONGEST_WORD);
  while (until < most && isWordCode(codes, until, length)) until++;
  return until;
}

function isWordCode(codes: Uint16Array, at: number, length: number): boolean {
  const code = codes[at] ?? 0;
  if (isLetter(code)) return !isUnspaced(code);
  return code === 39 && at + 1 < length && isLetter(codes[at + 1] ?? 0);
}

/** A tab, and the full-width space, part columns. */
function isWide(code: number): boolean {
  return code === 9 || code === 0x3000;
}

/** Three points or more, close or spaced: they lead the eye to the figure. */
function isLeader(codes: Uint16Array, at: number, length: number): boolean {
  let points = 0;
  for (let i = at; i < length && i < at + 8 && points < 3; i++) {
    if (codes[i] === 46) points++;
    else if (codes[i] !== 32) return false;
  }
  return points === 3;
}

/** ½, or a point that opens a number (".75"): not in dot leaders, not after a digit or letter. */
function isFractionOrPoint(codes: Uint16Array, at: number, length: number): boolean {
  const code = codes[at] ?? 0;
  if (code >= 0xbc && code <= 0xbe) return true;
  if (code >= 0x2150 && code <= 0x215e) return true;
  if (code !== 46 || at + 1 >= length || !isDigit(codes[at + 1] ?? 0)) return false;
  const before = at === 0 ? 32 : (codes[at - 1] ?? 0);
  return before === 32 || before === 160 || before === 40 || before === 124 || before < 3;
}
