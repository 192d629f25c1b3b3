import type { Context } from '../../reading/items/context.js';
import { isListed } from '../../reading/items/listed.js';
import type { Order } from '../../reading/items/size.js';
import type { Role } from '../../reading/text/lexicon.js';
import type { Figure, Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Claim, Field, Place, Told } from './claim.js';

/** How a thing and some tokens hang together. */
export interface Tie {
  readonly strength: number;
  readonly distance: number;
}

/** Tied in one breath, on the side where the row has its figures; on the other side; behind a comma; before its name, with a comma between. */
const STRENGTH = { style: 4, other: 3, after: 2, before: 1 };

/** A row with its things, and what the headings lend it: what the rules of claims look at. */
export class Scene {
  readonly row: Row;
  readonly things: readonly Thing[];
  readonly lent: Context;
  /** A line of the list, not of prose around it. */
  readonly listed: boolean;
  /** The order of dimensions, once the list has told it. */
  readonly order: Order;
  /** What the columns of figures say. */
  readonly columns: readonly Claim[];
  /** Where the things begin, behind the sum of their section or set. */
  private readonly opening: number;
  /** Its figures stand before the names. */
  private readonly led: boolean;
  /** Nouns that are none of ours and open a part of their own: their figures are theirs. */
  private readonly foreign: readonly { readonly first: number; readonly last: number }[];

  constructor(row: Row, things: readonly Thing[], lent: Context, columns: readonly Claim[], order: Order) {
    this.order = order;
    this.columns = columns;
    this.row = row;
    this.things = things;
    this.lent = lent;
    this.listed = isListed(row.stretch, lent);
    const first = things[0]?.first ?? 0;
    const last = things.at(-1)?.last ?? 0;
    const { to } = row.clause(first, last);
    this.led =
      row.figures.some((figure) => figure.last < first) &&
      !row.figures.some((figure) => figure.first > last && figure.first < to && figure.unit.dimension !== 'other');
    this.foreign = foreignIn(row, things);
    this.opening = openingOf(row, things[0]);
  }

  claim<F extends Field>(
    rule: string,
    thing: Thing,
    field: F,
    given: Told[F],
    tokens: readonly Place[],
    { strength, distance }: Tie,
    basis?: Claim['basis'],
  ): Claim<F> {
    return { rule, of: thing.id, field, given, tokens, strength, distance, basis };
  }

  /** How tokens hang together with a thing; undefined where another stands between, or they are of another sentence. */
  tie(thing: Thing, first: number, last: number): Tie | undefined {
    const { row } = this;
    if (first <= thing.last && last >= thing.first) return { strength: STRENGTH.style, distance: 0 };
    if (this.things.some((other) => first <= other.last && last >= other.first) || last < this.opening)
      return undefined;
    if (thing.last < first) {
      if (this.between(thing.last, first)) return undefined;
      const parted = row.breakIn(thing.last + 1, first);
      if (parted === 2 && !this.listed && thing.first >= 0) return undefined;
      const strength = parted > 0 ? STRENGTH.after : this.led ? STRENGTH.other : STRENGTH.style;
      return { strength, distance: first - thing.last };
    }
    if (this.between(last, thing.first)) return undefined;
    const parted = row.breakIn(last + 1, thing.first);
    if (parted > 0 && (this.previous(thing) || (parted === 2 && !this.listed))) return undefined;
    if (parted === 0 && this.previous(thing) && this.isBeforeAnother(thing, first)) return undefined;
    const strength = parted > 0 ? STRENGTH.before : this.led ? STRENGTH.style : STRENGTH.other;
    return { strength, distance: thing.first - last };
  }

  /** Whether a column counts one of a thing. */
  isOneBox(thing: Thing): boolean {
    return this.columns.some(
      ({ of, field, given }) =>
        of === thing.id && field === 'quantity' && (given as { readonly value?: number }).value === 1,
    );
  }

  /** The first and the last token, exclusive, that can tell of a thing, other things left aside: its sentence, or the row. */
  startOf(thing: Thing): number {
    return this.listed || thing.first < 0 ? 0 : this.row.clause(thing.first, thing.last).from;
  }

  endOf(thing: Thing): number {
    const end = this.listed || thing.first < 0 ? this.row.tokens.n : this.row.clause(thing.first, thing.last).to;
    return Math.min(end, ...this.foreign.filter(({ first }) => first > thing.last).map(({ first }) => first));
  }

  /** Whether a column weighs a thing. */
  isWeighed(thing: Thing): boolean {
    return this.columns.some(({ of, field }) => of === thing.id && field === 'massG');
  }

  /** Whether some tokens hang together with no other thing better than with this. */
  owns(thing: Thing, first: number, last: number): boolean {
    const own = this.tie(thing, first, last);
    if (own === undefined) return false;
    return this.things.every((other) => {
      const tie = other === thing ? undefined : this.tie(other, first, last);
      if (tie === undefined) return true;
      return tie.strength < own.strength || (tie.strength === own.strength && tie.distance >= own.distance);
    });
  }

  /** "22 oz — 3.6 oz stove, canister — 1.9 oz": a figure before a thing that has another such after it is of the thing before. */
  private isBeforeAnother(thing: Thing, first: number): boolean {
    const { row } = this;
    const figure = row.figures.find((one) => one.first === first);
    if (figure === undefined) return false;
    if (row.tokens.gap[figure.last + 1] === 2) return true;
    const next = this.things.find((other) => other.first > thing.last);
    const end = Math.min(next?.first ?? row.tokens.n, row.clause(thing.first, thing.last).to);
    const article = row.ends('article', first - 1) === undefined ? 1 : 2;
    const opens = row.is(first - article, ',') || row.ends('and', first - article) !== undefined;
    return row.figures.some(
      (other) =>
        other.first > thing.last &&
        other.first < end &&
        !(opens && row.breakIn(thing.last + 1, other.first) > 0) &&
        other.unit.dimension === figure.unit.dimension &&
        other.joined !== 'times',
    );
  }

  /** Whether a thing stands before this one. */
  private previous(thing: Thing): boolean {
    return this.things.some((other) => other.last < thing.first) || this.foreign.some(({ last }) => last < thing.first);
  }

  /** Whether another name stands between two tokens. */
  private between(from: number, to: number): boolean {
    return (
      this.things.some(({ first, last }) => first > from && last < to) ||
      this.foreign.some(({ first, last }) => first > from && last < to)
    );
  }

  /** The figures that are said of no other thing rather than of this. */
  ownFigures(thing: Thing, wanted: (figure: Figure) => boolean): Figure[] {
    return this.row.figures.filter((figure) => wanted(figure) && this.owns(thing, figure.first, figure.last));
  }

  /** The figures that may be said of a thing, with how they hang together. */
  figuresOf(thing: Thing, wanted: (figure: Figure) => boolean): { figure: Figure; tie: Tie }[] {
    return this.row.figures.flatMap((figure) => {
      if (!wanted(figure)) return [];
      const tie = this.tie(thing, figure.first, figure.last);
      return tie === undefined ? [] : [{ figure, tie }];
    });
  }
}

/** "Kitchen weighs 312 g: stove 45 g, …", "cook set 620 g (pot 310 g, …)": where the parts begin; 0 where nothing is summed up before them. */
function openingOf(row: Row, first: Thing | undefined): number {
  if (first === undefined || first.first < 0) return 0;
  const sum = row.figures.find(({ unit, last }) => unit.dimension === 'mass' && last < first.first);
  if (sum === undefined) return 0;
  const sign = sum.last + 1;
  const set = row.of('set').some(({ last }) => last === sum.first - 1);
  if (set && row.is(sign, '(', ':') && first.first - sign <= 3) return sign + 1;
  let colon = sign;
  while (colon < first.first && !row.is(colon, ':')) colon++;
  const section = row.of('section').some(({ last }) => last < colon);
  return colon < first.first && section && row.figures.some((one) => one.first > first.last) ? colon + 1 : 0;
}

const NO_KIT: readonly Role[] = ['notKit', 'food', 'otherUse'];

/** "Pot, tarp 400 g", "2 knives, stove 95 g": what is none of ours and opens a part, but for its count. */
function foreignIn(row: Row, things: readonly Thing[]): { first: number; last: number }[] {
  return NO_KIT.flatMap((role) => row.of(role))
    .filter(({ first, last }) => {
      if (things.some((thing) => thing.first <= last && thing.last >= first)) return false;
      let at = first;
      while (at > 0 && row.breakAt(at) === 0 && isCount(row, at - 1)) at--;
      return (at === 0 && things.some((thing) => thing.first > last)) || (at > 0 && row.is(at - 1, ',', ';', '+', '/'));
    })
    .map(({ first, last }) => ({ first, last }));
}

function isCount(row: Row, at: number): boolean {
  return (
    row.bare.some((number) => number.at === at) ||
    (['number', 'article', 'pieces'] as const).some((role) => row.ends(role, at) !== undefined)
  );
}
