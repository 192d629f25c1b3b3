import { phrase } from '../../model/phrase.js';
import type { AwayReason } from '../../data/words/words.js';
import type { Context } from './context.js';
import { assumed, type Draft } from './draft.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Term } from '../text/terms.js';
import { isInTag } from './listed.js';
import { clauseOf, segmentOf, type Clause } from './clauses.js';

export const AWAY: Readonly<Record<AwayReason, string>> = {
  left: phrase`it is said to stay behind`,
  wished: phrase`it is wished for, not owned`,
  replaced: phrase`it is said to be replaced or gone`,
  forbidden: phrase`it is said to be forbidden`,
  unneeded: phrase`it is said not to be needed`,
  compared: phrase`it is only compared with`,
};

interface Place {
  readonly first: number;
  readonly last: number;
}

/** Whether a thing that is named is in the kit. */
export function readCarried(stretch: Stretch, draft: Draft, context: Context): void {
  const because = reason(stretch, draft, context);
  if (because === undefined) return;
  draft.carried = false;
  draft.notCarriedBecause = because;
}

function reason(stretch: Stretch, draft: Draft, context: Context): string | undefined {
  if (stretch.struck[draft.noun[0]] === true || isOfStruck(stretch, draft)) return phrase`struck through`;
  if (draft.quantity.grounds === 'stated' && draft.quantity.value === 0) return phrase`its count is nought`;
  if (draft.thing?.denied === true) return phrase`the line says there is none`;
  if (context.away !== undefined) return context.away;
  const place = { first: Math.max(0, draft.noun[0]), last: Math.max(0, draft.noun[1]) };
  const clause = clauseOf(stretch, place);
  const whole = stretch.row.bullet;
  const part = (word: Place) => {
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
  const term = nearest(termsOf(stretch, 'away'), place)
    .filter((word) => !part(word))
    .find(
      (word) =>
        (word.first >= clause.from &&
          word.last < clause.to &&
          (draft.noun[0] < 0 || isSaidOf(stretch, word, place, clause))) ||
        (whole &&
          !otherThing(word.first) &&
          stretch.cellOf[word.first] === stretch.cellOf[place.first] &&
          word.first >= clause.to) ||
        (whole && stretch.cellOf[word.first] !== stretch.cellOf[place.first]),
    );
  if (term === undefined || isOfSome(stretch, draft, term)) return undefined;
  return AWAY[term.value as AwayReason];
}

/** "~~Zorvik Gnat~~ <sub>gas stove</sub>": the name is struck, and what a tag adds tells of it. */
function isOfStruck(stretch: Stretch, { noun: [first] }: Draft): boolean {
  return (
    first > 0 &&
    stretch.struck[0] === true &&
    stretch.struck[first] === false &&
    isInTag(stretch, first, stretch.struck.lastIndexOf(true, first))
  );
}

/** So many on either side of a thing can be said of it; on an endless line the others are of other things. */
const MOST_NEAR = 4;

function nearest<T extends Place>(words: readonly T[], place: Place): T[] {
  const before = words.filter((word) => word.first <= place.first);
  return [...before.slice(-MOST_NEAR), ...words.slice(before.length, before.length + MOST_NEAR)];
}

/**
 * Of the things of one sentence, those that a word of whereabouts is said of: the ones in its own part between commas ("stove, pan left
 * at home"); else the one before its bracket or comma; else, at an end of the sentence, all.
 */
function isSaidOf(stretch: Stretch, word: Term, place: Place, clause: Clause): boolean {
  const nouns = stretch.terms.filter(
    (term) =>
      (term.role === 'kind' || term.role === 'container' || term.role === 'fuelTypes') &&
      term.first >= clause.from &&
      term.last < clause.to,
  );
  const part = partOf(stretch, word, clause);
  const own = nouns.filter((noun) => noun.first >= part.from && noun.last < part.to);
  const next = own.find((noun) => noun.first > word.last);
  if (next !== undefined && isSaidOfNext(stretch, word, next)) return place.first === next.first;
  if (own.length > 0) {
    const before = own.filter((noun) => noun.last < word.first);
    if (before.length === 0) return place.first >= part.from && place.first < part.to;
    if (place.first > word.last) return false;
    return place.first >= part.from || isListBefore(stretch, before, word);
  }
  const sign = stretch.tokens[part.from - 1]?.fold ?? '';
  if (sign === '(' || (sign !== ':' && nouns.some((noun) => noun.first > word.last))) {
    const last = nouns.findLast((noun) => noun.last < word.first);
    return last === undefined || (place.first <= last.first && place.first >= partOf(stretch, last, clause).from);
  }
  return true;
}

/** "mug instead of the pot": what stands right after such a word is what is gone. */
function isSaidOfNext(stretch: Stretch, word: Term, next: Term): boolean {
  if (word.value !== 'replaced' && word.value !== 'compared') return false;
  const article = [...termsOf(stretch, 'article'), ...termsOf(stretch, 'determiners')].some(
    (term) => term.first === word.last + 1 && term.last === next.first - 1,
  );
  return next.first === word.last + 1 || article;
}

/** The signs that part a list of things; "and" and the like hold it together. */
const COMMAS = ',.;:()[]•|–';

/** What stands with a word between commas, brackets or colons. */
function partOf(stretch: Stretch, word: Place, clause: Clause): Clause {
  const parts = (at: number) => COMMAS.includes(stretch.tokens[at]?.fold || ' ');
  let { first: from, last: to } = word;
  while (from > clause.from && !parts(from - 1)) from--;
  while (to + 1 < clause.to && !parts(to + 1)) to++;
  return { from, to: to + 1 };
}

/** "mug, bowl and pan left at home": an "and" among them makes one list of what commas part. */
function isListBefore(stretch: Stretch, own: readonly Place[], word: Place): boolean {
  return termsOf(stretch, 'and').some((and) => and.first > (own[0]?.last ?? 0) && and.last < word.first);
}

/** "2 mugs, one left at home": only some of them; the rest come along. */
function isOfSome(stretch: Stretch, draft: Draft, word: Place): boolean {
  if (draft.quantity.grounds !== 'stated') return false;
  const count = [
    ...stretch.bare.filter((number) => number.number.whole).map(({ at, value }) => ({ at, value })),
    ...termsOf(stretch, 'number').map((term) => ({ at: term.last, value: Number(term.value) })),
  ].find(({ at }) => at > draft.noun[1] && at < word.first && word.first - at <= MOST_BETWEEN);
  const all = draft.quantity.value;
  if (count === undefined || draft.taken.has(count.at) || count.value < 1 || count.value >= all) return false;
  draft.quantity = assumed(all - count.value, phrase`of these some are said to stay behind`, phrase`write how many`);
  return true;
}

/** Words between a count and what is said of it: "one (stays at home)", "one is (left at home)". */
const MOST_BETWEEN = 2;
