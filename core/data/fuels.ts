import type { FuelType, GasId, GasMix, GasShares } from '../model/item.js';
import type { SourceId } from '../model/source.js';

/** Whether the water that burning makes leaves as steam (lower) or is condensed (higher). */
export type HeatingBasis = 'lower' | 'higher';

export interface Substance {
  /** Heat of burning, MJ/kg, water leaving as steam. The basis of every efficiency here. */
  readonly lowerMjPerKg: number;
  /** Heat of burning, MJ/kg, water condensed. */
  readonly higherMjPerKg: number;
  /** Of the liquid (gas: under its own pressure) at `densityC`; absent for solids. */
  readonly densityKgPerM3?: number;
  readonly densityC?: number;
  readonly cites: readonly SourceId[];
}

/** Gases are counted as gas: a canister takes the heat of vaporising from the air round it. */
export const SUBSTANCES = {
  propane: {
    lowerMjPerKg: 46.35,
    higherMjPerKg: 50.34,
    densityKgPerM3: 507,
    densityC: 15,
    cites: ['crc-handbook', 'vdi-heat-atlas'],
  },
  butane: {
    lowerMjPerKg: 45.72,
    higherMjPerKg: 49.5,
    densityKgPerM3: 584.5,
    densityC: 15,
    cites: ['crc-handbook', 'vdi-heat-atlas'],
  },
  isobutane: {
    lowerMjPerKg: 45.57,
    higherMjPerKg: 49.36,
    densityKgPerM3: 563.5,
    densityC: 15,
    cites: ['crc-handbook', 'vdi-heat-atlas'],
  },
  ethanol: { lowerMjPerKg: 26.8, higherMjPerKg: 29.67, densityKgPerM3: 789.3, densityC: 20, cites: ['crc-handbook'] },
  methanol: { lowerMjPerKg: 19.91, higherMjPerKg: 22.66, densityKgPerM3: 791.4, densityC: 20, cites: ['crc-handbook'] },
  '2-propanol': {
    lowerMjPerKg: 30.45,
    higherMjPerKg: 33.37,
    densityKgPerM3: 786,
    densityC: 20,
    cites: ['crc-handbook'],
  },
  'white-gas': { lowerMjPerKg: 44.93, higherMjPerKg: 48.06, densityKgPerM3: 725, densityC: 15, cites: ['greet'] },
  gasoline: { lowerMjPerKg: 43.44, higherMjPerKg: 46.52, densityKgPerM3: 745, densityC: 15, cites: ['greet'] },
  kerosene: {
    lowerMjPerKg: 43.8,
    higherMjPerKg: 46.4,
    densityKgPerM3: 810,
    densityC: 15,
    cites: ['ipcc-2006', 'eia-kerosene'],
  },
  hexamine: { lowerMjPerKg: 28.09, higherMjPerKg: 29.97, cites: ['hexamine-combustion'] },
} as const satisfies Record<string, Substance>;
export type SubstanceId = keyof typeof SUBSTANCES;

/** Net heat of wood, MJ/kg: dry × (1 − M) − evaporation × M, M the moisture on the wet basis. */
export const WOOD = {
  dryMjPerKg: 19,
  evaporationMjPerKg: 2.44,
  /** Air-dry; what a person finds under a roof or splits out of standing dead wood. */
  airDryMoisture: 0.2,
} as const;

/** What a kind of fuel is taken to be where nothing closer is said; wood is air-dry wood, gas its mix. */
export const FUEL_SUBSTANCE = {
  alcohol: 'ethanol',
  'liquid-fuel': 'white-gas',
  'solid-fuel': 'hexamine',
} as const satisfies Record<Exclude<FuelType, 'gas' | 'wood'>, SubstanceId>;

/** What the words on canisters hold, by mass: common practice (`cp-gas-mixes`); a label's own shares are better. */
export const GAS_MIX_SHARES: Readonly<Record<GasMix, GasShares>> = {
  butane: { butane: 1 },
  isobutane: { isobutane: 0.8, propane: 0.2 },
  winter: { isobutane: 0.7, propane: 0.3 },
  propane: { propane: 1 },
};

/** Molar mass, g/mol. */
export const GAS_MOLAR_MASS: Readonly<Record<GasId, number>> = { propane: 44.096, isobutane: 58.122, butane: 58.122 };

/**
 * Wagner equation of vapour pressure, ln(p/pc) = (Aτ + Bτ^1.5 + Cτ³ + Dτ⁶)/Tr with Tr = T/Tc and τ = 1 − Tr: McGarry 1983.
 * Valid from 170 K to the critical point.
 */
export const WAGNER: Readonly<
  Record<
    GasId,
    {
      readonly abcd: readonly [number, number, number, number];
      readonly criticalPa: number;
      readonly criticalK: number;
    }
  >
> = {
  propane: { abcd: [-6.67833, 1.15437, -1.64984, -2.70017], criticalPa: 4255760, criticalK: 369.82 },
  isobutane: { abcd: [-6.95579, 1.5009, -2.52717, -1.49776], criticalPa: 3658010, criticalK: 408.14 },
  butane: { abcd: [-6.88709, 1.15157, -1.99873, -3.13003], criticalPa: 3790620, criticalK: 425.18 },
};

/** What canisters hold and weigh full, g, from the smallest up: common practice (`cp-canister-gross`). */
export const CANISTERS = [
  { netG: { low: 100, likely: 105, high: 110 }, grossG: { low: 175, high: 215 } },
  { netG: { low: 220, likely: 230, high: 230 }, grossG: { low: 360, high: 375 } },
  { netG: { low: 450, likely: 450, high: 450 }, grossG: { low: 650, high: 670 } },
] as const;
