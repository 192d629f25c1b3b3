import type { Term } from '../text/terms.js';
import { spanBreaks } from './clauses.js';
import { termsOf, type Stretch } from './stretch.js';

/** "no windscreen", "without a lid"; "pan? no"; "lid missing". */
export function isDenied(stretch: Stretch, term: Term): boolean {
  const no = termsOf(stretch, 'no');
  for (const word of no) {
    if (isNumero(stretch, word.first) || isTally(stretch, word.first)) continue;
    const gap = term.first - word.last - 1;
    if (gap >= 0 && gap <= 3 && !spanBreaks(stretch, word.first + 1, term.first)) return true;
    if (word.first > term.last && word.first - term.last <= 3 && answers(stretch, term, word)) return true;
    if (word.first > term.last && refuses(stretch, term, word)) return true;
  }
  return termsOf(stretch, 'missing').some(
    (word) =>
      word.first === term.last + 1 || (word.first === term.last + 2 && stretch.tokens[term.last + 1]?.type === 'sign'),
  );
}

/** "No. 2", "Nr. 3": short for number. */
export function isNumero(stretch: Stretch, at: number): boolean {
  const dot = stretch.tokens[at + 1];
  return (
    NUMERO.has(stretch.tokens[at]?.fold ?? '') &&
    dot?.fold === '.' &&
    dot.gap === 0 &&
    stretch.tokens[at + 2]?.type === 'number'
  );
}

const NUMERO: ReadonlySet<string> = new Set(['no', 'nr']);

/** "2 no. 1 L bottles": so many, in British bills. */
function isTally(stretch: Stretch, at: number): boolean {
  const [before, dot] = [stretch.tokens[at - 1], stretch.tokens[at + 1]];
  return before?.type === 'number' && before.number?.whole === true && dot?.fold === '.' && dot.gap === 0;
}

/** "a mug each? no, …", "griddle (8 kg, no)": a no that stands alone answers the thing before it. */
function refuses(stretch: Stretch, term: Term, no: Term): boolean {
  const between = stretch.terms.some(
    (other) =>
      (other.role === 'kind' || other.role === 'bail' || other.role === 'handles') &&
      other.first > term.last &&
      other.last < no.first,
  );
  if (between) return false;
  if (stretch.tokens[no.first - 1]?.fold === '?') return stretch.cellOf[no.first] === stretch.cellOf[term.last];
  const after = stretch.tokens[no.last + 1];
  const ends = after === undefined || (stretch.breaks[no.last + 1] ?? 0) > 0;
  if (no.first === term.last + 1 && ends && stretch.row.bullet) return true;
  return (
    stretch.row.bullet &&
    ends &&
    after?.fold !== '-' &&
    ['(', ','].includes(stretch.tokens[no.first - 1]?.fold ?? '') &&
    (after === undefined || after.fold === ')')
  );
}

/** "pan? no", "windscreen: no, …", "lid: none", "Mug – none, I drink from the pot". */
function answers(stretch: Stretch, term: Term, no: Term): boolean {
  const sign = stretch.tokens[term.last + 1];
  if (sign === undefined || !'?:!,(•–-'.includes(sign.fold) || (sign.fold === '-' && sign.gap === 0)) return false;
  const next = stretch.tokens[no.last + 1];
  return next === undefined || (stretch.breaks[no.last + 1] ?? 0) > 0 || next.type === 'sign';
}
