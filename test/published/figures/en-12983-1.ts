import type { PrintedTable } from '../figure.js';

/** Two handles where the capacity is over 3.75 L or the filled mass over 5 kg. */
export const HANDLES: PrintedTable = {
  source: 'en-12983-1',
  title: 'Cookware. General requirements, EN 12983-1:2000+A1:2004',
  year: 2004,
  place: 'clause 6',
  quantity: 'handles asked for',
  unit: '',
  seen: 'a test laboratory’s summary',
  rows: [
    { at: { 'capacity/L': '3.7', 'filled/kg': '4.9' }, printed: '1' },
    { at: { 'capacity/L': '3.75', 'filled/kg': '5' }, printed: '1' },
    { at: { 'capacity/L': '3.8', 'filled/kg': '4.9' }, printed: '2' },
    { at: { 'capacity/L': '3.7', 'filled/kg': '5.1' }, printed: '2' },
  ],
};
