import type { Check } from '../model/check.js';

/** Every check, in the order of the table. */
export const CHECKS: readonly Check[] = [];
