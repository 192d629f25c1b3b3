import { describe, expect, test } from 'vitest';
import { eatWare } from '../../../core/checks/eat-ware.js';
import { MISSING } from '../../../core/model/given.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const POT = item('pot', { capacitiesMl: [stated(2000)] });
const bowls = (count: number) => item('bowl', { quantity: stated(count) });

describe('eat-ware', () => {
  test('two bowls and a pot are three of four', () => {
    const finding = plainly(findingOf(eatWare, factsOf({ people: 4 }, [POT, bowls(2)])));
    expect(finding).toMatchObject({
      grade: 'costs-you',
      message: 'Something to eat from for 3 of 4: the rest wait their turn.',
      margin: '3 of 4',
      fix: '1 more bowl or mug.',
      question: null,
      item: null,
    });
    expect(finding.sum.map(({ sign, text, label, grounds }) => [sign, text, label, grounds])).toEqual([
      ['', '2', 'bowls and mugs', 'stated'],
      ['+', '1', 'eat from the pot', 'assumed'],
      ['=', '3', 'have something to eat from', 'worked-out'],
    ]);
    expect(finding.evidence).toMatchObject([
      { line: 1, found: 'in-list' },
      { line: 1, found: 'in-list' },
    ]);
  });

  test('the fix counts what is missing', () => {
    expect(findingOf(eatWare, factsOf({ people: 4 }, [POT, bowls(1)])).fix).toBe('2 more bowls or mugs.');
    expect(findingOf(eatWare, factsOf({ people: 4 }, [bowls(2)]))).toMatchObject({
      margin: '2 of 4',
      fix: '2 more bowls or mugs.',
    });
  });

  test('three bowls and a pot are enough for four', () => {
    expect(findingOf(eatWare, factsOf({ people: 4 }, [POT, bowls(3)]))).toMatchObject({
      grade: 'holds-up',
      message: 'Something to eat from for 4 people.',
      margin: '4 of 4',
      fix: null,
    });
  });

  test('more than enough is no more than all', () => {
    expect(findingOf(eatWare, factsOf({ people: 2 }, [POT, bowls(3)])).margin).toBe('2 of 2');
  });

  test('one person eats from the pot', () => {
    expect(findingOf(eatWare, factsOf({ people: 1 }, [POT]))).toMatchObject({
      grade: 'holds-up',
      message: 'Something to eat from for 1 person.',
    });
    expect(findingOf(eatWare, factsOf({ people: 1 }, [item('pan')]))).toMatchObject({ grade: 'holds-up' });
  });

  test('mugs count once, even where one is what they cook in', () => {
    const mugs = item('mug', { quantity: stated(2), capacitiesMl: [stated(450)] });
    expect(findingOf(eatWare, factsOf({ people: 3 }, [mugs]))).toMatchObject({ grade: 'costs-you', margin: '2 of 3' });
  });

  test('nobody eats from a kettle', () => {
    const facts = factsOf({ people: 2 }, [item('kettle', { capacitiesMl: [stated(1000)] }), bowls(1)]);
    expect(findingOf(eatWare, facts).margin).toBe('1 of 2');
  });

  test.each([
    ['a pot for each person', item('pot', { perPerson: true, capacitiesMl: [stated(700)] })],
    ['as many pots as people', item('pot', { quantity: stated(3), capacitiesMl: [stated(700)] })],
  ])('%s is enough', (_, pot) => {
    const finding = findingOf(eatWare, factsOf({ people: 3 }, [pot]));
    expect(finding).toMatchObject({ grade: 'holds-up', margin: '3 of 3' });
    expect(finding.sum[1]).toMatchObject({ text: '3', label: 'pots of their own', grounds: 'stated' });
  });

  test('a pot of their own counts beside one that they share', () => {
    const own = item('pot', { perPerson: true, capacitiesMl: [stated(700)] });
    expect(findingOf(eatWare, factsOf({ people: 3 }, [POT, own])).margin).toBe('3 of 3');
  });

  test('two pots for three are shared', () => {
    const pots = item('pot', { quantity: stated(2), capacitiesMl: [stated(700)] });
    expect(findingOf(eatWare, factsOf({ people: 3 }, [pots]))).toMatchObject({ grade: 'costs-you', margin: '1 of 3' });
  });

  test('a bowl for each person is enough', () => {
    const bowl = item('bowl', { perPerson: true });
    expect(findingOf(eatWare, factsOf({ people: 5 }, [bowl]))).toMatchObject({ grade: 'holds-up', margin: '5 of 5' });
  });

  test('uncounted bowls raise the question, unless one each will do', () => {
    const uncounted = item('bowl', { quantity: MISSING });
    const finding = findingOf(eatWare, factsOf({ people: 4 }, [POT, uncounted]));
    expect(finding).toMatchObject({ grade: 'cant-tell', margin: '2 of 4', fix: null });
    expect(finding.message).toMatch(/^How many pieces “.*” are is not said: 2 of 4 are sure to have something/);
    expect(finding.question).toMatchObject({ item: 1, field: 'quantity' });
    expect(finding.question?.text).toMatch(/^How many .* are there\?$/);
    expect(findingOf(eatWare, factsOf({ people: 2 }, [POT, uncounted])).grade).toBe('holds-up');
  });

  test('those who only boil water eat from bags', () => {
    expect(findingsOf(eatWare, factsOf({ people: 4, mealStyle: 'boil-only' }, [POT, bowls(2)]))).toEqual([]);
    expect(findingOf(eatWare, factsOf({ people: 4, mealStyle: 'boil-only' }, [POT, bowls(3)])).grade).toBe('holds-up');
    expect(findingOf(eatWare, factsOf({ people: 4, mealStyle: 'simmer' }, [POT, bowls(2)])).grade).toBe('costs-you');
  });

  test.each([
    ['nobody says how many people', factsOf({}, [POT, bowls(1)])],
    ['nothing is there to eat from or cook in', factsOf({ people: 3 }, [item('stove')])],
    ['one pot was typed', factsOfPot({ capacity: 1000 }, { people: 4 })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(eatWare, facts)).toEqual([]);
  });
});
