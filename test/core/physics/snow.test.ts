import { describe, expect, it } from 'vitest';
import { loadsPerLitre, meltSnow, type MeltingInput } from '../../../core/physics/snow.js';
import { meltingHeatJPerKg } from '../../../core/physics/water.js';
import { refuses } from './refuse.js';

describe('loadsPerLitre', () => {
  it.each([
    [250, 4.0],
    [100, 10.0],
    [917, 1.09],
  ])('a litre of snow of %d kg/m³ at a time is %d loads', (density, loads) => {
    expect(loadsPerLitre(1000, density)).toBeCloseTo(loads, 2);
  });

  it('is less from a larger pot', () => expect(loadsPerLitre(2000, 250)).toBeCloseTo(2, 2));

  refuses('a room', (ml) => loadsPerLitre(ml, 300), {
    least: 1,
    most: 1_000_000,
    unit: ' mL',
    says: 'The room for snow',
  });
  refuses('a density', (density) => loadsPerLitre(1000, density), {
    least: 1,
    most: 917,
    unit: ' kg/m³',
    says: 'The density of snow',
  });
});

describe('meltSnow', () => {
  const input: MeltingInput = {
    litres: 2,
    roomMl: 1100,
    starterMl: 100,
    snowKgPerM3: { low: 350, likely: 400, high: 500 },
    snowC: -10,
    powerW: { low: 1500, likely: 2000, high: 3000 },
    efficiency: { low: 0.4, likely: 0.5, high: 0.6 },
    lowerHeatingValueJPerKg: 46e6,
    wind: 'calm',
  };
  const joules = 2 * 0.99984 * meltingHeatJPerKg(-10);

  it('packs the room above the starter', () => {
    const { loads } = meltSnow(input);
    expect(loads.low).toBeCloseTo(4, 2);
    expect(loads.likely).toBeCloseTo(5, 2);
    expect(loads.high).toBeCloseTo(5.714, 2);
  });

  it('takes the heat of the snow, by the flame', () => {
    const { energyKj, minutes, grams } = meltSnow(input);
    for (const end of ['low', 'likely', 'high'] as const) expect(energyKj[end]).toBeCloseTo(joules / 1000, 1);
    expect(minutes.low).toBeCloseTo(joules / (3000 * 0.6 * 60), 3);
    expect(minutes.likely).toBeCloseTo(joules / (2000 * 0.5 * 60), 3);
    expect(minutes.high).toBeCloseTo(joules / (1500 * 0.4 * 60), 3);
    expect(grams.low).toBeCloseTo((1000 * joules) / (0.6 * 46e6), 2);
    expect(grams.likely).toBeCloseTo((1000 * joules) / (0.5 * 46e6), 2);
    expect(grams.high).toBeCloseTo((1000 * joules) / (0.4 * 46e6), 2);
  });

  it('takes the wind’s share of fuel and time', () => {
    const [calm, windy] = [meltSnow(input), meltSnow({ ...input, wind: 'windy' })];
    expect(windy.grams.likely / calm.grams.likely).toBeCloseTo(2.5, 9);
    expect(windy.minutes.high / calm.minutes.high).toBeCloseTo(3, 9);
    expect(windy.loads).toEqual(calm.loads);
  });

  refuses('the water wanted', (litres) => meltSnow({ ...input, litres }), {
    least: 0,
    most: 5000,
    unit: ' L',
    says: 'The water wanted',
  });
  refuses('the starter', (starterMl) => meltSnow({ ...input, starterMl }), {
    least: 1,
    most: 1099,
    unit: ' mL',
    says: 'The starter water',
  });
  refuses('the snow’s temperature', (snowC) => meltSnow({ ...input, snowC }), {
    least: -60,
    most: 0,
    unit: ' °C',
    says: 'The temperature of ice',
  });
  refuses('a power', (low) => meltSnow({ ...input, powerW: { low, likely: 100_000, high: 100_000 } }), {
    least: 1,
    most: 100_000,
    unit: ' W',
    says: 'The power (low)',
  });

  it('never starts from a dry pot', () => {
    expect(() => meltSnow({ ...input, starterMl: 0 })).toThrow('The starter water is 0 mL: outside 1 to 1099 mL.');
  });
});
