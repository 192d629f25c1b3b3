import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Measure } from '../quantities/measures.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { clauseOf, segmentOf } from '../items/clauses.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import { degreesIn, signBefore } from './degrees.js';
import { ANYWHERE, hasRating, valueIn } from './told.js';

/** Metres between which a height is one where people cook. */
const ALTITUDES: readonly [number, number] = [300, 9000];
/** °C between which a temperature is one that people camp at. */
const TEMPERATURES: readonly [number, number] = [-70, 40];
/** No night that is called cold is so warm in degrees Celsius. */
const WARMEST_LOW = 25;

/** The scale of degrees that name none. */
export type Scale = 'c' | 'f';

/** The lowest temperature that a row tells. What it states goes before what is guessed of its scale. */
export function lowOf(stretch: Stretch, scale: Scale): Given<number> | undefined {
  let low: Given<number> | undefined;
  for (const given of [...measured(stretch, scale), ...unmarked(stretch, scale)])
    if (given !== undefined && isLower(given, low)) low = given;
  return low;
}

export function isLower(given: Given<number>, than: Given<number> | undefined): boolean {
  if (than === undefined || than.grounds === given.grounds) return than === undefined || valueIn(given) < valueIn(than);
  return given.grounds === 'stated';
}

/** "-8 °C", "25F at night". */
function measured(stretch: Stretch, scale: Scale): (Given<number> | undefined)[] {
  return stretch.measures.map((measure) => {
    if (measure.unit.dimension !== 'temperature' || hasRating(stretch, measure.first, ANYWHERE)) return undefined;
    const sign = signBefore(stretch, measure.first);
    const minus = termsOf(stretch, 'minus').find(
      (term) => term.first >= measure.last && term.first <= measure.last + 1,
    );
    const clause = clauseOf(stretch, { first: measure.first, last: measure.last });
    const cold = (['cold', 'lows'] as const).some((role) =>
      termsOf(stretch, role).some((term) => term.first >= clause.from && term.last < clause.to),
    );
    const below = sign !== undefined || minus !== undefined;
    if (!below && !cold) return undefined;
    const word = sign !== undefined && stretch.tokens[sign]?.type === 'word';
    if (word && measure.unit.id === 'deg' && !cold) return undefined;
    const raw = Math.min(...measure.values);
    // A measure in degrees Fahrenheit is worked out as if it were above zero.
    const number = measure.unit.id === 'f' ? (raw * 9) / 5 + 32 : raw;
    const value = below ? -number : number;
    const span = spanOf(stretch, sign ?? measure.first, Math.max(measure.last, minus?.last ?? 0));
    if (measure.unit.id === 'f') return within(stated(celsius(value), span));
    return scale === 'f' && !saysScale(stretch, measure) ? guess(value, 'f', span) : within(stated(value, span));
  });
}

/** "Degrees" and "°" say no scale. */
function saysScale(stretch: Stretch, { first, last }: Measure): boolean {
  return stretch.tokens.slice(first, last + 1).some(({ fold }) => fold === 'c' || fold === '°c' || fold === 'celsius');
}

/** Numbers that are degrees by the words around them; of a range that ends in degrees ("-10 to -5 °C") they are of the same. */
function unmarked(stretch: Stretch, scale: Scale): (Given<number> | undefined)[] {
  return degreesIn(stretch).map(({ value, first, at, last, decade }) => {
    if (hasRating(stretch, at, ANYWHERE)) return undefined;
    const span = spanOf(stretch, first, last);
    const end = stretch.measures.find(
      (measure) => measure.unit.dimension === 'temperature' && measure.first > last && measure.first <= last + 3,
    );
    if (end?.unit.id === 'f') return within(stated(celsius(value), span));
    if (end !== undefined && saysScale(stretch, end)) return within(stated(value, span));
    return guess(value, scale === 'f' || decade || value >= WARMEST_LOW ? 'f' : 'c', span);
  });
}

function guess(value: number, scale: Scale, span: readonly [number, number]): Given<number> | undefined {
  return within(
    scale === 'f'
      ? assumed(
          celsius(value),
          phrase`degrees without a scale are taken as Fahrenheit here`,
          phrase`write the unit: ${value} °F`,
          span,
        )
      : assumed(
          value,
          phrase`degrees without a scale are taken as Celsius here`,
          phrase`write the unit: ${value} °C`,
          span,
        ),
  );
}

function celsius(fahrenheit: number): number {
  return Math.round((((fahrenheit - 32) * 5) / 9) * 10) / 10;
}

function within(given: Given<number>): Given<number> | undefined {
  const value = valueIn(given);
  return value < TEMPERATURES[0] || value > TEMPERATURES[1] ? undefined : given;
}

export function altitudeOf(stretch: Stretch): Given<number> | undefined {
  let high: Given<number> | undefined;
  for (const measure of stretch.measures) {
    if (measure.unit.id !== 'm' && measure.unit.id !== 'ft') continue;
    const clause = clauseOf(stretch, measure);
    if (!termsOf(stretch, 'altitude').some((term) => term.first >= clause.from && term.last < clause.to)) continue;
    if (isClimb(stretch, measure)) continue;
    const metres = Math.round(Math.max(...measure.values) / 1000);
    if (metres < ALTITUDES[0] || metres > ALTITUDES[1]) continue;
    if (high === undefined || valueIn(high) < metres)
      high = stated(metres, spanOf(stretch, measure.first, measure.last));
  }
  return high;
}

/** "Elevation gain 1000 ft", "1200 m D+", "well below 1000 feet": a way up, or a bound. */
function isClimb(stretch: Stretch, measure: Measure): boolean {
  const { from, to } = segmentOf(stretch, measure);
  return termsOf(stretch, 'climb').some(
    ({ first, last }) =>
      first >= from && last < to && (last < measure.first ? measure.first - last : first - measure.last) <= NEAR,
  );
}

/** Tokens between a measure and the word that makes it a climb. */
const NEAR = 4;
