import { MISSING, type Given } from '../../model/given.js';
import { near, spanOf, stated } from '../items/draft.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { followed, numbersIn, type Count } from './told.js';

/** Words that speak of each part of a party: "per pair", "each cook group (6)", "between three". */
export interface Mention {
  readonly first: number;
  readonly last: number;
  /** How many are in one; missing where the text leaves it open. */
  readonly people: Given<number>;
  /** "Per 4": each group has its own; "pour 4" may as well count everybody. */
  readonly clear: boolean;
}

/** Without one of these words a row tells nothing of groups. */
const TELLING: ReadonlySet<Role> = new Set(['eachGroup', 'perGroup', 'cookGroup']);

/** A number of days or nights shares nothing out: "for two weeks". */
const TIMES: ReadonlySet<Role> = new Set(['day', 'week', 'night']);

/** People in one group: of fewer than the first it is none, of as many as the second a camp. */
const SIZES: readonly [least: number, under: number] = [2, 40];

/** Groups of a party: under so many. */
const MOST_GROUPS = 60;

/** Words between the groups and how many are in each: "zu je". */
const MOST_BETWEEN = 2;
const LONGEST_BETWEEN = 5;

/** Where a row speaks of each group, and how many are in one. */
export function mentionsOf(stretch: Stretch): Mention[] {
  if (!stretch.tells(TELLING)) return [];
  const named = termsOf(stretch, 'eachGroup').map(({ first, last, value }): Mention => {
    const size = Number(value) > 0 ? { value: Number(value), last } : sizeAfter(stretch, last);
    const end = size?.last ?? last;
    const people = size === undefined ? MISSING : stated(size.value, spanOf(stretch, first, end));
    return { first, last: end, people, clear: true };
  });
  const counted = termsOf(stretch, 'perGroup').flatMap(({ first, last }): Mention[] => {
    const size = sharedBy(stretch, { first, last });
    if (size === undefined || named.some((each) => each.first <= first && each.last >= first)) return [];
    const clear = !termsOf(stretch, 'peopleBefore').some((term) => term.first === first && term.last === last);
    return [{ first, last: size.last, people: stated(size.value, spanOf(stretch, first, size.last)), clear }];
  });
  return [...named, ...counted].sort((a, b) => a.first - b.first);
}

/** "Per pair: pot, stove", "Each cook group carries a pot": what opens a sentence holds for all that it names; "one pot per pair" for the pot. */
export function groupOf(stretch: Stretch, noun: readonly [number, number], to: number): Given<number> | undefined {
  const at = Math.max(noun[0], 0);
  const mention = mentionsOf(stretch).findLast(({ first, last, clear }) => {
    if (!clear) return false;
    if (first > noun[1]) return last < to;
    if (last >= at || (first > 0 && stretch.breaks[first] !== 2)) return false;
    for (let i = last + 1; i <= at; i++) if ((stretch.breaks[i] ?? 0) === 2) return false;
    return true;
  });
  return mention?.people;
}

/** "2 cook groups of 4", "in 5 pairs": how many groups there are, and how many are in each. */
export function groupsIn(
  stretch: Stretch,
): { readonly count: Given<number>; readonly people: Given<number> } | undefined {
  for (const number of numbersIn(stretch)) {
    if (number.value < 2 || number.value >= MOST_GROUPS) continue;
    const group = followed(stretch, number, 'cookGroup');
    if (group === undefined) continue;
    const size = sizeAfter(stretch, group.last);
    // "5 pairs of socks": pairs are of people only where somebody goes in them.
    const inPairs = termsOf(stretch, 'asides').some((term) => term.last === number.first - 1);
    if (Number(group.value) > 0 && (!inPairs || !endsThere(stretch, group.last + 1))) continue;
    const span = spanOf(stretch, number.first, size?.last ?? group.last);
    const people = Number(group.value) || size?.value;
    return { count: stated(number.value, span), people: people === undefined ? MISSING : stated(people, span) };
  }
  return undefined;
}

function endsThere(stretch: Stretch, at: number): boolean {
  const next = stretch.tokens[at];
  return next === undefined || next.type === 'sign' || next.gap === 2;
}

/** "Per patrol (6)", "cook groups of 4", "Kochgruppen zu je 4". */
function sizeAfter(stretch: Stretch, last: number): Count | undefined {
  let at = last + 1;
  if (stretch.tokens[at]?.fold === '(') at++;
  else
    for (let words = 0; words < MOST_BETWEEN; words++) {
      const token = stretch.tokens[at];
      const counts = termsOf(stretch, 'number').some(({ first }) => first === at);
      if (token?.type !== 'word' || counts || token.fold.length > LONGEST_BETWEEN || token.gap === 2) break;
      at++;
    }
  if (at === last + 1) return undefined;
  const number = numbersIn(stretch).find(({ first }) => first === at);
  return number !== undefined && isSize(stretch, number) ? number : undefined;
}

/** "One set per four", "1 pot between three"; "Teller, Becher je 3" are so many of each. */
function sharedBy(stretch: Stretch, term: Pick<Term, 'first' | 'last'>): Count | undefined {
  if (termsOf(stretch, 'each').some(({ first }) => first === term.first)) return undefined;
  const number = numbersIn(stretch).find(({ first }) => first === term.last + 1);
  if (number === undefined || !isSize(stretch, number)) return undefined;
  const people = followed(stretch, number, 'people');
  return people === undefined ? number : { ...number, last: people.last };
}

function isSize(stretch: Stretch, number: Count): boolean {
  return (
    number.value >= SIZES[0] &&
    number.value < SIZES[1] &&
    !stretch.terms.some((term) => term.first === number.last + 1 && TIMES.has(term.role)) &&
    near(stretch, 'unit', number.last, number.last, 0) === undefined &&
    !stretch.measures.some(({ first }) => first === number.first)
  );
}
