import { describe, expect, it } from 'vitest';
import { FOODS } from '../../../core/data/food.js';
import { CANISTERS, GAS_MIX_SHARES, SUBSTANCES } from '../../../core/data/fuels.js';
import { SCALD_SECONDS } from '../../../core/data/hazards.js';
import { SNOW_KG_PER_M3 } from '../../../core/data/snow.js';
import { sourceById } from '../../../core/data/sources/index.js';
import { HEAT_SOURCES, OPEN_SURFACE_LOSS, WIND_FACTORS } from '../../../core/data/stoves.js';
import type { Range } from '../../../core/model/finding.js';

const total = (values: readonly number[]): number => Number(values.reduce((sum, value) => sum + value, 0).toFixed(6));

// Rows and column sums, so that a slip of the keyboard in a table shows.
describe('tables', () => {
  it('of fuels', () => {
    const rows = Object.values(SUBSTANCES);
    expect(rows).toHaveLength(10);
    expect(total(rows.map((row) => row.lowerMjPerKg))).toBe(375.06);
    expect(total(rows.map((row) => row.higherMjPerKg))).toBe(405.85);
    expect(total(rows.map((row) => ('densityKgPerM3' in row ? row.densityKgPerM3 : 0)))).toBe(6301.7);
  });

  it('of foods', () => {
    const rows = Object.values(FOODS);
    expect(rows).toHaveLength(11);
    expect(total(rows.map((row) => row.dryWater))).toBe(111.04);
    expect(total(rows.map((row) => row.cookedWater))).toBe(786.59);
    expect(total(rows.map((row) => row.cookedGPerCup))).toBe(1929);
  });

  it('of open water', () => {
    const { rows } = OPEN_SURFACE_LOSS;
    expect(rows).toHaveLength(7);
    expect(total(rows.map((row) => row.waterC))).toBe(542.2);
    expect(total(rows.map((row) => row.evaporation))).toBe(37.66);
    expect(total(rows.map((row) => row.total))).toBe(43.06);
  });

  it('of scalds', () => {
    expect(SCALD_SECONDS).toHaveLength(9);
    expect(total(SCALD_SECONDS.map((row) => row.waterC))).toBe(512.9);
    expect(total(SCALD_SECONDS.map((row) => row.seconds))).toBe(22_071);
  });
});

describe('every range of the tables', () => {
  const ranges: [string, Range][] = [
    ...Object.entries(SNOW_KG_PER_M3),
    ...Object.entries(WIND_FACTORS).map(([wind, { fuel }]): [string, Range] => [wind, fuel]),
    ...CANISTERS.map(({ netG }): [string, Range] => [`canister ${netG.likely}`, netG]),
    ...Object.entries(HEAT_SOURCES).flatMap(([name, { powerW, efficiency }]): [string, Range][] => [
      [`${name} power`, powerW],
      ...Object.entries(efficiency).map(([width, share]): [string, Range] => [`${name} ${width}`, share]),
    ]),
  ];
  it.each(ranges)('%s: low ≤ likely ≤ high', (_, { low, likely, high }) => {
    expect(low).toBeGreaterThan(0);
    expect(likely).toBeGreaterThanOrEqual(low);
    expect(high).toBeGreaterThanOrEqual(likely);
  });
});

describe('every source that a table names', () => {
  const cited: readonly string[] = [
    ...Object.values(SNOW_KG_PER_M3).flatMap((row) => row.cites),
    ...Object.values(SUBSTANCES).flatMap((row): readonly string[] => row.cites),
    ...Object.values(HEAT_SOURCES).flatMap((row) => row.cites),
  ];
  it.each([...new Set(cited)])('%s is in the bibliography', (id) => {
    expect(sourceById(id).id).toBe(id);
  });
});

describe('gas mixes', () => {
  it.each(Object.entries(GAS_MIX_SHARES))('%s adds up to 1', (_, shares) => {
    expect(total(Object.values(shares))).toBe(1);
  });
});
