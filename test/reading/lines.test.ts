import { describe, expect, it } from 'vitest';
import { readList } from '../../core/index.js';
import type { Assumed } from '../../core/model/given.js';
import { told } from './told.js';

/**
 * A hundred lines as people write them, each with what a careful person takes from it. A line that needs a heading,
 * a head of columns or a doubt of its own stands here with it. The maker names are invented.
 */
type Case = readonly [line: number | string, text: string, items: readonly Record<string, unknown>[]];

const PLAIN: readonly Case[] = [
  [1, 'Ti 750 pot', [{ kind: 'pot', ml: ['~750'], material: 'titanium' }]],
  [2, 'Titanium Pot (750ml)   100 g', [{ kind: 'pot', ml: [750], g: 100, material: 'titanium' }]],
  [3, 'Pot: 1.1L w/ lid — 187g', [{ kind: 'pot', ml: [1100], g: 187, lid: true }]],
  [4, '- cook pot', [{ kind: 'pot' }]],
  [5, 'Kochtopf 1,3 l Alu, 210 g', [{ kind: 'pot', ml: [1300], g: 210, material: 'aluminium' }]],
  [6, 'Popote titane 0,9L (135 g)', [{ kind: 'pot', ml: [900], g: 135, material: 'titanium' }]],
  [7, 'Olla aluminio 1.5 lts 250grs', [{ kind: 'pot', ml: [1500], g: 250, material: 'aluminium' }]],
  [8, 'Kastrull 1,5 l + lock', [{ kind: 'pot', ml: [1500], lid: true }]],
  [9, 'Kjele 2,5L m/lokk', [{ kind: 'pot', ml: [2500], lid: true }]],
  [10, 'Garnek stal nierdzewna 2 l', [{ kind: 'pot', ml: [2000], material: 'steel' }]],
  [11, 'クッカー 900ml チタン 130g', [{ kind: 'pot', ml: [900], g: 130, material: 'titanium' }]],
  // Two measures of raw rice say what it cooks; what it holds is left open.
  [12, '飯盒 2合炊き 165g', [{ kind: 'pot', g: 165 }]],
  [13, 'котелок 3л', [{ kind: 'pot', ml: [3000], bail: '~true' }]],
  [14, 'Billy can 14cm / 2.3L stainless', [{ kind: 'pot', ml: [2300], d: 140, material: 'steel', bail: '~true' }]],
];

const UNITS: readonly Case[] = [
  [15, '16 oz mug', [{ kind: 'mug', ml: [473] }]],
  [16, 'Mug 2.4 oz', [{ kind: 'mug', g: 68 }]],
  [17, 'Steel mug, 24oz, 5.9 oz', [{ kind: 'mug', ml: [710], g: 167, material: 'steel' }]],
  [18, 'Pot 28 fl. oz.', [{ kind: 'pot', ml: [828] }]],
  [19, '2 qt pot 11 oz', [{ kind: 'pot', ml: [1893], g: 312 }]],
  [20, 'Pint pot', [{ kind: 'pot', ml: ['~473'] }]],
  [21, '3 cup kettle', [{ kind: 'kettle', ml: [710] }]],
  [22, '1 lb 2 oz cook set', [{ kind: 'pot', g: 510 }]],
  [23, 'Topf 1.350 ml', [{ kind: 'pot', ml: [1350] }]],
  [24, 'Topf 1.350 g?', [{ kind: 'pot', g: '~1350' }]],
  [25, 'Pot 12cl', [{ kind: 'pot', ml: ['~120'] }]],
  [26, 'pot, 900', [{ kind: 'pot', ml: ['~900'] }]],
  [27, 'Pot 1.3', [{ kind: 'pot', ml: ['~1300'] }]],
  [28, 'Cookpot 0.6kg 4l', [{ kind: 'pot', ml: [4000], g: 600 }]],
  [29, 'Pot ... 8 (oz)', [{ kind: 'pot', g: 227 }]],
];

const DIMENSIONS: readonly Case[] = [
  [30, 'Pot Ø13 x 9 cm', [{ kind: 'pot', d: 130, h: 90 }]],
  [31, 'Zorvik cup 95mm dia x 80mm h, 16oz', [{ kind: 'mug', ml: [473], d: 95, h: 80 }]],
  [32, 'Pot 5.5" x 4"', [{ kind: 'pot', d: 140, h: 102 }]],
  [33, 'Stockpot 20cm', [{ kind: 'pot', d: 200 }]],
  [
    34,
    'Mess tin 17x13x6cm, alu, folding handle',
    [{ kind: 'pot', box: [170, 130], h: 60, material: 'aluminium', handles: true }],
  ],
  // Ø 90 × 140 comes nearer to the litre; which is which is still a guess.
  [35, 'Pot, 9x14 (cm), 1L', [{ kind: 'pot', ml: [1000], d: '~90', h: '~140' }]],
  [36, 'Hot pot d=160 h=110 handles folded', [{ kind: 'pot', d: '~160', h: '~110', handles: true }]],
  [37, '10-12" fry pan', [{ kind: 'pan', d: '254–305' }]],
];

const SETS: readonly Case[] = [
  [38, '1.3L/0.9L set, 260 g', [{ kind: '~pot', n: '~2', ml: [1300, 900], g: 260 }]],
  [39, 'Cookset (2 pots, pan, 2 lids) 520g', [{ kind: 'pot', n: 2, g: 520, lid: true }, { kind: 'pan' }]],
  [40, '2 Töpfe á 1000ml und 780ml, 330 g', [{ kind: 'pot', n: 2, ml: [1000, 780], g: 330 }]],
  [41, '2x 1L pots nested', [{ kind: 'pot', n: 2, ml: [1000] }]],
  [42, '1,5 + 2,5 L kastruller', [{ kind: 'pot', n: '~2', ml: [1500, 2500] }]],
  [43, '3 nesting pots (S/M/L)', [{ kind: 'pot', n: 3 }]],
  [44, 'Large Pot: 8-10 qt.', [{ kind: 'pot', ml: ['7571–9464'] }]],
  [45, 'Medium Pot w/ lid: 4 qt.', [{ kind: 'pot', ml: [3785], lid: true }]],
  // A coffee pot's "cup" may be 150–180 mL as well as 237 mL.
  [46, 'Coffee Pot: 8 cup min per group', [{ kind: 'kettle', ml: ['~1893'], perGroup: true }]],
  [47, 'Pot set (one medium and one small)', [{ kind: 'pot', n: 2 }]],
  [48, '4x bowl+cup, 1 big pot shared', [{ kind: 'bowl', n: 4 }, { kind: 'mug', n: 4 }, { kind: 'pot' }]],
  [49, 'Mugs (x2) 450ml', [{ kind: 'mug', n: 2, ml: [450] }]],
  [50, 'Alu-Geschirr BW, 3-teilig', [{ kind: 'pot', material: 'aluminium' }]],
  // A pan-lid is both; it is listed as a pan, which is what it can be cooked in.
  [
    51,
    'Pot + pan-lid 101g + 65g',
    [
      { kind: 'pot', g: 101 },
      { kind: 'pan', g: 65 },
    ],
  ],
  [
    52,
    '750ml pot (89g, lid 12g)',
    [
      { kind: 'pot', ml: [750], g: '~89' },
      { kind: 'lid', g: 12 },
    ],
  ],
];

const FIRE: readonly Case[] = [
  [53, 'Stove 73g', [{ kind: 'stove', g: 73 }]],
  [54, 'Remote canister stove + windscreen', [{ kind: 'stove', stove: 'gas', form: 'remote' }, { kind: 'windscreen' }]],
  [
    55,
    'Upright gas stove w/ foil windscreen',
    [{ kind: 'stove', stove: 'gas', form: 'upright' }, { kind: 'windscreen' }],
  ],
  [56, 'Gas 230g', [{ kind: 'fuel', fuel: 'gas', net: 230 }]],
  [57, 'Canister 213g', [{ kind: 'fuel', fuel: '~gas', g: 213 }]],
  [58, '2 gas (110)', [{ kind: 'fuel', n: 2, fuel: 'gas', net: '~110' }]],
  [59, 'fuel 8oz', [{ kind: 'fuel', net: '~227' }]],
  [60, 'White gas, 20 fl oz bottle', [{ kind: 'fuel', fuel: 'liquid-fuel', ml: [591] }]],
  [61, 'Fuel bottle 0.6 l (95 g)', [{ kind: 'fuel', ml: [600], g: 95 }]],
  [62, 'Meths 300ml', [{ kind: 'fuel', fuel: 'alcohol', liquid: 300 }]],
  [63, 'Spirit bottle 1l / week', [{ kind: 'fuel', fuel: 'alcohol', ml: [1000] }]],
  [64, 'Fuel tabs 6 x 14g', [{ kind: 'fuel', n: 6, fuel: 'solid-fuel', net: 14 }]],
  [65, '12 tabletek', [{ kind: '~fuel', n: 12, fuel: '~solid-fuel' }]],
  [66, 'Cartouche de gaz 450 ml ~400g', [{ kind: 'fuel', fuel: 'gas', net: '~450', g: 400 }]],
  [67, 'Gas canister (half)', [{ kind: 'fuel', fuel: 'gas' }]],
  // 1 040 g is more than one can weighs: the count and the mass do not agree.
  [68, 'Gassboks 1 stk 1040 g', [{ kind: 'fuel', fuel: '~gas', g: '~1040' }]],
  [69, 'Twig stove 150g, pot sits on ring Ø 10cm', [{ kind: 'stove', stove: 'wood', g: 150, supports: 100 }]],
  [70, 'Folding stick stove 5" + grill', [{ kind: 'stove', stove: 'wood', size: 127 }, { kind: 'other-cook' }]],
  [71, 'Integrated system 0.8L 415g', [{ kind: 'stove', stove: 'integrated', ml: [800], g: 415 }]],
  [72, 'OD缶110', [{ kind: 'fuel', fuel: '~gas', net: '~110' }]],
  [73, 'no stove (cold soak)', [{ kind: 'stove', carried: false }]],
];

const OTHER: readonly Case[] = [
  [74, 'Pot w/ bail (no side handles)', [{ kind: 'pot', bail: true, handles: false }]],
  [75, 'Pot lifter 30g', [{ kind: 'other-cook', g: 30, role: 'gripper' }]],
  ['75b', 'pot gripper', [{ kind: 'other-cook', role: 'gripper' }]],
  // A cosy is cook kit, and no pot.
  [76, 'Pot cozy 20 g', [{ kind: 'other-cook', g: 20 }]],
  ['76b', 'Topflappen', []],
  ['76c', 'potato mash', []],
  ['76d', 'rain pants', []],
  ['76e', 'canoe panniers', []],
  [77, 'Lid: pie tin 5g', [{ kind: 'lid', g: 5 }]],
  [78, 'Alu foil', [{ kind: 'other-cook', material: 'aluminium', role: 'foil' }]],
  // The spoon is listed, as what one eats with; the scrubber is not.
  [79, 'Wood spoon, pot scrubber, cup', [{ kind: 'utensil', material: 'wood' }, { kind: 'mug' }]],
];

const NASTY: readonly Case[] = [
  [80, 'PotAnzahlGewicht [g]', []],
  [81, 'PotAnzahlGewicht [g]\nTopf Ti1154', [{ kind: 'pot', g: '~154', material: 'titanium' }]],
  [
    82,
    'Réchaud 48g Cartouche de gaz 175g Bouilloire titane 0,85L 127g Bol 0,4L 25g',
    [
      { kind: 'stove', g: 48 },
      { kind: 'fuel', fuel: 'gas', g: 175 },
      { kind: 'kettle', ml: [850], g: 127, material: 'titanium' },
      { kind: 'bowl', ml: [400], g: 25 },
    ],
  ],
  [
    83,
    'Kitchen: pot 0.9L 120g, stove 80g, gas 100, spork 15g',
    [
      { kind: 'pot', ml: [900], g: 120 },
      { kind: 'stove', g: 80 },
      { kind: 'fuel', fuel: 'gas', net: '~100' },
      { kind: 'utensil', g: 15 },
    ],
  ],
  [84, '| **Cookpot 1L** | | 103g | link |', [{ kind: 'pot', ml: [1000], g: 103 }]],
  [85, 'Pot\t1\t6.2\toz', [{ kind: 'pot', g: 176 }]],
  [86, 'name,shared,weight_kg\n"Cook Pot (1.5L)",Shared,0.3', [{ kind: 'pot', ml: [1500], g: 300 }]],
  [87, '☑ pot 1.2 l (borrow from Sam) ~~0.9~~', [{ kind: 'pot', ml: [1200] }]],
  [
    88,
    'POT/LID/STOVE/FUEL/LIGHTER',
    [{ kind: 'pot' }, { kind: 'lid' }, { kind: 'stove' }, { kind: 'fuel' }, { kind: 'other-cook', role: 'lighter' }],
  ],
  [
    89,
    'pot (1L) or (2L) if winter',
    [
      { kind: 'pot', ml: [1000], onlyIn: 'summer' },
      { kind: 'pot', ml: [2000], onlyIn: 'winter' },
    ],
  ],
  [90, '1 pot per 2 students, 1.5–2 L', [{ kind: 'pot', ml: ['1500–2000'] }]],
  [91, 'Trail 1200 UL II pot', [{ kind: 'pot', ml: ['~1200'] }]],
  [
    92,
    'Plimt 31 storm set, 1L+1L pots, kettle 0.6',
    [
      { kind: 'pot', n: '~2', ml: [1000, 1000] },
      { kind: 'kettle', ml: ['~600'] },
    ],
  ],
  [93, 'Cuisine 430g', []],
  ['93b', 'TOTAL 4479g', []],
  [94, 'MISC – 1 ea, pot, cooking, small, alum.', [{ kind: 'pot', material: 'aluminium' }]],
  [95, 'Topf (brauch ich den?)', [{ kind: 'pot' }]],
  [96, 'Pot 700 (holds 750 really)', [{ kind: 'pot', ml: ['~750'] }]],
  [97, 'pot 1,5 L (Deckel fehlt)', [{ kind: 'pot', ml: [1500], lid: false }]],
  // "Pott" is a word the German vocabulary knows; the Turkish one is told by its metal and its size.
  [98, 'Pott 1 L', [{ kind: 'pot', ml: [1000] }]],
  ['98b', 'Titanyum Tencere 1 L', [{ kind: '~pot', ml: [1000], material: 'titanium' }]],
  [99, 'Pot\n2L', [{ kind: 'pot', ml: [2000] }]],
  [
    100,
    'Pot 1L 110g Stove 85g Gas 110 Mug 450ml 60g Spoon',
    [
      { kind: 'pot', ml: [1000], g: 110 },
      { kind: 'stove', g: 85 },
      { kind: 'fuel', fuel: 'gas', net: '~110' },
      { kind: 'mug', ml: [450], g: 60 },
      { kind: 'utensil' },
    ],
  ],
];

describe.each([
  ['plain lines', PLAIN],
  ['units', UNITS],
  ['dimensions', DIMENSIONS],
  ['sets and counts', SETS],
  ['stoves and fuel', FIRE],
  ['handles and what is no pot', OTHER],
  ['fused, flattened and nasty', NASTY],
] as const)('%s', (_name, cases) => {
  it.each(cases)('%s: %s', (_line, text, items) => {
    expect(readList(text).items.map(told)).toEqual(items);
  });
});

/** What copying, keyboards and editors do to a line without changing what it says. */
const CHANGES: readonly (readonly [name: string, change: (line: string) => string])[] = [
  ['no-break spaces', (line) => line.replaceAll(' ', '\u00a0')],
  ['full-width digits', (line) => line.replace(/\d/g, (digit) => String.fromCharCode(0xff10 + Number(digit)))],
  ['a mark of direction', (line) => `\u200f${line}`],
  ['a byte order mark', (line) => `\ufeff${line}`],
  ['a soft hyphen', (line) => line.replace(/([a-z]{3})([a-z]{3})/, '$1\u00ad$2')],
  ['a Windows line end', (line) => `${line}\r\n`],
  ['trailing blanks', (line) => `${line}   `],
  ['a picture', (line) => `🍳 ${line}`],
  ['capitals', (line) => line.toUpperCase()],
  ['small letters', (line) => line.toLowerCase()],
  ['accents as marks of their own', (line) => line.normalize('NFD')],
  ['a space without width', (line) => line.replace(' ', '\u200b ')],
  ['typographic quotes', (line) => line.replaceAll('"', '”')],
  ['a quotation', (line) => `> ${line}`],
  ['a bullet', (line) => `- ${line}`],
  ['a ticked box', (line) => `[x] ${line}`],
];

describe('what does not change a line', () => {
  const lines = [...PLAIN, ...UNITS, ...DIMENSIONS, ...SETS, ...FIRE, ...OTHER, ...NASTY].filter(
    ([, text]) => !text.includes('\n'),
  );
  it.each(CHANGES)('%s', (_name, change) => {
    const changed = lines.map(([, text]) => [text, readList(change(text)).items.map(told)]);
    expect(changed).toEqual(lines.map(([, text, items]) => [text, items]));
  });
});

function isGuess(field: unknown): field is Assumed<unknown> {
  return typeof field === 'object' && field !== null && 'grounds' in field && field.grounds === 'assumed';
}

describe('what a line says besides its things', () => {
  it('a flattened list says that it came as one line', () => {
    expect(readList('Pot 1L 110g Stove 85g Gas 110 Mug 450ml 60g Spoon').notes).toHaveLength(1);
  });

  it('of a set of three parts nobody says how many are pots', () => {
    const [set] = readList('Alu-Geschirr BW, 3-teilig').items;
    expect(set?.quantity).toMatchObject({ grounds: 'assumed', because: expect.stringContaining('3 parts') as string });
  });

  it('a British reader has British pints, stated', () => {
    // 1 imperial pint = 568.26125 mL: UK Weights and Measures Act 1985.
    expect(readList('Pint pot', { locale: 'en-GB' }).items.map(told)).toEqual([{ kind: 'pot', ml: [568] }]);
  });

  it('every guess gives its reason and what replaces it', () => {
    const cases = [...PLAIN, ...UNITS, ...DIMENSIONS, ...SETS, ...FIRE, ...OTHER, ...NASTY];
    const guesses = cases.flatMap(([, text]) =>
      readList(text).items.flatMap((item) =>
        [...Object.values<unknown>({ ...item }), ...item.capacitiesMl].filter(isGuess),
      ),
    );
    expect(guesses.length).toBeGreaterThan(20);
    for (const guess of guesses) {
      expect(guess.because).not.toBe('');
      expect(guess.replaceWith).not.toBe('');
    }
  });
});
