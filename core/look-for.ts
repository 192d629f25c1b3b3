import { mealRoom } from './checks/meal-room.js';
import { proportion, suitedShapes } from './checks/proportion.js';
import { stoveFit, suitedBases } from './checks/stove-fit.js';
import { figure, type Messages } from './model/check.js';
import type { Figure, Figures } from './model/finding.js';
import { valueOf } from './model/given.js';
import type { Kit } from './model/kit.js';
import type { GroundedTrip } from './model/trip.js';
import { portionsOf } from './plan/portions.js';
import { fillTemplate, told, type Wording } from './report/format.js';
import { suitedHeights } from './suited-heights.js';

/** A pot with straight walls, outside, mm. */
export interface Shape {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** What pot to look for: the sizes and shapes that room, shape and fit on the stove agree on. */
export interface LookFor {
  /** To the brim, mL, of a pot that holds the least and the full portions in one round. */
  readonly leastMl: number;
  readonly fullMl: number;
  /** The same for the least portions where only water is boiled; null where that is what they do. */
  readonly boilOnlyMl: number | null;
  /** Width to height. */
  readonly ratio: { readonly least: number; readonly best: number | null; readonly most: number };
  /** Width across that suits the stove; null where nothing is known of it, or of one end. */
  readonly widthMm: { readonly least: number | null; readonly most: number | null };
  /** The pot as typed; null where width or height is missing. */
  readonly pot: Shape | null;
  /** The nearest to it that suits; null where it suits itself, nothing does, or there is no pot to be near to. */
  readonly nearest: Shape | null;
  /** All that is said of it, in the language asked for. */
  readonly words: {
    readonly title: string;
    readonly sentences: readonly string[];
    readonly nearest: string | null;
    readonly axes: { readonly width: string; readonly height: string };
    readonly legend: Readonly<Record<'pot' | 'nearest' | 'region' | 'least' | 'full' | 'boilOnly' | 'ratio', string>>;
    readonly widths: string | null;
  };
}

export const LOOK_FOR_MESSAGES = {
  title: 'What to look for',
  room: 'For {who}, {style}: {least} or more to the brim; {full} for full portions.',
  onePerson: 'one person',
  manyPeople: '{people#} people',
  'boil-only': 'water alone',
  simmer: 'when it simmers',
  scratch: 'when it is cooked in',
  'shape-bail': 'On a bail or at a fire 2 : 3 is best, and {ratio#} as wide as tall holds up.',
  'shape-stove': 'On a stove, {ratio#} as wide as tall holds up.',
  'width-both': 'This stove suits {widths} across.',
  'width-least': 'This stove wants {leastWidth} across or more.',
  'width-most': 'This stove carries {mostWidth} across or less.',
  'width-unknown': 'With the width of the burner, the widths that suit it are marked too.',
  nothing: 'No pot is all of that on this stove. Another stove, or two pots.',
  suits: 'This pot is one of them.',
  nearest: '{width} across and {height} tall would do: {brim}.',
  widthAxis: 'width across, {unit}',
  heightAxis: 'height, {unit}',
  'pot-legend': 'this pot; the dotted corner is its outline',
  'nearest-legend': 'the nearest pot that suits',
  'region-legend': 'suits shape and least portions; closer lines, full ones',
  'region-stove-legend': 'suits stove, shape and least portions; closer lines, full ones',
  'least-legend': '{least}: least portions',
  'full-legend': '{full}: full portions',
  'boil-legend': '{boil}: least portions, water alone',
  'ratio-legend': '{ratio#} as wide as tall',
  'widths-legend': '{widths}: suits the stove',
} as const satisfies Messages;

/** Steps in which a pot is looked for, mm: rounder ones first. */
const STEPS_MM = [10, 5, 1] as const;
/** No wider pot is looked for, mm. */
const WIDEST_MM = 1000;

/** What pot to look for, on this trip with this stove; and for the pot of the kit, the nearest that suits. Null for a stove that has its pot already. */
export function lookFor(kit: Kit, trip: GroundedTrip, wording: Wording): LookFor | null {
  const [pot] = kit.pots;
  const [stove] = kit.stoves;
  if (stove !== undefined && valueOf(stove.type) === 'integrated') return null;
  const plan = portionsOf(trip);
  const everybody = valueOf(trip.people) ?? 1;
  const pots = pot === undefined ? 1 : (valueOf(pot.quantity) ?? 1);
  // Each by their own pot, or all parted among alike ones.
  const [people, alike] = pots >= everybody ? [1, 1] : [everybody, pots];
  const brim = (portionMl: number, ceiling = plan.ceiling) => (portionMl * people) / ceiling / alike;
  const boilCeiling = mealRoom.options.boilOnlyCeiling;
  const hung = valueOf(trip.cookAt) === 'fire' || (pot !== undefined && valueOf(pot.bail) === true);
  const lid = pot !== undefined && valueOf(pot.lid) === true;
  const bases = stove === undefined ? { least: 0, most: Infinity } : suitedBases(stove, stoveFit.options);
  const typed = shapeOf(pot);
  const wanted = {
    leastMl: brim(plan.leastMl),
    fullMl: brim(plan.fullMl),
    boilOnlyMl: plan.ceiling < boilCeiling ? brim(plan.leastMl, boilCeiling) : null,
    ratio: suitedShapes(proportion.options, {
      hung,
      burns: stove === undefined ? undefined : valueOf(stove.type),
      lid,
    }),
    widthMm: {
      least: bases.least === 0 ? null : bases.least,
      most: bases.most === Infinity ? null : bases.most,
    },
    pot: typed,
  };
  const suits = typed !== null && isSuited(typed, wanted);
  // A round figure of litres: what is named holds what is said to be needed.
  const rounded = { ...wanted, leastMl: 10 * Math.ceil(wanted.leastMl / 10 - 1e-9) };
  const nearest = typed === null || suits ? null : nearestTo(typed, rounded);
  return { ...wanted, nearest, words: worded({ ...wanted, nearest }, { suits, hung, people, trip }, wording) };
}

type Wanted = Pick<LookFor, 'leastMl' | 'ratio' | 'widthMm'>;

function shapeOf(pot: Kit['pots'][number] | undefined): Shape | null {
  const widthMm = pot && valueOf(pot.diameterMm);
  const heightMm = pot && valueOf(pot.heightMm);
  return widthMm === undefined || heightMm === undefined ? null : { widthMm, heightMm };
}

function isSuited({ widthMm, heightMm }: Shape, wanted: Wanted): boolean {
  const { least, most } = wanted.widthMm;
  if (widthMm < (least ?? 0) || widthMm > (most ?? Infinity)) return false;
  const [low, high] = suitedHeights(widthMm, wanted);
  return heightMm >= low && heightMm <= high;
}

/** The suited pot nearest to a shape, by millimetres of width and height together; in figures as round as there are. */
function nearestTo(pot: Shape, wanted: Wanted): Shape | null {
  for (const step of STEPS_MM) {
    let best: Shape | null = null;
    let distance = Infinity;
    const widest = Math.min(wanted.widthMm.most ?? WIDEST_MM, WIDEST_MM);
    const first = Math.max(step, Math.ceil((wanted.widthMm.least ?? 0) / step) * step);
    for (let widthMm = first; widthMm <= widest; widthMm += step) {
      const [low, high] = suitedHeights(widthMm, wanted);
      const [least, most] = [Math.ceil(low / step) * step, Math.floor(high / step) * step];
      if (least > most) continue;
      const heightMm = Math.min(most, Math.max(least, Math.round(pot.heightMm / step) * step));
      const off = Math.hypot(widthMm - pot.widthMm, heightMm - pot.heightMm);
      if (off >= distance) continue;
      [best, distance] = [{ widthMm, heightMm }, off];
    }
    if (best !== null) return best;
  }
  return null;
}

/** Whether any pot suits: the wider it is, the lower it may stand. */
function isPossible(wanted: Wanted): boolean {
  const widest = wanted.widthMm.most ?? WIDEST_MM;
  const [low, high] = suitedHeights(widest, wanted);
  return low <= high && (wanted.widthMm.least ?? 0) <= widest;
}

function worded(
  wanted: Omit<LookFor, 'words'>,
  on: { readonly suits: boolean; readonly hung: boolean; readonly people: number; readonly trip: GroundedTrip },
  wording: Wording,
): LookFor['words'] {
  const { ratio, nearest } = wanted;
  const { least: leastWidth, most: mostWidth } = wanted.widthMm;
  const mm = (value: number | null) => figure(value ?? 0, 'mm', 0);
  const figures: Figures = {
    who: on.people === 1 ? 'onePerson' : 'manyPeople',
    people: figure(on.people, 'people'),
    style: valueOf(on.trip.mealStyle) ?? 'simmer',
    least: brimFigure(wanted.leastMl),
    full: brimFigure(wanted.fullMl),
    boil: brimFigure(wanted.boilOnlyMl ?? 0),
    ratio: figure({ low: ratio.least, likely: ratio.best ?? ratio.least, high: ratio.most }, '', 2),
    widths: figure({ low: leastWidth ?? 0, likely: leastWidth ?? 0, high: mostWidth ?? leastWidth ?? 0 }, 'mm', 0),
    leastWidth: mm(leastWidth),
    mostWidth: mm(mostWidth),
    width: mm(nearest?.widthMm ?? 0),
    height: mm(nearest?.heightMm ?? 0),
    brim: brimFigure(
      nearest === null ? 0 : Math.floor((Math.PI * nearest.widthMm ** 2 * nearest.heightMm) / 40_000) * 10,
    ),
    unit: wording.units === 'metric' ? 'mm' : 'in',
  };
  const messages = told(LOOK_FOR_MESSAGES, wording);
  const say = (key: keyof typeof LOOK_FOR_MESSAGES) => fillTemplate(messages[key] ?? '', figures, messages, wording);
  const width =
    leastWidth !== null && mostWidth !== null
      ? 'width-both'
      : leastWidth !== null
        ? 'width-least'
        : mostWidth !== null
          ? 'width-most'
          : 'width-unknown';
  return {
    title: say('title'),
    sentences: [
      say('room'),
      say(on.hung ? 'shape-bail' : 'shape-stove'),
      ...(width === 'width-unknown' && on.hung ? [] : [say(width)]),
      ...(isPossible(wanted) ? [] : [say('nothing')]),
      ...(on.suits ? [say('suits')] : []),
    ],
    nearest: nearest === null ? null : say('nearest'),
    axes: { width: say('widthAxis'), height: say('heightAxis') },
    legend: {
      pot: say('pot-legend'),
      nearest: say('nearest-legend'),
      region: say(width === 'width-unknown' ? 'region-legend' : 'region-stove-legend'),
      least: say('least-legend'),
      full: say('full-legend'),
      boilOnly: say('boil-legend'),
      ratio: say('ratio-legend'),
    },
    widths: width === 'width-both' ? say('widths-legend') : null,
  };
}

/** A brim in litres with digits enough to tell portions apart; in millilitres where it is small. */
function brimFigure(ml: number): Figure {
  return ml < 1000 ? figure(Math.ceil(ml / 10 - 1e-9) * 10, 'mL', 0) : figure(Math.ceil(ml / 10 - 1e-9) / 100, 'L', 2);
}
