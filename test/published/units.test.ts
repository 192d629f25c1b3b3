import { convert } from 'convert';
import { describe, expect, it } from 'vitest';
import { US_CUP_ML } from '../../core/data/food.js';
import { UNITS, type Unit } from '../../core/reading/quantities/units.js';
import { compare, type PrintedRow } from './figure.js';
import * as hb44 from './figures/nist-handbook-44.js';
import { VOLUME } from './figures/uk-weights-measures.js';

const unit = (row: PrintedRow): Unit => UNITS[row.at.id as keyof typeof UNITS];

describe('units', () => {
  compare(hb44.VOLUME, (row) => unit(row).factor);
  compare(hb44.LENGTH, (row) => unit(row).factor);
  compare(hb44.MASS, (row) => unit(row).factor);
  compare(VOLUME, (row) => unit(row).imperial!);
});

/** The npm package convert 8.0.2, a general-purpose unit library, as a reference. */
describe('units against the convert library', () => {
  const agree = (ours: number, theirs: number): void => expect(Math.abs(ours / theirs - 1)).toBeLessThan(1e-12);

  it('agrees on US volumes', () => {
    agree(UNITS.gallon.factor, convert(1, 'gallons').to('ml'));
    agree(UNITS.quart.factor, convert(1, 'quarts').to('ml'));
    agree(UNITS.pint.factor, convert(1, 'pints').to('ml'));
    agree(UNITS.cup.factor, convert(1, 'cups').to('ml'));
    agree(US_CUP_ML, convert(1, 'cups').to('ml'));
    agree(UNITS.floz.factor, convert(1, 'US fluid ounces').to('ml'));
  });

  it('agrees on imperial volumes', () => {
    agree(UNITS.gallon.imperial!, convert(1, 'imperial gallons').to('ml'));
  });

  it('agrees on lengths and masses', () => {
    agree(UNITS.in.factor, convert(1, 'inches').to('mm'));
    agree(UNITS.ft.factor, convert(1, 'feet').to('mm'));
    agree(UNITS.lb.factor, convert(1, 'pounds').to('g'));
    agree(UNITS.oz.factor, convert(1, 'ounces').to('g'));
    agree(UNITS.kg.factor, convert(1, 'kilograms').to('g'));
  });
});
