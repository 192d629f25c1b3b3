import type { ItemKind } from '../../model/item.js';
import type { Term } from '../text/terms.js';
import { inParentheses, segmentOf, spanBreaks } from './clauses.js';
import type { Stretch } from './stretch.js';
import type { Thing } from './things.js';

/** Two names for one thing: "lid / fry pan", "fuel, 8 oz can", "cup, the cup is steel", "stove, 2 burner". */
export function mergesWith(stretch: Stretch, owner: Thing, term: Term, kind: ItemKind): 'drop' | 'replace' | false {
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
  if (between === 1 && stretch.tokens[term.first - 1]?.fold === '/' && isEither(owner.kind, kind)) return 'drop';
  if (owner.kind === 'fuel' && kind === 'stove' && !spanBreaks(stretch, owner.term.last + 1, term.first))
    return 'replace';
  if (
    owner.kind === 'pot' &&
    kind === 'pot' &&
    (term.many === true || stretch.tokens[owner.term.last + 1]?.fold === '(') &&
    isSet(stretch, owner.term) &&
    !isSet(stretch, term)
  )
    return 'replace';
  if (owner.kind === 'fuel' && kind === 'fuel' && saysWhatIsInIt(stretch, term)) return 'drop';
  if (owner.kind !== kind || figures) return false;
  if (kind === 'fuel' && between <= 5) {
    const figured = stretch.measures.some(
      (measure) => measure.last === term.first - 1 && measure.first > owner.term.last,
    );
    const measured = stretch.measures.some((measure) => measure.first > owner.term.last && measure.last < term.first);
    // "propane 5 kg, butane 3 kg": each has a figure of its own.
    if (measured && !figured && stretch.measures.some((measure) => measure.first === term.last + 1)) return false;
    return figured || (owner.term.role === 'kind' && !measured) ? 'replace' : 'drop';
  }
  if (areFlames(stretch, owner, term, kind)) return 'drop';
  return stretch.tokens[term.first - 1]?.fold === 'the' && !owner.many ? 'drop' : false;
}

/** Kinds of which one thing may be either: "cup/bowl", "water bottle/bladder", "mug/pot". */
const EITHER: readonly (readonly ItemKind[])[] = [
  ['mug', 'bowl', 'pot'],
  ['bottle', 'bladder'],
];

function isEither(a: ItemKind, b: ItemKind): boolean {
  return a !== b && EITHER.some((kinds) => kinds.includes(a) && kinds.includes(b));
}

/** "canister 230 g, half full, isobutane": a gas with no figure of its own. */
function saysWhatIsInIt(stretch: Stretch, term: Term): boolean {
  const { from, to } = segmentOf(stretch, term);
  return (
    stretch.terms.some(({ role, first, last }) => role === 'gasMixes' && first >= term.first && last <= term.last) &&
    !stretch.measures.some((measure) => measure.first >= from && measure.last < to) &&
    !stretch.bare.some(({ at }) => at >= from && at < to)
  );
}

/** "Stove, 2 burners", "gas stove (double burner)": the flames of the stove named before. */
export function areFlames(stretch: Stretch, owner: Thing, term: Term, kind: ItemKind): boolean {
  const at = term.first - 1;
  if (kind !== 'stove' || owner.kind !== 'stove' || owner.many) return false;
  return (
    stretch.bare.some((number) => number.at === at && number.value > 1) ||
    stretch.terms.some(
      (term) => term.last === at && (term.role === 'pair' || (term.role === 'number' && Number(term.value) > 1)),
    )
  );
}

/** Foil beside a windscreen or a lid says what it is made of. */
function isFoil(stretch: Stretch, noun: Term): boolean {
  return stretch.terms.some((term) => term.role === 'roles' && term.value === 'foil' && term.first === noun.first);
}

/** Whether a noun is of a set as a whole: cook set, storm set. */
export function isSet(stretch: Stretch, noun: Term): boolean {
  return stretch.terms.some((term) => term.role === 'set' && term.first >= noun.first && term.last <= noun.last);
}

/** "Stove (gas)", "Stove, liquid fuel": the fuel only says what the stove burns. */
export function isSortOfStove(stretch: Stretch, thing: Thing, things: readonly Thing[]): boolean {
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
    (things.filter((other) => !inParentheses(stretch, stove.term.last, other.term.first)).length === 2 &&
      stretch.terms.some(
        (term) => term.role === 'stoveTypes' && term.first <= thing.term.first && term.last >= thing.term.first,
      ))
  );
}
