import type { Measure } from '../quantities/measures.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { clauseOf, spanBreaks } from './clauses.js';
import type { Context } from './context.js';
import { afterSet } from './labels.js';
import { isListed } from './listed.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Thing } from './things.js';

/** On which side of their nouns a row has its figures. */
interface Style {
  /** A measure goes before the first noun. */
  readonly led: boolean;
  /** "mugs 2 bowls 3", or "2 mugs 3 bowls". */
  readonly counted: 'before' | 'after';
}

/** How a row of some things sets its figures. */
export function styleOf(stretch: Stretch, mains: readonly Thing[]): Style {
  const first = mains[0]?.term.first ?? 0;
  const last = mains.at(-1)?.term.last ?? 0;
  return {
    led: stretch.measures.some((measure) => measure.last < first),
    counted: stretch.bare.some((number) => number.at === last + 1) ? 'after' : 'before',
  };
}

/** The first token that tells of a thing: its figures may stand before its noun, behind those of the thing before. */
export function startOf(
  stretch: Stretch,
  previous: Thing | undefined,
  thing: Thing,
  next: Thing | undefined,
  context: Context,
  { led, counted }: Style,
): number {
  const noun = thing.sorts[0]?.first ?? thing.term.first;
  if (previous === undefined) {
    const own = Math.max(afterSum(stretch, thing.term), afterOther(stretch, thing, next));
    if (own > 0) return own;
    const { from } = clauseOf(stretch, thing.term);
    const before = stretch.tokens[from - 1];
    const measured = stretch.measures.some((measure) => measure.first < from && measure.last >= from - 1);
    const told = stretch.row.cells.length === 1 && (measured ? namesOther(stretch, from) : before?.type === 'word');
    return isListed(stretch, context) && !told ? 0 : from;
  }
  const least = previous.term.last + 1;
  let at = noun;
  while (at > least && (stretch.breaks[at] ?? 0) === 0) at--;
  const before = stretch.measures.filter((measure) => measure.first >= at && measure.last < noun);
  const last = before.at(-1);
  const joined = stretch.breaks.slice(previous.term.last + 1, noun + 1).every((strength) => strength === 0);
  if (joined && !led) {
    const number = stretch.bare.findLast((one) => one.at > previous.term.last && one.at < noun);
    const own = number !== undefined && thing.many && counted === 'before' && countsNext(stretch, number.at, noun);
    return Math.max(at, (last?.last ?? -1) + 1, (number?.at ?? -1) + (own ? 0 : 1));
  }
  if (last === undefined) return at;
  const end = Math.min(
    next?.sorts[0]?.first ?? next?.term.first ?? stretch.tokens.length,
    clauseOf(stretch, thing.term).to,
  );
  const opens = opensPart(stretch, last.first);
  const again = stretch.measures.some(
    (measure) =>
      measure.first > thing.term.last &&
      measure.first < end &&
      !(opens && spanBreaks(stretch, thing.term.last + 1, measure.first)) &&
      measure.unit.dimension === last.unit.dimension &&
      measure.joined !== 'times',
  );
  const gap = (stretch.tokens[last.last + 1]?.gap ?? 1) === 2;
  return again || gap ? last.last + 1 : at;
}

/** "Kitchen weighs 312 g: stove 45 g, pot …": where the things begin after a section's own sum; 0 where there is none. */
function afterSum(stretch: Stretch, first: Term): number {
  const set = termsOf(stretch, 'kind').find((term) => term.last < first.first);
  const parts = set === undefined ? 0 : afterSet(stretch, set, first);
  if (parts > 0) return parts;
  const colon = stretch.tokens.findIndex((token) => token.fold === ':');
  if (colon < 0 || colon > first.first) return 0;
  const summed = stretch.measures.some((measure) => measure.last < colon && measure.unit.dimension === 'mass');
  const further = stretch.measures.some((measure) => measure.first > first.last);
  const section = termsOf(stretch, 'section').some((term) => term.last < colon);
  return summed && further && section ? colon + 1 : 0;
}

/**
 * "Tarp 400 g, stove", "Zelt 2 kg + Kocher 95 g": where the first thing begins after others that are none of ours. What has a name that is
 * known to be none, or a figure such as the first thing has one of its own, keeps its figures.
 */
function afterOther(stretch: Stretch, thing: Thing, next: Thing | undefined): number {
  const noun = thing.sorts[0]?.first ?? thing.term.first;
  let at = noun - 1;
  while (at > 0 && !isPartSign(stretch, at)) at--;
  if (at <= 0) return afterNeighbour(stretch, thing, noun, next);
  const other = stretch.terms.some((term) => NO_KIT.has(term.role) && term.first < at);
  if (other && stretch.measures.some((measure) => measure.last < at)) return at + 1;
  const until = next?.term.first ?? stretch.tokens.length;
  const again = stretch.measures.some(
    (measure) =>
      measure.first > at &&
      measure.first < until &&
      stretch.measures.some(
        (before) =>
          before.last < at && before.unit.dimension === measure.unit.dimension && isNamed(stretch, before.first),
      ),
  );
  return again ? at + 1 : 0;
}

/**
 * "Tente 1200 g Popote 1 L 160 g": two columns of a page on one line. What has a name and a mass of its own comes before the thing, which
 * has another; the gas in a can is less than the whole.
 */
function afterNeighbour(stretch: Stretch, thing: Thing, noun: number, next: Thing | undefined): number {
  const before = stretch.measures.findLast(({ unit, last }) => MASSES.has(unit.dimension) && last < noun);
  if (before === undefined) return 0;
  // Of ounces that a vessel holds the maker may stand before: only what is known to be none of ours keeps them.
  const known = isNoKit(stretch, before.first - 1);
  if (!known && (before.unit.dimension === 'ounce' || !isNamed(stretch, before.first))) return 0;
  const isMass = (measure: Measure) => measure.unit.dimension === before.unit.dimension;
  const until = next?.term.first ?? stretch.tokens.length;
  const own = stretch.measures.find(
    (measure) => isMass(measure) && measure.first > thing.term.last && measure.first < until,
  );
  if (own === undefined) return 0;
  const holds = thing.kind === 'fuel' && (before.values[0] ?? 0) <= (own.values[0] ?? 0);
  return holds ? 0 : before.last + 1;
}

const NO_KIT: ReadonlySet<Role> = new Set(['notKit', 'food', 'otherUse']);

function isPartSign(stretch: Stretch, at: number): boolean {
  const token = stretch.tokens[at];
  return token?.type === 'sign' && ',;+/'.includes(token.fold) && (stretch.breaks[at] ?? 0) > 0;
}

const MASSES: ReadonlySet<string> = new Set(['mass', 'ounce']);

/** A word that is known, and of nothing here: "tent", "torch". */
function isNoKit(stretch: Stretch, at: number): boolean {
  const terms = stretch.terms.filter((term) => term.first <= at && term.last >= at);
  return terms.some(({ role }) => OTHERS.has(role)) && !terms.some(({ role }) => NAMES.has(role));
}

const OTHERS: ReadonlySet<Role> = new Set([...NO_KIT, 'section', 'rated']);
const NAMES: ReadonlySet<Role> = new Set(['kind', 'container', 'fuelTypes', 'stoveTypes', 'materials']);

/** Right before a figure stands a word that is no other term: a name. */
function isNamed(stretch: Stretch, at: number): boolean {
  const token = stretch.tokens[at - 1];
  return (
    token?.type === 'word' &&
    token.fold.length > 2 &&
    !stretch.terms.some((term) => term.first <= at - 1 && term.last >= at - 1)
  );
}

/** "Stove 95 g Gas 230 g 2 mugs": a number right before a noun, that no "×" ties to what goes before it. */
function countsNext(stretch: Stretch, at: number, noun: number): boolean {
  const times = stretch.tokens[at - 1]?.fold;
  return at === noun - 1 && times !== 'x' && times !== '×';
}

/** ", 1 l bottle", "and a 1 l bottle": a figure that a comma or an "and" goes before is of what comes after it. */
function opensPart(stretch: Stretch, at: number): boolean {
  const article = termsOf(stretch, 'article').some((term) => term.last === at - 1);
  const before = article ? at - 2 : at - 1;
  return stretch.tokens[before]?.fold === ',' || termsOf(stretch, 'and').some((term) => term.last === before);
}

/** Whether what stands before a wide gap is another entry, with a name and a figure of its own. */
function namesOther(stretch: Stretch, until: number): boolean {
  return stretch.tokens.some((token, at) => {
    if (at >= until || token.type !== 'word' || token.fold.length < 3) return false;
    const figure = stretch.measures.some((measure) => measure.first <= at && measure.last >= at);
    return !figure && !stretch.terms.some((term) => term.role === 'pieces' && term.first === at);
  });
}

/** The token after the last that can tell of a thing, where no other follows. */
export function endOf(stretch: Stretch, thing: Thing, context: Context): number {
  const end = isListed(stretch, context) ? stretch.tokens.length : clauseOf(stretch, thing.term).to;
  return stretch.tells(NO_KIT) ? Math.min(end, beforeOther(stretch, thing)) : end;
}

/** "Pot, tarp 400 g", "stove + 2 knives": where a part opens with what is none of ours. */
function beforeOther(stretch: Stretch, thing: Thing): number {
  for (const term of stretch.terms) {
    if (!NO_KIT.has(term.role) || term.first <= thing.term.last) continue;
    let at = term.first - 1;
    while (at > thing.term.last && isCount(stretch, at)) at--;
    if (at > thing.term.last && isPartSign(stretch, at)) return at;
  }
  return stretch.tokens.length;
}

function isCount(stretch: Stretch, at: number): boolean {
  return (
    stretch.bare.some((number) => number.at === at) ||
    stretch.terms.some(
      (term) => (term.role === 'number' || term.role === 'article' || term.role === 'pieces') && term.last === at,
    )
  );
}
