import type { PrintedTable } from '../figure.js';

/** A tank's free surface 10.5 m by 12 m, ship of 6077.49 t, sea water 1.025 t/m³. */
export const REED: PrintedTable = {
  source: 'reed-naval',
  title: 'Reed’s Naval Architecture for Marine Engineers, 4th edition',
  place: 'Example 5.11',
  quantity: 'virtual rise of the centre of gravity',
  unit: 'm',
  seen: 'page',
  rows: [
    { at: { 'l/m': '10.5', 'b/m': '12', 'displacement/t': '6077.49', 'density/(t/m³)': '1.025' }, printed: '0.255' },
  ],
};

/** The same effect in a round pot, I/V = r²/(4h). */
export const DERRETT: PrintedTable = {
  source: 'derrett',
  title: 'Ship Stability for Masters and Mates',
  place: 'free surface of a liquid, its own weight of no account; cylinder derived',
  quantity: 'virtual rise',
  unit: 'mm',
  seen: 'page; worked out for a cylinder',
  rows: [{ at: { 'r/mm': '70', 'h/mm': '100' }, printed: '12.25' }],
};

const CYLINDER = {
  source: 'truncated-cylinder',
  title: 'Geometry of the obliquely truncated cylinder',
  seen: 'derived, and checked by numerical integration apart from this code',
} as const;

export const CENTROID: PrintedTable = {
  ...CYLINDER,
  place: 'r = 70 mm, h = 100 mm, tilt 10°',
  quantity: 'centroid',
  unit: 'mm',
  rows: [
    { at: { 'r/mm': '70', 'h/mm': '100', 'tilt/°': '10', axis: 'x' }, printed: '2.160' },
    { at: { 'r/mm': '70', 'h/mm': '100', 'tilt/°': '10', axis: 'z' }, printed: '50.190' },
  ],
};

export const TIP: PrintedTable = {
  ...CYLINDER,
  place: 'r = 70 mm, h = 100 mm, edge at 40 mm, water alone',
  quantity: 'tip-over',
  unit: '°',
  rows: [
    { at: { water: 'frozen', 'stand/mm': '0' }, printed: '38.66' },
    { at: { water: 'linear', 'stand/mm': '0' }, printed: '32.72' },
    { at: { water: 'running', 'stand/mm': '0' }, printed: '31.77' },
    { at: { water: 'frozen', 'stand/mm': '100' }, printed: '14.93' },
    { at: { water: 'running', 'stand/mm': '100' }, printed: '13.82' },
  ],
};

export const SPILL: PrintedTable = {
  ...CYLINDER,
  place: 'spill: atan((H − h)/r)',
  quantity: 'spill',
  unit: '°',
  rows: [
    { at: { 'd/mm': '140', 'H/mm': '120', 'h/mm': '100' }, printed: '15.95' },
    { at: { 'd/mm': '200', 'H/mm': '130', 'h/mm': '120' }, printed: '5.7' },
  ],
};

export const SUPPORTS: PrintedTable = {
  ...CYLINDER,
  place: 'n supports on a circle of 60 mm radius',
  quantity: 'tipping edge',
  unit: 'mm',
  rows: [
    { at: { 'R/mm': '60', n: '3' }, printed: '30.0' },
    { at: { 'R/mm': '60', n: '4' }, printed: '42.4' },
  ],
};
