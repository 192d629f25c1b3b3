import { spelling } from './spelling.js';

/** A number as written. "1.350" can be one and a bit or 1350: the unit and the language settle it. */
export interface NumberText {
  /** Where it ends, as an index of the folded codes. */
  readonly end: number;
  /** Read with its last mark as the decimal mark. */
  readonly value: number;
  /** Read with that mark as a thousands mark, where it can be one. */
  readonly thousands?: number;
  /** The mark that leaves the choice. */
  readonly mark?: '.' | ',';
  /** Digits only: can be a count. */
  readonly whole: boolean;
  /** How many digits. */
  readonly digits: number;
  /** As digits were written, for numbers run together ("1109"). */
  readonly text: string;
}

const VULGAR = new Map<number, number>(
  [...'¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'].map((char, i) => [
    char.charCodeAt(0),
    [
      1 / 4,
      1 / 2,
      3 / 4,
      1 / 7,
      1 / 9,
      1 / 10,
      1 / 3,
      2 / 3,
      1 / 5,
      2 / 5,
      3 / 5,
      4 / 5,
      1 / 6,
      5 / 6,
      1 / 8,
      3 / 8,
      5 / 8,
      7 / 8,
    ][i] ?? 0,
  ]),
);
const DENOMINATORS = [2, 3, 4, 5, 6, 8, 16, 32, 64];
/** Digits beyond this say nothing about a pot, and would only lose precision. */
const MOST_DIGITS = 15;

export function isDigit(code: number): boolean {
  return code >= 48 && code <= 57;
}

/** What can stand between the digits of one number: a point, a comma, an apostrophe, a thin space. */
function isMark(code: number): boolean {
  return code === 46 || code === 44 || code === 39 || code === 160;
}

/** Reads the number that begins at `at`: digits with points, commas and thin spaces, ½, 1 1/2, 1-1/2, .75. */
export function scanNumber(codes: Uint16Array, at: number, length: number): NumberText {
  if (!isDigit(codes[at] ?? 0)) {
    const vulgar = VULGAR.get(codes[at] ?? 0);
    if (vulgar !== undefined) return plain(at + 1, vulgar, 0);
  }
  let until = at;
  while (until < length && isDigit(codes[until] ?? 0)) until++;
  if (until > at && until - at <= MOST_DIGITS && !(isMark(codes[until] ?? 0) && isDigit(codes[until + 1] ?? 0)))
    return whole(codes, until, length, spelling(codes, at, until));
  const groups: string[] = [];
  const marks: number[] = [];
  let i = at;
  if (codes[i] === 46) {
    groups.push('');
    marks.push(46);
    i++;
  }
  for (;;) {
    const from = i;
    while (i < length && isDigit(codes[i] ?? 0)) i++;
    groups.push(spelling(codes, from, Math.min(i, from + MOST_DIGITS + 1)));
    const mark = codes[i] ?? 0;
    const thin = mark === 160;
    if (groups.length > 8 || i + 1 >= length || !isDigit(codes[i + 1] ?? 0)) break;
    if (!isMark(mark)) break;
    if ((thin || mark === 39) && digitsFrom(codes, i + 1, length) !== 3) break;
    if (thin && marks.some((m) => m === 46 || m === 44)) break;
    marks.push(mark);
    i++;
  }
  if (groups.length === 1) return whole(codes, i, length, groups[0] ?? '');
  return marked(i, groups, marks);
}

/** A whole number; followed by a fraction, both together: 1½, 1 ½, 1 1/2, 1-1/2; or itself the top of one: 3/4. */
function whole(codes: Uint16Array, end: number, length: number, group: string): NumberText {
  const value = Number(group);
  if (group.length <= 3) {
    const after = codes[end] ?? 0;
    const glued = after > 127 ? VULGAR.get(after) : undefined;
    if (glued !== undefined) return plain(end + 1, value + glued, group.length);
    if (after === 32 || after === 160 || after === 45) {
      const spaced = VULGAR.get(codes[end + 1] ?? 0);
      if (spaced !== undefined) return plain(end + 2, value + spaced, group.length);
      const top = fraction(codes, end + 1, length);
      if (top !== undefined) return plain(top.end, value + top.value, group.length);
    }
    const self = fraction(codes, end - group.length, length);
    if (self !== undefined) return plain(self.end, self.value, group.length);
  }
  return { end, value, whole: true, digits: group.length, text: group };
}

function plain(end: number, value: number, digits: number): NumberText {
  return { end, value, whole: false, digits, text: '' };
}

/** n/d with small n < d and a usual d, and no further stroke beside it: "1.3/0.9 L" and "400/700 ml" are none. */
function fraction(codes: Uint16Array, at: number, length: number): { value: number; end: number } | undefined {
  const n = digitsFrom(codes, at, length);
  const before = codes[at - 1] ?? 0;
  if (n === 0 || n > 2 || codes[at + n] !== 47 || before === 47 || before === 91) return undefined;
  const d = digitsFrom(codes, at + n + 1, length);
  const end = at + n + 1 + d;
  if (
    d === 0 ||
    d > 2 ||
    codes[end] === 47 ||
    ((codes[end] === 46 || codes[end] === 44) && isDigit(codes[end + 1] ?? 0))
  )
    return undefined;
  const top = numberOf(codes, at, n);
  const bottom = numberOf(codes, at + n + 1, d);
  return top > 0 && top < bottom && DENOMINATORS.includes(bottom) ? { value: top / bottom, end } : undefined;
}

function digitsFrom(codes: Uint16Array, at: number, length: number): number {
  let n = 0;
  while (n < 4 && at + n < length && isDigit(codes[at + n] ?? 0)) n++;
  return n;
}

function numberOf(codes: Uint16Array, at: number, digits: number): number {
  let value = 0;
  for (let i = 0; i < digits; i++) value = value * 10 + (codes[at + i] ?? 48) - 48;
  return value;
}

/** A number with marks. Of two different marks the last is the decimal one; repeated or thin, they part thousands. */
function marked(end: number, groups: readonly string[], marks: readonly number[]): NumberText {
  const text = groups.join('');
  const last = marks.at(-1) ?? 0;
  const inThrees = groups.slice(1).every((group) => group.length === 3) && (groups[0]?.length ?? 0) <= 3;
  const joined = Number(groups.slice(0, -1).join('') + '.' + (groups.at(-1) ?? '')) || 0;
  const base = { end, digits: text.length, text: '' };
  if (last === 160 || last === 39 || (marks.length > 1 && marks.every((mark) => mark === last)))
    return inThrees ? { ...base, value: Number(text), whole: true } : { ...base, value: NaN, whole: false };
  const lead = groups[0] ?? '';
  if (marks.length === 1 && inThrees && lead !== '' && !lead.startsWith('0'))
    return { ...base, value: joined, thousands: Number(text), mark: last === 46 ? '.' : ',', whole: false };
  return { ...base, value: joined, whole: false };
}
