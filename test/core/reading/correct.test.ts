import { describe, expect, it } from 'vitest';
import type { Correction } from '../../../core/model/reading.js';
import { applyCorrections } from '../../../core/reading/correct.js';
import { readList } from '../../../core/reading/index.js';

const TEXT = 'pot 1 L\npot 1 L\nstove';
const correct = (correction: Partial<Correction>, text = TEXT) =>
  applyCorrections(text, readList(text), [
    { quote: 'pot 1 L', occurrence: 0, item: 0, field: 'capacityMl', value: null, ...correction },
  ]);

describe('applyCorrections', () => {
  it('changes the value of the line meant, of two that read alike', () => {
    const { reading, problems } = correct({ occurrence: 1, value: '1,2 l' });
    expect(problems).toEqual([]);
    expect(reading.items.map((item) => item.capacitiesMl)).toEqual([
      readList(TEXT).items[0]?.capacitiesMl,
      [{ grounds: 'stated', value: 1200, typed: true }],
      [],
    ]);
  });

  it('still finds its line after edits elsewhere', () => {
    const { reading } = correct({ value: 900 }, `new line\n\n${TEXT}`);
    expect(reading.items[0]?.capacitiesMl[0]).toMatchObject({ value: 900 });
  });

  it('adds an item of a kind, one past the last', () => {
    const { reading } = correct({ item: 1, field: 'kind', value: 'lid' });
    expect(reading.items.map((item) => [item.kind, item.line])).toEqual([
      ['pot', 1],
      ['lid', 1],
      ['pot', 2],
      ['stove', 3],
    ]);
  });

  it('takes a thing out of the kit and puts it back', () => {
    expect(correct({ field: 'carried', value: false }).reading.items[0]).toMatchObject({
      carried: false,
      notCarriedBecause: 'the person says so',
    });
    const struck = correct({ quote: '~~pot~~', field: 'carried', value: true }, '~~pot~~').reading.items[0];
    expect(struck).toMatchObject({ carried: true });
    expect(struck).not.toHaveProperty('notCarriedBecause');
  });

  it.each([
    [{ field: 'massG', value: '110 g' }, { massG: { grounds: 'stated', value: 110, typed: true } }],
    [{ field: 'diameterMm', value: '13 cm' }, { diameterMm: { grounds: 'stated', value: 130, typed: true } }],
    [{ field: 'material', value: 'titanium' }, { material: { grounds: 'stated', value: 'titanium', typed: true } }],
    [{ field: 'lid', value: true }, { lid: { grounds: 'stated', value: true, typed: true } }],
    [{ field: 'quantity', value: '3' }, { quantity: { grounds: 'stated', value: 3, typed: true } }],
    [{ field: 'quantity', value: null }, { quantity: { grounds: 'missing' } }],
    [
      { field: 'capacityMl', vessel: 1, value: '2 l' },
      { capacitiesMl: [expect.anything(), { grounds: 'stated', value: 2000, typed: true }] },
    ],
    [{ field: 'kind', value: 'mug' }, { kind: 'mug' }],
  ] as const)('%j', (correction, expected) => {
    const { reading, problems } = correct(correction);
    expect(problems).toEqual([]);
    expect(reading.items[0]).toMatchObject(expected);
  });

  it.each([
    [{ quote: 'kettle' }, 'not in the text'],
    [{ occurrence: 2 }, 'not in the text'],
    [{ item: 4, field: 'lid', value: true }, 'no such item'],
    [{ value: 'big' }, 'No figure'],
    [{ value: 0 }, 'More than nothing'],
    [{ field: 'lid', value: 'perhaps' }, 'Yes or no'],
    [{ field: 'material', value: 'gold' }, 'One of'],
    [{ field: 'kind', value: 'spaceship' }, 'One of'],
    [{ field: 'quantity', value: 2.5 }, 'whole number'],
    [{ vessel: 5, value: '1 l' }, 'no such vessel'],
  ] as const)('tells why %j cannot be used, and changes nothing', (correction, message) => {
    const { reading, problems } = correct(correction);
    expect(problems).toHaveLength(1);
    expect(problems[0]?.field).toBe('correction.0');
    expect(problems[0]?.message).toContain(message);
    expect(reading).toEqual(readList(TEXT));
  });
});
