import { describe, expect, it } from 'vitest';
import { groundTrip } from '../../../core/kit/trip.js';

describe('the trip as judged', () => {
  it('puts the person over the text and the text over a default', () => {
    const hints = {
      people: { grounds: 'stated', value: 4, span: [0, 5] },
      days: { grounds: 'stated', value: 3, span: [6, 12] },
    } as const;
    const trip = groundTrip({ people: 2 }, hints, true);
    expect(trip.people).toEqual({ grounds: 'stated', value: 2, typed: true });
    expect(trip.days).toEqual(hints.days);
    expect(trip.mealStyle).toMatchObject({
      grounds: 'assumed',
      value: 'simmer',
      because: expect.stringContaining('nothing says'),
    });
    expect(trip.season).toEqual({ grounds: 'missing' });
  });

  it('puts what is usual with the person under the text and over a default, as an assumption', () => {
    const hints = { days: { grounds: 'stated', value: 3, span: [6, 12] } } as const;
    const trip = groundTrip({ people: 2 }, hints, true, { people: 5, days: 9, mealStyle: 'scratch', season: 'winter' });
    expect(trip.people).toEqual({ grounds: 'stated', value: 2, typed: true });
    expect(trip.days).toEqual(hints.days);
    expect(trip.mealStyle).toEqual({
      grounds: 'assumed',
      value: 'scratch',
      because: 'it is your default',
      replaceWith: 'set it for this trip',
    });
    expect(trip.season).toMatchObject({ grounds: 'assumed', value: 'winter' });
    expect(trip.lowC).toMatchObject({ grounds: 'assumed', value: -10 });
  });

  it.each([
    ['winter', undefined, 'either', -10],
    ['winter', -4, 'either', -4],
    ['summer', undefined, 'liquid', 5],
    ['autumn', -5, 'either', -5],
    ['autumn', -4.9, 'liquid', -4.9],
    [undefined, undefined, 'liquid', 5],
  ] as const)('in %s at %s °C the water is taken to be %s', (season, lowC, water, low) => {
    const trip = groundTrip({ ...(season ? { season } : {}), ...(lowC === undefined ? {} : { lowC }) }, {}, true);
    expect(trip.waterFrom).toMatchObject({ grounds: 'assumed', value: water });
    expect(trip.lowC).toMatchObject({ value: low });
  });

  it('takes a kit without a stove to be for a fire, as a guess', () => {
    expect(groundTrip({}, {}, false).cookAt).toMatchObject({ grounds: 'assumed', value: 'fire' });
    expect(groundTrip({}, {}, true).cookAt).toMatchObject({ grounds: 'assumed', value: 'stove' });
    expect(groundTrip({ cookAt: 'fire' }, {}, true).cookAt).toEqual({ grounds: 'stated', value: 'fire', typed: true });
  });
});
