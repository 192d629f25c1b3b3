import type { SourceLine } from './rows.js';

/** Beyond this a line is read no further: no list has such a line, and nothing may freeze. */
export const LONGEST_LINE = 20_000;

/** Parts the text at \n, \r\n, \r and the line separators of Unicode. */
export function splitLines(text: string): SourceLine[] {
  const lines: SourceLine[] = [];
  let start = 0;
  for (let at = 0; at <= text.length; at++) {
    const code = at === text.length ? 10 : text.charCodeAt(at);
    if (code !== 10 && code !== 13 && code !== 0x2028 && code !== 0x2029) continue;
    lines.push({ number: lines.length + 1, start, end: at });
    if (code === 13 && text.charCodeAt(at + 1) === 10) at++;
    start = at + 1;
  }
  if (lines.length > 1 && lines.at(-1)?.start === lines.at(-1)?.end) lines.pop();
  return lines;
}

/** The part of a line that is read. */
export function readable(line: SourceLine): SourceLine {
  return line.end - line.start > LONGEST_LINE ? { ...line, end: line.start + LONGEST_LINE } : line;
}

/** First and last place of the line that are no spaces. */
export function trim(text: string, start: number, end: number): readonly [number, number] {
  let a = start;
  let b = end;
  while (a < b && isSpace(text.charCodeAt(a))) a++;
  while (b > a && isSpace(text.charCodeAt(b - 1))) b--;
  return [a, b];
}

export function isSpace(code: number): boolean {
  return (
    code <= 32 ||
    code === 160 ||
    code === 0x3000 ||
    code === 0x202f ||
    code === 0x2009 ||
    code === 0xfeff ||
    code === 0x200b
  );
}
