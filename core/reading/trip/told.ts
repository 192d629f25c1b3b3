import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { clauseOf, segmentOf, spanBreaks } from '../items/clauses.js';

export function valueIn(given: Given<number>): number {
  return given.grounds === 'missing' ? 0 : given.value;
}

export interface Count {
  readonly value: number;
  readonly first: number;
  readonly last: number;
}

/** The stretch whose numbers were last asked for: every reader of the trip asks for them. */
let counted: { readonly stretch: Stretch; readonly counts: readonly Count[] } | undefined;

/** The whole numbers of a stretch, in figures and words, in order. */
export function numbersIn(stretch: Stretch): readonly Count[] {
  if (counted?.stretch !== stretch) counted = { stretch, counts: countsOf(stretch) };
  return counted.counts;
}

function countsOf(stretch: Stretch): Count[] {
  const digits = stretch.bare
    .filter((number) => number.number.whole)
    .map((number) => ({ value: number.value, first: number.at, last: number.at }));
  const words = termsOf(stretch, 'number')
    .filter((term) => Number(term.value) >= 1 && Number.isInteger(term.value))
    .map((term) => ({ value: Number(term.value), first: term.first, last: term.last }));
  const measured = stretch.measures
    .filter(({ unit, joined }) => unit.dimension === 'other' && (joined === 'one' || joined === 'range'))
    .flatMap(({ values, at }) => at.map((first, i) => ({ value: values[i] ?? 0, first, last: first })));
  return [...digits, ...words, ...measured].sort((a, b) => a.first - b.first);
}

export function followed(stretch: Stretch, number: Count, role: Term['role']): Term | undefined {
  const next = stretch.tokens[number.last + 1];
  const hyphen = next?.fold === '-' && next.gap === 0;
  if (hyphen || next === undefined || next.gap === 2) return undefined;
  return termsOf(stretch, role).find(
    (term) =>
      term.first === number.last + 1 ||
      (term.first === number.last + 2 &&
        next.type === 'word' &&
        role !== 'night' &&
        stretch.tokens[term.first]?.gap !== 2),
  );
}

/** The lower end, where the number is the upper one of a range: "2-3 days", "three to four people". */
export function rangeBefore(stretch: Stretch, number: Count): Count | undefined {
  const joint = number.first - 1;
  const to = termsOf(stretch, 'to').find((term) => term.last === joint);
  const dash = '-–~'.includes(stretch.tokens[joint]?.fold ?? ' ');
  if (to === undefined && !dash) return undefined;
  const end = (to?.first ?? joint) - 1;
  return numbersIn(stretch).find((other) => other.last === end && other.value < number.value);
}

/** "Four or five nights": nobody knows yet. */
export function isOpen(stretch: Stretch, number: Count): boolean {
  return termsOf(stretch, 'or').some((term) => term.last === number.first - 1);
}

/** What the number says: itself; of a range its upper end, as a guess. */
export function countOrMost(stretch: Stretch, number: Count, last: number, value = number.value): Given<number> {
  const least = rangeBefore(stretch, number);
  return least === undefined
    ? stated(value, spanOf(stretch, number.first, last))
    : assumed(
        value,
        phrase`of a range the upper end is taken`,
        phrase`write one number`,
        spanOf(stretch, least.first, last),
      );
}

/** "People: 4, nights: 5, low: -20": a row that opens with a label has more of them. */
function isOfFields({ tokens }: Stretch): boolean {
  return tokens.slice(1, MOST_BEFORE + 1).some(({ fold }) => fold === ':' || fold === '=');
}

/** Words of a label before what it counts: "number of people". */
const MOST_BEFORE = 3;

/** "days: 5", "Tage: 2-3", "Adults: 2, children: 3", "number of people | 4": figures behind what they count; of a range the upper. */
export function labelledCounts(stretch: Stretch, role: Term['role']): Count[] {
  const numbers = numbersIn(stretch);
  const counts: Count[] = [];
  for (const [i, label] of termsOf(stretch, role).entries()) {
    if (termsOf(stretch, role)[i - 1]?.first === label.first) continue;
    const from = Math.max(segmentOf(stretch, label).from, (counts.at(-1)?.last ?? -1) + 1);
    const mark = stretch.tokens[label.last + 1];
    // "d=16 h=9": the label of a size.
    if (mark?.fold === '=' && stretch.tokens[label.last]?.fold.length === 1) continue;
    const at = mark?.fold === ':' || mark?.fold === '=' ? label.last + 2 : label.last + 1;
    const number = numbers.find(({ first }) => first === at);
    if (number === undefined || (at === label.last + 1 && mark?.gap !== 2)) continue;
    const named = stretch.tokens.slice(from, label.first).every(({ type }) => type !== 'number');
    const opens = counts.length > 0 || from === 0 || stretch.breaks[from] === 2 || isOfFields(stretch);
    if (!named || label.first - from > MOST_BEFORE || !opens) continue;
    counts.push(numbers.find((other) => rangeBefore(stretch, other)?.first === number.first) ?? number);
  }
  return counts;
}

/** A rating of gear anywhere in the sentence takes its temperature away from the trip. */
export const ANYWHERE = 1000;

export function hasRating(stretch: Stretch, at: number, reach = 3): boolean {
  const clause = clauseOf(stretch, { first: at, last: at });
  return termsOf(stretch, 'rated').some(
    (term) =>
      term.first >= clause.from &&
      term.last < clause.to &&
      at - term.last <= reach &&
      term.first - at <= reach &&
      // "For two, tent and stove": behind a comma comes another thing.
      !(reach < ANYWHERE && term.first > at && spanBreaks(stretch, at + 1, term.first)),
  );
}

/** Under a condition or in a comparison nothing is said of the trip. */
export function isDoubt(stretch: Stretch, at: number): boolean {
  const clause = clauseOf(stretch, { first: at, last: at });
  return termsOf(stretch, 'notDays').some((term) => {
    const short = term.first === term.last && (stretch.tokens[term.first]?.fold.length ?? 0) <= 3;
    return term.last < at && at - term.last <= (short ? 2 : 7) && term.first >= clause.from;
  });
}

/** Words beside which what a row says is said of the trip. */
const TRIPS: ReadonlySet<Role> = new Set([
  'outing',
  'people',
  'party',
  'cookGroup',
  'companion',
  'day',
  'night',
  'week',
  'span',
  'weekday',
  'month',
  'season',
  'meltsSnow',
  'noSnow',
  'lows',
]);
/** Of a sentence that says so little else, all may be of the trip: "popote pour 2 semaines". */
const MOST_OTHER_WORDS = 3;
/** "For", "à", "in": words that say nothing by themselves. */
const LONGEST_SMALL_WORD = 3;

/**
 * Whether what stands at the tokens is said of the trip: in a heading, on its own between signs, in a sentence with another word of the trip or
 * hardly any other. Not of another trip, nor under a condition: "topped out at 6 weeks", "I did 3 days last summer", "if for two".
 */
export function isOfTrip(stretch: Stretch, first: number, last: number): boolean {
  if (isBesideTrip(stretch, first, last)) return true;
  if (isOtherTime(stretch, first, last)) return false;
  const { from, to } = clauseOf(stretch, { first, last });
  let others = 0;
  for (let at = from; at < to && others <= MOST_OTHER_WORDS; at++) {
    const token = stretch.tokens[at];
    if (token?.type !== 'word' || (at >= first && at <= last)) continue;
    if (token.fold.length > LONGEST_SMALL_WORD || token.fold.charCodeAt(0) >= UNSPACED) others++;
  }
  return others <= MOST_OTHER_WORDS;
}

/** The same, without the grace that a short sentence has. */
export function isBesideTrip(stretch: Stretch, first: number, last: number): boolean {
  if (isOtherTime(stretch, first, last)) return false;
  if (stretch.row.type === 'heading') return true;
  const own = segmentOf(stretch, { first, last });
  if (own.from >= first - 1 && own.to === last + 1 && isFree(stretch, own.from, first)) return true;
  const { from, to } = clauseOf(stretch, { first, last });
  return stretch.terms.some(
    (term) => TRIPS.has(term.role) && term.first >= from && term.first < to && (term.last < first || term.first > last),
  );
}

/** Another trip, or none yet: "last summer", "if". */
export function isOtherTime(stretch: Stretch, first: number, last: number): boolean {
  const { from, to } = clauseOf(stretch, { first, last });
  return (
    termsOf(stretch, 'past').some((term) => term.first >= from && term.first < to) ||
    termsOf(stretch, 'if').some((term) => term.first >= from && term.first < first)
  );
}

/** From here on scripts leave no space between words. */
const UNSPACED = 0x2e80;

/** What opens a segment before the thing said is a sign alone. */
function isFree(stretch: Stretch, from: number, first: number): boolean {
  return from === first || stretch.tokens[from]?.type === 'sign';
}
