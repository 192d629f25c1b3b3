import { describe, expect } from 'vitest';
import type { Range } from '../../core/model/finding.js';
import { WIND_FACTORS, type HeatSource } from '../../core/data/stoves.js';
import { burnerFor } from '../../core/physics/burner.js';
import { fuelHeatingValueJPerKg } from '../../core/physics/fuel.js';
import { heat, type Heating, type HeatingInput } from '../../core/physics/heating.js';
import { drySurfaceLossWPerM2, evaporationLossWPerM2, openSurfaceLossWPerM2 } from '../../core/physics/surface-loss.js';
import { enthalpyJPerKg, latentHeatVaporisationJPerKg, meltingHeatJPerKg } from '../../core/physics/water.js';
import { column, compare, type PrintedRow } from './figure.js';
import * as doe from './figures/doe-steam-19.js';
import * as efficiencies from './figures/efficiencies.js';
import { ENARGAS, GONZALEZ, OPEN_PAN, SNOW_RATIO } from './figures/hobs.js';
import * as tanks from './figures/open-tanks.js';
import { SENSIBLE, STEAM, STOVES, WITHOUT_STEAM } from './figures/wbt-423.js';

const BTU_J = 1055.056;
const FOOT_M = 0.3048;
const same = (value: number): Range => ({ low: value, likely: value, high: value });
const celsius = (fahrenheit: number): number => (fahrenheit - 32) / 1.8;
/** Btu/h that an area in ft² loses at W/m². */
const btuPerHour = (wPerM2: number, ft2: number): number => (wPerM2 * ft2 * FOOT_M ** 2 * 3600) / BTU_J;

function reached(input: HeatingInput): Extract<Heating, { reaches: true }> {
  const heating = heat(input);
  if (!heating.reaches) throw new Error(`stalls at ${heating.stallsC} °C`);
  return heating;
}

describe('the loss of an open surface', () => {
  compare(tanks.TOTAL, (row) => openSurfaceLossWPerM2(column(row, 't/°C')) / 1000);
  compare(tanks.EVAPORATION, (row) => evaporationLossWPerM2(column(row, 't/°C')) / 1000);
  compare(tanks.EXAMPLE, (row) =>
    btuPerHour(openSurfaceLossWPerM2(celsius(column(row, 't/°F'))), column(row, 'area/ft²')),
  );
  compare(doe.EVAPORATION, (row) => evaporationLossWPerM2(column(row, 't/°C')) / 1000);
  compare(doe.RADIATION, (row) => drySurfaceLossWPerM2(column(row, 't/°C')) / 1000);
  compare(doe.EXAMPLE, (row) =>
    btuPerHour(evaporationLossWPerM2(celsius(column(row, 't/°F'))), column(row, 'area/ft²')),
  );
  compare(doe.WIND, () => WIND_FACTORS.breeze.surface);
});

describe('the Water Boiling Test, steam counted and not', () => {
  const sensibleKj = (5 * (enthalpyJPerKg(100) - enthalpyJPerKg(20))) / 1000;
  const stove = (row: { at: Readonly<Record<string, string>> }): { firedKj: number; usefulKj: number } => {
    const { powerKw, minutes, efficiency } = STOVES[Number(row.at.stove) as 0 | 1];
    const firedKj = Number(powerKw) * Number(minutes) * 60;
    return { firedKj, usefulKj: (firedKj * Number(efficiency)) / 100 };
  };
  compare(
    SENSIBLE,
    (row) =>
      (column(row, 'm/kg') * (enthalpyJPerKg(column(row, 'to/°C')) - enthalpyJPerKg(column(row, 'from/°C')))) / 1000,
  );
  compare(STEAM, (row) => ((stove(row).usefulKj - sensibleKj) * 1000) / latentHeatVaporisationJPerKg(100));
  compare(WITHOUT_STEAM, (row) => (100 * sensibleKj) / stove(row).firedKj);
});

describe('pots on hobs', () => {
  const noLoss = {
    surfaceM2: 0,
    wallM2: 0,
    lid: true,
    wind: 'calm',
    lowerHeatingValueJPerKg: fuelHeatingValueJPerKg('gas'),
  } as const;

  compare(ENARGAS, (row) => {
    const { minutes, waterKj } = reached({
      ...noLoss,
      massKg: 1,
      fromC: 20,
      toC: 99.974,
      powerW: same(column(row, 'power/kW') * 1000),
      efficiency: same(column(row, 'efficiency/%') / 100),
    });
    expect(waterKj).toBeCloseTo(335.05, 2);
    return minutes.likely;
  });

  compare(GONZALEZ, (row) => 100 * burnerFor('gas', column(row, 'base/mm')).efficiency[row.at.end as 'low' | 'high']);

  // Inside the span of all widths: ours is the nearest end of it, or the figure itself.
  const inRange = (row: PrintedRow): number => {
    const { low, high } = burnerFor(row.at.heatSource as HeatSource).efficiency;
    return Math.min(Math.max(Number(row.printed), 100 * low), 100 * high);
  };
  compare(efficiencies.KADAM_SHETE, inRange);
  compare(efficiencies.ENARGAS_TABLE, inRange);
  compare(efficiencies.IKPAMBESE, inRange);
  compare(efficiencies.BOILING_POINT_12, inRange);
  compare(efficiencies.HAFNER, inRange);
  compare(efficiencies.BHATT, inRange);

  compare(OPEN_PAN, (row) => {
    const radiusM = column(row, 'd/mm') / 2000;
    const surfaceM2 = Math.PI * radiusM ** 2;
    const power = same(column(row, 'power/kW') * 1000);
    const { minutes, waterKj } = reached({
      ...noLoss,
      massKg: column(row, 'm/kg'),
      fromC: column(row, 'from/°C'),
      toC: column(row, 'to/°C'),
      powerW: power,
      efficiency: same(column(row, 'lidded/%') / 100),
      surfaceM2,
      wallM2: 0,
      lid: false,
    });
    return (100 * waterKj * 1000) / (power.likely * minutes.likely * 60);
  });

  compare(SNOW_RATIO, () => {
    const boil = enthalpyJPerKg(99.974);
    return (meltingHeatJPerKg(-5) + boil - enthalpyJPerKg(0)) / (boil - enthalpyJPerKg(20));
  });
});
