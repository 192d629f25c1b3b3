import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowsOf } from '../../../core/reading/formats/index.js';
import { readable, splitLines } from '../../../core/reading/formats/lines.js';
import { Beginning } from '../../../core/reading/text/beginning.js';
import { dictionaryOf } from '../../../core/reading/text/lexicon.js';
import { tokenise, type Token } from '../../../core/reading/text/tokens.js';
import { finish } from '../../../core/steps.js';
import '../../../core/index.js';

const TEXTS = new URL('../../practice/texts/', import.meta.url);

/** Every cell of a text, cut out of its line and read alone. */
function cellsOf(text: string) {
  const lines = splitLines(text).map(readable);
  const beginning = new Beginning(text, lines);
  return finish(rowsOf(text, lines, dictionaryOf(['en', 'de']))).flatMap(({ line, cells }) =>
    cells.map((cell) => ({
      cut: beginning.of(line, cell).map(seen),
      alone: tokenise(text, cell.start, cell.end, true).map(seen),
    })),
  );
}

/** A token as readers see it: where a number ends in the codes of its stretch is for the tokeniser alone. */
function seen({ number, ...token }: Token) {
  return number === undefined ? token : { ...token, number: { ...number, end: undefined } };
}

describe('the cells of a text are cut out of its lines', () => {
  it.each(readdirSync(TEXTS))('as if each were read alone: %s', (name) => {
    const cells = cellsOf(readFileSync(new URL(name, TEXTS), 'utf8'));
    expect(cells.length).toBeGreaterThan(0);
    for (const { cut, alone } of cells) expect(cut).toEqual(alone);
  });

  it('whatever stands at their edges', () => {
    const pieces = "1 2,3 4 .5 ½ 1/2 pot - 🍳 <b> &amp; ° x ’s … / [ ' ,".split(' ');
    const cell = fc.array(fc.constantFrom(...pieces, ' ', '  ', '\u00a0'), { maxLength: 4 }).map((own) => own.join(''));
    const table = fc.tuple(
      fc.array(fc.array(cell, { minLength: 3, maxLength: 3 }), { minLength: 3, maxLength: 5 }),
      fc.constantFrom(',', ';', '\t', '|', '  ', '\n- '),
    );
    fc.assert(
      fc.property(table, ([rows, mark]) => {
        for (const { cut, alone } of cellsOf(rows.map((row) => row.join(mark)).join('\n'))) expect(cut).toEqual(alone);
      }),
      { numRuns: 5000, seed: 11 },
    );
  });
});
