import type { FuelType, GasId, GasMix, GasShares } from '../model/item.js';
import type { Range } from '../model/finding.js';
import {
  CANISTERS,
  FUEL_SUBSTANCE,
  GAS_MIX_SHARES,
  GAS_MOLAR_MASS,
  SUBSTANCES,
  WAGNER,
  WOOD,
  type HeatingBasis,
  type SubstanceId,
} from '../data/fuels.js';
import { solveRising } from './numeric.js';
import { assertWithin } from './range.js';

/** Heat of burning, J/kg, on the lower (water leaves as steam) or the higher value. Sources beside each in `core/data/fuels`. */
export function heatingValueJPerKg(substance: SubstanceId, basis: HeatingBasis): number {
  const { lowerMjPerKg, higherMjPerKg } = SUBSTANCES[substance];
  return 1e6 * (basis === 'lower' ? lowerMjPerKg : higherMjPerKg);
}

/** Heat of burning of a gas mix, J/kg: the shares' sum by mass. @param shares by mass, adding up to 1. */
export function mixHeatingValueJPerKg(shares: GasShares, basis: HeatingBasis): number {
  return parts(shares).reduce((sum, [gas, share]) => sum + share * heatingValueJPerKg(gas, basis), 0);
}

/**
 * Net heat of burning of wood, J/kg: 19.0 (1 − M) − 2.44 M in MJ/kg, M the moisture on the wet basis. Lower basis.
 * Woodfuel handbooks; dry wood lies between 18.5 and 19. @param moisture 0 to 0.6.
 */
export function woodHeatingValueJPerKg(moisture: number): number {
  assertWithin('The moisture of the wood', moisture, 0, 0.6);
  return 1e6 * (WOOD.dryMjPerKg * (1 - moisture) - WOOD.evaporationMjPerKg * moisture);
}

/**
 * Lower heating value of a kind of fuel as it is met on a list, J/kg: gas by its mix (isobutane where left out), alcohol as ethanol,
 * liquid fuel as white gas, solid fuel as hexamine, wood air-dry (20 %).
 */
export function fuelHeatingValueJPerKg(fuel: FuelType, mix: GasMix = 'isobutane'): number {
  if (fuel === 'wood') return woodHeatingValueJPerKg(WOOD.airDryMoisture);
  if (fuel === 'gas') return mixHeatingValueJPerKg(GAS_MIX_SHARES[mix], 'lower');
  return heatingValueJPerKg(FUEL_SUBSTANCE[fuel], 'lower');
}

/** Mass of a volume of liquid fuel, g: alcohol as ethanol at 20 °C, other liquid fuel as white gas at 15 °C. @param ml 0 or more. */
export function liquidFuelG(fuel: 'alcohol' | 'liquid-fuel', ml: number): number {
  assertWithin('The volume of fuel', ml, 0, 1e6, ' mL');
  return (ml * SUBSTANCES[FUEL_SUBSTANCE[fuel]].densityKgPerM3) / 1000;
}

/**
 * Vapour pressure of a canister gas, Pa absolute: Wagner's equation with McGarry's constants (1983);
 * within 1 % of the VDI Heat Atlas from −40 to 40 °C. @param tK 170 to 360 K.
 */
export function vapourPressurePa(gas: GasId, tK: number): number {
  assertWithin('The temperature of the gas', tK, 170, 360, ' K');
  const {
    abcd: [a, b, c, d],
    criticalPa,
    criticalK,
  } = WAGNER[gas];
  const reduced = tK / criticalK;
  const tau = 1 - reduced;
  return criticalPa * Math.exp((a * tau + b * tau ** 1.5 + c * tau ** 3 + d * tau ** 6) / reduced);
}

/**
 * Vapour pressure over a liquid mix, Pa: Raoult's law, each gas by its share of the molecules.
 * @param shares by mass, adding up to 1. @param tK 170 to 360 K.
 */
export function mixturePressurePa(shares: GasShares, tK: number): number {
  const moles = parts(shares).map(([gas, share]) => [gas, share / GAS_MOLAR_MASS[gas]] as const);
  const all = moles.reduce((sum, [, amount]) => sum + amount, 0);
  return moles.reduce((sum, [gas, amount]) => sum + (amount / all) * vapourPressurePa(gas, tK), 0);
}

/**
 * What a canister that is used right way up still holds, by mass, when a share of its mass is left: the more volatile gas boils off first.
 * Rayleigh's law of open distillation at one temperature, each gas leaving in step with its vapour pressure: n = n₀ exp(−p τ).
 * @param shares of the full canister, by mass, adding up to 1. @param left share of the mass that is left, 0.001 to 1. @param tK 170 to 360 K.
 */
export function sharesLeft(shares: GasShares, left: number, tK: number): GasShares {
  assertWithin('The share that is left', left, 0.001, 1);
  const gases = parts(shares).map(([gas, share]) => ({ gas, share, pressure: vapourPressurePa(gas, tK) }));
  const slowest = Math.min(...gases.map(({ pressure }) => pressure));
  const massAt = (tau: number) =>
    gases.map(({ gas, share, pressure }) => [gas, share * Math.exp((-pressure / slowest) * tau)] as const);
  const total = (tau: number) => massAt(tau).reduce((sum, [, mass]) => sum + mass, 0);
  // The slowest gas alone would take ln(1/left); the mix is never slower.
  const tau = left === 1 ? 0 : solveRising((time) => -total(time), -left, 0, -Math.log(left));
  const sum = total(tau);
  return Object.fromEntries(massAt(tau).map(([gas, mass]) => [gas, mass / sum]));
}

/** Pressure in a canister used right way up, Pa, when a share of its mass is left: see `sharesLeft`. */
export function canisterPressurePa(shares: GasShares, tK: number, left: number): number {
  return mixturePressurePa(sharesLeft(shares, left, tK), tK);
}

/** Share of the mass that a canister used right way up gives before its pressure falls to this, 0 to 1. @param pa of the canister. @param tK 170 to 360 K. */
export function shareBeforePa(shares: GasShares, tK: number, pa: number): number {
  if (canisterPressurePa(shares, tK, 1) <= pa) return 0;
  if (canisterPressurePa(shares, tK, 0.001) >= pa) return 1;
  return 1 - solveRising((left) => canisterPressurePa(shares, tK, left), pa, 0.001, 1);
}

/** °C at which a full canister no longer beats the air: its mix stays liquid below. @param airPa 10 000 to 120 000. */
export function staysLiquidBelowC(shares: GasShares, airPa: number): number {
  assertWithin('The pressure of the air', airPa, 10_000, 120_000, ' Pa');
  return solveRising((tC) => mixturePressurePa(shares, tC + 273.15), airPa, -100, 40);
}

/** What a canister of that mass when full holds, g, by the sizes sold (common practice); null where it is none of them. @param grossG 0 or more. */
export function canisterNetG(grossG: number): Range | null {
  assertWithin('The mass of the canister', grossG, 0, 100_000, ' g');
  return CANISTERS.find((size) => grossG >= size.grossG.low && grossG <= size.grossG.high)?.netG ?? null;
}

/** The shares that are there, checked: each from 0 to 1, together 1. */
function parts(shares: GasShares): (readonly [GasId, number])[] {
  const present = (Object.entries(shares) as [GasId, number][]).filter(([, share]) => share !== 0);
  for (const [gas, share] of present) assertWithin(`The share of ${gas}`, share, 0, 1);
  const sum = present.reduce((total, [, share]) => total + share, 0);
  assertWithin('The sum of the shares', sum, 1 - 1e-9, 1 + 1e-9);
  return present;
}
