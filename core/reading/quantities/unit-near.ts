import type { UnitName } from '../../data/words/words.js';
import type { Term } from '../text/terms.js';
import type { Token } from '../text/tokens.js';
import { unitByName, unitBySymbol, UNITS, type Unit } from './units.js';

export interface Found {
  readonly unit: Unit;
  /** Last token of the unit; where the unit goes first, the last of its numbers. */
  readonly last: number;
  /** What stands behind the unit: of "1L5" half a litre. */
  readonly more?: number;
}

/** What helps to tell units from words: names of units by their first token, and where articles, "w/" and the like stand. */
export interface UnitMarks {
  readonly units: ReadonlyMap<number, Term>;
  readonly determiners: ReadonlySet<number>;
  /** "w/", "c/", "m/": no watts, degrees or metres. */
  readonly shortWiths: ReadonlySet<number>;
}

export function unitMarks(terms: readonly Term[]): UnitMarks {
  const units = new Map<number, Term>();
  const determiners = new Set<number>();
  const shortWiths = new Set<number>();
  for (const term of terms) {
    if (term.role === 'unit' && !units.has(term.first)) units.set(term.first, term);
    else if (term.role === 'determiners' || term.role === 'article' || term.role === 'number')
      determiners.add(term.first);
    else if (term.role === 'with' && term.last > term.first) shortWiths.add(term.first);
  }
  return { units, determiners, shortWiths };
}

/** The unit that follows the number at `at`. */
export function unitAfter(tokens: readonly Token[], at: number, near: UnitMarks, quoted: boolean): Found | undefined {
  let i = at + 1;
  if (tokens[i]?.fold === '-' && tokens[i]?.gap === 0 && tokens[i + 1]?.gap === 0) i++;
  if (tokens[i]?.fold === '(' && tokens[i + 2]?.fold === ')') {
    const inside = unitBySymbol(tokens[i + 1]?.fold ?? '');
    return inside === undefined || inside.dimension === 'other' ? undefined : { unit: inside, last: i + 2 };
  }
  const token = tokens[i];
  const next = tokens[i + 1];
  if (token === undefined || (token.gap === 2 && !isUnitCell(token, next))) return undefined;
  if (token.fold === 'fl') {
    const dot = next?.fold === '.' ? i + 2 : i + 1;
    const ounce = tokens[dot];
    if (ounce?.fold === 'oz' || ounce?.fold === 'ozs' || ounce?.fold.startsWith('ounce') === true)
      return { unit: UNITS.floz, last: dotted(tokens, dot) };
  }
  if (token.fold === '°') {
    if (next?.gap === 0 && (next.fold === 'c' || next.fold === 'f'))
      return { unit: next.fold === 'c' ? UNITS.c : UNITS.f, last: i + 1 };
    return { unit: UNITS.deg, last: i };
  }
  if (token.fold === '"' && (token.gap > 0 || quoted)) return undefined;
  if (token.fold === "'") {
    if (token.gap > 0) return undefined;
    if (next?.fold === "'" && next.gap === 0) return { unit: UNITS.in, last: i + 1 };
  }
  if (token.fold === 'cm' && next?.number !== undefined && next.gap === 0)
    return next.number.value === 3 ? { unit: UNITS.ml, last: i + 1 } : undefined;
  if (near.shortWiths.has(i)) return undefined;
  const term = near.units.get(i);
  const glued = term === undefined ? next : tokens[term.last + 1];
  if (token.type === 'word' && glued?.number !== undefined && glued.gap === 0)
    return term === undefined ? compound(tokens, at, i) : undefined;
  if (term !== undefined) {
    const unit = unitByName(term.value as UnitName);
    return unit.dimension === 'temperature' && term.last === i && tokens[i + 1]?.fold === 'f'
      ? { unit: UNITS.f, last: i + 1 }
      : { unit, last: dotted(tokens, term.last) };
  }
  if (token.fold === 'c' || token.fold === 'f') {
    if (next?.fold === '.' && next.gap === 0 && token.fold === 'c' && tokens[i + 2] !== undefined)
      return { unit: UNITS.cup, last: i + 1 };
    return endsHere(next) ? { unit: token.fold === 'c' ? UNITS.c : UNITS.f, last: i } : undefined;
  }
  if (token.fold === 'in')
    return next === undefined || next.type === 'sign' || next.type === 'number'
      ? { unit: UNITS.in, last: dotted(tokens, i) }
      : inchBefore(i, near);
  if (token.fold === 'ø') return undefined;
  const unit = unitBySymbol(token.fold);
  // "16 h=9" has a label; "60 g = 2.1 oz" has units, but of "2 x 80 g = 160 g" the latter is of all.
  const label = next?.fold === '=' && (token.fold !== 'g' || next.gap === 0 || tokens[i + 3]?.fold === 'g');
  if (unit === undefined || label) return undefined;
  if (token.fold === '#' && token.gap > 0) return undefined;
  return { unit, last: token.type === 'word' ? dotted(tokens, i) : i };
}

/** "1L5" and "1l50", as the French write it, and "1lb3oz". */
function compound(tokens: readonly Token[], at: number, i: number): Found | undefined {
  const unit = tokens[i]?.fold;
  const rest = tokens[i + 1]?.number;
  const after = tokens[i + 2];
  if (tokens[at]?.number?.whole !== true || rest?.whole !== true) return undefined;
  if (unit === 'lb' || unit === 'lbs') return after?.fold === 'oz' ? { unit: UNITS.lb, last: i } : undefined;
  if (unit !== 'l' || rest.digits > 2 || (after !== undefined && after.gap === 0 && after.type !== 'sign'))
    return undefined;
  return { unit: UNITS.l, last: i + 1, more: rest.value / 10 ** rest.digits };
}

/** A unit alone in the cell after its number. */
function isUnitCell(token: Token, next: Token | undefined): boolean {
  return (
    (next === undefined || next.gap === 2) && token.type === 'word' && token.fold.length > 1 && token.fold !== 'in'
  );
}

/** "ml: 350", "\"weight_g\": 150": a label that is a unit, at the head of its own field. */
export function unitBefore(tokens: readonly Token[], at: number): Found | undefined {
  const colon = tokens[at - 1];
  const quoted = tokens[at - 2]?.fold === '"' ? 1 : 0;
  const label = tokens[at - 2 - quoted];
  const before = tokens[at - 3 - quoted];
  if (colon?.fold !== ':' || label?.type !== 'word' || (before !== undefined && before.type !== 'sign'))
    return undefined;
  const unit = unitBySymbol(label.fold);
  return unit === undefined || unit.dimension === 'other' || label.fold === 'in' ? undefined : { unit, last: at };
}

/** Units that may stand before their number. */
const LEADING: ReadonlySet<string> = new Set('ml cl dl l lt ltr g gr kg hg cm mm'.split(' '));
/** What "Gr. 9" gives below this is a size of gloves. */
const LEAST_LED_GRAMS = 10;

/** "lt 1,5", "gr. 230", "cm 24 x 10": the unit goes first, as Italians write it, and no number before it has it. `free` is the first token that no measure has taken. */
export function leadingUnit(tokens: readonly Token[], at: number, near: UnitMarks, free: number): Found | undefined {
  const { number, gap } = tokens[at]!;
  const dotted = tokens[at - 1]?.fold === '.' && tokens[at - 1]?.gap === 0;
  const place = dotted ? at - 2 : at - 1;
  const symbol = tokens[place];
  if (symbol?.type !== 'word' || place < free || gap === 2 || (gap === 0 && !dotted) || !LEADING.has(symbol.fold))
    return undefined;
  if (place > free && tokens[place - 1]?.type === 'number' && tokens[place - 2]?.fold !== 'ø') return undefined;
  const unit = unitBySymbol(symbol.fold);
  if (unit === undefined || number === undefined || (symbol.fold === 'l' && number.whole)) return undefined;
  if (unit === UNITS.g && number.value < LEAST_LED_GRAMS) return undefined;
  let last = at;
  if (unit.dimension === 'length')
    while (tokens[last + 2]?.number !== undefined && (tokens[last + 1]?.fold === 'x' || tokens[last + 1]?.fold === '×'))
      last += 2;
  const own = unitAfter(tokens, last, near, false);
  const leads = own === undefined || leadsOn(tokens, own.last + 1, near);
  return leads ? { unit, last } : undefined;
}

/** Whether what looks like the unit of one number is that of the next: of "cl 30 gr 85" the grams. */
function leadsOn(tokens: readonly Token[], at: number, near: UnitMarks): boolean {
  return tokens[at]?.number !== undefined && tokens[at]?.gap !== 2 && unitAfter(tokens, at, near, false) === undefined;
}

/** "10 in fry pan" is inches, "one in the pot" is not: an article or a number after it makes it the preposition. */
function inchBefore(at: number, near: UnitMarks): Found | undefined {
  return near.determiners.has(at + 1) ? undefined : { unit: UNITS.in, last: at };
}

function endsHere(next: Token | undefined): boolean {
  return next === undefined || next.type === 'sign' || next.gap === 2;
}

/** Takes in the full stop of an abbreviation ("qt.", "lts."), where a word or a closing sign follows it closely. */
function dotted(tokens: readonly Token[], at: number): number {
  const dot = tokens[at + 1];
  const word = tokens[at]?.fold ?? '';
  return dot?.fold === '.' && dot.gap === 0 && word.length <= 3 && word.length > 1 ? at + 1 : at;
}
