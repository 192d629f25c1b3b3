import type { Term } from '../text/terms.js';
import { clauseOf } from './clauses.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Thing } from './things.js';

/** "Stove: a small gas stove", "Stove – a gas burner, 45 g": a word that only says of what sort the next things are. `others` come after it. */
export function isLabel(stretch: Stretch, thing: Thing, first: boolean, others: readonly Thing[]): boolean {
  const [next] = others;
  const isOf = (other: Thing) => other.kind === thing.kind && inSentence(stretch, thing.term, other.term);
  const named = isLabelMark(stretch, thing.term.last + 1) && next !== undefined && isOf(next);
  if (next?.kind === thing.kind && afterSet(stretch, thing.term, next.term) > 0) return true;
  if (named || (opensLabel(stretch, thing.term) && others.some(isOf))) return true;
  return first && next?.kind === thing.kind && !thing.many && !next.many && isParted(stretch, thing.term, next.term);
}

/** ":", or an arrow: "pot -> two cup pot". */
function isLabelMark({ tokens }: Stretch, at: number): boolean {
  const fold = tokens[at]?.fold;
  return fold === ':' || fold === '→' || ((fold === '-' || fold === '=') && tokens[at + 1]?.fold === '>');
}

/** "cook set 620 g (pot 310 g, pan 210 g)", "set 620 g: pot 1.5 L, …": where the parts begin of a set that is weighed as a whole; 0 where it is none. */
export function afterSet(stretch: Stretch, set: Term, part: Term): number {
  if (!termsOf(stretch, 'set').some((word) => word.first >= set.first && word.last <= set.last)) return 0;
  const mass = stretch.measures.find(({ unit, first }) => unit.dimension === 'mass' && first === set.last + 1);
  const sign = (mass?.last ?? 0) + 1;
  const opens = stretch.tokens[sign]?.fold === '(' || stretch.tokens[sign]?.fold === ':';
  return mass !== undefined && opens && part.first > sign && part.first - sign <= 3 ? sign + 1 : 0;
}

/** "Gas: …", "Camp stoves for 10 people: …": the first words of a row, up to its colon, give no size. */
function opensLabel(stretch: Stretch, term: Term): boolean {
  const colon = stretch.tokens.findIndex((token) => token.fold === ':');
  return (
    term.first === 0 &&
    colon > 0 &&
    colon <= LONGEST_LABEL &&
    !stretch.measures.some((measure) => measure.first < colon)
  );
}

/** Tokens of a label. */
const LONGEST_LABEL = 6;

/** A free dash, or the edge of the cell of what is said of a thing, parts it from what tells more of it. */
function isParted(stretch: Stretch, term: Term, next: Term): boolean {
  const sign = stretch.tokens[term.last + 1];
  if (sign?.type === 'sign' && '–—-'.includes(sign.fold))
    return sign.gap > 0 && (stretch.tokens[term.last + 2]?.gap ?? 0) > 0 && inSentence(stretch, term, next);
  const own = stretch.cellOf[term.last];
  const other = stretch.cellOf[next.first];
  const cell = other === own || other === undefined ? undefined : stretch.row.cells[other];
  const told =
    stretch.row.cells[own ?? 0]?.column?.meaning === 'item' && cell !== undefined && cell.column === undefined;
  return told || cell?.column?.meaning === 'notes';
}

/** In one sentence, or in the one after the colon of the first, which may be set in bold. */
function inSentence(stretch: Stretch, a: Term, b: Term): boolean {
  const { from } = clauseOf(stretch, b);
  return from <= a.first || (from === a.last + 2 && stretch.tokens[a.last + 1]?.fold === ':');
}
