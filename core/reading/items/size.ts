import { phrase } from '../../model/phrase.js';
import type { Measure } from '../quantities/measures.js';
import type { DimensionMeaning } from '../../data/words/words.js';
import { assumed, bareOf, isMissing, measuresOf, spanOf, stated, type Draft } from './draft.js';
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
  readBareSizes(stretch, draft);
  const pairs = paired(stretch, lengths);
  for (const measure of lengths) draft.taken.add(measure.first);
  for (const group of pairs) {
    const values = group.flatMap((measure) =>
      measure.joined === 'range' ? measure.values.slice(0, 1) : measure.values,
    );
    if (values.length >= 3) readBox(stretch, draft, group, values);
    else if (values.length === 2) readPair(stretch, draft, group, values, order);
    else if (group[0] !== undefined) readOne(stretch, draft, group[0]);
  }
}

/** "Ø13 x 9", "d=160 h=110": labelled numbers without a unit are millimetres, or centimetres when small. */
function readBareSizes(stretch: Stretch, draft: Draft): void {
  if (!ROUND.includes(draft.kind)) return;
  for (const number of bareOf(stretch, draft)) {
    const sign = stretch.tokens[number.at - 1];
    const word = sign?.fold === '=' || sign?.fold === ':' ? number.at - 2 : number.at - 1;
    const term = stretch.terms.find((other) => other.role === 'dimension' && other.last === word);
    const crossed =
      (sign?.fold === '×' || sign?.fold === 'x') &&
      !isMissing(draft.diameterMm) &&
      draft.diameterMm.grounds === 'assumed' &&
      stretch.tokens[number.at - 3]?.fold === 'ø';
    const meaning =
      sign?.fold === 'ø'
        ? 'diameter'
        : crossed
          ? 'height'
          : word === number.at - 1 && sign?.fold !== 'ø'
            ? undefined
            : term?.value;
    if (meaning !== 'diameter' && meaning !== 'height') continue;
    const field = meaning === 'diameter' ? 'diameterMm' : 'heightMm';
    if (!isMissing(draft[field]) || number.value <= 0) continue;
    draft.taken.add(number.at);
    const mm = number.value < 30 ? number.value * 10 : number.value;
    draft[field] = assumed(
      mm,
      number.value < 30
        ? phrase`a small number without a unit is taken as centimetres`
        : phrase`a number without a unit is taken as millimetres`,
      phrase`write the unit`,
      spanOf(stretch, number.at, number.at),
    );
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

function readBox(stretch: Stretch, draft: Draft, group: readonly Measure[], values: readonly number[]): void {
  const [length = 0, width = 0, height = 0] = values;
  const first = group[0];
  const last = group.at(-1);
  if (first === undefined || last === undefined || !isMissing(draft.boxMm)) return;
  draft.boxMm = stated([length, width] as const, spanOf(stretch, first.first, last.last));
  if (isVessel(draft.kind) && isMissing(draft.heightMm))
    draft.heightMm = stated(height, spanOf(stretch, first.first, last.last));
}

function readPair(
  stretch: Stretch,
  draft: Draft,
  group: readonly Measure[],
  values: readonly number[],
  order: Order,
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
    told || !(tall || heightFirst)
      ? stated(value, spanOf(stretch, from, to))
      : assumed(value, UNTOLD, phrase`write which of the two is the diameter`, spanOf(stretch, from, to));
  if (isMissing(draft.diameterMm)) draft.diameterMm = heightFirst ? given(y, b) : given(x, a);
  if (isMissing(draft.heightMm)) draft.heightMm = heightFirst ? given(x, a) : given(y, b);
}

const UNTOLD = phrase`the text does not say which is the diameter; the order nearer to the stated capacity, or Ø first`;

/** Which order comes nearer to the stated capacity; Ø first where none is stated or both are as good. */
function nearerWith(draft: Draft, x: number, y: number): boolean {
  const capacity = draft.capacitiesMl[0];
  if (capacity === undefined || capacity.grounds === 'missing' || draft.capacitiesMl.length > 1) return false;
  const volume = (d: number, h: number) => (Math.PI * d * d * h) / 4000;
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
