import { ISA, ZERO_CELSIUS_K } from '../data/constants.js';
import { assertWithin } from './range.js';
import { saturationTemperatureK } from './water.js';

/**
 * Height in the geopotential metres of the standard atmosphere, from the metres of a map: H = R Z/(R + Z).
 * ISO 2533:1975. @param altitudeM −500 to 11 000 m above sea level.
 */
export function geopotentialM(altitudeM: number): number {
  assertWithin('The altitude', altitudeM, -500, 11_000, ' m');
  return (ISA.earthRadiusM * altitudeM) / (ISA.earthRadiusM + altitudeM);
}

/** Air temperature of the standard atmosphere, K: T = 288.15 − 0.0065 H. ISO 2533:1975. @param altitudeM −500 to 11 000 m on the map. */
export function airTemperatureK(altitudeM: number): number {
  return ISA.temperatureK - ISA.lapseKPerM * geopotentialM(altitudeM);
}

/**
 * Air pressure of the standard atmosphere, Pa: p = 101325 (T/288.15)^5.25588. ISO 2533:1975.
 * Real days differ: cold air lowers the pressure aloft. @param altitudeM −500 to 11 000 m on the map.
 */
export function pressurePa(altitudeM: number): number {
  return ISA.pressurePa * (airTemperatureK(altitudeM) / ISA.temperatureK) ** ISA.exponent;
}

/**
 * Temperature at which water boils on a standard day, °C: IAPWS-IF97 under the pressure of ISO 2533.
 * Good to about 0.5 to 1 °C on a real day. @param altitudeM −500 to 11 000 m on the map.
 */
export function boilingPointC(altitudeM: number): number {
  return saturationTemperatureK(pressurePa(altitudeM)) - ZERO_CELSIUS_K;
}
