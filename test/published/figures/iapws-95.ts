import type { PrintedTable } from '../figure.js';

const IAPWS_95 = {
  source: 'iapws-95',
  title: 'Release on the IAPWS Formulation 1995 for the Thermodynamic Properties of Ordinary Water Substance',
  year: 2018,
  place: 'values at 101.325 kPa',
  seen: 'worked out with an open implementation of the formulation; core carries polynomials fitted to it',
} as const;

export const HEAT_CAPACITY: PrintedTable = {
  ...IAPWS_95,
  quantity: 'heat capacity of liquid water',
  unit: 'kJ/(kg K)',
  tolerance: { by: '0.0001', because: 'the fitted polynomial holds to 0.00004 and the printed figure to 0.00005' },
  rows: [
    { at: { 't/°C': '0.01' }, printed: '4.2194' },
    { at: { 't/°C': '10' }, printed: '4.1952' },
    { at: { 't/°C': '20' }, printed: '4.1841' },
    { at: { 't/°C': '25' }, printed: '4.1813' },
    { at: { 't/°C': '40' }, printed: '4.1794' },
    { at: { 't/°C': '60' }, printed: '4.1850' },
    { at: { 't/°C': '80' }, printed: '4.1968' },
    { at: { 't/°C': '95' }, printed: '4.2102' },
  ],
};

export const DENSITY: PrintedTable = {
  ...IAPWS_95,
  quantity: 'density of liquid water',
  unit: 'kg/m³',
  rows: [
    { at: { 't/°C': '0.01' }, printed: '999.84' },
    {
      at: { 't/°C': '4' },
      printed: '999.975',
      tolerance: { by: '0.002', because: 'the fitted polynomial holds to 0.002' },
    },
    { at: { 't/°C': '10' }, printed: '999.70' },
    { at: { 't/°C': '15' }, printed: '999.10' },
    { at: { 't/°C': '20' }, printed: '998.21' },
    { at: { 't/°C': '25' }, printed: '997.05' },
    { at: { 't/°C': '40' }, printed: '992.22' },
    { at: { 't/°C': '60' }, printed: '983.20' },
    { at: { 't/°C': '80' }, printed: '971.79' },
    { at: { 't/°C': '90' }, printed: '965.31' },
    { at: { 't/°C': '95' }, printed: '961.89' },
    {
      at: { 't/°C': '99.9' },
      printed: '958.42',
      tolerance: { by: '0.01', because: 'the fitted polynomial holds to 0.002 and 99.9 °C stands close to a half' },
    },
  ],
};

export const ENTHALPY: PrintedTable = {
  ...IAPWS_95,
  quantity: 'specific enthalpy of liquid water',
  unit: 'kJ/kg',
  rows: [
    { at: { 't/°C': '0' }, printed: '0.06' },
    { at: { 't/°C': '5' }, printed: '21.12' },
    { at: { 't/°C': '10' }, printed: '42.12' },
    { at: { 't/°C': '15' }, printed: '63.08' },
    { at: { 't/°C': '20' }, printed: '84.01' },
    { at: { 't/°C': '25' }, printed: '104.92' },
    { at: { 't/°C': '99.974' }, printed: '419.06' },
  ],
};

export const LATENT_HEAT: PrintedTable = {
  ...IAPWS_95,
  quantity: 'latent heat of vaporisation where water boils at',
  unit: 'kJ/kg',
  rows: [
    { at: { 'H/m': '0' }, printed: '2256.5' },
    { at: { 'H/m': '1000' }, printed: '2265.2' },
    { at: { 'H/m': '2000' }, printed: '2273.9' },
    { at: { 'H/m': '3000' }, printed: '2282.6' },
    { at: { 'H/m': '4000' }, printed: '2291.2' },
    { at: { 'H/m': '5000' }, printed: '2299.8' },
  ],
};
