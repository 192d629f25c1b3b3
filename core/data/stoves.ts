import type { Range } from '../model/finding.js';
import type { FuelType, StoveType } from '../model/item.js';
import type { SourceId } from '../model/source.js';
import type { Wind } from '../model/trip.js';

/** What heats the pot: a stove, or an open fire. */
export type HeatSource = StoveType | 'fire';

/**
 * How wide a pot stands over the flame. The published tests measured a kettle of 120 mm base and a pot of 200 mm: between them
 * the halfway is the border, and a base under 80 mm is as wide as the flame itself. No law is drawn through them.
 */
export const BASE_CLASS_MM = { slimUnder: 80, wideFrom: 160 } as const;

export interface HeatSourceData {
  readonly fuel: FuelType;
  /** Heat of the burning fuel, W, on the lower heating value. */
  readonly powerW: Range;
  /** Share of that heat which ends up in a lidded pot in still air, by how wide its base is. */
  readonly efficiency: { readonly slim: Range; readonly narrow: Range; readonly wide: Range };
  readonly cites: readonly SourceId[];
}

/** A pot locked on catches the flame whatever its base: from a lidded pot on a hob (52 %) to the best pot with a tenth gained by fins. */
const LOCKED_ON: Range = { low: 0.52, likely: 0.62, high: 0.68 };

/**
 * Power is common practice (`cp-burner-power`), but for alcohol, which is measured (Boiling Point no. 12). Efficiencies are
 * published rows of lidded pots; where a source does not say on which heating value, the lower is taken.
 */
export const HEAT_SOURCES: Readonly<Record<HeatSource, HeatSourceData>> = {
  // González 2010: 120 mm kettle 45–55 % on a low to medium flame, 30–45 % above it, 29 % at worst; 200 mm pot 50–62 %.
  // A slim pot has the flame of the kettle's worse half. ENARGAS 2020 (52 %) and Kadam & Shete 2017 (29.6–53.2 %) lie inside.
  gas: {
    fuel: 'gas',
    powerW: { low: 1500, likely: 2200, high: 3000 },
    efficiency: {
      slim: { low: 0.29, likely: 0.37, high: 0.45 },
      narrow: { low: 0.29, likely: 0.45, high: 0.55 },
      wide: { low: 0.5, likely: 0.55, high: 0.62 },
    },
    cites: ['gonzalez-2010', 'enargas-2020', 'kadam-shete'],
  },
  integrated: {
    fuel: 'gas',
    powerW: { low: 1200, likely: 1600, high: 2200 },
    efficiency: { slim: LOCKED_ON, narrow: LOCKED_ON, wide: LOCKED_ON },
    cites: ['enargas-2020', 'gonzalez-2010', 'wang-2022', 'cp-heat-exchanger'],
  },
  // Ikpambese 2014: kerosene 36–38 %; spread as on gas.
  'liquid-fuel': {
    fuel: 'liquid-fuel',
    powerW: { low: 1500, likely: 2500, high: 3000 },
    efficiency: {
      slim: { low: 0.25, likely: 0.33, high: 0.4 },
      narrow: { low: 0.29, likely: 0.38, high: 0.5 },
      wide: { low: 0.36, likely: 0.45, high: 0.55 },
    },
    cites: ['ikpambese-2014', 'gonzalez-2010'],
  },
  // Boiling Point no. 12: 60 % with a shield of its own as the upper bound; 15–30 mL to half a litre is 30–59 %.
  alcohol: {
    fuel: 'alcohol',
    powerW: { low: 400, likely: 700, high: 1400 },
    efficiency: {
      slim: { low: 0.2, likely: 0.3, high: 0.45 },
      narrow: { low: 0.3, likely: 0.4, high: 0.55 },
      wide: { low: 0.35, likely: 0.45, high: 0.6 },
    },
    cites: ['boiling-point-12', 'cp-alcohol-per-boil'],
  },
  // One to two tablets of 14 g for 0.45–0.5 L.
  'solid-fuel': {
    fuel: 'solid-fuel',
    powerW: { low: 400, likely: 600, high: 800 },
    efficiency: {
      slim: { low: 0.2, likely: 0.28, high: 0.4 },
      narrow: { low: 0.23, likely: 0.35, high: 0.45 },
      wide: { low: 0.25, likely: 0.38, high: 0.48 },
    },
    cites: ['cp-stove-efficiency'],
  },
  // Water Boiling Test 4.2.3, Table 1: 19 and 28 % with steam counted, 12 and 21 % without; Ikpambese 2014: 9.6–14.6 %.
  wood: {
    fuel: 'wood',
    powerW: { low: 2000, likely: 3000, high: 6600 },
    efficiency: {
      slim: { low: 0.09, likely: 0.15, high: 0.21 },
      narrow: { low: 0.12, likely: 0.2, high: 0.28 },
      wide: { low: 0.15, likely: 0.23, high: 0.3 },
    },
    cites: ['wbt-423', 'ikpambese-2014', 'cp-burner-power'],
  },
  // 7–12 % in the field, 10–15 % ordinary, 15 % with a lid, 20–30 % well tended and shielded.
  fire: {
    fuel: 'wood',
    powerW: { low: 3000, likely: 6000, high: 10000 },
    efficiency: {
      slim: { low: 0.05, likely: 0.1, high: 0.2 },
      narrow: { low: 0.07, likely: 0.12, high: 0.25 },
      wide: { low: 0.07, likely: 0.15, high: 0.3 },
    },
    cites: ['enargas-2020', 'hafner-2018', 'cp-burner-power'],
  },
};

/**
 * Wind, as the person's choice; no published curve is trusted. `fuel` is how many times the fuel of still air the burner takes
 * (`cp-wind-factor`); `surface` how many times the heat an open surface loses (Steam Tip Sheet 19: 1.3 m/s more than doubles it).
 */
export const WIND_FACTORS: Readonly<Record<Wind, { readonly fuel: Range; readonly surface: number }>> = {
  calm: { fuel: { low: 1, likely: 1, high: 1 }, surface: 1 },
  breeze: { fuel: { low: 1.2, likely: 1.4, high: 1.7 }, surface: 2 },
  windy: { fuel: { low: 2, likely: 2.5, high: 3 }, surface: 2 },
};

/**
 * Heat lost from an open water surface in still air of 15.6 °C, kW/m²: Heat Loss from Open Water Tanks, The Engineering ToolBox,
 * in °C and kW/m². `total` less `evaporation` is what a dry surface of that temperature loses: a lid, a wall.
 */
export const OPEN_SURFACE_LOSS = {
  airC: 15.6,
  rows: [
    { waterC: 48.9, evaporation: 1.14, total: 1.48 },
    { waterC: 60, evaporation: 2.08, total: 2.59 },
    { waterC: 71.1, evaporation: 3.47, total: 4.13 },
    { waterC: 82.2, evaporation: 5.49, total: 6.31 },
    { waterC: 87.8, evaporation: 6.81, total: 7.73 },
    { waterC: 93.3, evaporation: 8.45, total: 9.46 },
    { waterC: 98.9, evaporation: 10.22, total: 11.36 },
  ],
} as const;
