import type { PrintedTable } from '../figure.js';

/** Efficiencies that others measured, each to lie inside core's range for such a heat source over all widths of pot. */
const measured = (
  source: string,
  title: string,
  year: number | undefined,
  place: string,
  seen: string,
  rows: readonly (readonly [heatSource: string, what: string, printed: string])[],
): PrintedTable => ({
  source,
  title,
  ...(year === undefined ? {} : { year }),
  place,
  seen,
  quantity: 'measured efficiency',
  unit: '%',
  rows: rows.map(([heatSource, what, printed]) => ({ at: { heatSource, what }, printed })),
});

export const KADAM_SHETE = measured(
  'kadam-shete',
  'Height to diameter ratio of a cylindrical pot on an LPG burner',
  2017,
  'abstract: best and worst of five pots',
  'abstract',
  [
    ['gas', 'best', '53.2'],
    ['gas', 'worst', '29.6'],
  ],
);

export const ENARGAS_TABLE = measured(
  'enargas-2020',
  'Efficiency of cooking with gas, wood and electricity in the home',
  2020,
  'Figure 6',
  'quoted with page reference',
  [
    ['gas', 'bottled-gas hob, lidded', '52'],
    ['gas', 'natural-gas hob, lidded', '49'],
    ['fire', 'three stones, lidded', '15'],
  ],
);

export const IKPAMBESE = measured(
  'ikpambese-2014',
  'Comparison of kerosene, wood, charcoal and electric stoves by the Water Boiling Test',
  2014,
  'results, cold and hot start',
  'page',
  [
    ['liquid-fuel', 'kerosene, cold start', '36'],
    ['liquid-fuel', 'kerosene, hot start', '38'],
    ['wood', 'wood, least', '9.6'],
    ['wood', 'wood, most', '14.6'],
  ],
);

export const BOILING_POINT_12 = measured(
  'boiling-point-12',
  'Preliminary investigation of alcohol-fuelled stoves',
  undefined,
  'portable unpressurised stove in its own shield, 2 L',
  'page; the basis is not stated',
  [['alcohol', 'upper bound', '60']],
);

export const HAFNER = measured(
  'hafner-2018',
  'Open fires and improved stoves measured in households',
  2018,
  'open fires in the field',
  'summary',
  [
    ['fire', 'least', '7'],
    ['fire', 'most', '12'],
  ],
);

export const BHATT = measured(
  'bhatt-2011',
  'Domestic LPG stoves under adverse conditions',
  2011,
  'measured under adverse conditions',
  'page',
  [['gas', 'adverse', '51']],
);
