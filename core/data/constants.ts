/**
 * Constants of nature and of standards. Values are SI unless the name says otherwise.
 * Grouped by how firm they are: defined (exact), measured (with how far they hold), derived (worked out from the others).
 */

// Defined: exact by agreement.

/** 0 °C in kelvin. */
export const ZERO_CELSIUS_K = 273.15;

/** Standard atmosphere: ISO 2533:1975. */
export const ISA = {
  /** Pa at sea level. */
  pressurePa: 101325,
  /** K at sea level. */
  temperatureK: 288.15,
  /** K/m of geopotential height, up to 11 000 m. */
  lapseKPerM: 0.0065,
  /** g0/(R × lapse) with 9.80665 m/s² and 287.05287 J/(kg K). */
  exponent: 9.80665 / (287.05287 * 0.0065),
  /** Nominal radius of the earth, m, in geopotential height = R × Z/(R + Z). */
  earthRadiusM: 6356766,
} as const;

// Measured, and fitted by those who measured.

/** n1 to n10 of the saturation line: IAPWS R7-97(2012), Table 34. */
export const IF97_REGION_4 = [
  0.11670521452767e4, -0.72421316703206e6, -0.17073846940092e2, 0.1202082470247e5, -0.32325550322333e7,
  0.1491510861353e2, -0.48232657361591e4, 0.40511340542057e6, -0.23855557567849, 0.65017534844798e3,
] as const;

/**
 * Liquid water at 101.325 kPa as polynomials in t/100 °C, fitted to IAPWS-95 from 0 to 105 °C (above the boil, along the
 * saturation line). Density, kg/m³, within 0.002; heat capacity, kJ/(kg K), within 0.00004.
 */
export const WATER_DENSITY = [
  999.843376, 6.72755165, -89.8530021, 95.1020689, -109.689635, 93.9834571, -49.0015383, 11.2380711,
] as const;
export const WATER_HEAT_CAPACITY = [
  4.2194115, -0.34120636, 1.2034374, -2.4946687, 3.4890556, -3.0849936, 1.5701334, -0.34548643,
] as const;
/** Specific enthalpy of liquid water at 0 °C and 101.325 kPa, kJ/kg: IAPWS-95. */
export const WATER_ENTHALPY_AT_0C_KJ_PER_KG = 0.061;
/** Latent heat of vaporisation, kJ/kg, as a polynomial in t/100 °C, fitted to IAPWS-95 from 0 to 105 °C within 0.02. */
export const WATER_LATENT_HEAT = [2500.934, -237.6918, 5.704968, -12.55134] as const;

/** Heat capacity of ice, kJ/(kg K), as a polynomial in °C, fitted to IAPWS R10-06 from −40 to 0 °C within 0.0001. */
export const ICE_HEAT_CAPACITY = [2.09672, 0.007386, 0.000002] as const;
/** Density of ice, kg/m³, as a polynomial in °C, fitted to IAPWS R10-06 from −40 to 0 °C within 0.01. */
export const ICE_DENSITY = [916.72, -0.1475, -0.00025] as const;

/** Latent heat of fusion at 101.325 kPa, J/kg: IAPWS-95 and R10-06 at the melting point. */
export const LATENT_HEAT_FUSION_J_PER_KG = 333_426.5;
