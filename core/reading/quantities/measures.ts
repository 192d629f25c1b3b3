import type { NumberText } from '../text/numbers.js';
import type { Term } from '../text/terms.js';
import type { Token } from '../text/tokens.js';
import { notAQuantity } from './not-a-quantity.js';
import { factorOf, toScale, valueBefore } from './scale.js';
import { joinOf, type Join } from './joins.js';
import { leadingUnit, unitAfter, unitBefore, unitMarks, type Found } from './unit-near.js';
import { UNITS, type System, type Unit } from './units.js';
import { isHalf, withHalves } from './halves.js';
import { wordMeasures } from './word-measures.js';

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
  /** Rows open with a count and a dash: "1 - pot". */
  readonly dashed: boolean;
}

const NOTHING: Quantities = { measures: [], bare: [] };
const isPounds = (measure: Measure) => measure.unit.id === 'lb';
const isNumber = (token: Token) => token.type === 'number';
const isUnit = (term: Term) => term.role === 'unit';
const isJoiner = (term: Term) => term.role === 'to' || term.role === 'and';
const isSystem = (term: Term) => term.role === 'us' || term.role === 'imperial';

const NO_TERMS: ReadonlyMap<number, Term> = new Map();

/** Some of the terms by their first token: most rows have none of them. */
function byFirst(terms: readonly Term[], wanted: (term: Term) => boolean): ReadonlyMap<number, Term> {
  const found = terms.filter(wanted);
  return found.length === 0 ? NO_TERMS : new Map(found.map((term) => [term.first, term]));
}

/** Finds the numbers of a row and their units. Linear in the tokens. */
export function findMeasures(tokens: readonly Token[], terms: readonly Term[], context: MeasureContext): Quantities {
  if (!tokens.some(isNumber) && !terms.some(isUnit)) return NOTHING;
  const near = unitMarks(terms);
  const joiners = byFirst(terms, isJoiner);
  const systems = byFirst(terms, isSystem);
  const measures: Measure[] = [];
  const bare: Bare[] = [];
  let open: number[] = [];
  const quotes = { open: false };
  /** No unit stands before it that no number has. */
  let free = 0;
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
      free = skipped;
      at = skipped - 1;
      continue;
    }
    const previous = open.at(-1);
    if (previous !== undefined && joinOf(tokens, previous, at, joiners) === undefined) flush();
    open.push(at);
    const found =
      leadingUnit(tokens, at, near, free) ?? unitAfter(tokens, at, near, quotes.open) ?? unitBefore(tokens, at);
    if (found === undefined || (isAcross(tokens, at) && found.unit.dimension !== 'length')) continue;
    if (isThousandsOf(tokens, at, found) && bare.at(-1)?.at === at - 1) bare.pop();
    for (let next = at + 2; next <= found.last && joinOf(tokens, next - 2, next, joiners) === 'times'; next += 2)
      open.push(next);
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
    free = at + 1;
  }
  flush();
  const halves = joiners.size === 0 ? NO_TERMS : byFirst(terms, isHalf);
  measures.push(...wordMeasures(tokens, terms, near.units, measures, context, joiners, halves));
  measures.sort((a, b) => a.first - b.first);
  const whole = halves.size === 0 ? measures : measures.map((measure) => withHalves(measure, joiners, halves, tokens));
  return { measures: whole.some(isPounds) ? compounds(whole, bare, tokens) : whole, bare };
}

/** "ø 20 gr 250": what stands after the sign is a length, whatever comes next. */
function isAcross(tokens: readonly Token[], at: number): boolean {
  return tokens[at - 1]?.fold === 'ø';
}

/** "2 600 W": a blank parts thousands, where a count before so many watts makes no sense. */
function isThousandsOf(tokens: readonly Token[], at: number, { unit }: Found): boolean {
  const before = tokens[at - 1]?.number;
  const { number, gap } = tokens[at]!;
  return unit === UNITS.other && before?.whole === true && before.digits < 3 && number?.digits === 3 && gap === 1;
}

function bareValue(number: NumberText, context: MeasureContext): number {
  return number.thousands !== undefined && number.mark !== context.decimal ? number.thousands : number.value;
}

function systemNear(last: number, systems: ReadonlyMap<number, Term>, tokens: readonly Token[]): System | undefined {
  let at = last + 1;
  if (tokens[at]?.fold === '(' || tokens[at]?.fold === ',') at++;
  const term = systems.get(at);
  return term === undefined ? undefined : term.role === 'us' ? 'us' : 'imperial';
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
      (joined !== 'one' && joined !== (join === 'comma' ? 'list' : join)) ||
      !belongs(values, keep, join, found.unit, tokens, group) ||
      (join === 'range' && context.dashed && group[keep - 1] === 0 && isDashed(tokens))
    )
      break;
    if (join === 'comma' && joined === 'one') break;
    joined = join === 'comma' ? 'list' : join;
    keep--;
    if (join === 'range') break;
  }
  if (keep > 0) giveBack(group.slice(0, keep));
  const factor = factorOf(found.unit, context.system);
  const scale = (value: number) => toScale(value + (found.more ?? 0), found.unit, factor);
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

/** A row that opens with a whole number and a dash that stands free. */
export function isDashed(tokens: readonly Token[]): boolean {
  const [number, dash, next] = [tokens[0], tokens[1], tokens[2]];
  return number?.number?.whole === true && dash?.fold === '-' && dash.gap === 1 && next !== undefined && next.gap === 1;
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
  if (unit.dimension === 'length') return tokens[(group[keep - 1] ?? 0) + 1]?.fold === '/' && before > 1;
  if (unit.dimension !== 'volume' && unit.dimension !== 'mass') return false;
  if (before <= 0 || (first?.whole === true && Math.max(before, after) > 12 * Math.min(before, after))) return false;
  if (join === 'comma') return !(first?.whole === true && before === values.length - keep);
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
