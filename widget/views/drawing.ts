import type { SVGTemplateResult, TemplateResult } from 'lit';
import { formatFigure, formatNumber } from '../../core/figures.js';
import type { FigureUnit, PotFigures, StoveFigures } from '../../core/index.js';
import type { UnitSystem } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { html, nothing, svg } from '../tags.js';
import {
  bailRise,
  outlineOf,
  radiusAt,
  scaleOf,
  sketchScale,
  spread,
  ticks,
  waterStrokes,
  WIDTH,
  type Outline,
  type Scale,
} from './drawing-geometry.js';

/** What every part of a drawing needs. Heights with `base` are over the pot's base, with `scale.y` over the ground. */
interface Sheet {
  readonly pot: PotFigures;
  readonly stove: StoveFigures | null;
  readonly outline: Outline;
  readonly scale: Scale;
  readonly words: Words['drawing'];
  readonly wording: Wording;
  readonly base: (mm: number) => number;
  /** Where the words beside the wall begin. */
  readonly wordsAt: number;
}

/** How the figures in it are written. */
type Wording = Parameters<typeof formatFigure>[1];

/** Lowest label beside the wall, for what stands under it. */
interface Labels {
  readonly parts: SVGTemplateResult;
  readonly lowest: number;
}

/** How much of an upright stove's height its canister takes, about. */
const CANISTER_SHARE = 0.58;
const RULER = { x: 4, end: 28 } as const;

/**
 * A pot in section, to scale, on its stove as far as that is known; nothing where the pot's width or height is missing.
 * Every figure in it stands in its label too.
 */
export function drawing(
  pot: PotFigures,
  stove: StoveFigures | null,
  units: UnitSystem,
  { drawing: words, ...all }: Words,
): TemplateResult | typeof nothing {
  const outline = outlineOf(pot);
  if (outline === null) return nothing;
  const scale = scaleOf(outline, stove, pot.bail === true ? bailRise(outline) : pot.lid === true ? 16 : 4);
  const base = (mm: number) => scale.y(scale.standMm + mm);
  const wordsAt = scale.x(Math.max(outline.rim, outline.base) / 2) + 14;
  const wording = { units, locale: all.locale, language: all.language };
  const sheet: Sheet = { pot, stove, outline, scale, words, wording, base, wordsAt };
  const labels = wallLabels(sheet);
  const gauge = gaugeOf(sheet);
  const height = Math.round(scale.y(0) + (gauge === nothing ? 28 : 66));
  return html`<figure>
    <svg class="draw" viewBox="0 0 ${WIDTH} ${height}" role="img" aria-label=${described(sheet)}>
      <defs>
        <pattern id="suits" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line class="hatch" x1="0" y1="0" x2="0" y2="5" />
        </pattern>
      </defs>
      ${water(sheet)}${line(scale.x(0), scale.y(-4), scale.x(0), 4, 'axis')}${stand(sheet)}${gauge}${vessel(sheet)}
      ${fillLine(sheet)}${labels.parts}${leans(sheet, labels.lowest)}${ruler(sheet)}
    </svg>
    <figcaption>${scale.standMm > 0 ? words.caption : words.captionAlone}</figcaption>
  </figure>`;
}

/** The same pot, small and alone: its walls, its fill and its width. */
export function sketch(
  pot: PotFigures,
  units: UnitSystem,
  { verdict: words, locale, language }: Words,
): TemplateResult | typeof nothing {
  const outline = outlineOf(pot);
  if (outline === null) return nothing;
  const { scale, width, height } = sketchScale(outline);
  const base = (mm: number) => scale.y(mm);
  const mm = (value: number) => show(value, 'mm', { units, locale, language });
  const [left, right, under] = [scale.x(-outline.rim / 2), scale.x(outline.rim / 2), base(0) + 14];
  return html`<figure class="mini" part="drawing">
    <svg
      class="draw"
      viewBox="0 0 ${width} ${height}"
      role="img"
      aria-label=${words.sketch(mm(outline.rim), mm(outline.height), pot.fillMm === null ? null : mm(pot.fillMm))}
    >
      ${water({ pot, outline, scale })}${
        pot.fillMm === null
          ? nothing
          : line(
              scale.x(-radiusAt(outline, pot.fillMm)),
              base(pot.fillMm),
              scale.x(radiusAt(outline, pot.fillMm)),
              base(pot.fillMm),
              'fill',
            )
      }${vessel({ pot: { ...pot, bail: null, lid: null }, outline, scale, base })}
      ${across(left, right, under)}${text(width / 2, under + 17, mm(outline.rim), 'q', 'middle')}
    </svg>
  </figure>`;
}

function water({ pot, outline, scale }: Pick<Sheet, 'pot' | 'outline' | 'scale'>): SVGTemplateResult | typeof nothing {
  if (pot.fillMm === null) return nothing;
  const strokes = waterStrokes(outline, scale, pot.fillMm);
  return svg`<g class="water">${strokes.map(([from, to, y]) => line(from, y, to, y, 'w'))}</g>`;
}

/** Ground, feet and arms seen along their weakest side, burner and flames: as much as is known. */
function stand({ outline, stove, scale, base }: Sheet): SVGTemplateResult | typeof nothing {
  const { x, y, perMm, standMm } = scale;
  const ground = y(0);
  const hatching = Array.from({ length: Math.floor((WIDTH - 30) / 9) }, (_, i) => 20 + i * 9);
  const floor = svg`${line(12, ground, WIDTH - 6, ground, 'edge')}${hatching.map((at) => line(at, ground, at - 5, ground + 5, 'hair'))}`;
  if (stove === null || standMm === 0) return floor;
  const under = base(0) + 2.5;
  const reach = Math.min(stove.armSpanMm ?? outline.base, outline.base + 12) / 2;
  const weak = Math.min(reach, (stove.armSpanMm ?? outline.base) / 2) * Math.max(stove.supportShare, 0.3);
  const foot = (stove.footMm ?? 0) / 2;
  const upright = stove.form === 'upright';
  const legs = upright
    ? canister(x, y, foot, standMm)
    : foot === 0
      ? nothing
      : svg`${line(x(-foot), ground, x(-reach), under, 'leg')}${line(x(foot * Math.max(stove.supportShare, 0.3)), ground, x(weak), under, 'leg')}`;
  return svg`${floor}${legs}${line(x(-reach), under, x(weak), under, 'leg')}${
    stove.burnerMm === null
      ? nothing
      : burner(stove.burnerMm / 2, x, upright ? y(standMm * CANISTER_SHARE) : ground, under, perMm)
  }`;
}

/** What an upright stove stands on, round: only its width and the height of the whole are to scale. */
function canister(x: Scale['x'], y: Scale['y'], foot: number, standMm: number): SVGTemplateResult | typeof nothing {
  if (foot === 0) return nothing;
  const top = y(standMm * CANISTER_SHARE);
  return svg`${path(`M${n(x(-foot))} ${n(y(0) - 4)}V${n(top + 14)}Q${n(x(-foot))} ${n(top)} ${n(x(-foot / 3))} ${n(top)}H${n(x(foot / 3))}Q${n(x(foot))} ${n(top)} ${n(x(foot))} ${n(top + 14)}V${n(y(0) - 4)}q0 4 -4 4H${n(x(-foot) + 4)}q-4 0 -4 -4Z`, 'solid')}`;
}

function burner(half: number, x: Scale['x'], foot: number, under: number, perMm: number): SVGTemplateResult {
  const top = foot - (foot - under) * 0.48;
  const tongue = Math.min(8, half * perMm * 0.28);
  const flames = [-0.8, -0.28, 0.28, 0.8].map((share) => {
    const at = x(half * share);
    const tip = under + 5;
    const rise = top - tip;
    const side = (sign: number, of: number) => n(at + sign * tongue * of);
    return path(
      `M${side(-1, 0.45)} ${n(top)}C${side(-1, 1)} ${n(top - rise * 0.42)} ${side(-1, 0.2)} ${n(top - rise * 0.62)} ${n(at)} ${n(tip)}C${side(1, 0.2)} ${n(top - rise * 0.62)} ${side(1, 1)} ${n(top - rise * 0.42)} ${side(1, 0.45)} ${n(top)}`,
      'flame',
    );
  });
  const body = `M${n(x(-half))} ${n(top)}V${n(foot - 5)}q0 4 4 4H${n(x(half) - 4)}q4 0 4 -4V${n(top)}Z`;
  return svg`${flames}${path(body, 'solid')}`;
}

/** The gauge under the ground: the burner as a bar, the pot's base over it, and hatched where the base of an open flame's pot ends best. */
function gaugeOf({ outline, stove, scale, words, wording, base }: Sheet): SVGTemplateResult | typeof nothing {
  if (stove === null || stove.burnerMm === null) return nothing;
  const { x } = scale;
  const y = scale.y(0) + 30;
  const half = outline.base / 2;
  const flame = stove.burnerMm / 2;
  const suits = stove.suitsMm;
  const sides = [-1, 1].map(
    (side) =>
      svg`${line(x(side * half), base(0) + 3, x(side * half), y + 12, 'ext')}${
        suits === null
          ? nothing
          : svg`<rect class="band" x=${n(Math.min(x((side * suits[0]) / 2), x((side * suits[1]) / 2)))} y=${n(y - 6)} width=${n(((suits[1] - suits[0]) / 2) * scale.perMm)} height="12" fill="url(#suits)" />`
      }${line(x(side * half), y, x(side * flame), y, 'dim')}`,
  );
  const fits = suits === null ? '' : words.fits(between(...suits, wording));
  const room = x(Math.max((suits?.[1] ?? 0) / 2, half)) + 8;
  const beside = suits !== null && room + fits.length * 7.2 < WIDTH;
  const on = words.on(number(outline.base, 'mm', wording), show(stove.burnerMm, 'mm', wording));
  const under = suits !== null && !beside ? `${on}, ${fits}` : on;
  // Words in the middle stay on the sheet.
  const middle = Math.max(x(0), under.length * 3.6 + 2);
  return svg`${sides}${line(x(-flame), y, x(flame), y, 'bar')}${beside ? text(room, y + 4.5, fits) : nothing}${text(middle, y + 26, under, 'q', 'middle')}`;
}

/** Wall and base cut through; lid on, bail up. */
function vessel({
  pot,
  outline,
  scale: { x },
  base,
}: Pick<Sheet, 'pot' | 'outline' | 'scale' | 'base'>): SVGTemplateResult {
  const [rim, foot] = [outline.rim / 2, outline.base / 2];
  const [top, floor] = [base(outline.height), base(0)];
  const flare = pot.lid === true ? 0 : 3;
  const wall = path(
    `M${n(x(-rim) - flare)} ${n(top)}H${n(x(-rim))}L${n(x(-foot))} ${n(floor - 5)}Q${n(x(-foot))} ${n(floor)} ${n(x(-foot) + 6)} ${n(floor)}H${n(x(foot) - 6)}Q${n(x(foot))} ${n(floor)} ${n(x(foot))} ${n(floor - 5)}L${n(x(rim))} ${n(top)}H${n(x(rim) + flare)}`,
    'cut',
  );
  const y = top - 3.5;
  const lid = svg`${path(`M${n(x(-rim) - 4)} ${n(y + 7)}V${n(y)}H${n(x(rim) + 4)}V${n(y + 7)}`, 'lid')}${path(`M${n(x(0) - 5)} ${n(y)}v-3q0 -6 5 -6t5 6v3`, 'solid')}`;
  return svg`${wall}${pot.lid === true ? lid : nothing}${pot.bail === true ? bail(outline, pot.earMm, x, base) : nothing}`;
}

function bail(outline: Outline, earMm: number | null, x: Scale['x'], base: Sheet['base']): SVGTemplateResult {
  const ears = earMm ?? outline.height * 0.93;
  const at = radiusAt(outline, Math.min(ears, outline.height));
  // A curve through two handles rises to three quarters of their height.
  const handles = base(ears + (outline.height + bailRise(outline) - ears) / 0.75);
  return svg`${path(`M${n(x(-at) - 1)} ${n(base(ears))}C${n(x(-at) - 8)} ${n(handles)} ${n(x(at) + 8)} ${n(handles)} ${n(x(at) + 1)} ${n(base(ears))}`, 'edge')}${[
    -at,
    at,
  ].map((side) => svg`<circle class="ear" cx=${n(x(side))} cy=${n(base(ears))} r="2.6" />`)}`;
}

/** The fill line under its level mark, and the room over it. */
function fillLine({
  pot,
  outline,
  scale: { x, perMm },
  base,
  words,
  wording,
}: Sheet): SVGTemplateResult | typeof nothing {
  const { fillMm } = pot;
  if (fillMm === null) return nothing;
  const wall = radiusAt(outline, fillMm);
  const free = outline.height - fillMm;
  const y = base(fillMm);
  const mark = svg`${line(x(-wall) + 2, y, x(wall) - 2, y, 'fill')}${path(`M${n(x(-wall) + 20)} ${n(y - 1)}l-5.5 -9h11z`, 'level')}`;
  if (free * perMm <= 16)
    return svg`${mark}${text(x(wall) - 12, y + 17, words.free(show(free, 'mm', wording)), 'lbl', 'end')}`;
  const at = x(wall) - 18;
  return svg`${mark}${dimension(at, base(outline.height) + 1, y - 1)}${text(at - 6, (base(outline.height) + y) / 2 + 4.5, show(free, 'mm', wording), 'lbl', 'end')}`;
}

/** What stands at which height, in one column beside the wall. Labels give way to each other; marks never move. */
function wallLabels({ pot, outline, scale: { x }, base, words, wording, wordsAt }: Sheet): Labels {
  const { capacityMl, fillMm, fillMl, needMl, needMm } = pot;
  const wall = (mm: number) => x(radiusAt(outline, mm)) + 4;
  const wanted = [];
  let bracket: SVGTemplateResult | typeof nothing = nothing;
  if (capacityMl !== null) {
    const brim = words.brim(show(capacityMl, 'mL', wording));
    wanted.push({ y: base(outline.height), from: wall(outline.height), words: brim, voice: 'lbl' });
  }
  if (needMm !== null) {
    const [low, high] = needMm;
    const at = Math.max(wall(low), wall(high)) + 5;
    bracket = path(`M${n(at - 5)} ${n(base(high))}H${n(at)}V${n(base(low))}h-5`, 'dim');
    const meal = words.meal(between(...needMl, wording, 'mL'));
    wanted.push({ y: (base(low) + base(high)) / 2, from: at, words: meal, voice: 'q' });
  }
  if (fillMm !== null && fillMl !== null) {
    wanted.push({ y: base(fillMm), from: wall(fillMm), words: words.fill(show(fillMl, 'mL', wording)), voice: 'b' });
  }
  const at = spread(
    wanted.map(({ y }) => y),
    16,
  );
  const labels = wanted.map(
    (label, i) =>
      svg`${path(`M${n(label.from)} ${n(label.y)}H${n(Math.max(label.from, wordsAt))}L${n(wordsAt + 5)} ${n(at[i]!)}`, 'lead')}${text(wordsAt + 8, at[i]! + 4.5, label.words, label.voice)}`,
  );
  return { parts: svg`${bracket}${labels}`, lowest: Math.max(...at, base(outline.height)) };
}

/** Width of the words at a ray, with their distance from it. */
const LEAN_WORDS = 65;

/** How far it leans before it tips and before it spills, as rays from the edge it goes over: beside the pot, or under a wide one. */
function leans(
  { pot, outline, scale, words, wording, wordsAt }: Sheet,
  lowest: number,
): SVGTemplateResult | typeof nothing {
  const { tipDeg, spillDeg, edge } = pot;
  if (tipDeg === null || spillDeg === null || edge === null) return nothing;
  const [px, py] = [scale.x(edge.mm), scale.y(edge.upMm)];
  const [first, last] = [Math.min(tipDeg, spillDeg), Math.max(tipDeg, spillDeg)];
  const mostOut = (WIDTH - 12 - px) / Math.sin(rad(Math.min(last, 80)));
  const beside = Math.min(168, (py - lowest - 22) / Math.cos(rad(first)), mostOut);
  const clear = px + beside * Math.sin(rad(first)) > scale.x(Math.max(outline.rim, outline.base) / 2) + 2;
  const length =
    clear || edge.upMm > 0 ? beside : Math.min(mostOut, (scale.standMm * scale.perMm - 4) / Math.cos(rad(first)));
  const fulcrum = path(`M${n(px)} ${n(py + 1)}l-5 9h10z`, 'fulcrum');
  if (length < 30) return fulcrum;
  const point = (deg: number, r: number) => [px + r * Math.sin(rad(deg)), py - r * Math.cos(rad(deg))] as const;
  const [from, to] = [point(Math.max(first - 3, 0), length), point(Math.min(last + 3, 88), length)];
  const arc = path(`M${n(from[0])} ${n(from[1])}A${n(length)} ${n(length)} 0 0 1 ${n(to[0])} ${n(to[1])}`, 'dim');
  const marks = Array.from({ length: 8 }, (_, i) => (i + 1) * 10)
    .filter((deg) => deg > first - 3 && deg <= last + 2)
    .map((deg) => line(...point(deg, length - 3), ...point(deg, length + 3), 'dim'));
  const rays = [
    { deg: tipDeg, said: words.tips(degrees(tipDeg, wording)), ray: 'ray', voice: 'b' },
    { deg: spillDeg, said: words.spills(degrees(spillDeg, wording)), ray: 'ray thin', voice: 'lbl' },
  ].sort((a, b) => a.deg - b.deg);
  const ends = rays.map(({ deg }) => point(deg, length + 5));
  const apart = spread(
    ends.map(([, y], i) => y + (i === 0 ? -6 : 4)),
    17,
  );
  // Words of a ray that ends under the words beside the wall go below those.
  const beneath = clear || ends.some(([ex]) => ex + LEAN_WORDS > wordsAt);
  const push = beneath ? Math.max(0, lowest + 17 - Math.min(...apart)) : 0;
  const at = apart.map((y) => y + push);
  return svg`${fulcrum}${arc}${marks}${rays.map(({ deg, said, ray, voice }, i) => {
    const [ex, ey] = ends[i]!;
    const x = Math.max(clear ? wordsAt : 0, ex + 5);
    const label =
      x > WIDTH - 58
        ? text(WIDTH - 1, Math.max(ey + 21, at[i]! + 17), said, voice, 'end')
        : text(x, at[i]! + 4.5, said, voice);
    return svg`${line(px, py, ...point(deg, length + 5), ray)}${label}`;
  })}`;
}

/** The ruler, zero at the base: the fill line is read off it; under it, how high the base stands. */
function ruler({ pot, outline, scale, wording, base, words }: Sheet): SVGTemplateResult {
  const { fillMm } = pot;
  const marks = ticks(outline.height, wording.units);
  const top = base(marks.at(-1)?.mm ?? 0);
  const crowded = (marks[1]?.mm ?? 0) * scale.perMm < 2;
  const wall = scale.x(-radiusAt(outline, fillMm ?? 0)) - 3;
  const parts = marks.map(({ mm, size, figure }) => {
    const y = base(mm);
    if (size === 'small' && crowded) return nothing;
    if (size !== 'large') return line(RULER.end, y, RULER.end - (size === 'middle' ? 10 : 5), y, 'hair2');
    const near = fillMm !== null && Math.abs(mm - fillMm) * scale.perMm <= 14;
    return svg`${line(RULER.end - 12, y, RULER.end + 6, y, 'dim')}${near || figure === null ? nothing : text(RULER.end + 9, y + 4.5, figure, 'q')}`;
  });
  const read =
    fillMm === null
      ? nothing
      : svg`${line(RULER.end, base(fillMm), wall, base(fillMm), 'ext')}${text(RULER.end + 9, base(fillMm) + 4.5, number(fillMm, 'mm', wording), 'b')}`;
  const stands =
    scale.standMm === 0
      ? nothing
      : svg`${dimension(RULER.end + 2, base(0) + 1, scale.y(0))}${text(RULER.end - 4, (base(0) + scale.y(0)) / 2 + 8, number(scale.standMm, 'mm', wording), 'q', 'end')}`;
  return svg`<rect class="ruler" x=${RULER.x} y=${n(top)} width=${RULER.end - RULER.x} height=${n(base(0) - top)} />${parts}${read}${text(RULER.x, base(0) + 17, words.unit[wording.units], 'q')}${stands}`;
}

/** All of the drawing's figures in words. */
function described({ pot, stove, outline, wording, words }: Sheet): string {
  const { capacityMl, fillMm, fillMl, needMl, tipDeg, spillDeg } = pot;
  const mm = (value: number) => show(value, 'mm', wording);
  const burnerMm = stove?.burnerMm ?? null;
  return [
    words.shape(mm(outline.rim), mm(outline.height), outline.base === outline.rim ? null : mm(outline.base)),
    burnerMm === null ? '' : words.burner(mm(burnerMm)),
    stove?.heightMm ? words.stands(mm(stove.heightMm)) : '',
    capacityMl === null ? '' : words.holds(show(capacityMl, 'mL', wording), between(...needMl, wording, 'mL')),
    fillMm === null || fillMl === null
      ? ''
      : words.filled(mm(fillMm), show(fillMl, 'mL', wording), mm(outline.height - fillMm)),
    tipDeg === null || spillDeg === null || pot.edge === null
      ? ''
      : words.leans(degrees(tipDeg, wording), degrees(spillDeg, wording)),
    stove?.suitsMm ? words.suits(between(...stove.suitsMm, wording)) : '',
  ]
    .filter(Boolean)
    .join(' ');
}

function show(value: number, unit: FigureUnit, wording: Wording): string {
  return formatFigure(rounded(value, unit), wording);
}

function number(value: number, unit: FigureUnit, wording: Wording): string {
  return formatNumber(rounded(value, unit), wording);
}

function between(low: number, high: number, wording: Wording, unit: FigureUnit = 'mm'): string {
  return formatFigure({ value: { low, likely: low, high }, unit, places: 0 }, wording);
}

function rounded(value: number, unit: FigureUnit) {
  return { value, unit, places: 0 };
}

function degrees(value: number, wording: Wording): string {
  return formatFigure({ value, unit: '°', places: 0 }, wording);
}

function rad(deg: number): number {
  return (deg * Math.PI) / 180;
}

/** A coordinate, to a tenth of a unit. */
function n(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function line(x1: number, y1: number, x2: number, y2: number, kind: string): SVGTemplateResult {
  return svg`<line class=${kind} x1=${n(x1)} y1=${n(y1)} x2=${n(x2)} y2=${n(y2)} />`;
}

function path(d: string, kind: string): SVGTemplateResult {
  return svg`<path class=${kind} d=${d} />`;
}

function text(x: number, y: number, words: string, voice = '', anchor = 'start'): SVGTemplateResult {
  return svg`<text class=${voice} x=${n(x)} y=${n(y)} text-anchor=${anchor}>${words}</text>`;
}

/** A dimension line, level, with an arrowhead at each end. */
function across(x1: number, x2: number, y: number): SVGTemplateResult {
  const heads = `M${n(x1)} ${n(y)}l6 -2.1v4.2ZM${n(x2)} ${n(y)}l-6 -2.1v4.2Z`;
  return svg`${line(x1, y, x2, y, 'dim')}${path(heads, 'tip')}`;
}

/** A dimension line, upright, with an arrowhead at each end. */
function dimension(x: number, y1: number, y2: number): SVGTemplateResult {
  const heads = `M${n(x)} ${n(y1)}l-2.1 6h4.2ZM${n(x)} ${n(y2)}l-2.1 -6h4.2Z`;
  return svg`${line(x, y1, x, y2, 'dim')}${path(heads, 'tip')}`;
}
