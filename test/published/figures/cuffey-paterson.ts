import type { PrintedTable } from '../figure.js';

/** Table 2.1, typical densities: the two ends of each kind that core knows. */
export const DENSITIES: PrintedTable = {
  source: 'cuffey-paterson',
  title: 'The Physics of Glaciers, 4th edition',
  year: 2010,
  place: 'Table 2.1',
  quantity: 'density of snow',
  unit: 'kg/m³',
  seen: 'quoted in two places',
  rows: [
    { at: { snow: 'new', end: 'low' }, printed: '50' },
    { at: { snow: 'new', end: 'high' }, printed: '70' },
    { at: { snow: 'settled', end: 'low' }, printed: '200' },
    { at: { snow: 'settled', end: 'high' }, printed: '300' },
    { at: { snow: 'wind-packed', end: 'low' }, printed: '350' },
    { at: { snow: 'wind-packed', end: 'high' }, printed: '400' },
  ],
};
