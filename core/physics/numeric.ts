/** c0 + c1 x + c2 x² + … by Horner's rule. */
export function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}

/** Integral of the polynomial from 0 to x. */
export function polynomialIntegral(coefficients: readonly number[], x: number): number {
  return x * coefficients.reduceRight((sum, coefficient, power) => sum * x + coefficient / (power + 1), 0);
}

/** Where a rising function passes `target` between low and high, halved until no number lies between. */
export function solveRising(f: (x: number) => number, target: number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (;;) {
    const middle = (below + above) / 2;
    if (middle <= below || middle >= above) return middle;
    if (f(middle) < target) below = middle;
    else above = middle;
  }
}
