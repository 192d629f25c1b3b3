import { phrase } from '../../model/phrase.js';
import type { Context } from './context.js';
import { draftOf, spanOf, stated, type Draft } from './draft.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';

/** mL between which a metal thing of an unknown name is taken for a pot. */
const POT_SIZES: readonly [number, number] = [300, 12_000];
const POT_METALS = ['titanium', 'aluminium', 'steel', 'enamel'];
/** More words than this are a sentence, not a name. */
const LONGEST_NAME = 6;

/** "1.3 L / 0.9 L set", "Titanyum Tencere 1 L": pots that no known word names. A guess, and told as one. */
export function unnamedPot(stretch: Stretch, context: Context): Draft | undefined {
  const { tokens, terms, row } = stretch;
  if (context.section !== undefined && context.section !== 'cook') return undefined;
  if (
    row.type === 'heading' ||
    terms.some(
      (term) =>
        term.role === 'notKit' ||
        (term.role === 'kind' && term.value !== 'lid') ||
        term.role === 'container' ||
        term.role === 'otherUse' ||
        term.role === 'food' ||
        term.role === 'water',
    )
  )
    return undefined;
  if (stretch.words > LONGEST_NAME) return undefined;
  const volumes = stretch.measures.filter(
    (measure) =>
      measure.unit.dimension === 'volume' &&
      measure.unit.id !== 'cup' &&
      measure.values.every((value) => value >= POT_SIZES[0] && value <= POT_SIZES[1]),
  );
  const vessels = volumes.reduce((n, measure) => n + (measure.joined === 'range' ? 1 : measure.values.length), 0);
  if (vessels === 0) return undefined;
  const set = termsOf(stretch, 'set')[0];
  const metal = termsOf(stretch, 'materials').find((term) => POT_METALS.includes(String(term.value)));
  const lid = stretch.terms.find(
    (term) => term.role === 'kind' && term.value === 'lid' && term.first > (volumes[0]?.last ?? 0),
  );
  if (!(set !== undefined && vessels > 1) && metal === undefined && lid === undefined) return undefined;
  const name = set ?? { first: 0, last: Math.max(0, (volumes[0]?.first ?? 1) - 1) };
  const draft = draftOf('pot', row.line, spanOf(stretch, name.first, name.last), undefined, 0, tokens.length, [-1, -1]);
  if (lid !== undefined) draft.lid = stated(true, spanOf(stretch, lid.first, lid.last));
  draft.kindBecause = because(set !== undefined, metal !== undefined);
  return draft;
}

/** "Draskel Heron, with hose" under "Gas": there only a stove is said to have a hose or to screw onto a can. A guess. */
export function unnamedStove(stretch: Stretch, context: Context): Draft | undefined {
  if (context.stoveType === undefined && context.section !== 'fuel') return undefined;
  if (stretch.tells(NAMING)) return undefined;
  const form = termsOf(stretch, 'stoveForms').find((term) => tells(stretch, term));
  if (form === undefined || form.first < 1) return undefined;
  const words = stretch.tokens.filter((token) => token.type === 'word').length;
  if (words > LONGEST_NAME || stretch.row.type === 'heading') return undefined;
  const last = Math.max(0, stretch.breaks.findIndex((strength, at) => at > 0 && strength > 0) - 1);
  const draft = draftOf(
    'stove',
    stretch.row.line,
    spanOf(stretch, 0, last),
    undefined,
    0,
    stretch.tokens.length,
    [-1, -1],
  );
  draft.kindBecause = phrase`a thing with a hose, or that screws onto a can, is taken for a stove`;
  return draft;
}

const NAMING: ReadonlySet<Role> = new Set(['notKit', 'kind', 'container', 'otherUse', 'food', 'water']);

/** "with hose": a phrase, or a word after "with"; "spider" or "top" alone tells nothing. */
function tells(stretch: Stretch, form: Term): boolean {
  return form.last > form.first || termsOf(stretch, 'with').some((term) => term.last === form.first - 1);
}

function because(set: boolean, metal: boolean): string {
  if (set) return phrase`a set of these sizes is taken for pots`;
  return metal
    ? phrase`a metal thing of this size is taken for a pot`
    : phrase`a thing of this size with a lid is taken for a pot`;
}
