import type { ItemKind } from '../../model/item.js';
import type { Measure } from '../quantities/measures.js';
import type { Term } from '../text/terms.js';
import type { Context } from './context.js';
import { termsOf, type Stretch } from './stretch.js';

/** A noun that stands for a thing of the list, with what it is taken for. */
export interface Thing {
  readonly term: Term;
  readonly kind: ItemKind;
  readonly many: boolean;
  /** "no lid", "without windscreen", "pan? no". */
  readonly denied: boolean;
  /** It only tells something of the thing before it: its lid. */
  readonly partOf?: Thing;
  /** Nouns right before it that only say what sort it is: gas (canister). */
  readonly sorts: readonly Term[];
}

const VESSELS: readonly ItemKind[] = ['pot', 'mug', 'kettle', 'pan', 'bowl', 'bottle', 'bladder'];
export const isVessel = (kind: ItemKind): boolean => VESSELS.includes(kind);

/** The things that a row names, in order. */
export function thingsOf(stretch: Stretch, context: Context): Thing[] {
  const found = namedThings(stretch, context);
  const head = headThing(stretch, context, found);
  return head === undefined ? found : namedThings(stretch, context, head);
}

/** Under a heading that names a thing, a row of figures with no such noun tells of it: it is there before the first token. */
function headThing(stretch: Stretch, context: Context, things: readonly Thing[]): Thing | undefined {
  if (context.kind === undefined || stretch.row.type === 'heading' || stretch.row.cells.length > 1) return undefined;
  if (things.some((thing) => thing.kind === context.kind)) return undefined;
  const until = things[0]?.term.first ?? stretch.tokens.length;
  const figured = stretch.measures.some(
    (measure) =>
      measure.last < until &&
      measure.unit.id !== 'm' &&
      measure.unit.dimension !== 'other' &&
      measure.unit.dimension !== 'temperature',
  );
  if (!figured) return undefined;
  const term: Term = { role: 'kind', value: context.kind, many: false, layer: 0, first: -1, last: -1 };
  return { term, kind: context.kind, many: false, denied: false, sorts: [] };
}

function namedThings(stretch: Stretch, context: Context, head?: Thing): Thing[] {
  const nouns = nounsOf(stretch);
  const things: Thing[] = head === undefined ? [] : [head];
  let sorts: Term[] = [];
  for (const [i, term] of nouns.entries()) {
    const after = nouns[i + 1];
    if (
      term.role === 'notKit' ||
      isUnit(stretch, term) ||
      isCounted(stretch, term) ||
      isMeasured(stretch, term, things)
    ) {
      sorts = [];
      continue;
    }
    if (after !== undefined && adjacent(stretch, term, after) && !context.headFirst) {
      sorts.push(term);
      continue;
    }
    const own = sorts;
    sorts = [];
    const kind = kindOf(stretch, term, own, context);
    if (kind === undefined || hasTail(stretch, term) || isAside(stretch, term, things, context)) continue;
    const denied = isDenied(stretch, term);
    const owner = things.findLast((thing) => thing.partOf === undefined);
    const part = owner !== undefined && isPartOf(stretch, term, kind, owner, denied) ? owner : undefined;
    if (owner?.kind === kind && !spanBreaks(stretch, owner.term.last + 1, term.first) && part === undefined) {
      if (context.headFirst) continue;
      things.pop();
    } else if (owner !== undefined && part === undefined) {
      const merged = mergesWith(stretch, owner, term, kind);
      if (merged === 'drop') continue;
      if (merged === 'replace') things.splice(things.indexOf(owner), 1);
    }
    things.push({
      term,
      kind,
      many: term.many ?? false,
      denied,
      sorts: own,
      ...(part === undefined ? {} : { partOf: part }),
    });
  }
  return things.filter((thing) => !isSortOfStove(stretch, thing, things));
}

/** Two names for one thing: "lid / fry pan", "fuel, 8 oz can", "cup, the cup is steel", "stove, 2 burner". */
function mergesWith(stretch: Stretch, owner: Thing, term: Term, kind: ItemKind): 'drop' | 'replace' | false {
  const between = term.first - owner.term.last - 1;
  const comma = stretch.terms.every(
    (other) =>
      !((other.role === 'and' || other.role === 'with') && other.first > owner.term.last && other.last < term.first),
  );
  if (comma && kind === 'other-cook' && (owner.kind === 'windscreen' || owner.kind === 'lid') && isFoil(stretch, term))
    return 'drop';
  const figures =
    stretch.measures.some(
      (measure) => measure.first > owner.term.last && measure.last < term.first && measure.last < term.first - 2,
    ) || stretch.bare.some((number) => number.at > owner.term.last && number.at < term.first - 2);
  if (owner.kind === 'lid' && kind === 'pan' && between === 1 && stretch.tokens[term.first - 1]?.fold === '/')
    return 'replace';
  if (owner.kind === 'pan' && kind === 'lid' && between === 1 && stretch.tokens[term.first - 1]?.fold === '/')
    return 'drop';
  if (owner.kind === 'fuel' && kind === 'stove' && !spanBreaks(stretch, owner.term.last + 1, term.first))
    return 'replace';
  if (
    owner.kind === 'pot' &&
    kind === 'pot' &&
    term.many === true &&
    isSet(stretch, owner.term) &&
    !isSet(stretch, term)
  )
    return 'replace';
  if (owner.kind !== kind || figures) return false;
  if (kind === 'fuel' && between <= 5)
    return stretch.measures.some((measure) => measure.last === term.first - 1) || owner.term.role === 'kind'
      ? 'replace'
      : 'drop';
  if (
    kind === 'stove' &&
    term.many === false &&
    (stretch.bare.some((number) => number.at === term.first - 1 && number.value > 1) ||
      stretch.terms.some(
        (other) => other.role === 'number' && other.last === term.first - 1 && Number(other.value) > 1,
      ))
  )
    return 'drop';
  return stretch.tokens[term.first - 1]?.fold === 'the' && !owner.many ? 'drop' : false;
}

/** Foil beside a windscreen or a lid says what it is made of. */
function isFoil(stretch: Stretch, noun: Term): boolean {
  return stretch.terms.some((term) => term.role === 'roles' && term.value === 'foil' && term.first === noun.first);
}

/** Whether a noun is of a set as a whole: cook set, storm set. */
function isSet(stretch: Stretch, noun: Term): boolean {
  return stretch.terms.some((term) => term.role === 'set' && term.first >= noun.first && term.last <= noun.last);
}

/** Nouns of things, and names of fuels that are no part of one; not those in a column of remarks. */
function nounsOf(stretch: Stretch): Term[] {
  const nouns = stretch.terms.filter(
    (term) => term.role === 'kind' || term.role === 'container' || term.role === 'notKit',
  );
  const fuels = stretch.terms.filter(
    (term) =>
      term.role === 'fuelTypes' &&
      term.value !== 'wood' &&
      !nouns.some(
        (noun) =>
          noun.first <= term.last && noun.last >= term.first && noun.last - noun.first >= term.last - term.first,
      ),
  );
  const cells = stretch.row.cells;
  const headed = cells.some((cell) => cell.column?.meaning === 'item');
  const named = (term: Term) => {
    const meaning = cells[stretch.cellOf[term.first] ?? 0]?.column?.meaning;
    return !headed || meaning === undefined || meaning === 'item' || (term.role === 'kind' && term.value === 'lid');
  };
  const shorter = (noun: Term) =>
    fuels.some(
      (fuel) =>
        fuel !== noun &&
        fuel.first <= noun.first &&
        fuel.last >= noun.last &&
        fuel.last - fuel.first > noun.last - noun.first,
    );
  return [...nouns.filter((noun) => !shorter(noun)), ...fuels].filter(named).sort((a, b) => a.first - b.first);
}

/** "two-burner": a number tied to a noun describes what comes after. */
function isCounted(stretch: Stretch, term: Term): boolean {
  const hyphen = stretch.tokens[term.first - 1];
  if (hyphen?.fold !== '-' || hyphen.gap > 0 || stretch.tokens[term.first]?.gap !== 0) return false;
  return (
    stretch.tokens[term.first - 2]?.type === 'number' ||
    stretch.terms.some((other) => other.role === 'number' && other.last === term.first - 2)
  );
}

/** "(burner 42 mm, arms 120 mm)": a part that is measured, not a thing. */
function isMeasured(stretch: Stretch, term: Term, things: readonly Thing[]): boolean {
  if (
    (things.length === 0 && stretch.row.bullet) ||
    !stretch.terms.some((other) => other.role === 'dimension' && other.first <= term.first && other.last >= term.last)
  )
    return false;
  return stretch.measures.some(
    (measure) => measure.unit.dimension === 'length' && measure.first > term.last && measure.first <= term.last + 3,
  );
}

/** "Stove (gas)", "Stove, liquid fuel": the fuel only says what the stove burns. */
function isSortOfStove(stretch: Stretch, thing: Thing, things: readonly Thing[]): boolean {
  if (thing.kind !== 'fuel' || thing.many || (thing.term.role === 'container' && thing.denied)) return false;
  const at = things.indexOf(thing);
  const stove = things.slice(0, at).findLast((other) => other.partOf === undefined);
  if (stove?.kind !== 'stove' || stove.denied || thing.term.first - stove.term.last > 12) return false;
  const segment = segmentOf(stretch, thing.term);
  const figured =
    stretch.measures.some(
      (measure) => measure.first >= segment.from && measure.last < segment.to && measure.unit.dimension !== 'other',
    ) || stretch.bare.some((number) => number.at >= segment.from && number.at < segment.to);
  if (figured) return false;
  return (
    inParentheses(stretch, stove.term.last, thing.term.first) ||
    (things.length === 2 &&
      stretch.terms.some(
        (term) => term.role === 'stoveTypes' && term.first <= thing.term.first && term.last >= thing.term.first,
      ))
  );
}

function inParentheses(stretch: Stretch, from: number, to: number): boolean {
  let depth = 0;
  for (let at = from; at < to; at++) {
    const fold = stretch.tokens[at]?.fold;
    if (fold === '(') depth++;
    else if (fold === ')') depth--;
  }
  return depth > 0;
}

/** What stands between the nearest breaks on either side. */
export function segmentOf(stretch: Stretch, term: { readonly first: number; readonly last: number }): Clause {
  let from = term.first;
  while (from > 0 && (stretch.breaks[from] ?? 0) === 0) from--;
  let to = term.last + 1;
  while (to < stretch.tokens.length && (stretch.breaks[to] ?? 0) === 0) to++;
  return { from, to };
}

function isUnit(stretch: Stretch, term: Term): boolean {
  return stretch.measures.some((measure) => {
    if (term.first <= measure.first || term.last > measure.last) return false;
    return measure.unit.id !== 'cup' || !isCupsThemselves(stretch, measure.first, term);
  });
}

/** "4 cups" on their own are cups to drink from; "3 cup kettle", "holds 4 cups" and "rice, 4 cups" are a measure. */
function isCupsThemselves(stretch: Stretch, first: number, term: Term): boolean {
  const number = stretch.tokens[first]?.number;
  if (number?.whole !== true || term.value !== 'mug') return false;
  return (
    !stretch.terms.some(
      (other) =>
        other !== term &&
        (other.role === 'kind' ||
          other.role === 'holds' ||
          other.role === 'food' ||
          other.role === 'rate' ||
          other.role === 'container') &&
        other.last < first,
    ) &&
    !stretch.terms.some(
      (other) => other.role === 'kind' && other.first > term.last && (stretch.breaks[other.first] ?? 0) === 0,
    )
  );
}

function adjacent(stretch: Stretch, a: Term, b: Term): boolean {
  const token = stretch.tokens[b.first];
  return (
    b.first === a.last + 1 &&
    token !== undefined &&
    token.gap < 2 &&
    (stretch.breaks[b.first] ?? 0) < 1 &&
    b.role !== 'notKit'
  );
}

/** What a noun is taken for, containers by what is in them; undefined for none of ours. */
function kindOf(stretch: Stretch, term: Term, sorts: readonly Term[], context: Context): ItemKind | undefined {
  const clause = clauseOf(stretch, term);
  const has = (role: Term['role']) =>
    stretch.terms.some((other) => other.role === role && other.first >= clause.from && other.last < clause.to);
  const about = context.section;
  const elsewhere =
    about === 'food' ||
    about === 'car' ||
    about === 'play' ||
    about === 'medicine' ||
    about === 'wash' ||
    about === 'clothes';
  if (term.role === 'kind') {
    const kind = term.value as ItemKind;
    if (kind === 'fuel' && (has('otherUse') || elsewhere || (about === 'other' && !has('pieces') && !context.cooks)))
      return undefined;
    if (about === 'food' || about === 'car' || about === 'play') return undefined;
    if (kind === 'bottle' && has('otherUse')) return undefined;
    if (
      kind === 'bottle' &&
      (about === 'fuel' ||
        stretch.terms.some(
          (other) =>
            other.role === 'kind' &&
            other.value === 'fuel' &&
            other.first === clause.from &&
            stretch.tokens[other.last + 1]?.fold === ':',
        ))
    )
      return 'fuel';
    if ((kind === 'bottle' || kind === 'bladder') && namesFuel(stretch, term, sorts, clause)) return 'fuel';
    if ((about === 'wash' || about === 'medicine') && kind !== 'stove' && kind !== 'pot')
      return kind === 'mug' && about === 'wash' ? 'mug' : undefined;
    if (
      isVessel(kind) &&
      stretch.terms.some(
        (other) =>
          other.role === 'food' &&
          (other.first === term.last + 1 || other.last === term.first - 1) &&
          kind !== 'mug' &&
          kind !== 'kettle',
      )
    )
      return undefined;
    return kind;
  }
  const fed = stretch.terms.some((other) => other.role === 'food' && Math.abs(other.first - term.first) <= 4);
  if (has('otherUse') || (fed && term.role !== 'fuelTypes') || elsewhere) return undefined;
  if (term.role === 'fuelTypes') return about === 'water' || about === 'sleep' ? undefined : 'fuel';
  if (term.value === 'soft')
    return (has('water') || about === 'water') && hasVolume(stretch, clause)
      ? 'bladder'
      : has('water') && about === 'water'
        ? 'bladder'
        : undefined;
  if (term.value === 'rigid') return namesFuel(stretch, term, sorts, clause) ? 'fuel' : undefined;
  if (namesFuel(stretch, term, sorts, clause)) return 'fuel';
  const measured = stretch.measures.some(
    (measure) =>
      measure.last < term.first &&
      measure.last >= term.first - 2 &&
      (measure.unit.dimension === 'mass' || measure.unit.dimension === 'ounce'),
  );
  const bare = stretch.bare.some((number) => number.at === term.first - 1 && number.value >= 90 && number.value <= 500);
  const segment = segmentOf(stretch, term);
  const figured = stretch.measures.some(
    (measure) => isMassive(measure) && measure.first >= segment.from && measure.last < segment.to,
  );
  return measured ||
    bare ||
    (figured && longName(stretch, term)) ||
    (about === 'cook' && longName(stretch, term)) ||
    about === 'fuel'
    ? 'fuel'
    : undefined;
}

function isMassive(measure: Measure): boolean {
  return measure.unit.dimension === 'mass' || measure.unit.dimension === 'ounce';
}

/** canister, cartridge: words that alone mean gas; a can or tank does not. */
function longName(stretch: Stretch, term: Term): boolean {
  return (stretch.tokens[term.first]?.fold.length ?? 0) > 5;
}

function namesFuel(stretch: Stretch, term: Term, sorts: readonly Term[], clause: Clause): boolean {
  if (sorts.some((sort) => sort.value === 'fuel')) return true;
  return (
    stretch.terms.some(
      (other) =>
        other.role === 'fuelTypes' &&
        other.first >= clause.from &&
        other.last < clause.to &&
        other.first !== term.first &&
        other.value !== 'wood',
    ) ||
    stretch.terms.some((other) => other.role === 'fuelTypes' && other.first === term.first && other.last === term.last)
  );
}

interface Clause {
  readonly from: number;
  readonly to: number;
}

/** The sentence or cell that a term stands in. */
export function clauseOf(stretch: Stretch, term: { readonly first: number; readonly last: number }): Clause {
  let from = term.first;
  while (from > 0 && (stretch.breaks[from] ?? 0) < 2) from--;
  let to = term.last + 1;
  while (to < stretch.tokens.length && (stretch.breaks[to] ?? 0) < 2) to++;
  return { from, to };
}

function hasVolume(stretch: Stretch, clause: Clause): boolean {
  return stretch.measures.some(
    (measure) => measure.unit.dimension === 'volume' && measure.first >= clause.from && measure.last < clause.to,
  );
}

/** (pot) scrubber, (stove) bag: the word right after makes it something else. */
function hasTail(stretch: Stretch, term: Term): boolean {
  return stretch.terms.some((other) => {
    if (other.role !== 'tails' || other.first < term.last) return false;
    const between = other.first - term.last;
    const hyphen =
      between === 2 && stretch.tokens[term.last + 1]?.fold === '-' && stretch.tokens[term.last + 1]?.gap === 0;
    return (between === 1 || hyphen) && (stretch.breaks[other.first] ?? 0) === 0;
  });
}

/** After "for", "in", "on": only mentioned. Not at the head of its row, and not with figures of its own before it. */
function isAside(stretch: Stretch, term: Term, things: readonly Thing[], context: Context): boolean {
  for (let at = term.first - 1; at >= Math.max(0, term.first - 4); at--) {
    if (stretch.tokens[at]?.fold === '=') return true;
    if ((stretch.breaks[at + 1] ?? 0) > 0 || stretch.tokens[at]?.type !== 'word') return false;
    const aside = stretch.terms.find((other) => other.role === 'asides' && other.last === at);
    if (aside !== undefined) return things.length > 0 || aside.first > 0 || !context.bulleted;
    if (stretch.terms.some((other) => other.role === 'heads' && other.last === at)) return true;
  }
  return false;
}

/** "no windscreen", "without a lid"; "pan? no"; "lid missing". */
function isDenied(stretch: Stretch, term: Term): boolean {
  const no = termsOf(stretch, 'no');
  for (const word of no) {
    const gap = term.first - word.last - 1;
    if (gap >= 0 && gap <= 3 && !spanBreaks(stretch, word.first + 1, term.first)) return true;
    if (word.first > term.last && word.first - term.last <= 3 && answers(stretch, term, word)) return true;
  }
  return termsOf(stretch, 'missing').some(
    (word) =>
      word.first === term.last + 1 || (word.first === term.last + 2 && stretch.tokens[term.last + 1]?.type === 'sign'),
  );
}

/** "pan? no", "windscreen: no, …", "lid: none". */
function answers(stretch: Stretch, term: Term, no: Term): boolean {
  const sign = stretch.tokens[term.last + 1]?.fold ?? '';
  if (sign === '' || !'?:!,(•'.includes(sign)) return false;
  const next = stretch.tokens[no.last + 1];
  return next === undefined || (stretch.breaks[no.last + 1] ?? 0) > 0 || next.type === 'sign';
}

function spanBreaks(stretch: Stretch, from: number, to: number): boolean {
  for (let at = from; at <= to; at++) if ((stretch.breaks[at] ?? 0) > 0) return true;
  return false;
}

/** A lid named after its vessel is part of it, unless it has a mass or a count of its own. */
function isPartOf(stretch: Stretch, term: Term, kind: ItemKind, owner: Thing, denied: boolean): boolean {
  if (kind !== 'lid' || !(isVessel(owner.kind) || owner.kind === 'stove')) return false;
  if (denied) return true;
  if (stretch.tokens[term.first - 1]?.fold === '/' && stretch.tokens[term.last + 1]?.fold === '/') return false;
  if (stretch.row.cells[stretch.cellOf[term.first] ?? 0]?.column?.meaning === 'notes') return true;
  const weighed = stretch.measures.find((measure) => measure.first > term.last && measure.first <= term.last + 3);
  const parted = weighed !== undefined && spanBreaks(stretch, term.last + 1, weighed.first);
  const bare = !stretch.measures.some(
    (measure) => measure.first > owner.term.last && measure.last < term.first && measure.unit.dimension === 'mass',
  );
  if (parted && bare) return true;
  return !(
    weighed !== undefined &&
    weighed.unit.dimension !== 'volume' &&
    weighed.unit.dimension !== 'length' &&
    !spansThing(stretch, term.last, weighed.first)
  );
}

function spansThing(stretch: Stretch, from: number, to: number): boolean {
  return (
    stretch.terms.some((term) => term.role === 'kind' && term.first > from && term.first < to) ||
    (stretch.breaks[to] ?? 0) > 1
  );
}
