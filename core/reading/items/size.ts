import { phrase } from '../../model/phrase.js';
import type { Measure } from '../quantities/measures.js';
import type { DimensionMeaning } from '../../data/words/words.js';
import { readBareCross, readBareSizes } from './bare-size.js';
import { assumed, isMissing, measuresOf, spanOf, stated, type Draft } from './draft.js';
import { termsOf, type Stretch } from './stretch.js';
import { isVessel } from './things.js';

/** Order in which a list gives its dimensions, once it has said so: Ø × h or h × Ø. */
export interface Order {
  heightFirst: boolean;
}

const ROUND = ['pot', 'mug', 'kettle', 'pan', 'bowl', 'bottle', 'lid', 'stove', 'other-cook'];

/** Reads diameters, heights and boxes; of a stove, the flame and what a pot stands on. */
export function readSizes(stretch: Stretch, draft: Draft, order: Order): void {
  const lengths = measuresOf(stretch, draft).filter(
    (measure) => measure.unit.dimension === 'length' && measure.unit.id !== 'm' && measure.unit.id !== 'ft',
  );
  if (ROUND.includes(draft.kind)) readBareSizes(stretch, draft);
  if (lengths.length === 0 && isVessel(draft.kind)) readBareCross(stretch, draft, order);
  const pairs = paired(stretch, lengths);
  for (const measure of lengths) draft.taken.add(measure.first);
  for (const group of pairs) {
    const values = group.flatMap((measure) =>
      measure.joined === 'range' ? measure.values.slice(0, 1) : measure.values,
    );
    if (group.some((measure) => measure.joined === 'list')) readSlashed(stretch, draft, group, values, order);
    else if (values.length >= 3 || isFlat(draft, values)) readBox(stretch, draft, group, values);
    else if (values.length === 2) readPair(stretch, draft, group, values, order);
    else if (group[0] !== undefined) readOne(stretch, draft, group[0]);
  }
}

/** Measures joined by ×: "14 cm × 9 cm", "12 cm high × 18 cm Ø". */
function paired(stretch: Stretch, lengths: readonly Measure[]): Measure[][] {
  const groups: Measure[][] = [];
  for (const measure of lengths) {
    const last = groups.at(-1)?.at(-1);
    let crossed = false;
    if (last !== undefined && measure.first - last.last <= 4)
      for (let at = last.last + 1; at < measure.first; at++) {
        const fold = stretch.tokens[at]?.fold;
        if (fold === '×' || fold === 'x') crossed = true;
      }
    if (crossed) groups.at(-1)?.push(measure);
    else groups.push([measure]);
  }
  return groups;
}

/** A griddle or a board of 26 × 20 cm: nothing flat is so high. */
const HIGHEST_FLAT_MM = 120;

function isFlat(draft: Draft, values: readonly number[]): boolean {
  return draft.kind === 'pan' && values.length === 2 && Math.min(...values) > HIGHEST_FLAT_MM;
}

function readBox(stretch: Stretch, draft: Draft, group: readonly Measure[], values: readonly number[]): void {
  const [length = 0, width = 0, height = 0] = values;
  const first = group[0];
  const last = group.at(-1);
  if (first === undefined || last === undefined || !isMissing(draft.boxMm)) return;
  draft.boxMm = stated([length, width] as const, spanOf(stretch, first.first, last.last));
  if (isVessel(draft.kind) && isMissing(draft.heightMm) && values.length > 2)
    draft.heightMm = stated(height, spanOf(stretch, first.first, last.last));
}

/** "pot 18/10 cm": of one vessel most likely both of its sizes; of several, or of three figures, the widths of different ones. */
function readSlashed(
  stretch: Stretch,
  draft: Draft,
  group: readonly Measure[],
  values: readonly number[],
  order: Order,
): void {
  const one = draft.kind === 'pot' || draft.kind === 'mug' || draft.kind === 'kettle';
  if (one && values.length === 2 && draft.thing?.many !== true && draft.capacitiesMl.length < 2)
    readPair(stretch, draft, group, values, order, true);
}

function readPair(
  stretch: Stretch,
  draft: Draft,
  group: readonly Measure[],
  values: readonly number[],
  order: Order,
  slashed = false,
): void {
  if (!ROUND.includes(draft.kind)) return;
  const first = group[0];
  const last = group.at(-1);
  if (first === undefined || last === undefined) return;
  const places = group.flatMap((measure) =>
    measure.at.map((at, i) => [at, i === measure.at.length - 1 ? measure.last : at] as const),
  );
  const [a = [0, 0], b = [0, 0]] = places;
  const labelA = labelOf(stretch, draft, a[0], a[1]);
  const labelB = labelOf(stretch, draft, b[0], b[1]);
  let heightFirst = order.heightFirst;
  if (labelA === 'height' || labelB === 'diameter') heightFirst = true;
  else if (labelA === 'diameter' || labelB === 'height') heightFirst = false;
  else if (!order.heightFirst) heightFirst = nearerWith(draft, values[0] ?? 0, values[1] ?? 0);
  if (labelA !== undefined || labelB !== undefined) order.heightFirst = heightFirst;
  const [x = 0, y = 0] = values;
  const told = labelA !== undefined || labelB !== undefined || order.heightFirst;
  const tall = draft.kind === 'pot' && (heightFirst ? y < x : x < y);
  const given = (value: number, [from, to]: readonly [number, number]) =>
    !slashed && (told || !(tall || heightFirst))
      ? stated(value, spanOf(stretch, from, to))
      : assumed(value, UNTOLD, phrase`write which of the two is the diameter`, spanOf(stretch, from, to));
  if (isMissing(draft.diameterMm)) draft.diameterMm = heightFirst ? given(y, b) : given(x, a);
  if (isMissing(draft.heightMm)) draft.heightMm = heightFirst ? given(x, a) : given(y, b);
}

const UNTOLD = phrase`the text does not say which is the diameter; the order nearer to the stated capacity, or Ø first`;

/** Outer sizes are rounded to the centimetre, or half of it. */
const ROUNDED_MM = 5;

/** Which order comes nearer to the stated capacity, and can hold it; Ø first where none is stated or both are as good. */
export function nearerWith(draft: Draft, x: number, y: number): boolean {
  const capacity = draft.capacitiesMl[0];
  if (capacity === undefined || capacity.grounds === 'missing' || draft.capacitiesMl.length > 1) return false;
  const volume = (d: number, h: number) => (Math.PI * d * d * h) / 4000;
  if (volume(y + ROUNDED_MM, x + ROUNDED_MM) < capacity.value) return false;
  const off = (v: number) => Math.abs(Math.log(v / capacity.value));
  return off(volume(y, x)) + 0.05 < off(volume(x, y));
}

function readOne(stretch: Stretch, draft: Draft, measure: Measure): void {
  const value = measure.values[0] ?? 0;
  const given = stated(
    value,
    spanOf(stretch, measure.first, measure.last),
    measure.joined === 'range' ? measure.values[1] : undefined,
  );
  const label = labelOf(stretch, draft, measure.first, measure.last);
  if (label === 'ignore') return;
  if (label === 'burner' || label === 'supports') {
    const field = label === 'burner' ? 'burnerMm' : 'supportsMm';
    if (isMissing(draft[field])) draft[field] = given;
    return;
  }
  if (label === 'base') {
    if (isMissing(draft.baseDiameterMm)) draft.baseDiameterMm = given;
    return;
  }
  if (label === 'diameter' || label === 'height') {
    if (draft.kind === 'windscreen' && label === 'diameter') {
      if (isMissing(draft.sizeMm)) draft.sizeMm = given;
      return;
    }
    const field = label === 'diameter' ? 'diameterMm' : 'heightMm';
    if (isMissing(draft[field])) draft[field] = given;
    return;
  }
  const across =
    draft.kind === 'pan' ||
    ((draft.kind === 'pot' || draft.kind === 'lid' || draft.kind === 'bowl' || draft.kind === 'other-cook') &&
      value >= 75 &&
      value <= 450);
  const field = across ? 'diameterMm' : 'sizeMm';
  if (isMissing(draft[field])) draft[field] = given;
}

/** What the words beside a length say it is. The nearer word wins; of two as near, the one after. */
function labelOf(stretch: Stretch, draft: Draft, first: number, last: number): DimensionMeaning | undefined {
  const part = draft.kind === 'stove' ? partAt(stretch, draft, first, last) : undefined;
  if (part !== undefined) return part;
  const head = headOf(stretch, draft, first);
  if (head !== undefined) return head;
  if (
    stretch.tokens[first - 1]?.fold === 'ø' ||
    (stretch.tokens[last + 1]?.fold === 'ø' && !(stretch.tokens[last + 2]?.type === 'number'))
  )
    return 'diameter';
  const equals = stretch.tokens[first - 1]?.fold === '=' || stretch.tokens[first - 1]?.fold === ':';
  const stove = draft.kind === 'stove' || draft.kind === 'windscreen' || draft.kind === 'other-cook';
  let best: DimensionMeaning | undefined;
  let distance = 99;
  for (const term of stretch.terms) {
    if (term.role !== 'dimension') continue;
    const meaning = term.value as DimensionMeaning;
    if (!stove && (meaning === 'burner' || meaning === 'supports')) continue;
    if (draft.kind !== 'stove' && meaning === 'burner') continue;
    if (term.first >= draft.noun[0] && term.last <= draft.noun[1]) continue;
    const after = term.first > last;
    if (!after && term.last >= first) continue;
    const gap = after ? term.first - last - 1 : first - term.last - 1 - (equals ? 1 : 0);
    const from = after ? last + 1 : term.last + 1;
    const to = after ? term.first : first;
    if (gap > 4 || crosses(stretch, from, to, after)) continue;
    const weight = gap + (after ? 0 : 0.5);
    if (
      weight < distance ||
      (weight < distance + 2 && best === 'diameter' && (meaning === 'burner' || meaning === 'supports'))
    ) {
      distance = Math.min(distance, weight);
      best = meaning;
    }
  }
  return best;
}

/** "D 16 cm H 9 cm", "dia. 160 mm ht. 90 mm": the word right before a length, which is not right after another. */
function headOf(stretch: Stretch, draft: Draft, first: number): DimensionMeaning | undefined {
  const sign = stretch.tokens[first - 1];
  const signed = sign?.type === 'sign' && '.=:'.includes(sign.fold);
  const term = termsOf(stretch, 'dimension').find(
    ({ last }) => last === first - 1 || (signed && last === first - 2 && first - 2 >= draft.from),
  );
  if (term === undefined) return undefined;
  if (term.value !== 'diameter' && term.value !== 'height' && term.value !== 'base') return undefined;
  const ofNoun = term.first >= draft.noun[0] && term.last <= draft.noun[1];
  const ofOther = stretch.measures.some(({ unit, last }) => unit.dimension === 'length' && last === term.first - 1);
  return ofNoun || ofOther ? undefined : term.value;
}

/** Another figure or a comma between a length and its word: they do not belong together. */
function crosses(stretch: Stretch, from: number, to: number, after: boolean): boolean {
  for (let at = from; at <= to; at++) {
    const token = stretch.tokens[at];
    if (token === undefined) continue;
    if (token.type === 'number' && at < to) return true;
    if ((stretch.breaks[at] ?? 0) > 1 && !(at === from && !after)) return true;
    if (token.fold === 'x' || token.fold === '×') return true;
    if (token.type === 'sign' && (token.fold === ',' || token.fold === '(' || token.fold === ';')) return true;
  }
  return false;
}

/** The flame or the supports of a stove, where one of them stands close by: "flame ring 41 mm", "pot sits on ring Ø 10 cm". */
function partAt(stretch: Stretch, draft: Draft, first: number, last: number): 'burner' | 'supports' | undefined {
  let best: 'burner' | 'supports' | undefined;
  let distance = 3;
  for (const term of termsOf(stretch, 'dimension')) {
    if (term.value !== 'burner' && term.value !== 'supports') continue;
    if (term.first >= draft.noun[0] && term.last <= draft.noun[1]) continue;
    const after = term.first > last;
    if (!after && term.last >= first) continue;
    const gap = after ? term.first - last - 1 : first - term.last - 1;
    const from = after ? last + 1 : term.last + 1;
    if (gap >= distance || crosses(stretch, from, after ? term.first : first, after)) continue;
    distance = gap;
    best = term.value;
  }
  return best;
}
