import type { PrintedTable } from '../figure.js';

const GREET = {
  source: 'greet',
  title: 'GREET model: lower and higher heating values of fuels',
  seen: 'reprint of the Hydrogen Analysis Resource Center',
} as const;

export const LOWER_BTU_PER_LB: PrintedTable = {
  ...GREET,
  place: 'petroleum naphtha, lower heating value',
  quantity: 'heating value',
  unit: 'Btu/lb',
  tolerance: { by: '5', because: 'core carries 44.93 MJ/kg, rounded to four figures' },
  rows: [{ at: { substance: 'white-gas', basis: 'lower' }, printed: '19320' }],
};

export const HIGHER_BTU_PER_LB: PrintedTable = {
  ...GREET,
  place: 'petroleum naphtha, higher heating value',
  quantity: 'heating value',
  unit: 'Btu/lb',
  tolerance: { by: '10', because: 'core carries 48.06 MJ/kg, rounded to four figures' },
  rows: [{ at: { substance: 'white-gas', basis: 'higher' }, printed: '20669' }],
};

export const NAPHTHA_DENSITY: PrintedTable = {
  ...GREET,
  place: 'petroleum naphtha, density',
  quantity: 'density',
  unit: 'g/US gal',
  tolerance: { by: '1', because: 'core carries 725 kg/m³, rounded to three figures' },
  rows: [{ at: { ml: '3785.411784' }, printed: '2745' }],
};

export const MJ_PER_KG: PrintedTable = {
  ...GREET,
  place: 'fuels that core has from another source',
  quantity: 'heating value',
  unit: 'MJ/kg',
  tolerance: { by: '1 %', because: 'core carries the CRC Handbook’s values, the two sources differ by up to 1 %' },
  rows: [
    { at: { substance: 'ethanol', basis: 'lower' }, printed: '26.95' },
    { at: { substance: 'ethanol', basis: 'higher' }, printed: '29.84' },
    { at: { substance: 'methanol', basis: 'lower' }, printed: '20.09' },
    { at: { substance: 'methanol', basis: 'higher' }, printed: '22.88' },
    { at: { substance: 'propane', basis: 'lower' }, printed: '46.60' },
    { at: { substance: 'propane', basis: 'higher' }, printed: '50.14' },
  ],
};
