/**
 * How long skin at a temperature lasts before it is burned, s: Moritz and Henriques 1947 (`moritz-henriques`), as tabulated later.
 * None is burned under 44 °C.
 */
export const SCALD_SECONDS = [
  { waterC: 44, seconds: 6 * 3600 },
  { waterC: 48.9, seconds: 5 * 60 },
  { waterC: 51.7, seconds: 2 * 60 },
  { waterC: 54.4, seconds: 30 },
  { waterC: 57.2, seconds: 10 },
  { waterC: 60, seconds: 5 },
  { waterC: 62.8, seconds: 3 },
  { waterC: 65.6, seconds: 2 },
  { waterC: 68.3, seconds: 1 },
] as const;

/** Cookware above either limit has two handles: EN 12983-1:2000+A1:2004, clause 6 (`en-12983-1`). */
export const TWO_HANDLES = { aboveCapacityMl: 3750, aboveFilledKg: 5 } as const;
