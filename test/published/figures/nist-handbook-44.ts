import type { PrintedTable } from '../figure.js';

const HB_44 = {
  source: 'nist-handbook-44',
  title: 'NIST Handbook 44, Appendix C: General Tables of Units of Measurement',
  place: 'Appendix C',
  seen: 'derivations in pages; an open unit library',
} as const;

export const VOLUME: PrintedTable = {
  ...HB_44,
  quantity: 'the US unit',
  unit: 'mL',
  rows: [
    { at: { id: 'gallon' }, printed: '3785.411784' },
    { at: { id: 'quart' }, printed: '946.352946' },
    { at: { id: 'pint' }, printed: '473.176473' },
    { at: { id: 'cup' }, printed: '236.5882365' },
    { at: { id: 'floz' }, printed: '29.5735295625' },
  ],
};

export const LENGTH: PrintedTable = {
  ...HB_44,
  quantity: 'the US unit',
  unit: 'mm',
  rows: [
    { at: { id: 'in' }, printed: '25.4' },
    { at: { id: 'ft' }, printed: '304.8' },
  ],
};

export const MASS: PrintedTable = {
  ...HB_44,
  quantity: 'the US unit',
  unit: 'g',
  rows: [
    { at: { id: 'lb' }, printed: '453.59237' },
    { at: { id: 'oz' }, printed: '28.349523125' },
  ],
};
