import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Given } from '../../../core/model/given.js';
import { readList } from '../../../core/reading/index.js';

const PIECES = [
  'pot',
  'Topf',
  'mug',
  'stove',
  'gas can',
  'lid',
  'bottle',
  '750',
  '1,5',
  '½',
  ' ml',
  ' l',
  ' g',
  '"',
  '″',
  ' oz',
  ' x ',
  '×',
  ' – ',
  ', ',
  '; ',
  '|',
  '\t',
  '\n',
  '\r\n',
  '# ',
  '- ',
  '[x] ',
  '~~',
  '**',
  '](',
  '(',
  ')',
  '<td>',
  '</tr>',
  '&nbsp;',
  '&#',
  ':',
  '.',
  '...',
  'Ø',
  '\u00a0',
  '９００ｍｌ',
  'for 2',
  '4 days',
  '-10 °C',
  'İ',
  '\ud83d',
  '\udd25',
  'e\u0301',
  '\0',
  '\u202e',
  '鍋',
  'no ',
  'with ',
  '1/2',
  '1 lb 4 oz',
  '2x ',
];

const texts = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc
    .array(fc.oneof(fc.constantFrom(...PIECES), fc.string({ maxLength: 4 })), { maxLength: 40 })
    .map((parts) => parts.join('')),
);

function givens(item: object): Given<unknown>[] {
  return Object.values(item)
    .flatMap((value: unknown) => (Array.isArray(value) ? (value as unknown[]) : [value]))
    .filter((value): value is Given<unknown> => typeof value === 'object' && value !== null && 'grounds' in value);
}

describe('readList', () => {
  it('reads any text without throwing, with every span inside it and every figure written there', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const reading = readList(text);
        const inside = ([start, end]: readonly [number, number]) => start >= 0 && start <= end && end <= text.length;
        for (const line of reading.lines) expect(inside(line.span)).toBe(true);
        for (const item of reading.items) {
          expect(inside(item.span)).toBe(true);
          expect(item.span[1]).toBeGreaterThan(item.span[0]);
          const line = reading.lines[item.line - 1];
          expect(line).toBeDefined();
          for (const given of givens(item)) {
            if (!('span' in given) || given.span === undefined) continue;
            expect(inside(given.span)).toBe(true);
            expect(text.slice(...given.span).trim()).not.toBe('');
            if (given.grounds === 'stated') expect(given.value).not.toBeNaN();
          }
        }
      }),
      { numRuns: 1500 },
    );
  });

  it('says of every line what became of it', () => {
    fc.assert(
      fc.property(texts, (text) => {
        const { lines, items } = readList(text);
        expect(lines.map((line) => line.number)).toEqual(lines.map((_line, i) => i + 1));
        for (const item of items) expect(lines[item.line - 1]?.use).not.toBe('blank');
      }),
      { numRuns: 500 },
    );
  });

  it('gives the same reading of a text, whatever was read before it', () => {
    fc.assert(
      fc.property(texts, texts, (text, before) => {
        const first = readList(text);
        readList(before);
        expect(readList(text)).toEqual(first);
      }),
      { numRuns: 300 },
    );
    const read = readList('Pot 4');
    readList('Pot 4½ l');
    expect(readList('Pot 4')).toEqual(read);
  });
});
