import { phrase } from '../../model/phrase.js';
import type { Snow, TripHints, Wind } from '../../model/trip.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { spanOf, stated, type Draft } from '../items/draft.js';
import { daysOf } from './days.js';
import { groupsIn } from './groups.js';
import { peopleOf, peoplePerPotOf } from './people.js';
import { RollCall } from './roll-call.js';
import { seasonOf } from './season.js';
import { clauseOf, segmentOf } from '../items/clauses.js';
import { isOfTrip, isOtherTime, numbersIn, valueIn } from './told.js';
import { altitudeOf, isLower, lowOf, type Scale } from './weather.js';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** Hints as they are gathered, and how good the place is that each comes from. */
export interface Gathered {
  readonly hints: Mutable<TripHints>;
  readonly weight: Map<keyof TripHints, number>;
  /** The scale of degrees that name none. */
  readonly degrees: Scale;
  readonly rollCall: RollCall;
}

export function gather(degrees: Scale): Gathered {
  return { hints: {}, weight: new Map(), degrees, rollCall: new RollCall() };
}

const TELLING: ReadonlySet<Term['role']> = new Set([
  'people',
  'peopleBefore',
  'party',
  'self',
  'companion',
  'day',
  'night',
  'lows',
  'cold',
  'minus',
  'week',
  'span',
  'season',
  'month',
  'weekday',
  'monthMark',
  'monthLong',
  'perGroup',
  'eachGroup',
  'cookGroup',
  'fireForbidden',
  'fireAllowed',
  'noSnow',
  'meltsSnow',
  'cookOnFire',
  'cookInside',
  'turnedOver',
  'wind',
  'youth',
  'scratch',
  'simmer',
  'boilOnly',
  'snow',
]);

/** Reads what a row tells of the trip. `drafts` are the things of the list that it names. Gives whether it told anything. */
export function readTrip(stretch: Stretch, drafts: readonly Draft[], gathered: Gathered): boolean {
  const gear = drafts.length > 0;
  const measured = stretch.measures.some(
    (measure) => measure.unit.dimension === 'temperature' || measure.unit.id === 'm' || measure.unit.id === 'ft',
  );
  const shared = drafts.some(({ perGroup }) => perGroup !== undefined);
  if (!measured && !shared && !stretch.tells(TELLING)) return false;
  let told = false;
  const weight = (stretch.row.type === 'heading' ? 3 : stretch.row.bullet ? 1 : 2) - (gear ? 0.5 : 0);
  const keep = <K extends keyof TripHints>(key: K, given: TripHints[K] | undefined, more = 0) => {
    if (given === undefined) return;
    const extra = more - (key === 'days' && given.grounds === 'assumed' ? 1.5 : 0);
    told = true;
    if ((gathered.weight.get(key) ?? -Infinity) >= weight + extra) return;
    gathered.weight.set(key, weight + extra);
    (gathered.hints as Record<string, unknown>)[key] = given;
  };
  const people = gathered.rollCall.hear(stretch, peopleOf(stretch, gear), gathered.hints.people);
  if (people.added) gathered.weight.delete('people');
  keep('people', people.given);
  keep('days', daysOf(stretch));
  keep('season', seasonOf(stretch));
  const low = lowOf(stretch, gathered.degrees);
  if (low !== undefined && isLower(low, gathered.hints.lowC)) {
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
  keep('peoplePerPot', peoplePerPotOf(stretch, drafts));
  const groups = groupsIn(stretch);
  keep('cookGroups', groups?.count);
  if (groups?.people.grounds === 'stated') keep('peoplePerPot', groups.people, 1);
  const says = <K extends keyof TripHints>(role: Term['role'], key: K, value: unknown, extra = 0, holds = isOfTrip) => {
    const term = termsOf(stretch, role).find(({ first, last }) => holds(stretch, first, last));
    if (term !== undefined) keep(key, stated(value, spanOf(stretch, term.first, term.last)) as TripHints[K], extra);
  };
  says('fireForbidden', 'firesAllowed', false, 1);
  says('fireAllowed', 'firesAllowed', true);
  says('noSnow', 'waterFrom', 'liquid', 1, isNow);
  says('meltsSnow', 'waterFrom', 'snow', 0, isNow);
  says('cookOnFire', 'cookAt', 'fire');
  if (!isDenied(stretch, 'cookInside')) says('cookInside', 'cooksInside', true);
  says('turnedOver', 'canisterTurned', true);
  const wind = termsOf(stretch, 'wind').find((term) => isOfTrip(stretch, term.first, term.last));
  if (wind !== undefined) keep('wind', stated(wind.value as Wind, spanOf(stretch, wind.first, wind.last)));
  const young = gear ? undefined : termsOf(stretch, 'youth').find((term) => isOurs(stretch, term));
  if (young !== undefined) keep('youthGroup', stated(true, spanOf(stretch, young.first, young.last)));
  if (!gear) {
    says('scratch', 'mealStyle', 'scratch');
    says('simmer', 'mealStyle', 'simmer');
    says('boilOnly', 'mealStyle', 'boil-only', 1);
  }
  const snow = termsOf(stretch, 'snow')[0];
  if (snow !== undefined) keep('snow', stated(snow.value as Snow, spanOf(stretch, snow.first, snow.last)));
  return told;
}

function isNow(stretch: Stretch, first: number, last: number): boolean {
  return !isOtherTime(stretch, first, last);
}

/** "12 scouts", "canoe trip with kids", a title: young people who go along, not "the kids have quit camping". */
function isOurs(stretch: Stretch, young: Term): boolean {
  if (stretch.row.type === 'heading') return true;
  if (!isOfTrip(stretch, young.first, young.last)) return false;
  const { from, to } = clauseOf(stretch, young);
  return (
    (stretch.words <= MOST_WORDS && !stretch.row.bullet) ||
    termsOf(stretch, 'outing').some(({ first }) => first >= from && first < to) ||
    numbersIn(stretch).some(
      ({ first, last }) => last === young.first - 1 || first === young.last + 1 || first === young.last + 2,
    )
  );
}

/** A line of so few words is a title. */
const MOST_WORDS = 3;

/** How many people there are in all, where only the groups are counted: "2 cook groups of 4". */
export function countGroups({ hints }: Gathered): void {
  const { people, cookGroups, peoplePerPot } = hints;
  if (people !== undefined || cookGroups?.grounds !== 'stated' || peoplePerPot?.grounds !== 'stated') return;
  hints.people = {
    grounds: 'worked-out',
    value: cookGroups.value * peoplePerPot.value,
    from: phrase`${cookGroups.value} groups of ${peoplePerPot.value}`,
    cites: [],
    ...(cookGroups.span === undefined ? {} : { span: cookGroups.span }),
  };
}

/** "We never cook in the tent". */
function isDenied(stretch: Stretch, role: Term['role']): boolean {
  const term = termsOf(stretch, role)[0];
  if (term === undefined) return false;
  const { from, to } = segmentOf(stretch, term);
  return termsOf(stretch, 'no').some(({ first, last }) => first >= from && last < to);
}
