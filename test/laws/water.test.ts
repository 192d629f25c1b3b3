import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airTemperatureK, boilingPointC, pressurePa } from '../../core/physics/air.js';
import {
  densityKgPerM3,
  enthalpyJPerKg,
  heatCapacityJPerKgK,
  iceDensityKgPerM3,
  iceHeatCapacityJPerKgK,
  latentHeatVaporisationJPerKg,
  meltingHeatJPerKg,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../core/physics/water.js';
import { number } from './arbitraries.js';

const twoOf = (min: number, max: number): fc.Arbitrary<[number, number]> =>
  fc.tuple(number(min, max), number(min, max)).map(([a, b]): [number, number] => (a < b ? [a, b] : [b, a]));

describe('the boiling line', () => {
  it('goes there and back: temperature to pressure to temperature', () => {
    fc.assert(
      fc.property(number(273.16, 647), (tK) => {
        expect(saturationTemperatureK(saturationPressurePa(tK))).toBeCloseTo(tK, 5);
      }),
    );
  });

  it('rises', () => {
    fc.assert(
      fc.property(twoOf(273.15, 647.09), ([cold, hot]) => {
        expect(saturationPressurePa(hot)).toBeGreaterThanOrEqual(saturationPressurePa(cold) * (1 - 1e-12));
      }),
    );
  });
});

describe('altitude', () => {
  it('takes away pressure, warmth and boiling point', () => {
    fc.assert(
      fc.property(twoOf(-430, 9000), ([low, high]) => {
        // But for the last digits, where the two lie next to each other.
        for (const falls of [pressurePa, airTemperatureK, boilingPointC])
          expect(falls(high)).toBeLessThanOrEqual(falls(low) * (1 + 1e-12));
      }),
    );
  });

  it('leaves a boiling point that the properties of water cover', () => {
    fc.assert(
      fc.property(number(-430, 9000), (altitudeM) => {
        const boilC = boilingPointC(altitudeM);
        for (const property of [heatCapacityJPerKgK, densityKgPerM3, enthalpyJPerKg, latentHeatVaporisationJPerKg])
          expect(property(boilC)).toBeGreaterThan(0);
      }),
    );
  });
});

describe('liquid water and ice', () => {
  it('enthalpy is the integral of the heat capacity', () => {
    fc.assert(
      fc.property(number(0, 104), (tC) => {
        // Simpson's rule over one degree is exact for what is left of so smooth a curve.
        const [a, m, b] = [heatCapacityJPerKgK(tC), heatCapacityJPerKgK(tC + 0.5), heatCapacityJPerKgK(tC + 1)];
        expect(enthalpyJPerKg(tC + 1) - enthalpyJPerKg(tC)).toBeCloseTo((a + 4 * m + b) / 6, 3);
      }),
    );
  });

  it('water is densest at 4 °C, and ice floats', () => {
    fc.assert(
      fc.property(number(0, 105), number(-60, 0), (waterC, iceC) => {
        expect(densityKgPerM3(waterC)).toBeLessThanOrEqual(densityKgPerM3(4) + 0.001);
        expect(iceDensityKgPerM3(iceC)).toBeLessThan(densityKgPerM3(105));
      }),
    );
  });

  it('colder ice takes more heat to melt, by its own heat capacity', () => {
    fc.assert(
      fc.property(number(-59, 0), (tC) => {
        const oneMore = meltingHeatJPerKg(tC - 1) - meltingHeatJPerKg(tC);
        const [a, m, b] = [
          iceHeatCapacityJPerKgK(tC - 1),
          iceHeatCapacityJPerKgK(tC - 0.5),
          iceHeatCapacityJPerKgK(tC),
        ];
        expect(oneMore).toBeCloseTo((a + 4 * m + b) / 6, 3);
      }),
    );
  });
});
