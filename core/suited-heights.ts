import type { LookFor } from './look-for.js';

/** The heights at a width that suit, mm: as low as room and shape let it be, and as tall as shape does. */
export function suitedHeights(
  widthMm: number,
  { leastMl, ratio }: Pick<LookFor, 'leastMl' | 'ratio'>,
): readonly [least: number, most: number] {
  const holds = (leastMl * 1000 * 4) / (Math.PI * widthMm ** 2);
  return [Math.max(holds, widthMm / ratio.most), widthMm / ratio.least];
}
