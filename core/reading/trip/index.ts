import type { Snow, TripHints } from '../../model/trip.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { spanOf, stated } from '../items/draft.js';
import { daysOf } from './days.js';
import { peopleOf, peoplePerPotOf } from './people.js';
import { RollCall } from './roll-call.js';
import { seasonOf } from './season.js';
import { valueIn } from './told.js';
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
]);

/** Reads what a row tells of the trip. `gear` is true for a row that names things of the list. Gives whether it told anything. */
export function readTrip(stretch: Stretch, gear: boolean, gathered: Gathered): boolean {
  const measured = stretch.measures.some(
    (measure) => measure.unit.dimension === 'temperature' || measure.unit.id === 'm' || measure.unit.id === 'ft',
  );
  if (!measured && !stretch.tells(TELLING)) return false;
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
