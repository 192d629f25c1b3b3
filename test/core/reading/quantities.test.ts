import { describe, expect, it } from 'vitest';
import { parseMeasure } from '../../../core/index.js';

/** Sizes of the units by definition: NIST Handbook 44, appendix C; imperial gallon 4.54609 L, Weights and Measures Act 1985. */
const FLUID_OUNCE = 29.5735295625;
const IMPERIAL_FLUID_OUNCE = 4546.09 / 160;
const OUNCE = 28.349523125;

describe('parseMeasure', () => {
  it.each([
    ['750', 'volume', 750],
    ['1,1 l', 'volume', 1100],
    ['1.1 L', 'volume', 1100],
    ['12cl', 'volume', 120],
    ['3 dl', 'volume', 300],
    ['450 cc', 'volume', 450],
    ['450 cm³', 'volume', 450],
    ['９００ｍｌ', 'volume', 900],
    ['1.350 ml', 'volume', 1350],
    ['1\u202f350 ml', 'volume', 1350],
    ['1.350 l', 'volume', 1350],
    ['½ l', 'volume', 500],
    ['1½ l', 'volume', 1500],
    ['1 1/2 l', 'volume', 1500],
    ['1-1/2 l', 'volume', 1500],
    ['.75 litre', 'volume', 750],
    ['38 fl oz', 'volume', 38 * FLUID_OUNCE],
    ['38 fl. oz.', 'volume', 38 * FLUID_OUNCE],
    ['38 FL OZ', 'volume', 38 * FLUID_OUNCE],
    ['38 fl oz imp', 'volume', 38 * IMPERIAL_FLUID_OUNCE],
    ['24 oz', 'volume', 24 * FLUID_OUNCE],
    ['2 qt', 'volume', 64 * FLUID_OUNCE],
    ['5 pints (imperial)', 'volume', 100 * IMPERIAL_FLUID_OUNCE],
    ['3 cups', 'volume', 24 * FLUID_OUNCE],
    ['1 gallon', 'volume', 128 * FLUID_OUNCE],
    ['110 g', 'mass', 110],
    ['0,3 kg', 'mass', 300],
    ['1.951 g', 'mass', 1951],
    ['3 hg', 'mass', 300],
    ['25 dkg', 'mass', 250],
    ['gr. 230', 'mass', 230],
    ['lt 1,5', 'volume', 1500],
    ['cl 45', 'volume', 450],
    ['1L5', 'volume', 1500],
    ['1 litre et demi', 'volume', 1500],
    ['3.9 oz', 'mass', 3.9 * OUNCE],
    ['1 lb 4 oz', 'mass', 20 * OUNCE],
    ['1 lb 4.5', 'mass', 20.5 * OUNCE],
    ['2#3', 'mass', 35 * OUNCE],
    ['4 1/2 in', 'length', 114.3],
    ['6-3/4"', 'length', 171.45],
    ['5½″', 'length', 139.7],
    ['13 cm', 'length', 130],
    ['130', 'length', 130],
    ['-10 °C', 'temperature', -10],
    ['−8°C', 'temperature', -8],
    ['14 °F', 'temperature', -10],
    ['-4 F', 'temperature', -20],
  ] as const)('%s is a %s of %d', (text, dimension, value) => {
    expect(parseMeasure(text, dimension)?.value).toBeCloseTo(value, 6);
  });

  it('keeps both ends of a range', () => {
    expect(parseMeasure('10-12 in', 'length')).toEqual({ value: 254, most: 304.8 });
    expect(parseMeasure('1.5–2 l', 'volume')).toEqual({ value: 1500, most: 2000 });
  });

  it('takes the British pint where the locale says so', () => {
    expect(parseMeasure('1 pint', 'volume', 'en-GB')?.value).toBeCloseTo(20 * IMPERIAL_FLUID_OUNCE, 9);
    expect(parseMeasure('1 pint', 'volume', 'en-US')?.value).toBeCloseTo(16 * FLUID_OUNCE, 9);
  });

  it.each([
    ['', 'volume'],
    ['a lot', 'volume'],
    ['110 g', 'volume'],
    ['13 x 9 cm', 'length'],
    ['1 l and 2 l', 'volume'],
    ['-3 cm', 'length'],
    ['9'.repeat(300), 'length'],
  ] as const)('refuses %s as a %s', (text, dimension) => {
    expect(parseMeasure(text, dimension)).toBeNull();
  });
});
