import { describe, expect, it } from 'vitest';
import { readList } from '../../core/reading/index.js';
import { precision, recall, scoreList, shares, sum } from './judge.mjs';
import { practiceLists, prediction } from './predict.mjs';

const results = practiceLists().map(({ label, text }) => ({
  lang: label.lang,
  ...scoreList(label, prediction(readList(text))),
}));

/** What the reader has reached; a change that reads less right than this is a step back. */
const FLOORS = [
  {
    name: 'English and German',
    lists: results.filter(({ lang }) => lang === 'en' || lang === 'de'),
    recall: 0.94,
    precision: 0.97,
  },
  { name: 'all', lists: results, recall: 0.96, precision: 0.98 },
] as const;

describe.each(FLOORS)('$name practice lists', (floor) => {
  const total = sum(floor.lists);
  const { capacity_ml, quantity, mass_g, fuel_mass_g, diameter_mm, height_mm } = total.fields;

  it('are found again', () => {
    expect(recall(total)).toBeGreaterThanOrEqual(floor.recall);
    expect(precision(total)).toBeGreaterThanOrEqual(floor.precision);
  });

  it('have their figures read right, and none that are not there', () => {
    const figures = shares({ quantity, capacity_ml, mass_g, fuel_mass_g, diameter_mm, height_mm });
    expect(figures.right).toBeGreaterThanOrEqual(0.97);
    expect(shares({ capacity_ml, mass_g, fuel_mass_g, diameter_mm, height_mm }).over).toBeLessThanOrEqual(0.01);
  });

  it('have what they say of the trip read right', () => {
    expect(shares(total.context).right).toBeGreaterThanOrEqual(0.95);
  });
});
