import { describe, expect, it } from 'vitest';
import { readList } from '../../core/index.js';
import { valueOf } from '../../core/model/given.js';
import { told } from './told.js';

/** Lines that hang on their figures, each with what a careful person takes from it; the false friends of a rule stand under it. The makers are invented. */
type Case = readonly [text: string, ...items: Record<string, unknown>[]];

/** Every line is one entry of a list. */
const read = (text: string) => readList(`- ${text}`).items.map(told);

const LED_BY_THE_UNIT: readonly Case[] = [
  ['pentola lt 1,5', { kind: 'pot', ml: [1500] }],
  ['pentola lt. 1,5 gr. 230', { kind: 'pot', ml: [1500], g: 230 }],
  ['tazza cl 30 gr 85', { kind: 'mug', ml: [300], g: 85 }],
  ['padella ø 20 gr 250', { kind: 'pan', g: 250, d: '~200' }],
  ['padella cm 24', { kind: 'pan', d: 240 }],
  ['pentola cm 20 x 12', { kind: 'pot', d: 200, h: 120 }],
  ['pentolino kg 0,3', { kind: 'pot', g: 300 }],
  ['n. 2 borracce lt 1', { kind: 'bottle', n: 2, ml: [1000] }],
  ['mug cl 45', { kind: 'mug', ml: [450] }],
  ['stove Gr 120', { kind: 'stove', g: 120 }],
  ['stove gr.120', { kind: 'stove', g: 120 }],
  // The unit before is another number's, or the letter is a size.
  ['mug 450 ml 80 g', { kind: 'mug', ml: [450], g: 80 }],
  ['Töpfe 2 l 2 Stück', { kind: 'pot', n: 2, ml: [2000] }],
  ['pot size L 2 l 300 g', { kind: 'pot', ml: [2000], g: 300 }],
  ['Topf Gr. 2', { kind: 'pot' }],
];

const UNITS: readonly Case[] = [
  ['kastrull 1,5 l 3 hg', { kind: 'pot', ml: [1500], g: 300 }],
  ['stekpanna Ø 22 cm 4,5 hg', { kind: 'pan', g: 450, d: 220 }],
  ['pentola 2 etti', { kind: 'pot', g: 200 }],
  ['garnek 30 dag', { kind: 'pot', g: 300 }],
  ['garnek 30 dkg 1,5 l', { kind: 'pot', ml: [1500], g: 300 }],
  ['Topf 1 1/2 Pfd', { kind: 'pot', g: 750 }],
  ['Topf mit Deckel, 2 Pfund', { kind: 'pot', g: 1000, lid: true }],
  ['pot 1lb3oz', { kind: 'pot', g: 539 }],
  ['gourde 1L5', { kind: 'bottle', ml: [1500] }],
  ['gourde 1l50', { kind: 'bottle', ml: [1500] }],
  ['bouteille un litre et demi', { kind: 'bottle', ml: [1500] }],
  ['borraccia da 1 litro e mezzo', { kind: 'bottle', ml: [1500] }],
  ['cantil 1 L e meio', { kind: 'bottle', ml: [1500] }],
  ['anderhalve liter fles', { kind: 'bottle', ml: [1500] }],
  ['halvannen liter flaske', { kind: 'bottle', ml: [1500] }],
  ['бутылка 1 л х 2', { kind: 'bottle', n: 2, ml: [1000] }],
  ['котелок 2л, кружка 2х300 мл', { kind: 'pot', ml: [2000], bail: '~true' }, { kind: 'mug', n: 2, ml: [300] }],
  // A pound of English ounces stays one; a half of something else adds nothing.
  ['pot 1.1 lb', { kind: 'pot', g: 499 }],
  ['botella 1 litro y media cebolla', { kind: 'bottle', ml: [1000] }],
];

const NO_QUANTITIES: readonly Case[] = [
  ['stainless 18/10 pot 2 l', { kind: 'pot', ml: [2000], material: 'steel' }],
  ['Stainless 18/0 pan 24 cm', { kind: 'pan', d: 240, material: 'steel' }],
  ['Edelstahltopf 18/10, 1,5 l, 480 g', { kind: 'pot', ml: [1500], g: 480, material: 'steel' }],
  ['pentola inox 18/10 cm 16', { kind: 'pot', d: 160, material: 'steel' }],
  ['316L stainless bottle 1 L', { kind: 'bottle', ml: [1000], material: 'steel' }],
  ['Pot 900 ml - $49.95 - 120 g', { kind: 'pot', ml: [900], g: 120 }],
  ['Mug CHF 350', { kind: 'mug' }],
  ['Pfanne 24 cm 89,- 1,1 kg', { kind: 'pan', g: 1100, d: 240 }],
  ['ストーブ 73g 8,800円', { kind: 'stove', g: 73 }],
  ['réchaud 2 600 W 73 g', { kind: 'stove', g: 73 }],
  ['Topf 1,3 l, Durchmesser 140 mm, Höhe 90 mm, 210 g', { kind: 'pot', ml: [1300], d: 140, h: 90, g: 210 }],
  ['Topf 1,3 l, Klappmesser 90 g', { kind: 'pot', ml: [1300] }],
  // With a unit of its own or other numbers it is a size, a share, a count.
  ['pots 1.8/1.0 L', { kind: 'pot', n: '~2', ml: [1800, 1000] }],
  ['mug 304 ml', { kind: 'mug', ml: [304] }],
  ['2 stoves 600 W each', { kind: 'stove', n: 2 }],
];

const SETS: readonly Case[] = [
  ['pot set 0.9/1.4/2.0 L', { kind: 'pot', n: '~3', ml: [900, 1400, 2000] }],
  ['pots 1/2/3 L', { kind: 'pot', n: '~3', ml: [1000, 2000, 3000] }],
  ['set of 3 pots 1, 1.5 and 2 L', { kind: 'pot', n: 3, ml: [1000, 1500, 2000] }],
  ['Töpfe 1, 1,5 und 2 l', { kind: 'pot', n: '~3', ml: [1000, 1500, 2000] }],
  // A date; a count before the sizes.
  ['pots, bought 12/05/2024', { kind: 'pot', n: '?' }],
  ['pots 2, 1.5 and 2 L', { kind: 'pot', n: 2, ml: [1500, 2000] }],
  ['nested pots 750/1300', { kind: 'pot', n: '~2', ml: ['~750', '~1300'] }],
  ['Töpfe 1,4 u. 2 l', { kind: 'pot', n: '~2', ml: [1400, 2000] }],
  ['2 pots (1 L, 140 g; 2 L, 220 g)', { kind: 'pot', n: 2, ml: [1000, 2000], g: 360 }],
  [
    'cook set 620 g (pot 310 g, pan 210 g, lid 100 g)',
    { kind: 'pot', g: 310 },
    { kind: 'pan', g: 210 },
    { kind: 'lid', g: 100 },
  ],
  ['cook set 620 g: pot 1.5 L, pan 20 cm', { kind: 'pot', ml: [1500] }, { kind: 'pan', d: 200 }],
  [
    'Kochgeschirr (2 Töpfe 1,0 + 1,5 l, Pfanne Ø 18) 560 g',
    { kind: 'pot', n: 2, ml: [1000, 1500], g: 560 },
    { kind: 'pan', d: '~180' },
  ],
  ['Kochgeschirr 1,2 l 300 g', { kind: 'pot', ml: [1200], g: 300 }],
  ['pot set 620 g (lid 100 g)', { kind: 'pot', g: 620 }, { kind: 'lid', g: 100 }],
  ['Pot 1L 140g, bottle 2L 220g', { kind: 'pot', ml: [1000], g: 140 }, { kind: 'bottle', ml: [2000], g: 220 }],
  ['Pot 1 L 140 g, lid 20 g', { kind: 'pot', ml: [1000], g: 140 }, { kind: 'lid', g: 20 }],
  ['mugs 2, 300 and 450 ml', { kind: 'mug', n: 2, ml: [300, 450] }],
];

const OUNCES: readonly Case[] = [
  ['20 oz pan', { kind: 'pan', g: 567 }],
  ['mug 3.1 oz 16 oz', { kind: 'mug', ml: [473], g: 88 }],
  ['bottle 24 oz 13 oz', { kind: 'bottle', ml: [710], g: 369 }],
  ['pot 170 g / 6 oz', { kind: 'pot', g: 170 }],
  ['pot 6 oz (170 g)', { kind: 'pot', g: 170 }],
  ['6 oz (170 g) pot', { kind: 'pot', g: 170 }],
  ['bottle 32oz/1L, 6.2 oz', { kind: 'bottle', ml: [1000], g: 176 }],
  // Ounces that are about as many grams, and yet a volume.
  ['16 oz mug, 450 g', { kind: 'mug', ml: [473], g: 450 }],
  ['mug 16 oz, 450 g', { kind: 'mug', ml: [473], g: 450 }],
  ['20 oz mug', { kind: 'mug', ml: [591] }],
];

const FUEL: readonly Case[] = [
  ['gas canister 8 oz net, 13.1 oz gross', { kind: 'fuel', fuel: 'gas', g: 371, net: 227 }],
  ['cartouche gaz 100g net / 200g brut', { kind: 'fuel', fuel: 'gas', g: 200, net: 100 }],
  ['Gaskartusche 500 g (Inhalt 450 g)', { kind: 'fuel', fuel: '~gas', g: 500, net: 450 }],
  ['アルコール燃料 500ml 1本', { kind: 'fuel', fuel: 'alcohol', liquid: 500 }],
  ['gas canister 8oz (227g) net, 13oz (370g) total', { kind: 'fuel', fuel: 'gas', g: 370, net: 227 }],
  ['gas canister, net 230 g, gross 380 g', { kind: 'fuel', fuel: 'gas', g: 380, net: 230 }],
  ['gas canister 110/190g', { kind: 'fuel', fuel: 'gas', g: 190, net: 110 }],
  ['3 x 230g gas canisters (1140 g)', { kind: 'fuel', n: 3, fuel: 'gas', g: 1140, net: 230 }],
  ['gassboks 230 g x 2 stk', { kind: 'fuel', n: 2, fuel: '~gas', net: 230 }],
  ['固形燃料 25g×6個', { kind: 'fuel', n: 6, fuel: 'solid-fuel', net: 25 }],
  ['hexamine tablets 12 x 14g (168 g)', { kind: 'fuel', n: 12, fuel: 'solid-fuel', net: 14 }],
  ['gas canister empty 150 g', { kind: 'fuel', fuel: 'gas', g: 150 }],
  ['gas cartridge C500', { kind: 'fuel', fuel: 'gas' }],
  ['12 tablets 48 g', { kind: '~fuel', n: 12, fuel: '~solid-fuel', net: 4 }],
  // What one tablet may weigh, packs of tablets, two sizes of can, grams by the day, a bare number of grams.
  ['12 tablets 14 g', { kind: '~fuel', n: 12, fuel: '~solid-fuel', net: 14 }],
  ['2 packs fuel tablets 120 g', { kind: 'fuel', n: 2, fuel: 'solid-fuel', net: 120 }],
  ['2 gas canisters 100/230 g', { kind: 'fuel', n: 2, fuel: 'gas' }],
  ['gas canister 500', { kind: 'fuel', fuel: 'gas', net: '~500' }],
];

const SIZES: readonly Case[] = [
  ['pot D 16cm H 9cm', { kind: 'pot', d: 160, h: 90 }],
  ['pot dia. 160 mm ht. 90 mm', { kind: 'pot', d: 160, h: 90 }],
  ['garnek śr. 16 cm wys. 9 cm', { kind: 'pot', d: 160, h: 90 }],
  ['鍋 直径16cm 高さ9cm 1.5リットル', { kind: 'pot', ml: [1500], d: 160, h: 90 }],
  ['pot W 16 x H 9 cm', { kind: 'pot', d: 160, h: 90 }],
  ['pot (D)16 x (H)9 cm', { kind: 'pot', d: 160, h: 90 }],
  ['casserole diam. 16 haut. 9 cm', { kind: 'pot', d: '~160', h: 90 }],
  ['pentola ø24 h12', { kind: 'pot', d: '~240', h: '~120' }],
  ['Topf 18x11 2,5l', { kind: 'pot', ml: [2500], d: '~180', h: '~110' }],
  ['Topf 160x90', { kind: 'pot', d: '~160', h: '~90' }],
  ['Mess tin 17 x 13 x 6', { kind: 'pot', box: '~[170,130]', h: '~60' }],
  ['olla 2 l 20x10 cm', { kind: 'pot', ml: [2000], d: 200, h: 100 }],
  ['stainless pot 18/10 cm', { kind: 'pot', d: '~180', h: '~100', material: 'steel' }],
  ['Pfanne 24er', { kind: 'pan', d: '~240' }],
  ['24er Pfanne 1,1 kg', { kind: 'pan', g: 1100, d: '~240' }],
  ['poêle de 24', { kind: 'pan', d: '~240' }],
  ['Griddle 26 x 20 cm', { kind: 'pan', box: [260, 200] }],
  ['pan 24 x 5 cm', { kind: 'pan', d: 240, h: 50 }],
  // The word after a length is of it; counts, several widths and names are no sizes.
  ['pot 16 cm wide 9 cm high', { kind: 'pot', d: 160, h: 90 }],
  ['pots 16/18/20 cm', { kind: 'pot', n: '?' }],
  ['mugs 2 x 450 ml', { kind: 'mug', n: 2, ml: [450] }],
  ['plates 4 x 22 cm', { kind: 'other-cook', n: 4, d: 220 }],
  ['2 pans', { kind: 'pan', n: 2 }],
  ['wide 2 pots', { kind: 'pot', n: 2 }],
  ['Kettle h 2', { kind: 'kettle' }],
];

const COUNTS: readonly Case[] = [
  ['Zorvik T-5 stove 95g', { kind: 'stove', g: 95 }],
  ['2nd pot 1 l', { kind: 'pot', ml: [1000] }],
  ['Gamelles 1,4 L et 0,9 L', { kind: 'pot', n: '~2', ml: [1400, 900] }],
  ['0.6 L bottle of fuel half full', { kind: 'fuel', ml: [600] }],
  ['2 no. 1L bottles', { kind: 'bottle', n: 2, ml: [1000] }],
  ['No. 2 pot 1.5 L', { kind: 'pot', ml: [1500] }],
  ['Tazza 0,3 l (n. 4)', { kind: 'mug', n: 4, ml: [300] }],
  ['Trockenbrennstoff 12 Tabletten à 14 g', { kind: 'fuel', n: 12, fuel: 'solid-fuel', net: 14 }],
  ['no pot, 2 mugs', { kind: 'pot', carried: false }, { kind: 'mug', n: 2 }],
  // The dash of a list, a count tied to its unit.
  ['2 pots 1 l', { kind: 'pot', n: 2, ml: [1000] }],
  ['3er Topfset', { kind: 'pot' }],
];

/** What a mass is of, beside what it is. */
const OF_WHAT: readonly (readonly [text: string, grams: number, basis: 'each' | 'line' | undefined])[] = [
  ['mugs 2x80g', 80, 'each'],
  ['lids 2 x 45 g', 45, 'each'],
  ['mug 80g x 2 = 160g', 80, 'each'],
  ['mugs 2 x 80g = 160g', 160, 'line'],
  ['3 mugs (90 g/pc)', 90, 'each'],
  ['3 mugs (90 g per mug)', 90, 'each'],
  ['3 Löffel (zus. 45 g)', 45, 'line'],
  ['2 pots (1 L, 140 g; 2 L, 220 g)', 360, 'line'],
  ['kåsor 2 st, 60 g/st', 60, 'each'],
  ['2 кружки по 80 г', 80, 'each'],
  ['2 mugs, 160 g in total', 160, 'line'],
  // Nothing tells, and a slash that begins no unit.
  ['3 mugs 90 g', 90, undefined],
  ['2 mugs 90 g / tin', 90, undefined],
];

const OF_ANOTHER: readonly Case[] = [
  ['Pot fits 110g canister inside', { kind: 'pot' }],
  ['pot 750 ml fits a 230 g canister', { kind: 'pot', ml: [750] }],
  ['stove for 230g canisters 45 g', { kind: 'stove', g: 45 }],
  ['Kocher für 230-g-Kartuschen, 88 g', { kind: 'stove', g: 88, stove: 'gas' }],
  ['réchaud pour cartouche 230 g, 88 g', { kind: 'stove', g: 88, stove: 'gas' }],
  ['hornillo para cartuchos de 230 g, 95 g', { kind: 'stove', g: 95, stove: 'gas' }],
  // After people and days a thing of its own; one figure, of the only thing.
  ['2 mugs for 4 people, 230 g canister', { kind: 'mug', n: 2 }, { kind: 'fuel', fuel: '~gas', net: 230 }],
  ['gas for stove 230 g', { kind: 'fuel', fuel: 'gas', net: 230 }],
  ['For 4 x 1 L bottles', { kind: 'bottle', n: 4, ml: [1000] }],
];

describe('the mass of one or of all', () => {
  for (const [text, grams, basis] of OF_WHAT)
    it(text, () => {
      const [item] = readList(`- ${text}`).items;
      expect([valueOf(item!.massG), item!.massBasis]).toEqual([grams, basis]);
    });
});

describe.each([
  ['the unit goes first', LED_BY_THE_UNIT],
  ['units and halves', UNITS],
  ['grades of steel, prices, watts', NO_QUANTITIES],
  ['several sizes under one unit', SETS],
  ['ounces', OUNCES],
  ['figures of what a thing goes with', OF_ANOTHER],
  ['diameters and heights', SIZES],
  ['names that look like counts', COUNTS],
  ['what is in a can and what it weighs', FUEL],
] as const)('%s', (_name, cases) => {
  for (const [text, ...items] of cases)
    it(text, () => {
      expect(read(text)).toEqual(items);
    });
});
