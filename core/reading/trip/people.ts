import type { Given } from '../../model/given.js';
import type { Term } from '../text/terms.js';
import { termsOf, type Stretch } from '../items/stretch.js';
import { sharesOut } from '../items/quantity.js';
import { near, spanOf, stated } from '../items/draft.js';
import { followed, hasRating, isDoubt, labelledCount, numbersIn, type Count } from './told.js';

export function peopleOf(stretch: Stretch): Given<number> | undefined {
  const party = termsOf(stretch, 'party').find(
    (term) => !hasRating(stretch, term.first) && !isDoubt(stretch, term.first) && !isOfEach(stretch, term),
  );
  for (const number of numbersIn(stretch)) {
    if (number.value < 1 || number.value > 200 || (party !== undefined && party.first < number.first)) continue;
    if (hasRating(stretch, number.first) || isDoubt(stretch, number.first)) continue;
    const word = followed(stretch, number, 'people');
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
      !isPart(stretch, number)
    )
      return together(stretch, number, word);
    const before = termsOf(stretch, 'peopleBefore').find((term) => term.last === number.first - 1);
    const next = stretch.tokens[number.last + 1];
    if (
      before !== undefined &&
      (next === undefined || next.type === 'sign') &&
      number.value <= 60 &&
      !stretch.measures.some((measure) => measure.first === number.first)
    )
      return stated(number.value, spanOf(stretch, before.first, number.last));
  }
  const labelled = labelledCount(stretch, 'people');
  if (labelled !== undefined) return stated(labelled.value, spanOf(stretch, labelled.first, labelled.last));
  return party === undefined ? undefined : stated(Number(party.value), spanOf(stretch, party.first, party.last));
}

/** "per person", "一人一個", "1人1個": no party, but who brings the thing. */
function isOfEach(stretch: Stretch, term: Term): boolean {
  return (
    sharesOut(stretch, term) ||
    termsOf(stretch, 'perPerson').some((other) => other.first <= term.first && other.last >= term.last)
  );
}

/** "2 adults and 3 kids", "7 scouts + 2 leaders": people of several kinds make one party. */
function together(stretch: Stretch, first: Count, word: Term): Given<number> {
  let people = first.value;
  let last = word;
  const said = (term: Term) => stretch.tokens[term.first]?.fold;
  for (const number of numbersIn(stretch)) {
    const joint = number.first - 1;
    const joined =
      '+&,'.includes(stretch.tokens[joint]?.fold ?? ' ') || termsOf(stretch, 'and').some((term) => term.last === joint);
    const next = followed(stretch, number, 'people');
    if (joint !== last.last + 1 || !joined || next === undefined || next.last > next.first || said(next) === said(last))
      continue;
    people += number.value;
    last = next;
  }
  return stated(people, spanOf(stretch, first.first, last.last));
}

/** "2 people of 4", "0.2 L × 4 people × 21 days": still people; "2-person" is not. */
function isPart(stretch: Stretch, number: Count): boolean {
  return (
    stretch.tokens[number.first - 1]?.fold === '/' ||
    stretch.terms.some((term) => term.role === 'each' && term.last === number.first - 1)
  );
}

/** "One cook set per four", "1 pot between three". */
export function peoplePerPotOf(stretch: Stretch): Given<number> | undefined {
  const pot = stretch.terms.some(
    (term) => term.role === 'kind' && (term.value === 'pot' || term.value === 'other-cook'),
  );
  if (!pot) return undefined;
  for (const group of termsOf(stretch, 'perGroup')) {
    const number = numbersIn(stretch).find((one) => one.first === group.last + 1);
    if (
      number !== undefined &&
      number.value > 1 &&
      number.value < 40 &&
      near(stretch, 'unit', number.last, number.last, 0) === undefined
    )
      return stated(number.value, spanOf(stretch, group.first, number.last));
  }
  return undefined;
}
