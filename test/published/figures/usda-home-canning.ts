import type { PrintedTable } from '../figure.js';

export const BOILING_POINTS: PrintedTable = {
  source: 'usda-home-canning',
  title: 'Complete Guide to Home Canning, and the kitchen tables that agree with it',
  place: 'boiling temperature of water by altitude',
  quantity: 'boiling point',
  unit: '°F',
  seen: 'quoted in pages',
  tolerance: { by: '0.5', because: 'kitchen tables are rounded and stand on other model atmospheres' },
  rows: [
    { at: { 'altitude/ft': '1000' }, printed: '210.2' },
    { at: { 'altitude/ft': '2000' }, printed: '208.4' },
    { at: { 'altitude/ft': '5000' }, printed: '203' },
    { at: { 'altitude/ft': '7500' }, printed: '198' },
    { at: { 'altitude/ft': '8000' }, printed: '197.4' },
    { at: { 'altitude/ft': '10000' }, printed: '194' },
    { at: { 'altitude/ft': '14000' }, printed: '185.9' },
  ],
};
