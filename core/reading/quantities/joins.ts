import type { Term } from '../text/terms.js';
import type { Token } from '../text/tokens.js';

/** How two numbers hang together; a comma joins only before an "and": "1, 1.5 and 2 l". */
export type Join = 'range' | 'times' | 'list' | 'comma';

/** How the number at `b` hangs on the one at `a`, by what stands between them. */
export function joinOf(
  tokens: readonly Token[],
  a: number,
  b: number,
  joiners: ReadonlyMap<number, Term>,
): Join | undefined {
  const sign = tokens[a + 1];
  if (sign === undefined || b <= a + 1) return undefined;
  if (b - a === 2) {
    if (sign.gap === 2 || tokens[b]?.gap === 2) return undefined;
    if (sign.fold === '-' || sign.fold === '–' || sign.fold === '~') return 'range';
    if (sign.fold === '×' || sign.fold === 'x' || sign.fold === '*') return 'times';
    if (sign.fold === '/' || sign.fold === '+' || sign.fold === '&') return 'list';
    if (sign.fold === ',' && sign.gap === 0 && tokens[b]?.gap === 1) return 'comma';
  } else if ((sign.fold === '×' || sign.fold === 'x') && isLabel(tokens, a + 2, b)) return 'times';
  const term = joiners.get(a + 1);
  if (term === undefined) return undefined;
  const short = term.last === b - 2 && tokens[b - 1]?.fold === '.' && tokens[b - 1]?.gap === 0;
  return term.last === b - 1 || short ? (term.role === 'to' ? 'range' : 'list') : undefined;
}

/** "16 x H9", "16 x (H) 9", "16 × h = 9": a letter that says which dimension the next number is. */
function isLabel(tokens: readonly Token[], from: number, to: number): boolean {
  if (to - from > MOST_LABEL_TOKENS) return false;
  let letters = 0;
  for (let at = from; at < to; at++) {
    const token = tokens[at];
    if (token === undefined || token.gap === 2) return false;
    if (LETTERS.has(token.fold)) letters++;
    else if (!LABEL_SIGNS.has(token.fold)) return false;
  }
  return letters === 1;
}

const MOST_LABEL_TOKENS = 4;
const LETTERS: ReadonlySet<string> = new Set(['h', 'd', 'w', 'b', 't', 'l', 'ø']);
const LABEL_SIGNS: ReadonlySet<string> = new Set(['(', ')', '=', ':', '.']);
