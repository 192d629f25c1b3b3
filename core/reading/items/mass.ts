import { phrase } from '../../model/phrase.js';
import type { Measure } from '../quantities/measures.js';
import { UNITS, type Unit } from '../quantities/units.js';
import { assumed, bareOf, isMissing, measuresOf, near, spanOf, stated, within, type Draft } from './draft.js';
import { isRate } from './volume.js';
import { namesContainer, ouncesAreVolume } from './volume.js';
import { termsOf, type Stretch } from './stretch.js';

/** Gross masses of full cans of gas, g: common practice. A single figure between these is what the scale says. */
const GROSS: readonly (readonly [number, number])[] = [
  [175, 215],
  [340, 400],
  [620, 700],
];
const gross = (g: number) => GROSS.some(([least, most]) => g >= least && g <= most);

/** A full can weighs at least this many times the gas in it: common practice. */
const LEAST_GROSS = 1.2;
/** And at most this many times, the smallest can: common practice. */
const MOST_GROSS = 2.5;

export function gramsOf(measure: Measure): number {
  const value = measure.values[0] ?? 0;
  return measure.unit.dimension === 'ounce' ? value * UNITS.oz.factor : value;
}

/** A figure at the end of a row under a heading that gives the unit: "Small canister stove 3.1". */
export function readBareMass(stretch: Stretch, draft: Draft, unit: Unit | undefined): void {
  if (unit === undefined || !isMissing(draft.massG)) return;
  const numbers = bareOf(stretch, draft);
  const last = numbers.at(-1);
  if (last === undefined || last.at < draft.to - 2 || last.value <= 0) return;
  if (stretch.tokens[last.at - 1]?.fold === '+') return;
  const before = numbers.at(-2);
  const pounds = unit.id === 'lb' && before !== undefined && before.at === last.at - 2 ? before : undefined;
  draft.taken.add(last.at);
  if (pounds !== undefined) draft.taken.add(pounds.at);
  const grams =
    pounds === undefined ? last.value * unit.factor : pounds.value * unit.factor + last.value * UNITS.oz.factor;
  draft.massG = stated(grams, spanOf(stretch, pounds?.at ?? last.at, last.at));
  if (draft.quantity.grounds === 'stated' && draft.quantity.value > 1) draft.massBasis = 'line';
}

/** Reads what a thing weighs; of gas and tablets, what is in it. */
export function readMass(stretch: Stretch, draft: Draft): void {
  const masses = measuresOf(stretch, draft).filter(
    (measure) =>
      (measure.unit.dimension === 'mass' ||
        (measure.unit.dimension === 'ounce' && !ouncesAreVolume(stretch, draft, measure))) &&
      !isRate(stretch, measure),
  );
  if (draft.kind === 'fuel' && !isLiquid(draft) && !isEmptyBottle(stretch, draft))
    return readFuelMass(stretch, draft, masses);
  const [first] = masses;
  if (first === undefined) return;
  for (const measure of masses) draft.taken.add(measure.first);
  if (!isMissing(draft.massG)) return;
  if (masses.length > 1 && masses.length === draft.capacitiesMl.length) {
    draft.massG = {
      grounds: 'worked-out',
      value: masses.reduce((sum, measure) => sum + gramsOf(measure), 0),
      from: masses.map((measure) => stretch.text.slice(...spanOf(stretch, measure.first, measure.last))).join(' + '),
      cites: [],
      span: spanOf(stretch, first.first, masses.at(-1)?.last ?? first.last),
    };
    draft.massBasis = 'line';
    return;
  }
  draft.massG = stated(
    gramsOf(first),
    spanOf(stretch, first.first, first.last),
    first.joined === 'range' ? first.values[1] : undefined,
  );
  const basis = basisOf(stretch, first);
  if (basis !== undefined) draft.massBasis = basis;
}

function isLiquid(draft: Draft): boolean {
  return (
    draft.fuelType.grounds !== 'missing' &&
    (draft.fuelType.value === 'alcohol' || draft.fuelType.value === 'liquid-fuel')
  );
}

function isGas(draft: Draft): boolean {
  return draft.fuelType.grounds !== 'missing' && draft.fuelType.value === 'gas';
}

/** A bottle that liquid is poured into weighs what it weighs; a bottle of gas is sold by what is in it. */
function isEmptyBottle(stretch: Stretch, draft: Draft): boolean {
  return (
    draft.capacitiesMl.length > 0 ||
    (!isGas(draft) &&
      namesContainer(stretch, draft) &&
      within(stretch, draft, 'kind').some((term) => term.value === 'bottle'))
  );
}

/** The same mass in two units, rounded, differs by less. */
const SAME = 1.04;

/** "230 g can": the figure of the name is the gas in it; "(384 g full)" is what the scale says. */
function readFuelMass(stretch: Stretch, draft: Draft, masses: readonly Measure[]): void {
  const column = !isMissing(draft.massG);
  const labelled = masses.some((measure) => isCalledGross(stretch, measure));
  const net = masses.find((measure) => isCalledNet(stretch, measure));
  const weighedFirst = !labelled && leadsFull(draft, masses);
  const ordered = weighedFirst ? [...masses].reverse() : masses;
  for (const measure of ordered) {
    draft.taken.add(measure.first);
    const grams = gramsOf(measure);
    const span = spanOf(stretch, measure.first, measure.last);
    const first = measure === ordered[0];
    const isNet = isCalledNet(stretch, measure);
    const beside = net !== undefined && !isNet && grams > gramsOf(net) * SAME;
    if (!first && isProduct(stretch, ordered[0], grams)) continue;
    const weighed =
      near(stretch, 'gross', measure.first, measure.last, 2) !== undefined && masses.length > 1 && !labelled;
    const called = isCalledGross(stretch, measure);
    const named = measure.last < draft.noun[0] && !weighedFirst;
    const isGross =
      !isNet &&
      !named &&
      (called ||
        beside ||
        near(stretch, 'empty', measure.first, measure.last, 0) !== undefined ||
        weighed ||
        (!first && draft.fuelMassG.grounds === 'stated' && grams > draft.fuelMassG.value * LEAST_GROSS) ||
        (gross(grams) && !column) ||
        (weighedAlone(stretch, measure) && !column));
    if (isGross) {
      if (isMissing(draft.massG)) {
        draft.massG = stated(grams, span);
        const basis = basisOf(stretch, measure) ?? (isOfSeveral(draft, grams) ? 'line' : undefined);
        if (basis !== undefined) draft.massBasis = basis;
      }
    } else if (isMissing(draft.fuelMassG) && (first || isNet)) {
      const full = measure.joined === 'list' ? measure.values[1] : undefined;
      // "100/230 g": cans of two sizes, of which one figure would be wrong; "110/190 g" is one can, net and full.
      if (full === undefined || gross(full)) draft.fuelMassG = stated(grams, span);
      if (full !== undefined && gross(full) && isMissing(draft.massG)) draft.massG = stated(full, span);
    }
  }
  if (isMissing(draft.fuelMassG)) readBareNet(stretch, draft);
  if (!column && isMissing(draft.massG)) readBareGross(stretch, draft);
}

/** "Gas 230, full 380", "bombona 230 (pesa 360)": of a can whose gas is known. */
function readBareGross(stretch: Stretch, draft: Draft): void {
  const net = draft.fuelMassG.grounds === 'missing' ? undefined : draft.fuelMassG.value;
  if (net === undefined || !isGas(draft)) return;
  const words = [...termsOf(stretch, 'gross'), ...termsOf(stretch, 'weighs')];
  const number = bareOf(stretch, draft).find(
    ({ at, value }) =>
      value > net * LEAST_GROSS &&
      value < net * MOST_GROSS &&
      words.some((word) => word.last < at && at - word.last <= 2),
  );
  if (number === undefined) return;
  draft.taken.add(number.at);
  draft.massG = assumed(
    number.value,
    phrase`a bare number that a can of gas is said to weigh is taken as grams`,
    phrase`write the unit: ${number.value} g`,
    spanOf(stretch, number.at, number.at),
  );
}

/** "net 230 g", "230 g net": a word right beside one figure is not of another. */
function isCalledNet(stretch: Stretch, measure: Measure): boolean {
  const net = near(stretch, 'net', measure.first, measure.last, 1);
  if (net === undefined) return false;
  if (net.first === measure.last + 1) return true;
  const after = net.first > measure.last;
  return !stretch.measures.some(
    (one) => one !== measure && (after ? one.first === net.last + 1 : one.last === net.first - 1),
  );
}

/** "12 x 14 g (168 g)": the sum of the figure before. */
function isProduct(stretch: Stretch, one: Measure | undefined, grams: number): boolean {
  if (one === undefined || !'x×'.includes(stretch.tokens[one.first - 1]?.fold ?? ' ')) return false;
  const count = stretch.tokens[one.first - 2]?.number?.value ?? 0;
  return Math.abs(count * gramsOf(one) - grams) <= 0.02 * grams;
}

function isOfSeveral(draft: Draft, grams: number): boolean {
  return draft.fuelMassG.grounds === 'stated' && grams > draft.fuelMassG.value * MOST_GROSS;
}

/** "375 g  Gas can 230 g": where the mass of the row goes first, the gas in the can is the lesser figure after the name. */
function leadsFull({ noun }: Draft, masses: readonly Measure[]): boolean {
  const [full, net] = masses;
  if (full === undefined || net === undefined || masses.length > 2 || full.last > noun[0] || net.first < noun[1])
    return false;
  const times = gramsOf(full) / gramsOf(net);
  return times > LEAST_GROSS && times < MOST_GROSS;
}

/** "full 380 g", "gross: 380 g", "voll ca. 380 g". */
export function isCalledGross(stretch: Stretch, measure: Measure): boolean {
  let until = measure.first;
  for (const about of termsOf(stretch, 'about'))
    if (about.last < until && until - about.last <= 2) until = Math.min(until, about.first);
  const half = termsOf(stretch, 'halfFull');
  return termsOf(stretch, 'gross').some(
    (term) =>
      term.last < until &&
      until - term.last <= 2 &&
      !half.some(({ first, last }) => first <= term.first && last >= term.last),
  );
}

/** The screw-on cylinder of a pound of propane is named by what is in it, to the tenth of an ounce: common practice, no source. */
const POUND_CYLINDER_OZ = 16.4;

/** A figure with tenths of an ounce comes off a scale: cans are named by whole ones. */
function weighedAlone(stretch: Stretch, measure: Measure): boolean {
  const number = stretch.tokens[measure.first]?.number;
  return (
    measure.unit.dimension === 'ounce' &&
    number !== undefined &&
    !number.whole &&
    number.value !== POUND_CYLINDER_OZ &&
    !(number.digits < 3 && number.value < 1)
  );
}

/** "Gas 230", "110 can": cans are named by the grams of gas in them. */
function readBareNet(stretch: Stretch, draft: Draft): void {
  if (draft.fuelType.grounds !== 'missing' && draft.fuelType.value !== 'gas') return;
  for (const number of bareOf(stretch, draft)) {
    if (!isNetOfCan(number.value) || isModel(stretch, number.at)) continue;
    draft.taken.add(number.at);
    draft.fuelMassG = bareNet(stretch, number.at, number.value);
    return;
  }
}

/** "C500": a letter before the number makes it the name of a can, not its grams. */
function isModel(stretch: Stretch, at: number): boolean {
  const letter = stretch.tokens[at - 1];
  return stretch.tokens[at]?.gap === 0 && letter?.type === 'word' && letter.fold.length === 1 && letter.fold < '\u0080';
}

/** Cans of so many grams of gas are sold. */
export function isNetOfCan(value: number): boolean {
  return Number.isInteger(value) && value >= 90 && value <= 500;
}

export function bareNet(stretch: Stretch, at: number, value: number): Draft['fuelMassG'] {
  return assumed(
    value,
    phrase`a bare number beside a gas can is taken as grams of gas`,
    phrase`write the unit: ${value} g`,
    spanOf(stretch, at, at),
  );
}

/** Whether a mass is of one piece or of the row, by the word or the sign beside it: "80 g each", "2 x 80 g", "80 g/pc"; "= 160 g". */
export function basisOf(stretch: Stretch, measure: Measure): 'each' | 'line' | undefined {
  const { first, last } = measure;
  const fold = (at: number) => stretch.tokens[at]?.fold;
  if (near(stretch, 'together', first, last, 1) !== undefined || fold(first - 1) === '=') return 'line';
  if (near(stretch, 'each', first, last, 1) !== undefined) return 'each';
  const sliced = fold(last + 1) === '/' && termsOf(stretch, 'pieces').some((term) => term.first === last + 2);
  return sliced || isTimes(stretch, first - 1, first - 2) || isTimes(stretch, last + 1, last + 2) ? 'each' : undefined;
}

/** A "×" and a count beside a figure. */
function isTimes(stretch: Stretch, sign: number, count: number): boolean {
  const times = stretch.tokens[sign]?.fold;
  return (times === 'x' || times === '×') && stretch.bare.some((number) => number.at === count && number.number.whole);
}
