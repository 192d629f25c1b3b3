import { describe, expect, it } from 'vitest';
import { readList } from '../../../core/index.js';
import type { Given } from '../../../core/model/given.js';
import { told } from '../../reading/told.js';

/** What a text says of the trip, a guess with a tilde. */
function trip(text: string): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(readList(text).trip).map(([key, given]) => [key, show(given as Given<unknown>)]),
  );
}

function show(given: Given<unknown>): unknown {
  if (given.grounds === 'missing') return undefined;
  return given.grounds === 'assumed' ? `~${String(given.value)}` : given.value;
}

describe('ranges of days', () => {
  it.each([
    ['3-4 nights', { days: '~5' }],
    ['4 to 5 days', { days: '~5' }],
    ['3-4 d', { days: '~4' }],
    ['3-4-day trip', { days: '~4' }],
    ['Kanutour mit Kindern, 2–3 Tage', { days: '~3', youthGroup: true }],
    ['Tage: 2-3', { days: '~3' }],
    ['Randonnée, 3 à 4 jours', { days: '~4' }],
    ['Travesía, de 2 a 3 noches', { days: '~4' }],
    ['Uscita, 2-3 giorni', { days: '~3' }],
    ['Travessia, 2-3 dias', { days: '~3' }],
    ['Fjälltur, 4-5 dagar', { days: '~5' }],
    ['Wandeltocht, 3-4 dagen', { days: '~4' }],
    ['Wyjazd w góry, 2-3 dni', { days: '~3' }],
    ['秋の縦走 2〜3泊', { days: '~4', season: 'autumn' }],
    ['Поход, 3-4 дня', { days: '~4' }],
    // Not decided, of food, or of other things.
    ['Four or five nights', {}],
    ['Food for 3-4 days', {}],
    ['Day 3-4: the pass', {}],
    ['7-10 June, 4 days', { days: 4, season: '~summer' }],
  ])('%s', (text, hints) => {
    expect(trip(text)).toEqual(hints);
  });
});

describe('temperatures that show no degrees', () => {
  it.each([
    ['Trip in May, lows around 5', { season: '~spring', lowC: '~5' }],
    ['low of -5', { lowC: '~-5' }],
    ['nights -10 to -5', { lowC: '~-10' }],
    ['minus eight overnight', { lowC: '~-8' }],
    ['at night -10/-15', { lowC: '~-15' }],
    ['February, -15, four of us', { people: 4, season: '~winter', lowC: '~-15' }],
    ['Skitour im Februar, nachts bis -12', { season: '~winter', lowC: '~-12' }],
    ['Skitour im Februar, Nachttemperaturen um -5', { season: '~winter', lowC: '~-5' }],
    ['Raquettes en janvier, -15 la nuit', { season: '~winter', lowC: '~-15' }],
    ['Travesía en enero, mínimas de -8', { season: '~winter', lowC: '~-8' }],
    ['Trekking a gennaio, di notte -8', { season: '~winter', lowC: '~-8' }],
    ['Travessia em janeiro, mínimas de -3', { season: '~winter', lowC: '~-3' }],
    ['Vintertur, ner till -25', { season: 'winter', lowC: '~-25' }],
    ['Vintertur i februar, ned til -20 om natta', { season: 'winter', lowC: '~-20' }],
    ['Vandretur i november og december, om natten -4', { season: '~autumn', lowC: '~-4' }],
    ['Winterkamp in januari, ’s nachts -6', { season: 'winter', lowC: '~-6' }],
    ['Wyjazd zimowy w góry, w nocy -12', { season: 'winter', lowC: '~-12' }],
    ['冬の縦走 最低気温-15', { season: 'winter', lowC: '~-15' }],
    ['Поход в январе, ночью до -20', { season: '~winter', lowC: '~-20' }],
  ])('%s', (text, hints) => {
    expect(trip(text)).toEqual(hints);
  });

  it('are of the scale that goes with the other units', () => {
    // 20 °F = −6.7 °C, 25 °F = −3.9 °C, −5 °F = −20.6 °C.
    expect(trip('Lows in the 20s\nPot 32 oz')).toEqual({ lowC: '~-6.7' });
    expect(trip('Nights 25 degrees\nPot 32 oz')).toEqual({ lowC: '~-3.9' });
    expect(trip('low of -5\nPot 32 oz\nMug 12 oz')).toEqual({ lowC: '~-20.6' });
    expect(trip('low of -5 °C\nPot 32 oz\nMug 12 oz')).toEqual({ lowC: -5 });
    // No low of a trip is 30 °C: that many degrees are Fahrenheit, −1.1 °C.
    expect(trip('lows around 30, pot 1 L')).toEqual({ lowC: '~-1.1' });
  });

  it('are as good as the degrees at the end of their range', () => {
    expect(trip('nights -10 to -5 °C')).toEqual({ lowC: -10 });
    expect(trip('10 below at night')).toEqual({ lowC: -10 });
  });

  it.each([
    'Quilt, comfort -5',
    'Sleeping bag rated -10, nights cold',
    '-2 mugs\n-3 spoons',
    'Nights: cold, 3 mugs',
    'Pot 2 L, size 25-30 cm',
    'Loop -3 days',
    'Order no. 4711-12, January',
  ])('is none: %j', (text) => {
    expect(trip(text)['lowC']).toBeUndefined();
  });

  it('count nothing', () => {
    expect(readList('- réchaud à essence, -15 la nuit').items.map(told)).toEqual([
      { kind: 'stove', stove: 'liquid-fuel' },
    ]);
    expect(readList('Töpfe, nachts bis -12').items.map(told)).toEqual([{ kind: 'pot', n: '?' }]);
    expect(readList('-2 mugs').items.map(told)).toEqual([{ kind: 'mug', n: 2 }]);
  });
});
