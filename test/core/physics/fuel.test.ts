import { describe, expect, it } from 'vitest';
import { GAS_MIX_SHARES } from '../../../core/data/fuels.js';
import {
  canisterNetG,
  canisterPressurePa,
  staysLiquidBelowC,
  fuelHeatingValueJPerKg,
  heatingValueJPerKg,
  liquidFuelG,
  mixHeatingValueJPerKg,
  mixturePressurePa,
  shareBeforePa,
  sharesLeft,
  vapourPressurePa,
  woodHeatingValueJPerKg,
} from '../../../core/physics/fuel.js';
import { refuses } from './refuse.js';

describe('heating values', () => {
  it('tells the lower from the higher', () => {
    expect(heatingValueJPerKg('propane', 'lower')).toBe(46.35e6);
    expect(heatingValueJPerKg('propane', 'higher')).toBe(50.34e6);
  });

  it('of a mix is the sum by mass', () => {
    expect(mixHeatingValueJPerKg({ propane: 0.2, isobutane: 0.8 }, 'lower')).toBeCloseTo(
      0.2 * 46.35e6 + 0.8 * 45.57e6,
      3,
    );
    expect(mixHeatingValueJPerKg({ propane: 0.3, butane: 0.7 }, 'higher')).toBeCloseTo(0.3 * 50.34e6 + 0.7 * 49.5e6, 3);
  });

  it('of a kind of fuel as met on a list', () => {
    expect(fuelHeatingValueJPerKg('alcohol')).toBe(26.8e6);
    expect(fuelHeatingValueJPerKg('liquid-fuel')).toBe(44.93e6);
    expect(fuelHeatingValueJPerKg('solid-fuel')).toBe(28.09e6);
    expect(fuelHeatingValueJPerKg('wood')).toBeCloseTo(14.712e6, 3);
    expect(fuelHeatingValueJPerKg('gas')).toBe(mixHeatingValueJPerKg(GAS_MIX_SHARES.isobutane, 'lower'));
    expect(fuelHeatingValueJPerKg('gas', 'propane')).toBe(46.35e6);
  });

  refuses('moisture', woodHeatingValueJPerKg, { least: 0, most: 0.6, says: 'The moisture of the wood' });
  it('of dry wood is 19.0 MJ/kg', () => expect(woodHeatingValueJPerKg(0)).toBe(19e6));
});

describe('liquid fuel', () => {
  it('weighs less than water', () => {
    expect(liquidFuelG('alcohol', 100)).toBeCloseTo(78.93, 9);
    expect(liquidFuelG('liquid-fuel', 100)).toBeCloseTo(72.5, 9);
  });
  refuses('a volume', (ml) => liquidFuelG('alcohol', ml), {
    least: 0,
    most: 1e6,
    unit: ' mL',
    says: 'The volume of fuel',
  });
});

describe('vapour pressure', () => {
  refuses('a temperature', (tK) => vapourPressurePa('butane', tK), {
    least: 170,
    most: 360,
    unit: ' K',
    says: 'The temperature of the gas',
  });

  it('of a mix goes by molecules: propane weighs less, so it counts for more', () => {
    const [propane, isobutane] = [vapourPressurePa('propane', 273.15), vapourPressurePa('isobutane', 273.15)];
    const molecules = 0.2 / 44.096 / (0.2 / 44.096 + 0.8 / 58.122);
    expect(molecules).toBeGreaterThan(0.24);
    expect(mixturePressurePa({ propane: 0.2, isobutane: 0.8 }, 273.15)).toBeCloseTo(
      molecules * propane + (1 - molecules) * isobutane,
      3,
    );
  });

  it('of a canister falls to the least volatile gas as it empties', () => {
    const mix = { propane: 0.3, isobutane: 0.7, butane: 0 };
    expect(canisterPressurePa(mix, 263.15, 1)).toBeCloseTo(mixturePressurePa(mix, 263.15), 6);
    expect(canisterPressurePa(mix, 263.15, 0.001)).toBeCloseTo(vapourPressurePa('isobutane', 263.15), -2);
    expect(() => canisterPressurePa(mix, 263.15, 0)).toThrow(/share that is left/);
  });

  it('Rayleigh: two gases leave in the ratio of their pressures', () => {
    // Lord Rayleigh 1902: d ln n₁ / d ln n₂ = p₁ / p₂ of an ideal mix at one temperature.
    const [propane, butane] = [vapourPressurePa('propane', 263.15), vapourPressurePa('butane', 263.15)];
    const full = { propane: 0.3, butane: 0.7 };
    for (const left of [0.9, 0.5, 0.1]) {
      const rest = sharesLeft(full, left, 263.15);
      const lost = (gas: 'propane' | 'butane') => Math.log((rest[gas]! * left) / full[gas]);
      expect(lost('propane') / lost('butane')).toBeCloseTo(propane / butane, 6);
    }
  });

  it('gives gas until its pressure falls to what is asked', () => {
    const mix = { propane: 0.3, isobutane: 0.7 };
    const share = shareBeforePa(mix, 263.15, 130_000);
    expect(share).toBeGreaterThan(0.1);
    expect(canisterPressurePa(mix, 263.15, 1 - share)).toBeCloseTo(130_000, 0);
    expect(shareBeforePa(mix, 263.15, 400_000)).toBe(0);
    expect(shareBeforePa(mix, 263.15, 90_000)).toBe(1);
  });

  it('refuses shares that are none', () => {
    expect(() => mixturePressurePa({ propane: 0.5, butane: 0.6 }, 273)).toThrow(
      /^The sum of the shares is 1\.1: outside 0\.999999999 to /,
    );
    expect(() => mixturePressurePa({ propane: -0.5, butane: 1.5 }, 273)).toThrow(
      'The share of propane is -0.5: outside 0 to 1.',
    );
    expect(() => mixturePressurePa({ butane: 0.4 }, 273)).toThrow(/^The sum of the shares is 0\.4/);
    expect(() => mixturePressurePa({}, 273)).toThrow(/^The sum of the shares is 0:/);
  });

  it('every mix that words name adds up', () => {
    for (const shares of Object.values(GAS_MIX_SHARES)) expect(() => mixturePressurePa(shares, 273)).not.toThrow();
  });
});

describe('staysLiquidBelowC', () => {
  // Normal boiling points, CRC Handbook of Chemistry and Physics (from memory): butane −0.5 °C, isobutane −11.7 °C, propane −42.1 °C.
  it.each([
    [{ butane: 1 }, -0.5],
    [{ isobutane: 1 }, -11.7],
    [{ propane: 1 }, -42.1],
  ])('%j at 101.325 kPa: %d °C', (shares, boilsC) => {
    expect(staysLiquidBelowC(shares, 101_325)).toBeCloseTo(boilsC, 0);
  });

  it('is where the pressure of the mix is the air’s, and refuses what is no air', () => {
    const mix = { propane: 0.3, isobutane: 0.7 };
    expect(canisterPressurePa(mix, staysLiquidBelowC(mix, 70_000) + 273.15, 1)).toBeCloseTo(70_000, 3);
    expect(() => staysLiquidBelowC(mix, 9_999)).toThrow(/pressure of the air/);
    expect(() => staysLiquidBelowC(mix, 120_001)).toThrow(RangeError);
    expect(staysLiquidBelowC(mix, 10_000)).toBeLessThan(staysLiquidBelowC(mix, 120_000));
  });
});

describe('canisterNetG', () => {
  it.each([
    [174, null],
    [175, 105],
    [215, 105],
    [216, null],
    [359, null],
    [360, 230],
    [375, 230],
    [376, null],
    [650, 450],
    [670, 450],
    [671, null],
    [230, null],
  ])('of %d g full holds %s', (gross, net) => {
    expect(canisterNetG(gross)?.likely ?? null).toBe(net);
  });
  it('gives the range of its size', () => expect(canisterNetG(200)).toEqual({ low: 100, likely: 105, high: 110 }));
  refuses('a mass', canisterNetG, { least: 0, most: 100_000, unit: ' g', says: 'The mass of the canister' });
});
