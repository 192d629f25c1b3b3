import { describe, expect, it } from 'vitest';
import { cookedVolumeMl, cookedYield, waterUptakeG } from '../../../core/physics/food.js';
import { refuses } from './refuse.js';

describe('food', () => {
  it('125 g of rice a head is 524 mL in the pot, and takes up 225 g of water', () => {
    expect(cookedVolumeMl('rice', 125)).toBeCloseTo(524, 0);
    expect(waterUptakeG('rice', 125)).toBeCloseTo(225, 0);
  });

  it('a weighed yield goes before one from water contents', () => {
    expect(cookedYield('couscous')).toBeCloseTo(3.05, 2);
    expect((100 - 8.56) / (100 - 72.57)).toBeCloseTo(3.33, 2);
    expect(cookedYield('rice')).toBeCloseTo(2.8, 2);
  });

  for (const call of [cookedVolumeMl, waterUptakeG])
    refuses(`${call.name}: a mass`, (g) => call('oats', g), {
      least: 0,
      most: 100_000,
      unit: ' g',
      says: 'The dry food',
    });
});
