import { MISSING, type Given } from '../../../core/model/given.js';
import type { Item } from '../../../core/model/item.js';
import type { Reading } from '../../../core/model/reading.js';

export const stated = <T>(value: T): Given<T> => ({ grounds: 'stated', value, span: [0, 1] });

/** An item that says nothing but its kind, and what is given. */
export function item(kind: Item['kind'], given: Partial<Item> = {}): Item {
  return {
    kind,
    line: 1,
    span: [0, 3],
    carried: true,
    quantity: stated(1),
    perPerson: false,
    capacitiesMl: [],
    massG: MISSING,
    diameterMm: MISSING,
    baseDiameterMm: MISSING,
    heightMm: MISSING,
    boxMm: MISSING,
    sizeMm: MISSING,
    burnerMm: MISSING,
    supportsMm: MISSING,
    material: MISSING,
    bail: MISSING,
    lid: MISSING,
    handles: MISSING,
    stoveType: MISSING,
    stoveForm: MISSING,
    fuelType: MISSING,
    gasMix: MISSING,
    gasShares: MISSING,
    fuelMassG: MISSING,
    fuelVolumeMl: MISSING,
    ...given,
  };
}

/** A reading of these items, all on one line of a text of three letters. */
export function readingOf(...items: Item[]): Reading {
  return {
    items,
    passing: [],
    lines: [{ number: 1, span: [0, 3], use: 'used' }],
    trip: {},
    languages: ['en'],
    units: 'metric',
    notes: [],
  };
}
