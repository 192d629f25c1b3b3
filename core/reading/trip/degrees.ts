import type { Role } from '../text/lexicon.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { clauseOf } from '../items/clauses.js';

/** A number that shows no degrees and is a temperature all the same. */
export interface Degrees {
  readonly value: number;
  /** Its first token, sign and all; the number itself; its last. */
  readonly first: number;
  readonly at: number;
  readonly last: number;
  /** "In the 20s": degrees that are counted so are Fahrenheit. */
  readonly decade: boolean;
}

const SPEAKS: ReadonlySet<Role> = new Set(['cold', 'lows', 'minus', 'to', 'season', 'month', 'snow', 'meltsSnow']);
/** Tokens between a number and the words that make it a temperature. */
const REACH = 5;
/** What is counted is no temperature: "-2 mugs", "-3 days". */
const COUNTED: ReadonlySet<Role> = new Set([
  'kind',
  'container',
  'fuelTypes',
  'materials',
  'pieces',
  'people',
  'day',
  'night',
  'week',
]);
const COLDEST = -70;

/** "Low of -5", "-15 la nuit", "lows around 5", "lows in the 20s": the numbers that are degrees by the words around them. */
export function degreesIn(stretch: Stretch): Degrees[] {
  if (!stretch.tells(SPEAKS)) return [];
  const numbers = [
    ...stretch.bare.map(({ at, value }) => ({ value, at, last: at, decade: false })),
    ...termsOf(stretch, 'number').map(({ value, first, last }) => ({
      value: Number(value),
      at: first,
      last,
      decade: false,
    })),
    ...stretch.measures
      .filter(({ unit, last, values }) => unit.id === 'other' && values.length === 1 && isDecade(stretch, last, values))
      .map(({ first, last, values }) => ({ value: values[0] ?? 0, at: first, last, decade: true })),
  ];
  return numbers.flatMap(({ value, at, last, decade }) => {
    if (value > -COLDEST || stretch.terms.some((term) => term.first === last + 1 && COUNTED.has(term.role))) return [];
    const sign = signBefore(stretch, at);
    const told =
      isNear(stretch, 'lows', sign ?? at, last) ||
      (sign === undefined
        ? (value === 0 || decade) && isNear(stretch, 'cold', at, last)
        : isNear(stretch, 'cold', at, last) || isWintry(stretch, sign, last));
    return told ? [{ value: sign === undefined ? value : -value, first: sign ?? at, at, last, decade }] : [];
  });
}

/** Whether the number at a token is degrees, and so counts nothing. */
export function isDegrees(stretch: Stretch, at: number): boolean {
  return degreesIn(stretch).some((degrees) => degrees.at <= at && degrees.last >= at);
}

/** The first token of the sign that makes a number negative: a dash tied to it alone, or "minus". */
export function signBefore(stretch: Stretch, at: number): number | undefined {
  // "Fussy below 20 degrees": a bound; "10 below" is a temperature.
  const word = termsOf(stretch, 'minus').find(
    (term) => term.last === at - 1 && !termsOf(stretch, 'unit').some(({ first }) => first === term.first),
  );
  if (word !== undefined) return word.first;
  const sign = stretch.tokens[at - 1];
  const before = stretch.tokens[at - 2];
  if (sign === undefined || !'-−–'.includes(sign.fold) || sign.type !== 'sign' || stretch.tokens[at]?.gap !== 0)
    return undefined;
  const free =
    before === undefined ||
    (before.type === 'sign' && before.fold !== '.' && before.fold !== ')') ||
    (before.type === 'word' && (sign.gap > 0 || before.fold.charCodeAt(0) >= UNSPACED)) ||
    stretch.measures.some((measure) => measure.last === at - 2);
  return free || endsRange(stretch, at - 1) ? at - 1 : undefined;
}

/** From here on scripts leave no space between words. */
const UNSPACED = 0x2e80;

/** "-10 -15": the second of two negative numbers. */
function endsRange(stretch: Stretch, sign: number): boolean {
  return (
    stretch.tokens[sign - 1]?.type === 'number' && (stretch.tokens[sign]?.gap ?? 0) > 0 && isSign(stretch, sign - 2)
  );
}

function isSign(stretch: Stretch, at: number): boolean {
  const fold = stretch.tokens[at]?.fold;
  return fold === '-' || fold === '–' || fold === '−';
}

function isDecade(stretch: Stretch, last: number, values: readonly number[]): boolean {
  return stretch.tokens[last]?.fold === 's' && (values[0] ?? 1) % 10 === 0;
}

/** A word of the role close by in the same sentence, or in the cell before. */
function isNear(stretch: Stretch, role: Role, at: number, last: number): boolean {
  const { from, to } = clauseOf(stretch, { first: at, last });
  return termsOf(stretch, role).some(
    (term) =>
      term.last === at - 1 ||
      (term.first >= from && term.last < to && at - term.last <= REACH && term.first - last <= REACH),
  );
}

/** "February, -15", "bis -12": alone between signs in a line that speaks of winter, or the end of a range. */
function isWintry(stretch: Stretch, sign: number, last: number): boolean {
  if (termsOf(stretch, 'to').some((term) => term.last === sign - 1)) return true;
  const alone = (at: number) => stretch.tokens[at] === undefined || stretch.tokens[at]?.type === 'sign';
  return (
    alone(sign - 1) &&
    alone(last + 1) &&
    (['season', 'month', 'snow', 'meltsSnow'] as const).some((role) => termsOf(stretch, role).length > 0)
  );
}
