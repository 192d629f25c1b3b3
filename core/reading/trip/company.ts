import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { assumed, spanOf, stated } from '../items/draft.js';
import { followed, numbersIn, rangeBefore, type Count } from './told.js';

/** Somebody who goes along, or several. */
interface Member extends Count {
  /** Who writes; who goes with them ("my dad", "two mates"); people who are counted ("2 adults"). */
  readonly sort: 'self' | 'companion' | 'counted' | 'name';
  /** The word that counts, so that nobody is counted twice. */
  readonly word: string;
  /** "People": whoever they are. */
  readonly anyone: boolean;
  readonly range: boolean;
}

/** People who are named in one breath: "me, my wife and two kids", "2 adults + 3 children", "with two mates". */
export interface Company {
  readonly members: readonly Member[];
  /** Behind "with", and without who writes. */
  readonly along: boolean;
}

const PEOPLE: ReadonlySet<Role> = new Set(['self', 'companion', 'people']);

export function companiesIn(stretch: Stretch): Company[] {
  if (!stretch.tells(PEOPLE)) return [];
  const companies: Member[][] = [];
  for (const member of membersIn(stretch)) {
    const company = companies.at(-1);
    const last = company?.at(-1);
    if (company !== undefined && last !== undefined && isJoined(stretch, last, member) && isOther(company, member))
      company.push(member);
    else companies.push([member]);
  }
  return companies.map((members) => ({ members, along: isAlong(stretch, members) }));
}

/** How many a company is. Who goes along with somebody makes one more of them. */
export function sizeOf(stretch: Stretch, { members, along }: Company): Given<number> | undefined {
  const first = members[0];
  const last = members.at(-1);
  if (first === undefined || last === undefined) return undefined;
  const named = members.some(({ sort }) => sort === 'name');
  // "Ideally, I would": a comma alone joins nobody.
  if (named && !stretch.tokens.some((_token, at) => at > first.last && at < last.first && joins(stretch, at)))
    return undefined;
  const people = totalOf(members);
  const span = spanOf(stretch, first.first, last.last);
  if (along)
    return assumed(people + 1, phrase`who writes goes along, and is one more`, phrase`write how many they are`, span);
  if (named) return assumed(people, phrase`names are taken for people`, phrase`write how many they are`, span);
  return members.some(({ range }) => range)
    ? assumed(people, phrase`of a range the upper end is taken`, phrase`write one number`, span)
    : stated(people, span);
}

/** The people that a number counts; "adults: 2 children: 3" says them before it. */
export function peopleAfter(stretch: Stretch, number: Count): Term | undefined {
  const word = followed(stretch, number, 'people');
  return word !== undefined &&
    stretch.tokens[word.last + 1]?.fold === ':' &&
    stretch.tokens[number.first - 1]?.fold === ':'
    ? undefined
    : word;
}

/** The sum; of "4 people, 2 adults and 2 kids" the first is the sum of the others. */
export function totalOf([first, ...others]: readonly Pick<Member, 'value' | 'anyone'>[]): number {
  if (first === undefined) return 0;
  const rest = others.reduce((sum, { value }) => sum + value, 0);
  return first.anyone && first.value === rest ? first.value : first.value + rest;
}

function membersIn(stretch: Stretch): Member[] {
  const numbers = numbersIn(stretch);
  // "I" is "and" in other languages.
  const selves = termsOf(stretch, 'self')
    .filter(({ first }) => !termsOf(stretch, 'and').some((term) => term.first === first))
    .map(({ first, last }): Member => ({ sort: 'self', value: 1, first, last, word: '', anyone: false, range: false }));
  const named = termsOf(stretch, 'companion').filter(({ first }, i, all) => all[i - 1]?.first !== first);
  const companions = named.flatMap(({ first, last, many }): Member[] => {
    const number = numbers.find((one) => one.last === first - 1 && stretch.tokens[first]?.gap !== 2);
    const word = stretch.tokens[first]?.fold ?? '';
    // "Mit 4 Mann": a word for one that counts several counts people, and says nothing of who writes.
    if (number !== undefined)
      return [memberOf(stretch, many === true || number.value === 1 ? 'companion' : 'counted', number, last, word)];
    // "My dad's pot": the pot goes, not the dad.
    if (many === true || stretch.terms.some((term) => term.role === 'kind' && term.first === last + 1)) return [];
    return [{ sort: 'companion', value: 1, first: withOwner(stretch, first), last, word, anyone: false, range: false }];
  });
  const counted = numbers.flatMap((number): Member[] => {
    const word = peopleAfter(stretch, number);
    if (word === undefined || word.first !== number.last + 1 || word.last > word.first) return [];
    if (companions.some((companion) => companion.last === word.last)) return [];
    // "大人2人": who they are stands before the number; "2 adults 3 children": that is what another counts.
    const label = termsOf(stretch, 'people').find(
      (term) => term.last === number.first - 1 && !numbers.some((other) => other.last === term.first - 1),
    );
    const said = stretch.tokens[(label ?? word).first]?.fold ?? '';
    const member = memberOf(stretch, 'counted', number, word.last, said);
    return [label === undefined ? member : { ...member, first: label.first, anyone: false }];
  });
  const names = selves.length === 0 ? [] : namesIn(stretch);
  return [...selves, ...companions, ...counted, ...names].sort((a, b) => a.first - b.first);
}

/** "Me, Dave and Pip": words with a capital that no vocabulary knows, alone between joints. */
function namesIn(stretch: Stretch): Member[] {
  const alone = (at: number) => {
    const token = stretch.tokens[at];
    return token === undefined || token.type === 'sign' || token.gap === 2 || joins(stretch, at);
  };
  return stretch.tokens.flatMap(({ type, start, fold }, at): Member[] => {
    const first = stretch.text.charAt(start);
    if (type !== 'word' || first === first.toLowerCase() || !alone(at + 1)) return [];
    const owned = stretch.terms.some((term) => OWNERS.has(term.role) && term.last === at - 1);
    if (!alone(owned ? at - 2 : at - 1) || stretch.terms.some((term) => term.first <= at && term.last >= at)) return [];
    return [{ sort: 'name', value: 1, first: owned ? at - 1 : at, last: at, word: fold, anyone: false, range: false }];
  });
}

function memberOf(stretch: Stretch, sort: Member['sort'], number: Count, last: number, word: string): Member {
  const least = rangeBefore(stretch, number);
  const anyone = termsOf(stretch, 'anyone').some((term) => term.first > number.last && term.last <= last);
  return { sort, value: number.value, first: (least ?? number).first, last, word, anyone, range: least !== undefined };
}

/** Words between "my" and the one who goes along: "my 12-year-old son". */
const MOST_BETWEEN = 6;

/** Where "my old dad", "la mia ragazza" begins. */
function withOwner(stretch: Stretch, noun: number): number {
  const owns = (at: number) => stretch.terms.some((term) => OWNERS.has(term.role) && term.first === at);
  for (let at = noun - 1; at >= 0 && noun - at <= MOST_BETWEEN; at--) {
    if ((stretch.breaks[at + 1] ?? 0) > 0) break;
    if (owns(at)) return at > 0 && owns(at - 1) ? at - 1 : at;
  }
  return noun;
}

const OWNERS: ReadonlySet<string> = new Set(['determiners', 'article']);

/** Words about the people counted before the next are: "42 children between 8 and 13, 11 leaders". */
const MOST_ASIDE = 6;

/** Nothing but commas, "and", "with", and ages in brackets between them; two counts may stand side by side. */
function isJoined(stretch: Stretch, a: Member, b: Member): boolean {
  if ((stretch.tokens[b.first]?.gap ?? 0) === 2) return false;
  if (a.last + 1 === b.first) return a.sort !== 'self' && hasNumber(stretch, b);
  let aside = 0;
  for (let at = a.last + 1; at < b.first; at++) {
    if (stretch.tokens[at]?.fold === '(') {
      while (at < b.first && stretch.tokens[at]?.fold !== ')') at++;
      if (at === b.first) return false;
    } else if (!isJoint(stretch, at)) {
      aside++;
      if ((stretch.breaks[at] ?? 0) === 2 || stretch.tokens[at]?.type === 'sign') return false;
    }
  }
  const listed =
    hasNumber(stretch, a) && hasNumber(stretch, b) && ',+&'.includes(stretch.tokens[b.first - 1]?.fold ?? ' ');
  return aside === 0 || (listed && aside <= MOST_ASIDE);
}

/** A comma and the like, "and", "with"; the point of a short form before one: "2 adt. + 1 chd." */
function isJoint(stretch: Stretch, at: number): boolean {
  const fold = (i: number) => stretch.tokens[i]?.fold ?? ' ';
  return ',+&/'.includes(fold(at)) || joins(stretch, at) || (fold(at) === '.' && ',+&/'.includes(fold(at + 1)));
}

function hasNumber(stretch: Stretch, member: Member): boolean {
  return numbersIn(stretch).some(({ first, last }) => first >= member.first && last < member.last);
}

function joins(stretch: Stretch, at: number): boolean {
  return (['and', 'with'] as const).some((role) =>
    termsOf(stretch, role).some((term) => term.first <= at && term.last >= at),
  );
}

/** "3 people, 2 people" are told twice; "dad and brother" are two. */
function isOther(company: readonly Member[], member: Member): boolean {
  return !company.some(({ sort, word }) => sort === member.sort && word === member.word);
}

function isAlong(stretch: Stretch, members: readonly Member[]): boolean {
  const from = members[0]?.first ?? 0;
  return (
    members.every(({ sort }) => sort === 'companion') &&
    termsOf(stretch, 'with').some((term) => term.last === from - 1 && stretch.tokens[term.first]?.type === 'word')
  );
}
