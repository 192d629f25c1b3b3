/**
 * Refuses a value outside the range that a formula holds for, and what is no number.
 * @throws RangeError naming the value and the limits.
 */
export function assertWithin(what: string, value: number, least: number, most: number, unit = ''): void {
  if (value >= least && value <= most) return;
  throw new RangeError(`${what} is ${value}${unit}: outside ${least} to ${most}${unit}.`);
}
