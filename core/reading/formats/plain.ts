import { forumTagEnd } from '../text/fold.js';
import { isSpace, trim } from './lines.js';
import type { Row, SourceLine } from './rows.js';

const BULLETS = '*-•–—‣·+☐☑☒✓✔✗✘▪▫●○■□◦・※►▶→»';
const RULES = '-=~_*#—–.+ ';

/** Reads one line that stands in no table: its marks of a list, a heading or a quotation, and what they mark. */
export function plainRow(text: string, line: SourceLine, next: SourceLine | undefined): Row {
  const [from, end] = trim(text, line.start, line.end);
  let at = from;
  const level = at - line.start;
  if (isRule(text, at, end) || isBareTag(text, at, end) || opensWikiTable(text, at))
    return row('rule', line, at, end, level);
  let quoted = false;
  while (text[at] === '>' && at < end) {
    quoted = true;
    at = skip(text, at + 1, end);
  }
  const hashes = run(text, at, end, '#');
  if (hashes > 0 && hashes < 7 && isSpace(text.charCodeAt(at + hashes)))
    return { ...row('heading', line, skip(text, at + hashes, end), end, hashes), quoted };
  const stars = run(text, at, end, '*');
  if (stars > 0 && stars < 7 && isSpace(text.charCodeAt(at + stars)) && (stars > 1 || isOrg(text)))
    return row('heading', line, skip(text, at + stars, end), end, stars);
  if (underlined(text, line, next)) return { ...row('heading', line, at, end, 1), quoted };
  const bullet = afterBullet(text, at, end);
  const type = bullet > at ? 'item' : 'paragraph';
  return { ...row(type, line, bullet, end, level), bullet: bullet > at, quoted };
}

function row(type: Row['type'], line: SourceLine, start: number, end: number, level: number): Row {
  return { line: line.number, type, cells: [{ start, end }], level, bullet: false, quoted: false };
}

/** Characters of a text that tell whether its stars are headings. */
const HEAD = 2000;

/** Org files say so at their head, or have stars of several depths; else a star is a bullet. */
function isOrg(text: string): boolean {
  return text.startsWith('#+') || (text.startsWith('* ') && text.slice(0, HEAD).includes('\n** '));
}

function run(text: string, at: number, end: number, char: string): number {
  let n = 0;
  while (at + n < end && n < 10 && text[at + n] === char) n++;
  return n;
}

function skip(text: string, at: number, end: number): number {
  while (at < end && isSpace(text.charCodeAt(at))) at++;
  return at;
}

function isRule(text: string, start: number, end: number): boolean {
  if (end - start < 1 || end - start > 400) return end === start;
  for (let at = start; at < end; at++) if (!RULES.includes(text[at] ?? 'x')) return false;
  return end - start > 2 || '—–_'.includes(text[start] ?? '');
}

/** "{| class=…": where a table of a wiki begins. */
function opensWikiTable(text: string, start: number): boolean {
  return text[start] === '{' && text[start + 1] === '|';
}

/** "[list]": a tag of a forum that stands alone. */
function isBareTag(text: string, start: number, end: number): boolean {
  return text[start] === '[' && text[start + 1] !== '*' && forumTagEnd(text, start, end) === end;
}

function underlined(text: string, line: SourceLine, next: SourceLine | undefined): boolean {
  if (next === undefined || line.end - line.start > 80) return false;
  const [start, end] = trim(text, next.start, next.end);
  const mark = text[start] ?? '';
  if (end - start < 3 || !'=~-'.includes(mark)) return false;
  const [own] = trim(text, line.start, line.end);
  return (
    own < line.end &&
    run(text, start, Math.min(end, start + 9), mark) === Math.min(end - start, 9) &&
    !BULLETS.includes(text[own] ?? '')
  );
}

/** Passes bullets, tick boxes, blanks to fill in, list numbers and pictures; gives where the words begin. */
export function afterBullet(text: string, start: number, end: number): number {
  let at = start;
  for (let guard = 0; guard < 6; guard++) {
    const before = at;
    const char = text[at] ?? '';
    if (
      BULLETS.includes(char) &&
      char !== '' &&
      (isSpace(text.charCodeAt(at + 1)) ||
        text.charCodeAt(at) > 0x2000 ||
        text[at + 1] === '[' ||
        (char === '*' && isUnclosed(text, at, end)))
    )
      at = skip(text, at + 1, end);
    else if (char === '[' && text[at + 2] === ']' && ' xX✓-_.*'.includes(text[at + 1] ?? '?'))
      at = skip(text, at + 3, end);
    else if (char === '[' && text[at + 1] === ']') at = skip(text, at + 2, end);
    else if (char === '(' && text[at + 2] === ')' && ' xX'.includes(text[at + 1] ?? '?')) at = skip(text, at + 3, end);
    else if (char === '_' && run(text, at, end, '_') > 1) {
      while (text[at] === '_') at++;
      at = skip(text, at, end);
    } else at = afterNumber(text, at, end);
    if (at === before) break;
  }
  return at;
}

/** "*spoon": a star that no other closes marks a line, no emphasis. */
function isUnclosed(text: string, at: number, end: number): boolean {
  const next = text.indexOf('*', at + 1);
  return next < 0 || next >= end;
}

/** "3. ", "3) ", "(3) " before a word: a list number. A count has no point. */
function afterNumber(text: string, start: number, end: number): number {
  let at = start;
  while (at < end && at - start < 4 && text.charCodeAt(at) >= 48 && text.charCodeAt(at) <= 57) at++;
  const mark = text[at] ?? '';
  if (at === start || (mark !== '.' && mark !== ')')) return start;
  return isSpace(text.charCodeAt(at + 1)) ? skip(text, at + 1, end) : start;
}
