import type { ItemKind } from '../../model/item.js';
import type { Measure } from '../quantities/measures.js';
import { isThing, type Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { clauseOf, inParentheses, segmentOf, spanBreaks } from './clauses.js';
import type { Context } from './context.js';
import { isDenied } from './denied.js';
import { labelsOf, type Label } from './gas-shares.js';
import { kindOf } from './kinds.js';
import { areFlames, isSortOfStove, mergesWith } from './same.js';
import { saysWhatSort } from './sorts.js';
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
const holds = (term: Term): boolean =>
  term.role === 'kind' && (term.value === 'other-cook' || isVessel(term.value as ItemKind));

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
  if (stretch.tells(CONTENT)) return undefined;
  if (context.kinds === true && (things.length > 0 || !isOneOf(stretch, context, context.kind))) return undefined;
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

/** Under "Pots:" a short row is a pot by its size. */
function isOneOf(stretch: Stretch, context: Context, kind: ItemKind): boolean {
  return (
    (context.bulleted || (context.plainLists && stretch.tokens.length <= LONGEST_NAMELESS)) &&
    !stretch.tells(NAMED) &&
    stretch.measures.some((measure) => measure.unit.dimension === 'volume' || !isVessel(kind))
  );
}

/** Tokens of a row that gives the size of a thing and not its name. */
const LONGEST_NAMELESS = 12;

/** "rice 500 g" and "water 2 l" under "Stove" or "Pots" tell of neither. */
const CONTENT: ReadonlySet<Role> = new Set(['notKit', 'otherUse', 'food', 'water']);
const NAMED: ReadonlySet<Role> = new Set(['fuelTypes', 'section']);

function namedThings(stretch: Stretch, context: Context, head?: Thing): Thing[] {
  const nouns = nounsOf(stretch);
  const things: Thing[] = head === undefined ? [] : [head];
  const labels = labelsOf(stretch);
  let sorts: Term[] = [];
  for (const [i, term] of nouns.entries()) {
    const after = nouns[i + 1];
    const before = nouns[i - 1];
    if (
      term.role === 'notKit' ||
      isShareOf(labels, term, things) ||
      isWhereFuelIs(stretch, term, things) ||
      (before !== undefined && burns(stretch, before, term)) ||
      isUnit(stretch, term) ||
      isCounted(stretch, term) ||
      isMeasured(stretch, term, things)
    ) {
      sorts = [];
      continue;
    }
    if (
      after !== undefined &&
      adjacent(stretch, term, after) &&
      !context.headFirst &&
      !burns(stretch, term, after) &&
      saysWhatSort(term, after, inRow(stretch, nouns, i))
    ) {
      sorts.push(term);
      continue;
    }
    const own = sorts;
    sorts = [];
    const kind = term.role === 'pronoun' ? things.at(-1)?.kind : kindOf(stretch, term, own, context);
    if (kind === undefined || hasTail(stretch, term) || isAside(stretch, term, things, context)) continue;
    const denied = isDenied(stretch, term);
    const owner = things.findLast((thing) => thing.partOf === undefined);
    const whole = kind === 'lid' ? lidded(stretch, term, things, owner) : owner;
    const part = whole !== undefined && isPartOf(stretch, term, kind, whole, denied) ? whole : undefined;
    if (owner?.kind === kind && !spanBreaks(stretch, owner.term.last + 1, term.first) && part === undefined) {
      if (context.headFirst || isIn(stretch, owner.term, term) || areFlames(stretch, owner, term, kind)) continue;
      things.pop();
    } else if (owner !== undefined && part === undefined && term.role !== 'pronoun') {
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

/** "canister 230 g (70 % butane, 30 % propane)", "butane/propane 70/30": after the canister, or the first gas, a gas of its label is no further thing. */
function isShareOf(labels: readonly Label[], { first, last }: Term, things: readonly Thing[]): boolean {
  return things.at(-1)?.kind === 'fuel' && labels.some((label) => label.first <= first && label.last >= last);
}

/** "petrol 2 L (2 bottles 1 L)": what a bracket after the volume of a fuel names is what the fuel is in. */
function isWhereFuelIs(stretch: Stretch, term: Term, things: readonly Thing[]): boolean {
  const owner = things.at(-1);
  if (owner?.kind !== 'fuel' || !(term.role === 'container' || term.value === 'bottle' || term.value === 'fuel'))
    return false;
  if (!inParentheses(stretch, owner.term.last, term.first)) return false;
  const open = stretch.tokens.findIndex(({ fold }, at) => at > owner.term.last && fold === '(');
  return stretch.measures.some(
    ({ unit, first, last }) => unit.dimension === 'volume' && first > owner.term.last && last < open,
  );
}

/** Whether more nouns stand right beside a noun and the one after it: "stove pot mug spoon". */
function inRow(stretch: Stretch, nouns: readonly Term[], at: number): boolean {
  const [before, term, next, after] = [nouns[at - 1], nouns[at], nouns[at + 1], nouns[at + 2]];
  return (
    (before !== undefined && term !== undefined && adjacent(stretch, before, term)) ||
    (next !== undefined && after !== undefined && adjacent(stretch, next, after))
  );
}

/** "white gas in 3 bottles": the second noun only says where the first is. */
function isIn(stretch: Stretch, owner: Term, term: Term): boolean {
  return (
    owner.role === 'fuelTypes' &&
    termsOf(stretch, 'asides').some((aside) => aside.first > owner.last && aside.last < term.first)
  );
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
    if (
      !stretch.row.bullet &&
      termsOf(stretch, 'section').some(
        (section) =>
          section.last > term.last && section.first === term.first && (stretch.breaks[section.first] ?? 2) === 2,
      )
    )
      return false;
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
  return [...nouns.filter((noun) => !shorter(noun)), ...fuels, ...pronounsOf(stretch)]
    .filter(named)
    .sort((a, b) => a.first - b.first);
}

/** "the 0.8 l one": a pronoun counts with a figure right beside it. */
function pronounsOf(stretch: Stretch): readonly Term[] {
  const named = (term: Term) => stretch.terms.some((other) => isThing(other.role) && other.first === term.last + 1);
  return termsOf(stretch, 'pronoun').filter(
    (term) =>
      !named(term) &&
      stretch.measures.some(
        (measure) =>
          (measure.unit.dimension === 'volume' || measure.unit.dimension === 'mass') &&
          (measure.last === term.first - 1 || measure.first === term.last + 2) &&
          stretch.measures.some(
            (other) =>
              other.last < Math.min(measure.first, term.first) && other.unit.dimension === measure.unit.dimension,
          ) &&
          !spanBreaks(stretch, Math.min(measure.last, term.last) + 1, Math.max(measure.first, term.first)),
      ),
  );
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
    !isOfThing(stretch, term, things) ||
    !stretch.terms.some((other) => other.role === 'dimension' && other.first <= term.first && other.last >= term.last)
  )
    return false;
  return stretch.measures.some(
    (measure) => measure.unit.dimension === 'length' && measure.first > term.last && measure.first <= term.last + 3,
  );
}

/** "Pot 1 l. The burner is 5 cm wide.": in a sentence of its own, and with no stove before it, a burner is a thing. */
function isOfThing(stretch: Stretch, term: Term, things: readonly Thing[]): boolean {
  const last = things.at(-1);
  if (last === undefined || things.some((thing) => thing.kind === 'stove')) return true;
  return last.term.first >= clauseOf(stretch, term).from;
}

function isUnit(stretch: Stretch, term: Term): boolean {
  return stretch.measures.some((measure) => {
    if (term.first <= measure.first || term.last > measure.last) return false;
    return term.value !== 'mug' || !isCupsThemselves(stretch, measure.first, term);
  });
}

/**
 * "4 cups" on their own are cups to drink from, and so are "4 quarts" in French; "3 cup kettle", "holds 4 cups" and "rice, 4 cups"
 * are a measure. After "pot 1 l" or "gas 230 g" they measure nothing more.
 */
function isCupsThemselves(stretch: Stretch, first: number, term: Term): boolean {
  const number = stretch.tokens[first]?.number;
  if (number?.whole !== true) return false;
  const measured = (from: number) =>
    stretch.measures.some(
      (measure) => measure.first > from && measure.last < first && measure.unit.dimension === 'volume',
    );
  return (
    !stretch.terms.some(
      (other) =>
        other !== term &&
        other.last < first &&
        (other.role === 'food' ||
          other.role === 'rate' ||
          ((other.role === 'holds' || other.role === 'container' || holds(other)) &&
            !spanBreaks(stretch, other.last + 1, first) &&
            !measured(other.last))),
    ) &&
    (isListedFurther(stretch, first, term) ||
      !stretch.terms.some(
        (other) => other.role === 'kind' && other.first > term.last && !spanBreaks(stretch, term.last + 1, other.first),
      ))
  );
}

/** "gas 230 g 2 cups pot": a plural after another thing of a list that came as one line. */
function isListedFurther(stretch: Stretch, first: number, term: Term): boolean {
  return term.many === true && stretch.terms.some((other) => other.role === 'kind' && other.last < first);
}

/** "Réchaud essence", "Kocher Gas": a fuel right after the stove says what it burns, and is no thing of its own. */
function burns(stretch: Stretch, stove: Term, fuel: Term): boolean {
  return (
    stove.role === 'kind' &&
    stove.value === 'stove' &&
    adjacent(stretch, stove, fuel) &&
    termsOf(stretch, 'fuelTypes').some((term) => term.first === fuel.first && term.last === fuel.last)
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

/** "for the kettle and the mug": what an aside names second. */
function isSecondAside(stretch: Stretch, term: Term, things: readonly Thing[], context: Context): boolean {
  const definite =
    termsOf(stretch, 'determiners').some((word) => word.last === term.first - 1) &&
    !termsOf(stretch, 'article').some((word) => word.last === term.first - 1);
  const and = termsOf(stretch, 'and').find((word) => word.last === term.first - 2);
  const first = and && termsOf(stretch, 'kind').find((other) => other.last === and.first - 1);
  return definite && first !== undefined && isAside(stretch, first, things, context);
}

/** What prose names beside the things of a row, in whatever place: "we sat around a gas stove". */
export function asidesOf(stretch: Stretch, things: readonly Thing[], context: Context): Thing[] {
  const covered = (at: number) => things.some(({ term, sorts }) => (sorts[0] ?? term).first <= at && term.last >= at);
  return termsOf(stretch, 'kind').flatMap((term): Thing[] => {
    if (covered(term.first) || isUnit(stretch, term) || hasTail(stretch, term)) return [];
    const led = (['heads', 'fits'] as const).some((role) =>
      termsOf(stretch, role).some(({ last }) => last < term.first && term.first - last <= REACH_OF_HEAD),
    );
    const kind = led || isDenied(stretch, term) ? undefined : kindOf(stretch, term, [], context);
    return kind === undefined ? [] : [{ term, kind, many: term.many ?? false, denied: false, sorts: [] }];
  });
}

/** Tokens from "bag for" to what it is for: "bag for the old stove". */
const REACH_OF_HEAD = 3;

/** After "for", "in", "on": only mentioned. Not at the head of its row, and not with figures of its own before it. */
function isAside(stretch: Stretch, term: Term, things: readonly Thing[], context: Context): boolean {
  if (things.length > 0 && (isForSoMany(stretch, term) || isPer(stretch, term))) return true;
  if (things.length > 0 && isSecondAside(stretch, term, things, context)) return true;
  if ((things.length > 0 || term.first > 3) && fitted(stretch, term) !== undefined) return true;
  for (let at = term.first - 1; at >= Math.max(0, term.first - 4); at--) {
    if (stretch.tokens[at]?.fold === '=') return true;
    if ((stretch.breaks[at + 1] ?? 0) > 0 || stretch.tokens[at]?.type !== 'word') return false;
    if (termsOf(stretch, 'away').some((away) => away.first <= at && away.last >= at)) return false;
    // "I take a stove", not "a burner takes a pot".
    if (things.length === 0 && termsOf(stretch, 'carries').some(({ last }) => last === at)) return false;
    const content = termsOf(stretch, 'notKit').some((other) => other.first < at && other.last === at);
    if (content && term.role === 'fuelTypes') return false;
    const aside = stretch.terms.find(
      (other) => other.role === 'asides' && other.last === at && !isTiedToWord(stretch, other),
    );
    const opens = termsOf(stretch, 'article').some((word) => word.last === term.first - 1 && word.first > at + 1);
    // "entre los dos una olla": after its own object, the aside ends before an article.
    if (aside !== undefined && opens) return false;
    if (aside !== undefined) return things.length > 0 || aside.first > 0 || !context.bulleted;
    if (stretch.terms.some((other) => other.role === 'heads' && other.last === at)) return true;
  }
  return false;
}

/** "screw-on gas burner": what a hyphen ties to the word before is no preposition. */
function isTiedToWord({ tokens }: Stretch, { first }: Term): boolean {
  const hyphen = tokens[first - 1];
  return hyphen?.fold === '-' && hyphen.gap === 0 && tokens[first]?.gap === 0 && tokens[first - 2]?.type === 'word';
}

/** "fits a 110 g canister", "for 230 g canisters": the figure of what a thing goes with, which is none of its own. */
export function fitted(stretch: Stretch, term: Term): Measure | undefined {
  const fits = termsOf(stretch, 'fits');
  if (fits.length === 0) return undefined;
  const measure = stretch.measures.find(
    ({ last }) => last === term.first - 1 || (last === term.first - 2 && stretch.tokens[last + 1]?.fold === '-'),
  );
  if (measure === undefined || (stretch.breaks[term.first] ?? 0) > 1) return undefined;
  const article = termsOf(stretch, 'article').find((word) => word.last === measure.first - 1);
  const before = (article?.first ?? measure.first) - 1;
  return fits.some((word) => word.last === before) ? measure : undefined;
}

/** "1 pot per stove". */
function isPer(stretch: Stretch, term: Term): boolean {
  const per = termsOf(stretch, 'perGroup').find((word) => word.last === term.first - 1);
  return per !== undefined && !termsOf(stretch, 'each').some((each) => each.first === per.first);
}

/** "moka pot for 3 cups": what it makes. */
function isForSoMany(stretch: Stretch, term: Term): boolean {
  const at = term.first - 1;
  return (
    stretch.bare.some((number) => number.at === at) &&
    (stretch.breaks[term.first] ?? 0) === 0 &&
    (stretch.breaks[at] ?? 0) === 0 &&
    termsOf(stretch, 'peopleBefore').some((word) => word.last === at - 1)
  );
}

/** "2 pots, pan, 2 lids": lids listed after a pan are the pot's; "pan with lid" has its own. */
function lidded(stretch: Stretch, term: Term, things: readonly Thing[], owner: Thing | undefined): Thing | undefined {
  if (owner?.kind !== 'pan') return owner;
  const own = termsOf(stretch, 'with').some((word) => word.first > owner.term.last && word.last < term.first);
  return own ? owner : (things.findLast((thing) => thing.kind === 'pot') ?? owner);
}

/** A lid named after its vessel is part of it, unless it has a mass or a count of its own. */
function isPartOf(stretch: Stretch, term: Term, kind: ItemKind, owner: Thing, denied: boolean): boolean {
  if (kind !== 'lid' || !(isVessel(owner.kind) || owner.kind === 'stove')) return false;
  if (denied) return true;
  if (stretch.tokens[term.first - 1]?.fold === '/' && stretch.tokens[term.last + 1]?.fold === '/') return false;
  if (stretch.row.cells[stretch.cellOf[term.first] ?? 0]?.column?.meaning === 'notes') return true;
  const { from } = segmentOf(stretch, term);
  if (termsOf(stretch, 'together').some((word) => word.first >= from - 3 && word.last < term.first)) return true;
  const weighed = stretch.measures.find((measure) => measure.first > term.last && measure.first <= term.last + 3);
  const parted = weighed !== undefined && spanBreaks(stretch, term.last + 1, weighed.first);
  const bare = !stretch.measures.some(
    (measure) => measure.first > owner.term.last && measure.last < term.first && measure.unit.dimension === 'mass',
  );
  if (bare && (parted || (weighed !== undefined && isWith(stretch, term)))) return true;
  return !(
    weighed !== undefined &&
    weighed.unit.dimension !== 'volume' &&
    weighed.unit.dimension !== 'length' &&
    !spansThing(stretch, term.last, weighed.first)
  );
}

/** "pot with lid 280 g": right after "with" a lid comes along, and the mass is of both. */
function isWith(stretch: Stretch, term: Term): boolean {
  return termsOf(stretch, 'with').some(
    (word) => word.last === term.first - 1 && /\p{L}/u.test(stretch.tokens[word.first]?.fold ?? ''),
  );
}

function spansThing(stretch: Stretch, from: number, to: number): boolean {
  return (
    stretch.terms.some((term) => term.role === 'kind' && term.first > from && term.first < to) ||
    (stretch.breaks[to] ?? 0) > 1
  );
}
