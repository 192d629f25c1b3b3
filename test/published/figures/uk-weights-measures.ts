import type { PrintedTable } from '../figure.js';

export const VOLUME: PrintedTable = {
  source: 'uk-weights-measures',
  title: 'Weights and Measures Act 1985',
  year: 1985,
  place: 'Schedule 1',
  quantity: 'the imperial unit',
  unit: 'mL',
  seen: 'an open unit library; the fluid ounce in a page',
  rows: [
    { at: { id: 'gallon' }, printed: '4546.09' },
    { at: { id: 'quart' }, printed: '1136.5225' },
    { at: { id: 'pint' }, printed: '568.26125' },
    { at: { id: 'floz' }, printed: '28.4130625' },
  ],
};
