import { phrase } from '../../model/phrase.js';
import { assumed, near, spanOf, stated, within, type Draft } from './draft.js';
import type { Token } from '../text/tokens.js';
import type { Context } from './context.js';
import type { ItemKind } from '../../model/item.js';
import type { Measure } from '../quantities/measures.js';
import type { Term } from '../text/terms.js';
import { isNumero } from './denied.js';
import { clauseOf } from './clauses.js';
import { isDegrees } from '../trip/degrees.js';
import { groupOf } from '../trip/groups.js';
import { isRate, isShareOf } from './volume.js';
import { termsOf, type Stretch } from './stretch.js';

/** More pieces than this of one thing is a model, a size or a mass. */
const MOST = 99;
/** More parts than this no cook set has. */
const MOST_PARTS = 20;

interface Count {
  readonly value: number;
  readonly first: number;
  readonly last: number;
}

/** Reads how many there are, and whether for each person. */
export function readQuantity(stretch: Stretch, draft: Draft, context: Context): void {
  draft.perPerson ||= context.perPerson || perPersonIn(stretch, draft) || isLed(stretch, draft);
  const group = draft.perPerson ? undefined : (groupOf(stretch, draft.noun, draft.to) ?? context.perGroup);
  if (group !== undefined) draft.perGroup = group;
  const said = draft.quantity.grounds === 'stated' && draft.quantity.value === 1 ? piecesIn(stretch, draft) : undefined;
  if (draft.quantity.grounds !== 'missing' && said === undefined) return;
  const parts = partsOf(stretch, draft);
  if (parts !== undefined) {
    draft.taken.add(parts.first);
    draft.quantity = assumed(
      1,
      phrase`a set of ${parts.value} parts; how many of them are pots is not said`,
      phrase`write the pots of the set one by one`,
      spanOf(stretch, parts.first, parts.last),
    );
    return;
  }
  const count =
    said ??
    itemised(stretch, draft) ??
    packed(stretch, draft) ??
    before(stretch, draft) ??
    after(stretch, draft, context);
  if (count !== undefined) {
    for (let at = count.first; at <= count.last; at++) draft.taken.add(at);
    draft.quantity = stated(count.value, spanOf(stretch, count.first, count.last));
    return;
  }
  const [first, last] = draft.noun;
  if (draft.capacitiesMl.length > 1)
    draft.quantity = assumed(draft.capacitiesMl.length, phrase`one for each size`, phrase`write how many`);
  else if (first < 0 || draft.thing === undefined)
    draft.quantity = assumed(1, phrase`one line is taken as one piece`, phrase`write how many`);
  else if (draft.thing.term.many === undefined)
    draft.quantity = assumed(1, phrase`no number is given`, phrase`write how many`, spanOf(stretch, first, last));
  else if (!draft.thing.many) draft.quantity = stated(1, spanOf(stretch, first, last));
  else if (oneEach(stretch, draft)) draft.quantity = stated(1, spanOf(stretch, first, last));
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

/** "3-piece cook set", "Kochset, 3-teilig": the number is of parts, lids and all. */
function partsOf(stretch: Stretch, draft: Draft): Count | undefined {
  if (draft.kind !== 'pot' || draft.thing?.many === true) return undefined;
  for (const word of within(stretch, draft, 'parts')) {
    const hyphen = stretch.tokens[word.first - 1]?.fold === '-' ? 1 : 0;
    const count = numberAt(stretch, word.first - 1 - hyphen, true);
    if (count !== undefined && count.value > 1 && count.value <= MOST_PARTS) return { ...count, last: word.last };
  }
  return undefined;
}

/** "Pot set (one medium and one small)": a bracket that counts what is in it, and names nothing else. */
function itemised(stretch: Stretch, draft: Draft): Count | undefined {
  const open = draft.noun[1] + 1;
  if (draft.kind !== 'pot' || stretch.tokens[open]?.fold !== '(') return undefined;
  const counts: Count[] = [];
  for (let at = open + 1; at < draft.to && stretch.tokens[at]?.fold !== ')'; at++) {
    const count = numberAt(stretch, at);
    if (count !== undefined) counts.push(count);
    if (termsOf(stretch, 'people').some((term) => term.first === at)) return undefined;
    if (termsOf(stretch, 'kind').some((term) => term.first === at)) return undefined;
  }
  const [first] = counts;
  const last = counts.at(-1);
  if (first === undefined || last === undefined || counts.length < 2) return undefined;
  return { value: counts.reduce((sum, count) => sum + count.value, 0), first: first.first, last: last.last };
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
  const word =
    digits === undefined
      ? termsOf(stretch, 'number').find((term) => (back ? term.last === at : term.first === at))
      : undefined;
  const whole = digits === undefined ? Number.isInteger(word?.value) : digits.number.whole;
  if (!whole || isDegrees(stretch, at)) return undefined;
  // "beide mit Deckel": what is said of both counts nothing.
  if (termsOf(stretch, 'both').some((both) => both.first === at)) return undefined;
  // French "et" is one in Norwegian; between two figures it joins them.
  if (word !== undefined && termsOf(stretch, 'and').some((and) => and.first === word.first)) return undefined;
  return { value: digits?.value ?? Number(word?.value), first: word?.first ?? at, last: word?.last ?? at };
}

/** "2 x 1 L bottles", "(2) bottles", "two mugs", "a pair of cups". */
function before(stretch: Stretch, draft: Draft): Count | undefined {
  const end = draft.noun[0];
  for (let at = end - 1; at >= draft.from; at--) {
    // "Each patrol (6): pots": what stands in the label of a line counts none of its things.
    if (stretch.tokens[at]?.fold === ':' && stretch.tokens[at - 1]?.fold === ')') return undefined;
    const pair = termsOf(stretch, 'pair').find((term) => term.last === at);
    const tied = stretch.tokens[at + 1]?.fold === '-' && stretch.tokens[at + 1]?.gap === 0;
    if (pair !== undefined && end - at <= 3 && !tied && !(draft.kind === 'stove' && draft.thing?.many === false))
      return { value: 2, first: pair.first, last: pair.last };
    const count = draft.taken.has(at) ? undefined : numberAt(stretch, at, true);
    if (count === undefined) continue;
    if (count.value > MOST || isName(stretch, count, draft)) continue;
    return isOfOther(stretch, draft, count) ? undefined : count;
  }
  return undefined;
}

/** "2 grills, bottle 10 kg": what a word between counts, unknown as it may be, and a comma parts from the thing. */
function isOfOther(stretch: Stretch, draft: Draft, count: Count): boolean {
  const next = count.last + 1;
  if (draft.thing?.many === true || stretch.tokens[next]?.type !== 'word') return false;
  if ([...termsOf(stretch, 'pieces'), ...termsOf(stretch, 'with')].some((term) => term.first === next)) return false;
  const comma = stretch.tokens.findIndex((token, at) => at > next && token.fold === ',');
  return comma > next && comma < draft.noun[0] && stretch.tokens[next]?.fold !== 'x';
}

/** "2nd pot", "24er Pfanne", "2e gourde". */
const ORDINALS: ReadonlySet<string> = new Set(['nd', 'rd', 'th', 'er', 'e', 'eme', 'º', 'ª']);

/** A number that is part of a name ("Burrow 2 pot", "two-burner stove", "no. 1"), of a person or a measure. */
function isName(stretch: Stretch, count: Count, draft: Draft): boolean {
  const next = stretch.tokens[count.last + 1];
  const previous = stretch.tokens[count.first - 1];
  if (next?.fold === '-' && next.gap === 0) return true;
  if (draft.kind === 'stove' && termsOf(stretch, 'flames').some((term) => term.first === count.last + 1)) return true;
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
  if (termsOf(stretch, 'month').some((month) => month.first === count.last + 1)) return true;
  if (near(stretch, 'people', count.last, count.last, 0) !== undefined && count.last + 1 < draft.noun[0]) return true;
  if (next?.fold === 'x' || next?.fold === '×' || next?.fold === '*' || next?.fold === ')') return false;
  if (stretch.tokens[count.first]?.gap === 0 && count.first > draft.from) {
    if (previous?.type === 'word') return true;
    // "T-5 stove"; a dash that opens the line is a bullet.
    if (previous?.fold === '-' && previous.gap === 0 && stretch.tokens[count.first - 2]?.type === 'word') return true;
  }
  if (next?.gap === 0 && ORDINALS.has(next.fold)) return true;
  if (draft.thing?.many === false && isNumero(stretch, count.first - 2)) return true;
  const first = count.first === draft.from || (stretch.breaks[count.first] ?? 0) > 0 || previous?.type === 'sign';
  const counts = first || termsOf(stretch, 'article').some((term) => term.last === count.first - 1);
  const close = draft.thing?.many === true && draft.noun[0] - count.last <= 4;
  return !counts && !close;
}

/** "mugs x2", "bottles (2)", "mugs: 2", "Thermos 1 L, four", "bottle 1 L, 6 of". */
function after(stretch: Stretch, draft: Draft, context: Context): Count | undefined {
  for (let at = draft.noun[1] + 1; at < draft.to; at++) {
    const count = draft.taken.has(at) ? undefined : numberAt(stretch, at);
    if (count === undefined || count.value > MOST || isSharedOut(stretch, draft, count)) continue;
    const sided = {
      stretch,
      draft,
      count,
      many: draft.thing?.term.many,
      next: stretch.tokens[count.last + 1],
      previous: stretch.tokens[at - 1],
      weighed: context.massUnit !== undefined,
    };
    if (isTimes(sided) || isCalledCount(sided) || standsAlone(sided) || followsClosely(sided)) return count;
  }
  return undefined;
}

/** "2.5 l in 3 bottles": what is measured as a whole is only carried in so many. */
function isSharedOut(stretch: Stretch, draft: Draft, count: Count): boolean {
  return (
    draft.kind === 'fuel' &&
    termsOf(stretch, 'asides').some((term) => term.last === count.first - 1) &&
    stretch.measures.some((measure) => measure.unit.dimension === 'volume' && measure.last < count.first)
  );
}

/** A number after its noun, and what stands on either side of it. */
interface Sided {
  readonly stretch: Stretch;
  readonly draft: Draft;
  readonly count: Count;
  readonly many: boolean | undefined;
  readonly previous: Token | undefined;
  readonly next: Token | undefined;
  /** The last figure of a row is a mass. */
  readonly weighed: boolean;
}

/** More than this right after a singular noun is a model or a size. */
const MOST_BESIDE = 24;

/** "mugs x2 260 g"; "× 2" and "2 x" that no further number follows: of "bottle 34 x2" the 2. */
function isTimes({ stretch, count, previous, next }: Sided): boolean {
  if (next?.fold === 'x' && next.gap > 0 && stretch.tokens[count.last + 2]?.gap === 0) return false;
  const times = [previous?.fold, next?.fold].some((fold) => fold === 'x' || fold === '×');
  const glued = stretch.tokens[count.first]?.gap === 0;
  const factor = previous?.fold === 'x' && previous.gap === 0 && stretch.tokens[count.first - 2]?.type === 'number';
  const sign = glued && previous?.gap === 1 && (previous.fold === 'x' || previous.fold === '×');
  return times && (sign || next?.number === undefined || next.gap === 2) && !factor;
}

/** "6 pcs", "12 tablets", "count: 2", "two each". */
function isCalledCount({ stretch, draft, count }: Sided): boolean {
  const { first, last } = count;
  const tablets = draft.kind === 'fuel' && termsOf(stretch, 'tablets').some((term) => term.first === last + 1);
  return (
    tablets ||
    termsOf(stretch, 'pieces').some(
      (term) => term.first === last + 1 && !stretch.bare.some((number) => number.at === term.last + 1),
    ) ||
    termsOf(stretch, 'countLabels').some((term) => term.last === first - 1 || term.last === first - 2) ||
    termsOf(stretch, 'perPerson').some((term) => term.first === last + 1 || (term.first <= first && term.last >= first))
  );
}

/** Between commas or brackets with nothing else, before another number, or as the first word of a cell. */
function standsAlone({ stretch, draft, count, many, previous, next }: Sided): boolean {
  const opens = stretch.breaks[count.first] ?? 0;
  // "…, two 6 l bags": a word that counts stands before what it counts.
  const spoken = stretch.tokens[count.first]?.type === 'word';
  const ends =
    next === undefined ||
    (next.type === 'number' && !spoken) ||
    count.last + 1 >= draft.to ||
    (stretch.breaks[count.last + 1] ?? 0) > 0;
  if (many !== true && count.value > MOST_BESIDE) return false;
  if (opens === 2 && count.value > MOST_BESIDE && stretch.row.cells.length > 1) return false;
  if (opens > 0 && ends && !isOther(previous)) return true;
  return opens === 2 && many === true && stretch.tokens[count.first]?.type === 'word';
}

/** "Kettle 1", "Becher 4", "Sporks 5 1.8", "mugs: 2 × 450 ml", "bottle, 33 oz 3 Wiz", "stoves (gas) 2 Wiz". */
function followsClosely({ stretch, draft, count, many, previous, next, weighed }: Sided): boolean {
  const token = stretch.tokens[count.first];
  if (token?.type !== 'number') return false;
  const at = count.first;
  const start = draft.noun[1] + 1;
  if (previous?.fold === ':' && at - start <= 2) return true;
  if (count.value < 1 || count.value > MOST_BESIDE) return false;
  if (at === start && many !== true && weighed && next === undefined) return false;
  if (at === start) return token.gap > 0 && (count.value === 1 || many !== false || next?.type === 'number');
  const measured = stretch.measures.some((measure) => measure.last === at - 1);
  return measured ? next?.type === 'word' : previous?.fold === ')';
}

/** After a currency sign, an equals sign, "no." or a diameter: no count. */
function isOther(previous: Token | undefined): boolean {
  return previous !== undefined && '$€£=ø#'.includes(previous.fold) && previous.fold !== '';
}

/** "one each", "per person", "je eine", "a mug each"; not "14 g each", nor a pot's "0.75 l per person". */
function perPersonIn(stretch: Stretch, draft: Draft): boolean {
  if (within(stretch, draft, 'people').some((term) => sharesOut(stretch, term))) return true;
  return within(stretch, draft, 'perPerson').some((term) => {
    const previous = term.first - 1;
    if (isOfNext(stretch, draft, term)) return false;
    const measured = stretch.measures.find((measure) => measure.last === previous);
    if (measured !== undefined && saysEach(stretch, term)) return isOnesOwn(draft, measured);
    if (measured !== undefined && (isShareOf(draft, measured) || isRate(stretch, measured))) return false;
    if (term.last > term.first || stretch.tokens[term.first]?.fold === 'pp') return true;
    if (measured !== undefined || isOfPieces(stretch, draft, term)) return false;
    if (!saysEach(stretch, term)) return true;
    return (
      numberAt(stretch, previous, true) !== undefined ||
      isCountOfThings(stretch, term.last + 1) ||
      (previous === draft.noun[1] && endsPart(stretch, draft, term.last + 1))
    );
  });
}

/** "Thermos 1 L each": of one thing that can only be everybody's own. */
function isOnesOwn(draft: Draft, measure: Measure): boolean {
  const one = draft.quantity.grounds === 'missing' || draft.quantity.value === 1;
  return measure.unit.dimension === 'volume' && draft.thing?.term.many === false && one;
}

/** "… two cans of 230 g. Each a mug": a later sentence that names a thing of its own speaks of that. */
function isOfNext(stretch: Stretch, draft: Draft, term: Term): boolean {
  const { from, to } = clauseOf(stretch, term);
  return from > draft.noun[1] && termsOf(stretch, 'kind').some(({ first, last }) => first > term.last && last < to);
}

/** "1人1個", "1 person 1 mug": for one person so many. */
export function sharesOut(stretch: Stretch, people: Term): boolean {
  return stretch.tokens[people.first - 1]?.number?.value === 1 && stretch.tokens[people.last + 1]?.type === 'number';
}

/** "Jeder Topf", "Töpfe, jeder 1 L": each of the things, not of the people. */
function isOfPieces(stretch: Stretch, draft: Draft, term: Term): boolean {
  return term.last === draft.noun[0] - 1 || stretch.measures.some((measure) => measure.first === term.last + 1);
}

/** "Each 2", not "cada 3 personas". */
function isCountOfThings(stretch: Stretch, at: number): boolean {
  const count = numberAt(stretch, at);
  return count !== undefined && !termsOf(stretch, 'people').some((term) => term.first === count.last + 1);
}

/** Words that may be of each piece as well as of each person. */
function saysEach(stretch: Stretch, term: Term): boolean {
  return termsOf(stretch, 'each').some((other) => other.first === term.first && other.last === term.last);
}

function endsPart(stretch: Stretch, draft: Draft, at: number): boolean {
  return at >= draft.to || at >= stretch.tokens.length || (stretch.breaks[at] ?? 0) > 0;
}

/** Words of the label that opens a line: "everyone else brings:". */
const LONGEST_LABEL = 4;

/** The words that say of a line, or of a sentence of it, that everybody brings it: "each scout: …", "par personne 1 quart, …", "iedereen neemt mee: …". */
function leadsOf(stretch: Stretch): Term[] {
  return termsOf(stretch, 'perPerson').filter((term) => {
    if (term.first > 0 && stretch.breaks[term.first] !== 2) return false;
    if (term.last > term.first) return true;
    const label = stretch.tokens.slice(term.first, term.first + LONGEST_LABEL);
    const end = label.findIndex(({ fold }) => fold === ':' || fold === '=');
    return end > 0 ? label.slice(0, end).every(({ type }) => type === 'word') : '-–'.includes(label[1]?.fold ?? ' ');
  });
}

/** Whether a row says that everybody brings what it names, and so lists it. */
export function isLedByPerson(stretch: Stretch): boolean {
  return leadsOf(stretch).length > 0;
}

/** What such words are said of: up to the next sentence, or what is shared. */
function isLed(stretch: Stretch, draft: Draft): boolean {
  const at = Math.max(draft.noun[0], 0);
  const lead = leadsOf(stretch).findLast((term) => term.first <= at);
  if (lead === undefined) return false;
  for (let i = lead.last + 1; i <= at; i++) if ((stretch.breaks[i] ?? 0) === 2) return false;
  return !termsOf(stretch, 'shared').some((term) => term.first > lead.first && term.first < at);
}

/** "Plate, mug and spoon each": what stands after the last piece of ware is of those before it as well. */
export function sharePerson(stretch: Stretch, drafts: readonly Draft[]): void {
  for (let i = drafts.length - 2; i >= 0; i--) {
    const draft = drafts[i];
    const next = drafts[i + 1];
    if (draft === undefined || next === undefined || !next.perPerson || !WARE.has(draft.kind) || !WARE.has(next.kind))
      continue;
    const joined = stretch.breaks.slice(draft.noun[1] + 1, next.noun[0] + 1).every((strength) => strength < 2);
    if (joined) draft.perPerson = true;
  }
}

/** What one eats and drinks from. */
const WARE: ReadonlySet<ItemKind> = new Set(['mug', 'bowl', 'utensil', 'other-cook']);
