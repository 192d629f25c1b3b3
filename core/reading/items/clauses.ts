import type { Stretch } from './stretch.js';

export interface Clause {
  readonly from: number;
  readonly to: number;
}

/** The sentence or cell that a term stands in. */
export function clauseOf(stretch: Stretch, term: { readonly first: number; readonly last: number }): Clause {
  let from = term.first;
  while (from > 0 && (stretch.breaks[from] ?? 0) < 2) from--;
  let to = term.last + 1;
  while (to < stretch.tokens.length && (stretch.breaks[to] ?? 0) < 2) to++;
  return { from, to };
}

/** What stands between the nearest breaks on either side. */
export function segmentOf(stretch: Stretch, term: { readonly first: number; readonly last: number }): Clause {
  let from = term.first;
  while (from > 0 && (stretch.breaks[from] ?? 0) === 0) from--;
  let to = term.last + 1;
  while (to < stretch.tokens.length && (stretch.breaks[to] ?? 0) === 0) to++;
  return { from, to };
}

export function spanBreaks(stretch: Stretch, from: number, to: number): boolean {
  for (let at = from; at <= to; at++) if ((stretch.breaks[at] ?? 0) > 0) return true;
  return false;
}

export function inParentheses(stretch: Stretch, from: number, to: number): boolean {
  let depth = 0;
  for (let at = from; at < to; at++) {
    const fold = stretch.tokens[at]?.fold;
    if (fold === '(') depth++;
    else if (fold === ')') depth--;
  }
  return depth > 0;
}
