import { describe, expect, it } from 'vitest';
import { needsTwoHandles, scaldSeconds } from '../../../core/physics/handling.js';
import { refuses } from './refuse.js';

describe('scaldSeconds', () => {
  it('is none under 44 °C', () => {
    expect(scaldSeconds(43.9)).toBeNull();
    expect(scaldSeconds(0)).toBeNull();
  });
  it('is six hours at 44 °C, five seconds at 60 °C', () => {
    expect(scaldSeconds(44)).toBe(21_600);
    expect(scaldSeconds(60)).toBeCloseTo(5, 9);
  });
  it('is the mean of the logarithms between rows', () => {
    expect(scaldSeconds((57.2 + 60) / 2)).toBeCloseTo(Math.sqrt(50), 9);
    expect(scaldSeconds((65.6 + 68.3) / 2)).toBeCloseTo(Math.sqrt(2), 9);
  });
  it('is a second at most from 68.3 °C: boiling water burns at any altitude', () => {
    for (const tC of [68.3, 70.2, 100]) expect(scaldSeconds(tC)).toBeCloseTo(1, 9);
  });
  refuses('a temperature', scaldSeconds, { least: 0, most: 105, unit: ' °C', says: 'The temperature of the water' });
});

describe('needsTwoHandles', () => {
  it('over 3.75 L or over 5 kg', () => {
    expect(needsTwoHandles(3750, 5)).toBe(false);
    expect(needsTwoHandles(3751, 0)).toBe(true);
    expect(needsTwoHandles(0, 5.01)).toBe(true);
  });
  refuses('a capacity', (ml) => needsTwoHandles(ml, 1), {
    least: 0,
    most: 1_000_000,
    unit: ' mL',
    says: 'The capacity',
  });
  refuses('a mass', (kg) => needsTwoHandles(1000, kg), { least: 0, most: 1000, unit: ' kg', says: 'The filled mass' });
});
