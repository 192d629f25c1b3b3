import { describe, expect, it } from 'vitest';
import { GAS_MIX_SHARES } from '../../core/data/fuels.js';
import { SNOW_KG_PER_M3 } from '../../core/data/snow.js';
import type { HeatSource } from '../../core/data/stoves.js';
import type { Wind } from '../../core/model/trip.js';
import { pressurePa } from '../../core/physics/air.js';
import { burnerFor } from '../../core/physics/burner.js';
import { canisterPressurePa, fuelHeatingValueJPerKg, liquidFuelG } from '../../core/physics/fuel.js';
import { heat, type Heating } from '../../core/physics/heating.js';
import { loadsPerLitre, meltSnow } from '../../core/physics/snow.js';
import { spillAngleDeg } from '../../core/physics/stability.js';
import { fillHeightMm, surfaceM2, volumeMl, wetWallM2, type VesselShape } from '../../core/physics/vessel.js';
import { enthalpyJPerKg, meltingHeatJPerKg } from '../../core/physics/water.js';

// Common practice, no source: what practitioners find. The physics must come out there; each is marked cp-… in core/data/sources.

const BOIL_C = 99.974;

const pot = (diameterMm: number, heightMm: number): VesselShape => ({
  kind: 'round',
  rimMm: diameterMm,
  baseMm: diameterMm,
  heightMm,
});
/** Of a pot of that shape: width = share × height, brim = mL. */
const ofCapacity = (share: number, ml: number): VesselShape => {
  const heightMm = Math.cbrt((4000 * ml) / (Math.PI * share ** 2));
  return pot(share * heightMm, heightMm);
};

function boil(
  source: HeatSource,
  shape: Extract<VesselShape, { kind: 'round' }>,
  litres: number,
  wind: Wind,
  lid = true,
  fromC = 20,
): Extract<Heating, { reaches: true }> {
  const fillMm = fillHeightMm(shape, litres * 1000);
  const burner = burnerFor(source, shape.baseMm);
  const heating = heat({
    ...burner,
    lowerHeatingValueJPerKg: fuelHeatingValueJPerKg(burner.fuel),
    massKg: litres,
    fromC,
    toC: BOIL_C,
    surfaceM2: surfaceM2(shape, fillMm),
    wallM2: wetWallM2(shape, fillMm),
    lid,
    wind,
  });
  if (!heating.reaches) throw new Error(`stalls at ${heating.stallsC} °C`);
  return heating;
}

describe('common practice, no source: fuel', () => {
  const litrePot = ofCapacity(1, 1150) as Extract<VesselShape, { kind: 'round' }>;

  it('cp-fuel-per-litre: 12 g of gas a litre on a pot with a heat exchanger in calm, 24 g in a breeze without', () => {
    expect(boil('integrated', litrePot, 1, 'calm').grams.likely).toBeCloseTo(12, 0);
    expect(boil('gas', litrePot, 1, 'breeze').grams.likely).toBeCloseTo(24, 0);
  });

  it('cp-fuel-per-litre: about 16 g as a rule, and some 50 g in wind within the range', () => {
    expect(boil('gas', litrePot, 1, 'calm').grams.likely).toBeGreaterThan(15);
    expect(boil('gas', litrePot, 1, 'calm').grams.likely).toBeLessThan(18);
    const windy = boil('gas', litrePot, 1, 'windy').grams;
    expect(windy.low).toBeLessThan(50);
    expect(windy.high).toBeGreaterThan(50);
  });

  it('cp-fuel-per-litre: a litre on gas boils in about four to eight minutes', () => {
    const { minutes } = boil('gas', litrePot, 1, 'calm');
    expect(minutes.likely).toBeGreaterThan(4);
    expect(minutes.likely).toBeLessThan(8);
  });

  it('cp-alcohol-per-boil: half a litre on alcohol takes 15 to 30 mL', () => {
    const { grams } = boil(
      'alcohol',
      ofCapacity(1, 750) as Extract<VesselShape, { kind: 'round' }>,
      0.5,
      'calm',
      true,
      10,
    );
    expect(grams.likely).toBeGreaterThan(liquidFuelG('alcohol', 15));
    expect(grams.likely).toBeLessThan(liquidFuelG('alcohol', 30));
    expect(grams.low).toBeLessThan(liquidFuelG('alcohol', 18));
    expect(grams.high).toBeGreaterThan(liquidFuelG('alcohol', 30));
  });

  it('cp-stove-efficiency: half a litre takes one to two tablets of 14 g', () => {
    const { grams } = boil(
      'solid-fuel',
      ofCapacity(1, 750) as Extract<VesselShape, { kind: 'round' }>,
      0.475,
      'calm',
      true,
      10,
    );
    expect(grams.likely).toBeGreaterThan(14);
    expect(grams.likely).toBeLessThan(28);
  });

  it('the drink-can shape does worst on heat of the shapes compared', () => {
    const can = pot(66, 168) as Extract<VesselShape, { kind: 'round' }>;
    const others = [2 / 3, 1, 1.5, 2.2].map(
      (share) => ofCapacity(share, volumeMl(can)) as Extract<VesselShape, { kind: 'round' }>,
    );
    for (const source of ['gas', 'alcohol', 'solid-fuel', 'wood', 'fire'] as const) {
      const worst = boil(source, can, 0.4, 'calm').grams.likely;
      for (const other of others) expect(boil(source, other, 0.4, 'calm').grams.likely).toBeLessThan(worst);
    }
  });
});

describe('common practice, no source: snow', () => {
  it('cp-snow-loads: two to three packed loads of a 1 L pot make 1 L', () => {
    const { low, likely, high } = SNOW_KG_PER_M3.packed;
    expect(loadsPerLitre(1000, high)).toBeCloseTo(2, 1);
    expect(loadsPerLitre(1000, likely)).toBeCloseTo(2.5, 1);
    expect(loadsPerLitre(1000, low)).toBeLessThan(3);
  });

  it('boiling from snow takes about twice the energy of boiling water', () => {
    const boilKj = (fromC: number): number => enthalpyJPerKg(BOIL_C) - enthalpyJPerKg(fromC);
    const fromSnow = meltingHeatJPerKg(-10) + boilKj(0);
    expect(fromSnow / boilKj(10)).toBeCloseTo(2.05, 2);
    expect(fromSnow / boilKj(20)).toBeCloseTo(2.31, 2);
  });

  it('melting alone is about one boil', () => {
    const boilKj = enthalpyJPerKg(BOIL_C) - enthalpyJPerKg(10);
    expect(meltingHeatJPerKg(-10) / boilKj).toBeGreaterThan(0.85);
    expect(meltingHeatJPerKg(-10) / boilKj).toBeLessThan(1.1);
  });

  it('cp-winter-pot: a small pot is an exercise in patience, its loads a day in the dozens', () => {
    const day = (roomMl: number): number => {
      const burner = burnerFor('gas', 120);
      return meltSnow({
        ...burner,
        lowerHeatingValueJPerKg: fuelHeatingValueJPerKg(burner.fuel),
        litres: 4,
        roomMl,
        starterMl: 0.15 * roomMl,
        snowKgPerM3: SNOW_KG_PER_M3.packed,
        snowC: -10,
        wind: 'calm',
      }).loads.likely;
    };
    expect(day(540)).toBeGreaterThan(20);
    expect(day(1800)).toBeLessThan(7);
  });
});

describe('common practice, no source: spilling', () => {
  const spill = (share: number): number => {
    const shape = ofCapacity(share, 1000) as Extract<VesselShape, { kind: 'round' }>;
    return spillAngleDeg({ rimMm: shape.rimMm, heightMm: shape.heightMm, fillMm: fillHeightMm(shape, 850) });
  };

  it('cp-bail-shape: a 2 : 3 one-litre pot at 85 % spills at about 24°, a 3 : 2 one at about 11°', () => {
    expect(spill(2 / 3)).toBeCloseTo(24, 0);
    expect(spill(3 / 2)).toBeCloseTo(11, 0);
  });
});

describe('common practice, no source: cold gas', () => {
  const KELVIN = 273.15;

  it('cp-upright-cold: an isobutane mix with a canister 5 °C colder than the air fades at about −7 °C as it empties', () => {
    const leaves = (airC: number): boolean =>
      canisterPressurePa(GAS_MIX_SHARES.isobutane, airC - 5 + KELVIN, 0.05) > pressurePa(0);
    expect(leaves(-6)).toBe(true);
    expect(leaves(-8)).toBe(false);
  });

  it('cp-upright-cold: plain butane fades at a few degrees above freezing', () => {
    const leaves = (airC: number): boolean =>
      canisterPressurePa(GAS_MIX_SHARES.butane, airC - 5 + KELVIN, 1) > pressurePa(0);
    expect(leaves(10)).toBe(true);
    expect(leaves(3)).toBe(false);
  });

  it('altitude helps the gas out: about 3 °C lower for each 1000 m', () => {
    const pressure = (tC: number): number => canisterPressurePa({ isobutane: 1 }, tC + KELVIN, 1);
    expect(pressure(-20.8)).toBeCloseTo(pressurePa(3000), -3);
    expect(pressure(-26.7)).toBeCloseTo(pressurePa(5000), -3);
  });
});
