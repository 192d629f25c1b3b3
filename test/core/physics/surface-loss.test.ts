import { describe, expect, it } from 'vitest';
import {
  drySurfaceLossWPerM2,
  evaporationLossWPerM2,
  openSurfaceLossWPerM2,
} from '../../../core/physics/surface-loss.js';
import { refuses } from './refuse.js';

describe('the loss of a surface', () => {
  for (const call of [openSurfaceLossWPerM2, evaporationLossWPerM2, drySurfaceLossWPerM2])
    refuses(`${call.name}: a temperature`, call, {
      least: 0,
      most: 105,
      unit: ' °C',
      says: 'The temperature of the water',
    });

  it('is nothing up to the air’s own temperature', () => {
    for (const tC of [0, 10, 15.6]) expect(openSurfaceLossWPerM2(tC)).toBe(0);
    expect(openSurfaceLossWPerM2(15.7)).toBeGreaterThan(0);
  });

  it('rises in a straight line to the first row', () => {
    expect(evaporationLossWPerM2((15.6 + 48.9) / 2)).toBeCloseTo(570, 6);
    expect(drySurfaceLossWPerM2((15.6 + 48.9) / 2)).toBeCloseTo(170, 6);
  });

  it('is the mean of the logarithms half-way between rows', () => {
    expect(evaporationLossWPerM2((60 + 71.1) / 2)).toBeCloseTo(1000 * Math.sqrt(2.08 * 3.47), 6);
    expect(evaporationLossWPerM2((93.3 + 98.9) / 2)).toBeCloseTo(1000 * Math.sqrt(8.45 * 10.22), 6);
  });

  it('goes on along the last line above the table', () => {
    expect(evaporationLossWPerM2(98.9 + 5.6)).toBeCloseTo((1000 * 10.22 ** 2) / 8.45, 6);
  });

  it('open is evaporation and dry together', () => {
    expect(openSurfaceLossWPerM2(90)).toBeCloseTo(evaporationLossWPerM2(90) + drySurfaceLossWPerM2(90), 9);
  });

  it('of a 14 cm pot near the boil is 175 W, of a 20 cm one 357 W', () => {
    const watts = (diameterM: number): number => (openSurfaceLossWPerM2(98.9) * Math.PI * diameterM ** 2) / 4;
    expect(watts(0.14)).toBeCloseTo(175, 0);
    expect(watts(0.2)).toBeCloseTo(357, 0);
  });
});
