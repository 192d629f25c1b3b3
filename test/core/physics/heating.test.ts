import { describe, expect, it } from 'vitest';
import {
  divided,
  fuelGrams,
  heat,
  hold,
  potLossW,
  type Heating,
  type HeatingInput,
} from '../../../core/physics/heating.js';
import {
  drySurfaceLossWPerM2,
  evaporationLossWPerM2,
  openSurfaceLossWPerM2,
} from '../../../core/physics/surface-loss.js';
import { enthalpyJPerKg, latentHeatVaporisationJPerKg } from '../../../core/physics/water.js';
import { refuses } from './refuse.js';

const same = (value: number): { low: number; likely: number; high: number } => ({
  low: value,
  likely: value,
  high: value,
});

const ENDS = ['low', 'likely', 'high'] as const;

/** A litre from 20 °C to the boil in a pot that loses nothing. */
const tight: HeatingInput = {
  massKg: 1,
  fromC: 20,
  toC: 99.974,
  powerW: { low: 1500, likely: 2000, high: 3000 },
  efficiency: { low: 0.3, likely: 0.5, high: 0.6 },
  lowerHeatingValueJPerKg: 46e6,
  surfaceM2: 0,
  wallM2: 0,
  lid: true,
  wind: 'calm',
};
const open: HeatingInput = { ...tight, surfaceM2: 0.02, wallM2: 0.03, lid: false };

function reached(input: HeatingInput): Extract<Heating, { reaches: true }> {
  const heating = heat(input);
  expect(heating.reaches).toBe(true);
  return heating as Extract<Heating, { reaches: true }>;
}

describe('heat where nothing is lost', () => {
  const waterJ = enthalpyJPerKg(99.974) - enthalpyJPerKg(20);
  const heating = reached(tight);

  it('puts into the pot what the water takes', () => {
    expect(heating.waterKj).toBeCloseTo(waterJ / 1000, 9);
    for (const end of ENDS) expect(heating.energyKj[end]).toBeCloseTo(waterJ / 1000, 6);
    for (const end of ENDS) expect(heating.lostKj[end]).toBeCloseTo(0, 6);
  });

  it('takes energy ÷ (power × efficiency): least from the strongest flame, most from the weakest', () => {
    expect(heating.minutes.low).toBeCloseTo(waterJ / (3000 * 0.6) / 60, 6);
    expect(heating.minutes.likely).toBeCloseTo(waterJ / (2000 * 0.5) / 60, 6);
    expect(heating.minutes.high).toBeCloseTo(waterJ / (1500 * 0.3) / 60, 6);
  });

  it('burns energy ÷ (efficiency × heating value)', () => {
    expect(heating.grams.low).toBeCloseTo((1000 * waterJ) / (0.6 * 46e6), 6);
    expect(heating.grams.likely).toBeCloseTo((1000 * waterJ) / (0.5 * 46e6), 6);
    expect(heating.grams.high).toBeCloseTo((1000 * waterJ) / (0.3 * 46e6), 6);
  });

  it('stalls nowhere', () => expect(heating.weakestStallsC).toBeNull());

  it.each([
    ['breeze', 1.2, 1.4, 1.7],
    ['windy', 2, 2.5, 3],
  ] as const)('takes the fuel of a %s: × %d, × %d, × %d', (wind, low, likely, high) => {
    const { grams } = reached({ ...tight, efficiency: { low: 0.4, likely: 0.5, high: 0.6 }, wind });
    expect(grams.low).toBeCloseTo((low * 1000 * waterJ) / (0.6 * 46e6), 6);
    expect(grams.likely).toBeCloseTo((likely * 1000 * waterJ) / (0.5 * 46e6), 6);
    expect(grams.high).toBeCloseTo((high * 1000 * waterJ) / (0.4 * 46e6), 6);
  });
});

describe('heat from a flame that is too weak', () => {
  const weak = (watts: number): HeatingInput => ({ ...open, powerW: same(watts), efficiency: same(1) });

  it('stalls where the loss eats it', () => {
    const heating = heat(weak(100));
    expect(heating.reaches).toBe(false);
    if (heating.reaches) return;
    expect(potLossW(open, heating.stallsC)).toBeCloseTo(100, 6);
    expect(heating.stallsC).toBeGreaterThan(60);
    expect(heating.stallsC).toBeLessThan(99);
  });

  it('stalls at its goal when the loss there is all it gives', () => {
    const heating = heat(weak(potLossW(open, open.toC)));
    expect(heating.reaches).toBe(false);
    if (!heating.reaches) expect(heating.stallsC).toBeCloseTo(open.toC, 6);
  });

  it('says where the weakest of the range stalls, and counts none that takes over three times the likely time', () => {
    const heating = reached({ ...open, powerW: { low: 120, likely: 600, high: 1000 }, efficiency: same(1) });
    expect(potLossW(open, heating.weakestStallsC!)).toBeCloseTo(120, 6);
    expect(heating.minutes.high).toBeCloseTo(3 * heating.minutes.likely, 3);
    expect(heating.grams.high).toBeCloseTo(((heating.energyKj.high * 1000) / 46e6) * 1000, 6);
  });

  it('counts no flame that would let hot water cool', () => {
    const hot = { ...open, fromC: 95, toC: 99, powerW: { low: 100, likely: 600, high: 1000 }, efficiency: same(1) };
    expect(potLossW(hot, 95)).toBeGreaterThan(100);
    const { minutes, weakestStallsC } = reached(hot);
    expect(minutes.high).toBeCloseTo(3 * minutes.likely, 3);
    expect(weakestStallsC).toBeLessThan(95);
  });

  it('counts no flame worse than three times the likely time, though it would get there', () => {
    const heating = reached({ ...tight, powerW: { low: 100, likely: 1000, high: 1000 }, efficiency: same(1) });
    expect(heating.weakestStallsC).toBeNull();
    expect(heating.minutes.high / heating.minutes.likely).toBeCloseTo(3, 6);
    expect(heating.minutes.low).toBeCloseTo(heating.minutes.likely, 9);
  });

  it('shares the way to the likely flame evenly between power and efficiency', () => {
    const { minutes, grams, energyKj } = reached({
      ...tight,
      powerW: { low: 100, likely: 1000, high: 1000 },
      efficiency: { low: 0.1, likely: 1, high: 1 },
    });
    // Both fall from 1 to 0.1 together: share² = 1/3 at three times the time.
    const part = Math.sqrt(1 / 3);
    expect(minutes.high / minutes.likely).toBeCloseTo(3, 6);
    expect(grams.high).toBeCloseTo((1e6 * energyKj.high) / (part * 46e6), 4);
  });

  it('takes as long as it takes within three times', () => {
    const heating = reached({ ...tight, powerW: { low: 340, likely: 1000, high: 1000 }, efficiency: same(1) });
    expect(heating.minutes.high / heating.minutes.likely).toBeCloseTo(1000 / 340, 6);
  });
});

describe('heat for nothing', () => {
  it('needs nothing to stay where it is, or for no water', () => {
    const none = same(0);
    for (const input of [
      { ...open, fromC: open.toC },
      { ...open, massKg: 0 },
    ])
      expect(heat(input)).toEqual({
        reaches: true,
        waterKj: 0,
        lostKj: none,
        energyKj: none,
        minutes: none,
        grams: none,
        weakestStallsC: null,
      });
  });
});

describe('what a pot loses', () => {
  it('open: surface by evaporation and radiation, wall dry', () => {
    expect(potLossW(open, 90)).toBeCloseTo(0.02 * openSurfaceLossWPerM2(90) + 0.03 * drySurfaceLossWPerM2(90), 9);
  });
  it('lidded: both dry', () => {
    expect(potLossW({ ...open, lid: true }, 90)).toBeCloseTo(0.05 * drySurfaceLossWPerM2(90), 9);
  });
  it('in wind: twice from the surface, the wall as it was', () => {
    for (const wind of ['breeze', 'windy'] as const)
      expect(potLossW({ ...open, wind }, 90)).toBeCloseTo(
        0.04 * openSurfaceLossWPerM2(90) + 0.03 * drySurfaceLossWPerM2(90),
        9,
      );
  });
  it('a lossy pot takes longer than the flame alone would', () => {
    expect(reached(open).minutes.likely).toBeGreaterThan(reached(tight).minutes.likely * 1.05);
    expect(reached(open).lostKj.likely).toBeGreaterThan(20);
  });
  it('what the flame puts in and the water does not take up is lost', () => {
    const { energyKj, lostKj, waterKj, minutes } = reached(open);
    const flameW = { low: 3000 * 0.6, likely: 2000 * 0.5, high: 1500 * 0.3 };
    const time = { low: minutes.low, likely: minutes.likely, high: minutes.high };
    for (const end of ENDS) {
      expect(energyKj[end]).toBeCloseTo((flameW[end] * time[end] * 60) / 1000, 6);
      expect(lostKj[end]).toBeCloseTo(energyKj[end] - waterKj, 6);
    }
  });
  it('a flame that barely wins takes longer and longer: the time grows by as much with each tenth it comes closer', () => {
    const seconds = (over: number): number =>
      60 *
      reached({ ...open, powerW: same(potLossW(open, open.toC) * (1 + over)), efficiency: same(1) }).minutes.likely;
    const [far, near, nearer] = [seconds(1e-4), seconds(1e-6), seconds(1e-8)];
    expect(near - far).toBeGreaterThan(20);
    expect((nearer - near) / (near - far)).toBeCloseTo(1, 1);
  });
});

describe('hold', () => {
  const holding = { ...open, atC: 95, minutes: 10 };

  it('gives the loss back, and the fuel for it', () => {
    const { energyKj, grams } = hold(holding);
    expect(energyKj).toBeCloseTo((potLossW(open, 95) * 600) / 1000, 9);
    expect(grams.low).toBeCloseTo((1e6 * energyKj) / (0.6 * 46e6), 9);
    expect(grams.likely).toBeCloseTo((1e6 * energyKj) / (0.5 * 46e6), 9);
    expect(grams.high).toBeCloseTo((1e6 * energyKj) / (0.3 * 46e6), 9);
  });

  it('takes the wind’s share of fuel and surface', () => {
    const { energyKj, grams, steamKg } = hold({ ...holding, wind: 'windy' });
    expect(energyKj).toBeCloseTo((potLossW({ ...open, wind: 'windy' }, 95) * 600) / 1000, 9);
    expect(grams.likely).toBeCloseTo((2.5 * 1e6 * energyKj) / (0.5 * 46e6), 9);
    expect(steamKg).toBeCloseTo((2 * 0.02 * evaporationLossWPerM2(95) * 600) / latentHeatVaporisationJPerKg(95), 12);
  });

  it('drives steam off an open pot and none from under a lid', () => {
    expect(hold(holding).steamKg).toBeCloseTo(
      (0.02 * evaporationLossWPerM2(95) * 600) / latentHeatVaporisationJPerKg(95),
      12,
    );
    expect(hold({ ...holding, lid: true }).steamKg).toBe(0);
  });

  it('takes nothing for no time', () =>
    expect(hold({ ...holding, minutes: 0 })).toEqual({ energyKj: 0, grams: same(0), steamKg: 0 }));

  refuses('a time', (minutes) => hold({ ...holding, minutes }), {
    least: 0,
    most: 1440,
    unit: ' min',
    says: 'The time',
  });
  refuses('a surface', (surfaceM2) => hold({ ...holding, surfaceM2 }), {
    least: 0,
    most: 5,
    unit: ' m²',
    says: 'The surface',
  });
  refuses('a temperature', (atC) => hold({ ...holding, atC }), {
    least: 0,
    most: 105,
    unit: ' °C',
    says: 'The temperature of the water',
  });
  refuses('a heating value', (lowerHeatingValueJPerKg) => hold({ ...holding, lowerHeatingValueJPerKg }), {
    least: 1e6,
    most: 60e6,
    unit: ' J/kg',
    says: 'The lower heating value',
  });
});

describe('ranges of fuel and share', () => {
  it('divides the worst by the worst', () => {
    expect(divided({ low: 0.2, likely: 0.4, high: 0.6 }, { low: 1, likely: 2, high: 4 })).toEqual({
      low: 0.05,
      likely: 0.2,
      high: 0.6,
    });
  });
  it('asks least fuel of the best share', () => {
    expect(fuelGrams({ low: 1e6, likely: 2e6, high: 3e6 }, { low: 0.25, likely: 0.5, high: 1 }, 1e6)).toEqual({
      low: 1000,
      likely: 4000,
      high: 12_000,
    });
  });
});

describe('what is no heating', () => {
  refuses('a mass', (massKg) => heat({ ...tight, massKg }), { least: 0, most: 1000, unit: ' kg', says: 'The water' });
  refuses('a start', (fromC) => heat({ ...tight, fromC, toC: 80 }), {
    least: 0,
    most: 80,
    unit: ' °C',
    says: 'The start of heating',
  });
  refuses('an end', (toC) => heat({ ...tight, fromC: 0, toC }), {
    least: 0,
    most: 105,
    unit: ' °C',
    says: 'The end of heating',
  });
  refuses('a surface', (surfaceM2) => heat({ ...tight, surfaceM2 }), {
    least: 0,
    most: 5,
    unit: ' m²',
    says: 'The surface',
  });
  refuses('a wall', (wallM2) => heat({ ...tight, wallM2 }), { least: 0, most: 10, unit: ' m²', says: 'The wall' });
  refuses('a heating value', (lowerHeatingValueJPerKg) => heat({ ...tight, lowerHeatingValueJPerKg }), {
    least: 1e6,
    most: 60e6,
    unit: ' J/kg',
    says: 'The lower heating value',
  });
  refuses('a power, low', (low) => heat({ ...tight, powerW: { low, likely: 100_000, high: 100_000 } }), {
    least: 1,
    most: 100_000,
    unit: ' W',
    says: 'The power (low)',
  });
  refuses('a power, likely', (likely) => heat({ ...tight, powerW: { low: 500, likely, high: 100_000 } }), {
    least: 500,
    most: 100_000,
    unit: ' W',
    says: 'The power (likely)',
  });
  refuses('a power, high', (high) => heat({ ...tight, powerW: { low: 500, likely: 700, high } }), {
    least: 700,
    most: 100_000,
    unit: ' W',
    says: 'The power (high)',
  });
  refuses('an efficiency, low', (low) => heat({ ...tight, efficiency: { low, likely: 1, high: 1 } }), {
    least: 0.001,
    most: 1,
    says: 'The efficiency (low)',
  });
  refuses('an efficiency, high', (high) => heat({ ...tight, efficiency: { low: 0.2, likely: 0.5, high } }), {
    least: 0.5,
    most: 1,
    says: 'The efficiency (high)',
  });
});
