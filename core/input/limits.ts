import { phrase } from '../model/phrase.js';
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
  const likely = cure === undefined ? undefined : String(cure).replace('-', '−');
  const message =
    value < limits.least
      ? likely === undefined
        ? phrase`${shown} is less than ${limits.than}.`
        : phrase`${shown} is less than ${limits.than}; ${likely}?`
      : likely === undefined
        ? phrase`${shown} is more than ${limits.than}.`
        : phrase`${shown} is more than ${limits.than}; ${likely}?`;
  return { field, value: typed, message };
}

/** A value as it was given, for a sentence about it; long ones are cut. */
export function show(value: unknown): string {
  if (typeof value === 'string') return value.slice(0, 60);
  // JSON has no word for NaN and Infinity.
  return typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? typeof value).slice(0, 60);
}

function tidy(value: number): number {
  return Number(value.toPrecision(6));
}

/** What a figure of a pot may be: mL, mm, g. */
export const POT_LIMITS = {
  capacity: { least: 30, most: 100_000, usual: [300, 12_000], unit: 'mL', than: phrase`any pot` },
  diameter: { least: 30, most: 1000, usual: [70, 400], unit: 'mm', than: phrase`any pot` },
  baseDiameter: { least: 20, most: 1000, usual: [60, 400], unit: 'mm', than: phrase`any pot` },
  height: { least: 15, most: 1000, usual: [40, 350], unit: 'mm', than: phrase`any pot` },
  earHeight: { least: 10, most: 1200, usual: [40, 400], unit: 'mm', than: phrase`any pot` },
  mass: { least: 5, most: 50_000, usual: [50, 3000], unit: 'g', than: phrase`any pot` },
} as const satisfies Record<string, Limits>;

/** What a figure of a stove may be: mm. */
export const STOVE_LIMITS = {
  burnerDiameter: { least: 5, most: 800, usual: [20, 200], unit: 'mm', than: phrase`any burner` },
  armInner: { least: 0, most: 1000, usual: [20, 200], unit: 'mm', than: phrase`any stove` },
  armSpan: { least: 20, most: 1500, usual: [60, 400], unit: 'mm', than: phrase`any stove` },
  height: { least: 5, most: 2000, usual: [30, 300], unit: 'mm', than: phrase`any stove` },
  footDiameter: { least: 20, most: 2000, usual: [60, 400], unit: 'mm', than: phrase`any stove` },
} as const satisfies Record<string, Limits>;

/** What one can or bottle of fuel may hold: g, mL. */
export const FUEL_LIMITS = {
  mass: { least: 1, most: 50_000, usual: [50, 2000], unit: 'g', than: phrase`anyone carries in one piece` },
  volume: { least: 1, most: 50_000, usual: [50, 2000], unit: 'mL', than: phrase`anyone carries in one piece` },
} as const satisfies Record<string, Limits>;
