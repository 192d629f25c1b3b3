import { phrase } from '../../model/phrase.js';
import type { AwayReason } from '../../data/words/words.js';
import type { Context } from './context.js';
import type { Draft } from './draft.js';
import { termsOf, type Stretch } from './stretch.js';
import { clauseOf, segmentOf } from './clauses.js';

export const AWAY: Readonly<Record<AwayReason, string>> = {
  left: phrase`it is said to stay behind`,
  wished: phrase`it is wished for, not owned`,
  replaced: phrase`it is said to be replaced or gone`,
  forbidden: phrase`it is said to be forbidden`,
  unneeded: phrase`it is said not to be needed`,
  compared: phrase`it is only compared with`,
};

/** Whether a thing that is named is in the kit. */
export function readCarried(stretch: Stretch, draft: Draft, context: Context): void {
  const because = reason(stretch, draft, context);
  if (because === undefined) return;
  draft.carried = false;
  draft.notCarriedBecause = because;
}

function reason(stretch: Stretch, draft: Draft, context: Context): string | undefined {
  if (stretch.struck[draft.noun[0]] === true) return phrase`struck through`;
  if (draft.quantity.grounds === 'stated' && draft.quantity.value === 0) return phrase`its count is nought`;
  if (draft.thing?.denied === true) return phrase`the line says there is none`;
  if (context.away !== undefined) return context.away;
  const place = { first: Math.max(0, draft.noun[0]), last: Math.max(0, draft.noun[1]) };
  const clause = clauseOf(stretch, place);
  const whole = stretch.row.bullet;
  const part = (word: { first: number; last: number }) => {
    const segment = segmentOf(stretch, word);
    return stretch.terms.some(
      (term) =>
        (term.role === 'bail' || term.role === 'handles' || (term.role === 'kind' && term.value === 'lid')) &&
        term.last < word.first &&
        term.first >= segment.from &&
        term.first > place.last,
    );
  };
  const otherThing = (until: number) =>
    stretch.terms.some((term) => term.role === 'kind' && term.first > place.last && term.last < until);
  const term = termsOf(stretch, 'away')
    .filter((word) => !part(word))
    .find(
      (word) =>
        (word.first >= clause.from && word.last < clause.to) ||
        (whole &&
          !otherThing(word.first) &&
          stretch.cellOf[word.first] === stretch.cellOf[place.first] &&
          word.first >= clause.to) ||
        (whole && stretch.cellOf[word.first] !== stretch.cellOf[place.first]),
    );
  return term === undefined ? undefined : AWAY[term.value as AwayReason];
}
