import { describe, expect, it } from 'vitest';
import { boilingPointC, pressurePa } from '../../core/physics/air.js';
import {
  densityKgPerM3,
  enthalpyJPerKg,
  heatCapacityJPerKgK,
  iceDensityKgPerM3,
  iceHeatCapacityJPerKgK,
  latentHeatVaporisationJPerKg,
  meltingHeatJPerKg,
  saturationPressurePa,
  saturationTemperatureK,
} from '../../core/physics/water.js';
import { column, compare } from './figure.js';
import { WATER_VAPORISATION } from './figures/crc-handbook.js';
import * as ice from './figures/iapws-ice.js';
import * as iapws95 from './figures/iapws-95.js';
import { TABLE_35, TABLE_36 } from './figures/iapws-if97.js';
import { ICAO_7488, ISO_2533, US_1976 } from './figures/standard-atmosphere.js';
import { BOILING_POINTS } from './figures/usda-home-canning.js';

/** Map altitude of a geopotential one: Z = R H/(R − H). */
const onTheMap = (geopotentialM: number): number => (6356766 * geopotentialM) / (6356766 - geopotentialM);

describe('the boiling line of water', () => {
  compare(TABLE_35, (row) => saturationPressurePa(column(row, 'T/K')) / 1e6);
  compare(TABLE_36, (row) => saturationTemperatureK(column(row, 'p/MPa') * 1e6));
});

describe('liquid water', () => {
  compare(iapws95.HEAT_CAPACITY, (row) => heatCapacityJPerKgK(column(row, 't/°C')) / 1000);
  compare(iapws95.DENSITY, (row) => densityKgPerM3(column(row, 't/°C')));
  compare(iapws95.ENTHALPY, (row) => enthalpyJPerKg(column(row, 't/°C')) / 1000);
  compare(
    iapws95.LATENT_HEAT,
    (row) => latentHeatVaporisationJPerKg(boilingPointC(onTheMap(column(row, 'H/m')))) / 1000,
  );
  compare(
    WATER_VAPORISATION,
    (row) => (latentHeatVaporisationJPerKg(column(row, 't/°C')) * column(row, 'M/(g/mol)')) / 1e6,
  );
});

describe('ice', () => {
  compare(ice.TABLE_6_HEAT_CAPACITY, () => iceHeatCapacityJPerKgK(0));
  compare(ice.TABLE_6_DENSITY, () => iceDensityKgPerM3(0));
  compare(ice.TABLE_6_ENTHALPY, () => enthalpyJPerKg(0) - meltingHeatJPerKg(0));
  compare(ice.HEAT_CAPACITY, (row) => iceHeatCapacityJPerKgK(column(row, 't/°C')) / 1000);
  compare(ice.DENSITY, (row) => iceDensityKgPerM3(column(row, 't/°C')));
});

describe('the standard atmosphere', () => {
  compare(ISO_2533, (row) => pressurePa(onTheMap(column(row, 'H/m'))));
  compare(ICAO_7488, (row) => pressurePa(column(row, 'Z/m')));
  compare(US_1976, (row) => pressurePa(column(row, 'Z/m')));
});

describe('where water boils', () => {
  compare(BOILING_POINTS, (row) => boilingPointC(column(row, 'altitude/ft') * 0.3048) * 1.8 + 32);

  it('is 99.97 °C at the sea, not 100: IAPWS-IF97 and IAPWS-95 agree', () => {
    expect(boilingPointC(0)).toBeCloseTo(99.974, 3);
  });
});
