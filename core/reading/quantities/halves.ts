import type { Term } from '../text/terms.js';
import type { Token } from '../text/tokens.js';
import type { Measure } from './measures.js';
import { factorOf, toScale } from './scale.js';

export const isHalf = (term: Term) => term.role === 'number' && term.value === 0.5;

/** "1 litro e mezzo", "un litre et demi", "a litre and a half": half of the unit on top. */
export function withHalves(
  measure: Measure,
  joiners: ReadonlyMap<number, Term>,
  halves: ReadonlyMap<number, Term>,
  tokens: readonly Token[],
): Measure {
  const half = halfAfter(measure.last, joiners, halves, tokens);
  if (half === undefined || measure.joined !== 'one' || measure.unit.dimension === 'temperature') return measure;
  const more = toScale(0.5, measure.unit, factorOf(measure.unit, measure.system));
  return { ...measure, last: half.last, values: [(measure.values[0] ?? 0) + more] };
}

/** The half that an "and" ties to the unit ending at `last`, an article passed over; not "1 l and half a pot". */
export function halfAfter(
  last: number,
  joiners: ReadonlyMap<number, Term>,
  halves: ReadonlyMap<number, Term>,
  tokens: readonly Token[],
): Term | undefined {
  const and = joiners.get(last + 1);
  if (and?.role !== 'and') return undefined;
  const at = and.last + 1;
  const half = halves.get(at) ?? (tokens[at]?.type === 'word' ? halves.get(at + 1) : undefined);
  return half !== undefined && tokens[half.last + 1]?.type !== 'word' ? half : undefined;
}
