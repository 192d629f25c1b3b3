import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import { degreesIn } from './degrees.js';
import {
  countOrMost,
  followed,
  hasRating,
  isDoubt,
  isOpen,
  labelledCounts,
  numbersIn,
  rangeBefore,
  type Count,
} from './told.js';

export function daysOf(stretch: Stretch): Given<number> | undefined {
  const numbers = numbersIn(stretch).filter(
    (number) => number.value >= 1 && number.value <= 400 && !isDoubt(stretch, number.first) && !isOpen(stretch, number),
  );
  for (const number of numbers) {
    for (const [role, factor] of [
      ['day', 1],
      ['week', 7],
    ] as const) {
      const word = followed(stretch, number, role) ?? ownUnit(stretch, number, role) ?? hyphened(stretch, number, role);
      if (word === undefined || notDaysAfter(stretch, word.last)) continue;
      return countOrMost(stretch, number, word.last, number.value * factor);
    }
  }
  const [figure] = labelledCounts(stretch, 'day');
  if (figure !== undefined) return countOrMost(stretch, figure, figure.last);
  const span = termsOf(stretch, 'span').find((term) => !isTemperature(stretch, term));
  if (span !== undefined && !isDoubt(stretch, span.first) && !hasRating(stretch, span.first))
    return stated(Number(span.value), spanOf(stretch, span.first, span.last));
  for (const number of numbers) {
    const night = followed(stretch, number, 'night') ?? hyphened(stretch, number, 'night');
    if (night !== undefined && number.value < 100) return afterNights(stretch, number, night.last);
  }
  const [nights] = labelledCounts(stretch, 'night');
  return nights === undefined ? undefined : afterNights(stretch, nights, nights.last);
}

function afterNights(stretch: Stretch, number: Count, last: number): Given<number> {
  return assumed(
    number.value + 1,
    phrase`one day more than nights`,
    phrase`write the days`,
    spanOf(stretch, rangeBefore(stretch, number)?.first ?? number.first, last),
  );
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

/** "Minus eight overnight": when it is so cold, not how long they are out. */
function isTemperature(stretch: Stretch, span: Term): boolean {
  return (
    termsOf(stretch, 'cold').some((term) => term.first === span.first) &&
    (degreesIn(stretch).length > 0 || stretch.measures.some((measure) => measure.unit.dimension === 'temperature'))
  );
}
