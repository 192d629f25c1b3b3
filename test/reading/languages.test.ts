import { describe, expect, it } from 'vitest';
import { readList } from '../../core/index.js';
import { valueOf, type Given } from '../../core/model/given.js';
import type { Item } from '../../core/model/item.js';

/** One invented list a language. Beside each line that names a thing: its kind, and what is said of count, mL, g, Ø and gas. */
interface Sample {
  readonly language: string;
  readonly trip: Readonly<Record<string, unknown>>;
  readonly lines: readonly (readonly [text: string, read?: string])[];
}

const SAMPLES: readonly Sample[] = [
  {
    language: 'fr',
    trip: { people: 2, days: 5, season: 'autumn' },
    lines: [
      ["Traversée d'automne, 5 jours à deux"],
      [''],
      ['Cuisine'],
      ['- popote alu 1,4 L avec couvercle, 210 g', 'pot, 1400 ml, 210 g, aluminium, lid'],
      ['- petite casserole titane 0,75 l, 105 g', 'pot, 750 ml, 105 g, titanium'],
      ['- réchaud à gaz, 89 g', 'stove, 89 g, gas'],
      ['- 2 cartouches de gaz 230 g', 'fuel, × 2, 230 g net, gas'],
      ['- pare-vent 120 g', 'windscreen, 120 g'],
      ['- pince 32 g', 'other-cook, 32 g, gripper'],
      ['- 2 tasses 350 ml, 64 g chacune', 'mug, × 2, 350 ml, 64 g'],
      ['- 2 cuillères, 12 g chacune', 'utensil, × 2, 12 g'],
      ['- poêle 20 cm, 240 g', 'pan, 240 g, 200 mm'],
      ['Eau'],
      ['- 2 gourdes 1 L', 'bottle, × 2, 1000 ml'],
      ['- poche à eau 4 L, 90 g', 'bladder, 4000 ml, 90 g'],
    ],
  },
  {
    language: 'es',
    trip: { people: 2, days: 4, season: 'winter' },
    lines: [
      ['Invierno, 3 noches, dos personas'],
      [''],
      ['Cocina'],
      ['- olla de aluminio 2 l con tapa, 310 g', 'pot, 2000 ml, 310 g, aluminium, lid'],
      ['- cazo titanio 900 ml, 120 g', 'pot, 900 ml, 120 g, titanium'],
      ['- hornillo de gas 95 g', 'stove, 95 g, gas'],
      ['- 1 cartucho de gas 230 g', 'fuel, 230 g net, gas'],
      ['- paravientos 140 g', 'windscreen, 140 g'],
      ['- pinza 35 g', 'other-cook, 35 g, gripper'],
      ['- 2 tazas 400 ml', 'mug, × 2, 400 ml'],
      ['- sartén 18 cm, 190 g', 'pan, 190 g, 180 mm'],
      ['- 2 cucharas', 'utensil, × 2'],
      ['Agua'],
      ['- botella 1 l', 'bottle, 1000 ml'],
      ['- bolsa de agua 3 l, 80 g', 'bladder, 3000 ml, 80 g'],
    ],
  },
  {
    language: 'it',
    trip: { people: 2, days: 4, season: 'summer' },
    lines: [
      ['Trekking di luglio, 4 giorni in due'],
      [''],
      ['Cucina'],
      ['- pentola alluminio 1,8 l con coperchio, 280 g', 'pot, 1800 ml, 280 g, aluminium, lid'],
      ['- pentolino titanio 750 ml, 110 g', 'pot, 750 ml, 110 g, titanium'],
      ['- fornello a gas 85 g', 'stove, 85 g, gas'],
      ['- 2 cartucce di gas 230 g', 'fuel, × 2, 230 g net, gas'],
      ['- paravento 130 g', 'windscreen, 130 g'],
      ['- pinza 30 g', 'other-cook, 30 g, gripper'],
      ['- 2 tazze 300 ml', 'mug, × 2, 300 ml'],
      ['- padella 20 cm, 210 g', 'pan, 210 g, 200 mm'],
      ['- 2 cucchiai', 'utensil, × 2'],
      ['Acqua'],
      ['- borraccia 1 l, 120 g', 'bottle, 1000 ml, 120 g'],
      ['- sacca idrica 3 l', 'bladder, 3000 ml'],
    ],
  },
  {
    language: 'pt',
    trip: { people: 2, days: 4, season: 'summer' },
    lines: [
      ['Travessia em agosto, 4 dias, duas pessoas'],
      [''],
      ['Cozinha'],
      ['- panela de alumínio 1,5 l com tampa, 240 g', 'pot, 1500 ml, 240 g, aluminium, lid'],
      ['- tacho de titânio 900 ml, 115 g', 'pot, 900 ml, 115 g, titanium'],
      ['- fogareiro a gás 88 g', 'stove, 88 g, gas'],
      ['- 2 cartuchos de gás 230 g', 'fuel, × 2, 230 g net, gas'],
      ['- para-vento 125 g', 'windscreen, 125 g'],
      ['- pinça 33 g', 'other-cook, 33 g, gripper'],
      ['- 2 canecas 350 ml', 'mug, × 2, 350 ml'],
      ['- frigideira 18 cm, 200 g', 'pan, 200 g, 180 mm'],
      ['- 2 colheres', 'utensil, × 2'],
      ['- isqueiro', 'other-cook, lighter'],
      ['Água'],
      ['- garrafa 1 l, 40 g', 'bottle, 1000 ml, 40 g'],
      ['- saco de água 3 l, 85 g', 'bladder, 3000 ml, 85 g'],
    ],
  },
  {
    language: 'sv',
    trip: { people: 2, days: 5, season: 'winter' },
    lines: [
      ['Vintertur, 5 dagar, två personer'],
      [''],
      ['Kök'],
      ['- kastrull aluminium 2,5 l med lock, 330 g', 'pot, 2500 ml, 330 g, aluminium, lid'],
      ['- kastrull 1 l, 150 g', 'pot, 1000 ml, 150 g'],
      ['- bensinkök 420 g', 'stove, 420 g, liquid-fuel'],
      ['- bränsleflaska 0,6 l, 110 g', 'fuel, 600 ml, 110 g'],
      ['- vindskydd 90 g', 'windscreen, 90 g'],
      ['- grytgrepp 40 g', 'other-cook, 40 g, gripper'],
      ['- 2 kåsor 300 ml', 'mug, × 2, 300 ml'],
      ['- stekpanna 20 cm, 250 g', 'pan, 250 g, 200 mm'],
      ['- 2 skedar', 'utensil, × 2'],
      ['Vatten'],
      ['- vattenflaska 1 l, 150 g', 'bottle, 1000 ml, 150 g'],
      ['- termos 0,75 l, 480 g', 'bottle, 750 ml, 480 g'],
    ],
  },
  {
    language: 'no',
    trip: { people: 2, days: 4, season: 'autumn' },
    lines: [
      ['Fjelltur i september, 4 dager, to personer'],
      [''],
      ['Kjøkken'],
      ['- kjele titan 1,3 l med lokk, 160 g', 'pot, 1300 ml, 160 g, titanium, lid'],
      ['- gryte 2 l, 300 g', 'pot, 2000 ml, 300 g'],
      ['- gassbrenner 80 g', 'stove, 80 g, gas'],
      ['- 2 gassbokser 230 g', 'fuel, × 2, 230 g net, gas'],
      ['- vindskjerm 100 g', 'windscreen, 100 g'],
      ['- gryteklo 35 g', 'other-cook, 35 g, gripper'],
      ['- 2 kopper 300 ml', 'mug, × 2, 300 ml'],
      ['- stekepanne 20 cm, 260 g', 'pan, 260 g, 200 mm'],
      ['- 2 skjeer', 'utensil, × 2'],
      ['Vann'],
      ['- vannflaske 1 l, 130 g', 'bottle, 1000 ml, 130 g'],
      ['- vannpose 4 l', 'bladder, 4000 ml'],
    ],
  },
  {
    language: 'da',
    trip: { people: 2, days: 3, season: 'summer' },
    lines: [
      ['Vandretur i august, 3 dage, to personer'],
      [''],
      ['Køkken'],
      ['- gryde i aluminium 1,5 l med låg, 230 g', 'pot, 1500 ml, 230 g, aluminium, lid'],
      ['- kasserolle titanium 900 ml, 120 g', 'pot, 900 ml, 120 g, titanium'],
      ['- spritbrænder 70 g', 'stove, 70 g, alcohol'],
      ['- husholdningssprit 300 ml', 'fuel, 300 ml fuel, alcohol'],
      ['- vindskærm 85 g', 'windscreen, 85 g'],
      ['- grydetang 35 g', 'other-cook, 35 g, gripper'],
      ['- 2 krus 350 ml', 'mug, × 2, 350 ml'],
      ['- stegepande 18 cm, 210 g', 'pan, 210 g, 180 mm'],
      ['- 2 skeer', 'utensil, × 2'],
      ['- tændstikker', 'other-cook, matches'],
      ['Vand'],
      ['- vandflaske 1 l, 140 g', 'bottle, 1000 ml, 140 g'],
      ['- vandpose 3 l, 75 g', 'bladder, 3000 ml, 75 g'],
    ],
  },
  {
    language: 'nl',
    trip: { people: 2, days: 6, season: 'summer' },
    lines: [
      ['Wandeltocht in juni, 6 dagen, twee personen'],
      [''],
      ['Keuken'],
      ['- kookpan aluminium 1,6 l met deksel, 250 g', 'pot, 1600 ml, 250 g, aluminium, lid'],
      ['- pannetje titanium 700 ml, 95 g', 'pot, 700 ml, 95 g, titanium'],
      ['- gasbrander 82 g', 'stove, 82 g, gas'],
      ['- 2 gasblikken 230 g', 'fuel, × 2, 230 g net, gas'],
      ['- windscherm 110 g', 'windscreen, 110 g'],
      ['- pannengrijper 30 g', 'other-cook, 30 g, gripper'],
      ['- 2 mokken 350 ml', 'mug, × 2, 350 ml'],
      ['- koekenpan 20 cm, 230 g', 'pan, 230 g, 200 mm'],
      ['- 2 lepels', 'utensil, × 2'],
      ['Water'],
      ['- waterfles 1 l, 125 g', 'bottle, 1000 ml, 125 g'],
      ['- waterzak 4 l', 'bladder, 4000 ml'],
    ],
  },
  {
    language: 'pl',
    trip: { people: 2, days: 4, season: 'autumn' },
    lines: [
      ['Góry, wrzesień, 4 dni, dwie osoby'],
      [''],
      ['Kuchnia'],
      ['- garnek aluminiowy 1,5 l z pokrywką, 240 g', 'pot, 1500 ml, 240 g, aluminium, lid'],
      ['- menażka tytanowa 750 ml, 110 g', 'pot, 750 ml, 110 g, titanium'],
      ['- palnik gazowy 90 g', 'stove, 90 g, gas'],
      ['- 2 kartusze gazowe 230 g', 'fuel, × 2, 230 g net, gas'],
      ['- osłona przeciwwiatrowa 120 g', 'windscreen, 120 g'],
      ['- uchwyt do garnka 35 g', 'other-cook, 35 g, gripper'],
      ['- 2 kubki 350 ml', 'mug, × 2, 350 ml'],
      ['- patelnia 20 cm, 260 g', 'pan, 260 g, 200 mm'],
      ['- 2 łyżki', 'utensil, × 2'],
      ['Woda'],
      ['- butelka 1 l, 40 g', 'bottle, 1000 ml, 40 g'],
      ['- worek na wodę 4 l', 'bladder, 4000 ml'],
    ],
  },
  {
    language: 'ja',
    trip: { people: 2, days: 3, season: 'autumn' },
    lines: [
      ['秋の縦走 3日間 2人'],
      [''],
      ['調理'],
      ['- クッカー アルミ 1.3L フタ付き 220g', 'pot, 1300 ml, 220 g, aluminium, lid'],
      ['- チタン鍋 900ml 130g', 'pot, 900 ml, 130 g, titanium'],
      ['- ガスバーナー 85g', 'stove, 85 g, gas'],
      ['- OD缶 230g', 'fuel, 230 g net, gas'],
      ['- 風防 60g', 'windscreen, 60 g'],
      ['- マグ 300ml 2個', 'mug, × 2, 300 ml'],
      ['- フライパン 18cm 200g', 'pan, 200 g, 180 mm'],
      ['- スプーン 2本', 'utensil, × 2'],
      ['水'],
      ['- 水筒 1L 120g', 'bottle, 1000 ml, 120 g'],
      ['- ウォーターバッグ 3L', 'bladder, 3000 ml'],
    ],
  },
  {
    language: 'ru',
    trip: { people: 4, days: 5, season: 'autumn' },
    lines: [
      ['Поход в сентябре, 5 дней, 4 человека'],
      [''],
      ['Кухня'],
      ['- котелок алюминиевый 4 л с крышкой, 520 г', 'pot, 4000 ml, 520 g, aluminium, lid'],
      ['- кастрюля 2 л, 300 г', 'pot, 2000 ml, 300 g'],
      ['- газовая горелка 110 г', 'stove, 110 g, gas'],
      ['- 3 баллона газа 230 г', 'fuel, × 3, 230 g net, gas'],
      ['- ветрозащита 140 г', 'windscreen, 140 g'],
      ['- 4 кружки 400 мл', 'mug, × 4, 400 ml'],
      ['- половник 60 г', 'utensil, 60 g'],
      ['- сковорода 22 см, 380 г', 'pan, 380 g, 220 mm'],
      ['- зажигалка', 'other-cook, lighter'],
      ['Вода'],
      ['- канистра складная 5 л', 'bladder, 5000 ml'],
      ['- бутылка 1,5 л', 'bottle, 1500 ml'],
    ],
  },
];

/** What an item says, in the same words. */
function said(item: Item): string {
  const parts: string[] = [item.kind];
  const put = (given: Given<unknown>, unit: string) => {
    const value = valueOf(given);
    if (typeof value === 'number') parts.push(`${Math.round(value)}${unit}`);
    else if (typeof value === 'string') parts.push(value);
  };
  const count = valueOf(item.quantity);
  if (count !== 1) parts.push(`× ${String(count)}`);
  for (const given of item.capacitiesMl) put(given, ' ml');
  put(item.massG, ' g');
  put(item.diameterMm, ' mm');
  put(item.fuelMassG, ' g net');
  put(item.fuelVolumeMl, ' ml fuel');
  put(item.material, '');
  put(item.stoveType, '');
  put(item.fuelType, '');
  if (valueOf(item.lid) === true) parts.push('lid');
  if (item.role !== undefined) parts.push(item.role);
  return parts.join(', ');
}

describe.each(SAMPLES)('a list in $language', ({ language, trip, lines }) => {
  const reading = readList(lines.map(([text]) => text).join('\n'));

  it('is known by its words', () => {
    expect(reading.languages[0]).toBe(language);
  });

  it('is read back line by line', () => {
    const read = lines.map(([text], i) => {
      const items = reading.items.filter((item) => item.line === i + 1 && item.carried).map(said);
      return items.length === 0 ? [text] : [text, items.join(' | ')];
    });
    expect(read).toEqual(lines);
  });

  it('tells of the trip', () => {
    const told = Object.entries(reading.trip).map(([key, given]) => [key, valueOf(given as Given<unknown>)]);
    expect(Object.fromEntries(told)).toEqual(trip);
  });
});
