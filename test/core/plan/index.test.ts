import { describe, expect, it } from 'vitest';
import { kitFromReading } from '../../../core/kit/index.js';
import { groundTrip } from '../../../core/kit/trip.js';
import type { Trip } from '../../../core/model/trip.js';
import { planDay } from '../../../core/plan/index.js';
import { PLAN_MESSAGES } from '../../../core/plan/messages.js';
import { item, readingOf, stated } from '../kit/item.js';

const POT = item('pot', {
  capacitiesMl: [stated(1000)],
  diameterMm: stated(120),
  heightMm: stated(90),
  lid: stated(true),
});
const STOVE = item('stove', { stoveType: stated('gas') });
const CAN = item('fuel', { fuelType: stated('gas'), fuelMassG: stated(230), quantity: stated(2) });

function plan(trip: Partial<Trip>, ...items: ReturnType<typeof item>[]) {
  const { kit } = kitFromReading('pot', readingOf(...items), false);
  return planDay({ kit, trip: groundTrip(trip, {}, kit.stoves.length > 0) });
}

describe('sizing', () => {
  // Fill ceilings and portions: common practice, no source.
  it.each([
    ['boil-only', 900],
    ['simmer', 670],
    ['scratch', 670],
  ] as const)('%s leaves %d mL of a litre', (mealStyle, room) => {
    expect(plan({ mealStyle }, POT, STOVE).meal?.roomMl).toBeCloseTo(room, 9);
  });

  it('holds 16 and 20 US fl oz and a cup', () => {
    expect(plan({}, POT)).toMatchObject({ leastMl: 473, fullMl: 591, drinkMl: 240 });
  });

  // ISO 2533:1975 with IAPWS-IF97: 3000 m on the map is 70.121 kPa and 89.98 °C.
  it('has air pressure and boiling point of the altitude', () => {
    const { airPressureKpa, boilC } = plan({ altitudeM: 3000 }, POT);
    expect(airPressureKpa).toBeCloseTo(70.1211, 3);
    expect(boilC).toBeCloseTo(89.98, 1);
  });

  it('melts in the lidded pot where a larger one without a lid is no better', () => {
    const open = item('pot', { capacitiesMl: [stated(4000)], lid: stated(false) });
    const lidded = { ...POT, capacitiesMl: [stated(3000)] };
    expect(plan({}, lidded, open)).toMatchObject({ melt: { vessels: [1], wantedMl: 2000 } });
    expect(plan({}, open).melt?.vessels).toEqual([0]);
    // A litre is half of what one person wants: more of it counts for more than the lid.
    expect(plan({}, POT, open).melt?.vessels).toEqual([0]);
  });

  it('melts in no pan, no plastic and no wood', () => {
    const pan = item('pan', { capacitiesMl: [stated(2000)], lid: stated(true) });
    const tub = item('pot', { capacitiesMl: [stated(2000)], lid: stated(true), material: stated('plastic') });
    const cup = item('mug', { capacitiesMl: [stated(400)], material: stated('wood') });
    expect(plan({}, pan, tub, cup).melt).toBeNull();
  });

  it('has neither meal nor melting without a pot', () => {
    expect(plan({}, STOVE)).toMatchObject({ meal: null, melt: null, places: [], tasks: [], perDay: null });
  });
});

describe('the day', () => {
  const calm = { mealStyle: 'boil-only', wind: 'calm', people: 2, days: 3 } as const;

  it('boils meals and drinks in rounds of the room', () => {
    const { tasks } = plan(calm, POT, STOVE);
    expect(tasks.map(({ id }) => id)).toEqual(['meal', 'drinks']);
    expect(tasks[0]?.litres).toEqual({ low: 0.946, likely: 1.064, high: 1.182 });
    expect(tasks[0]?.rounds).toEqual({ low: 2, likely: 2, high: 2 });
    expect(tasks[1]?.rounds).toEqual({ low: 1, likely: 1, high: 1 });
    expect(plan({ ...calm, drinkFromPot: false }, POT, STOVE).tasks).toHaveLength(1);
    expect(plan({ ...calm, hotMealsPerDay: 2 }, POT, STOVE).tasks[0]?.litres.high).toBeCloseTo(2.364, 9);
  });

  // A litre boiled on gas takes 12–24 g from calm to breeze: common practice, no source. It comes out of water of 20 °C; the day
  // starts from a stream of 10 °C, 90 degrees under the boil instead of 80.
  it('takes 12 to 24 g of gas a litre, calm or breeze, for water of 20 °C', () => {
    for (const wind of ['calm', 'breeze'] as const) {
      const day = plan({ ...calm, wind }, POT, STOVE).perDay;
      const each = ((day?.grams.likely ?? 0) / (day?.litres.likely ?? 1)) * (80 / 90);
      expect(each).toBeGreaterThan(12);
      expect(each).toBeLessThan(24);
    }
  });

  // Two or three packed loads of a 1 L pot make 1 L: common practice, no source.
  it('packs a 1 L pot with snow two to three times a litre', () => {
    const melt = plan({ ...calm, waterFrom: 'snow', lowC: -10 }, POT, STOVE).tasks[0];
    expect(melt?.id).toBe('melt');
    expect(melt?.litres).toEqual({ low: 5, likely: 7, high: 12 });
    expect(melt?.rounds.likely).toBe(18);
    for (const end of ['low', 'likely', 'high'] as const) {
      const loads = (melt?.rounds[end] ?? 0) / (melt?.litres[end] ?? 1);
      expect(loads).toBeGreaterThanOrEqual(2);
      expect(loads).toBeLessThanOrEqual(3);
    }
  });

  it('ranges from stream to snow where either is possible', () => {
    const day = (waterFrom: Trip['waterFrom']) => plan({ ...calm, waterFrom }, POT, STOVE).perDay;
    const [liquid, either, snow] = [day('liquid'), day('either'), day('snow')];
    expect(either?.grams.low).toBeCloseTo(liquid?.grams.low ?? NaN, 9);
    expect(either?.grams.high).toBeCloseTo(snow?.grams.high ?? NaN, 9);
    expect(either?.grams.likely).toBeGreaterThan(liquid?.grams.likely ?? NaN);
    expect(either?.grams.likely).toBeLessThan(snow?.grams.likely ?? NaN);
  });

  it('counts the trip and the fuel carried', () => {
    const { perDay, tripGrams, carriedGrams } = plan(calm, POT, STOVE, CAN);
    expect(tripGrams?.likely).toBeCloseTo(3 * (perDay?.grams.likely ?? NaN), 9);
    expect(carriedGrams).toBe(460);
    expect(plan(calm, POT, STOVE).carriedGrams).toBeNull();
    expect(
      plan(calm, POT, STOVE, item('fuel', { fuelType: stated('alcohol'), fuelMassG: stated(100) })).carriedGrams,
    ).toBeNull();
  });

  it('keeps low ≤ likely ≤ high, simmering or not, at every altitude', () => {
    for (const mealStyle of ['boil-only', 'simmer'] as const)
      for (const altitudeM of [0, 3000, 8000])
        for (const waterFrom of ['liquid', 'snow', 'either'] as const)
          for (const { litres, rounds, energyKj, minutes, grams } of plan(
            { ...calm, mealStyle, altitudeM, waterFrom },
            POT,
            STOVE,
          ).tasks)
            for (const range of [litres, rounds, energyKj, minutes, grams]) {
              expect(range.low).toBeLessThanOrEqual(range.likely);
              expect(range.likely).toBeLessThanOrEqual(range.high);
            }
  });

  it('has no meal where none is eaten hot', () => {
    expect(plan({ ...calm, hotMealsPerDay: 0 }, POT, STOVE).tasks.map(({ id }) => id)).toEqual(['drinks']);
    expect(plan({ ...calm, hotMealsPerDay: 0, drinkFromPot: false }, POT, STOVE).perDay).toBeNull();
  });

  it('cooks in as many pots as people carry, each with its own flame where it is told so', () => {
    const own = plan(calm, { ...POT, perPerson: true }, { ...STOVE, perPerson: true });
    const waiting = plan(calm, { ...POT, perPerson: true }, STOVE);
    const one = plan({ ...calm, people: 1 }, POT, STOVE);
    expect(own.places).toMatchObject([{ alike: 2, uses: [{ task: 'meal' }, { task: 'drinks' }] }]);
    expect(own.meal).toMatchObject({ people: 1, alike: 2, turns: { low: 1, high: 1 }, grade: 'holds-up' });
    expect(waiting.meal).toMatchObject({ people: 1, alike: 2, turns: { low: 2, high: 2 }, grade: 'costs-you' });
    for (const [i, task] of own.tasks.entries()) {
      expect(task.rounds).toEqual(one.tasks[i]?.rounds);
      expect(task.grams.likely).toBeCloseTo(2 * (one.tasks[i]?.grams.likely ?? NaN), 9);
      expect(task.minutes.likely).toBeCloseTo(one.tasks[i]?.minutes.likely ?? NaN, 9);
      expect(waiting.tasks[i]?.minutes.likely).toBeCloseTo(2 * task.minutes.likely, 9);
    }
  });

  it('tells where a flame too weak for its pot stalls, and has no day where nothing cures it', () => {
    const pot = (mm: number, mL: number, lid: boolean) =>
      item('pot', { capacitiesMl: [stated(mL)], diameterMm: stated(mm), heightMm: stated(64), lid: stated(lid) });
    const on = (trip: Partial<Trip>, one: ReturnType<typeof item>) =>
      plan({ mealStyle: 'boil-only', ...trip }, one, item('stove', { stoveType: stated('solid-fuel') }));
    const stallOf = ({ places }: ReturnType<typeof plan>) => places[0]?.uses[0]?.stall;
    const hopeless = on({ people: 8, wind: 'windy' }, pot(600, 18_000, false));
    expect(hopeless).toMatchObject({ tasks: [], perDay: null, eatenMin: null });
    expect(stallOf(hopeless)).toMatchObject({ cure: null });
    expect(stallOf(hopeless)?.atC).toBeGreaterThan(10);
    expect(stallOf(hopeless)?.atC).toBeLessThan(100);
    const cured = on({ people: 1, wind: 'breeze' }, pot(130, 850, false));
    expect(stallOf(cured)).toMatchObject({ cure: 'lid' });
    // The day that is told is the cured one.
    expect(cured.perDay).toEqual(on({ people: 1, wind: 'breeze' }, pot(130, 850, true)).perDay);
    expect(stallOf(on({ people: 1, wind: 'calm' }, pot(130, 850, true)))).toBeNull();
  });

  it('counts the fuel that the flame burns, and for each person where it is told so', () => {
    const each = { ...CAN, quantity: stated(1), perPerson: true };
    expect(plan(calm, POT, STOVE, each).carriedGrams).toBe(460);
    expect(
      plan(calm, POT, STOVE, CAN, item('fuel', { fuelType: stated('alcohol'), fuelMassG: stated(50) })).carriedGrams,
    ).toBe(460);
    expect(plan(calm, POT, STOVE).carriedGrams).toBeNull();
    expect(plan({ ...calm, cookAt: 'fire' }, POT, CAN).carriedGrams).toBeNull();
  });

  it('says what is assumed of the stove', () => {
    const STREAM = 'water of 10 °C to start with';
    const of = (...kit: Parameters<typeof plan>[1][]) => plan(calm, POT, ...kit).assumptions.map(({ what }) => what);
    expect(of(item('stove'))).toEqual(['a gas stove', 'the power of the flame', STREAM]);
    expect(of(STOVE)).toEqual(['the power of the flame', STREAM]);
    expect(of(item('stove'), item('fuel', { fuelType: stated('alcohol') }))).toEqual([
      'the power of the flame',
      STREAM,
    ]);
    expect(plan({ ...calm, cookAt: 'fire' }, POT).assumptions).toHaveLength(2);
    expect(plan({ ...calm, mealStyle: 'simmer' }, POT, STOVE).assumptions.map(({ what }) => what)).toContain(
      'a simmer of 5–20 min',
    );
    const bare = item('pot', { capacitiesMl: [stated(1000)], lid: stated(true) });
    expect(plan({ ...calm, waterFrom: 'snow' }, bare, STOVE).assumptions.map(({ what }) => what)).toEqual([
      'the power of the flame',
      'a pot as wide as it is tall',
    ]);
    expect(plan(calm, STOVE).assumptions).toEqual([]);
  });

  it('has a name for every label of every sum', () => {
    const labels = plan({ ...calm, waterFrom: 'snow', hotMealsPerDay: 2 }, POT, STOVE).tasks.flatMap(({ id, sum }) => [
      id,
      ...sum.map(({ label }) => label),
    ]);
    expect(labels.length).toBeGreaterThan(15);
    for (const label of labels) expect(PLAN_MESSAGES).toHaveProperty([label]);
  });
});
