import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import { assumed, stated } from '../../reading/items/draft.js';
import type { Bare } from '../../reading/quantities/measures.js';
import { FLUID_OUNCE_ML, IMPERIAL_FLUID_OUNCE_ML } from '../../reading/quantities/units.js';
import type { Figure, Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import { isAmount } from './amounts.js';
import type { Claim, Place } from './claim.js';
import { ouncesAreVolume } from './ounces.js';
import { rule } from './rule.js';
import type { Scene, Tie } from './scene.js';
import { isVessel, namesContainer } from './vessels.js';

/** Sizes of one thing that hang together: one, or those of a set. */
interface Group {
  given: Given<number>[];
  readonly figures: Figure[];
  readonly tie: Tie;
  readonly held: boolean;
}

/** Two sizes are the same, in two units, where they differ by less; round ones in ounces by less than the second. */
const SAME = 0.04;
const SAME_ROUNDED = 0.08;
/** What a thing is said to hold goes before a size in its name. */
const HELD = 3;

export const capacity = rule({
  id: 'capacity',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      if (!holds(scene, thing)) return [];
      return groupsOf(scene, thing).flatMap((group) => {
        const tie = group.held ? { ...group.tie, strength: group.tie.strength + HELD } : group.tie;
        return [...claimOf(scene, thing, group, tie), ...countClaims(scene, thing, group.given)];
      });
    }),
  examples: [
    ['- pot, 1.3 L, titanium', 'pot 1300 ml titanium'],
    ['- 450 ml mug, 1 l pot', 'mug 450 ml; pot 1000 ml'],
    ['- nested pots 1 L + 1.5 L', 'pot ×~2 1000+1500 ml'],
    ['- bottle 1 L / 32 oz', 'bottle 1000 ml'],
    ['- pot 700 ml (holds 750 ml)', 'pot 750 ml'],
  ],
  not: [
    ['- pot, 0.5 l per person', 'pot'],
    ['- pot for 2 l of water', 'pot'],
    ['- mug, 1.5 l of water', 'mug'],
  ],
});

/** A set tells how many it is of by its sizes. */
function countClaims(scene: Scene, thing: Thing, { length }: readonly unknown[]): Claim[] {
  if (length < 2 || thing.kind === 'fuel') return [];
  const given = assumed(length, phrase`one for each size`, phrase`write how many`);
  return [scene.claim(capacity.id, thing, 'quantity', given, [], { strength: 0.8, distance: 0 })];
}

function holds({ row }: Scene, { kind }: Thing): boolean {
  if (kind === 'stove') return row.of('stoveTypes').some((type) => type.value === 'integrated');
  return isVessel(kind) || kind === 'fuel' || kind === 'other-cook';
}

function groupsOf(scene: Scene, thing: Thing): Group[] {
  const { row } = scene;
  const groups: Group[] = [];
  const sizes = scene.figuresOf(
    thing,
    (figure) =>
      (figure.unit.dimension === 'volume' ||
        (figure.unit.dimension === 'ounce' && ouncesAreVolume(scene, thing, figure))) &&
      !isAmount(scene, thing, figure),
  );
  for (const { figure, tie } of sizes) {
    const given = sizesOf(row, figure);
    const held = isHeld(row, figure);
    const group = groups.at(-1);
    const before = group?.figures.at(-1);
    if (group !== undefined && before !== undefined) {
      const beside = isBeside(scene, thing, before, figure) && scene.owns(thing, figure.first, figure.last);
      const plus = beside && row.is(before.last + 1, '+');
      const share = [before, figure].some(({ unit }) => unit.dimension === 'ounce') ? SAME_ROUNDED : SAME;
      if (isSame(group.given, given, share) && !plus && !(held && !group.held)) {
        if (figure.unit.metric === true && before.unit.metric !== true) group.given = given;
        group.figures.push(figure);
        continue;
      }
      if (beside) {
        group.given = [...group.given, ...given];
        group.figures.push(figure);
        continue;
      }
    }
    groups.push({ given, figures: [figure], tie, held });
  }
  return groups;
}

/** "holds 750 ml", "750 ml to the brim": the word is of the figure after it, where one stands there. */
function isHeld(row: Row, { first, last }: Figure): boolean {
  if (row.of('holds').some((word) => word.last < first && first - word.last <= 2)) return true;
  const word = row.of('holds').find((one) => one.first > last && one.first - last <= 2);
  return word !== undefined && !row.figures.some((other) => other.first > word.last && other.first - word.last <= 2);
}

function isSame(group: readonly Given<number>[], [own]: readonly Given<number>[], share: number): boolean {
  if (own?.grounds !== 'stated') return false;
  return group.some((other) => other.grounds === 'stated' && Math.abs(other.value - own.value) <= share * other.value);
}

/** The sizes that a figure gives, each at its own token. */
function sizesOf(row: Row, { values, unit, system, joined, first, last, at }: Figure): Given<number>[] {
  const ounce = system === 'imperial' ? IMPERIAL_FLUID_OUNCE_ML : FLUID_OUNCE_ML;
  const [low = 0, ...more] = values.map((value) => value * (unit.dimension === 'ounce' ? ounce : 1));
  if (joined === 'range') return [stated(low, row.span(first, last), more[0])];
  if (more.length === 0) return [stated(low, row.span(first, last))];
  return [low, ...more].map((value, i) => {
    const place = at[i] ?? first;
    return stated(value, row.span(place, i === values.length - 1 ? last : place));
  });
}

/** Joined to the one before by +, / or "and", or next to it in a set: another vessel of the set. */
function isBeside({ row }: Scene, thing: Thing, a: Figure, b: Figure): boolean {
  if (b.first - a.last > 5) return false;
  const set = thing.kind === 'pot' && (thing.many === true || row.of('set').length > 0);
  if (set && b.first === a.last + 2 && row.is(a.last + 1, ',')) return true;
  if (thing.kind === 'pot' && isWeighedPair(row, a, b)) return true;
  for (let at = a.last + 1; at < b.first; at++)
    if (row.is(at, '+', '/', '&', '•') || row.opens('and', at) !== undefined) return true;
  return false;
}

/** "1 L 140 g, 2 L 220 g": two sizes, each with the mass of its own. */
function isWeighedPair(row: Row, a: Figure, b: Figure): boolean {
  const massAfter = ({ last }: Figure) =>
    row.figures.find(({ first, unit }) => unit.dimension === 'mass' && first > last && first <= last + 2);
  const mass = massAfter(a);
  if (mass === undefined || massAfter(b) === undefined) return false;
  return b.first === mass.last + 2 && row.is(mass.last + 1, ',', ';', '+', '/');
}

/** mL: no can of gas is named by more. */
const LARGEST_CAN = 1000;

function claimOf(scene: Scene, thing: Thing, { given, figures }: Group, tie: Tie): Claim[] {
  const places = figures.map(({ first, last }): Place => [first, last]);
  const make = <F extends 'capacitiesMl' | 'fuelVolumeMl' | 'fuelMassG'>(field: F, value: Claim<F>['given']) => [
    scene.claim(capacity.id, thing, field, value, places, tie),
  ];
  const [size] = given;
  if (thing.kind !== 'fuel' || size?.grounds !== 'stated') return make('capacitiesMl', given);
  if (thing.fuel === 'gas')
    return size.value > LARGEST_CAN
      ? []
      : make(
          'fuelMassG',
          assumed(
            size.value,
            phrase`a gas can is sold by grams; the millilitres are taken as grams`,
            phrase`write the grams: 230 g`,
            size.span,
          ),
        );
  return namesContainer(scene, thing) || isBottled(scene, places)
    ? make('capacitiesMl', given)
    : make('fuelVolumeMl', size);
}

/** "spirit, flask 150 ml": the size is said of the bottle. */
function isBottled({ row }: Scene, places: readonly Place[]): boolean {
  const bottles = [
    ...row.of('container').filter(({ value }) => value === 'rigid'),
    ...row.of('kind').filter(({ value }) => value === 'bottle'),
  ];
  return places.some(([first, last]) =>
    bottles.some((bottle) => row.breakAt(first) < 2 && (first === bottle.last + 1 || last === bottle.first - 1)),
  );
}

const BARE_KINDS: readonly string[] = ['pot', 'mug', 'kettle', 'bottle'];
/** A guess: weaker than any figure. */
const GUESS = 2.5;

export const capacityWithoutUnit = rule({
  id: 'capacity-without-unit',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      if (!BARE_KINDS.includes(thing.kind)) return [];
      const crossed = scene.figuresOf(thing, ({ unit, joined }) => unit.dimension === 'length' && joined === 'times');
      if (crossed.length > 0) return [];
      return row.bare.flatMap((number) => {
        const tie = scene.tie(thing, number.at, number.at);
        const first = sizeWithoutUnit(row, number);
        if (tie === undefined || tie.distance > 4 || first === undefined || isOfOther(row, number)) return [];
        const held = row.ends('holds', number.at - 1) !== undefined ? 1 : 0;
        const given = [first];
        const places: Place[] = [[number.at, number.at]];
        for (let at = number.at + 2; row.is(at - 1, '/', '+', '&') || row.opens('and', at - 1) !== undefined; at += 2) {
          const more = row.bare.find((other) => other.at === at && other.number.whole === number.number.whole);
          const size = more === undefined ? undefined : sizeWithoutUnit(row, more);
          if (size === undefined) break;
          given.push(size);
          places.push([at, at]);
        }
        const strength = Math.min(tie.strength, GUESS) - 1 + held;
        return [
          scene.claim('capacity-without-unit', thing, 'capacitiesMl', given, places, { ...tie, strength }),
          ...countClaims(scene, thing, given),
        ];
      });
    }),
  examples: [
    ['- Ti 750 pot', 'pot ~750 ml titanium'],
    ['- pots 0.9 / 1.4', 'pot ×~2 ~900+~1400 ml'],
  ],
  not: [
    ['- pot 2019', 'pot'],
    ['- pot Ø 160', 'pot Ø~160'],
  ],
});

/** A factor, a diameter, a label: the number is of something else. */
function isOfOther(row: Row, { at }: Bare): boolean {
  const factor = row.is(at + 1, 'x', '×') && row.tokens.number[at + 2] !== undefined;
  return (
    factor ||
    row.is(at - 1, '×', 'x', 'ø', '=') ||
    row.ends('dimension', at - 1) !== undefined ||
    row.opens('rate', at + 1) !== undefined
  );
}

/** A whole number of millilitres or a broken one of litres, of the size of a vessel and round: no year, model or fraction. */
function sizeWithoutUnit(row: Row, { at, value, number }: Bare): Given<number> | undefined {
  const span = row.span(at, at);
  if (row.text.slice(...span).includes('/')) return undefined;
  if (number.whole && value >= 300 && value <= 6000) {
    const year = value > 1950 && value < 2050 && value % 50 !== 0;
    if (value % 5 !== 0 || year) return undefined;
    return assumed(
      value,
      phrase`a bare number beside a vessel is taken as millilitres`,
      phrase`write the unit: ${value} ml`,
      span,
    );
  }
  if (number.whole || value < 0.3 || value > 6) return undefined;
  return assumed(
    Math.round(value * 1000),
    phrase`a bare number beside a vessel is taken as litres`,
    phrase`write the unit: ${value} l`,
    span,
  );
}
