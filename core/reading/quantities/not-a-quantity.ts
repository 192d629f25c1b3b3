import type { Token } from '../text/tokens.js';
import { unitBySymbol } from './units.js';

/** Times, dates, map scales, version numbers, prices and grades of steel: the token after them. `at` itself where it is none of them. */
export function notAQuantity(tokens: readonly Token[], at: number): number {
  const number = tokens[at]?.number;
  if (number !== undefined && Number.isNaN(number.value)) return at + 1;
  const named = priced(tokens, at) ?? graded(tokens, at);
  if (named !== undefined) return named;
  let end = at;
  while (
    tokens[end + 1]?.fold === ':' &&
    tokens[end + 1]?.gap === 0 &&
    tokens[end + 2]?.number !== undefined &&
    tokens[end + 2]?.gap === 0
  )
    end += 2;
  if (end > at) {
    const thousand = tokens[end + 1];
    return thousand?.number?.digits === 3 && thousand.gap === 1 && tokens[end]?.number?.digits !== 2
      ? end + 2
      : tokens[end + 1]?.number === undefined || end > at
        ? end + 1 + groupAfter(tokens, end)
        : end + 1;
  }
  const dash = tokens[at + 1];
  const second = tokens[at + 2];
  const date =
    (dash?.fold === '-' || dash?.fold === '/' || dash?.fold === '.') &&
    dash.gap === 0 &&
    second?.number !== undefined &&
    second.gap === 0 &&
    tokens[at + 3]?.fold === dash.fold &&
    tokens[at + 3]?.gap === 0 &&
    tokens[at + 4]?.number !== undefined &&
    tokens[at + 4]?.gap === 0;
  if (!date || areSizes(tokens, at)) return at;
  end = at + 4;
  while (
    tokens[end + 1]?.fold === dash.fold &&
    tokens[end + 1]?.gap === 0 &&
    tokens[end + 2]?.number !== undefined &&
    tokens[end + 2]?.gap === 0
  )
    end += 2;
  return end + 1;
}

/** "1:50 000": the group of three after a scale belongs to it. */
function groupAfter(tokens: readonly Token[], end: number): number {
  const next = tokens[end + 1];
  return next?.number?.digits === 3 && next.number.whole && next.gap === 1 ? 1 : 0;
}

/** "2.5/4/6 litre", "1/2/3 L": sizes of a set; a date and a version go by whole numbers, and bear no unit. */
function areSizes(tokens: readonly Token[], at: number): boolean {
  const after = tokens[at + 5];
  const unit = after?.type === 'word' && after.gap < 2 ? unitBySymbol(after.fold) : undefined;
  const parts = [tokens[at], tokens[at + 2], tokens[at + 4]];
  return (unit !== undefined && unit.dimension !== 'other') || parts.some((part) => part?.number?.whole === false);
}

const CURRENCIES: ReadonlySet<string> = new Set('$ € £ ¥ chf eur usd gbp sek nok dkk pln'.split(' '));

/** "$49.95", "CHF 35", "35.-", "89,-": the token after a price. */
function priced(tokens: readonly Token[], at: number): number | undefined {
  const before = tokens[at - 1];
  if (before !== undefined && CURRENCIES.has(before.fold) && tokens[at]?.gap !== 2 && tokens[at - 2]?.type !== 'number')
    return at + 1;
  const [mark, dash] = [tokens[at + 1], tokens[at + 2]];
  if (mark?.gap !== 0 || dash?.gap !== 0 || (mark.fold !== '.' && mark.fold !== ',')) return undefined;
  return (dash.fold === '-' || dash.fold === '–') && tokens[at + 3]?.gap !== 0 ? at + 3 : undefined;
}

/** Chromium and nickel of stainless steel, as stamped on pots. */
const CHROMIUM: ReadonlySet<number> = new Set([13, 16, 17, 18, 21]);
const NICKEL: ReadonlySet<number> = new Set([0, 4, 8, 10, 12]);
const STEELS: ReadonlySet<number> = new Set([304, 316]);

/** "18/10", "316L": a grade of steel; "18/10 cm" is a size unless the unit belongs to the next number. */
function graded(tokens: readonly Token[], at: number): number | undefined {
  const { number } = tokens[at]!;
  const [sign, second] = [tokens[at + 1], tokens[at + 2]];
  if (number?.whole !== true || sign?.gap !== 0) return undefined;
  if (STEELS.has(number.value) && sign.fold === 'l') return at + 2;
  if (sign.fold !== '/' || second?.gap !== 0 || second.number?.whole !== true) return undefined;
  if (!CHROMIUM.has(number.value) || !NICKEL.has(second.number.value)) return undefined;
  const unit = unitBySymbol(tokens[at + 3]?.fold ?? '');
  const sized = unit?.dimension === 'length' || unit?.dimension === 'volume';
  return sized && tokens[at + 4]?.type !== 'number' ? undefined : at + 3;
}
