import { phrase } from '../../model/phrase.js';
import type { Context } from './context.js';
import { readCarried } from './away.js';
import { doubt } from './doubt.js';
import { draftOf, isMissing, measuresOf, spanOf, stated, within, type Draft } from './draft.js';
import { readBareMass, readMass } from './mass.js';
import { isLedByPerson, readQuantity } from './quantity.js';
import { readSizes, type Order } from './size.js';
import { afterSet, isLabel } from './labels.js';
import type { Measure } from '../quantities/measures.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { clauseOf, inParentheses, spanBreaks } from './clauses.js';
import { areLooseTablets } from './kinds.js';
import { fitted, thingsOf, type Thing } from './things.js';
import { readFuelWords, readRole, readTraits } from './traits.js';
import { readVolume } from './volume.js';

/** What a row names: things, their parts, and things named in passing, which count only where the list names no such thing. */
export interface Drafts {
  readonly drafts: Draft[];
  readonly parts: Thing[];
  readonly passing: Draft[];
}

/** Words without which a row names no thing. */
const NAMING: ReadonlySet<Role> = new Set(['kind', 'container', 'fuelTypes']);

/** The things of a row as drafts, with nothing read of them yet but what they are and which tokens tell of them. */
export function draftsOf(stretch: Stretch, context: Context): Drafts {
  if (context.kind === undefined && !stretch.tells(NAMING)) return { drafts: [], parts: [], passing: [] };
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
  return { drafts, parts, passing: passingOf(stretch, things, mains, context) };
}

/** Things that running prose names without a figure, one a sentence. */
function passingOf(stretch: Stretch, things: readonly Thing[], mains: readonly Thing[], context: Context): Draft[] {
  if (isListed(stretch, context) || stretch.row.type === 'heading' || stretch.tokens.at(-1)?.fold === '?') return [];
  const passing: Draft[] = [];
  for (const thing of things) {
    const { from, to } = clauseOf(stretch, thing.term);
    const alone = !things.some(
      (other) => other !== thing && other.term.first >= from && other.term.first < thing.term.first,
    );
    if (mains.includes(thing) || thing.partOf !== undefined || thing.denied || thing.many || !alone) continue;
    const span = spanOf(stretch, thing.term.first, thing.term.last);
    passing.push(draftOf(thing.kind, stretch.row.line, span, thing, from, to, [thing.term.first, thing.term.last]));
  }
  return passing;
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
  readRole(stretch, draft);
  doubt(stretch, draft);
  readCarried(stretch, draft, context);
}

/** "Pot + lid 101 g + 65 g": as many masses as things, in their order. */
function spreadMasses(stretch: Stretch, drafts: readonly Draft[]): boolean {
  const last = drafts.at(-1);
  if (last === undefined || drafts.length < 2 || drafts.slice(0, -1).some((draft) => !isMissing(draft.massG)))
    return false;
  const masses = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'mass' && measure.first > last.noun[1],
  );
  const joined = masses.every(
    (measure, i) =>
      i === 0 || (stretch.tokens[measure.first - 1]?.fold === '+' && masses[i - 1]?.last === measure.first - 2),
  );
  if (masses.length !== drafts.length || !joined) return false;
  for (const [i, draft] of drafts.entries()) {
    const measure = masses[i];
    if (measure !== undefined)
      draft.massG = stated(measure.values[0] ?? 0, spanOf(stretch, measure.first, measure.last));
  }
  return true;
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

/** "4x bowl+cup": a count before two things joined without a space is of both. */
export function shareCount(stretch: Stretch, drafts: readonly Draft[]): void {
  for (const [i, draft] of drafts.entries()) {
    const before = drafts[i - 1];
    const joint = draft.noun[0] - 1;
    if (before?.quantity.grounds !== 'stated' || before.quantity.value < 2 || before.noun[1] !== joint - 1) continue;
    const glued = stretch.tokens[joint]?.gap === 0 && stretch.tokens[draft.noun[0]]?.gap === 0;
    const sign = stretch.tokens[joint]?.fold ?? '';
    if (glued && '+&'.includes(sign) && before.quantity.span !== undefined && !counted(draft))
      draft.quantity = stated(before.quantity.value, before.quantity.span);
  }
}

function counted(draft: Draft): boolean {
  return draft.quantity.grounds === 'stated' && draft.quantity.value > 1;
}

/** The mass at the end of a row that is of all its things: after the bracket or colon that names the parts of a set, or "with" the others. */
function isMassOfAll(stretch: Stretch, first: Draft, last: Draft): boolean {
  if (last.massG.grounds !== 'stated' || last.massG.span === undefined) return false;
  if (last.massBasis === 'line') return true;
  const [start] = last.massG.span;
  const measure = stretch.measures.find((one) => stretch.tokens[one.first]?.start === start);
  if (measure === undefined) return false;
  const withs = termsOf(stretch, 'with');
  if (withs.some((term) => term.first === measure.last + 1)) return true;
  const together = withs.some(
    (term) => term.first > first.noun[1] && term.last < last.noun[0] && last.noun[0] - term.last <= MOST_ADJECTIVES + 1,
  );
  if (together && measure.first > last.noun[1] && !inParentheses(stretch, last.noun[1], measure.first)) return true;
  const set = termsOf(stretch, 'set').find(
    (term) => term.last <= first.noun[0] && '(:'.includes(stretch.tokens[term.last + 1]?.fold ?? ' '),
  );
  if (set === undefined) return false;
  const between = stretch.tokens.slice(last.noun[1] + 1, measure.first);
  if (stretch.tokens[set.last + 1]?.fold === ':')
    return between.length === 1 && spanBreaks(stretch, last.noun[1] + 1, measure.first);
  return between.some((token) => token.fold === ')');
}

/** "Storm cooker (2 pots, no kettle) 720 g": a mass after a bracket is of the thing before it, not of the last one inside. */
function ownerOfBracket(stretch: Stretch, drafts: readonly Draft[], last: Draft): Draft | undefined {
  if (last.massG.grounds !== 'stated' || last.massG.span === undefined || last.noun[0] < 0) return undefined;
  const [start] = last.massG.span;
  const owner = drafts.findLast((draft) => draft !== last && inParentheses(stretch, draft.noun[1] + 1, last.noun[0]));
  const mass = stretch.measures.find((measure) => stretch.tokens[measure.first]?.start === start);
  if (owner === undefined || mass === undefined || !isMissing(owner.massG)) return undefined;
  return mass.first > last.noun[1] && !inParentheses(stretch, owner.noun[1] + 1, mass.first) ? owner : undefined;
}

/** "pot, pan, gripper, 412 g the lot": a mass of all together stands with the first. */
export function shareMass(stretch: Stretch, drafts: readonly Draft[]): void {
  if (spreadMasses(stretch, drafts)) return;
  const [first] = drafts;
  const last = drafts.at(-1);
  if (first === undefined || last === undefined || first === last) return;
  const owner = ownerOfBracket(stretch, drafts, last);
  if (owner !== undefined) {
    owner.massG = last.massG;
    last.massG = { grounds: 'missing' };
    return;
  }
  if (first.kind === last.kind) return;
  if (first.massG.grounds !== 'missing' || !isMassOfAll(stretch, first, last)) return;
  if (last.quantity.grounds === 'stated' && last.quantity.value > 1) return;
  first.massG = last.massG;
  first.massBasis = 'line';
  last.massG = { grounds: 'missing' };
  delete last.massBasis;
}

/** "Stove: a small gas stove", "Fuel: one 4 oz canister": the first word is a label. In running prose a thing needs a figure of its own. */
function withoutLabels(stretch: Stretch, things: readonly Thing[], context: Context): Thing[] {
  const kept: Thing[] = [];
  for (const [i, thing] of things.entries()) {
    const next = things[i + 1];
    if (isLabel(stretch, thing, kept.length === 0, things.slice(i + 1))) continue;
    if (i > 0 && isRepeat(stretch, things.slice(0, i), thing)) continue;
    if (isListed(stretch, context) || hasFigure(stretch, thing, next) || goesOn(stretch, kept.at(-1), thing))
      kept.push(thing);
  }
  return kept;
}

/** "a 1.3 l pot, a small gas stove": a sentence that lists goes on to the next thing, by its article. */
function goesOn(stretch: Stretch, previous: Thing | undefined, thing: Thing): boolean {
  if (previous === undefined || previous.term.first < clauseOf(stretch, thing.term).from) return false;
  const article = termsOf(stretch, 'article').findLast(
    (term) => term.last < thing.term.first && thing.term.first - term.last <= MOST_ADJECTIVES + 1,
  );
  return (
    article !== undefined &&
    article.first > previous.term.last &&
    [',', '+', '&'].includes(stretch.tokens[article.first - 1]?.fold ?? '') &&
    !spanBreaks(stretch, article.first + 1, thing.term.first)
  );
}

/** Words between an article and its noun. */
const MOST_ADJECTIVES = 3;

/** A later sentence that names a thing again and gives no figure adds nothing. */
function isRepeat(stretch: Stretch, before: readonly Thing[], thing: Thing): boolean {
  const clause = clauseOf(stretch, thing.term);
  const first = before[0];
  if (first === undefined || clause.from <= first.term.last || (stretch.tokens[clause.from]?.gap ?? 0) === 2)
    return false;
  if (stretch.cellOf[clause.from] !== stretch.cellOf[first.term.first]) return false;
  return (
    !stretch.measures.some(
      (measure) => measure.first >= clause.from && measure.last < clause.to && measure.unit.dimension !== 'other',
    ) &&
    !stretch.bare.some((number) => number.at >= clause.from && number.at < clause.to) &&
    !thing.denied
  );
}

/** A line of the list, not of prose around it. */
function isListed(stretch: Stretch, context: Context): boolean {
  const headed = context.kind !== undefined && context.kinds !== true;
  return context.bulleted || headed || (context.plainLists && isPlainLine(stretch)) || isLedByPerson(stretch);
}

const PLAIN = 130;
/** Words from which a line that ends in a question mark asks: "windscreen?" is a thing in doubt. */
const SHORTEST_QUESTION = 3;
/** Words from which a line without a figure tells something, whatever it ends in. */
const SHORTEST_PROSE = 12;

/** A line short enough to be one of a list rather than running prose. */
function isPlainLine(stretch: Stretch): boolean {
  const first = stretch.tokens[0];
  const last = stretch.tokens.at(-1);
  if (first === undefined || last === undefined) return true;
  const { words } = stretch;
  const figures = stretch.measures.length + stretch.bare.length;
  const end = stretch.tokens.at(-1)?.fold;
  if (figures === 0 && words >= SHORTEST_PROSE && words > MOST_WORDS_A_PART * partsIn(stretch)) return false;
  if (figures === 0 && words >= (end === '?' ? SHORTEST_QUESTION : 6) && (end === '.' || end === '?' || end === '!'))
    return false;
  const sentences = stretch.breaks.filter(
    (strength, i) => strength === 2 && stretch.tokens[i - 1]?.fold === '.',
  ).length;
  if (sentences >= 2) return false;
  return last.end - first.start <= PLAIN || words <= MOST_WORDS_A_PART * partsIn(stretch);
}

/** A longer line is still a list where its commas and brackets part few words each. */
const MOST_WORDS_A_PART = 3;

function partsIn(stretch: Stretch): number {
  return 1 + stretch.tokens.filter((token) => token.type === 'sign' && ',;/+('.includes(token.fold)).length;
}

function hasFigure(stretch: Stretch, thing: Thing, next: Thing | undefined): boolean {
  const clause = clauseOf(stretch, thing.term);
  const to = next !== undefined && next.term.first < clause.to ? next.term.first : clause.to;
  const leads =
    thing.many &&
    clause.from === thing.term.first &&
    stretch.row.type === 'paragraph' &&
    (stretch.breaks[thing.term.last + 1] ?? 2) > 0;
  if (leads || isIntroduced(stretch, thing, clause.from)) return true;
  const counts = [
    ...stretch.bare.filter((number) => number.number.whole).map((number) => number.at),
    ...stretch.terms.filter((term) => term.role === 'number' && Number(term.value) > 1).map((term) => term.last),
  ];
  if (thing.many && counts.some((at) => at < thing.term.first && at >= thing.term.first - 3 && at >= clause.from))
    return true;
  return stretch.measures.some((measure) => {
    if (measure.unit.dimension === 'other' || measure.unit.dimension === 'temperature') return false;
    return (
      (measure.last < thing.term.first &&
        measure.last >= thing.term.first - 4 &&
        measure.first >= clause.from &&
        !termsOf(stretch, 'with').some((term) => term.first > measure.last && term.last < thing.term.first)) ||
      (measure.first > thing.term.last && measure.first < to && measure.first - thing.term.last <= 6)
    );
  });
}

/** "A twig burner with a fan. The fire chamber is 89 mm wide.": a paragraph opens with a thing and then measures it. */
function isIntroduced(stretch: Stretch, thing: Thing, from: number): boolean {
  if (stretch.row.type !== 'paragraph' || from !== 0 || thing.term.first > 2) return false;
  if (!termsOf(stretch, 'article').some((term) => term.first === 0)) return false;
  const other = stretch.terms.find((term) => term.role === 'kind' && term.first > thing.term.last);
  const until = other?.first ?? stretch.tokens.length;
  return termsOf(stretch, 'dimension').some((term) =>
    stretch.measures.some(
      (measure) =>
        measure.unit.dimension === 'length' && measure.last < until && Math.abs(measure.first - term.last) <= 4,
    ),
  );
}

/** On which side of their nouns a row has its figures. */
interface Style {
  /** A measure goes before the first noun. */
  readonly led: boolean;
  /** "mugs 2 bowls 3", or "2 mugs 3 bowls". */
  readonly counted: 'before' | 'after';
}

function styleOf(stretch: Stretch, mains: readonly Thing[]): Style {
  const first = mains[0]?.term.first ?? 0;
  const last = mains.at(-1)?.term.last ?? 0;
  return {
    led: stretch.measures.some((measure) => measure.last < first),
    counted: stretch.bare.some((number) => number.at === last + 1) ? 'after' : 'before',
  };
}

function startOf(
  stretch: Stretch,
  previous: Thing | undefined,
  thing: Thing,
  next: Thing | undefined,
  context: Context,
  { led, counted }: Style,
): number {
  const noun = thing.sorts[0]?.first ?? thing.term.first;
  if (previous === undefined) {
    const own = Math.max(afterSum(stretch, thing.term), afterOther(stretch, thing, next));
    if (own > 0) return own;
    const { from } = clauseOf(stretch, thing.term);
    const before = stretch.tokens[from - 1];
    const measured = stretch.measures.some((measure) => measure.first < from && measure.last >= from - 1);
    const told = stretch.row.cells.length === 1 && (measured ? namesOther(stretch, from) : before?.type === 'word');
    return isListed(stretch, context) && !told ? 0 : from;
  }
  const least = previous.term.last + 1;
  let at = noun;
  while (at > least && (stretch.breaks[at] ?? 0) === 0) at--;
  const before = stretch.measures.filter((measure) => measure.first >= at && measure.last < noun);
  const last = before.at(-1);
  const joined = stretch.breaks.slice(previous.term.last + 1, noun + 1).every((strength) => strength === 0);
  if (joined && !led) {
    const number = stretch.bare.findLast((one) => one.at > previous.term.last && one.at < noun);
    const own = number !== undefined && thing.many && counted === 'before' && countsNext(stretch, number.at, noun);
    return Math.max(at, (last?.last ?? -1) + 1, (number?.at ?? -1) + (own ? 0 : 1));
  }
  if (last === undefined) return at;
  const end = Math.min(
    next?.sorts[0]?.first ?? next?.term.first ?? stretch.tokens.length,
    clauseOf(stretch, thing.term).to,
  );
  const opens = opensPart(stretch, last.first);
  const again = stretch.measures.some(
    (measure) =>
      measure.first > thing.term.last &&
      measure.first < end &&
      !(opens && spanBreaks(stretch, thing.term.last + 1, measure.first)) &&
      measure.unit.dimension === last.unit.dimension &&
      measure.joined !== 'times',
  );
  const gap = (stretch.tokens[last.last + 1]?.gap ?? 1) === 2;
  return again || gap ? last.last + 1 : at;
}

/** "Kitchen weighs 312 g: stove 45 g, pot …": where the things begin after a section's own sum; 0 where there is none. */
function afterSum(stretch: Stretch, first: Term): number {
  const set = termsOf(stretch, 'kind').find((term) => term.last < first.first);
  const parts = set === undefined ? 0 : afterSet(stretch, set, first);
  if (parts > 0) return parts;
  const colon = stretch.tokens.findIndex((token) => token.fold === ':');
  if (colon < 0 || colon > first.first) return 0;
  const summed = stretch.measures.some((measure) => measure.last < colon && measure.unit.dimension === 'mass');
  const further = stretch.measures.some((measure) => measure.first > first.last);
  const section = termsOf(stretch, 'section').some((term) => term.last < colon);
  return summed && further && section ? colon + 1 : 0;
}

/**
 * "Tarp 400 g, stove", "Zelt 2 kg + Kocher 95 g": where the first thing begins after others that are none of ours. What has a name that is
 * known to be none, or a figure such as the first thing has one of its own, keeps its figures.
 */
function afterOther(stretch: Stretch, thing: Thing, next: Thing | undefined): number {
  const noun = thing.sorts[0]?.first ?? thing.term.first;
  let at = noun - 1;
  while (at > 0 && !isPartSign(stretch, at)) at--;
  if (at <= 0) return afterNeighbour(stretch, thing, noun, next);
  const other = stretch.terms.some((term) => NO_KIT.has(term.role) && term.first < at);
  if (other && stretch.measures.some((measure) => measure.last < at)) return at + 1;
  const until = next?.term.first ?? stretch.tokens.length;
  const again = stretch.measures.some(
    (measure) =>
      measure.first > at &&
      measure.first < until &&
      stretch.measures.some(
        (before) =>
          before.last < at && before.unit.dimension === measure.unit.dimension && isNamed(stretch, before.first),
      ),
  );
  return again ? at + 1 : 0;
}

/**
 * "Tente 1200 g Popote 1 L 160 g": two columns of a page on one line. What has a name and a mass of its own comes before the thing, which
 * has another; the gas in a can is less than the whole.
 */
function afterNeighbour(stretch: Stretch, thing: Thing, noun: number, next: Thing | undefined): number {
  const before = stretch.measures.findLast(({ unit, last }) => MASSES.has(unit.dimension) && last < noun);
  if (before === undefined) return 0;
  // Of ounces that a vessel holds the maker may stand before: only what is known to be none of ours keeps them.
  const known = isNoKit(stretch, before.first - 1);
  if (!known && (before.unit.dimension === 'ounce' || !isNamed(stretch, before.first))) return 0;
  const isMass = (measure: Measure) => measure.unit.dimension === before.unit.dimension;
  const until = next?.term.first ?? stretch.tokens.length;
  const own = stretch.measures.find(
    (measure) => isMass(measure) && measure.first > thing.term.last && measure.first < until,
  );
  if (own === undefined) return 0;
  const holds = thing.kind === 'fuel' && (before.values[0] ?? 0) <= (own.values[0] ?? 0);
  return holds ? 0 : before.last + 1;
}

const NO_KIT: ReadonlySet<Role> = new Set(['notKit', 'food', 'otherUse']);

function isPartSign(stretch: Stretch, at: number): boolean {
  const token = stretch.tokens[at];
  return token?.type === 'sign' && ',;+/'.includes(token.fold) && (stretch.breaks[at] ?? 0) > 0;
}

const MASSES: ReadonlySet<string> = new Set(['mass', 'ounce']);

/** A word that is known, and of nothing here: "tent", "torch". */
function isNoKit(stretch: Stretch, at: number): boolean {
  const terms = stretch.terms.filter((term) => term.first <= at && term.last >= at);
  return terms.some(({ role }) => OTHERS.has(role)) && !terms.some(({ role }) => NAMES.has(role));
}

const OTHERS: ReadonlySet<Role> = new Set([...NO_KIT, 'section', 'rated']);
const NAMES: ReadonlySet<Role> = new Set(['kind', 'container', 'fuelTypes', 'stoveTypes', 'materials']);

/** Right before a figure stands a word that is no other term: a name. */
function isNamed(stretch: Stretch, at: number): boolean {
  const token = stretch.tokens[at - 1];
  return (
    token?.type === 'word' &&
    token.fold.length > 2 &&
    !stretch.terms.some((term) => term.first <= at - 1 && term.last >= at - 1)
  );
}

/** "Stove 95 g Gas 230 g 2 mugs": a number right before a noun, that no "×" ties to what goes before it. */
function countsNext(stretch: Stretch, at: number, noun: number): boolean {
  const times = stretch.tokens[at - 1]?.fold;
  return at === noun - 1 && times !== 'x' && times !== '×';
}

/** ", 1 l bottle", "and a 1 l bottle": a figure that a comma or an "and" goes before is of what comes after it. */
function opensPart(stretch: Stretch, at: number): boolean {
  const article = termsOf(stretch, 'article').some((term) => term.last === at - 1);
  const before = article ? at - 2 : at - 1;
  return stretch.tokens[before]?.fold === ',' || termsOf(stretch, 'and').some((term) => term.last === before);
}

/** Whether what stands before a wide gap is another entry, with a name and a figure of its own. */
function namesOther(stretch: Stretch, until: number): boolean {
  return stretch.tokens.some((token, at) => {
    if (at >= until || token.type !== 'word' || token.fold.length < 3) return false;
    const figure = stretch.measures.some((measure) => measure.first <= at && measure.last >= at);
    return !figure && !stretch.terms.some((term) => term.role === 'pieces' && term.first === at);
  });
}

function endOf(stretch: Stretch, thing: Thing, context: Context): number {
  const end = isListed(stretch, context) ? stretch.tokens.length : clauseOf(stretch, thing.term).to;
  return stretch.tells(NO_KIT) ? Math.min(end, beforeOther(stretch, thing)) : end;
}

/** "Pot, tarp 400 g", "stove + 2 knives": where a part opens with what is none of ours. */
function beforeOther(stretch: Stretch, thing: Thing): number {
  for (const term of stretch.terms) {
    if (!NO_KIT.has(term.role) || term.first <= thing.term.last) continue;
    let at = term.first - 1;
    while (at > thing.term.last && isCount(stretch, at)) at--;
    if (at > thing.term.last && isPartSign(stretch, at)) return at;
  }
  return stretch.tokens.length;
}

function isCount(stretch: Stretch, at: number): boolean {
  return (
    stretch.bare.some((number) => number.at === at) ||
    stretch.terms.some(
      (term) => (term.role === 'number' || term.role === 'article' || term.role === 'pieces') && term.last === at,
    )
  );
}
