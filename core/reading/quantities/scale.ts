import type { NumberText } from '../text/numbers.js';
import type { System, Unit } from './units.js';

/** The value of a number before its unit: "1.350 ml" is 1350, "1.350 l" is 1.35. */
export function valueBefore(number: NumberText, unit: Unit): number {
  if (number.thousands === undefined) return number.value;
  return unit.id === 'g' ||
    unit.id === 'ml' ||
    unit.id === 'mm' ||
    unit.id === 'm' ||
    unit.id === 'ft' ||
    unit.id === 'other'
    ? number.thousands
    : number.value;
}

export function factorOf(unit: Unit, system: System): number {
  return system === 'imperial' ? (unit.imperial ?? unit.factor) : unit.factor;
}

export function toScale(value: number, unit: Unit, factor: number): number {
  if (unit.id === 'f') return ((value - 32) * 5) / 9;
  return unit.dimension === 'ounce' ? value : value * factor;
}
