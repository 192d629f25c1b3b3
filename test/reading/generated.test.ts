import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readList, valueOf, type Given } from '../../core/index.js';
import { generatedLists, type Truth } from './generated-lists.js';

/** Figures agree to the last place that was written. */
const figure = (value: number | null) => (value === null ? null : Number(value.toPrecision(8)));
const given = (value: Given<number> | undefined) => figure(value === undefined ? null : (valueOf(value) ?? null));

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
          truth.map((one) => ({ ...one, capacityMl: figure(one.capacityMl), massG: figure(one.massG) })),
        );
      }),
      { numRuns: 1500 },
    );
  });
});
