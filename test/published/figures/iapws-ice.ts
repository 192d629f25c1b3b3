import type { PrintedTable } from '../figure.js';

const ICE = {
  source: 'iapws-ice',
  title: 'Revised Release on the Equation of State 2006 for H2O Ice Ih',
  year: 2009,
} as const;

const FIT = 'core carries a fit good to the fourth figure; cooking needs no more';

/** T = 273.152519 K, p = 101325 Pa: the melting point, where the fit's 0 °C stands for it. */
export const TABLE_6_HEAT_CAPACITY: PrintedTable = {
  ...ICE,
  place: 'Table 6',
  seen: 'reproduced by an open implementation',
  quantity: 'heat capacity of ice',
  unit: 'J/(kg K)',
  tolerance: { by: '0.1', because: FIT },
  rows: [{ at: { 'T/K': '273.152519' }, printed: '0.209671391024e4' }],
};

export const TABLE_6_DENSITY: PrintedTable = {
  ...ICE,
  place: 'Table 6',
  seen: 'reproduced by an open implementation',
  quantity: 'density of ice',
  unit: 'kg/m³',
  tolerance: { by: '0.01', because: FIT },
  rows: [{ at: { 'T/K': '273.152519' }, printed: '0.916721463419e3' }],
};

export const TABLE_6_ENTHALPY: PrintedTable = {
  ...ICE,
  place: 'Table 6',
  seen: 'reproduced by an open implementation',
  quantity: 'specific enthalpy of ice',
  unit: 'J/kg',
  tolerance: {
    by: '20',
    because:
      'ours is the enthalpy of water at 0 °C less the latent heat, and the melting point stands 0.0025 K above 0 °C',
  },
  rows: [{ at: { 'T/K': '273.152519' }, printed: '-0.333354873637e6' }],
};

export const HEAT_CAPACITY: PrintedTable = {
  ...ICE,
  place: 'values at 101.325 kPa',
  seen: 'worked out with an open implementation',
  quantity: 'heat capacity of ice',
  unit: 'kJ/(kg K)',
  tolerance: { by: '0.0001', because: FIT },
  rows: [
    { at: { 't/°C': '0' }, printed: '2.0967' },
    { at: { 't/°C': '-10' }, printed: '2.0231' },
    { at: { 't/°C': '-20' }, printed: '1.9498' },
    { at: { 't/°C': '-30' }, printed: '1.8769' },
    { at: { 't/°C': '-40' }, printed: '1.8045' },
  ],
};

export const DENSITY: PrintedTable = {
  ...ICE,
  place: 'values at 101.325 kPa',
  seen: 'worked out with an open implementation',
  quantity: 'density of ice',
  unit: 'kg/m³',
  rows: [
    { at: { 't/°C': '0' }, printed: '916.72' },
    { at: { 't/°C': '-10' }, printed: '918.17' },
    { at: { 't/°C': '-20' }, printed: '919.57' },
    { at: { 't/°C': '-40' }, printed: '922.22' },
  ],
};
