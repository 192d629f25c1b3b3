import type { Role } from '../../reading/text/lexicon.js';
import type { Figure, Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Scene } from './scene.js';

/** Whether a figure is an amount of something, and no size of the thing: a rate, a share, water, what a thing is fitted to. */
export function isAmount(scene: Scene, thing: Thing, figure: Figure): boolean {
  const { row } = scene;
  return (
    isRate(row, figure) ||
    isShare(row, thing, figure) ||
    isWater(row, thing, figure) ||
    isCarriedIn(row, thing, figure) ||
    isFitted(scene, thing, figure)
  );
}

const TIMES: readonly Role[] = ['day', 'night'];

/** "0.19 l a day", "2 cups of water", "0.2 l × 4 people": an amount. */
export function isRate(row: Row, figure: Figure): boolean {
  const { first, last } = figure;
  if (row.is(last + 1, '×', 'x', '=') && !isMultiplied(row, figure)) {
    const counted = row.tokens.number[last + 2] !== undefined;
    const bare = row.figures.every((other) => other.first !== last + 2);
    if (counted && bare && goesOn(row, last + 3)) return true;
  }
  if (row.is(last + 1, '/') && isTime(row, last + 2)) return true;
  const end = row.opens('perPerson', last + 1)?.last ?? last;
  const rate = row.of('rate').find((one) => one.first > end && one.first <= end + 2 && row.breakAt(one.first) < 2);
  return rate !== undefined || row.ends('rate', first - 1) !== undefined;
}

function isTime(row: Row, at: number): boolean {
  const opens = (i: number) => TIMES.some((role) => row.opens(role, i) !== undefined);
  return opens(at) || (row.is(at + 1, '/') && opens(at + 2));
}

/** Goes on after "0.2 l × 4": people, days, another factor or the sum; in a row that ran together, the next thing does not. */
function goesOn(row: Row, at: number): boolean {
  if (row.is(at, '×', '=')) return true;
  if (!row.tokens.isWord(at) || row.is(at, 'x') || row.opens('pieces', at) !== undefined) return false;
  return !row.of('kind').some((noun) => noun.first === at && noun.value !== 'fuel');
}

/** "80 g x 2 = 160 g": what one weighs, how many, and what they weigh together. */
export function isMultiplied(row: Row, { unit, last, values }: Figure): boolean {
  const count = row.tokens.number[last + 2]?.value ?? 0;
  const sum = row.figures.find((other) => other.first === last + 4);
  return (
    unit.dimension === 'mass' &&
    row.is(last + 3, '=') &&
    sum?.unit.dimension === 'mass' &&
    Math.abs((values[0] ?? 0) * count - (sum.values[0] ?? 0)) < 1
  );
}

/** "Pot, 0.75 l per person": of a pot that all eat from, a rule for choosing it; of a bottle, everybody's own size. */
function isShare(row: Row, { kind }: Thing, { unit, last }: Figure): boolean {
  if ((kind !== 'pot' && kind !== 'kettle') || unit.dimension !== 'volume') return false;
  return row.opens('perPerson', last + 1) !== undefined && row.opens('each', last + 1) === undefined;
}

/** "Plate, mug, 1.5 l of water": an entry of its own, and no size of the mug; bottles are told by what they hold. */
function isWater(row: Row, { kind, last }: Thing, figure: Figure): boolean {
  if (kind === 'bottle' || kind === 'bladder') return false;
  const { from, to } = row.segment(figure.first, figure.last);
  const water = row.of('water').find((one) => one.first > figure.last && one.first <= figure.last + 2);
  if (from <= last || water === undefined) return false;
  for (let at = water.last + 1; at < to; at++) if (row.tokens.isWord(at)) return false;
  return true;
}

/** Words between an amount and what it is carried in: "1 litre of water in …". */
const CONTENT = 3;

/** "22 l in 4 x 5 l cans": what is carried in vessels of another size. */
function isCarriedIn(row: Row, { first }: Thing, figure: Figure): boolean {
  const inside = row.of('asides').find((one) => one.first > figure.last && one.first <= figure.last + CONTENT);
  if (inside === undefined || inside.last >= first) return false;
  return row.figures.some(
    (other) => other.unit.dimension === 'volume' && other.first > inside.last && other.last < first,
  );
}

/** "Stove for 230 g canisters", "réchaud pour cartouche 230 g, 88 g": the figure of what it goes with. */
export function isFitted({ row, things }: Scene, thing: Thing, figure: Figure): boolean {
  const fits = row.of('fits').filter((one) => one.first > thing.last);
  if (fits.length === 0) return false;
  const own = (noun: { first: number; last: number }) =>
    things.some((other) => other.first <= noun.last && other.last >= noun.first);
  return [...row.of('kind'), ...row.of('container')].some((noun) => {
    if (noun.first <= thing.last || own(noun)) return false;
    const before = figure.last === noun.first - 1 || (figure.last === noun.first - 2 && row.is(noun.first - 1, '-'));
    const article = row.ends('article', figure.first - 1);
    if (before && fits.some(({ last }) => last === (article?.first ?? figure.first) - 1)) return true;
    const after = figure.first > noun.last && figure.first <= noun.last + 2 && row.breakAt(figure.first) === 0;
    const again = row.figures.some(
      (other) => other.first > figure.last && other.unit.dimension === figure.unit.dimension,
    );
    return after && again && fits.some(({ last }) => last === noun.first - 1);
  });
}
