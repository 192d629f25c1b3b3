import type { DimensionMeaning } from '../../data/words/words.js';
import type { Given } from '../../model/given.js';
import type { ItemKind } from '../../model/item.js';
import { phrase } from '../../model/phrase.js';
import { assumed, stated } from '../../reading/items/draft.js';
import type { Bare } from '../../reading/quantities/measures.js';
import { NUMBER, SIGN } from '../tokens/tokens.js';
import type { Figure, Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Claim, Place } from './claim.js';
import { rule } from './rule.js';
import type { Scene, Tie } from './scene.js';
import { isVessel } from './vessels.js';

const ROUND: ReadonlySet<ItemKind> = new Set([
  ...(['pot', 'mug', 'kettle', 'pan', 'bowl', 'bottle', 'lid', 'stove', 'other-cook'] as const),
]);

/** One length of a group: its value, mm, and its tokens. */
interface Side {
  readonly value: number;
  readonly place: Place;
}

export const sizes = rule({
  id: 'sizes',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const lengths = scene.figuresOf(
        thing,
        ({ unit }) => unit.dimension === 'length' && unit.id !== 'm' && unit.id !== 'ft',
      );
      return crossed(scene.row, lengths).flatMap((group) => groupClaims(scene, thing, group.figures, group.tie));
    }),
  examples: [
    ['- pot 14 cm x 9 cm', 'pot Ø140 h90'],
    ['- pan 24 cm', 'pan Ø240'],
    ['- Mess tin 17x13x6 cm', 'pot h60 box 170×130'],
    ['- stove 95 g, flame ring 41 mm, arms 120 mm', 'stove 95 g burner 41 supports 120'],
    ['- mug 9 cm high, 8 cm across', 'mug Ø80 h90'],
  ],
  not: [
    ['- pot with 20 cm handle', 'pot handles'],
    ['- windscreen 25 cm', 'windscreen size 250'],
  ],
});

/** Lengths joined by ×: "14 cm × 9 cm", "12 cm high × 18 cm Ø". */
function crossed(row: Row, lengths: readonly { figure: Figure; tie: Tie }[]): { figures: Figure[]; tie: Tie }[] {
  const groups: { figures: Figure[]; tie: Tie }[] = [];
  for (const { figure, tie } of lengths) {
    const last = groups.at(-1)?.figures.at(-1);
    let times = false;
    if (last !== undefined && figure.first - last.last <= 4)
      for (let at = last.last + 1; at < figure.first; at++) times ||= row.is(at, '×', 'x');
    if (times) groups.at(-1)!.figures.push(figure);
    else groups.push({ figures: [figure], tie });
  }
  return groups;
}

/** A griddle or a board of 26 × 20 cm: nothing flat is so high. */
const HIGHEST_FLAT_MM = 120;

function groupClaims(scene: Scene, thing: Thing, figures: readonly Figure[], tie: Tie): Claim[] {
  const [first] = figures;
  const last = figures.at(-1);
  if (first === undefined || last === undefined) return [];
  const sides = figures.flatMap(({ values, at, joined, last }): Side[] =>
    (joined === 'range' ? values.slice(0, 1) : values).map((value, i) => {
      const place = at[i] ?? last;
      return { value, place: [place, i === values.length - 1 ? last : place] };
    }),
  );
  const [a, b, c] = sides;
  if (a === undefined) return [];
  if (figures.some(({ joined }) => joined === 'list')) {
    const one = thing.kind === 'pot' || thing.kind === 'mug' || thing.kind === 'kettle';
    const alone = one && sides.length === 2 && thing.many !== true && sizesIn(scene, thing).length < 2;
    return alone && b !== undefined ? pairClaims(scene, thing, a, b, tie, true) : [];
  }
  const flat = thing.kind === 'pan' && sides.length === 2 && sides.every(({ value }) => value > HIGHEST_FLAT_MM);
  if (b !== undefined && (c !== undefined || flat)) {
    const span = scene.row.span(first.first, last.last);
    const box = scene.claim(
      'sizes',
      thing,
      'boxMm',
      stated([a.value, b.value] as const, span),
      [a.place, b.place],
      tie,
    );
    if (c === undefined || !isVessel(thing.kind)) return [box];
    return [box, scene.claim('sizes', thing, 'heightMm', stated(c.value, span), [c.place], tie)];
  }
  if (b !== undefined) return ROUND.has(thing.kind) ? pairClaims(scene, thing, a, b, tie, false) : [];
  return oneClaim(scene, thing, first, tie);
}

function sizesIn(scene: Scene, thing: Thing): readonly number[] {
  return scene.figuresOf(thing, ({ unit }) => unit.dimension === 'volume').flatMap(({ figure }) => figure.values);
}

const UNTOLD = phrase`the text does not say which is the diameter; the order nearer to the stated capacity, or Ø first`;

/** Two sides: which is the diameter a word tells, else the order of the list so far, else the capacity. */
function pairClaims(scene: Scene, thing: Thing, a: Side, b: Side, tie: Tie, slashed: boolean): Claim[] {
  const { row, order } = scene;
  const [labelA, labelB] = [labelOf(scene, thing, a.place), labelOf(scene, thing, b.place)];
  const labelled = labelA !== undefined || labelB !== undefined;
  let heightFirst = order.heightFirst;
  if (labelA === 'height' || labelB === 'diameter') heightFirst = true;
  else if (labelA === 'diameter' || labelB === 'height') heightFirst = false;
  else if (!heightFirst) heightFirst = nearerTurned(sizesIn(scene, thing), a.value, b.value);
  if (labelled) order.heightFirst = heightFirst;
  const told = labelled || order.heightFirst;
  const tall = thing.kind === 'pot' && (heightFirst ? b.value < a.value : a.value < b.value);
  const given = ({ value, place }: Side) =>
    !slashed && (told || !(tall || heightFirst))
      ? stated(value, row.span(...place))
      : assumed(value, UNTOLD, phrase`write which of the two is the diameter`, row.span(...place));
  const [diameter, height] = heightFirst ? [b, a] : [a, b];
  return [
    scene.claim('sizes', thing, 'diameterMm', given(diameter), [diameter.place], tie),
    scene.claim('sizes', thing, 'heightMm', given(height), [height.place], tie),
  ];
}

/** mm: outer sizes are rounded to the centimetre, or half of it. */
const ROUNDED = 5;

/** Whether height × diameter comes nearer to the stated capacity, and can hold it. */
function nearerTurned([capacity, ...more]: readonly number[], x: number, y: number): boolean {
  if (capacity === undefined || more.length > 0) return false;
  const volume = (d: number, h: number) => (Math.PI * d * d * h) / 4000;
  if (volume(y + ROUNDED, x + ROUNDED) < capacity) return false;
  const off = (v: number) => Math.abs(Math.log(v / capacity));
  return off(volume(y, x)) + 0.05 < off(volume(x, y));
}

/** mm: an unlabelled length of a vessel is its width between these. */
const WIDTHS = [75, 450] as const;

function oneClaim(scene: Scene, thing: Thing, figure: Figure, tie: Tie): Claim[] {
  const { first, last, values, joined } = figure;
  const [value = 0, most] = values;
  const given = stated(value, scene.row.span(first, last), joined === 'range' ? most : undefined);
  const field = fieldOf(thing.kind, labelOf(scene, thing, [first, last]), value);
  return field === undefined ? [] : [scene.claim('sizes', thing, field, given, [[first, last]], tie)];
}

type Length = 'diameterMm' | 'heightMm' | 'baseDiameterMm' | 'sizeMm' | 'burnerMm' | 'supportsMm';
const FIELDS: Readonly<Partial<Record<DimensionMeaning, Length>>> = {
  diameter: 'diameterMm',
  height: 'heightMm',
  base: 'baseDiameterMm',
  burner: 'burnerMm',
  supports: 'supportsMm',
};

function fieldOf(kind: ItemKind, label: DimensionMeaning | undefined, value: number): Length | undefined {
  if (label === 'ignore') return undefined;
  if (label !== undefined) return kind === 'windscreen' && label === 'diameter' ? 'sizeMm' : FIELDS[label];
  const wide = kind === 'pot' || kind === 'lid' || kind === 'bowl' || kind === 'other-cook';
  const across = kind === 'pan' || (wide && value >= WIDTHS[0] && value <= WIDTHS[1]);
  return across ? 'diameterMm' : 'sizeMm';
}

/** What the words beside a length say it is. The nearer word wins; of two as near, the one after. */
function labelOf(scene: Scene, thing: Thing, place: Place): DimensionMeaning | undefined {
  const { row } = scene;
  const [first, last] = place;
  const part = thing.kind === 'stove' ? nearestLabel(row, thing, place, isPart, 3) : undefined;
  const head = part ?? headLabel(row, thing, first);
  if (head !== undefined) return head;
  const numberAfter = row.tokens.kind[last + 2] === NUMBER && last + 2 < row.tokens.n;
  if (row.is(first - 1, 'ø') || (row.is(last + 1, 'ø') && !numberAfter)) return 'diameter';
  const parts = thing.kind === 'stove' || thing.kind === 'windscreen' || thing.kind === 'other-cook';
  return nearestLabel(
    row,
    thing,
    place,
    (meaning) => (meaning === 'burner' ? thing.kind === 'stove' : meaning !== 'supports' || parts),
    5,
  );
}

const isPart = (meaning: DimensionMeaning) => meaning === 'burner' || meaning === 'supports';

function nearestLabel(
  row: Row,
  thing: Thing,
  [first, last]: Place,
  wanted: (meaning: DimensionMeaning) => boolean,
  reach: number,
): DimensionMeaning | undefined {
  const equals = row.is(first - 1, '=', ':') ? 1 : 0;
  let best: DimensionMeaning | undefined;
  let distance = 99;
  for (const word of row.of('dimension')) {
    const meaning = word.value as DimensionMeaning;
    if (!wanted(meaning) || (word.first >= thing.first && word.last <= thing.last)) continue;
    const after = word.first > last;
    if (!after && word.last >= first) continue;
    const gap = after ? word.first - last - 1 : first - word.last - 1 - equals;
    const [from, to] = after ? [last + 1, word.first] : [word.last + 1, first];
    if (gap >= reach || crosses(row, from, to, after)) continue;
    const weight = gap + (after ? 0 : 0.5);
    if (weight >= distance && !(weight < distance + 2 && best === 'diameter' && isPart(meaning))) continue;
    distance = Math.min(distance, weight);
    best = meaning;
  }
  return best;
}

/** "D 16 cm H 9 cm", "dia. 160 mm ht. 90 mm": the word right before a length, which is not right after another. */
function headLabel(row: Row, thing: Thing, first: number): DimensionMeaning | undefined {
  const signed = row.is(first - 1, '.', '=', ':') ? 1 : 0;
  const word = row.ends('dimension', first - 1) ?? (signed === 1 ? row.ends('dimension', first - 2) : undefined);
  if (word?.value !== 'diameter' && word?.value !== 'height' && word?.value !== 'base') return undefined;
  if (word.first >= thing.first && word.last <= thing.last) return undefined;
  const other = row.figures.some(({ unit, last }) => unit.dimension === 'length' && last === word.first - 1);
  return other ? undefined : word.value;
}

/** Another figure or a comma between a length and its word: they do not belong together. */
function crosses(row: Row, from: number, to: number, after: boolean): boolean {
  for (let at = from; at <= to && at < row.tokens.n; at++) {
    if (row.tokens.kind[at] === NUMBER && at < to) return true;
    if (row.breakAt(at) > 1 && !(at === from && !after)) return true;
    if (row.is(at, 'x', '×')) return true;
    if (row.tokens.kind[at] === SIGN && row.is(at, ',', '(', ';')) return true;
  }
  return false;
}

/** Smaller than this a length without a unit is in centimetres, else in millimetres. */
const MOST_CM = 30;

function lengthWithoutUnit(row: Row, { at, value }: Bare, most = MOST_CM): Given<number> {
  const span = row.span(at, at);
  return value < most
    ? assumed(value * 10, phrase`a small number without a unit is taken as centimetres`, phrase`write the unit`, span)
    : assumed(value, phrase`a number without a unit is taken as millimetres`, phrase`write the unit`, span);
}

export const sizesWithoutUnit = rule({
  id: 'sizes-without-unit',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      if (!ROUND.has(thing.kind)) return [];
      const claims = row.bare.flatMap((number): Claim[] => {
        const tie = scene.tie(thing, number.at, number.at);
        const meaning = tie === undefined ? undefined : meaningOf(row, thing, number);
        if (tie === undefined || number.value <= 0 || (meaning !== 'diameter' && meaning !== 'height')) return [];
        const field = meaning === 'diameter' ? 'diameterMm' : 'heightMm';
        const given = lengthWithoutUnit(row, number);
        return [
          scene.claim('sizes-without-unit', thing, field, given, [[number.at, number.at]], { ...tie, strength: 6 }),
        ];
      });
      const measured = scene.figuresOf(thing, ({ unit }) => unit.dimension === 'length').length > 0;
      return measured || !isVessel(thing.kind) || claims.length > 0 ? claims : crossClaims(scene, thing);
    }),
  examples: [
    ['- pot Ø13 x 9', 'pot Ø~130 h~90'],
    ['- pot d=160 h=110', 'pot Ø~160 h~110'],
    ['- Pfanne 24', 'pan Ø~240'],
    ['- Topf 18x11', 'pot Ø~180 h~110'],
  ],
  not: [
    ['- 2 x 4 mugs', 'mug ×4'],
    ['- pan 2', 'pan'],
  ],
});

function meaningOf(row: Row, thing: Thing, number: Bare): DimensionMeaning | undefined {
  const { at } = number;
  if (row.is(at - 1, 'ø')) return 'diameter';
  if (row.is(at - 1, '×', 'x') && row.tokens.kind[at - 2] === NUMBER && row.is(at - 3, 'ø')) return 'height';
  if (thing.kind === 'pan' && isWidthOfPan(row, thing, number)) return 'diameter';
  const labelled = row.is(at - 1, '=', ':');
  const word =
    row.ends('dimension', at - 1) ?? (labelled || row.is(at - 1, '.') ? row.ends('dimension', at - 2) : undefined);
  return word !== undefined && (labelled || isNamed(row, number, word.first))
    ? (word.value as DimensionMeaning)
    : undefined;
}

/** Less, right after a word, may be a count. */
const LEAST_CM = 5;
/** A shorter word is a letter, which says nothing unless it is tied to its number. */
const SHORTEST_NAME = 3;

/** "h12", "diam. 16": a word and its number, and nothing that the number might count. */
function isNamed(row: Row, { at, value }: Bare, word: number): boolean {
  const tied = row.tokens.gap[at] === 0;
  const counts = row.tokens.isWord(at + 1) && !row.is(at + 1, 'x') && row.opens('dimension', at + 1) === undefined;
  return value >= LEAST_CM && (row.tokens.fold(word).length >= SHORTEST_NAME || tied) && !counts;
}

/** Pans are named by their width, in centimetres from here to there. */
const PANS = [14, 40] as const;

/** "Pfanne 24", "24er Pfanne", "poêle de 24". */
function isWidthOfPan(row: Row, thing: Thing, { at, value, number }: Bare): boolean {
  if (!number.whole || value < PANS[0] || value > PANS[1]) return false;
  if (row.is(at + 1, 'er') && row.tokens.gap[at + 1] === 0) return true;
  const close = at > thing.last && at - thing.last <= 2 && thing.many === false;
  const ends = at + 1 >= row.tokens.n || (row.tokens.kind[at + 1] === SIGN && !row.is(at + 1, '×', '/'));
  return close && ends && row.breakAt(at) === 0;
}

/** Sides of a vessel are between these; below the last, those that go together are centimetres. */
const SIDES = [5, 450] as const;
const MOST_SIDE_CM = 60;

/** "Topf 18x11", "Mess tin 17 x 13 x 6": numbers of the size of a vessel's sides, joined by ×, with no unit. */
function crossClaims(scene: Scene, thing: Thing): Claim[] {
  const { row } = scene;
  const sides: Bare[] = [];
  for (const number of row.bare) {
    if (number.value < SIDES[0] || number.value > SIDES[1] || scene.tie(thing, number.at, number.at) === undefined)
      continue;
    const joined = sides.at(-1)?.at === number.at - 2 && row.is(number.at - 1, 'x', '×');
    if (!joined && sides.length > 1) break;
    if (!joined) sides.length = 0;
    sides.push(number);
  }
  const most = sides.every(({ value }) => value < MOST_SIDE_CM) ? MOST_SIDE_CM : 0;
  const [a, b, c] = sides.slice(0, 3).map((side) => lengthWithoutUnit(row, side, most));
  if (a?.grounds !== 'assumed' || b?.grounds !== 'assumed') return [];
  const tie = { strength: 6, distance: 0 };
  const claim = (field: 'diameterMm' | 'heightMm', given: Given<number>, i: number) =>
    scene.claim('sizes-without-unit', thing, field, given, [[sides[i]!.at, sides[i]!.at]], tie);
  if (c !== undefined) {
    const box = { ...a, value: [a.value, b.value] as const };
    const places: Place[] = [sides[0]!, sides[1]!].map(({ at }) => [at, at]);
    return [scene.claim('sizes-without-unit', thing, 'boxMm', box, places, tie), claim('heightMm', c, 2)];
  }
  const turned = scene.order.heightFirst || nearerTurned(sizesIn(scene, thing), a.value, b.value);
  return [claim(turned ? 'heightMm' : 'diameterMm', a, 0), claim(turned ? 'diameterMm' : 'heightMm', b, 1)];
}
