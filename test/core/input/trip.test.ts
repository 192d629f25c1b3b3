import { describe, expect, it } from 'vitest';
import { readTrip } from '../../../core/input/trip.js';

describe('a trip as set', () => {
  it('keeps what can be used', () => {
    const set = {
      people: 2,
      days: 3,
      mealStyle: 'boil-only',
      drinkFromPot: false,
      waterFrom: 'snow',
      snow: 'new',
      lowC: -12,
      altitudeM: 2400,
      cookAt: 'fire',
      wind: 'windy',
      hotMealsPerDay: 2,
      season: 'winter',
    } as const;
    expect(readTrip(set)).toEqual({ trip: set, problems: [] });
  });

  it.each([
    [{ people: -2 }, 'trip.people', '−2 is less than a kit can be judged for.'],
    [{ people: 2.5 }, 'trip.people', 'People come whole: 3?'],
    [{ people: 'two' }, 'trip.people', '“two” is not a number; write it in figures.'],
    [{ people: Number.NaN }, 'trip.people', '“NaN” is not a number; write it in figures.'],
    [{ altitudeM: 29000 }, 'trip.altitudeM', '29000\u00a0m is more than anyone cooks at; 2900?'],
    [{ lowC: -100 }, 'trip.lowC', '−100\u00a0°C is less than anyone cooks out in; −10?'],
    [{ mealStyle: 'raw' }, 'trip.mealStyle', '“raw” is not one of boil-only, simmer, scratch.'],
    [{ drinkFromPot: 'yes' }, 'trip.drinkFromPot', '“yes” is not one of true, false.'],
  ])('tells what is wrong with %j and leaves it out', (set, field, message) => {
    const { trip, problems } = readTrip(set);
    expect(trip).toEqual({});
    expect(problems).toEqual([expect.objectContaining({ field, message })]);
  });

  it.each([null, 3, 'two people', [2]])('refuses %j with what to pass', (misuse) => {
    expect(() => readTrip(misuse)).toThrow(TypeError);
    expect(() => readTrip(misuse)).toThrow(/\{ people: 2, days: 3 \}/);
  });
});
