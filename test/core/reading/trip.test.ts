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
    ['Low: 5 °F   Nights: 2', { days: '~3', lowC: -15 }],
    ['8月3日-5日 夏の縦走', { season: 'summer' }],
    // Not decided, of food, or of other things.
    ['Pot d=16 h=9 cm', {}],
    ['days = 4', { days: 4 }],
    ['Four or five nights', {}],
    ['Food for 3-4 days', {}],
    ['Day 3-4: the pass', {}],
    ['7-10 June, 4 days', { days: 4, season: '~summer' }],
  ])('%s', (text, hints) => {
    expect(trip(text)).toEqual(hints);
  });
});

describe('dates of a trip', () => {
  it.each([
    ['Club trip 4-5 May', '~2'],
    ['June 7-10, the lakes', '~4'],
    ['12th-15th July trip', '~4'],
    ['Hochtour vom 12. bis 15. Juli', '~4'],
    ['Rando du 3 au 7 août', '~5'],
    ['Travesía del 3 al 7 de agosto', '~5'],
    ['Campo invernale, 26-29 dicembre', '~4'],
    ['Spływ, 10–14 lipca', '~5'],
    ['Zeltlager 2.-9. August', '~8'],
    ['Canyon les 14 et 15 juin', '~2'],
    ['right so 5 of us fri-sun', '~3'],
    ['Club trip for the juniors, Sat & Sun, bring your own mugs', '~2'],
    ['Zelten am See mit Freunden und Kindern, Fr-So', '~3'],
    ['Weekendkamp welpen, vrijdag t/m zondag in mei', '~3'],
    ['Meet on Friday, home on Monday', undefined],
    // What is said in days goes before.
    ['14-18 March, three days of them on skis', 3],
    ['Food for 12-16 August', undefined],
    ['It may be 2-3 may be more', undefined],
    ['25-30 cm pan in May', undefined],
    ['June 2019, 12 pots', undefined],
  ])('%s', (text, days) => {
    expect(trip(text)['days']).toBe(days);
  });

  it('count nothing', () => {
    expect(readList('7-10 June, pot 1 L').items.map(told)).toEqual([{ kind: 'pot', ml: [1000] }]);
    expect(readList('Per squadriglia (5-6): pentola 8 l, padella').items.map(told)).toEqual([
      { kind: 'pot', ml: [8000], perGroup: true },
      { kind: 'pan', perGroup: true },
    ]);
  });
});

describe('who goes', () => {
  it.each([
    ['Kit list: 4 people, 3 days', { people: 4, days: 3 }],
    ['2 adults 3 children', { people: 5, youthGroup: true }],
    ['2 adults, 1 kid (6)', { people: 3 }],
    ['two kids (6 and 9) and 2 adults', { people: 4, youthGroup: true }],
    ['Adults: 2, kids: 3', { people: 5, youthGroup: true }],
    ['Erwachsene: 2 Kinder: 1', { people: 3, youthGroup: true }],
    ['2 Erwachsene 3 Kinder', { people: 5, youthGroup: true }],
    ['2 adultes 3 enfants', { people: 5, youthGroup: true }],
    ['2 adultos, 2 niños', { people: 4, youthGroup: true }],
    ['2 vuxna 2 barn, 3 dagar', { people: 4, days: 3, youthGroup: true }],
    ['2 dorosłych, 2 dzieci', { people: 4, youthGroup: true }],
    ['大人2人、子供1人', { people: 3, youthGroup: true }],
    ['Four of us; two stoves (Arno and me)', { people: 4 }],
    ['4 of us, two stoves (my dad and me)', { people: 4 }],
    ['People: 4, Nights: 5, Low: -20 °C', { people: 4, days: '~6', lowC: -20 }],
    ['People\t4\nDays\t5', { people: 4, days: 5 }],
    ['Number of people: 4', { people: 4 }],
    ['Anzahl Personen: 4', { people: 4 }],
    ['Nombre de personnes : 4', { people: 4 }],
    ['Nº de personas: 4', { people: 4 }],
    ['Liczba osób: 4', { people: 4 }],
    ['人数:4', { people: 4 }],
    ['6-8 people', { people: '~8' }],
    ['a party of 6-8', { people: '~8' }],
    ['mit 4 Mann, 3 Tage', { people: 4, days: 3 }],
    ['Aantal kinderen: 22\nLeiding: 5', { people: 27, youthGroup: true }],
    ['- 4 people\n- 2 adults\n- 2 kids', { people: 4, youthGroup: true }],
    ['4 people\n\n12 scouts last year', { people: 4 }],
    ['Nights\t2\nLow temp\t-2', { days: '~3', lowC: '~-2' }],
    ['Lager, 35 TN + 8 Leitende', { people: 43 }],
    ['Adults: 2\nKids: 2', { people: 4, youthGroup: true }],
    ['4 people in total, 2 adults and 2 kids', { people: 4, youthGroup: true }],
    ['9 personnes, dont 3 enfants', { people: 9, youthGroup: true }],
    ['Lager, 42 Kinder zwischen 8 und 13, 11 Gruppenleiter, 3 Küchenleute', { people: 56, youthGroup: true }],
    ['大人2人 子供2人', { people: 4, youthGroup: true }],
    ['Team: 4', { people: 4 }],
    ['Speidertur med telt, 16 speidere 4 ledere', { people: 20, youthGroup: true }],
    ['Ons gezin (2 volw. + 3 kids) 2 weken', { people: 5, days: 14, youthGroup: true }],
    ['Tag 1: 12 km, Tag 2: 18 km. Schön, am Tag 15.\nZelt, Wein, Brot\nKocher 80 g, Topf 1 l, 2 Tassen', {}],
    ['popote pour 2 semaines', { days: 14 }],
    ['for two, 3 days', { people: 2, days: 3 }],
    ['I have used it for three years', {}],
    ['Trekking in due giorni', { days: 2 }],
    ['Trekking, maggio, in due, tenda e fornellino', { people: 2, season: '~spring' }],
  ])('by count: %j', (text, hints) => {
    expect(trip(text)).toEqual(hints);
  });

  it.each([
    ['me and my dad', 2],
    ['just me and my 12-year-old son', 2],
    ['my wife and I', 2],
    ['me, my wife and two kids', 4],
    ['four friends and me', 5],
    ['ich und mein Vater', 2],
    ['mon père et moi', 2],
    ['moi et 2 potes', 3],
    ['mi hermano y yo, dos noches', 2],
    ['io e mio padre', 2],
    ['io e la mia ragazza', 2],
    ['eu e a minha mulher', 2],
    ['jag och pappa, 3 dagar', 2],
    ['min kone og jeg, to netter', 2],
    ['min kæreste og jeg, 3 dage', 2],
    ['ik en mijn broer', 2],
    ['ja i żona, 3 dni', 2],
    ['я и два друга', 3],
  ])('by name: %s', (text, people) => {
    expect(trip(text)['people']).toBe(people);
  });

  it.each([
    ['me, Dave, Pip and Jonno', '~4'],
    ['3 dias, eu e a Joana', '~2'],
    ['Tom und ich, 2 Tage', '~2'],
    ['four of us: me and my dad', 4],
    ['Ich und Rucksack', undefined],
    ['me and Canoe trip', undefined],
    ['Dave, Pip and Jonno', undefined],
  ])('by proper names: %s', (text, people) => {
    expect(trip(text)['people']).toBe(people);
  });

  // Who writes is not named, and goes along: a guess.
  it.each([
    ['canoe trip with two mates', '~3'],
    ['with a friend and his daughter', '~3'],
    ['Kanutour mit meiner Frau und zwei Kindern', '~4'],
    ['Rando avec deux copains', '~3'],
    ['con mi padre, 3 días', '~2'],
    ['con due amici', '~3'],
    ['com dois amigos', '~3'],
    ['med två kompisar', '~3'],
    ['med to venner', '~3'],
    ['met mijn man en 2 kinderen', '~4'],
    ['z żoną i dwójką dzieci', '~4'],
    ['с двумя друзьями', '~3'],
  ])('by company: %s', (text, people) => {
    expect(trip(text)['people']).toBe(people);
  });

  it.each([
    ['me (1 person)', 1],
    ["Solo trip with my dad's old pot", 1],
    ['zu zweit mit meinem Sohn', 2],
    ['with 2 people', 2],
    ['12 scouts', 12],
    ['hike with friends', undefined],
    ['hike with the kids', undefined],
    ["with my mate's stove", undefined],
    ['my dad lent the pot, my brother the stove', undefined],
    ['Pot shared with my brother', undefined],
    ['I and the stove', undefined],
    ['Tent 2 p, 1.8 kg', undefined],
  ])('adds nobody: %s', (text, people) => {
    expect(trip(text)['people']).toBe(people);
  });
});

describe('temperatures that show no degrees', () => {
  it.each([
    ['Nights in the low 30s at 12,100 ft camps', { lowC: '~-1.1', altitudeM: 3688 }],
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

describe('a hint needs a word of the trip beside it', () => {
  // Beside things of the list, whose own figures and names these are.
  it.each([
    'Tent, fly 30D nylon',
    '- Lamp L1D',
    '- Carabiner 3D',
    'Bought it all in one day in a shop',
    '- 1 day of clothes',
    '- Kleidung für 1 Tag',
    'The filter slows down after maybe 10 nights of use and some runs through silty water',
    'My longest outings before this one had topped out at 6 weeks and wore my joints down a lot',
    'Il filtro rallenta dopo circa dieci notti di uso e qualche litro di acqua torbida del fiume',
    'Der Filter lässt nach etwa zehn Nächten Gebrauch spürbar nach und wird danach sehr langsam',
    'El filtro se vuelve más lento después de unas diez noches de uso con agua turbia del río',
    '- solo pot',
    '- pot for one person',
    '- Topf für 2 Personen',
    '- ~~Burrow - Solo~~',
    'A pack that weighs 3 kg alone is nothing to be proud of in anybody’s book these days',
    'If cooking for two, take the larger one',
    'Falls zu zweit, den größeren nehmen',
    'Si vous êtes deux, prenez la plus grande',
    'Elevation gain 1000 ft',
    'Aufstieg 1200 Höhenmeter, 1200 m',
    '1200 m D+',
    'desnivel 1300 m, camino al collado',
    'most of the way and every camp stays well below 3000 feet',
    'Summer sleeping bag',
    '- Winterschlafsack 1,2 kg',
    '- saco de invierno 1,2 kg',
    '- Buff, thin, for winter',
    '- Sleeping bag -10 °C',
    'A spirit stove can be fussy below 20 degrees',
    '- Washing powder',
    '- Ibuprofen Pulver',
    '- Maps and guides',
    'My kids gave up on tents and on everything that goes with them a long while before',
    'I never cared for the time it takes to boil water',
    'last summer I did 4 days of this with 2 people',
    'letzten Sommer waren wir 4 Tage zu zweit dort',
  ])('no hint: %s', (text) => {
    expect(trip(`${text}\n- mug`)).toEqual({});
  });

  it.each([
    ['Tur om vinteren', { season: 'winter' }],
    ['Fem dagar i fjällen om vintern', { days: 5, season: 'winter' }],
    ['Vi var ute i fem dager, tre personer', { people: 3, days: 5 }],
    ['For a group of four to six', { people: '~6' }],
    ['Bivouac at 3600 m', { altitudeM: 3600 }],
    ['Biwak auf 3100 m', { altitudeM: 3100 }],
    ['bivouac à 2800 m', { altitudeM: 2800 }],
    ['vivac a 2900 m en la montaña', { altitudeM: 2900 }],
    ['1200 m D+, camp à 2400 m', { altitudeM: 2400 }],
    ['Conditions: calm', { wind: 'calm' }],
    ['Eine Tagestour, ist windstill', { days: 1, wind: 'calm' }],
    ['sans vent, deux jours de rando', { days: 2, wind: 'calm' }],
    ['tres días de travesía, brisa', { days: 3, wind: 'breeze' }],
    ['Fjelltur med sterk vind', { wind: 'windy' }],
    ['Expedition 5D/4N', { days: 5 }],
    ['our 4 month long journey', { days: '~120' }],
    ['nine days on skis in the far north, with nothing but our own tracks to follow home', { days: 9 }],
    ['Wir laufen zu zweit, meist wenn die Mücken tot sind und die Hütten schon geschlossen haben', { people: 2 }],
    ['10 below at night', { lowC: -10 }],
  ])('a hint: %s', (text, hints) => {
    expect(trip(text)).toEqual(hints);
  });
});
