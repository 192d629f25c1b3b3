import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readList, valueOf, type Given } from '../../core/index.js';
import { generatedLists, type Truth } from './generated-lists.js';

const given = (value: Given<number> | undefined) => (value === undefined ? null : (valueOf(value) ?? null));
/** The truth, to be met but for what binary arithmetic leaves behind. */
const about = (value: number | null) => (value === null ? null : (expect.closeTo(value, 4) as number));

function readBack(text: string): Truth[] {
  return readList(text).items.map((item) => ({
    kind: item.kind,
    quantity: valueOf(item.quantity) ?? 0,
    capacityMl: given(item.capacitiesMl[0]),
    massG: given(item.massG),
  }));
}

describe('a list put together from known things', () => {
  it('is read back as it was put together', () => {
    fc.assert(
      fc.property(generatedLists, ({ text, truth }) => {
        expect(readBack(text), text).toEqual(
          truth.map((one) => ({ ...one, capacityMl: about(one.capacityMl), massG: about(one.massG) })),
        );
      }),
      { numRuns: 1500 },
    );
  });
});
