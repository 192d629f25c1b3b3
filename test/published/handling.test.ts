import { describe } from 'vitest';
import { needsTwoHandles, scaldSeconds } from '../../core/physics/handling.js';
import { column, compare } from './figure.js';
import { HANDLES } from './figures/en-12983-1.js';
import { CPSC, SCALD } from './figures/moritz-henriques.js';

describe('hot water on skin', () => {
  compare(SCALD, (row) => scaldSeconds(column(row, 't/°C'))!);
  compare(CPSC, (row) => scaldSeconds((column(row, 't/°F') - 32) / 1.8)!);
});

describe('handles', () => {
  compare(HANDLES, (row) => (needsTwoHandles(column(row, 'capacity/L') * 1000, column(row, 'filled/kg')) ? 2 : 1));
});
