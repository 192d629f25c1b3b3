import type { PrintedTable } from '../figure.js';

const TANKS = {
  source: 'engineering-toolbox-tanks',
  title: 'Heat Loss from Open Water Tanks',
  seen: 'the page',
} as const;

const ROWS = ['48.9', '60', '71.1', '82.2', '87.8', '93.3', '98.9'];
const rows = (printed: readonly string[]): PrintedTable['rows'] =>
  ROWS.map((waterC, i) => ({ at: { 't/°C': waterC }, printed: printed[i]! }));

export const TOTAL: PrintedTable = {
  ...TANKS,
  place: 'table for still air of 15.6 °C (60 °F)',
  quantity: 'loss by evaporation and radiation',
  unit: 'kW/m²',
  rows: rows(['1.48', '2.59', '4.13', '6.31', '7.73', '9.46', '11.36']),
};

export const EVAPORATION: PrintedTable = {
  ...TANKS,
  place: 'table for still air of 15.6 °C (60 °F)',
  quantity: 'loss by evaporation',
  unit: 'kW/m²',
  rows: rows(['1.14', '2.08', '3.47', '5.49', '6.81', '8.45', '10.22']),
};

/** Worked example: 10 ft² at 150 °F, a row that core does not carry. */
export const EXAMPLE: PrintedTable = {
  ...TANKS,
  place: 'worked example, 10 ft² at 150 °F',
  quantity: 'heat loss',
  unit: 'Btu/h',
  tolerance: { by: '0.5 %', because: 'interpolated between the rows of 140 and 160 °F' },
  rows: [{ at: { 't/°F': '150', 'area/ft²': '10' }, printed: '10400' }],
};
