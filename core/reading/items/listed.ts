import type { Context } from './context.js';
import { clauseOf, spanBreaks } from './clauses.js';
import { isLabel } from './labels.js';
import { isLedByPerson } from './quantity.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Thing } from './things.js';

/** "Stove: a small gas stove", "Fuel: one 4 oz canister": the first word is a label. In running prose a thing needs a figure of its own. */
export function withoutLabels(stretch: Stretch, things: readonly Thing[], context: Context): Thing[] {
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
