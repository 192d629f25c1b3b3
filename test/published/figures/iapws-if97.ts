import type { PrintedTable } from '../figure.js';

const IF97 = {
  source: 'iapws-if97',
  title: 'Revised Release on the IAPWS Industrial Formulation 1997 for the Thermodynamic Properties of Water and Steam',
  year: 2012,
  seen: 'quoted in the test suites of several open implementations',
} as const;

export const TABLE_35: PrintedTable = {
  ...IF97,
  place: 'Table 35',
  quantity: 'saturation pressure',
  unit: 'MPa',
  rows: [
    { at: { 'T/K': '300' }, printed: '0.353658941e-2' },
    { at: { 'T/K': '500' }, printed: '0.263889776e1' },
    { at: { 'T/K': '600' }, printed: '0.123443146e2' },
  ],
};

export const TABLE_36: PrintedTable = {
  ...IF97,
  place: 'Table 36',
  quantity: 'saturation temperature',
  unit: 'K',
  rows: [
    { at: { 'p/MPa': '0.1' }, printed: '0.372755919e3' },
    { at: { 'p/MPa': '1' }, printed: '0.453035632e3' },
    { at: { 'p/MPa': '10' }, printed: '0.584149488e3' },
  ],
};
