import { describe, expect, test } from 'vitest';
import { hotMeal } from '../../../core/checks/hot-meal.js';
import { valueOf } from '../../../core/model/given.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const POT = item('pot', { capacitiesMl: [stated(1000)] });
const BOTTLE = item('bottle', { capacitiesMl: [stated(1000)] });
const STOVE = item('stove', { stoveType: stated('gas') });

describe('hot-meal', () => {
  test.each([
    [0, '0 of 1 hot meals a day'],
    [0.5, '0.5 of 1 hot meals a day'],
  ])('%d hot meals a day cost', (hotMealsPerDay, margin) => {
    const finding = plainly(findingOf(hotMeal, factsOf({ hotMealsPerDay }, [POT, STOVE])));
    expect(finding).toMatchObject({ grade: 'costs-you', key: 'few', margin });
    // A restricted ration of some 1500 kcal is for up to ten days: US Army Soldier Systems Center, release 01-57 (2001).
    expect(finding.message).toBe(
      'Less than one hot meal a day: some 1500 kcal a day is bearable for 10 days at most, and only with one.',
    );
    // 16 and 20 US fl oz are 473 and 591 mL (NIST Handbook 44, App. C).
    expect(finding.fix).toBe('One hot meal of 473–591 mL a person a day.');
    expect(finding.evidence).toEqual([{ quote: `hot meals a day: ${hotMealsPerDay}`, found: 'typed' }]);
    expect(finding.cites).toEqual(expect.arrayContaining(['cp-ration', 'natick-2001']));
  });

  test('one that is stated holds up', () => {
    const finding = plainly(findingOf(hotMeal, factsOf({ hotMealsPerDay: 1 }, [POT, STOVE])));
    expect(finding).toMatchObject({
      grade: 'holds-up',
      message: 'A hot meal of 473–591 mL a person each day.',
      margin: '1 of 1 hot meals a day',
      fix: null,
    });
    expect(finding.evidence).toMatchObject([{ found: 'in-list', line: 1 }]);
  });

  test('two are summed', () => {
    const { sum, margin } = plainly(findingOf(hotMeal, factsOf({ hotMealsPerDay: 2 }, [POT, STOVE])));
    expect(margin).toBe('2 of 1 hot meals a day');
    // By hand: 2 × 473 = 946, 2 × 591 = 1182, and the middle 2 × 532 = 1064.
    expect(sum.map(({ sign, text, label, grounds }) => [sign, text, label, grounds])).toEqual([
      ['', '2', 'hot meals a day', 'stated'],
      ['×', '473–591 mL', 'one meal, from the least to a full portion', 'common-practice'],
      ['=', '946–1182 mL', 'hot food a person a day', 'worked-out'],
    ]);
    expect(sum[1]?.figure.value).toEqual({ low: 473, likely: 532, high: 591 });
    expect(sum[2]?.figure.value).toEqual({ low: 946, likely: 1064, high: 1182 });
    expect(sum[1]?.cites).toEqual(['cp-meal-portion']);
  });

  test.each([{ people: 2 }, { days: 3 }])('no pot for %o costs', (trip) => {
    const finding = plainly(findingOf(hotMeal, factsOf(trip, [BOTTLE])));
    expect(finding).toMatchObject({ grade: 'costs-you', key: 'none', margin: 'no pot' });
    expect(finding.message).toBe(
      'Nothing to heat a meal in: some 1500 kcal a day is bearable for 10 days at most, and only with a hot meal.',
    );
    expect(finding.fix).toBe('A pot and a stove, for one hot meal of 473–591 mL a person a day.');
    expect(finding.evidence).toEqual([{ quote: 'no pot', found: 'absent' }]);
  });

  test('nothing is said of a default', () => {
    const facts = factsOf({ people: 2, days: 3 }, [POT, STOVE]);
    expect(valueOf(facts.trip.hotMealsPerDay)).toBe(1);
    expect(findingsOf(hotMeal, facts)).toEqual([]);
  });

  test.each([
    ['neither people nor days are told', factsOf({}, [BOTTLE])],
    ['a stove without a pot is judged elsewhere', factsOf({ people: 2 }, [STOVE])],
    ['one pot was typed', factsOfPot({ capacity: 1000 }, { hotMealsPerDay: 0 })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(hotMeal, facts)).toEqual([]);
  });
});
