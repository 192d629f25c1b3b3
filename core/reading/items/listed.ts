import type { Context } from './context.js';
import { clauseOf, inParentheses } from './clauses.js';
import { isLabel } from './labels.js';
import { isSet } from './same.js';
import { isLedByPerson } from './quantity.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Role } from '../text/lexicon.js';
import type { Thing } from './things.js';

/** "Stove: a small gas stove", "Fuel: one 4 oz canister": the first word is a label. In running prose a thing needs a figure of its own. */
export function withoutLabels(stretch: Stretch, things: readonly Thing[], context: Context): Thing[] {
  const kept: Thing[] = [];
  for (const [i, thing] of things.entries()) {
    const next = things[i + 1];
    if (isLabel(stretch, thing, kept.length === 0, things.slice(i + 1))) continue;
    if (i > 0 && isRepeat(stretch, things.slice(0, i), thing)) continue;
    if (isInBrackets(stretch, things, i) || isDescribed(stretch, things[i - 1], thing)) continue;
    if (
      isListed(stretch, context) ||
      hasFigure(stretch, thing, next) ||
      isTaken(stretch, thing) ||
      goesOn(stretch, kept.at(-1), thing)
    )
      kept.push(thing);
  }
  return kept;
}

/** Tokens from the verb to the first thing it takes along. */
const REACH = 6;

/** "I take a gas stove", "bierzemy kuchenkę", "hatten wir zwei Töpfe mit": a sentence that says who takes it along. "Take the pot off" speaks of one that is known. */
function isTaken(stretch: Stretch, thing: Thing): boolean {
  const { from } = clauseOf(stretch, thing.term);
  const first = thing.sorts[0]?.first ?? thing.term.first;
  const verb = termsOf(stretch, 'carries').findLast((term) => term.first >= from && term.last < first);
  if (verb === undefined || first - verb.last > REACH || thing.denied) return false;
  const between = (role: Role) =>
    stretch.terms.some((term) => term.role === role && term.first > verb.last && term.last < first);
  return !isKnown(stretch, first) && !between('kind') && !between('asides') && !between('no');
}

/** After "the" or "this". */
function isKnown(stretch: Stretch, at: number): boolean {
  const opens = (role: Role) =>
    termsOf(stretch, role).some((term) => term.last < at && at - term.last <= MOST_ADJECTIVES);
  return opens('determiners') && !opens('article');
}

/** "a 1.3 l pot, a small gas stove and a mug": a sentence that lists goes on to the next thing, which its comma or its "and" leads. */
function goesOn(stretch: Stretch, previous: Thing | undefined, thing: Thing): boolean {
  if (previous === undefined || previous.term.first < clauseOf(stretch, thing.term).from) return false;
  const first = thing.sorts[0]?.first ?? thing.term.first;
  let at = first - 1;
  while (at > previous.term.last && first - at <= MOST_ADJECTIVES + 1 && (stretch.breaks[at + 1] ?? 0) === 0) at--;
  const mark = stretch.tokens[at];
  const joined =
    [',', '+', '&'].includes(mark?.fold ?? '') ||
    termsOf(stretch, 'and').some((and) => and.first <= at + 1 && and.last >= at);
  return (
    at > previous.term.last - 1 && joined && !isKnown(stretch, first) && first - previous.term.last <= LONGEST_STEP
  );
}

/** Tokens from one thing of a sentence to the next that it lists. */
const LONGEST_STEP = 10;

/** "Spare stove (Zorvik stove)", "bottles (1 L soft bottles)": in a bracket one thing more of the same kind only tells of the one before it. */
function isInBrackets(stretch: Stretch, things: readonly Thing[], at: number): boolean {
  const thing = things[at];
  if (thing === undefined || thing.kind === 'fuel') return false;
  const inside = (other: Thing, owner: Thing) => inParentheses(stretch, owner.term.last, other.term.first);
  const owner = things
    .slice(0, at)
    .findLast((other) => other.kind === thing.kind && other.term.first >= clauseOf(stretch, thing.term).from);
  if (owner === undefined || !inside(thing, owner) || isSet(stretch, owner.term)) return false;
  const like = things.filter((other) => other.kind === thing.kind && other.term.first > owner.term.last);
  return like.filter((other) => inside(other, owner)).length === 1;
}

/** "Zorvik mug <sub>steel mug</sub>": what a tag sets apart tells of the thing named before it. */
function isDescribed(stretch: Stretch, before: Thing | undefined, thing: Thing): boolean {
  return before?.kind === thing.kind && stretch.row.bullet && isInTag(stretch, thing.term.first, before.term.last);
}

/** Whether a tag opens between a token and one after it. */
export function isInTag({ text, tokens }: Stretch, at: number, after: number): boolean {
  const from = tokens[Math.max(0, after)]?.end ?? 0;
  const between = text.slice(from, Math.min(tokens[at]?.start ?? from, from + LONGEST_GAP));
  return /<su[bp]|<small/i.test(between);
}

/** Characters in which such a tag is looked for. */
const LONGEST_GAP = 200;

/** Words between an article and its noun. */
export const MOST_ADJECTIVES = 3;

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
export function isListed(stretch: Stretch, context: Context): boolean {
  if (context.prose) return isEnumeration(stretch) || isLedByPerson(stretch);
  const headed = context.kind !== undefined && context.kinds !== true;
  return (
    context.bulleted ||
    headed ||
    (context.plainLists && isPlainLine(stretch)) ||
    isEnumeration(stretch) ||
    isLedByPerson(stretch)
  );
}

/** Commas in a line that only enumerates: "burner, pots, water filter, sponge, pan, cutlery". */
const LEAST_COMMAS = 4;

/** A line whose commas part few words each, and that is no sentence. */
function isEnumeration(stretch: Stretch): boolean {
  const { tokens, words } = stretch;
  const commas = tokens.filter(({ fold }) => fold === ',' || fold === ';' || fold === '、').length;
  if (commas < LEAST_COMMAS || words > MOST_WORDS_A_PART * (commas + 1)) return false;
  return !stretch.breaks.some((strength, at) => strength === 2 && tokens[at - 1]?.fold === '.');
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
