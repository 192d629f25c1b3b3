import { describe, expect, it } from 'vitest';
import { airTemperatureK, boilingPointC, geopotentialM, pressurePa } from '../../../core/physics/air.js';
import { refuses } from './refuse.js';

describe('the standard atmosphere', () => {
  for (const call of [geopotentialM, airTemperatureK, pressurePa, boilingPointC])
    refuses(`${call.name}: an altitude`, call, { least: -500, most: 11_000, unit: ' m', says: 'The altitude' });

  it('is 15 °C at the sea and 6.5 °C colder a kilometre', () => {
    expect(airTemperatureK(0)).toBe(288.15);
    expect(airTemperatureK(1000)).toBeCloseTo(281.651, 3);
  });

  it('counts a map’s metre as a little less the higher it lies', () => {
    expect(geopotentialM(0)).toBe(0);
    expect(geopotentialM(5000)).toBeCloseTo(4996.07, 2);
  });
});

describe('the boiling point', () => {
  it.each([
    [0, 99.97],
    [500, 98.31],
    [1500, 94.98],
    [3000, 89.98],
    [5000, 83.27],
    [8000, 73.1],
    [8849, 70.2],
  ])('at %d m is %d °C', (altitudeM, boilC) => {
    expect(Math.abs(boilingPointC(altitudeM) - boilC)).toBeLessThan(altitudeM > 7000 ? 0.1 : 0.02);
  });
});
