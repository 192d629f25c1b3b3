import { MISSING } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Bare, Measure } from '../quantities/measures.js';
import { assumed, spanOf, stated, type Draft } from './draft.js';
import { bareNet, isCalledGross, isNetOfCan } from './mass.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Role } from '../text/lexicon.js';

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
  return { ...draft, capacitiesMl: [capacity(stretch, second)], onlyIn: season, massG: MISSING };
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
  const sorts = countedSorts(stretch, draft);
  if (sorts.length > 0) return sorts;
  const ordered = countedInOrder(stretch, draft);
  if (ordered.length > 0) return ordered;
  const another = oneMore(stretch, draft);
  if (another !== undefined) return [another];
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
      further.push({ ...draft, quantity, capacitiesMl: [capacity(stretch, measure)], massG: MISSING });
    else if (size !== undefined && size.at <= count.at + LIMIT)
      further.push({ ...draft, quantity, capacitiesMl: [inUnitOf(stretch, first, size)], massG: MISSING });
  }
  return further;
}

function inUnitOf(stretch: Stretch, size: Measure, { at, value }: Bare): Draft['capacitiesMl'][number] {
  return assumed(
    value * size.unit.factor,
    phrase`the unit is taken from the size before it`,
    phrase`write the unit`,
    spanOf(stretch, at, at),
  );
}

/** "A pot of 5 litres, one of 3": one more of its kind, whose size shows no unit. */
function oneMore(stretch: Stretch, draft: Draft): Draft | undefined {
  const sizes = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'volume' && measure.first >= draft.from && measure.last < draft.to,
  );
  const [size] = sizes;
  if (size === undefined || sizes.length > 1 || draft.kind === 'fuel') return undefined;
  const ones = [...termsOf(stretch, 'pronoun'), ...termsOf(stretch, 'article'), ...termsOf(stretch, 'number')].filter(
    (term) => term.first > size.last && (term.role !== 'number' || term.value === 1),
  );
  const number = stretch.bare.find(
    ({ at, value }) =>
      at > size.last &&
      at < draft.to &&
      value > 0 &&
      stretch.tokens[at - 1]?.type === 'word' &&
      ones.some((one) => one.last === at - 2),
  );
  if (number === undefined) return undefined;
  const [one] = ones.filter((term) => term.last === number.at - 2);
  if (one === undefined) return undefined;
  const quantity = stated(1, spanOf(stretch, one.first, one.last));
  return { ...draft, quantity, capacitiesMl: [inUnitOf(stretch, size, number)], massG: MISSING };
}

/** A size of a thing at its tokens. */
interface Size {
  readonly first: number;
  readonly last: number;
  readonly given: Draft['massG'];
}

/** "1 large (450 g) + 2 small (230 g) canisters", "one 1 L and two 2 L bottles": sizes that each have a count of their own; "gas 230 + 110". */
function countedSorts(stretch: Stretch, draft: Draft): Draft[] {
  const gas = draft.kind === 'fuel' && draft.fuelType.grounds !== 'missing' && draft.fuelType.value === 'gas';
  const sizes = sizesOf(stretch, draft, gas);
  if (sizes.length < 2) return [];
  const listed = gas && isCountOf(stretch, draft, sizes);
  const sorts: Pick<Draft, 'quantity' | 'capacitiesMl' | 'fuelMassG' | 'massG'>[] = [];
  let last = draft.from - 1;
  for (const [i, size] of sizes.entries()) {
    const count = listed ? undefined : countBefore(stretch, size.first, last);
    const from = last < draft.noun[0] && draft.noun[1] < size.first ? draft.noun[1] + 1 : last + 1;
    const joined = i === 0 || isJoined(stretch, from, count?.at ?? size.first);
    const added = gas && (listed || i === 0 || stretch.tokens[from]?.fold === '+');
    if (!joined || (count === undefined && !added)) return [];
    const quantity =
      count === undefined
        ? assumed(1, phrase`no number is given`, phrase`write how many`)
        : stated(count.value, spanOf(stretch, count.at, count.at));
    sorts.push({
      quantity,
      capacitiesMl: gas ? [] : [size.given],
      fuelMassG: gas ? leftIn(stretch, size, last) : MISSING,
      massG: MISSING,
    });
    last = size.last;
  }
  const [own, ...further] = sorts;
  Object.assign(draft, own, { massG: gas ? MISSING : draft.massG });
  return further.map((one) => ({ ...draft, ...one }));
}

/** "3 gas canisters: 450 g, 230 g, 110 g": as many sizes as are counted. */
function isCountOf(stretch: Stretch, draft: Draft, sizes: readonly Size[]): boolean {
  const count = countBefore(stretch, draft.noun[0], draft.from - 1);
  return count?.value === sizes.length && sizes.every(({ first }) => first > draft.noun[1]);
}

/** "one half-full 110 g": half of what the can holds. */
function leftIn(stretch: Stretch, size: Size, after: number): Draft['fuelMassG'] {
  const half = termsOf(stretch, 'halfFull').some(({ first, last }) => first > after && last < size.first);
  return half ? halved(size.given) : size.given;
}

/** What is left of a can of which half is gone. */
export function halved(given: Draft['fuelMassG']): Draft['fuelMassG'] {
  if (given.grounds === 'missing') return given;
  const span = given.grounds === 'worked-out' ? undefined : given.span;
  return assumed(
    given.value / 2,
    phrase`half of the can is taken to be left`,
    phrase`write the grams that are left`,
    span,
  );
}

/** What tells the sizes of a thing: volumes; of gas the grams in a can, which need no unit. None where one is of a full can. */
function sizesOf(stretch: Stretch, draft: Draft, gas: boolean): Size[] {
  const measures = stretch.measures.filter(
    (measure) =>
      measure.unit.dimension === (gas ? 'mass' : 'volume') && measure.first >= draft.from && measure.last < draft.to,
  );
  if (measures.some((measure) => isCalledGross(stretch, measure))) return [];
  const sizes: Size[] = measures.map((measure) => ({ ...measure, given: capacity(stretch, measure) }));
  if (!gas) return sizes;
  for (const { at, value } of stretch.bare)
    if (at >= draft.from && at < draft.to && isNetOfCan(value))
      sizes.push({ first: at, last: at, given: bareNet(stretch, at, value) });
  return sizes.sort((a, b) => a.first - b.first);
}

/** The count right before a size, a mark or an adjective or two between: "2 x 1 l", "one large (450 g)". */
function countBefore(stretch: Stretch, before: number, after: number): { at: number; value: number } | undefined {
  for (let at = before - 1; at > after && at >= before - LIMIT; at--) {
    const bare = stretch.bare.find((number) => number.at === at);
    if (bare !== undefined) return bare.number.whole && bare.value >= 1 ? { at, value: bare.value } : undefined;
    const word = termsOf(stretch, 'number').find((term) => term.last === at && Number.isInteger(term.value));
    if (word !== undefined) return { at, value: Number(word.value) };
    if (termsOf(stretch, 'article').some((term) => term.last === at)) return { at, value: 1 };
    if (termsOf(stretch, 'halfFull').some((term) => term.first <= at && term.last >= at)) continue;
    if (!isAdjective(stretch, at) && !isMark(stretch, at) && stretch.tokens[at]?.fold !== '(') return undefined;
  }
  return undefined;
}

const NO_ADJECTIVE: ReadonlySet<Role> = new Set([
  'kind',
  'people',
  'day',
  'night',
  'week',
  'and',
  'or',
  'rate',
  'asides',
]);

/** Nothing but commas, signs, "and" and what brackets a size between two sorts; after a plus a word of its own: "+ spare 110 g". */
function isJoined(stretch: Stretch, from: number, to: number): boolean {
  const plus = stretch.tokens[from]?.fold === '+';
  for (let at = from; at < to; at++) {
    const token = stretch.tokens[at];
    const sign = token?.type === 'sign' && '),+&/'.includes(token.fold);
    const own = (plus || token?.gap === 0) && isAdjective(stretch, at);
    const half = termsOf(stretch, 'halfFull').some((term) => term.first <= at && term.last >= at);
    if (!sign && !own && !half && !termsOf(stretch, 'and').some((term) => term.first <= at && term.last >= at))
      return false;
  }
  return from < to;
}

function isAdjective(stretch: Stretch, at: number): boolean {
  return (
    stretch.tokens[at]?.type === 'word' &&
    !stretch.terms.some((term) => NO_ADJECTIVE.has(term.role) && term.last === at)
  );
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
  return further.map((one) => ({ ...draft, ...one, massG: MISSING }));
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
