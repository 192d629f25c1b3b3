import { expect, it } from 'vitest';

/** One test a limit: just outside is refused with the words given, on the limit is not. */
export function refuses(
  what: string,
  call: (value: number) => unknown,
  limits: { least: number; most: number; unit?: string; says: string },
): void {
  const { least, most, unit = '', says } = limits;
  const step = Math.max(1e-6, Math.abs(most - least) * 1e-6);
  const message = (value: number): string => `${says} is ${value}${unit}: outside ${least} to ${most}${unit}.`;

  it(`${what} is refused under ${least} and over ${most}${unit}`, () => {
    for (const value of [least - step, most + step]) {
      expect(() => call(value)).toThrow(RangeError);
      expect(() => call(value)).toThrow(message(value));
    }
    expect(() => call(Number.NaN)).toThrow(message(Number.NaN));
    expect(() => call(least)).not.toThrow();
    expect(() => call(most)).not.toThrow();
  });
}
