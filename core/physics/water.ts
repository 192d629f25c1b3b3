import {
  ICE_DENSITY,
  ICE_HEAT_CAPACITY,
  IF97_REGION_4,
  LATENT_HEAT_FUSION_J_PER_KG,
  WATER_DENSITY,
  WATER_ENTHALPY_AT_0C_KJ_PER_KG,
  WATER_HEAT_CAPACITY,
  WATER_LATENT_HEAT,
} from '../data/constants.js';
import { polynomial, polynomialIntegral } from './numeric.js';
import { assertWithin } from './range.js';

const [N1, N2, N3, N4, N5, N6, N7, N8, N9, N10] = IF97_REGION_4;

/**
 * Pressure at which water boils at a temperature, Pa.
 * IAPWS-IF97 region 4, equation 30: p = [2C/(−B + √(B² − 4AC))]⁴ MPa with ϑ = T + n9/(T − n10).
 * @param tK K, 273.15 to 647.096.
 */
export function saturationPressurePa(tK: number): number {
  assertWithin('The temperature of saturated water', tK, 273.15, 647.096, ' K');
  const theta = tK + N9 / (tK - N10);
  const a = theta ** 2 + N1 * theta + N2;
  const b = N3 * theta ** 2 + N4 * theta + N5;
  const c = N6 * theta ** 2 + N7 * theta + N8;
  return ((2 * c) / (-b + Math.sqrt(b ** 2 - 4 * a * c))) ** 4 * 1e6;
}

/**
 * Temperature at which water boils under a pressure, K.
 * IAPWS-IF97 region 4, equation 31: T = [n10 + D − √((n10 + D)² − 4(n9 + n10 D))]/2 with D from β = (p/MPa)^¼.
 * @param pPa Pa, 611.213 to 22.064 million.
 */
export function saturationTemperatureK(pPa: number): number {
  assertWithin('The pressure of saturated water', pPa, 611.213, 22.064e6, ' Pa');
  const beta = (pPa / 1e6) ** 0.25;
  const e = beta ** 2 + N3 * beta + N6;
  const f = N1 * beta ** 2 + N4 * beta + N7;
  const g = N2 * beta ** 2 + N5 * beta + N8;
  const d = (2 * g) / (-f - Math.sqrt(f ** 2 - 4 * e * g));
  return (N10 + d - Math.sqrt((N10 + d) ** 2 - 4 * (N9 + N10 * d))) / 2;
}

/** Refuses what is not liquid water in a pot: 0 to 105 °C. */
function assertLiquid(tC: number): void {
  assertWithin('The temperature of liquid water', tC, 0, 105, ' °C');
}

/** Heat capacity of liquid water, J/(kg K), at 101.325 kPa. IAPWS-95, fitted. @param tC 0 to 105 °C. */
export function heatCapacityJPerKgK(tC: number): number {
  assertLiquid(tC);
  return 1000 * polynomial(WATER_HEAT_CAPACITY, tC / 100);
}

/** Density of liquid water, kg/m³, at 101.325 kPa. IAPWS-95, fitted. @param tC 0 to 105 °C. */
export function densityKgPerM3(tC: number): number {
  assertLiquid(tC);
  return polynomial(WATER_DENSITY, tC / 100);
}

/**
 * Specific enthalpy of liquid water, J/kg, at 101.325 kPa, from the zero of IAPWS-95 (the triple point): the integral of the
 * heat capacity, so that heat put in and temperature gained agree. @param tC 0 to 105 °C.
 */
export function enthalpyJPerKg(tC: number): number {
  assertLiquid(tC);
  return 1000 * (WATER_ENTHALPY_AT_0C_KJ_PER_KG + 100 * polynomialIntegral(WATER_HEAT_CAPACITY, tC / 100));
}

/** Latent heat of vaporisation, J/kg. IAPWS-95, fitted. @param tC 0 to 105 °C. */
export function latentHeatVaporisationJPerKg(tC: number): number {
  assertLiquid(tC);
  return 1000 * polynomial(WATER_LATENT_HEAT, tC / 100);
}

/** Refuses what is not ice on earth: −60 to 0 °C; under −40 °C the fits are carried on past their table. */
function assertIce(tC: number): void {
  assertWithin('The temperature of ice', tC, -60, 0, ' °C');
}

/** Heat capacity of ice, J/(kg K), at 101.325 kPa. IAPWS R10-06, fitted. @param tC −60 to 0 °C. */
export function iceHeatCapacityJPerKgK(tC: number): number {
  assertIce(tC);
  return 1000 * polynomial(ICE_HEAT_CAPACITY, tC);
}

/** Density of ice, kg/m³, at 101.325 kPa. IAPWS R10-06, fitted. @param tC −60 to 0 °C. */
export function iceDensityKgPerM3(tC: number): number {
  assertIce(tC);
  return polynomial(ICE_DENSITY, tC);
}

/**
 * Heat that makes water of 0 °C out of ice or snow, J/kg: warming to the melting point and the latent heat of fusion
 * (333.43 kJ/kg: IAPWS-95 with R10-06). @param tC −60 to 0 °C.
 */
export function meltingHeatJPerKg(tC: number): number {
  assertIce(tC);
  return LATENT_HEAT_FUSION_J_PER_KG - 1000 * polynomialIntegral(ICE_HEAT_CAPACITY, tC);
}
