import { describe, expect, it } from 'vitest';
import { fuelAmount } from '../../../core/checks/fuel-amount.js';
import type { Facts } from '../../../core/model/check.js';
import type { Trip } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const pot = item('pot', {
  capacitiesMl: [stated(2000)],
  lid: stated(true),
  diameterMm: stated(150),
  heightMm: stated(115),
});
const gas = item('stove', { stoveType: stated('gas') });
const can = (g: number, count = 1) =>
  item('fuel', { fuelType: stated('gas'), fuelMassG: stated(g), quantity: stated(count) });
const facts = (grams: number, trip: Partial<Trip> = {}) =>
  factsOf({ people: 1, days: 2, mealStyle: 'boil-only', wind: 'calm', ...trip }, [pot, gas, can(grams)]);
/** The same facts with the fuel that is carried set to a share of the likely need. */
const carrying = (share: number, trip: Partial<Trip> = {}): Facts => {
  const given = facts(200, trip);
  return { ...given, plan: { ...given.plan, carriedGrams: (given.plan.tripGrams?.likely ?? 0) * share } };
};

describe('fuel carried', () => {
  it.each([
    // A quarter to spare over the likely need: common practice, no source.
    [1.251, 'holds-up', 'enough'],
    [1.249, 'costs-you', 'tight'],
    [1.001, 'costs-you', 'tight'],
    [0.999, 'falls-short', 'short'],
  ] as const)('%d of the likely need: %s', (share, grade, key) => {
    expect(findingOf(fuelAmount, carrying(share))).toMatchObject({ grade, key });
  });

  it('is reckoned as the sum says', () => {
    const given = facts(10);
    const finding = findingOf(fuelAmount, given);
    const likely = given.plan.tripGrams!.likely;
    expect(finding.sum.map(({ sign, figure }) => [sign, figure.value])).toEqual([
      ['', likely / 2],
      ['×', 2],
      ['=', likely],
      ['×', 1.25],
      ['=', likely * 1.25],
      ['', 10],
    ]);
    expect(finding.sum.map(({ label, grounds, cites }) => [label, grounds, cites])).toEqual([
      [expect.stringMatching(/^fuel a day, \d+\u00a0g to \d+\u00a0g$/), 'worked-out', ['cp-wind-factor']],
      ['days', 'stated', []],
      ['likely need', 'worked-out', []],
      ['a quarter to spare', 'common-practice', ['cp-fuel-margin']],
      ['wanted', 'worked-out', []],
      ['carried, net', 'worked-out', []],
    ]);
    expect(finding.margin).toMatch(/^10\u00a0g of \d+–\d+\u00a0g$/);
    expect(finding.evidence).toEqual([{ line: 1, span: [0, 3], quote: 'pot', found: 'in-list' }]);
    const wanted = Math.ceil((likely * 1.25) / 10) * 10;
    expect(finding.fix).toBe(`Carry ${wanted - 10}\u00a0g more, about ${wanted}\u00a0g in all.`);
    expect(finding.message).toBe('The fuel runs short of 2 days.');
    expect(findingOf(fuelAmount, facts(wanted)).grade).toBe('holds-up');
    expect(findingOf(fuelAmount, facts(wanted)).fix).toBeNull();
  });

  it('counts every can for the stove', () => {
    const given = factsOf({ people: 1, days: 2 }, [pot, gas, can(100, 2), can(230)]);
    expect(findingOf(fuelAmount, given).figures['carried']).toMatchObject({ value: 430 });
    expect(findingOf(fuelAmount, given).evidence).toHaveLength(2);
  });

  it('says what it assumes', () => {
    const given = factsOf({ days: 1 }, [pot, gas, can(500)]);
    expect(findingOf(fuelAmount, given).assumptions.map(({ what }) => what)).toEqual(
      expect.arrayContaining(['the number of people', 'how they cook', 'the wind']),
    );
  });
});

describe('streams or snow', () => {
  const either = { waterFrom: 'either', lowC: -5 } as const;
  const grams = (name: 'boil' | 'all') => {
    const { tasks } = facts(1, either).plan;
    return (
      2 * tasks.filter(({ id }) => name === 'all' || id !== 'melt').reduce((sum, task) => sum + task.grams.likely, 0)
    );
  };

  it('holds up where it covers snow, falls short where it does not cover streams, and asks between', () => {
    expect(findingOf(fuelAmount, facts(grams('all') * 1.3, either)).grade).toBe('holds-up');
    expect(findingOf(fuelAmount, facts(grams('all') * 1.1, either))).toMatchObject({
      grade: 'costs-you',
      key: 'tight',
    });
    const wanted = Math.ceil((grams('all') * 1.25) / 10) * 10;
    expect(findingOf(fuelAmount, facts(grams('all') * 1.1, either)).fix).toMatch(
      new RegExp(`about ${wanted}\u00a0g in all\\.$`),
    );
    expect(findingOf(fuelAmount, facts(grams('boil') * 1.3, either))).toMatchObject({
      grade: 'cant-tell',
      message: 'It covers 2 days from streams and not from snow.',
      question: { field: 'trip.waterFrom', text: 'Will the water come from streams, or from snow?' },
    });
    const dry = findingOf(fuelAmount, facts(grams('boil') * 0.9, either));
    expect(dry).toMatchObject({ grade: 'falls-short', key: 'short' });
    expect(dry.sum[2]?.figure.value).toBeCloseTo(grams('boil'), 6);
  });

  it('from snow alone goes by snow', () => {
    expect(findingOf(fuelAmount, facts(grams('boil') * 1.3, { ...either, waterFrom: 'snow' })).grade).toBe(
      'falls-short',
    );
  });
});

describe('where it cannot judge', () => {
  it('asks for the days, and says how many it lasts', () => {
    const given = factsOf({ people: 1, wind: 'calm' }, [pot, gas, can(230)]);
    const finding = findingOf(fuelAmount, given);
    const { low, high } = given.plan.perDay!.grams;
    expect(finding).toMatchObject({
      grade: 'cant-tell',
      question: { field: 'trip.days', text: 'How many days is the trip?' },
    });
    expect(finding.message).toBe(
      `It lasts ${Math.floor(230 / high)}–${Math.floor(230 / low)} days; nothing says how long the trip is.`,
    );
  });

  it('asks for an amount that is not given', () => {
    const finding = findingOf(
      fuelAmount,
      factsOf({ people: 1, days: 2 }, [pot, gas, item('fuel', { fuelType: stated('gas') })]),
    );
    expect(finding).toMatchObject({
      grade: 'cant-tell',
      key: 'amount-missing',
      question: { item: 2, field: 'fuelMassG' },
    });
  });

  it('counts no wood, which is found on the way', () => {
    const wood = item('stove', { stoveType: stated('wood') });
    const logs = item('fuel', { fuelType: stated('wood') });
    expect(findingsOf(fuelAmount, factsOf({ days: 2 }, [pot, wood, logs]))).toEqual([]);
  });

  it('asks for the one can whose amount is not given', () => {
    const bare = item('fuel', { fuelType: stated('gas') });
    const finding = findingOf(fuelAmount, factsOf({ people: 1, days: 2 }, [pot, gas, can(230), bare]));
    expect(finding.question).toMatchObject({ item: 3, field: 'fuelMassG', text: '“pot”: how much fuel is in it?' });
    expect(finding.margin).toBe('amount not given');
  });

  it('counts only what the flame burns', () => {
    const spirit = item('fuel', { fuelType: stated('alcohol') });
    const given = factsOf({ people: 1, days: 2 }, [pot, gas, spirit, can(500)]);
    expect(findingOf(fuelAmount, given)).toMatchObject({ grade: 'holds-up', figures: { carried: { value: 500 } } });
    expect(findingOf(fuelAmount, given).evidence).toHaveLength(1);
    expect(findingsOf(fuelAmount, factsOf({ days: 2 }, [pot, gas, spirit]))).toEqual([]);
    expect(findingsOf(fuelAmount, factsOf({ days: 2, cookAt: 'fire' }, [pot, gas, can(10)]))).toEqual([]);
  });

  it('says one day as one day, and has no end where a day may take no fuel', () => {
    const one = factsOf({ people: 1 }, [pot, gas, item('fuel', { fuelType: stated('gas') })]);
    expect(findingOf(fuelAmount, one).message).toMatch(/; 1 day takes about /);
    const idle = { people: 1, hotMealsPerDay: 0, drinkFromPot: false, waterFrom: 'either', wind: 'calm' } as const;
    const given = factsOf(idle, [pot, gas, can(230)]);
    expect(given.plan.perDay?.grams.low).toBe(0);
    expect(findingOf(fuelAmount, given).message).toMatch(/^It lasts \d+–\d+ days; /);
  });

  it('says that snow is only guessed', () => {
    const guessed = factsOf({ people: 1, days: 2, season: 'winter' }, [pot, gas, can(20)]);
    expect(findingOf(fuelAmount, guessed).assumptions.map(({ what }) => what)).toContain('where the water comes from');
    expect(findingOf(fuelAmount, facts(20)).assumptions.map(({ what }) => what)).not.toContain(
      'where the water comes from',
    );
  });

  it('is silent without fuel, without a plan, for wood, and on a typed pot', () => {
    expect(findingsOf(fuelAmount, factsOf({ days: 2 }, [pot, gas]))).toEqual([]);
    expect(findingsOf(fuelAmount, factsOf({ days: 2 }, [item('pot'), gas, can(230)]))).toEqual([]);
    expect(
      findingsOf(fuelAmount, factsOf({ days: 2 }, [pot, item('stove', { stoveType: stated('wood') }), can(230)])),
    ).toEqual([]);
    expect(findingsOf(fuelAmount, factsOfPot({ capacity: 700 }, { days: 2 }, { type: 'gas' }))).toEqual([]);
    expect(
      findingsOf(fuelAmount, factsOf({ days: 2, hotMealsPerDay: 0, drinkFromPot: false }, [pot, gas, can(230)])),
    ).toEqual([]);
  });
});
