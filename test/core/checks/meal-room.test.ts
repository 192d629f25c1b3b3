import { describe, expect, it } from 'vitest';
import { mealRoom } from '../../../core/checks/meal-room.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const pot = (mL: number, given = {}) => item('pot', { capacitiesMl: [stated(mL)], ...given });
const solo = (mL: number, mealStyle: 'boil-only' | 'simmer' | 'scratch') =>
  findingOf(mealRoom, factsOfPot({ capacity: mL }, { people: 1, mealStyle }));
const shared = (people: number, mL: number, given = {}) =>
  findingOf(mealRoom, factsOf({ people, mealStyle: 'simmer' }, [pot(mL, given)]));

describe('room for one, common practice, no source', () => {
  it.each([
    // 450 mL alone needs several rounds in either style.
    [450, 'boil-only', 'falls-short', 'rounds'],
    [450, 'simmer', 'falls-short', 'rounds'],
    // 600 mL is for minimalists: the least portion, boil-only.
    [600, 'boil-only', 'costs-you', 'least-only'],
    [600, 'simmer', 'falls-short', 'rounds'],
    // About 700 to 750 mL is the least pot to choose; 700 for one who simmers.
    [690, 'simmer', 'falls-short', 'rounds'],
    [700, 'simmer', 'costs-you', 'least-only'],
    [700, 'boil-only', 'holds-up', 'one-round'],
    [750, 'simmer', 'costs-you', 'least-only'],
    // About 900 mL is very usual, 1 L is best for summer.
    [900, 'simmer', 'holds-up', 'one-round'],
    [1000, 'simmer', 'holds-up', 'one-round'],
    [1000, 'boil-only', 'holds-up', 'one-round'],
    [1000, 'scratch', 'holds-up', 'one-round'],
  ] as const)('%d mL, %s: %s', (mL, style, grade, key) => {
    expect(solo(mL, style)).toMatchObject({ check: 'meal-room', grade, key });
  });

  it('half of a 1 L pot is the water that one meal takes, 16 US fl oz', () => {
    expect(473.176473 / 1000).toBeCloseTo(0.5, 1);
    const { figures } = solo(1000, 'boil-only');
    expect(figures['room']).toMatchObject({ value: 900 });
    // A full portion and a drink from the same litre: 591 + 240 mL.
    expect(591 + 240).toBeLessThan(900);
  });
});

describe('the margin and the sum', () => {
  it('are those of a 600 mL pot that simmers', () => {
    const finding = solo(600, 'simmer');
    expect(finding.margin).toBe('402 of 473–591\u00a0mL');
    expect(finding.message).toBe('One meal takes 2 rounds.');
    expect(finding.fix).toBe('A pot of 710\u00a0mL or more. Or boil-only in this one: 540\u00a0mL of room.');
    expect(finding.sum.map(({ sign, text, label }) => [sign, text, label])).toEqual([
      ['', '600\u00a0mL', 'to the brim'],
      ['×', '0.67', 'the share that is filled, when it simmers'],
      ['=', '402\u00a0mL', 'room in one round'],
      ['', '473–591\u00a0mL', 'one meal for one person, 473–591 mL a head'],
    ]);
    expect(finding.cites).toEqual(['cp-meal-portion', 'cp-fill-ceiling']);
  });

  it('names no other way where boiling only does not help either', () => {
    expect(solo(450, 'simmer').fix).toBe('A pot of 710\u00a0mL or more.');
    expect(solo(450, 'boil-only').fix).toBe('A pot of 530\u00a0mL or more.');
    expect(solo(700, 'simmer').fix).toBe('A pot of 890\u00a0mL or more.');
    expect(solo(1000, 'simmer').fix).toBeNull();
  });

  it('lifts the grade with the fix it names', () => {
    expect(solo(710, 'simmer').grade).toBe('costs-you');
    expect(solo(890, 'simmer').grade).toBe('holds-up');
    expect(shared(2, 1770).grade).toBe('holds-up');
  });
});

describe('several from one pot', () => {
  it.each([
    [2, 1300, 'costs-you', 'rounds'],
    [2, 1420, 'costs-you', 'least-only'],
    [2, 1770, 'holds-up', 'one-round'],
    [3, 1000, 'falls-short', 'rounds'],
    [8, 8000, 'holds-up', 'one-round'],
  ] as const)('%d people, %d mL: %s', (people, mL, grade, key) => {
    expect(shared(people, mL)).toMatchObject({ grade, key });
  });

  it('counts the pots that stand on flames at once, and judges each by their own', () => {
    const gas = (count: number) => item('stove', { stoveType: stated('gas'), quantity: stated(count) });
    const two = pot(1800, { quantity: stated(2) });
    const on = (count: number, ...items: Parameters<typeof factsOf>[1]) =>
      findingOf(mealRoom, factsOf({ people: 4, mealStyle: 'simmer' }, [...items, gas(count)]));
    expect(on(2, two)).toMatchObject({ grade: 'holds-up', key: 'side-by-side', fix: null });
    expect(on(1, two)).toMatchObject({ grade: 'costs-you', key: 'rounds', fix: 'Flames for 2 pots at once.' });
    expect(on(2, pot(1800), pot(1000))).toMatchObject({
      grade: 'costs-you',
      key: 'least-only',
      margin: '1876 of 1892–2364\u00a0mL',
      fix: 'A pot of 730\u00a0mL beside what is there, on a flame of its own.',
    });
    expect(shared(4, 1800).grade).toBe('costs-you');
    expect(on(4, pot(900, { perPerson: true }))).toMatchObject({ grade: 'holds-up', key: 'one-round' });
    expect(on(1, pot(900, { perPerson: true }))).toMatchObject({
      grade: 'costs-you',
      key: 'waits',
      fix: 'Flames for 4 pots at once.',
    });
    expect(findingOf(mealRoom, factsOf({ people: 3, mealStyle: 'simmer' }, [pot(900, { perPerson: true })])).key).toBe(
      'waits',
    );
    expect(shared(3, 1000).fix).toBe('A pot of 1060\u00a0mL or more. Or boil-only in this one: 900\u00a0mL of room.');
  });

  it('says what it assumes', () => {
    const { assumptions } = findingOf(mealRoom, factsOf({}, [pot(1000)]));
    expect(assumptions.map(({ what }) => what)).toEqual(['the number of people', 'how they cook']);
    expect(shared(2, 1300).assumptions).toEqual([]);
    const guess = item('pot', { capacitiesMl: [{ grounds: 'assumed', value: 900, because: 'x', replaceWith: 'y' }] });
    expect(findingOf(mealRoom, factsOf({ people: 1, mealStyle: 'simmer' }, [guess])).assumptions).toEqual([
      { what: 'what the pot holds', because: 'x', replaceWith: 'y' },
    ]);
  });
});

describe('without a size or a pot', () => {
  it('asks for the size', () => {
    const finding = findingOf(mealRoom, factsOf({}, [item('pot')]));
    expect(finding).toMatchObject({
      grade: 'cant-tell',
      margin: 'size not given',
      question: { item: 0, field: 'capacityMl', text: '“pot”: how much does it hold?' },
    });
    expect(findingOf(mealRoom, factsOfPot({})).question).toMatchObject({ field: 'capacityMl' });
  });

  it('misses a pot where there is a stove, and is silent on a cold kitchen', () => {
    expect(findingOf(mealRoom, factsOf({}, [item('stove')]))).toMatchObject({
      grade: 'falls-short',
      key: 'no-pot',
      fix: 'Add a pot of 710\u00a0mL or more.',
    });
    expect(findingsOf(mealRoom, factsOf({}, [item('bowl')]))).toEqual([]);
  });
});
