import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fuelAmount } from '../../core/checks/fuel-amount.js';
import { mealRoom } from '../../core/checks/meal-room.js';
import { snowMelt } from '../../core/checks/snow-melt.js';
import { stall } from '../../core/checks/stall.js';
import { kitFromReading } from '../../core/kit/index.js';
import { groundTrip } from '../../core/kit/trip.js';
import type { Check, Facts } from '../../core/model/check.js';
import { GRADES } from '../../core/model/finding.js';
import { valueOf } from '../../core/model/given.js';
import type { FuelType, Item } from '../../core/model/item.js';
import type { Trip, TripHints } from '../../core/model/trip.js';
import { planDay } from '../../core/plan/index.js';
import { item, readingOf, stated } from '../core/kit/item.js';

/**
 * What holds of every kit, whatever is on it and however it is listed: laws of the plan, no figures. `KITS` sets how many random kits are tried,
 * parted over the laws.
 */
const RUNS = Math.ceil(Number(process.env['KITS'] ?? 400) / 8);
const options = { numRuns: RUNS, seed: Number(process.env['SEED'] ?? 11) };

const maybe = <T>(of: fc.Arbitrary<T>) => fc.option(of, { nil: undefined });
const given = <T>(name: keyof Item, value: T | undefined) => (value === undefined ? {} : { [name]: stated(value) });

const pots: fc.Arbitrary<Item> = fc
  .record({
    kind: fc.constantFrom('pot', 'pot', 'pot', 'kettle', 'mug'),
    mL: fc.constantFrom(350, 600, 900, 1100, 1500, 1800, 2500, 4000, 6000),
    quantity: fc.constantFrom(1, 1, 1, 2, 3),
    lid: maybe(fc.boolean()),
    wide: maybe(fc.constantFrom(100, 140, 190, 260)),
    made: maybe(fc.constantFrom('steel', 'titanium', 'enamel', 'aluminium')),
  })
  .map(({ kind, mL, quantity, lid, wide, made }) =>
    item(kind as 'pot', {
      capacitiesMl: [stated(mL)],
      quantity: stated(quantity),
      ...given('lid', lid),
      ...given('diameterMm', wide),
      ...given('material', made),
    }),
  );

/** A stove with its fuel: what has none has no flame. */
const flames: fc.Arbitrary<Item[]> = fc
  .record({
    type: fc.constantFrom<FuelType>('gas', 'gas', 'liquid-fuel', 'alcohol', 'solid-fuel'),
    quantity: fc.constantFrom(1, 1, 2, 3),
    grams: fc.constantFrom(40, 110, 230, 450),
  })
  .map(({ type, quantity, grams }) => [
    item('stove', { stoveType: stated(type), quantity: stated(quantity) }),
    item('fuel', { fuelType: stated(type), fuelMassG: stated(grams) }),
  ]);

const kits = fc
  .tuple(pots, fc.array(pots, { maxLength: 3 }), fc.array(flames, { minLength: 1, maxLength: 2 }))
  .map(([pot, others, stoves]) => [item('pot', { ...pot, kind: 'pot' }), ...others, ...stoves.flat()]);

const trips: fc.Arbitrary<Partial<Trip>> = fc.record({
  people: fc.integer({ min: 1, max: 12 }),
  days: fc.integer({ min: 1, max: 7 }),
  mealStyle: fc.constantFrom('boil-only', 'simmer'),
  waterFrom: fc.constantFrom('liquid', 'liquid', 'snow', 'either'),
  drinkFromPot: fc.boolean(),
  wind: fc.constantFrom('calm', 'breeze', 'windy'),
  altitudeM: fc.constantFrom(0, 2500),
});

function factsOf(trip: Partial<Trip>, items: readonly Item[], hints: TripHints = {}): Facts {
  const { kit } = kitFromReading('pot', readingOf(...items), false);
  const grounded = groundTrip(trip, hints, true);
  return { ...kit, trip: grounded, hints, plan: planDay({ kit, trip: grounded, hints }) };
}

/** The worst grade of a check, as its place among the grades; one past the last where it is silent. */
function gradeOf(check: unknown, facts: Facts): number {
  const one = check as Check;
  const grades = one
    .judge(facts, one.options)
    .map(({ grade }) => (grade === null ? GRADES.length : GRADES.indexOf(grade)));
  return Math.min(GRADES.length, ...grades);
}

/** The meal, with what a flame too weak for it costs. */
const mealGrade = (facts: Facts) => Math.min(gradeOf(mealRoom, facts), stallGrade(facts));
function stallGrade({ plan }: Facts): number {
  const stalls = plan.places.flatMap(({ uses }) =>
    uses.flatMap((use) => (use.task === 'meal' && use.stall ? [use.stall] : [])),
  );
  return Math.min(GRADES.length, ...stalls.map(({ cure }) => (cure === null ? 1 : 2)));
}

/** Fuel; where only the water can settle it, nothing is known, and nothing is worse than that. */
const fuelGrade = (facts: Facts) =>
  valueOf(facts.trip.waterFrom) === 'either' ? GRADES.length : gradeOf(fuelAmount, facts);

/** All that a reader is told of the plan, without the places of its things on the list. */
function told({ plan, vessels }: Facts) {
  const round = (value: unknown): unknown =>
    JSON.parse(
      JSON.stringify(value, (_, one: unknown) => (typeof one === 'number' ? Number(one.toPrecision(9)) : one)),
    );
  return round({
    meal: plan.meal && { ...plan.meal, vessels: plan.meal.vessels.map((index) => valueOf(vessels[index]!.capacityMl)) },
    melt: plan.melt && { ...plan.melt, vessels: plan.melt.vessels.map((index) => valueOf(vessels[index]!.capacityMl)) },
    perDay: plan.perDay,
    eatenMin: plan.eatenMin,
    tripGrams: plan.tripGrams,
    carriedGrams: plan.carriedGrams,
    tasks: plan.tasks.map(({ id, litres, rounds, minutes, grams }) => ({ id, litres, rounds, minutes, grams })),
  });
}

describe('the plan of a kit', () => {
  it('is the same in every order of the lines', () => {
    fc.assert(
      fc.property(
        kits.chain((kit) => fc.tuple(fc.constant(kit), fc.shuffledSubarray(kit, { minLength: kit.length }))),
        trips,
        ([kit, other], trip) => {
          expect(told(factsOf(trip, other))).toEqual(told(factsOf(trip, kit)));
        },
      ),
      options,
    );
  });

  it('is the same for two on one line and one on each of two', () => {
    const split = (one: Item): Item[] =>
      Array<Item>(one.kind === 'fuel' ? 1 : (valueOf(one.quantity) ?? 1)).fill(
        one.kind === 'fuel' ? one : { ...one, quantity: stated(1) },
      );
    fc.assert(
      fc.property(kits, trips, (kit, trip) => {
        expect(told(factsOf(trip, kit.flatMap(split)))).toEqual(told(factsOf(trip, kit)));
      }),
      options,
    );
  });

  it('is that of one kitchen where alike ones cook apart', () => {
    fc.assert(
      fc.property(kits, trips, fc.integer({ min: 2, max: 4 }), (kit, trip, groups) => {
        const people = Math.min(4, trip.people ?? 1);
        const one = factsOf({ ...trip, people }, kit);
        const each = kit.map((one): Item => ({ ...one, perGroup: true }));
        const all = factsOf({ ...trip, people: people * groups }, each, { cookGroups: stated(groups) });
        expect(gradeOf(mealRoom, all)).toBe(gradeOf(mealRoom, one));
        expect(gradeOf(snowMelt, all)).toBe(gradeOf(snowMelt, one));
        expect(all.plan.meal?.turns).toEqual(one.plan.meal?.turns);
        if (one.plan.meal?.people === all.plan.meal?.people)
          expect(all.plan.meal?.roomMl).toEqual(one.plan.meal?.roomMl);
        expect(all.plan.perDay === null).toBe(one.plan.perDay === null);
        if (one.plan.perDay !== null && all.plan.perDay !== null)
          for (const end of ['low', 'likely', 'high'] as const) {
            expect(all.plan.perDay.grams[end]).toBeCloseTo(groups * one.plan.perDay.grams[end], 5);
            expect(all.plan.perDay.minutes[end]).toBeCloseTo(one.plan.perDay.minutes[end], 5);
          }
      }),
      options,
    );
  });
});

describe('more of anything', () => {
  const never = (
    more: (kit: Item[], pot: Item, flame: Item[]) => Item[],
    grades: readonly ((facts: Facts) => number)[],
  ) =>
    fc.assert(
      fc.property(kits, trips, pots, flames, (kit, trip, pot, flame) => {
        const [less, now] = [factsOf(trip, kit), factsOf(trip, more(kit, pot, flame))];
        for (const grade of grades) expect(grade(now)).toBeGreaterThanOrEqual(grade(less));
      }),
      options,
    );

  it('a pot never makes a meal or melting worse', () => {
    never((kit, pot) => [...kit, { ...pot, kind: 'pot' }], [mealGrade, (facts) => gradeOf(snowMelt, facts)]);
  });

  it('a flame never makes a meal or melting worse', () => {
    never((kit, _, flame) => [...kit, ...flame], [mealGrade, (facts) => gradeOf(snowMelt, facts)]);
  });

  it('a lid never makes anything worse', () => {
    never(
      (kit) => kit.map((one) => (['pot', 'kettle'].includes(one.kind) ? { ...one, lid: stated(true) } : one)),
      [mealGrade, (facts) => gradeOf(snowMelt, facts), (facts) => gradeOf(stall, facts)],
    );
  });

  it('fuel never makes anything worse', () => {
    never(
      (kit, pot) =>
        kit.map((one) =>
          one.kind === 'fuel'
            ? { ...one, fuelMassG: stated((valueOf(one.fuelMassG) ?? 0) * (1 + (valueOf(pot.quantity) ?? 1))) }
            : one,
        ),
      [mealGrade, (facts) => gradeOf(snowMelt, facts), fuelGrade],
    );
  });
});

describe('a day', () => {
  it('has the rounds of the meal, uses what is carried, and adds up', () => {
    fc.assert(
      fc.property(kits, trips, (kit, trip) => {
        const { plan, vessels, stoves } = factsOf(trip, kit);
        const meal = plan.tasks.find(({ id }) => id === 'meal');
        if (meal) expect(meal.rounds).toEqual(plan.meal?.turns);
        const all = plan.places.flatMap((place) => place.uses.map((use) => ({ use, place })));
        for (const [index, vessel] of vessels.entries()) {
          const at = all.filter(({ use }) => use.vessel === index && use.task === 'meal');
          expect(at.reduce((sum, { place }) => sum + place.alike, 0)).toBeLessThanOrEqual(
            valueOf(vessel.quantity) ?? 1,
          );
        }
        for (const [index, stove] of stoves.entries()) {
          const at = plan.places.filter((place) => place.stove === index);
          expect(at.reduce((sum, place) => sum + place.alike, 0)).toBeLessThanOrEqual(valueOf(stove.quantity) ?? 1);
        }
        if (plan.perDay === null) return;
        const share = trip.waterFrom === 'either' ? 0.5 : 1;
        const worth = (burns: string | null) => plan.fuels.find((fuel) => fuel.burns === burns)?.worth ?? NaN;
        const parts = (name: 'grams' | 'minutes') =>
          all.reduce(
            (sum, { use, place }) =>
              sum +
              (use.heated?.[name].likely ?? NaN) *
                place.alike *
                (use.task === 'melt' ? share : 1) *
                (name === 'grams' ? worth(place.burns) : 1),
            0,
          );
        expect(plan.perDay.grams.likely).toBeCloseTo(parts('grams'), 6);
        expect(plan.perDay.minutes.likely).toBeLessThanOrEqual(parts('minutes') + 1e-6);
        expect(plan.eatenMin?.likely ?? 0).toBeLessThanOrEqual(plan.perDay.minutes.likely + 1e-6);
        for (const { litres, rounds, minutes, grams } of plan.tasks)
          for (const range of [litres, rounds, minutes, grams]) {
            expect(range.low).toBeLessThanOrEqual(range.likely + 1e-9);
            expect(range.likely).toBeLessThanOrEqual(range.high + 1e-9);
          }
      }),
      options,
    );
  });
});
