import type { PrintedTable } from '../figure.js';

export const SCALD: PrintedTable = {
  source: 'moritz-henriques',
  title: 'Studies of Thermal Injury II',
  year: 1947,
  place: 'threshold of burning by time and temperature, as tabulated later',
  quantity: 'time to a burn',
  unit: 's',
  seen: 'code and tests that carry the table; three rows in pages',
  rows: [
    { at: { 't/°C': '44' }, printed: '21600' },
    { at: { 't/°C': '48.9' }, printed: '300' },
    { at: { 't/°C': '51.7' }, printed: '120' },
    { at: { 't/°C': '54.4' }, printed: '30' },
    { at: { 't/°C': '57.2' }, printed: '10' },
    { at: { 't/°C': '60' }, printed: '5' },
    { at: { 't/°C': '62.8' }, printed: '3' },
    { at: { 't/°C': '65.6' }, printed: '2' },
    { at: { 't/°C': '68.3' }, printed: '1' },
  ],
};

/** Another body's wording of the same: 130 °F 30 s, 140 °F 6 s, 150 °F 2 s. */
export const CPSC: PrintedTable = {
  source: 'cpsc-scalds',
  title: 'Avoiding Tap Water Scalds',
  place: 'time to a third-degree burn of adults',
  quantity: 'time to a burn',
  unit: 's',
  seen: 'copy',
  rows: [
    {
      at: { 't/°F': '120' },
      printed: '300',
      tolerance: { by: '5 %', because: 'the other table stands in °C, rounded to a tenth' },
    },
    {
      at: { 't/°F': '130' },
      printed: '30',
      tolerance: { by: '5 %', because: 'the other table stands in °C, rounded to a tenth' },
    },
    {
      at: { 't/°F': '140' },
      printed: '6',
      tolerance: { by: '1', because: 'the sources differ: 5 s is used, the shorter' },
    },
    { at: { 't/°F': '150' }, printed: '2' },
  ],
};
