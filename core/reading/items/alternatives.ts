import { phrase } from '../../model/phrase.js';
import type { Measure } from '../quantities/measures.js';
import { assumed, spanOf, stated, type Draft } from './draft.js';
import { termsOf, type Stretch } from './stretch.js';

const LIMIT = 4;

/** "1 L, 2 L if winter": of two sizes one is for a season. Gives the second thing, and says of the first when it comes along. */
export function alternativeOf(stretch: Stretch, draft: Draft): Draft | undefined {
  const volumes = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'volume' && measure.first >= draft.from && measure.last < draft.to,
  );
  const [first, second] = volumes;
  if (first === undefined || second === undefined || volumes.length > 2) return undefined;
  const season = seasonAt(stretch, second);
  if (season === undefined) return undefined;
  draft.capacitiesMl = [capacity(stretch, first)];
  draft.onlyIn = season === 'winter' ? 'summer' : 'winter';
  return { ...draft, capacitiesMl: [capacity(stretch, second)], onlyIn: season, massG: { grounds: 'missing' } };
}

function capacity(stretch: Stretch, measure: Measure): Draft['capacitiesMl'][number] {
  return stated(measure.values[0] ?? 0, spanOf(stretch, measure.first, measure.last));
}

/** The season that a size is for: "2 L if winter", "2 L in winter", "winter: 2 L". */
function seasonAt(stretch: Stretch, measure: Measure): 'summer' | 'winter' | undefined {
  const term = termsOf(stretch, 'season').find((season) => {
    const after = season.first - measure.last;
    const before = measure.first - season.last;
    return (after > 0 && after <= LIMIT) || (before > 0 && before <= 2);
  });
  return term?.value === 'winter' || term?.value === 'summer' ? term.value : undefined;
}

/** "Pots 2 x 1.5 l, 1 x 3 l", "3 pcs of 1 litre, 1 of 0.5": the further groups, each with a count and a size of its own. */
export function furtherOf(stretch: Stretch, draft: Draft): Draft[] {
  const ordered = countedInOrder(stretch, draft);
  if (ordered.length > 0) return ordered;
  if (draft.quantity.grounds !== 'stated' || draft.capacitiesMl.length !== 1) return [];
  const [first] = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'volume' && measure.first >= draft.from && measure.last < draft.to,
  );
  if (first === undefined || !isCounted(stretch, first.first - 1, draft.from)) return [];
  const further: Draft[] = [];
  const own = stretch.bare.filter((number) => number.at > first.last && number.at < draft.to);
  for (const [i, count] of own.entries()) {
    if (!count.number.whole || count.value < 1 || !isMark(stretch, count.at + 1)) continue;
    const measure = stretch.measures.find(
      (one) => one.unit.dimension === 'volume' && one.first > count.at && one.first <= count.at + LIMIT,
    );
    const size = measure === undefined ? own[i + 1] : undefined;
    const quantity = stated(count.value, spanOf(stretch, count.at, count.at));
    if (measure !== undefined)
      further.push({ ...draft, quantity, capacitiesMl: [capacity(stretch, measure)], massG: { grounds: 'missing' } });
    else if (size !== undefined && size.at <= count.at + LIMIT) {
      const value = size.value * first.unit.factor;
      const guess = assumed(
        value,
        phrase`the unit is taken from the size before it`,
        phrase`write the unit`,
        spanOf(stretch, size.at, size.at),
      );
      further.push({ ...draft, quantity, capacitiesMl: [guess], massG: { grounds: 'missing' } });
    }
  }
  return further;
}

/** "Bottles 1 L (kids: 0.6 L) 2 + 3": as many counts, joined by +, as sizes before them. */
function countedInOrder(stretch: Stretch, draft: Draft): Draft[] {
  if (draft.thing?.many !== true) return [];
  const sizes = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'volume' && measure.first > draft.noun[1] && measure.last < draft.to,
  );
  const counts = stretch.bare.filter((number) => number.at > (sizes.at(-1)?.last ?? 0) && number.at < draft.to);
  const joined = counts.every(
    (number, i) => number.number.whole && (i === 0 || stretch.tokens[number.at - 1]?.fold === '+'),
  );
  const [first] = counts;
  if (sizes.length < 2 || counts.length !== sizes.length || !joined || first === undefined) return [];
  const [own, ...further] = sizes.map((size, i) => {
    const at = counts[i]?.at ?? first.at;
    return {
      quantity: stated(counts[i]?.value ?? 1, spanOf(stretch, at, at)),
      capacitiesMl: [capacity(stretch, size)],
    };
  });
  Object.assign(draft, own);
  return further.map((one) => ({ ...draft, ...one, massG: { grounds: 'missing' } }));
}

/** A count with its mark ends right before a size: "2 x", "3 pcs of". */
function isCounted(stretch: Stretch, before: number, from: number): boolean {
  for (let at = before; at > before - LIMIT && at > from; at--)
    if (isMark(stretch, at) && stretch.bare.some((number) => number.at === at - 1)) return true;
  return false;
}

function isMark(stretch: Stretch, at: number): boolean {
  const fold = stretch.tokens[at]?.fold;
  return fold === 'x' || fold === '×' || termsOf(stretch, 'pieces').some((term) => term.first === at);
}
