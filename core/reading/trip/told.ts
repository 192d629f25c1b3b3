import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { clauseOf } from '../items/clauses.js';

export function valueIn(given: Given<number>): number {
  return given.grounds === 'missing' ? 0 : given.value;
}

export interface Count {
  readonly value: number;
  readonly first: number;
  readonly last: number;
}

export function numbersIn(stretch: Stretch): Count[] {
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
      (term.first === number.last + 2 && stretch.tokens[number.last + 1]?.type === 'word' && role !== 'night'),
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

/** "days: 5", "Tage: 2-3", "people: 3": the figure of a line that opens with what it counts; of a range the upper. */
export function labelledCount(stretch: Stretch, role: Term['role']): Count | undefined {
  const label = termsOf(stretch, role).find((term) => term.first === 0 && stretch.tokens[term.last + 1]?.fold === ':');
  if (label === undefined) return undefined;
  const numbers = numbersIn(stretch);
  const figure = numbers.find((number) => number.first === label.last + 2);
  return figure && (numbers.find((number) => rangeBefore(stretch, number)?.first === figure.first) ?? figure);
}

/** A rating of gear anywhere in the sentence takes its temperature away from the trip. */
export const ANYWHERE = 1000;

export function hasRating(stretch: Stretch, at: number, reach = 3): boolean {
  const clause = clauseOf(stretch, { first: at, last: at });
  return termsOf(stretch, 'rated').some(
    (term) => term.first >= clause.from && term.last < clause.to && at - term.last <= reach && term.first - at <= reach,
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
