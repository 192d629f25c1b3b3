import type { PrintedTable } from '../figure.js';

const TIP_19 = {
  source: 'doe-steam-19',
  title: 'Cover Heated, Open Vessels, Steam Tip Sheet 19',
  seen: 'two pages',
} as const;

/** Another published table of the same thing: the two differ by up to a quarter, which is how far such figures can be trusted. */
export const EVAPORATION: PrintedTable = {
  ...TIP_19,
  place: 'table for dry still air of 18 °C (65 °F)',
  quantity: 'loss by evaporation',
  unit: 'kW/m²',
  tolerance: {
    by: '27 %',
    because: 'core uses another published table, for damper air; both call themselves estimates',
  },
  rows: [
    { at: { 't/°C': '43.3' }, printed: '0.77' },
    { at: { 't/°C': '54.4' }, printed: '1.51' },
    { at: { 't/°C': '65.6' }, printed: '2.80' },
    { at: { 't/°C': '76.7' }, printed: '5.07' },
    { at: { 't/°C': '87.8' }, printed: '9.15' },
  ],
};

export const RADIATION: PrintedTable = {
  ...TIP_19,
  place: 'radiation from the surface',
  quantity: 'loss of a dry surface',
  unit: 'kW/m²',
  tolerance: { by: '2 %', because: 'core uses another published table' },
  rows: [
    { at: { 't/°C': '43.3' }, printed: '0.28' },
    { at: { 't/°C': '87.8' }, printed: '0.91' },
  ],
};

export const EXAMPLE: PrintedTable = {
  ...TIP_19,
  place: 'worked example: 40 ft² at 170 °F in air of 75 °F',
  quantity: 'loss by evaporation',
  unit: 'Btu/h',
  tolerance: { by: '15 %', because: 'core uses another published table, for damper and colder air' },
  rows: [{ at: { 't/°F': '170', 'area/ft²': '40' }, printed: '62640' }],
};

export const WIND: PrintedTable = {
  ...TIP_19,
  place: 'note: a wind of 3 mph more than doubles the loss',
  quantity: 'loss of the surface in a breeze, times that in still air',
  unit: '',
  rows: [{ at: { wind: 'breeze' }, printed: '2' }],
};
