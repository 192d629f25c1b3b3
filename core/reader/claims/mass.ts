import { phrase } from '../../model/phrase.js';
import { assumed, stated } from '../../reading/items/draft.js';
import { UNITS } from '../../reading/quantities/units.js';
import type { Figure, Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import { isFitted, isRate } from './amounts.js';
import type { Claim, Place } from './claim.js';
import { ouncesAreVolume } from './ounces.js';
import { rule } from './rule.js';
import type { Scene, Tie } from './scene.js';
import { isLiquid, namesContainer } from './vessels.js';

export function gramsOf({ values, unit }: Figure): number {
  return (values[0] ?? 0) * (unit.dimension === 'ounce' ? UNITS.oz.factor : 1);
}

const placeOf = ({ first, last }: Figure): Place => [first, last];

/** The masses that hang together with a thing. */
export function massesOf(scene: Scene, thing: Thing): { figure: Figure; tie: Tie }[] {
  return scene.figuresOf(
    thing,
    (figure) =>
      (figure.unit.dimension === 'mass' ||
        (figure.unit.dimension === 'ounce' && !ouncesAreVolume(scene, thing, figure))) &&
      !isRate(scene.row, figure) &&
      !isFitted(scene, thing, figure),
  );
}

/** Whether a fuel is told of by its empty bottle, which weighs what it weighs; gas and tablets are told of by what is in them. */
export function isWeighedEmpty(scene: Scene, thing: Thing): boolean {
  if (isLiquid(thing)) return true;
  if (thing.fuel === 'gas') return false;
  const volume = scene.figuresOf(thing, ({ unit }) => unit.dimension === 'volume').length > 0;
  const bottle = scene.row
    .of('kind')
    .some(({ value, first, last }) => value === 'bottle' && first >= thing.first && last <= thing.last);
  return volume || (bottle && namesContainer(scene, thing));
}

export const mass = rule({
  id: 'mass',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      if (thing.kind === 'fuel' && !isWeighedEmpty(scene, thing)) return [];
      return massesOf(scene, thing).map(({ figure, tie }) => {
        const most = figure.joined === 'range' ? figure.values[1] : undefined;
        const given = stated(gramsOf(figure), scene.row.span(figure.first, figure.last), most);
        return scene.claim('mass', thing, 'massG', given, [placeOf(figure)], tie, basisOf(scene.row, figure));
      });
    }),
  examples: [
    ['- pot, 1.3 L, 120 g', 'pot 1300 ml 120 g'],
    ['- stove 95 g, mug 60 g', 'stove 95 g; mug 60 g'],
    ['- mug – 2.3 oz', 'mug 65 g'],
    ['- 2 mugs, 80 g each', 'mug ×2 80 g each'],
  ],
  not: [
    ['- pot, tarp 400 g', 'pot'],
    ['- stove for 230 g canisters, 88 g', 'stove 88 g'],
    ['- 16 oz mug', 'mug 473 ml'],
  ],
});

export const massesOfSet = rule({
  id: 'masses-of-a-set',
  needs: ['kind'],
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      if (thing.kind === 'fuel') return [];
      const masses = massesOf(scene, thing)
        .map(({ figure }) => figure)
        .filter(({ first, last }) => scene.owns(thing, first, last));
      const sizes = scene
        .ownFigures(thing, ({ unit }) => unit.dimension === 'volume')
        .reduce((n, { values }) => n + values.length, 0);
      const [first] = masses;
      const last = masses.at(-1);
      if (first === undefined || last === undefined || masses.length < 2 || masses.length !== sizes) return [];
      const given = {
        grounds: 'worked-out' as const,
        value: masses.reduce((sum, figure) => sum + gramsOf(figure), 0),
        from: masses.map((figure) => row.text.slice(...row.span(figure.first, figure.last))).join(' + '),
        cites: [],
        span: row.span(first.first, last.last),
      };
      const tie = { strength: 5, distance: 0 };
      return [scene.claim('masses-of-a-set', thing, 'massG', given, masses.map(placeOf), tie, 'line')];
    }),
  examples: [['- pots 1 L 140 g, 2 L 220 g', 'pot ×~2 1000+2000 ml 360 g in all']],
  not: [['- pot 1 L 140 g', 'pot 1000 ml 140 g']],
});

export const massesInOrder = rule({
  id: 'masses-in-order',
  needs: ['kind'],
  find: (scene) => {
    const { row, things } = scene;
    const last = things.at(-1);
    if (last === undefined || things.length < 2) return [];
    const masses = row.figures.filter(({ unit, first }) => unit.dimension === 'mass' && first > last.last);
    const joined = masses.every(
      (figure, i) => i === 0 || (row.is(figure.first - 1, '+') && masses[i - 1]?.last === figure.first - 2),
    );
    if (masses.length !== things.length || !joined) return [];
    return things.map((thing, i) => {
      const figure = masses[i]!;
      const given = stated(figure.values[0] ?? 0, row.span(figure.first, figure.last));
      return scene.claim('masses-in-order', thing, 'massG', given, [placeOf(figure)], { strength: 6, distance: 0 });
    });
  },
  examples: [['- pot + pan 101 g + 65 g', 'pot 101 g; pan 65 g']],
  not: [['- pot 101 g + pan 65 g', 'pot 101 g; pan 65 g']],
});

/** Words between "with" and the last thing that comes along. */
const MOST_ADJECTIVES = 3;

export const massOfAll = rule({
  id: 'mass-of-all',
  needs: ['together', 'with', 'set', 'kind'],
  find: (scene) => {
    const { row, things } = scene;
    const [first] = things;
    const last = things.at(-1);
    if (first === undefined || last === undefined || first === last || row.source.cells.length > 1) return [];
    return massesOf(scene, last).flatMap(({ figure, tie }) => {
      const owner = ownerOfBracket(scene, last, figure) ?? (isOfAll(row, first, last, figure) ? first : undefined);
      if (owner === undefined || massesOf(scene, owner).some((own) => own.tie.strength > 3)) return [];
      const given = stated(gramsOf(figure), row.span(figure.first, figure.last));
      const basis = owner === first && !row.inBrackets(owner.last + 1, last.first) ? 'line' : basisOf(row, figure);
      return [scene.claim('mass-of-all', owner, 'massG', given, [placeOf(figure)], { ...tie, strength: 5 }, basis)];
    });
  },
  examples: [
    ['- pot, pan, gripper, 412 g the lot', 'pot 412 g in all; pan; other-cook gripper'],
    ['- storm cooker (2 pots, no kettle) 720 g', 'stove 720 g; pot ×2; no kettle'],
  ],
  not: [['- pot, pan 412 g', 'pot; pan 412 g']],
});

/** "Storm cooker (2 pots) 720 g": a mass after a bracket is of the thing before it. */
function ownerOfBracket({ row, things }: Scene, last: Thing, { first }: Figure): Thing | undefined {
  if (last.first < 0 || first < last.last) return undefined;
  const owner = things.findLast((thing) => thing !== last && row.inBrackets(thing.last + 1, last.first));
  return owner !== undefined && !row.inBrackets(owner.last + 1, first) ? owner : undefined;
}

/** The mass at the end of a row that is of all its things: after the parts of a set, "with" the others, "the lot". */
function isOfAll(row: Row, first: Thing, last: Thing, figure: Figure): boolean {
  if (first.kind === last.kind) return false;
  if (basisOf(row, figure) === 'line') return true;
  const withs = row.of('with');
  if (row.opens('with', figure.last + 1) !== undefined) return true;
  const together = withs.some(
    (word) => word.first > first.last && word.last < last.first && last.first - word.last <= MOST_ADJECTIVES + 1,
  );
  if (together && figure.first > last.last && !row.inBrackets(last.last, figure.first)) return true;
  const set = row.of('set').find((word) => word.last <= first.first && row.is(word.last + 1, '(', ':'));
  if (set === undefined) return false;
  if (row.is(set.last + 1, ':')) return figure.first === last.last + 2 && row.breakIn(last.last + 1, figure.first) > 0;
  for (let at = last.last + 1; at < figure.first; at++) if (row.is(at, ')')) return true;
  return false;
}

/** Whether a mass is of one piece or of the row, by the word or the sign beside it: "80 g each", "2 x 80 g", "80 g/pc"; "= 160 g". */
export function basisOf(row: Row, { first, last }: Figure): 'each' | 'line' | undefined {
  if (row.beside('together', first, last, 1) !== undefined || row.is(first - 1, '=')) return 'line';
  if (row.beside('each', first, last, 1) !== undefined) return 'each';
  const sliced = row.is(last + 1, '/') && row.opens('pieces', last + 2) !== undefined;
  return sliced || isTimes(row, first - 1, first - 2) || isTimes(row, last + 1, last + 2) ? 'each' : undefined;
}

/** A "×" and a count beside a figure. */
function isTimes(row: Row, sign: number, count: number): boolean {
  return row.is(sign, 'x', '×') && row.bare.some(({ at, number }) => at === count && number.whole);
}

export const massWithoutUnit = rule({
  id: 'mass-without-unit',
  find: (scene) => {
    const { row, things, lent } = scene;
    const unit = lent.massUnit;
    if (unit === undefined) return [];
    return things.flatMap((thing, i): Claim[] => {
      const own = row.bare.filter(({ at }) => scene.owns(thing, at, at));
      const last = own.at(-1);
      const to = things[i + 1]?.first ?? row.tokens.n;
      if (last === undefined || last.at < to - 2 || last.value <= 0 || row.is(last.at - 1, '+')) return [];
      const before = own.at(-2);
      const pounds = unit.id === 'lb' && before?.at === last.at - 2 ? before : undefined;
      const grams =
        pounds === undefined ? last.value * unit.factor : pounds.value * unit.factor + last.value * UNITS.oz.factor;
      const first = pounds?.at ?? last.at;
      const given = stated(grams, row.span(first, last.at));
      const places: Place[] = (pounds === undefined ? [last] : [pounds, last]).map(({ at }) => [at, at]);
      return [scene.claim('mass-without-unit', thing, 'massG', given, places, { strength: 1.5, distance: 0 })];
    });
  },
  examples: [['Kitchen (oz):\n- Small canister stove 3.1', 'stove 88 g gas']],
  not: [['- canister stove 3.1', 'stove gas']],
});

/** g: gross masses of full cans of gas: common practice. A single figure between these is what the scale says. */
const GROSS: readonly (readonly [number, number])[] = [
  [175, 215],
  [340, 400],
  [620, 700],
];
const isGrossOfCan = (grams: number) => GROSS.some(([least, most]) => grams >= least && grams <= most);

/** A full can weighs at least and at most this many times the gas in it: common practice. */
const LEAST_GROSS = 1.2;
const MOST_GROSS = 2.5;
/** The same mass in two units, rounded, differs by less. */
const SAME = 1.04;

export const gasInCan = rule({
  id: 'gas-in-a-can',
  needs: ['kind', 'fuelTypes', 'container'],
  find: (scene) =>
    scene.things.flatMap((thing) =>
      thing.kind === 'fuel' && !isWeighedEmpty(scene, thing) ? canClaims(scene, thing) : [],
    ),
  examples: [
    ['- gas canister 230 g', 'fuel 230 g net gas'],
    ['- gas 230 g (384 g full)', 'fuel 384 g 230 g net gas'],
    ['- canister 213 g', 'fuel 213 g ~gas'],
    ['- fuel tablets, 12 x 14 g (168 g)', 'fuel ×12 14 g net solid-fuel'],
  ],
  not: [
    ['- petrol bottle 0.6 l, 95 g', 'fuel 600 ml 95 g liquid-fuel'],
    ['- gas stove 95 g', 'stove 95 g gas'],
  ],
});

/** The figures of a can: that of its name, and how the row sets them. */
interface Can {
  readonly figures: readonly Figure[];
  /** The figure that tells what is in it. */
  readonly named: Figure | undefined;
  readonly net: Figure | undefined;
  /** Another figure is called that of the full can. */
  readonly labelled: boolean;
  /** The mass of the row goes first. */
  readonly weighedFirst: boolean;
}

/** "230 g can": the figure of the name is the gas in it; "(384 g full)" is what the scale says. */
function canClaims(scene: Scene, thing: Thing): Claim[] {
  const { row } = scene;
  const masses = massesOf(scene, thing).filter(({ figure }) => scene.owns(thing, figure.first, figure.last));
  const figures = masses.map(({ figure }) => figure);
  const labelled = figures.some((figure) => isCalledGross(row, figure));
  const net = figures.find((figure) => isCalledNet(row, figure));
  const weighedFirst = !labelled && leadsFull(thing, figures);
  const named = weighedFirst ? figures[1] : (net ?? figures.find((figure) => !isCalledGross(row, figure)));
  const can: Can = { figures, named, net, labelled, weighedFirst };
  return masses.flatMap(({ figure, tie }): Claim[] => {
    const grams = gramsOf(figure);
    const span = row.span(figure.first, figure.last);
    const places = [placeOf(figure)];
    const other = named !== undefined && figure !== named;
    if (other && isProduct(row, named, grams)) return [];
    if (isFull(scene, thing, can, figure)) {
      const several = other && grams > gramsOf(named) * MOST_GROSS;
      const basis = basisOf(row, figure) ?? (several ? 'line' : undefined);
      return [scene.claim('gas-in-a-can', thing, 'massG', stated(grams, span), places, tie, basis)];
    }
    if (figure !== named) return [];
    const full = figure.joined === 'list' ? figure.values[1] : undefined;
    // "100/230 g": cans of two sizes, of which one figure would be wrong; "110/190 g" is one can, net and full.
    if (full !== undefined && !isGrossOfCan(full)) return [];
    const claims: Claim[] = [scene.claim('gas-in-a-can', thing, 'fuelMassG', stated(grams, span), places, tie)];
    if (full !== undefined) claims.push(scene.claim('gas-in-a-can', thing, 'massG', stated(full, span), [], tie));
    return claims;
  });
}

/** Whether a figure is what the scale says of the whole can. */
function isFull(scene: Scene, thing: Thing, can: Can, figure: Figure): boolean {
  const { row } = scene;
  const { figures, named, net, labelled, weighedFirst } = can;
  if (isCalledNet(row, figure) || (figure.last < thing.first && !weighedFirst)) return false;
  if (isCalledGross(row, figure) || (weighedFirst && figure === figures[0])) return true;
  const grams = gramsOf(figure);
  const least = net === undefined ? LEAST_GROSS : SAME;
  if (named !== undefined && figure !== named && grams > gramsOf(named) * least) return true;
  if (!scene.isWeighed(thing) && (isGrossOfCan(grams) || isTenths(row, figure))) return true;
  const told = row.beside('gross', figure.first, figure.last, 2) !== undefined;
  return (told && figures.length > 1 && !labelled) || row.beside('empty', figure.first, figure.last, 0) !== undefined;
}

/** "net 230 g", "230 g net": a word right beside one figure is not of another. */
function isCalledNet(row: Row, figure: Figure): boolean {
  const net = row.beside('net', figure.first, figure.last, 1);
  if (net === undefined) return false;
  if (net.first === figure.last + 1) return true;
  const after = net.first > figure.last;
  return !row.figures.some(
    (other) => other !== figure && (after ? other.first === net.last + 1 : other.last === net.first - 1),
  );
}

/** "full 380 g", "gross: 380 g", "voll ca. 380 g". */
export function isCalledGross(row: Row, { first }: Figure): boolean {
  let until = first;
  for (const about of row.of('about'))
    if (about.last < until && until - about.last <= 2) until = Math.min(until, about.first);
  return row.of('gross').some((word) => word.last < until && until - word.last <= 2);
}

/** "12 x 14 g (168 g)": the sum of the figure before. */
function isProduct(row: Row, one: Figure | undefined, grams: number): boolean {
  if (one === undefined || !row.is(one.first - 1, 'x', '×')) return false;
  const count = row.tokens.number[one.first - 2]?.value ?? 0;
  return Math.abs(count * gramsOf(one) - grams) <= 0.02 * grams;
}

/** "375 g  Gas can 230 g": where the mass of the row goes first, the gas in the can is the lesser figure after the name. */
function leadsFull(thing: Thing, [full, net, ...more]: readonly Figure[]): boolean {
  if (full === undefined || net === undefined || more.length > 0) return false;
  if (full.last > thing.first || net.first < thing.last) return false;
  const times = gramsOf(full) / gramsOf(net);
  return times > LEAST_GROSS && times < MOST_GROSS;
}

/** The screw-on cylinder of a pound of propane is named by what is in it, to the tenth of an ounce: common practice, no source. */
const POUND_CYLINDER_OZ = 16.4;

/** A figure with tenths of an ounce comes off a scale: cans are named by whole ones. */
function isTenths(row: Row, { first, unit }: Figure): boolean {
  const number = row.tokens.number[first];
  if (unit.dimension !== 'ounce' || number === undefined || number.whole) return false;
  return number.value !== POUND_CYLINDER_OZ && !(number.digits < 3 && number.value < 1);
}

export const gasWithoutUnit = rule({
  id: 'gas-without-unit',
  needs: ['kind', 'fuelTypes', 'container'],
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      if (thing.kind !== 'fuel' || (thing.fuel !== undefined && thing.fuel !== 'gas') || isWeighedEmpty(scene, thing))
        return [];
      return row.bare.flatMap(({ at, value }) => {
        const tie = scene.tie(thing, at, at);
        if (tie === undefined || !isNetOfCan(value) || isModel(row, at)) return [];
        const given = assumed(
          value,
          phrase`a bare number beside a gas can is taken as grams of gas`,
          phrase`write the unit: ${value} g`,
          row.span(at, at),
        );
        return [scene.claim('gas-without-unit', thing, 'fuelMassG', given, [[at, at]], { ...tie, strength: 1 })];
      });
    }),
  examples: [
    ['- gas 230', 'fuel ~230 g net gas'],
    ['- 110 gas can', 'fuel ~110 g net gas'],
  ],
  not: [
    ['- gas C500', 'fuel gas'],
    ['- gas cans 12', 'fuel ×12 gas'],
  ],
});

/** Cans of so many grams of gas are sold. */
function isNetOfCan(value: number): boolean {
  return Number.isInteger(value) && value >= 90 && value <= 500;
}

/** "C500": a letter before the number makes it the name of a can, not its grams. */
function isModel(row: Row, at: number): boolean {
  const letter = row.tokens.fold(at - 1);
  return row.tokens.gap[at] === 0 && row.tokens.isWord(at - 1) && letter.length === 1 && letter < '\u0080';
}

export const canWithoutUnit = rule({
  id: 'can-without-unit',
  needs: ['gross', 'weighs'],
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      if (thing.kind !== 'fuel' || thing.fuel !== 'gas') return [];
      const words = [...row.of('gross'), ...row.of('weighs')];
      const figure = scene.ownFigures(thing, ({ unit }) => unit.dimension === 'mass')[0];
      const net = figure === undefined ? row.bare.find(({ value }) => isNetOfCan(value))?.value : gramsOf(figure);
      return row.bare.flatMap(({ at, value }) => {
        const said = words.some((word) => word.last < at && at - word.last <= 2);
        if (net === undefined || value <= net * LEAST_GROSS || value >= net * MOST_GROSS || !said) return [];
        const tie = scene.tie(thing, at, at);
        const given = assumed(
          value,
          phrase`a bare number that a can of gas is said to weigh is taken as grams`,
          phrase`write the unit: ${value} g`,
          row.span(at, at),
        );
        return tie === undefined ? [] : [scene.claim('can-without-unit', thing, 'massG', given, [[at, at]], tie)];
      });
    }),
  examples: [['- gas 230 g, full 380', 'fuel ~380 g 230 g net gas']],
  not: [['- gas 230 g, full', 'fuel 230 g net gas']],
});
