import { WIND_FACTORS } from '../data/stoves.js';
import type { Range } from '../model/finding.js';
import { assertFlame, divided, fuelGrams, type Flame } from './heating.js';
import { assertWithin } from './range.js';
import { densityKgPerM3, meltingHeatJPerKg } from './water.js';

/**
 * Packings of snow to a litre of water: 1 ÷ (capacity in L × density of snow ÷ density of water at 0 °C).
 * @param capacityMl room for snow, 1 to 1 000 000 mL. @param snowKgPerM3 1 (the lightest fall measured is 4) to 917 (ice).
 */
export function loadsPerLitre(capacityMl: number, snowKgPerM3: number): number {
  assertWithin('The room for snow', capacityMl, 1, 1_000_000, ' mL');
  assertWithin('The density of snow', snowKgPerM3, 1, 917, ' kg/m³');
  return (1000 * densityKgPerM3(0)) / (capacityMl * snowKgPerM3);
}

export interface MeltingInput extends Flame {
  /** Water wanted, L, 0 to 5000. */
  readonly litres: number;
  /** What of the pot may be filled, mL. */
  readonly roomMl: number;
  /** Water kept in the pot to start each load, mL: over the base, so that it does not scorch; above 0. */
  readonly starterMl: number;
  /** Of the snow as it goes into the pot, kg/m³. */
  readonly snowKgPerM3: Range;
  /** °C, −60 to 0. */
  readonly snowC: number;
}

export interface Melting {
  /** Packings of the pot with snow. */
  readonly loads: Range;
  /** Heat into the snow, kJ; the same however it is packed. */
  readonly energyKj: Range;
  readonly minutes: Range;
  /** Fuel, g. */
  readonly grams: Range;
}

/**
 * Melts snow to water of 0 °C, load by load: the starter stays in the pot, the room above it is packed with snow, melted, and the
 * new water poured off. Slush at 0 °C is no warmer than the air round it, so no loss is counted. Packing and pouring take no time here.
 * low: densest snow, strongest flame; high: the other way round.
 * @throws RangeError outside the limits named at each field, without starter water, or where it leaves no room.
 */
export function meltSnow(input: MeltingInput): Melting {
  assertFlame(input);
  assertWithin('The water wanted', input.litres, 0, 5000, ' L');
  assertWithin('The starter water', input.starterMl, 1, input.roomMl - 1, ' mL');
  const { powerW, snowKgPerM3 } = input;
  const freeMl = input.roomMl - input.starterMl;
  const massKg = (input.litres * densityKgPerM3(0)) / 1000;
  const energyJ = massKg * meltingHeatJPerKg(input.snowC);
  const share = divided(input.efficiency, WIND_FACTORS[input.wind].fuel);
  const minutes = (watts: number, part: number): number => energyJ / (watts * part * 60);
  return {
    loads: {
      low: input.litres * loadsPerLitre(freeMl, snowKgPerM3.high),
      likely: input.litres * loadsPerLitre(freeMl, snowKgPerM3.likely),
      high: input.litres * loadsPerLitre(freeMl, snowKgPerM3.low),
    },
    energyKj: { low: energyJ / 1000, likely: energyJ / 1000, high: energyJ / 1000 },
    minutes: {
      low: minutes(powerW.high, share.high),
      likely: minutes(powerW.likely, share.likely),
      high: minutes(powerW.low, share.low),
    },
    grams: fuelGrams({ low: energyJ, likely: energyJ, high: energyJ }, share, input.lowerHeatingValueJPerKg),
  };
}
