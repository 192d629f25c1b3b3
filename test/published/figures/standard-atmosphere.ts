import type { PrintedTable } from '../figure.js';

export const ISO_2533: PrintedTable = {
  source: 'iso-2533',
  title: 'Standard Atmosphere',
  year: 1975,
  place: 'pressure by geopotential altitude',
  quantity: 'pressure',
  unit: 'Pa',
  seen: 'worked out with an open implementation of the standard',
  rows: [
    { at: { 'H/m': '0' }, printed: '101325.0' },
    { at: { 'H/m': '1000' }, printed: '89874.6' },
    { at: { 'H/m': '2000' }, printed: '79495.2' },
    { at: { 'H/m': '3000' }, printed: '70108.5' },
    { at: { 'H/m': '4000' }, printed: '61640.2' },
    { at: { 'H/m': '5000' }, printed: '54019.9' },
    { at: { 'H/m': '6000' }, printed: '47181.0' },
  ],
};

export const ICAO_7488: PrintedTable = {
  source: 'icao-7488',
  title: 'Manual of the ICAO Standard Atmosphere',
  year: 1993,
  place: 'pressure by geometric altitude',
  quantity: 'pressure',
  unit: 'Pa',
  seen: 'rows in the tests of an open library',
  rows: [
    { at: { 'Z/m': '1000' }, printed: '8.98763e4' },
    { at: { 'Z/m': '2000' }, printed: '7.95014e4' },
  ],
};

/** Public Domain Aeronautical Software's table of the U.S. Standard Atmosphere 1976, steps of 2 km. */
export const US_1976: PrintedTable = {
  source: 'us-atmosphere-1976',
  title: 'U.S. Standard Atmosphere, 1976',
  year: 1976,
  place: 'pressure by geometric altitude, every 2 km',
  quantity: 'pressure',
  unit: 'Pa',
  seen: 'rows in the tests of an open library',
  rows: [
    { at: { 'Z/m': '2000' }, printed: '79501' },
    { at: { 'Z/m': '4000' }, printed: '61660' },
    { at: { 'Z/m': '6000' }, printed: '47218' },
    { at: { 'Z/m': '8000' }, printed: '35652' },
  ],
};
