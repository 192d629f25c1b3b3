import { phrase } from '../../model/phrase.js';
import type { Context } from './context.js';
import { readCarried } from './away.js';
import { doubt } from './doubt.js';
import { draftOf, isMissing, measuresOf, spanOf, stated, within, type Draft } from './draft.js';
import { readBareMass, readMass } from './mass.js';
import { readQuantity } from './quantity.js';
import { readSizes, type Order } from './size.js';
import { endOf, startOf, styleOf } from './extent.js';
import { isListed, withoutLabels } from './listed.js';
import type { Measure } from '../quantities/measures.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { clauseOf } from './clauses.js';
import { halved } from './alternatives.js';
import { areLooseTablets } from './kinds.js';
import { asidesOf, fitted, thingsOf, type Thing } from './things.js';
import { readFuelWords, readRole, readTraits } from './traits.js';
import { readVolume } from './volume.js';

/** What a row names: things, their parts, and things named in passing, which count only where the list names no such thing. */
export interface Drafts {
  readonly drafts: Draft[];
  readonly parts: Thing[];
  readonly passing: Draft[];
  /** All that prose names and does not list. */
  readonly named: Draft[];
}

/** Words without which a row names no thing. */
const NAMING: ReadonlySet<Role> = new Set(['kind', 'container', 'fuelTypes']);

/** The things of a row as drafts, with nothing read of them yet but what they are and which tokens tell of them. */
export function draftsOf(stretch: Stretch, context: Context): Drafts {
  if (context.kind === undefined && !stretch.tells(NAMING)) return { drafts: [], parts: [], passing: [], named: [] };
  const things = thingsOf(stretch, context);
  const parts = things.filter((thing) => thing.partOf !== undefined);
  const mains = withoutLabels(
    stretch,
    things.filter((thing) => thing.partOf === undefined),
    context,
  );
  const drafts: Draft[] = [];
  const style = styleOf(stretch, mains);
  for (const [i, thing] of mains.entries()) {
    const from = startOf(stretch, mains[i - 1], thing, mains[i + 1], context, style);
    const next = mains[i + 1];
    const to =
      next === undefined
        ? endOf(stretch, thing, context)
        : Math.min(startOf(stretch, thing, next, mains[i + 2], context, style), endOf(stretch, thing, context));
    const headed = thing.term.first < 0 && context.kindSpan !== undefined;
    const span = headed ? context.kindSpan : spanOf(stretch, thing.term.first, thing.term.last);
    const noun = [thing.sorts[0]?.first ?? thing.term.first, thing.term.last] as const;
    const draft = draftOf(thing.kind, stretch.row.line, span, thing, from, Math.max(to, thing.term.last + 1), noun);
    if (headed) draft.kindBecause = phrase`the heading names it`;
    else if (areLooseTablets(stretch, thing.term, context))
      draft.kindBecause = phrase`tablets that do not say of what are taken for fuel`;
    drafts.push(draft);
  }
  return { drafts, parts, ...passingOf(stretch, things, mains, context) };
}

/** Things that running prose names without listing them; those may count that have no figure, and stand first in their sentence. */
function passingOf(
  stretch: Stretch,
  things: readonly Thing[],
  mains: readonly Thing[],
  context: Context,
): Pick<Drafts, 'passing' | 'named'> {
  const passing: Draft[] = [];
  const named: Draft[] = [];
  if (isListed(stretch, context) || stretch.row.type === 'heading' || stretch.tokens.at(-1)?.fold === '?')
    return { passing, named };
  const all = [...things, ...asidesOf(stretch, things, context)].sort((a, b) => a.term.first - b.term.first);
  for (const [i, thing] of all.entries()) {
    if (mains.includes(thing) || thing.partOf !== undefined || thing.denied) continue;
    const { first, last } = thing.term;
    const clause = clauseOf(stretch, thing.term);
    const before = all.slice(0, i).filter(({ term }) => term.first >= clause.from);
    const draft = (from: number, to: number) =>
      draftOf(thing.kind, stretch.row.line, spanOf(stretch, first, last), thing, from, to, [first, last]);
    if (things.includes(thing) && !thing.many && !before.some((other) => things.includes(other)))
      passing.push(draft(clause.from, clause.to));
    const after = all[i + 1]?.term.first ?? clause.to;
    named.push(draft((before.at(-1)?.term.last ?? clause.from - 1) + 1, Math.min(after, clause.to)));
  }
  return { passing, named };
}

/** Reads everything that the tokens of a draft tell. The order matters: what one reader takes, the next does not see. */
export function fill(stretch: Stretch, draft: Draft, parts: readonly Thing[], context: Context, order: Order): void {
  countCups(stretch, draft);
  skipFitted(stretch, draft);
  readFuelWords(stretch, draft, context);
  readVolume(stretch, draft);
  takeForPot(stretch, draft);
  readMass(stretch, draft);
  readSizes(stretch, draft, order);
  readTraits(stretch, draft, parts);
  readQuantity(stretch, draft, context);
  readBareMass(stretch, draft, context.massUnit);
  if (draft.kind === 'fuel' && within(stretch, draft, 'halfFull').length > 0 && !isOfSeveral(stretch, draft))
    draft.fuelMassG = halved(draft.fuelMassG);
  readRole(stretch, draft);
  doubt(stretch, draft);
  readCarried(stretch, draft, context);
}

/** Of cans of several sizes each is told apart later. */
function isOfSeveral(stretch: Stretch, draft: Draft): boolean {
  return (
    stretch.measures.filter(
      ({ unit, first, last }) => unit.dimension === 'mass' && first >= draft.from && last < draft.to,
    ).length > 1
  );
}

/** "2 pans 1.5 l": British for a saucepan; a pan to fry in is named by its width. */
function takeForPot(stretch: Stretch, draft: Draft): void {
  const [size] = draft.capacitiesMl;
  if (draft.kind !== 'pan' || size?.grounds !== 'stated' || size.value < LEAST_SAUCEPAN_ML) return;
  const [first, last] = draft.noun;
  if (!termsOf(stretch, 'saucepans').some((term) => term.first === first && term.last === last)) return;
  draft.kind = 'pot';
  draft.kindBecause = phrase`a pan of so many litres is taken for a pot`;
}

/** mL: a pan that holds less may be one to fry in. */
const LEAST_SAUCEPAN_ML = 800;

/** "Stove for 230 g canisters", "réchaud pour cartouche 230 g, 88 g": the grams of what it goes with are none of the stove's. */
function skipFitted(stretch: Stretch, draft: Draft): void {
  const fits = within(stretch, draft, 'fits');
  if (fits.length === 0) return;
  for (const term of [...within(stretch, draft, 'kind'), ...within(stretch, draft, 'container')]) {
    if (term.first <= draft.noun[1]) continue;
    const led = fits.some(({ last }) => last === term.first - 1) ? followedByTwo(stretch, draft, term) : undefined;
    const measure = fitted(stretch, term) ?? led;
    if (measure !== undefined) draft.taken.add(measure.first);
  }
}

/** The figure right after a term, or after a short word, where the draft has another of its sort further on. */
function followedByTwo(stretch: Stretch, draft: Draft, term: Term): Measure | undefined {
  const [first, ...more] = measuresOf(stretch, draft).filter((measure) => measure.first > term.last);
  const close = first !== undefined && first.first <= term.last + 2 && (stretch.breaks[first.first] ?? 0) === 0;
  return close && more.some(({ unit }) => unit.dimension === first.unit.dimension) ? first : undefined;
}

/** "4 cups" that are cups: the number counts them, it is no measure. */
function countCups(stretch: Stretch, draft: Draft): void {
  const measure = stretch.measures.find((one) => one.last === draft.noun[1] && one.first < draft.noun[0]);
  if (measure === undefined || draft.kind !== 'mug') return;
  draft.taken.add(measure.first);
  const count = stretch.tokens[measure.first]?.number;
  if (isMissing(draft.quantity) && count?.whole === true)
    draft.quantity = stated(count.value, spanOf(stretch, measure.first, measure.first));
}
