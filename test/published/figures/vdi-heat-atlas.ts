import type { PrintedTable } from '../figure.js';

const row = (gas: string, kPa: readonly string[]): PrintedTable['rows'] =>
  kPa.map((printed, i) => ({ at: { gas, 't/°C': String(-40 + 10 * i) }, printed }));

/** Core uses McGarry's constants of 1983; these rows come from another fit and hold it to account. */
export const VAPOUR_PRESSURE: PrintedTable = {
  source: 'vdi-heat-atlas',
  title: 'VDI Heat Atlas',
  year: 2010,
  place: 'Part D3, Wagner equation',
  quantity: 'vapour pressure',
  unit: 'kPa',
  seen: 'worked out from the data files of an open chemistry library',
  tolerance: { by: '1 %', because: 'two published fits of the same measurements agree to 1 %' },
  rows: [
    ...row('propane', ['111', '168', '245', '345', '474', '637', '837', '1079', '1370']),
    ...row('isobutane', ['28.7', '46.6', '72.4', '108', '157', '221', '302', '405', '532']),
    ...row('butane', ['16.8', '28.2', '45.2', '69.5', '103', '149', '208', '284', '379']),
  ],
};
