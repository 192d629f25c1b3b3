import type { PotFigures, StoveFigures, UnitSystem } from '../../core/index.js';

/** Width of every drawing in its own units: one is a CSS pixel at that width. */
export const WIDTH = 344;
/** Most units a millimetre takes, and the most height that pot and stove together take. */
const MOST_SCALE = 1.5;
const MOST_HEIGHT = 300;
/** Left of the wall stand the ruler and its figures, right of it the words. */
const RULER_SIDE = 68;
const WORDS_SIDE = 138;
const EDGE = 6;

/** A pot whose outline is known, mm. */
export interface Outline {
  readonly rim: number;
  readonly base: number;
  readonly height: number;
}

/** Where millimetres stand in the drawing. One scale holds on both axes; heights are from the ground. */
export interface Scale {
  /** Units of the drawing for a millimetre. */
  readonly perMm: number;
  readonly x: (mm: number) => number;
  readonly y: (mm: number) => number;
  /** Height of the pot's base over the ground, mm; 0 where the stove's is not known. */
  readonly standMm: number;
}

/** null where the pot's width or height is not known: there is nothing to draw to scale. */
export function outlineOf({ rimMm, baseMm, heightMm }: PotFigures): Outline | null {
  return rimMm === null || heightMm === null ? null : { rim: rimMm, base: baseMm ?? rimMm, height: heightMm };
}

/** Radius of the outside at a height over the base, mm. */
export function radiusAt({ rim, base, height }: Outline, mm: number): number {
  return (base + ((rim - base) * mm) / height) / 2;
}

/** How far the bail rises over the rim, mm: somewhat more than half the width, so that it clears a lid. */
export function bailRise({ rim }: Outline): number {
  return rim * 0.58;
}

/** The largest scale at which pot, stove, ruler and words all fit. `above` and `below` are units kept free over the rim and under the ground. */
export function scaleOf(pot: Outline, stove: StoveFigures | null, riseMm: number): Scale {
  const standMm = stove?.heightMm ?? 0;
  const wall = Math.max(pot.rim, pot.base) / 2;
  const foot = standMm > 0 ? (stove?.footMm ?? 0) / 2 : 0;
  const gauge = stove === null ? 0 : (stove.suitsMm?.[1] ?? 2 * (stove.burnerMm ?? 0)) / 2;
  // From the axis outwards: so many units, and so many millimetres.
  const left = [
    [RULER_SIDE, wall],
    [EDGE + 34, foot],
    [EDGE, gauge],
  ] as const;
  const right = [
    [WORDS_SIDE, wall],
    [EDGE, foot],
    [EDGE, gauge],
  ] as const;
  const fits = left.flatMap(([a, mm]) => right.map(([b, more]) => (WIDTH - a - b) / (mm + more)));
  const perMm = Math.min(MOST_SCALE, MOST_HEIGHT / (pot.height + standMm), ...fits);
  const axis = Math.max(...left.map(([units, mm]) => units + mm * perMm));
  const ground = 12 + riseMm * perMm + (pot.height + standMm) * perMm;
  return { perMm, standMm, x: (mm) => axis + mm * perMm, y: (mm) => ground - mm * perMm };
}

/** The scale of the small drawing, and its size: a pot of 130 by 95 mm takes 86 units of its width. */
export function sketchScale({ rim, base, height }: Outline): {
  readonly scale: Scale;
  readonly width: number;
  readonly height: number;
} {
  const most = Math.max(rim, base);
  const perMm = Math.min(0.66, 100 / most, 120 / height);
  const [width, floor] = [Math.max(most * perMm + 16, 72), height * perMm + 8];
  const scale = { perMm, standMm: 0, x: (mm: number) => width / 2 + mm * perMm, y: (mm: number) => floor - mm * perMm };
  return { scale, width, height: Math.round(floor + 36) };
}

export interface Tick {
  readonly mm: number;
  readonly size: 'small' | 'middle' | 'large';
  /** What is written at it; null at all but the large ones. */
  readonly figure: string | null;
}

/** The ruler from the base up, over the rim: every 2 mm, figures every 50; or every eighth of an inch, figures every inch. */
export function ticks(heightMm: number, units: UnitSystem): readonly Tick[] {
  const [step, middle, large, mmOf] = units === 'metric' ? [2, 10, 50, 1] : [1, 4, 8, 25.4 / 8];
  const last = Math.ceil((heightMm / mmOf + middle / 2) / middle) * middle;
  return Array.from({ length: Math.floor(last / step) + 1 }, (_, i) => {
    const at = i * step;
    const size = at % large === 0 ? 'large' : at % middle === 0 ? 'middle' : 'small';
    const figure = size === 'large' ? String(units === 'metric' ? at : at / large) : null;
    return { mm: at * mmOf, size, figure };
  });
}

/** Short level strokes under a level, thinning to the walls: from, to and height in units of the drawing. */
export function waterStrokes(
  pot: Outline,
  scale: Scale,
  fillMm: number,
): readonly (readonly [number, number, number])[] {
  const strokes: [number, number, number][] = [];
  const level = scale.y(scale.standMm + fillMm);
  const floor = scale.y(scale.standMm) - 4;
  for (let row = 1; level + row * 9 <= floor; row++) {
    const y = level + row * 9;
    const wall = radiusAt(pot, fillMm - (row * 9) / scale.perMm);
    const end = scale.x(wall) - 7;
    for (let x = scale.x(-wall) + 8 + (row % 2) * 15; x < end - 3; x += 31) strokes.push([x, Math.min(x + 22, end), y]);
  }
  return strokes;
}

/** Where labels stand so that none is nearer the next than `gap`, in order from the top: those that crowd move apart, each as little as it can. */
export function spread(wanted: readonly number[], gap: number): readonly number[] {
  const order = wanted.map((_, i) => i).sort((a, b) => wanted[a]! - wanted[b]!);
  const at = [...wanted];
  // Each pass carries a push one label on.
  for (let pass = 0; pass < 60; pass++) {
    for (let i = 1; i < order.length; i++) {
      const [upper, lower] = [order[i - 1]!, order[i]!];
      const lack = gap - (at[lower]! - at[upper]!);
      if (lack > 0) {
        at[upper]! -= lack / 2;
        at[lower]! += lack / 2;
      }
    }
  }
  return at;
}
