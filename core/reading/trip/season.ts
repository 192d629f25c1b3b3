import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Season } from '../../model/trip.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import { hasRating, isBesideTrip, isOtherTime } from './told.js';

const SEASON_OF_MONTH: readonly Season[] = [
  'winter',
  'winter',
  'spring',
  'spring',
  'spring',
  'summer',
  'summer',
  'summer',
  'autumn',
  'autumn',
  'autumn',
  'winter',
];

export function seasonOf(stretch: Stretch): Given<Season> | undefined {
  const season = termsOf(stretch, 'season').find((term) => isTime(stretch, term, true) && !isPart(stretch, term));
  if (season !== undefined) return stated(season.value as Season, spanOf(stretch, season.first, season.last));
  const month = termsOf(stretch, 'month').find((term) => isTime(stretch, term, false)) ?? numberedMonth(stretch);
  if (month === undefined) return undefined;
  const value = SEASON_OF_MONTH[Number(month.value) - 1] ?? 'summer';
  return assumed(
    value,
    phrase`the month, north of the equator`,
    phrase`set the season`,
    spanOf(stretch, month.first, month.last),
  );
}

/** A row of a list tells the season of its own things, "Buff, winter", where nothing else of the trip stands beside it. */
function isOurs(stretch: Stretch, { first, last }: Term): boolean {
  const { row, measures } = stretch;
  const listed =
    row.bullet ||
    row.cells.length > 1 ||
    measures.some(({ unit }) => unit.dimension === 'mass' || unit.dimension === 'volume' || unit.dimension === 'ounce');
  return listed ? isBesideTrip(stretch, first, last) : !isOtherTime(stretch, first, last);
}

/** "## Winter" over a part of a list: what is in it is for winter; a title says when they go. */
function isPart({ row, tokens }: Stretch, term: Term): boolean {
  return row.line > 1 && row.type === 'heading' && tokens.length === term.last - term.first + 1;
}

/** "11月": months by number. */
function numberedMonth(stretch: Stretch): Pick<Term, 'value' | 'first' | 'last'> | undefined {
  for (const mark of termsOf(stretch, 'monthMark')) {
    const value = stretch.tokens[mark.first - 1]?.number?.value ?? 0;
    if (Number.isInteger(value) && value >= 1 && value <= 12) return { value, first: mark.first - 1, last: mark.last };
  }
  return undefined;
}

/** A season or month as a time of the trip: not "winter gas", "may", "fall apart", "if winter", a bag for winter. */
export function isTime(stretch: Stretch, term: Term, season: boolean): boolean {
  if (hasRating(stretch, term.first) || !isOurs(stretch, term)) return false;
  const conditional = stretch.terms.some((other) => other.role === 'if' && other.last === term.first - 1);
  if (
    conditional ||
    stretch.terms.some(
      (other) =>
        (other.role === 'gasMixes' || other.role === 'perPerson') &&
        other.first <= term.first &&
        other.last >= term.last,
    )
  )
    return false;
  const token = stretch.tokens[term.first];
  const word = token?.fold ?? '';
  const verb =
    word === 'may' ||
    word === 'march' ||
    word === 'fall' ||
    word === 'mar' ||
    word === 'spring' ||
    word === 'sept' ||
    word === 'jan' ||
    word === 'set' ||
    word === 'ago';
  // "Vi var ute": spring is vår.
  if (word === 'var') return /å/i.test(stretch.text.slice(token?.start, token?.end));
  if (!verb) return true;
  const before = stretch.tokens[term.first - 1];
  const after = stretch.tokens[term.last + 1];
  const parted =
    before === undefined ||
    before.type === 'sign' ||
    before.type === 'number' ||
    ['the', 'in', 'mid', 'late', 'early', 'end', 'of'].includes(before.fold);
  const closed =
    after === undefined || after.type === 'sign' || after.type === 'number' || season || after.type === 'word';
  const own = token === undefined ? '' : stretch.text.charAt(token.start);
  return parted && closed && (season || own !== own.toLowerCase());
}
