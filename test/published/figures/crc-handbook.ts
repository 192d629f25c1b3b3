import type { PrintedTable } from '../figure.js';

const CRC = {
  source: 'crc-handbook',
  title: 'CRC Handbook of Chemistry and Physics',
  seen: 'data files of an open chemistry library that name the handbook',
} as const;

export const BOILING_POINTS: PrintedTable = {
  ...CRC,
  place: 'Physical constants of organic compounds',
  quantity: 'normal boiling point',
  unit: '°C',
  tolerance: { by: '0.05', because: 'the vapour pressure is another source’s equation' },
  rows: [
    { at: { gas: 'propane' }, printed: '-42.11' },
    { at: { gas: 'isobutane' }, printed: '-11.70' },
    { at: { gas: 'butane' }, printed: '-0.50' },
  ],
};

/**
 * Standard enthalpies of formation at 25 °C; burning gives CO2 and liquid (higher) or gaseous (lower) water.
 * Canister gases as gas, alcohols as liquid.
 */
export const FORMATION: PrintedTable = {
  ...CRC,
  place: 'Standard thermodynamic properties of chemical substances',
  quantity: 'enthalpy of formation',
  unit: 'kJ/mol',
  rows: [
    { at: { substance: 'propane', C: '3', H: '8', O: '0', 'M/(g/mol)': '44.096' }, printed: '-103.8' },
    { at: { substance: 'butane', C: '4', H: '10', O: '0', 'M/(g/mol)': '58.122' }, printed: '-125.7' },
    { at: { substance: 'isobutane', C: '4', H: '10', O: '0', 'M/(g/mol)': '58.122' }, printed: '-134.2' },
    { at: { substance: 'ethanol', C: '2', H: '6', O: '1', 'M/(g/mol)': '46.068' }, printed: '-277.6' },
    { at: { substance: 'methanol', C: '1', H: '4', O: '1', 'M/(g/mol)': '32.042' }, printed: '-239.2' },
    { at: { substance: '2-propanol', C: '3', H: '8', O: '1', 'M/(g/mol)': '60.095' }, printed: '-318.1' },
  ],
};

/** The products of burning, kJ/mol, from the same table. */
export const PRODUCTS = { carbonDioxide: '-393.5', waterLiquid: '-285.8', waterGas: '-241.8' } as const;

export const WATER_VAPORISATION: PrintedTable = {
  ...CRC,
  place: 'Enthalpy of vaporisation at the normal boiling point',
  quantity: 'latent heat of water',
  unit: 'kJ/mol',
  rows: [{ at: { 't/°C': '99.974', 'M/(g/mol)': '18.015' }, printed: '40.65' }],
};
