import { suitedHeights } from '../../core/figures.js';
import type { LookFor, UnitSystem } from '../../core/index.js';
import { spread, WIDTH } from './drawing-geometry.js';

/** Units kept free beside the chart for its figures, and over and under it. */
const LEFT = 34;
const RIGHT = 56;
const TOP = 26;
const BELOW = 46;
const MOST_HEIGHT = 330;
/** Labels of curves stand so far apart. */
const LABEL_GAP = 14.5;
/** Points of a curve and of the edge of the region. */
const POINTS = 60;
/** Between lines of the grid, in the unit of the axes; the first that gives no more than so many. */
const GRID = { metric: [20, 50, 100, 200, 500], other: [1, 2, 5, 10, 20] } as const;
const MOST_LINES = 12;
/** Lines of the grid from one figure to the next. */
const LINES_A_FIGURE = 3;

/** A place on the chart, mm across and mm tall. */
export type Point = readonly [widthMm: number, heightMm: number];

/** The scale of the chart: the same for both axes, so that a point is the shape of a pot. */
export interface ChartScale {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Height of the whole, in units of the drawing. */
  readonly size: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  readonly gridMm: number;
  /** mm of the unit that the axes are in. */
  readonly unitMm: number;
}

/** A chart that shows pots for full portions of usual shape, the pot itself and the nearest that suits. */
export function chartScale({ fullMl, ratio, widthMm, pot, nearest }: LookFor, units: UnitSystem): ChartScale {
  const shape = ratio.best ?? Math.sqrt(ratio.least * ratio.most);
  const across = Math.cbrt((4000 * fullMl * shape) / Math.PI);
  const shown = [pot, nearest].filter((one) => one !== null);
  const stove = Math.min(widthMm.most ?? widthMm.least ?? 0, 2 * across);
  const wide = Math.max(1.5 * across, 1.25 * stove, ...shown.map((one) => 1.2 * one.widthMm));
  const tall = Math.max((1.6 * across) / shape, ...shown.map((one) => 1.15 * one.heightMm));
  const unitMm = units === 'metric' ? 1 : 25.4;
  const steps = GRID[units === 'metric' ? 'metric' : 'other'];
  const gridMm = unitMm * (steps.find((step) => Math.max(wide, tall) / unitMm <= step * MOST_LINES) ?? steps.at(-1)!);
  const [most, high] = [wide, tall].map((mm) => Math.ceil(mm / gridMm) * gridMm) as [number, number];
  const perMm = Math.min((WIDTH - LEFT - RIGHT) / most, MOST_HEIGHT / high);
  const ground = TOP + high * perMm;
  return {
    widthMm: most,
    heightMm: high,
    size: Math.round(ground + BELOW),
    x: (mm) => LEFT + mm * perMm,
    y: (mm) => ground - mm * perMm,
    gridMm,
    unitMm,
  };
}

/** Lines of the grid along an axis of a length, and the figures at some of them. */
export function gridOf(
  lengthMm: number,
  { gridMm, unitMm }: ChartScale,
): readonly { mm: number; figure: number | null }[] {
  const lines = Math.round(lengthMm / gridMm);
  return Array.from({ length: lines + 1 }, (_, i) => ({
    mm: i * gridMm,
    figure: i % LINES_A_FIGURE === 0 ? Math.round((i * gridMm) / unitMm) : null,
  }));
}

/** The shapes that hold so much to the brim, from the upper edge of the chart to its right one. */
export function holding(ml: number, { widthMm, heightMm }: ChartScale): readonly Point[] {
  const tall = (across: number) => (4000 * ml) / (Math.PI * across ** 2);
  const from = Math.sqrt((4000 * ml) / (Math.PI * heightMm));
  if (from >= widthMm) return [];
  return between(from, widthMm).map((across) => [across, tall(across)] as const);
}

/** The outline of the shapes that suit with room for so much; empty where none does. */
export function regionOf(ml: number, { ratio, widthMm: suited }: LookFor, scale: ChartScale): readonly Point[] {
  const wanted = { leastMl: ml, ratio };
  const from = Math.max(suited.least ?? 0, Math.cbrt((4000 * ml * ratio.least) / Math.PI));
  const to = Math.min(suited.most ?? Infinity, scale.widthMm);
  if (from >= to) return [];
  const edges = between(from, to)
    .map((across) => [across, ...suitedHeights(across, wanted)] as const)
    .filter(([, low, high]) => low <= Math.min(high, scale.heightMm) + 1e-9);
  return [
    ...edges.map(([across, low]) => [across, low] as const),
    ...edges.toReversed().map(([across, , high]) => [across, Math.min(high, scale.heightMm)] as const),
  ];
}

/** Where the ray of a shape leaves the chart. */
export function rayEnd(ratio: number, { widthMm, heightMm }: ChartScale): Point {
  const across = Math.min(widthMm, heightMm * ratio);
  return [across, across / ratio];
}

/** Heights, in units of the drawing, at which the labels of curves that end there stand without touching. */
export function labelHeights(ends: readonly number[]): readonly number[] {
  return spread(ends, LABEL_GAP);
}

function between(from: number, to: number): number[] {
  return Array.from({ length: POINTS + 1 }, (_, i) => from + ((to - from) * i) / POINTS);
}
