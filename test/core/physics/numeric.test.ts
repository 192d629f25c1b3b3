import { describe, expect, it } from 'vitest';
import { polynomial, polynomialIntegral, solveRising } from '../../../core/physics/numeric.js';

describe('polynomial', () => {
  it('sums c0 + c1 x + c2 x²', () => {
    expect(polynomial([1, 2, 3], 2)).toBe(17);
    expect(polynomial([5], 100)).toBe(5);
    expect(polynomial([], 3)).toBe(0);
  });
});

describe('polynomialIntegral', () => {
  it('is the area from 0: c0 x + c1 x²/2 + c2 x³/3', () => {
    expect(polynomialIntegral([1, 2, 3], 2)).toBeCloseTo(2 + 4 + 8, 12);
    expect(polynomialIntegral([4], -1)).toBe(-4);
    expect(polynomialIntegral([1, 2], 0)).toBe(0);
  });
});

describe('solveRising', () => {
  it('finds where a rising function passes a value', () => {
    expect(solveRising((x) => x ** 3, 8, 0, 10)).toBeCloseTo(2, 12);
    expect(solveRising((x) => 2 * x - 1, -3, -5, 5)).toBeCloseTo(-1, 12);
  });

  it('ends at an end of the interval where the value lies outside', () => {
    expect(solveRising((x) => x, 20, 0, 10)).toBeCloseTo(10, 9);
    expect(solveRising((x) => x, -20, 0, 10)).toBeCloseTo(0, 9);
  });
});
