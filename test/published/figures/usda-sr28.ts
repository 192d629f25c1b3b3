import type { PrintedTable } from '../figure.js';

const SR28 = {
  source: 'usda-sr28',
  title: 'USDA National Nutrient Database for Standard Reference, Release 28',
  year: 2015,
  seen: 'a database built from the release',
} as const;

/** g cooked from 1 g dry, dry matter kept. */
export const YIELD: PrintedTable = {
  ...SR28,
  place:
    'water contents of NDB 20044/20045, 20120/20121, 20109/20110, 08120/08121, 20012/20013, 20035/20137, 16069/16070, 16027/16028',
  quantity: 'yield',
  unit: 'g/g',
  rows: [
    { at: { food: 'rice', 'dry/%': '11.62', 'cooked/%': '68.44' }, printed: '2.80' },
    { at: { food: 'spaghetti', 'dry/%': '9.90', 'cooked/%': '62.13' }, printed: '2.38' },
    { at: { food: 'egg-noodles', 'dry/%': '9.01', 'cooked/%': '67.73' }, printed: '2.82' },
    { at: { food: 'oats', 'dry/%': '10.84', 'cooked/%': '83.61' }, printed: '5.44' },
    { at: { food: 'bulgur', 'dry/%': '9.00', 'cooked/%': '77.76' }, printed: '4.09' },
    {
      at: { food: 'quinoa', 'dry/%': '13.28', 'cooked/%': '71.61' },
      printed: '3.06',
      tolerance: { by: '0.01', because: 'the quotient is 3.055, and the sheet rounds up' },
    },
    { at: { food: 'lentils', 'dry/%': '8.26', 'cooked/%': '69.64' }, printed: '3.02' },
    { at: { food: 'kidney-beans', 'dry/%': '11.75', 'cooked/%': '66.94' }, printed: '2.67' },
  ],
};

export const WEIGHED: PrintedTable = {
  ...SR28,
  place: 'weights of NDB 20029 (1 oz dry yields) and 08123 (packet prepared)',
  quantity: 'cooked mass',
  unit: 'g',
  rows: [
    { at: { food: 'couscous', 'dry/g': '173' }, printed: '528' },
    {
      at: { food: 'couscous', 'dry/g': '28.349523125' },
      printed: '86',
      tolerance: { by: '1', because: 'the cup’s 528 g is used; the ounce is rounded to the gram' },
    },
    { at: { food: 'instant-oats', 'dry/g': '28' }, printed: '177' },
  ],
};

export const VOLUME: PrintedTable = {
  ...SR28,
  place: 'weights of a cup cooked',
  quantity: 'cooked volume',
  unit: 'mL',
  rows: [
    { at: { food: 'rice', 'dry/g': '125' }, printed: '524' },
    {
      at: { food: 'spaghetti', 'dry/g': '125' },
      printed: '568',
      tolerance: { by: '1', because: 'worked with 4.54 mL/g, rounded' },
    },
    { at: { food: 'oats', 'dry/g': '60' }, printed: '330' },
    { at: { food: 'couscous', 'dry/g': '100' }, printed: '460' },
  ],
};

export const CUPS: PrintedTable = {
  ...SR28,
  place: 'weight of one cup cooked, 236.588 mL',
  quantity: 'cup of cooked food',
  unit: 'g',
  rows: [
    { at: { food: 'rice' }, printed: '158' },
    { at: { food: 'macaroni' }, printed: '120' },
    { at: { food: 'lentils' }, printed: '198' },
    { at: { food: 'quinoa' }, printed: '185' },
  ],
};
