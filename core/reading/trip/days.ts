import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import { degreesIn } from './degrees.js';
import { isTime } from './season.js';
import {
  countOrMost,
  followed,
  hasRating,
  isDoubt,
  isOfTrip,
  isOpen,
  labelledCounts,
  numbersIn,
  rangeBefore,
  type Count,
} from './told.js';

/** Without one of these words a row tells nothing of days. */
const TELLING: ReadonlySet<Role> = new Set(['day', 'night', 'week', 'span', 'month', 'monthLong', 'weekday']);

export function daysOf(stretch: Stretch): Given<number> | undefined {
  if (!stretch.tells(TELLING)) return undefined;
  const numbers = numbersIn(stretch).filter(
    (number) =>
      number.value >= 1 &&
      number.value <= 400 &&
      !isDoubt(stretch, number.first) &&
      !isOpen(stretch, number) &&
      !isDate(stretch, number),
  );
  for (const number of numbers) {
    for (const [role, factor] of [
      ['day', 1],
      ['week', 7],
    ] as const) {
      const word = followed(stretch, number, role) ?? ownUnit(stretch, number, role) ?? hyphened(stretch, number, role);
      if (word === undefined || notDaysAfter(stretch, word.last) || !isStay(stretch, number, word)) continue;
      return countOrMost(stretch, number, word.last, number.value * factor);
    }
  }
  for (const number of numbers) {
    const months = followed(stretch, number, 'monthLong');
    if (months === undefined || number.value > MOST_MONTHS || !isStay(stretch, number, months)) continue;
    return assumed(
      number.value * DAYS_A_MONTH,
      phrase`a month is taken for 30 days`,
      phrase`write the days`,
      spanOf(stretch, number.first, months.last),
    );
  }
  const [figure] = labelledCounts(stretch, 'day');
  if (figure !== undefined) return countOrMost(stretch, figure, figure.last);
  const span = termsOf(stretch, 'span').find(
    (term) => !isTemperature(stretch, term) && isOfTrip(stretch, term.first, term.last),
  );
  if (span !== undefined && !isDoubt(stretch, span.first) && !hasRating(stretch, span.first))
    return stated(Number(span.value), spanOf(stretch, span.first, span.last));
  for (const number of numbers) {
    const night = followed(stretch, number, 'night') ?? hyphened(stretch, number, 'night');
    if (night !== undefined && number.value < 100 && isStay(stretch, number, night))
      return afterNights(stretch, number, night.last);
  }
  const [nights] = labelledCounts(stretch, 'night');
  if (nights !== undefined) return afterNights(stretch, nights, nights.last);
  return betweenDates(stretch) ?? betweenWeekdays(stretch);
}

const DAYS_A_MONTH = 30;
const MOST_MONTHS = 12;

/** "Fri-Sun", "vrijdag t/m zondag", "Sat & Sun". */
function betweenWeekdays(stretch: Stretch): Given<number> | undefined {
  const weekdays = termsOf(stretch, 'weekday');
  for (const [i, first] of weekdays.entries()) {
    const last = weekdays[i + 1];
    if (last === undefined) break;
    const days = ((Number(last.value) - Number(first.value) + 7) % 7) + 1;
    if (days === 1 || !isSpan(stretch, first.last + 1, last.first, days)) continue;
    return assumed(
      days,
      phrase`from the first day to the last`,
      phrase`write the days`,
      spanOf(stretch, first.first, last.last),
    );
  }
  return undefined;
}

/** A dash or "to", and nothing else, between two days; "and" between neighbours. */
function isSpan(stretch: Stretch, from: number, to: number, days: number): boolean {
  const at = stretch.tokens[from]?.fold === '.' ? from + 1 : from;
  const sign = at === to - 1 ? (stretch.tokens[at]?.fold ?? ' ') : ' ';
  if ('-–~'.includes(sign) || (days === 2 && '/&+'.includes(sign))) return true;
  const joints = days === 2 ? (['to', 'and'] as const) : (['to'] as const);
  return joints.some((role) => termsOf(stretch, role).some((term) => term.first === at && term.last === to - 1));
}

/** "14-16 March", "vom 12. bis 15. Juli": from the first date to the last. */
function betweenDates(stretch: Stretch): Given<number> | undefined {
  const dates = numbersIn(stretch).filter(({ value }) => value >= 1 && value <= 31);
  for (const month of termsOf(stretch, 'month')) {
    if (!isTime(stretch, month, false)) continue;
    const last = dates.find((date) => isWithin(afterOrdinal(stretch, date), month.first)) ?? dates.at(-1);
    const first = dates.find((date) => last !== undefined && date.value < last.value && spans(stretch, date, last));
    if (first === undefined || last === undefined || isDoubt(stretch, first.first)) continue;
    const from = Math.min(first.first, month.first);
    if (first.first - month.last > MOST_BESIDE || month.first - last.last > MOST_BESIDE + 1) continue;
    return assumed(
      last.value - first.value + 1,
      phrase`from the first date to the last`,
      phrase`write the days`,
      spanOf(stretch, from, Math.max(last.last, month.last)),
    );
  }
  return undefined;
}

/** Words between a date and its month: "7 de agosto". */
const MOST_BESIDE = 2;

function isWithin(at: number, month: number): boolean {
  return month >= at && month - at < MOST_BESIDE;
}

/** "12.", "12th", "1er": the token after a date. */
function afterOrdinal(stretch: Stretch, { last }: Count): number {
  const next = stretch.tokens[last + 1];
  const ordinal = next?.gap === 0 && (next.fold === '.' || (next.type === 'word' && next.fold.length <= 2));
  return ordinal ? last + 2 : last + 1;
}

function spans(stretch: Stretch, first: Count, last: Count): boolean {
  return isSpan(stretch, afterOrdinal(stretch, first), last.first, last.value - first.value + 1);
}

/** "8月3日", "8月3日-5日": the day of a month that is written by number. */
function isDate(stretch: Stretch, { first }: Count): boolean {
  return termsOf(stretch, 'monthMark').some((mark) => {
    const day = termsOf(stretch, 'day').find((term) => term.first === mark.last + 2);
    return mark.last === first - 1 || (day !== undefined && day.last === first - 2);
  });
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

/** Days of the trip: not the "30D" of a fabric, "one day in a shop" or "1 day of clothes". */
function isStay(stretch: Stretch, number: Count, word: Term): boolean {
  const short = stretch.tokens[word.first];
  const symbol = short !== undefined && word.first === word.last && short.fold.length === 1;
  if (symbol && short.fold.charCodeAt(0) < UNSPACED && !isSymbol(stretch, number, word)) return false;
  if (number.value === 1 && isInOne(stretch, number)) return false;
  return !isOfSomething(stretch, word) && isOfTrip(stretch, number.first, word.last);
}

/** From here on scripts leave no space between words. */
const UNSPACED = 0x2e80;

/** "3 d", "5D/4N": small letters, or both; a capital tied to a number, or a number tied to a word, is a model. */
function isSymbol(stretch: Stretch, number: Count, word: Term): boolean {
  const own = stretch.text.slice(stretch.tokens[word.first]?.start, stretch.tokens[word.last]?.end);
  const tied =
    number.first > 0 && stretch.tokens[number.first]?.gap === 0 && stretch.tokens[number.first - 1]?.type === 'word';
  if (tied) return false;
  return own === own.toLowerCase() || (termsOf(stretch, 'day').length > 0 && termsOf(stretch, 'night').length > 0);
}

/** "In one day". */
function isInOne(stretch: Stretch, { first }: Count): boolean {
  const before = stretch.tokens[first - 1];
  return before?.type === 'word' && termsOf(stretch, 'asides').some((term) => term.last === first - 1);
}

const OF: ReadonlySet<string> = new Set(['of', 'worth', 'de', 'd', 'di', 'an', 'van', 'med', 'mit', 'av', 'af']);
const STAYS: ReadonlySet<Role> = new Set(['outing', 'month', 'season', 'meltsSnow', 'self', 'people', 'companion']);

/** "3 days of clothes"; "three days of them on skis", "9 jours de rando" are days out. */
function isOfSomething(stretch: Stretch, word: Term): boolean {
  const of = stretch.tokens[word.last + 1];
  if (of?.type !== 'word' || of.gap === 2 || !OF.has(of.fold)) return false;
  const at = word.last + 2;
  const next = stretch.tokens[at];
  if (next?.type !== 'word' || next.fold === 'them' || next.fold === 'it') return false;
  return !stretch.terms.some((term) => STAYS.has(term.role) && term.first >= word.last + 1 && term.first <= at + 1);
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
