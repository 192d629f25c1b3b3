import { assumed, near, spanOf, stated, within, type Draft } from './draft.js';
import type { Stretch } from './stretch.js';
import { termsOf } from './stretch.js';
import type { Context } from './context.js';

/** More pieces than this of one thing is a model, a size or a mass. */
const MOST = 99;

interface Count {
  readonly value: number;
  readonly first: number;
  readonly last: number;
}

/** Reads how many there are, and whether for each person. */
export function readQuantity(stretch: Stretch, draft: Draft, context: Context): void {
  const person = perPersonIn(stretch, draft);
  draft.perPerson = person || context.perPerson;
  const said = draft.quantity.grounds === 'stated' && draft.quantity.value === 1 ? piecesIn(stretch, draft) : undefined;
  if (draft.quantity.grounds !== 'missing' && said === undefined) return;
  const count = said ?? packed(stretch, draft) ?? before(stretch, draft) ?? after(stretch, draft);
  if (count !== undefined) {
    for (let at = count.first; at <= count.last; at++) draft.taken.add(at);
    draft.quantity = stated(count.value, spanOf(stretch, count.first, count.last));
    return;
  }
  const [first, last] = draft.noun;
  if (first < 0 || draft.thing === undefined)
    draft.quantity = assumed(1, 'one line is taken as one piece', 'write how many');
  else if (draft.thing.term.many === undefined)
    draft.quantity = assumed(1, 'no number is given', 'write how many', spanOf(stretch, first, last));
  else if (!draft.thing.many) draft.quantity = stated(1, spanOf(stretch, first, last));
  else if (oneEach(stretch, draft)) draft.quantity = stated(1, spanOf(stretch, first, last));
  else if (draft.capacitiesMl.length > 1)
    draft.quantity = stated(draft.capacitiesMl.length, spanOf(stretch, first, last));
}

/** Tablets are counted in their name, whatever the column of counts says of the box: "12 pcs of 5 g". */
function piecesIn(stretch: Stretch, draft: Draft): Count | undefined {
  if (draft.kind !== 'fuel') return undefined;
  for (const piece of within(stretch, draft, 'pieces')) {
    const count = numberAt(stretch, piece.first - 1, true);
    if (count !== undefined && count.value > 1 && count.value <= MOST) return count;
  }
  return undefined;
}

/** "cups, one each": the one is part of the phrase. */
function oneEach(stretch: Stretch, draft: Draft): boolean {
  return within(stretch, draft, 'perPerson').some((term) =>
    [...termsOf(stretch, 'article'), ...termsOf(stretch, 'number')].some(
      (one) => one.first >= term.first && one.last <= term.last,
    ),
  );
}

/** "2 packs of 6". */
function packed(stretch: Stretch, draft: Draft): Count | undefined {
  for (const pack of within(stretch, draft, 'packOf')) {
    const inside = numberAt(stretch, pack.last + 1);
    if (inside === undefined || inside.value < 1 || inside.value > MOST) continue;
    const packs = numberAt(stretch, pack.first - 1, true);
    const factor = packs !== undefined && packs.first >= draft.from && packs.value <= MOST ? packs : undefined;
    return { value: inside.value * (factor?.value ?? 1), first: factor?.first ?? pack.first, last: inside.last };
  }
  return undefined;
}

/** A whole number at a token: digits that no unit follows, a number word, an article. */
function numberAt(stretch: Stretch, at: number, back = false): Count | undefined {
  const digits = stretch.bare.find((number) => number.at === at);
  if (digits !== undefined) return digits.number.whole ? { value: digits.value, first: at, last: at } : undefined;
  const word = termsOf(stretch, 'number').find((term) => (back ? term.last === at : term.first === at));
  if (word !== undefined)
    return Number.isInteger(word.value) ? { value: Number(word.value), first: word.first, last: word.last } : undefined;
  return undefined;
}

/** "2 x 1 L bottles", "(2) bottles", "two mugs", "a pair of cups". */
function before(stretch: Stretch, draft: Draft): Count | undefined {
  const end = draft.noun[0];
  for (let at = end - 1; at >= draft.from; at--) {
    const pair = termsOf(stretch, 'pair').find((term) => term.last === at);
    const tied = stretch.tokens[at + 1]?.fold === '-' && stretch.tokens[at + 1]?.gap === 0;
    if (pair !== undefined && end - at <= 3 && !tied) return { value: 2, first: pair.first, last: pair.last };
    const count = numberAt(stretch, at, true);
    if (count === undefined) continue;
    if (count.value > MOST || isName(stretch, count, draft)) continue;
    return count;
  }
  return undefined;
}

/** A number that is part of a name ("Burrow 2 pot", "two-burner stove", "no. 1"), of a person or a measure. */
function isName(stretch: Stretch, count: Count, draft: Draft): boolean {
  const next = stretch.tokens[count.last + 1];
  const previous = stretch.tokens[count.first - 1];
  if (next?.fold === '-' && next.gap === 0) return true;
  if (
    previous !== undefined &&
    (previous.fold === '#' ||
      previous.fold === '$' ||
      previous.fold === '€' ||
      previous.fold === '£' ||
      previous.fold === '=' ||
      previous.fold === 'ø')
  )
    return true;
  if (near(stretch, 'people', count.last, count.last, 0) !== undefined && count.last + 1 < draft.noun[0]) return true;
  if (next?.fold === 'x' || next?.fold === '×' || next?.fold === '*' || next?.fold === ')') return false;
  if (stretch.tokens[count.first]?.gap === 0 && count.first > draft.from) return true;
  const first = count.first === draft.from || (stretch.breaks[count.first] ?? 0) > 0 || previous?.type === 'sign';
  const counts = first || termsOf(stretch, 'article').some((term) => term.last === count.first - 1);
  const close = draft.thing?.many === true && draft.noun[0] - count.last <= 4;
  return !counts && !close;
}

/** "mugs x2", "bottles (2)", "mugs: 2", "Thermos 1 L, four", "bottle 1 L, 6 of". */
function after(stretch: Stretch, draft: Draft): Count | undefined {
  const start = draft.noun[1] + 1;
  for (let at = start; at < draft.to; at++) {
    const count = numberAt(stretch, at);
    if (count === undefined || count.value > MOST) continue;
    const previous = stretch.tokens[at - 1];
    const next = stretch.tokens[count.last + 1];
    const end = next === undefined || count.last + 1 >= draft.to || (stretch.breaks[count.last + 1] ?? 0) > 0;
    const times = previous?.fold === 'x' || previous?.fold === '×' || next?.fold === 'x' || next?.fold === '×';
    const pieces =
      termsOf(stretch, 'pieces').some((term) => term.first === count.last + 1) ||
      termsOf(stretch, 'countLabels').some((term) => term.last === at - 1 || term.last === at - 2) ||
      termsOf(stretch, 'perPerson').some(
        (term) => term.first === count.last + 1 || (term.first <= at && term.last > at),
      );
    if (times && !(stretch.tokens[at + 1]?.number !== undefined)) {
      if (previous?.fold === 'x' && previous.gap === 0 && stretch.tokens[at - 2]?.type === 'number') continue;
      return count;
    }
    if (pieces) return count;
    const alone = (stretch.breaks[at] ?? 0) > 0 && end;
    if (alone && !isOther(stretch, at)) return count;
    if (
      at === start &&
      count.value >= 1 &&
      count.value <= 24 &&
      stretch.tokens[at]?.type === 'number' &&
      (stretch.tokens[at]?.gap ?? 0) > 0 &&
      (count.value === 1 || draft.thing?.many !== false || next?.type === 'number')
    )
      return count;
    if (stretch.tokens[at]?.type === 'word' && (stretch.breaks[at] ?? 0) === 2 && draft.thing?.many === true)
      return count;
    if (stretch.tokens[at]?.type === 'number' && previous?.fold === ':' && at - start <= 2) return count;
    if (
      stretch.tokens[at]?.type === 'word' &&
      (stretch.breaks[at] ?? 0) > 0 &&
      termsOf(stretch, 'perPerson').some((term) => term.first === at)
    )
      return count;
    if (
      stretch.tokens[at]?.type === 'number' &&
      next !== undefined &&
      next.type === 'word' &&
      at > start &&
      stretch.measures.some((measure) => measure.last === at - 1) &&
      count.value <= 24
    )
      return count;
    if (
      stretch.tokens[at]?.type === 'number' &&
      previous?.fold === ')' &&
      count.value <= 24 &&
      stretch.measures.every((measure) => measure.last !== at - 1)
    )
      return count;
  }
  return undefined;
}

/** After a currency sign, an equals sign, "no." or a diameter: no count. */
function isOther(stretch: Stretch, at: number): boolean {
  const previous = stretch.tokens[at - 1]?.fold ?? '';
  return previous !== '' && '$€£=ø#'.includes(previous);
}

/** "one each", "per person", "je eine"; not "14 g each". */
function perPersonIn(stretch: Stretch, draft: Draft): boolean {
  return within(stretch, draft, 'perPerson').some((term) => {
    if (term.last > term.first) return true;
    const previous = term.first - 1;
    if (stretch.measures.some((measure) => measure.last === previous)) return false;
    const word = stretch.tokens[term.first]?.fold ?? '';
    const alsoEach = termsOf(stretch, 'each').some((other) => other.first === term.first);
    if (!alsoEach) return word.length > 1;
    return numberAt(stretch, previous, true) !== undefined || numberAt(stretch, term.last + 1) !== undefined;
  });
}
