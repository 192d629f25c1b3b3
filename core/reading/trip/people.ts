import type { Given } from '../../model/given.js';
import type { ItemKind } from '../../model/item.js';
import type { Role } from '../text/lexicon.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { sharesOut } from '../items/quantity.js';
import { clauseOf } from '../items/clauses.js';
import { spanOf, stated, type Draft } from '../items/draft.js';
import { companiesIn, peopleAfter, sizeOf } from './company.js';
import { mentionsOf } from './groups.js';
import {
  countOrMost,
  hasRating,
  isDoubt,
  isOfTrip,
  labelledCounts,
  numbersIn,
  rangeBefore,
  valueIn,
  type Count,
} from './told.js';

/** Without one of these words a row tells nothing of people. */
const TELLING: ReadonlySet<Role> = new Set(['people', 'peopleBefore', 'party', 'self', 'companion']);

export function peopleOf(stretch: Stretch, gear: boolean): Given<number> | undefined {
  if (!stretch.tells(TELLING)) return undefined;
  const companies = companiesIn(stretch);
  const ours = companies.find(({ members }) => members.length > 1 && members.some(({ sort }) => sort === 'self'));
  const party = termsOf(stretch, 'party').find(
    (term) =>
      !hasRating(stretch, term.first) &&
      !isDoubt(stretch, term.first) &&
      !isOfEach(stretch, term) &&
      !countsOther(stretch, term) &&
      !isOfThing(stretch, term, gear) &&
      !weighs(stretch, term) &&
      isOfTrip(stretch, term.first, term.last),
  );
  const size = ours && sizeOf(stretch, ours);
  const numbers = numbersIn(stretch);
  // "The four of us: me and my dad, …", "4 of us": who is named are some of them.
  const most = Math.max(
    Number(party?.value ?? 0),
    ...numbers.filter((number) => peopleAfter(stretch, number) !== undefined).map(({ value }) => value),
  );
  if (size !== undefined && most <= valueIn(size)) return size;
  const along = companies.filter((company) => company.along);
  for (const number of numbers) {
    if (number.value < 1 || number.value > 200 || (party !== undefined && party.first < number.first)) continue;
    if (hasRating(stretch, number.first) || isDoubt(stretch, number.first)) continue;
    if (along.some(({ members }) => members.some(({ first, last }) => first <= number.first && last > number.last)))
      continue;
    const word = peopleAfter(stretch, number);
    const group = stretch.terms.some(
      (term) =>
        (term.role === 'perGroup' && term.last === number.first - 1) ||
        ((term.role === 'perGroup' || term.role === 'perPerson') && term.first === number.last + 1),
    );
    if (
      word !== undefined &&
      !group &&
      !isOfEach(stretch, word) &&
      stretch.tokens[word.first]?.gap !== 2 &&
      !isPart(stretch, number) &&
      !serves(stretch, number) &&
      isOfTrip(stretch, number.first, word.last)
    ) {
      const company = companies.find(({ members }) => members.some(({ last }) => last === word.last));
      return company === undefined ? countOrMost(stretch, number, word.last) : sizeOf(stretch, company);
    }
    const before = termsOf(stretch, 'peopleBefore').find((term) => isBefore(stretch, term, number));
    const next = stretch.tokens[number.last + 1];
    if (
      before !== undefined &&
      (next === undefined || next.type === 'sign') &&
      isOfTrip(stretch, before.first, number.last) &&
      !numbers.some((other) => rangeBefore(stretch, other)?.first === number.first) &&
      number.value <= 60 &&
      !stretch.measures.some((measure) => measure.first === number.first)
    )
      return countOrMost(stretch, number, number.last);
  }
  const labelled = labelledCounts(stretch, 'people');
  const last = labelled.at(-1);
  if (labelled[0] !== undefined && last !== undefined)
    return stated(
      labelled.reduce((sum, { value }) => sum + value, 0),
      spanOf(stretch, labelled[0].first, last.last),
    );
  if (party !== undefined) return stated(Number(party.value), spanOf(stretch, party.first, party.last));
  const others = along.find(
    ({ members }) =>
      !isLeft(stretch, members[0]?.first ?? 0) && isOfTrip(stretch, members[0]?.first ?? 0, members.at(-1)?.last ?? 0),
  );
  return others === undefined || gear ? undefined : sizeOf(stretch, others);
}

/** "Solo pot", "Gelert - Solo", "pot for one person": what a thing is called, or whom it serves. */
function isOfThing(stretch: Stretch, party: Term, gear: boolean): boolean {
  if (stretch.row.type === 'heading') return false;
  const beside = (term: Term) => term.first === party.last + 1 || term.last === party.first - 1;
  if (stretch.struck[party.first] === true || stretch.terms.some((term) => term.role === 'kind' && beside(term)))
    return true;
  if (!gear && !stretch.row.bullet) return false;
  const { from, to } = clauseOf(stretch, party);
  return !(
    party.first === from ||
    stretch.terms.some(
      ({ role, first }) => OUT.has(role) && first >= from && first < to && (first < party.first || first > party.last),
    )
  );
}

/** "Pot for 2 people": whom a thing serves. */
function serves(stretch: Stretch, { first }: Count): boolean {
  const before = termsOf(stretch, 'peopleBefore').find(({ last }) => last === first - 1);
  return before !== undefined && stretch.terms.some(({ role, last }) => role === 'kind' && last === before.first - 1);
}

const OUT: ReadonlySet<Role> = new Set([
  'outing',
  'day',
  'night',
  'week',
  'season',
  'month',
  'weekday',
  'span',
  'self',
  'people',
]);

/** "For three years", "in due giorni": the number is of what comes behind it. */
function countsOther(stretch: Stretch, party: Term): boolean {
  const next = party.last + 1;
  return (
    termsOf(stretch, 'number').some((term) => term.last === party.last) &&
    termsOf(stretch, 'peopleBefore').some((term) => term.first === party.first) &&
    stretch.tokens[next]?.type === 'word' &&
    stretch.tokens[next].gap < 2 &&
    !stretch.terms.some((term) => term.first === next && GOES_ON.has(term.role))
  );
}

const GOES_ON: ReadonlySet<Role> = new Set(['with', 'and', 'or', 'to', 'asides', 'no', 'month', 'season', 'weekday']);

/** "My pack weighs 3 kg alone": of a thing, where the sentence weighs it. */
function weighs(stretch: Stretch, party: Term): boolean {
  const { from, to } = clauseOf(stretch, party);
  return termsOf(stretch, 'weighs').some(({ first }) => first >= from && first < to);
}

/** "Left with a friend": who stays. */
function isLeft(stretch: Stretch, first: number): boolean {
  return termsOf(stretch, 'away').some((term) => term.first < first && first - term.last <= 3);
}

/** "For 4", "party of 6-8", "group size: 6". */
function isBefore(stretch: Stretch, term: Term, number: Count): boolean {
  const first = (rangeBefore(stretch, number) ?? number).first;
  const colon = stretch.tokens[first - 1]?.fold === ':' && term.last > term.first ? 1 : 0;
  return term.last === first - 1 - colon;
}

/** "per person", "一人一個", "1人1個": no party, but who brings the thing. */
function isOfEach(stretch: Stretch, term: Term): boolean {
  return (
    sharesOut(stretch, term) ||
    termsOf(stretch, 'perPerson').some((other) => other.first <= term.first && other.last >= term.last)
  );
}

/** "2 people of 4", "0.2 L × 4 people × 21 days": still people; "2-person" is not. */
function isPart(stretch: Stretch, number: Count): boolean {
  return (
    stretch.tokens[number.first - 1]?.fold === '/' ||
    stretch.terms.some((term) => term.role === 'each' && term.last === number.first - 1)
  );
}

/** "One cook set per four", "1 pot between three", "per pair: pot 1 L". */
export function peoplePerPotOf(stretch: Stretch, drafts: readonly Draft[]): Given<number> | undefined {
  const own = drafts.find(({ kind, perGroup }) => SHARED.has(kind) && perGroup?.grounds === 'stated')?.perGroup;
  if (own !== undefined) return own;
  const pot = stretch.terms.some(
    (term) => term.role === 'kind' && (term.value === 'pot' || term.value === 'other-cook'),
  );
  return pot ? mentionsOf(stretch).find(({ people }) => people.grounds === 'stated')?.people : undefined;
}

/** What those who cook together share. */
const SHARED: ReadonlySet<ItemKind> = new Set(['pot', 'pan', 'kettle', 'stove', 'fuel', 'other-cook']);
