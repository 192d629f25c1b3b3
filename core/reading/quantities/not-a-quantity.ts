import type { Token } from '../text/tokens.js';

/** Times, dates, map scales and version numbers: the token after them. `at` itself where it is none of them. */
export function notAQuantity(tokens: readonly Token[], at: number): number {
  const number = tokens[at]?.number;
  if (number !== undefined && Number.isNaN(number.value)) return at + 1;
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
  if (!date || !isWhole(tokens, [at, at + 2, at + 4])) return at;
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

/** "2.5/4/6 litre": sizes of a set; a date and a version go by whole numbers. */
function isWhole(tokens: readonly Token[], places: readonly number[]): boolean {
  return places.every((at) => tokens[at]?.number?.whole === true);
}

/** "1:50 000": the group of three after a scale belongs to it. */
function groupAfter(tokens: readonly Token[], end: number): number {
  const next = tokens[end + 1];
  return next?.number?.digits === 3 && next.number.whole && next.gap === 1 ? 1 : 0;
}
