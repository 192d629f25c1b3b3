import { describe } from 'vitest';
import { SUBSTANCES, type SubstanceId } from '../../core/data/fuels.js';
import type { GasId } from '../../core/model/item.js';
import { SNOW_KG_PER_M3 } from '../../core/data/snow.js';
import { heatingValueJPerKg, liquidFuelG, vapourPressurePa, woodHeatingValueJPerKg } from '../../core/physics/fuel.js';
import { column, compare, type PrintedRow } from './figure.js';
import { BOILING_POINTS, FORMATION, PRODUCTS } from './figures/crc-handbook.js';
import { DENSITIES } from './figures/cuffey-paterson.js';
import * as greet from './figures/greet.js';
import { VAPOUR_PRESSURE } from './figures/vdi-heat-atlas.js';
import { NET_HEAT } from './figures/wood-moisture.js';

const ofRow = (row: PrintedRow): number =>
  heatingValueJPerKg(row.at.substance as SubstanceId, row.at.basis as 'lower' | 'higher');
const btuPerLb = (joulesPerKg: number): number => (joulesPerKg * 0.45359237) / 1055.056;

describe('heating values', () => {
  // Burning CxHyOz: x CO2 + y/2 H2O − formation, against our heating value turned back into an enthalpy of formation.
  const formation = (row: PrintedRow, basis: 'lower' | 'higher'): number => {
    const water = basis === 'lower' ? PRODUCTS.waterGas : PRODUCTS.waterLiquid;
    const products = column(row, 'C') * Number(PRODUCTS.carbonDioxide) + (column(row, 'H') / 2) * Number(water);
    const burnedKjPerMol =
      (heatingValueJPerKg(row.at.substance as SubstanceId, basis) * column(row, 'M/(g/mol)')) / 1e6;
    return products + burnedKjPerMol;
  };
  // A heating value in MJ/kg to two places stands for ±0.3 kJ/mol at most (0.005 MJ/kg × 60 g/mol), the products for ±0.4.
  const tolerance = { by: '0.8', because: 'heating values are rounded to 0.01 MJ/kg and the products to 0.1 kJ/mol' };
  compare({ ...FORMATION, quantity: 'enthalpy of formation from the lower value', tolerance }, (row) =>
    formation(row, 'lower'),
  );
  compare({ ...FORMATION, quantity: 'enthalpy of formation from the higher value', tolerance }, (row) =>
    formation(row, 'higher'),
  );

  compare(greet.LOWER_BTU_PER_LB, (row) => btuPerLb(ofRow(row)));
  compare(greet.HIGHER_BTU_PER_LB, (row) => btuPerLb(ofRow(row)));
  compare(greet.MJ_PER_KG, (row) => ofRow(row) / 1e6);
  compare(greet.NAPHTHA_DENSITY, (row) => liquidFuelG('liquid-fuel', column(row, 'ml')));
  compare(NET_HEAT, (row) => woodHeatingValueJPerKg(column(row, 'M/%') / 100) / 1e6);
});

describe('gas in a canister', () => {
  compare(VAPOUR_PRESSURE, (row) => vapourPressurePa(row.at.gas as GasId, column(row, 't/°C') + 273.15) / 1000);

  // Where the vapour pressure is one atmosphere, by halving.
  compare(BOILING_POINTS, (row) => {
    let [low, high] = [-100, 50];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (vapourPressurePa(row.at.gas as keyof typeof SUBSTANCES & GasId, middle + 273.15) < 101325) low = middle;
      else high = middle;
    }
    return low;
  });
});

describe('snow', () => {
  compare(DENSITIES, (row) => SNOW_KG_PER_M3[row.at.snow as 'new'][row.at.end as 'low' | 'high']);
});
