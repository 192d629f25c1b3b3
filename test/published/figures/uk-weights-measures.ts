import type { PrintedTable } from '../figure.js';

export const VOLUME: PrintedTable = {
  source: 'uk-weights-measures',
  title: 'Weights and Measures Act 1985',
  year: 1985,
  place: 'Schedule 1',
  quantity: 'one unit',
  unit: 'mL',
  seen: 'an open unit library; the fluid ounce in a page',
  rows: [
    { at: { unit: '1 imp gal' }, printed: '4546.09' },
    { at: { unit: '1 imp qt' }, printed: '1136.5225' },
    { at: { unit: '1 imp pt' }, printed: '568.26125' },
    { at: { unit: '1 imp fl oz' }, printed: '28.4130625' },
  ],
};
