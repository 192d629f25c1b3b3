import { phrase } from '../../model/phrase.js';
import type { Given } from '../../model/given.js';
import type { Bare } from '../quantities/measures.js';
import { assumed, bareOf, isMissing, spanOf, type Draft } from './draft.js';
import { nearerWith, type Order } from './size.js';
import { termsOf, type Stretch } from './stretch.js';

/** Smaller than this a length without a unit is in centimetres, else in millimetres. */
const MOST_CM = 30;

function lengthOf(stretch: Stretch, { at, value }: Bare, most = MOST_CM): Given<number> {
  return value < most
    ? assumed(
        value * 10,
        phrase`a small number without a unit is taken as centimetres`,
        phrase`write the unit`,
        spanOf(stretch, at, at),
      )
    : assumed(
        value,
        phrase`a number without a unit is taken as millimetres`,
        phrase`write the unit`,
        spanOf(stretch, at, at),
      );
}

/** "Ø13 x 9", "d=160 h=110", "ø24 h12", "diam. 16", "Pfanne 24": numbers without a unit that a sign, a word or the thing says to be lengths. */
export function readBareSizes(stretch: Stretch, draft: Draft): void {
  for (const number of bareOf(stretch, draft)) {
    const meaning = meaningOf(stretch, draft, number);
    if (meaning !== 'diameter' && meaning !== 'height') continue;
    const field = meaning === 'diameter' ? 'diameterMm' : 'heightMm';
    if (!isMissing(draft[field]) || number.value <= 0) continue;
    draft.taken.add(number.at);
    draft[field] = lengthOf(stretch, number);
  }
}

function meaningOf(stretch: Stretch, draft: Draft, number: Bare): string | number | undefined {
  const { at } = number;
  const sign = stretch.tokens[at - 1];
  if (sign?.fold === 'ø') return 'diameter';
  const crossed = sign?.fold === '×' || sign?.fold === 'x';
  if (crossed && draft.diameterMm.grounds === 'assumed' && stretch.tokens[at - 3]?.fold === 'ø') return 'height';
  if (draft.kind === 'pan' && isWidthOfPan(stretch, draft, number)) return 'diameter';
  const labelled = sign?.fold === '=' || sign?.fold === ':';
  const term = termsOf(stretch, 'dimension').find(
    ({ last }) => last === at - 1 || (last === at - 2 && (labelled || sign?.fold === '.')),
  );
  return term !== undefined && (labelled || isNamed(stretch, number, term.first)) ? term.value : undefined;
}

/** Less, right after a word, may be a count. */
const LEAST_CM = 5;
/** A shorter word is a letter, which says nothing unless it is tied to its number. */
const SHORTEST_NAME = 3;

/** "h12", "diam. 16": a word and its number, and nothing that the number might count. */
function isNamed(stretch: Stretch, { at, value }: Bare, word: number): boolean {
  const name = stretch.tokens[word]?.fold ?? '';
  const tied = stretch.tokens[at]?.gap === 0;
  const next = stretch.tokens[at + 1];
  const counts =
    next?.type === 'word' && next.fold !== 'x' && !termsOf(stretch, 'dimension').some((term) => term.first === at + 1);
  return value >= LEAST_CM && (name.length >= SHORTEST_NAME || tied) && !counts;
}

/** Pans are named by their width, in centimetres from here to there. */
const PANS = [14, 40] as const;

/** "Pfanne 24", "24er Pfanne", "poêle de 24". */
function isWidthOfPan(stretch: Stretch, draft: Draft, { at, value, number }: Bare): boolean {
  if (!number.whole || value < PANS[0] || value > PANS[1]) return false;
  const next = stretch.tokens[at + 1];
  const sized = next?.fold === 'er' && next.gap === 0;
  const close = at > draft.noun[1] && at - draft.noun[1] <= 2 && draft.thing?.many === false;
  const bare = next === undefined || (next.type === 'sign' && next.fold !== '×' && next.fold !== '/');
  return sized || (close && bare && (stretch.breaks[at] ?? 0) === 0);
}

/** Sides of a vessel are at least this; less is a count. */
const LEAST_SIDE = 5;
const MOST_SIDE = 450;
/** Sides that go together: below this, centimetres. */
const MOST_SIDE_CM = 60;

/** "Topf 18x11", "Mess tin 17 x 13 x 6": numbers of the size of a vessel's sides, joined by ×, with no unit. */
export function readBareCross(stretch: Stretch, draft: Draft, order: Order): void {
  const sides = crossIn(stretch, bareOf(stretch, draft));
  if (sides.length < 2 || !isMissing(draft.diameterMm) || !isMissing(draft.heightMm)) return;
  for (const { at } of sides) draft.taken.add(at);
  const most = sides.every(({ value }) => value < MOST_SIDE_CM) ? MOST_SIDE_CM : 0;
  const [a, b, c] = sides.map((side) => lengthOf(stretch, side, most));
  if (a?.grounds !== 'assumed' || b?.grounds !== 'assumed') return;
  if (c !== undefined) {
    draft.boxMm = { ...a, value: [a.value, b.value] };
    draft.heightMm = c;
    return;
  }
  const heightFirst = order.heightFirst || nearerWith(draft, a.value, b.value);
  draft.diameterMm = heightFirst ? b : a;
  draft.heightMm = heightFirst ? a : b;
}

/** The first two or three numbers with a × between each. */
function crossIn(stretch: Stretch, numbers: readonly Bare[]): Bare[] {
  const sides: Bare[] = [];
  for (const number of numbers) {
    if (number.value < LEAST_SIDE || number.value > MOST_SIDE) continue;
    const last = sides.at(-1);
    const sign = stretch.tokens[number.at - 1]?.fold;
    const joined = last !== undefined && last.at === number.at - 2 && (sign === 'x' || sign === '×');
    if (!joined && sides.length > 1) break;
    if (!joined) sides.length = 0;
    sides.push(number);
  }
  return sides.slice(0, 3);
}
