import { fold, isLetter, isUnspaced, PICTURE, TAG } from '../../reading/text/fold.js';
import { isDigit, scanNumber } from '../../reading/text/numbers.js';
import { NUMBER, SIGN, WORD, type Tokens } from './tokens.js';

/** Reads a stretch of text into tokens, after those that are there. Never throws; linear in its length. */
export function scan(text: string, start: number, end: number, tokens: Tokens): void {
  const { codes, from, to, length } = fold(text, start, end, true);
  let spaces = 0;
  let gap = 0;
  let at = 0;
  while (at < length) {
    const code = codes[at]!;
    if (code === 32 || code === 160 || code === TAG || code === PICTURE) {
      spaces += code === TAG || isWide(text.charCodeAt(from[at]!)) ? 2 : code === PICTURE ? 0 : 1;
      gap = spaces > 1 ? 2 : 1;
      at++;
      continue;
    }
    if (code === 46 && isLeader(codes, at, length)) {
      while (at < length && (codes[at] === 46 || isBlank(codes[at]!)) && !opensNumber(codes, at, length)) at++;
      spaces = 2;
      gap = 2;
      continue;
    }
    const number = isDigit(code) || opensNumber(codes, at, length) ? scanNumber(codes, at, length) : undefined;
    const kind = number !== undefined ? NUMBER : isLetter(code) ? WORD : SIGN;
    const until = number?.end ?? (kind === WORD ? endOfWord(codes, at, length) : at + 1);
    const word = kind === NUMBER ? 0 : wordAt(codes, at, until, tokens);
    tokens.push(kind, from[at]!, to[until - 1]!, word, gap, number);
    spaces = 0;
    gap = 0;
    at = until;
  }
}

function isBlank(code: number): boolean {
  return code === 32 || code === 160;
}

/** The Cyrillic letter that stands for "times" where it stands alone: "450 г х 3". */
const TIMES = 'х'.charCodeAt(0);
const LATIN_TIMES = new Uint16Array(['x'.charCodeAt(0)]);

function wordAt(codes: Uint16Array, at: number, until: number, { words }: Tokens): number {
  return codes[at] === TIMES && until === at + 1 ? words.of(LATIN_TIMES, 0, 1) : words.of(codes, at, until);
}

/** Longest word, in characters: a longer one is cut. */
const LONGEST_WORD = 60;

function endOfWord(codes: Uint16Array, at: number, length: number): number {
  let until = at + 1;
  if (isUnspaced(codes[at]!)) return until;
  const most = Math.min(length, at + LONGEST_WORD);
  while (until < most && isWordCode(codes, until, length)) until++;
  return until;
}

function isWordCode(codes: Uint16Array, at: number, length: number): boolean {
  const code = codes[at]!;
  if (isLetter(code)) return !isUnspaced(code);
  return code === 39 && at + 1 < length && isLetter(codes[at + 1]!);
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
function opensNumber(codes: Uint16Array, at: number, length: number): boolean {
  const code = codes[at]!;
  if (code >= 0xbc && code <= 0xbe) return true;
  if (code >= 0x2150 && code <= 0x215e) return true;
  if (code !== 46 || at + 1 >= length || !isDigit(codes[at + 1]!)) return false;
  const before = at === 0 ? 32 : codes[at - 1]!;
  return isBlank(before) || before === 40 || before === 124 || before < 3;
}
