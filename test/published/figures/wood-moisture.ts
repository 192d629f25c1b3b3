import type { PrintedTable } from '../figure.js';

export const NET_HEAT: PrintedTable = {
  source: 'wood-moisture',
  title: 'Net calorific value of wood by moisture content',
  place: 'table for 19.0 MJ/kg of dry wood',
  quantity: 'net heating value at moisture (wet basis)',
  unit: 'MJ/kg',
  seen: 'three pages',
  tolerance: {
    by: '0.02',
    because: 'the table is worked with 2.40 MJ/kg for the water, the formula printed above it with 2.44',
  },
  rows: [
    { at: { 'M/%': '15' }, printed: '15.79' },
    { at: { 'M/%': '20' }, printed: '14.72' },
    { at: { 'M/%': '30' }, printed: '12.58' },
    { at: { 'M/%': '40' }, printed: '10.44' },
  ],
};
