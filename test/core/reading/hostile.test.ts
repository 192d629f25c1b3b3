import { describe, expect, it } from 'vitest';
import { readList } from '../../../core/reading/index.js';

const MEGABYTE = 1_000_000;

describe('texts made to freeze a reader', () => {
  it.each([
    ['digits', '7'.repeat(5 * MEGABYTE)],
    ['strokes', '1/'.repeat(MEGABYTE / 2)],
    ['spaces', ' '.repeat(MEGABYTE)],
    ['brackets', '('.repeat(MEGABYTE)],
    ['tags', '<'.repeat(MEGABYTE)],
    ['ampersands', '&'.repeat(MEGABYTE)],
    ['pipes', '|'.repeat(MEGABYTE)],
    ['quotes', '"'.repeat(MEGABYTE)],
    ['tildes', '~~'.repeat(MEGABYTE / 2)],
    ['links', ']('.repeat(MEGABYTE / 2)],
    ['points', '. '.repeat(MEGABYTE / 2)],
    ['NUL', '\0'.repeat(MEGABYTE)],
    ['lone surrogates', '\ud83d'.repeat(MEGABYTE)],
    ['short lines', 'pot 1\n'.repeat(20_000)],
    ['pots on one line', 'pot '.repeat(MEGABYTE / 4)],
    ['tagged pots', '<li>pot 1 l'.repeat(5_000)],
    ['open comments', '<!--'.repeat(MEGABYTE / 4)],
    ['commas', 'a,b,c\n'.repeat(20_000)],
  ])('%s are read to the end', (_name, text) => {
    const { lines } = readList(text);
    expect(lines.at(-1)?.span[1]).toBe(text.endsWith('\n') ? text.length - 1 : text.length);
  });

  it('tells of a line that is longer than any list', () => {
    const reading = readList('7'.repeat(30_000));
    expect(reading.lines[0]?.use).toBe('not-understood');
    expect(reading.notes).toHaveLength(1);
  });
});
