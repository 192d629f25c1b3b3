import { describe, expect, it } from 'vitest';
import { assertWithin } from '../../../core/physics/range.js';

describe('assertWithin', () => {
  it('lets pass what lies within, limits included', () => {
    for (const value of [1, 1.5, 2]) expect(() => assertWithin('The width', value, 1, 2, ' mm')).not.toThrow();
  });

  it('names the value and the limits, with the unit', () => {
    expect(() => assertWithin('The width', 3, 1, 2, ' mm')).toThrow('The width is 3 mm: outside 1 to 2 mm.');
    expect(() => assertWithin('The width', 0, 1, 2, ' mm')).toThrow(RangeError);
  });

  it('needs no unit', () => {
    expect(() => assertWithin('The share', 3, 0, 1)).toThrow('The share is 3: outside 0 to 1.');
  });

  it('refuses what is no number', () => {
    expect(() => assertWithin('The width', Number.NaN, 1, 2)).toThrow('The width is NaN: outside 1 to 2.');
    expect(() => assertWithin('The width', Infinity, 1, 2)).toThrow(RangeError);
  });
});
