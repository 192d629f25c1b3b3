import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FOODS, type FoodId } from '../../core/data/food.js';
import { SUBSTANCES, type SubstanceId } from '../../core/data/fuels.js';
import type { GasId, GasShares } from '../../core/model/item.js';
import { cookedVolumeMl, cookedYield, waterUptakeG } from '../../core/physics/food.js';
import {
  canisterPressurePa,
  heatingValueJPerKg,
  liquidFuelG,
  mixHeatingValueJPerKg,
  mixturePressurePa,
  vapourPressurePa,
  woodHeatingValueJPerKg,
} from '../../core/physics/fuel.js';
import { needsTwoHandles, scaldSeconds } from '../../core/physics/handling.js';
import { number } from './arbitraries.js';

const gases = fc.constantFrom<GasId>('propane', 'isobutane', 'butane');
const temperatures = number(213, 330);
const mixes: fc.Arbitrary<GasShares> = fc.tuple(number(0, 1), number(0, 1)).map(([a, b]) => {
  const [first, second] = [Math.min(a, b), Math.max(a, b)];
  return { propane: first, isobutane: second - first, butane: 1 - second };
});

describe('gas', () => {
  it('presses more the warmer it is, propane more than isobutane more than butane', () => {
    fc.assert(
      fc.property(gases, temperatures, (gas, tK) => {
        expect(vapourPressurePa(gas, tK + 1)).toBeGreaterThan(vapourPressurePa(gas, tK));
        expect(vapourPressurePa('propane', tK)).toBeGreaterThan(vapourPressurePa('isobutane', tK));
        expect(vapourPressurePa('isobutane', tK)).toBeGreaterThan(vapourPressurePa('butane', tK));
      }),
    );
  });

  it('a mix presses between its parts, and a canister no more when nearly empty than when full', () => {
    fc.assert(
      fc.property(mixes, temperatures, (shares, tK) => {
        const pressure = mixturePressurePa(shares, tK);
        expect(pressure).toBeLessThanOrEqual(vapourPressurePa('propane', tK) * (1 + 1e-9));
        expect(pressure).toBeGreaterThanOrEqual(vapourPressurePa('butane', tK) * (1 - 1e-9));
        const at = [1, 0.6, 0.3, 0.1].map((left) => canisterPressurePa(shares, tK, left));
        expect(at[0]! / pressure).toBeCloseTo(1, 9);
        for (const [i, now] of at.entries()) expect(now).toBeLessThanOrEqual((at[i - 1] ?? now) * (1 + 1e-9));
      }),
    );
  });

  it('a mix of one gas is that gas, in pressure and in heat', () => {
    fc.assert(
      fc.property(gases, temperatures, (gas, tK) => {
        expect(mixturePressurePa({ [gas]: 1 }, tK)).toBeCloseTo(vapourPressurePa(gas, tK), 3);
        expect(mixHeatingValueJPerKg({ [gas]: 1 }, 'lower')).toBe(heatingValueJPerKg(gas, 'lower'));
      }),
    );
  });
});

describe('burning', () => {
  it('gives less on the lower value than on the higher', () => {
    for (const substance of Object.keys(SUBSTANCES) as SubstanceId[])
      expect(heatingValueJPerKg(substance, 'lower')).toBeLessThan(heatingValueJPerKg(substance, 'higher'));
  });

  it('wetter wood gives less, and some still', () => {
    fc.assert(
      fc.property(number(0, 0.59), (moisture) => {
        expect(woodHeatingValueJPerKg(moisture + 0.01)).toBeLessThan(woodHeatingValueJPerKg(moisture));
        expect(woodHeatingValueJPerKg(moisture)).toBeGreaterThan(6e6);
      }),
    );
  });

  it('no volume is no mass, and twice the volume twice the mass', () => {
    fc.assert(
      fc.property(fc.constantFrom('alcohol' as const, 'liquid-fuel' as const), number(0, 10_000), (fuel, ml) => {
        expect(liquidFuelG(fuel, 0)).toBe(0);
        expect(liquidFuelG(fuel, 2 * ml)).toBeCloseTo(2 * liquidFuelG(fuel, ml), 6);
        expect(liquidFuelG(fuel, ml)).toBeLessThanOrEqual(ml);
      }),
    );
  });
});

describe('food', () => {
  const foods = fc.constantFrom(...(Object.keys(FOODS) as FoodId[]));

  it('keeps its mass: cooked is dry and the water taken up', () => {
    fc.assert(
      fc.property(foods, number(0, 10_000), (food, dryG) => {
        expect(dryG + waterUptakeG(food, dryG)).toBeCloseTo(dryG * cookedYield(food), 6);
        expect(waterUptakeG(food, dryG)).toBeGreaterThanOrEqual(dryG);
        expect(cookedVolumeMl(food, 2 * dryG)).toBeCloseTo(2 * cookedVolumeMl(food, dryG), 6);
      }),
    );
  });

  it('nothing dry is nothing cooked', () => {
    for (const food of Object.keys(FOODS) as FoodId[])
      expect([cookedVolumeMl(food, 0), waterUptakeG(food, 0)]).toEqual([0, 0]);
  });
});

describe('hot water on skin', () => {
  it('burns sooner the hotter it is', () => {
    fc.assert(
      fc.property(number(44, 104), number(0, 1), (tC, more) => {
        expect(scaldSeconds(tC + more)!).toBeLessThanOrEqual(scaldSeconds(tC)!);
        expect(scaldSeconds(tC)!).toBeGreaterThanOrEqual(1);
      }),
    );
  });

  it('a larger or heavier pot never needs fewer handles', () => {
    fc.assert(
      fc.property(number(0, 20_000), number(0, 20), (ml, kg) => {
        if (needsTwoHandles(ml, kg)) expect(needsTwoHandles(ml * 1.5, kg * 1.5)).toBe(true);
      }),
    );
  });
});
