import type { Range } from '../model/finding.js';

export function eachEnd(value: (end: keyof Range) => number): Range {
  return { low: value('low'), likely: value('likely'), high: value('high') };
}

export function same(value: number): Range {
  return { low: value, likely: value, high: value };
}

export function sumOf(ranges: readonly Range[]): Range {
  return eachEnd((end) => ranges.reduce((sum, range) => sum + range[end], 0));
}

/** End by end the largest; 0 of none. */
export function mostOf(ranges: readonly Range[]): Range {
  return eachEnd((end) => Math.max(0, ...ranges.map((range) => range[end])));
}

export function times(range: Range, by: number): Range {
  return eachEnd((end) => by * range[end]);
}
