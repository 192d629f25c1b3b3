import type { PrintedTable } from '../figure.js';

/** Time to bring 335 kJ of water, a litre from 20 °C, to the boil in a lidded pot at 49 %. */
export const ENARGAS: PrintedTable = {
  source: 'enargas-2020',
  title: 'Efficiency of cooking with gas, wood and electricity in the home',
  year: 2020,
  place: 'Figure 6: natural-gas hob, lidded pot, 49 %',
  quantity: 'time for 335 kJ',
  unit: 'min',
  seen: 'quoted with page reference; times follow from power and efficiency',
  rows: [
    { at: { 'power/kW': '2.09', 'efficiency/%': '49' }, printed: '5.45' },
    { at: { 'power/kW': '1.63', 'efficiency/%': '49' }, printed: '6.99' },
    { at: { 'power/kW': '1.16', 'efficiency/%': '49' }, printed: '9.82' },
  ],
};

/** Ends of what was measured over all flames, and core's ranges for those bases. */
export const GONZALEZ: PrintedTable = {
  source: 'gonzalez-2010',
  title: 'Efficiency of gas burners with a wide pot and a narrow kettle',
  year: 2010,
  place: 'extremes over low to high flame',
  quantity: 'efficiency on gas',
  unit: '%',
  seen: 'overall range in the abstract, each vessel as quoted',
  rows: [
    { at: { 'base/mm': '200', end: 'high' }, printed: '62' },
    { at: { 'base/mm': '200', end: 'low' }, printed: '50' },
    { at: { 'base/mm': '120', end: 'high' }, printed: '55' },
    { at: { 'base/mm': '120', end: 'low' }, printed: '29' },
  ],
};

/** An uncovered pan: 1 L from 10 to 100 °C, 19 cm, 1.83 kW, 38 to 39 % over all; a lidded pot on another hob 49 %. */
export const OPEN_PAN: PrintedTable = {
  source: 'de-podesta-2022',
  title: 'Boiling water on gas, measured at home',
  year: 2022,
  place: '1 L, 19 cm, 1.83 kW, uncovered',
  quantity: 'efficiency over all',
  unit: '%',
  seen: 'quoted',
  tolerance: { by: '5', because: 'the lidded 49 % is another hob’s, and the loss table is a rough estimate' },
  rows: [
    {
      at: { 'm/kg': '1', 'from/°C': '10', 'to/°C': '99.97', 'd/mm': '190', 'power/kW': '1.83', 'lidded/%': '49' },
      printed: '38.5',
    },
  ],
};

/** Snow against water on the same heater: 22 and 30 min against 10 and 14 for 6 quarts. */
export const SNOW_RATIO: PrintedTable = {
  source: 'mcgoff-milich-1966',
  title: 'Carbon heating unit, AD0642930',
  year: 1966,
  place: 'time to boil 6 quarts of melted snow or ice, over that of water',
  quantity: 'ratio',
  unit: '',
  seen: 'page',
  tolerance: {
    by: '0.2',
    because:
      'times measured in whole minutes, at 8 °C against 20 °C round the heater; the snow’s temperature is not stated',
  },
  rows: [
    { at: { 'snow/min': '22', 'water/min': '10' }, printed: '2.2' },
    { at: { 'snow/min': '30', 'water/min': '14' }, printed: '2.14' },
  ],
};
