import { describe, expect, it } from 'vitest';
import * as water from '../../../core/physics/water.js';
import { refuses } from './refuse.js';

describe('saturation', () => {
  refuses('a temperature', water.saturationPressurePa, {
    least: 273.15,
    most: 647.096,
    unit: ' K',
    says: 'The temperature of saturated water',
  });
  refuses('a pressure', water.saturationTemperatureK, {
    least: 611.213,
    most: 22.064e6,
    unit: ' Pa',
    says: 'The pressure of saturated water',
  });

  it('is 1 atm at 99.974 °C', () => {
    expect(water.saturationTemperatureK(101325) - 273.15).toBeCloseTo(99.974, 3);
    expect(water.saturationPressurePa(373.124)).toBeCloseTo(101325, -1);
  });
});

describe('liquid water', () => {
  for (const name of [
    'heatCapacityJPerKgK',
    'densityKgPerM3',
    'enthalpyJPerKg',
    'latentHeatVaporisationJPerKg',
  ] as const)
    refuses(name, water[name], { least: 0, most: 105, unit: ' °C', says: 'The temperature of liquid water' });

  it('takes 335.05 kJ from 20 °C to the boil', () => {
    expect(water.enthalpyJPerKg(99.974) - water.enthalpyJPerKg(20)).toBeCloseTo(335_050, -1);
  });
});

describe('ice', () => {
  for (const name of ['iceHeatCapacityJPerKgK', 'iceDensityKgPerM3', 'meltingHeatJPerKg'] as const)
    refuses(name, water[name], { least: -60, most: 0, unit: ' °C', says: 'The temperature of ice' });

  it.each([
    [0, 333.4],
    [-5, 343.8],
    [-10, 354.0],
    [-20, 373.9],
  ])('melts from %d °C with %d kJ/kg', (tC, kj) => {
    expect(water.meltingHeatJPerKg(tC) / 1000).toBeCloseTo(kj, 0);
  });
});
