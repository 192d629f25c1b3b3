import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import { FLUID_OUNCE_ML, IMPERIAL_FLUID_OUNCE_ML, UNITS } from '../quantities/units.js';
import type { Bare, Measure } from '../quantities/measures.js';
import { assumed, bareOf, isMissing, measuresOf, near, spanOf, stated, within, type Draft } from './draft.js';
import type { Role } from '../text/lexicon.js';
import { inParentheses, segmentOf } from './clauses.js';
import { termsOf, type Stretch } from './stretch.js';
import { isVessel } from './things.js';

/** Whether ounces at this place are a volume: before the noun of a vessel, or too many to be its mass. */
export function ouncesAreVolume(stretch: Stretch, draft: Draft, measure: Measure): boolean {
  const flask = draft.kind === 'fuel' && draft.fuelType.grounds === 'missing' && namesContainer(stretch, draft);
  if (!(isVessel(draft.kind) || isLiquidFuel(draft) || flask || draft.kind === 'other-cook')) return false;
  if (draft.kind === 'pan') return false;
  if (draft.capacitiesMl.length > 0) return isCapacityAgain(draft, measure);
  const [noun, last] = draft.noun;
  const value = measure.values[0] ?? 0;
  const others = measuresOf(stretch, draft);
  const weighs = others.some((other) => other !== measure && other.unit.dimension === 'mass');
  if (others.some((other) => other !== measure && other.unit.dimension === 'volume'))
    return draft.kind === 'fuel' && flask && weighs && measure.last === noun - 1;
  if (near(stretch, 'weighs', measure.first, measure.last, 1) !== undefined) return false;
  if (isMassAgain(stretch, measure, others, measure.last < noun || (value >= 8 && Number.isInteger(value))))
    return false;
  if (measure.last < noun)
    return draft.kind === 'fuel' || Number.isInteger(value) || !isScaled(stretch, measure, value);
  const ounces = others.filter((other) => other.unit.dimension === 'ounce');
  const weighed = others.some((other) => other.unit.dimension === 'mass') || !isMissing(draft.massG);
  if (ounces.length > 1) return measure === roomier(ounces);
  if (weighed) return true;
  if (!Number.isInteger(value)) return false;
  const before = stretch.tokens[measure.first - 1]?.fold ?? '';
  const set =
    before === '-' ||
    before === '–' ||
    before === ':' ||
    before === '.' ||
    (stretch.tokens[measure.first]?.gap ?? 0) > 1;
  if (set && !(value >= 16 && draft.kind !== 'kettle')) return false;
  const cooks = draft.kind === 'pot' || draft.kind === 'kettle';
  const least = cooks ? 16 : draft.kind === 'fuel' ? 1 : 8;
  return value >= least || (measure.first === last + 1 && value >= 8 && !cooks);
}

/** "2.1 oz mug", "10.5 oz - mug": tenths of few ounces, or before a dash, come off a scale. */
function isScaled({ tokens }: Stretch, { last }: Measure, value: number): boolean {
  const sign = tokens[last + 1];
  return value < LEAST_TENTHS || (sign !== undefined && '-–—'.includes(sign.fold) && sign.gap > 0);
}
/** Ounces: no vessel of a size with tenths is smaller. */
const LEAST_TENTHS = 8;

/** "170 g / 6 oz": the same mass twice, in two units; ounces that may as well be a volume must stand right beside the grams. */
function isMassAgain(stretch: Stretch, ounces: Measure, others: readonly Measure[], beside: boolean): boolean {
  const grams = (ounces.values[0] ?? 0) * UNITS.oz.factor;
  return others.some((other) => {
    if (other.unit.dimension !== 'mass' || Math.abs((other.values[0] ?? 0) - grams) > 0.04 * grams) return false;
    const [from, to] = ounces.first < other.first ? [ounces.last, other.first] : [other.last, ounces.first];
    return !beside || (to === from + 2 && '/(='.includes(stretch.tokens[from + 1]?.fold ?? ' '));
  });
}

/** "1 L / 32 oz": round figures of the same size differ by less than this. */
const ROUNDED = 0.08;

function isCapacityAgain({ capacitiesMl }: Draft, ounces: Measure): boolean {
  const ml = (ounces.values[0] ?? 0) * FLUID_OUNCE_ML;
  return capacitiesMl.some((given) => given.grounds !== 'missing' && Math.abs(given.value - ml) <= ROUNDED * ml);
}

/** Of a vessel's two figures in ounces the one that it holds: the larger, unless they are close; then the first. */
function roomier(ounces: readonly Measure[]): Measure | undefined {
  const value = (measure: Measure | undefined) => measure?.values[0] ?? 0;
  const [first, second] = ounces;
  return value(second) >= 2 * value(first) ? second : first;
}

function isLiquidFuel(draft: Draft): boolean {
  return (
    draft.kind === 'fuel' &&
    draft.fuelType.grounds !== 'missing' &&
    (draft.fuelType.value === 'alcohol' || draft.fuelType.value === 'liquid-fuel')
  );
}

/** Reads what a thing holds. */
export function readVolume(stretch: Stretch, draft: Draft): void {
  const volumes = measuresOf(stretch, draft).filter(
    (measure) =>
      measure.unit.dimension === 'volume' ||
      (measure.unit.dimension === 'ounce' && ouncesAreVolume(stretch, draft, measure)),
  );
  const holds = isVessel(draft.kind) || draft.kind === 'fuel' || draft.kind === 'stove' || draft.kind === 'other-cook';
  if (!holds) return;
  const own = volumes.filter(
    (measure) =>
      !isRate(stretch, measure) &&
      !isShare(stretch, draft, measure) &&
      !isWater(stretch, draft, measure) &&
      !isCarriedIn(stretch, draft, measure, volumes),
  );
  const found: { given: Given<number>[]; measure: Measure }[] = [];
  for (const measure of own) {
    const given = givenOf(stretch, measure);
    draft.taken.add(measure.first);
    const value = given[0]?.grounds === 'stated' ? given[0].value : 0;
    const previous = found.at(-1);
    if (previous !== undefined) {
      const same = previous.given.some(
        (other) => other.grounds === 'stated' && Math.abs(other.value - value) <= 0.04 * other.value,
      );
      const measured = near(stretch, 'holds', measure.first, measure.last, 1) !== undefined;
      const beside = isBeside(stretch, draft, previous.measure, measure);
      const added = beside && plusBetween(stretch, previous.measure, measure);
      if (same && !measured && !added) {
        if (measure.unit.metric === true && previous.measure.unit.metric !== true) previous.given = given;
        continue;
      }
      if (measured && !beside) {
        previous.given = given;
        continue;
      }
      if (!beside) continue;
    }
    found.push({ given, measure });
  }
  const capacities = found.flatMap((one) => one.given);
  if (capacities.length === 0) {
    readBareVolume(stretch, draft);
    return;
  }
  keepCapacities(stretch, draft, capacities);
}

/** "22 l in 4 x 5 l cans": what is carried in vessels of another size. */
function isCarriedIn(stretch: Stretch, draft: Draft, measure: Measure, all: readonly Measure[]): boolean {
  const inside = stretch.terms.find(
    (term) => term.role === 'asides' && term.first > measure.last && term.first <= measure.last + CONTENT,
  );
  return (
    inside !== undefined &&
    inside.last < draft.noun[0] &&
    all.some((other) => other.first > inside.last && other.last < draft.noun[0])
  );
}

/** "1 litre of water in …": words between an amount and what it is carried in. */
const CONTENT = 3;

/** No can of gas is named by more than this; a larger volume is of something else. */
const LARGEST_CAN_ML = 1000;

function keepCapacities(stretch: Stretch, draft: Draft, capacities: Given<number>[]): void {
  if (draft.kind !== 'fuel') {
    if (draft.kind === 'stove' && !(draft.stoveType.grounds !== 'missing' && draft.stoveType.value === 'integrated'))
      return;
    draft.capacitiesMl = capacities;
    return;
  }
  const [first] = capacities;
  if (first === undefined) return;
  const gas = draft.fuelType.grounds !== 'missing' && draft.fuelType.value === 'gas';
  if (gas && first.grounds === 'stated' && first.value > LARGEST_CAN_ML) return;
  if (gas && first.grounds === 'stated')
    draft.fuelMassG = assumed(
      first.value,
      phrase`a gas can is sold by grams; the millilitres are taken as grams`,
      phrase`write the grams: 230 g`,
      first.span,
    );
  else if (namesContainer(stretch, draft) || isBottled(stretch, draft)) draft.capacitiesMl = capacities;
  else draft.fuelVolumeMl = first;
}

/** Whether the noun is of a bottle rather than of what is in it. */
export function namesContainer(stretch: Stretch, draft: Draft): boolean {
  const words = stretch.tokens.slice(Math.max(0, draft.noun[0]), draft.noun[1] + 1);
  const terms = stretch.terms.filter(
    (term) =>
      (term.role === 'container' || (term.role === 'kind' && (term.value === 'bottle' || term.value === 'bladder'))) &&
      term.first >= draft.noun[0] &&
      term.last <= draft.noun[1],
  );
  if (terms.length > 0 && words.length > 0) return true;
  if (draft.thing?.term.role === 'fuelTypes') return false;
  if (draft.thing === undefined || draft.thing.term.role !== 'kind' || draft.thing.term.value !== 'fuel')
    return draft.thing !== undefined;
  const generic = stretch.terms.find(
    (term) => term.role === 'section' && term.value === 'fuel' && term.last === draft.noun[1],
  );
  const named = termsOf(stretch, 'fuelTypes').some((term) => term.last + 1 === generic?.first);
  if (generic !== undefined && (draft.noun[1] - draft.noun[0] < 2 || named)) return false;
  return !stretch.terms.some(
    (term) => term.role === 'fuelTypes' && term.first === draft.noun[0] && term.last === draft.noun[1],
  );
}

function givenOf(stretch: Stretch, measure: Measure): Given<number>[] {
  const factor =
    measure.unit.dimension === 'ounce' ? (measure.system === 'imperial' ? IMPERIAL_FLUID_OUNCE_ML : FLUID_OUNCE_ML) : 1;
  const values = measure.values.map((value) => value * factor);
  if (measure.joined === 'range')
    return [stated(values[0] ?? 0, spanOf(stretch, measure.first, measure.last), values[1])];
  if (values.length === 1) return [stated(values[0] ?? 0, spanOf(stretch, measure.first, measure.last))];
  return values.map((value, i) => {
    const at = measure.at[i] ?? measure.first;
    return stated(value, spanOf(stretch, at, i === values.length - 1 ? measure.last : at));
  });
}

/** "0.19 l a day", "2 cups of water": an amount, no size of a thing. */
export function isRate(stretch: Stretch, measure: Measure): boolean {
  const sign = stretch.tokens[measure.last + 1];
  if (
    !isMultiplied(stretch, measure) &&
    (sign?.fold === '×' || sign?.fold === 'x' || sign?.fold === '=') &&
    isTerm(stretch, measure.last + 3) &&
    stretch.measures.every((other) => other.first !== measure.last + 2) &&
    stretch.tokens[measure.last + 2]?.type === 'number'
  )
    return true;
  if (sign?.fold === '/' && isOfTime(stretch, measure.last + 2)) return true;
  const person = termsOf(stretch, 'perPerson').find((term) => term.first === measure.last + 1);
  const last = person?.last ?? measure.last;
  const after = stretch.terms.find(
    (term) =>
      term.role === 'rate' && term.first > last && term.first <= last + 2 && (stretch.breaks[term.first] ?? 0) < 2,
  );
  return after !== undefined || stretch.terms.some((term) => term.role === 'rate' && term.last === measure.first - 1);
}

/** "Plate, mug, 1.5 l of water": an entry of its own, and no size of the mug; bottles are told by what they hold. */
function isWater(stretch: Stretch, draft: Draft, measure: Measure): boolean {
  if (draft.kind === 'bottle' || draft.kind === 'bladder') return false;
  const { from, to } = segmentOf(stretch, measure);
  return (
    from > draft.noun[1] &&
    termsOf(stretch, 'water').some(
      (term) =>
        term.first > measure.last &&
        term.first <= measure.last + 2 &&
        stretch.tokens.slice(term.last + 1, to).every(({ type }) => type === 'sign'),
    )
  );
}

/** "80 g x 2 = 160 g": what one weighs, how many, and what they weigh together. */
function isMultiplied(stretch: Stretch, measure: Measure): boolean {
  const count = stretch.tokens[measure.last + 2]?.number?.value ?? 0;
  const sum = stretch.measures.find((other) => other.first === measure.last + 4);
  return (
    measure.unit.dimension === 'mass' &&
    stretch.tokens[measure.last + 3]?.fold === '=' &&
    sum?.unit.dimension === 'mass' &&
    Math.abs((measure.values[0] ?? 0) * count - (sum.values[0] ?? 0)) < 1
  );
}

/** "Pot, 0.75 l per person": how much room each needs is a rule for choosing the pot, not its size. */
function isShare(stretch: Stretch, draft: Draft, measure: Measure): boolean {
  return (
    isShareOf(draft, measure) &&
    termsOf(stretch, 'perPerson').some((term) => term.first === measure.last + 1) &&
    !termsOf(stretch, 'each').some((term) => term.first === measure.last + 1)
  );
}

/** Of a pot that all eat from, a volume for each person is a share; of a bottle or a mug it is the size of everybody's own. */
export function isShareOf(draft: Draft, measure: Measure): boolean {
  return (draft.kind === 'pot' || draft.kind === 'kettle') && measure.unit.dimension === 'volume';
}

/** "/day", "/person/day". */
function isOfTime(stretch: Stretch, at: number): boolean {
  const next = stretch.terms.find((term) => term.first === at && TIME.has(term.role));
  if (next !== undefined) return true;
  return (
    stretch.tokens[at + 1]?.fold === '/' && stretch.terms.some((term) => term.first === at + 2 && TIME.has(term.role))
  );
}

const TIME: ReadonlySet<Role> = new Set(['day', 'night']);

/** Goes on after "0.2 l × 4": people, days, another factor or the sum; in a row that ran together, the next thing does not. */
function isTerm(stretch: Stretch, at: number): boolean {
  const token = stretch.tokens[at];
  return (
    token !== undefined &&
    (token.fold === '×' || token.fold === '=' || (token.type === 'word' && token.fold !== 'x')) &&
    !termsOf(stretch, 'pieces').some((term) => term.first === at) &&
    !stretch.terms.some((term) => term.role === 'kind' && term.first === at && term.value !== 'fuel')
  );
}

/** Joined to the one before by +, / or "and", or next to it in a set: another vessel of the set. */
function isBeside(stretch: Stretch, draft: Draft, a: Measure, b: Measure): boolean {
  if (b.first - a.last > 5) return false;
  const set = draft.kind === 'pot' && (draft.thing?.many === true || within(stretch, draft, 'set').length > 0);
  if (set && b.first === a.last + 2 && stretch.tokens[a.last + 1]?.fold === ',') return true;
  if (draft.kind === 'pot' && isWeighedPair(stretch, a, b)) return true;
  for (let at = a.last + 1; at < b.first; at++) {
    const fold = stretch.tokens[at]?.fold ?? '';
    if (
      fold === '+' ||
      fold === '/' ||
      fold === '&' ||
      fold === '•' ||
      stretch.terms.some((term) => term.role === 'and' && term.first === at)
    )
      return true;
  }
  return false;
}

/** "1 L 140 g, 2 L 220 g": two sizes, each with the mass of its own. */
function isWeighedPair(stretch: Stretch, a: Measure, b: Measure): boolean {
  const massAfter = ({ last }: Measure) =>
    stretch.measures.find(({ first, unit }) => unit.dimension === 'mass' && first > last && first <= last + 2);
  const mass = massAfter(a);
  return (
    mass !== undefined &&
    massAfter(b) !== undefined &&
    b.first === mass.last + 2 &&
    ',;+/'.includes(stretch.tokens[mass.last + 1]?.fold ?? ' ')
  );
}

/** "Ti 750 pot": a number without a unit, of the size of a capacity. A guess, and shown as one. */
function readBareVolume(stretch: Stretch, draft: Draft): void {
  if (draft.kind !== 'pot' && draft.kind !== 'mug' && draft.kind !== 'kettle' && draft.kind !== 'bottle') return;
  if (measuresOf(stretch, draft).some((measure) => measure.unit.dimension === 'length' && measure.joined === 'times'))
    return;
  const numbers = [...bareOf(stretch, draft)].sort(
    (a, b) => Number(isHeld(stretch, b.at)) - Number(isHeld(stretch, a.at)),
  );
  for (const number of numbers) {
    const { value } = number;
    const close = Math.abs(number.at - draft.noun[0]) <= 4 || Math.abs(number.at - draft.noun[1]) <= 4;
    const before = stretch.tokens[number.at - 1]?.fold ?? '';
    const next = stretch.tokens[number.at + 1]?.fold;
    if (
      !close ||
      ((next === 'x' || next === '×') && stretch.tokens[number.at + 2]?.type === 'number') ||
      before === '×' ||
      before === 'x' ||
      before === 'ø' ||
      before === '=' ||
      within(stretch, draft, 'dimension').some((term) => term.last === number.at - 1)
    )
      continue;
    if (!isRound(stretch, number.at, value)) continue;
    const given = bareCapacity(stretch, number);
    if (given === undefined) continue;
    draft.taken.add(number.at);
    draft.capacitiesMl = [given];
    for (let at = number.at + 2; joinsSizes(stretch, at - 1); at += 2) {
      const more = numbers.find((other) => other.at === at && other.number.whole === number.number.whole);
      const size = more === undefined ? undefined : bareCapacity(stretch, more);
      if (size === undefined) return;
      draft.taken.add(at);
      draft.capacitiesMl.push(size);
    }
    return;
  }
}

/** A whole number of millilitres or a broken one of litres, of the size of a vessel. */
function bareCapacity(stretch: Stretch, { at, value, number }: Bare): Given<number> | undefined {
  const span = spanOf(stretch, at, at);
  if (number.whole && value >= 300 && value <= 6000)
    return assumed(
      value,
      phrase`a bare number beside a vessel is taken as millilitres`,
      phrase`write the unit: ${value} ml`,
      span,
    );
  if (!number.whole && value >= 0.3 && value <= 6)
    return assumed(
      Math.round(value * 1000),
      phrase`a bare number beside a vessel is taken as litres`,
      phrase`write the unit: ${value} l`,
      span,
    );
  return undefined;
}

/** "750/1300", "0,9 + 1,4": the sign between two sizes of a set. */
function joinsSizes(stretch: Stretch, at: number): boolean {
  const fold = stretch.tokens[at]?.fold;
  return fold === '/' || fold === '+' || fold === '&' || termsOf(stretch, 'and').some((term) => term.first === at);
}

/** Vessels are named by round sizes: not by a year, a model number, a fraction or a number of times. */
function isRound(stretch: Stretch, at: number, value: number): boolean {
  const token = stretch.tokens[at];
  if (token === undefined || stretch.text.slice(token.start, token.end).includes('/')) return false;
  if (termsOf(stretch, 'rate').some((term) => term.first === at + 1)) return false;
  return value < 100 || (value % 5 === 0 && !(value > 1950 && value < 2050 && value % 50 !== 0));
}

/** "holds 750": the number that the word is about goes first. */
function isHeld(stretch: Stretch, at: number): boolean {
  return stretch.terms.some((term) => term.role === 'holds' && term.last === at - 1);
}

function plusBetween(stretch: Stretch, a: Measure, b: Measure): boolean {
  return stretch.tokens.slice(a.last + 1, b.first).some((token) => token.fold === '+');
}

/** "spirit, flask 150 ml": the volume is said of the bottle. */
function isBottled(stretch: Stretch, draft: Draft): boolean {
  const bottles = stretch.terms.filter(
    (term) =>
      (term.role === 'container' && term.value === 'rigid') || (term.role === 'kind' && term.value === 'bottle'),
  );
  return bottles.some((bottle) =>
    stretch.measures.some(
      (measure) =>
        measure.unit.dimension === 'volume' &&
        draft.taken.has(measure.first) &&
        bottle.first >= draft.from &&
        !inParentheses(stretch, draft.noun[1], bottle.first) &&
        (stretch.breaks[measure.first] ?? 0) < 2 &&
        (measure.first === bottle.last + 1 || measure.last === bottle.first - 1),
    ),
  );
}
