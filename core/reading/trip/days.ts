import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import { followed, hasRating, isDoubt, labelledCount, numbersIn, type Count } from './told.js';

export function daysOf(stretch: Stretch): Given<number> | undefined {
  for (const number of numbersIn(stretch)) {
    if (number.value < 1 || number.value > 400 || isDoubt(stretch, number.first)) continue;
    for (const [role, factor] of [
      ['day', 1],
      ['week', 7],
    ] as const) {
      const word = followed(stretch, number, role) ?? ownUnit(stretch, number, role) ?? hyphened(stretch, number, role);
      if (word === undefined || isRange(stretch, number) || notDaysAfter(stretch, word.last)) continue;
      return stated(number.value * factor, spanOf(stretch, number.first, word.last));
    }
  }
  const figure = labelledCount(stretch, 'day');
  if (figure !== undefined) return stated(figure.value, spanOf(stretch, figure.first, figure.last));
  const span = termsOf(stretch, 'span')[0];
  if (span !== undefined && !isDoubt(stretch, span.first) && !hasRating(stretch, span.first))
    return stated(Number(span.value), spanOf(stretch, span.first, span.last));
  for (const number of numbersIn(stretch)) {
    const night = followed(stretch, number, 'night');
    if (
      night !== undefined &&
      number.value >= 1 &&
      number.value < 100 &&
      !isRange(stretch, number) &&
      !isDoubt(stretch, number.first)
    )
      return assumed(
        number.value + 1,
        phrase`one day more than nights`,
        phrase`write the days`,
        spanOf(stretch, number.first, night.last),
      );
  }
  return undefined;
}

/** "3 d": the letter was taken for a unit. */
function ownUnit(stretch: Stretch, number: Count, role: Term['role']): Term | undefined {
  return termsOf(stretch, role).find((term) => term.first === number.last + 1);
}

/** "3-day trip", "5-daagse tocht": of days the hyphen makes no model, as it does of people ("2-person tent"). */
function hyphened(stretch: Stretch, number: Count, role: Term['role']): Term | undefined {
  if (stretch.tokens[number.last + 1]?.fold !== '-') return undefined;
  return termsOf(stretch, role).find((term) => term.first === number.last + 2);
}

function notDaysAfter(stretch: Stretch, last: number): boolean {
  return termsOf(stretch, 'notDays').some((term) => term.first > last && term.first <= last + 2);
}

/** "three to four days", "four or five nights": no count. */
function isRange(stretch: Stretch, number: Count): boolean {
  const before = number.first - 1;
  const sign = stretch.tokens[before]?.fold;
  if ((sign === '-' || sign === '–') && stretch.tokens[before - 1]?.type === 'number') return true;
  return stretch.terms.some((term) => (term.role === 'to' || term.role === 'or') && term.last === before);
}
