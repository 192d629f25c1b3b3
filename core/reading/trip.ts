import type { Given } from '../model/given.js';
import type { Season, Snow, TripHints } from '../model/trip.js';
import { assumed, near, spanOf, stated } from './items/draft.js';
import { termsOf, type Stretch } from './items/stretch.js';
import { clauseOf } from './items/clauses.js';
import type { Term } from './text/terms.js';

/** A rating of gear anywhere in the sentence takes its temperature away from the trip. */
const ANYWHERE = 1000;

type Mutable<T> = { -readonly [K in keyof T]: T[K] };
/** Hints as they are gathered, and how good the place is that each comes from. */
export interface Gathered {
  readonly hints: Mutable<TripHints>;
  readonly weight: Map<keyof TripHints, number>;
}

export function gather(): Gathered {
  return { hints: {}, weight: new Map() };
}

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
/** Metres between which a height is one where people cook. */
const ALTITUDES: readonly [number, number] = [300, 9000];

const TELLING: readonly Term['role'][] = [
  'people',
  'peopleBefore',
  'party',
  'day',
  'night',
  'week',
  'span',
  'season',
  'month',
  'monthMark',
  'perGroup',
  'fireForbidden',
  'fireAllowed',
  'noSnow',
  'meltsSnow',
  'cookOnFire',
  'wind',
  'youth',
  'scratch',
  'simmer',
  'boilOnly',
  'snow',
];

/** Reads what a row tells of the trip. `gear` is true for a row that names things of the list. Gives whether it told anything. */
export function readTrip(stretch: Stretch, gear: boolean, gathered: Gathered): boolean {
  const measured = stretch.measures.some(
    (measure) => measure.unit.dimension === 'temperature' || measure.unit.id === 'm' || measure.unit.id === 'ft',
  );
  if (!measured && !TELLING.some((role) => stretch.byRole.has(role))) return false;
  let told = false;
  const weight = (stretch.row.type === 'heading' ? 3 : stretch.row.bullet ? 1 : 2) - (gear ? 0.5 : 0);
  const keep = <K extends keyof TripHints>(key: K, given: TripHints[K] | undefined, more = 0) => {
    if (given === undefined) return;
    const extra = more - (key === 'days' && given.grounds === 'assumed' ? 1.5 : 0);
    told = true;
    if ((gathered.weight.get(key) ?? 0) >= weight + extra) return;
    gathered.weight.set(key, weight + extra);
    (gathered.hints as Record<string, unknown>)[key] = given;
  };
  keep('people', peopleOf(stretch));
  keep('days', daysOf(stretch));
  keep('season', seasonOf(stretch));
  const low = lowOf(stretch);
  if (low !== undefined && !(gathered.hints.lowC !== undefined && valueIn(gathered.hints.lowC) <= valueIn(low))) {
    gathered.weight.delete('lowC');
    keep('lowC', low);
  }
  const high = altitudeOf(stretch);
  if (
    high !== undefined &&
    !(gathered.hints.altitudeM !== undefined && valueIn(gathered.hints.altitudeM) >= valueIn(high))
  ) {
    gathered.weight.delete('altitudeM');
    keep('altitudeM', high);
  }
  keep('peoplePerPot', peoplePerPotOf(stretch));
  const says = <K extends keyof TripHints>(role: Term['role'], key: K, value: unknown, extra = 0) => {
    const term = termsOf(stretch, role)[0];
    if (term !== undefined) keep(key, stated(value, spanOf(stretch, term.first, term.last)) as TripHints[K], extra);
  };
  says('fireForbidden', 'firesAllowed', false, 1);
  says('fireAllowed', 'firesAllowed', true);
  says('noSnow', 'waterFrom', 'liquid', 1);
  says('meltsSnow', 'waterFrom', 'snow');
  says('cookOnFire', 'cookAt', 'fire');
  says('wind', 'wind', 'windy');
  if (!gear) says('youth', 'youthGroup', true);
  if (!gear) {
    says('scratch', 'mealStyle', 'scratch');
    says('simmer', 'mealStyle', 'simmer');
    says('boilOnly', 'mealStyle', 'boil-only', 1);
  }
  const snow = termsOf(stretch, 'snow')[0];
  if (snow !== undefined) keep('snow', stated(snow.value as Snow, spanOf(stretch, snow.first, snow.last)));
  return told;
}

function valueIn(given: Given<number>): number {
  return given.grounds === 'missing' ? 0 : given.value;
}

interface Number_ {
  readonly value: number;
  readonly first: number;
  readonly last: number;
}

function numbersIn(stretch: Stretch): Number_[] {
  const digits = stretch.bare
    .filter((number) => number.number.whole)
    .map((number) => ({ value: number.value, first: number.at, last: number.at }));
  const words = termsOf(stretch, 'number')
    .filter((term) => Number(term.value) >= 1 && Number.isInteger(term.value))
    .map((term) => ({ value: Number(term.value), first: term.first, last: term.last }));
  const measured = stretch.measures
    .filter((measure) => measure.unit.dimension === 'other' && measure.values.length === 1)
    .map((measure) => ({ value: measure.values[0] ?? 0, first: measure.first, last: measure.first }));
  return [...digits, ...words, ...measured].sort((a, b) => a.first - b.first);
}

function followed(stretch: Stretch, number: Number_, role: Term['role']): Term | undefined {
  const next = stretch.tokens[number.last + 1];
  const hyphen = next?.fold === '-' && next.gap === 0;
  if (hyphen || next === undefined || next.gap === 2) return undefined;
  return termsOf(stretch, role).find(
    (term) =>
      term.first === number.last + 1 ||
      (term.first === number.last + 2 && stretch.tokens[number.last + 1]?.type === 'word' && role !== 'night'),
  );
}

function hasRating(stretch: Stretch, at: number, reach = 3): boolean {
  const clause = clauseOf(stretch, { first: at, last: at });
  return termsOf(stretch, 'rated').some(
    (term) => term.first >= clause.from && term.last < clause.to && at - term.last <= reach && term.first - at <= reach,
  );
}

function peopleOf(stretch: Stretch): Given<number> | undefined {
  const party = termsOf(stretch, 'party').find(
    (term) => !hasRating(stretch, term.first) && !isDoubt(stretch, term.first),
  );
  for (const number of numbersIn(stretch)) {
    if (number.value < 1 || number.value > 200 || (party !== undefined && party.first < number.first)) continue;
    if (hasRating(stretch, number.first) || isDoubt(stretch, number.first)) continue;
    const word = followed(stretch, number, 'people');
    const group = termsOf(stretch, 'perGroup').some((term) => term.last === number.first - 1);
    if (word !== undefined && !group && stretch.tokens[word.first]?.gap !== 2 && !isPart(stretch, number))
      return stated(number.value, spanOf(stretch, number.first, word.last));
    const before = termsOf(stretch, 'peopleBefore').find((term) => term.last === number.first - 1);
    const next = stretch.tokens[number.last + 1];
    if (
      before !== undefined &&
      (next === undefined || next.type === 'sign') &&
      number.value <= 60 &&
      !stretch.measures.some((measure) => measure.first === number.first)
    )
      return stated(number.value, spanOf(stretch, before.first, number.last));
  }
  return party === undefined ? undefined : stated(Number(party.value), spanOf(stretch, party.first, party.last));
}

/** "2 people of 4", "0.2 L × 4 people × 21 days": still people; "2-person" is not. */
function isPart(stretch: Stretch, number: Number_): boolean {
  return (
    stretch.tokens[number.first - 1]?.fold === '/' ||
    stretch.terms.some((term) => term.role === 'each' && term.last === number.first - 1)
  );
}

/** Under a condition or in a comparison nothing is said of the trip. */
function isDoubt(stretch: Stretch, at: number): boolean {
  const clause = clauseOf(stretch, { first: at, last: at });
  return termsOf(stretch, 'notDays').some((term) => {
    const short = term.first === term.last && (stretch.tokens[term.first]?.fold.length ?? 0) <= 3;
    return term.last < at && at - term.last <= (short ? 2 : 7) && term.first >= clause.from;
  });
}

function daysOf(stretch: Stretch): Given<number> | undefined {
  for (const number of numbersIn(stretch)) {
    if (number.value < 1 || number.value > 400 || isDoubt(stretch, number.first)) continue;
    for (const [role, factor] of [
      ['day', 1],
      ['week', 7],
    ] as const) {
      const word = followed(stretch, number, role) ?? ownUnit(stretch, number, role);
      if (word === undefined || isRange(stretch, number) || notDaysAfter(stretch, word.last)) continue;
      return stated(number.value * factor, spanOf(stretch, number.first, word.last));
    }
  }
  const labelled = termsOf(stretch, 'day').find(
    (term) => term.first === 0 && stretch.tokens[term.last + 1]?.fold === ':',
  );
  const figure =
    labelled === undefined ? undefined : numbersIn(stretch).find((number) => number.first === labelled.last + 2);
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
        'one day more than nights',
        'write the days',
        spanOf(stretch, number.first, night.last),
      );
  }
  return undefined;
}

/** "3 d": the letter was taken for a unit. */
function ownUnit(stretch: Stretch, number: Number_, role: Term['role']): Term | undefined {
  return termsOf(stretch, role).find((term) => term.first === number.last + 1);
}

function notDaysAfter(stretch: Stretch, last: number): boolean {
  return termsOf(stretch, 'notDays').some((term) => term.first > last && term.first <= last + 2);
}

/** "three to four days", "four or five nights": no count. */
function isRange(stretch: Stretch, number: Number_): boolean {
  const before = number.first - 1;
  const sign = stretch.tokens[before]?.fold;
  if ((sign === '-' || sign === '–') && stretch.tokens[before - 1]?.type === 'number') return true;
  return stretch.terms.some((term) => (term.role === 'to' || term.role === 'or') && term.last === before);
}

function seasonOf(stretch: Stretch): Given<Season> | undefined {
  const season = termsOf(stretch, 'season').find((term) => isTime(stretch, term, true));
  if (season !== undefined) return stated(season.value as Season, spanOf(stretch, season.first, season.last));
  const month = termsOf(stretch, 'month').find((term) => isTime(stretch, term, false)) ?? numberedMonth(stretch);
  if (month === undefined) return undefined;
  const value = SEASON_OF_MONTH[Number(month.value) - 1] ?? 'summer';
  return assumed(value, 'the month, north of the equator', 'set the season', spanOf(stretch, month.first, month.last));
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
function isTime(stretch: Stretch, term: Term, season: boolean): boolean {
  if (hasRating(stretch, term.first)) return false;
  const conditional = stretch.terms.some((other) => other.role === 'if' && other.last === term.first - 1);
  if (
    conditional ||
    stretch.terms.some((other) => other.role === 'gasMixes' && other.first <= term.first && other.last >= term.last)
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

function lowOf(stretch: Stretch): Given<number> | undefined {
  let low: Given<number> | undefined;
  for (const measure of stretch.measures) {
    if (measure.unit.dimension !== 'temperature' || hasRating(stretch, measure.first, ANYWHERE)) continue;
    const sign = stretch.tokens[measure.first - 1];
    const minus =
      (sign?.fold === '-' || sign?.fold === '−' || sign?.fold === '–') && stretch.tokens[measure.first]?.gap === 0
        ? sign
        : undefined;
    const word = termsOf(stretch, 'minus').find((term) => term.last === measure.first - 1);
    const clause = clauseOf(stretch, { first: measure.first, last: measure.last });
    const cold = termsOf(stretch, 'cold').some((term) => term.first >= clause.from && term.last < clause.to);
    const below = minus !== undefined || word !== undefined;
    if (!below && !cold) continue;
    if (word !== undefined && measure.unit.id === 'deg' && !cold) continue;
    const raw = measure.values[0] ?? 0;
    const value = below ? (measure.unit.id === 'f' ? ((-(raw * 9) / 5 - 32 - 32) * 5) / 9 : -raw) : raw;
    if (value < -70 || value > 40) continue;
    const first = minus !== undefined ? measure.first - 1 : (word?.first ?? measure.first);
    const given = stated(value, spanOf(stretch, first, measure.last));
    if (low === undefined || valueIn(low) > value) low = given;
  }
  return low;
}

function altitudeOf(stretch: Stretch): Given<number> | undefined {
  let high: Given<number> | undefined;
  for (const measure of stretch.measures) {
    if (measure.unit.id !== 'm' && measure.unit.id !== 'ft') continue;
    const clause = clauseOf(stretch, measure);
    if (!termsOf(stretch, 'altitude').some((term) => term.first >= clause.from && term.last < clause.to)) continue;
    const metres = Math.round(Math.max(...measure.values) / 1000);
    if (metres < ALTITUDES[0] || metres > ALTITUDES[1]) continue;
    if (high === undefined || valueIn(high) < metres)
      high = stated(metres, spanOf(stretch, measure.first, measure.last));
  }
  return high;
}

/** "One cook set per four", "1 pot between three". */
function peoplePerPotOf(stretch: Stretch): Given<number> | undefined {
  const pot = stretch.terms.some(
    (term) => term.role === 'kind' && (term.value === 'pot' || term.value === 'other-cook'),
  );
  if (!pot) return undefined;
  for (const group of termsOf(stretch, 'perGroup')) {
    const number = numbersIn(stretch).find((one) => one.first === group.last + 1);
    if (
      number !== undefined &&
      number.value > 1 &&
      number.value < 40 &&
      near(stretch, 'unit', number.last, number.last, 0) === undefined
    )
      return stated(number.value, spanOf(stretch, group.first, number.last));
  }
  return undefined;
}
