import type { PrintedTable } from '../figure.js';

const HB_44 = {
  source: 'nist-handbook-44',
  title: 'NIST Handbook 44, Appendix C: General Tables of Units of Measurement',
  place: 'Appendix C',
  seen: 'derivations in pages; an open unit library',
} as const;

export const VOLUME: PrintedTable = {
  ...HB_44,
  quantity: 'one unit',
  unit: 'mL',
  rows: [
    { at: { unit: '1 in³' }, printed: '16.387064' },
    { at: { unit: '1 US gal' }, printed: '3785.411784' },
    { at: { unit: '1 US qt' }, printed: '946.352946' },
    { at: { unit: '1 US pt' }, printed: '473.176473' },
    { at: { unit: '1 cup' }, printed: '236.5882365' },
    { at: { unit: '1 US fl oz' }, printed: '29.5735295625' },
    { at: { unit: '1 tbsp' }, printed: '14.78676478125' },
    { at: { unit: '1 tsp' }, printed: '4.92892159375' },
  ],
};

export const LENGTH: PrintedTable = {
  ...HB_44,
  quantity: 'one unit',
  unit: 'mm',
  rows: [
    { at: { unit: '1 in' }, printed: '25.4' },
    { at: { unit: '1 ft' }, printed: '304.8' },
  ],
};

export const MASS: PrintedTable = {
  ...HB_44,
  quantity: 'one unit',
  unit: 'g',
  rows: [
    { at: { unit: '1 lb' }, printed: '453.59237' },
    { at: { unit: '1 oz' }, printed: '28.349523125' },
  ],
};
