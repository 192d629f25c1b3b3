import type { InputProblem } from '../model/report.js';

/** What a figure may be, in its own unit, and where such figures usually lie. */
export interface Limits {
  readonly least: number;
  readonly most: number;
  /** Between these a slip of a decimal place would land. */
  readonly usual: readonly [number, number];
  readonly unit: string;
  /** What it is compared with: "any pot". */
  readonly than: string;
}

/** Slips met in typing: a missing or doubled nought, centimetres or metres for millimetres, litres for millilitres. */
const SLIPS = [10, 0.1, 100, 0.01, 1000, 0.001];

/**
 * What is wrong with a figure outside its limits, and the likely cure; null where it is within them.
 * "8 mm is less than any pot; 80?"
 */
export function outOfLimits(field: string, typed: string, value: number, limits: Limits): InputProblem | null {
  if (value >= limits.least && value <= limits.most) return null;
  const cure = SLIPS.map((slip) => tidy(value * slip)).find(
    (slipped) => slipped >= limits.usual[0] && slipped <= limits.usual[1],
  );
  const shown = `${tidy(value)}${limits.unit === '' ? '' : `\u00a0${limits.unit}`}`.replace('-', '−');
  const compared = value < limits.least ? 'less' : 'more';
  return {
    field,
    value: typed,
    message: `${shown} is ${compared} than ${limits.than}${cure === undefined ? '.' : `; ${String(cure).replace('-', '−')}?`}`,
  };
}

function tidy(value: number): number {
  return Number(value.toPrecision(6));
}
