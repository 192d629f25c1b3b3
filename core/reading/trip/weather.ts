import type { Given } from '../../model/given.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { clauseOf } from '../items/clauses.js';
import { spanOf, stated } from '../items/draft.js';
import { ANYWHERE, hasRating, valueIn } from './told.js';

/** Metres between which a height is one where people cook. */
const ALTITUDES: readonly [number, number] = [300, 9000];

export function lowOf(stretch: Stretch): Given<number> | undefined {
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

export function altitudeOf(stretch: Stretch): Given<number> | undefined {
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
