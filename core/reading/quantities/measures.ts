import type { UnitName } from '../../data/words/words.js';
import type { NumberText } from '../text/numbers.js';
import type { Term } from '../text/terms.js';
import type { Token } from '../text/tokens.js';
import { unitByName, unitBySymbol, UNITS, type System, type Unit } from './units.js';

/** A number with its unit, at tokens `first` to `last`. `values` are in mL, g, mm or °C; ounces stay ounces. */
export interface Measure {
  readonly first: number;
  readonly last: number;
  readonly unit: Unit;
  /** One, or several that share the unit: "4.7 x 5.1 in", "0.9/1.4 L". In the order of the text. */
  readonly values: readonly number[];
  /** The token of each value. */
  readonly at: readonly number[];
  /** How several values hang together. */
  readonly joined: 'one' | 'range' | 'times' | 'list';
  readonly system: System;
  /** The scale is a guess: pint, quart or gallon with nothing that tells US from imperial. */
  readonly unsure?: true;
}

/** A number with no unit. */
export interface Bare {
  readonly at: number;
  readonly value: number;
  readonly number: NumberText;
}

export interface Quantities {
  readonly measures: readonly Measure[];
  readonly bare: readonly Bare[];
}

export interface MeasureContext {
  /** The mark of tenths where the number does not show it. */
  readonly decimal: '.' | ',';
  /** Which pints and gallons, where nothing beside them tells. */
  readonly system: System;
  /** Pints, which the British keep: by the spelling of the text. */
  readonly pints: System;
  /** Whether anything in the text told so. */
  readonly systemKnown: boolean;
}

/** Finds the numbers of a row and their units. Linear in the tokens. */
export function findMeasures(tokens: readonly Token[], terms: readonly Term[], context: MeasureContext): Quantities {
  const unitTerms = new Map<number, Term>();
  const joiners = new Map<number, Term>();
  const systems = new Map<number, Term>();
  for (const term of terms) {
    if (term.role === 'unit' && !unitTerms.has(term.first)) unitTerms.set(term.first, term);
    else if (term.role === 'to' || term.role === 'and') joiners.set(term.first, term);
    else if (term.role === 'us' || term.role === 'imperial') systems.set(term.first, term);
  }
  const measures: Measure[] = [];
  const bare: Bare[] = [];
  let open: number[] = [];
  const quotes = { open: false };
  const flush = () => {
    for (const at of open) {
      const number = tokens[at]?.number;
      if (number !== undefined && !Number.isNaN(number.value))
        bare.push({ at, value: bareValue(number, context), number });
    }
    open = [];
  };
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at];
    if (token?.fold === '"' && tokens[at - 1]?.type !== 'number') quotes.open = !quotes.open;
    if (token?.number === undefined) continue;
    const skipped = notAQuantity(tokens, at);
    if (skipped > at) {
      flush();
      at = skipped - 1;
      continue;
    }
    const previous = open.at(-1);
    if (previous !== undefined && joinOf(tokens, previous, at, joiners) === undefined) flush();
    open.push(at);
    const found = unitAfter(tokens, at, unitTerms, quotes.open) ?? unitBefore(tokens, at);
    if (found === undefined) continue;
    const system =
      systemNear(found.last, systems, tokens) ??
      (found.unit.metric === true ? 'metric' : found.unit.id === 'pint' ? context.pints : context.system);
    const group = open;
    open = [];
    const measure = assemble(tokens, group, found, joiners, { ...context, system }, (rest) => {
      open = rest;
      flush();
    });
    const unsure =
      found.unit.imperial !== undefined &&
      found.unit.imperial !== found.unit.factor &&
      !context.systemKnown &&
      systemNear(found.last, systems, tokens) === undefined;
    measures.push(unsure ? { ...measure, unsure: true } : measure);
    at = measure.last;
  }
  flush();
  measures.push(...wordMeasures(tokens, terms, unitTerms, measures, context));
  measures.sort((a, b) => a.first - b.first);
  return { measures: compounds(measures, bare, tokens), bare };
}

/** "half a pint", "two litres", "pint pot": a number in words, or none, before the name of a unit. */
function wordMeasures(
  tokens: readonly Token[],
  terms: readonly Term[],
  unitTerms: ReadonlyMap<number, Term>,
  found: readonly Measure[],
  context: MeasureContext,
): Measure[] {
  const measures: Measure[] = [];
  for (const term of unitTerms.values()) {
    if (found.some((measure) => measure.first <= term.first && measure.last >= term.first)) continue;
    const unit = unitByName(term.value as UnitName);
    if (unit.dimension === 'temperature') continue;
    const article = terms.find((other) => other.role === 'article' && other.last === term.first - 1);
    const hyphen = tokens[term.first - 1]?.fold === '-' && tokens[term.first]?.gap === 0 ? 1 : 0;
    const end = article?.first ?? term.first - hyphen;
    const word = terms.find((other) => other.role === 'number' && other.last === end - 1 && Number(other.value) > 0);
    const vessel = terms.some(
      (other) => other.role === 'kind' && other.first === term.last + 1 && tokens[other.first]?.gap !== 2,
    );
    if (word === undefined && !(vessel && unit.dimension === 'volume' && unit.id !== 'cup')) continue;
    const system = unit.metric === true ? 'metric' : unit.id === 'pint' ? context.pints : context.system;
    const first = word?.first ?? term.first;
    measures.push({
      first,
      last: term.last,
      unit,
      values: [toScale(word === undefined ? 1 : Number(word.value), unit, factorOf(unit, system))],
      at: [first],
      joined: 'one',
      system,
    });
  }
  return measures;
}

function bareValue(number: NumberText, context: MeasureContext): number {
  return number.thousands !== undefined && number.mark !== context.decimal ? number.thousands : number.value;
}

/** The value of a number before its unit: "1.350 ml" is 1350, "1.350 l" is 1.35. */
export function valueBefore(number: NumberText, unit: Unit): number {
  if (number.thousands === undefined) return number.value;
  return unit.id === 'g' || unit.id === 'ml' || unit.id === 'mm' || unit.id === 'm' || unit.id === 'other'
    ? number.thousands
    : number.value;
}

/** Times, dates, map scales and version numbers: the token after them. `at` itself where it is none of them. */
function notAQuantity(tokens: readonly Token[], at: number): number {
  const number = tokens[at]?.number;
  if (number !== undefined && Number.isNaN(number.value)) return at + 1;
  let end = at;
  while (
    tokens[end + 1]?.fold === ':' &&
    tokens[end + 1]?.gap === 0 &&
    tokens[end + 2]?.number !== undefined &&
    tokens[end + 2]?.gap === 0
  )
    end += 2;
  if (end > at) {
    const thousand = tokens[end + 1];
    return thousand?.number?.digits === 3 && thousand.gap === 1 && tokens[end]?.number?.digits !== 2
      ? end + 2
      : tokens[end + 1]?.number === undefined || end > at
        ? end + 1 + groupAfter(tokens, end)
        : end + 1;
  }
  const dash = tokens[at + 1];
  const second = tokens[at + 2];
  const date =
    (dash?.fold === '-' || dash?.fold === '/' || dash?.fold === '.') &&
    dash.gap === 0 &&
    second?.number !== undefined &&
    second.gap === 0 &&
    tokens[at + 3]?.fold === dash.fold &&
    tokens[at + 3]?.gap === 0 &&
    tokens[at + 4]?.number !== undefined &&
    tokens[at + 4]?.gap === 0;
  if (!date) return at;
  end = at + 4;
  while (
    tokens[end + 1]?.fold === dash.fold &&
    tokens[end + 1]?.gap === 0 &&
    tokens[end + 2]?.number !== undefined &&
    tokens[end + 2]?.gap === 0
  )
    end += 2;
  return end + 1;
}

/** "1:50 000": the group of three after a scale belongs to it. */
function groupAfter(tokens: readonly Token[], end: number): number {
  const next = tokens[end + 1];
  return next?.number?.digits === 3 && next.number.whole && next.gap === 1 ? 1 : 0;
}

type Join = 'range' | 'times' | 'list';

/** How the number at `b` hangs on the one at `a`, by what stands between them. */
function joinOf(tokens: readonly Token[], a: number, b: number, joiners: ReadonlyMap<number, Term>): Join | undefined {
  if (b - a === 2) {
    const sign = tokens[a + 1];
    if (sign === undefined || sign.gap === 2 || tokens[b]?.gap === 2) return undefined;
    if (sign.fold === '-' || sign.fold === '–' || sign.fold === '~') return 'range';
    if (sign.fold === '×' || sign.fold === 'x' || sign.fold === '*') return 'times';
    if (sign.fold === '/' || sign.fold === '+' || sign.fold === '&') return 'list';
  }
  const term = joiners.get(a + 1);
  if (term !== undefined && term.last === b - 1) return term.role === 'to' ? 'range' : 'list';
  return undefined;
}

interface Found {
  readonly unit: Unit;
  /** Last token of the unit. */
  readonly last: number;
}

/** The unit that follows the number at `at`. */
export function unitAfter(
  tokens: readonly Token[],
  at: number,
  unitTerms: ReadonlyMap<number, Term>,
  quoted: boolean,
): Found | undefined {
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
  const term = unitTerms.get(i);
  const glued = term === undefined ? next : tokens[term.last + 1];
  if (token.type === 'word' && glued?.number !== undefined && glued.gap === 0) return undefined;
  if (term !== undefined) {
    const unit = unitByName(term.value as UnitName);
    return unit.dimension === 'temperature' && term.last === i && tokens[i + 1]?.fold === 'f'
      ? { unit: UNITS.f, last: i + 1 }
      : { unit, last: dotted(tokens, term.last) };
  }
  if (token.fold === 'c' || token.fold === 'f') {
    if (next?.fold === '.' && next.gap === 0 && token.fold === 'c') return { unit: UNITS.cup, last: i + 1 };
    return endsHere(next) ? { unit: token.fold === 'c' ? UNITS.c : UNITS.f, last: i } : undefined;
  }
  if (token.fold === 'in')
    return next === undefined || next.type === 'sign' || next.type === 'number'
      ? { unit: UNITS.in, last: dotted(tokens, i) }
      : inchBefore(tokens, i);
  if (token.fold === 'ø') return undefined;
  const unit = unitBySymbol(token.fold);
  if (unit === undefined || next?.fold === '=') return undefined;
  if (token.fold === '#' && token.gap > 0) return undefined;
  return { unit, last: token.type === 'word' ? dotted(tokens, i) : i };
}

/** A unit alone in the cell after its number. */
function isUnitCell(token: Token, next: Token | undefined): boolean {
  return (
    (next === undefined || next.gap === 2) && token.type === 'word' && token.fold.length > 1 && token.fold !== 'in'
  );
}

/** "ml: 350": a label that is a unit, at the head of its own field. */
function unitBefore(tokens: readonly Token[], at: number): Found | undefined {
  const colon = tokens[at - 1];
  const label = tokens[at - 2];
  const before = tokens[at - 3];
  if (colon?.fold !== ':' || label?.type !== 'word' || (before !== undefined && before.type !== 'sign'))
    return undefined;
  const unit = unitBySymbol(label.fold);
  return unit === undefined || unit.dimension === 'other' || label.fold === 'in' ? undefined : { unit, last: at };
}

/** "10 in fry pan" is inches, "one in the pot" is not: an article or a number after it makes it the preposition. */
function inchBefore(tokens: readonly Token[], at: number): Found | undefined {
  const next = tokens[at + 1]?.fold ?? '';
  const preposition = [
    'the',
    'a',
    'an',
    'it',
    'my',
    'one',
    'all',
    'each',
    'der',
    'die',
    'das',
    'dem',
    'den',
    'einem',
    'einer',
    'een',
    'de',
    'un',
    'una',
    'case',
    'total',
    'this',
    'that',
    'use',
    'camp',
  ].includes(next);
  return preposition ? undefined : { unit: UNITS.in, last: at };
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

function systemNear(last: number, systems: ReadonlyMap<number, Term>, tokens: readonly Token[]): System | undefined {
  let at = last + 1;
  if (tokens[at]?.fold === '(' || tokens[at]?.fold === ',') at++;
  const term = systems.get(at);
  return term === undefined ? undefined : term.role === 'us' ? 'us' : 'imperial';
}

function factorOf(unit: Unit, system: System): number {
  return system === 'imperial' ? (unit.imperial ?? unit.factor) : unit.factor;
}

/** The group of numbers that a unit closes. Numbers that do not belong to it are given back as bare. */
function assemble(
  tokens: readonly Token[],
  group: readonly number[],
  found: Found,
  joiners: ReadonlyMap<number, Term>,
  context: MeasureContext,
  giveBack: (rest: number[]) => void,
): Measure {
  const values = group.map((at) => {
    const number = tokens[at]?.number;
    return number === undefined ? 0 : valueBefore(number, found.unit);
  });
  let keep = values.length - 1;
  let joined: Measure['joined'] = 'one';
  while (keep > 0) {
    const join = joinOf(tokens, group[keep - 1] ?? 0, group[keep] ?? 0, joiners);
    if (
      join === undefined ||
      (joined !== 'one' && joined !== join) ||
      !belongs(values, keep, join, found.unit, tokens, group)
    )
      break;
    joined = join;
    keep--;
    if (join === 'range') break;
  }
  if (keep > 0) giveBack(group.slice(0, keep));
  const factor = factorOf(found.unit, context.system);
  const scale = (value: number) => toScale(value, found.unit, factor);
  return {
    first: group[keep] ?? 0,
    last: found.last,
    unit: found.unit,
    values: values.slice(keep).map(scale),
    at: group.slice(keep),
    joined,
    system: context.system,
  };
}

function toScale(value: number, unit: Unit, factor: number): number {
  if (unit.id === 'f') return ((value - 32) * 5) / 9;
  return unit.dimension === 'ounce' ? value : value * factor;
}

/** Whether the number before the last shares its unit, or is a count of its own ("2 x 1 L", "pot 2 – 300 g"). */
function belongs(
  values: readonly number[],
  keep: number,
  join: Join,
  unit: Unit,
  tokens: readonly Token[],
  group: readonly number[],
): boolean {
  const before = values[keep - 1] ?? 0;
  const after = values[keep] ?? 0;
  if (join === 'range') {
    const spaced = (tokens[group[keep] ?? 0]?.gap ?? 0) > 0;
    return before > 0 && before < after && (after <= before * (spaced ? 3 : 6) || unit.dimension === 'temperature');
  }
  if (join === 'times')
    return unit.dimension === 'length' && !(Number.isInteger(before) && before <= 6 && after >= before * 5);
  const first = tokens[group[keep - 1] ?? 0]?.number;
  if (unit.dimension !== 'volume' && unit.dimension !== 'mass') return false;
  if (before <= 0 || (first?.whole === true && Math.max(before, after) > 12 * Math.min(before, after))) return false;
  const word = joinsByWord(tokens, group[keep - 1] ?? 0);
  return !word || !(first?.whole === true && after !== Math.round(after));
}

function joinsByWord(tokens: readonly Token[], at: number): boolean {
  return tokens[at + 1]?.type === 'word';
}

/** "1 lb 4 oz", "2#3", "1 lb 4.5": pounds take the ounces after them. */
function compounds(measures: readonly Measure[], bare: Bare[], tokens: readonly Token[]): Measure[] {
  const joined: Measure[] = [];
  for (const measure of measures) {
    const before = joined.at(-1);
    if (
      before?.unit.id === 'lb' &&
      measure.unit.id === 'oz' &&
      measure.joined === 'one' &&
      before.joined === 'one' &&
      measure.first === before.last + 1 &&
      (measure.values[0] ?? 16) < 16
    ) {
      joined[joined.length - 1] = {
        ...before,
        last: measure.last,
        values: [(before.values[0] ?? 0) + (measure.values[0] ?? 0) * UNITS.oz.factor],
      };
      continue;
    }
    joined.push(measure);
  }
  for (const [i, measure] of joined.entries()) {
    if (measure.unit.id !== 'lb' || measure.joined !== 'one') continue;
    const next = bare.findIndex((number) => number.at === measure.last + 1 && number.value < 16);
    const ounces = bare[next];
    const token = tokens[measure.last + 1];
    if (ounces === undefined || token === undefined || token.gap === 2) continue;
    bare.splice(next, 1);
    joined[i] = { ...measure, last: ounces.at, values: [(measure.values[0] ?? 0) + ounces.value * UNITS.oz.factor] };
  }
  return joined;
}
