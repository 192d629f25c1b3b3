import { beforeEach, describe, expect, it, vi } from 'vitest';

/** Each door by itself: what one has learnt, the other does not know. */
const typed = () => import('../../core/typed.js');
const english = () => import('../../core/english.js');

const FIGURES = [
  '1',
  '1.1',
  '1,1',
  '4 1/2',
  '½',
  '1 ½',
  '750',
  '10-12',
  '10 to 12',
  'two',
  'a',
  'half a',
  'minus 8',
  '-8',
  '−8',
  '140 x 90',
  '',
];
const UNITS = [
  '',
  'l',
  'L',
  'litre',
  'litres',
  'liter',
  'ml',
  'millilitres',
  'dl',
  'cl',
  'fl oz',
  'fluid ounces',
  'oz',
  'us fl oz',
  'imp fl oz',
  'cup',
  'cups',
  'pint',
  'imperial pint',
  'uk pint',
  'US quart',
  'quarts',
  'gallon',
  'mm',
  'cm',
  'm',
  'inch',
  'inches',
  'in',
  '"',
  '″',
  'ft',
  'feet',
  'g',
  'grams',
  'kg',
  'lb',
  'pounds',
  'ounces',
  '°C',
  'C',
  'degrees',
  '°F',
  'F',
  'pot',
  'stove',
];
const DIMENSIONS = ['volume', 'length', 'mass', 'temperature'] as const;
const POTS = [
  [
    { capacity: '1.1 L', diameter: '140', height: '3 1/2 in', lid: true, material: 'titanium' },
    { people: 2, days: 3, waterFrom: 'snow' },
    { type: 'gas', form: 'upright', burnerDiameter: '4 cm' },
  ],
  [{ capacity: 'thirteen', diameter: '12' }, { people: 1, mealStyle: 'simmer' }, undefined],
  [{ name: 'Humblefern' }, {}, { type: 'wood' }],
] as const;

beforeEach(() => vi.resetModules());

describe('the door that reads no list', () => {
  it('understands every measure that the one with all of English does', async () => {
    const asked = FIGURES.flatMap((figure) => UNITS.map((unit) => `${figure} ${unit}`.trim()));
    const parsed = ({ parseMeasure }: Pick<Awaited<ReturnType<typeof typed>>, 'parseMeasure'>) =>
      asked.flatMap((text) =>
        DIMENSIONS.flatMap((dimension) =>
          ['en', 'en-GB'].map((locale) => JSON.stringify([text, dimension, parseMeasure(text, dimension, locale)])),
        ),
      );
    const without = parsed(await typed());
    vi.resetModules();
    const whole = parsed(await english());
    expect(without).toEqual(whole);
    expect(whole.filter((line) => !line.endsWith('null]')).length).toBeGreaterThan(500);
  });

  it.each(POTS)('judges a pot as the other does', async (pot, trip, stove) => {
    const one = await typed();
    const said = [one.checkPot(pot, trip, stove), one.lookFor(pot, trip, stove)];
    vi.resetModules();
    const other = await english();
    expect(said).toEqual([other.checkPot(pot, trip, stove), other.lookFor(pot, trip, stove)]);
  });

  it('has the same reading of nothing', async () => {
    const { checkPot } = await typed();
    const { reading } = checkPot({ capacity: 1000 });
    vi.resetModules();
    const { readList } = await english();
    expect(reading).toEqual(readList(''));
  });

  it('makes way for the whole of English where both are loaded', async () => {
    await typed();
    const { readList } = await english();
    expect(readList('Pot 1.3 L\nGas stove').items.map(({ kind }) => kind)).toEqual(['pot', 'stove']);
  });
});
