import { describe, expect, it } from 'vitest';
import { readList } from '../../../core/reading/index.js';
import { told } from '../../reading/told.js';

/** Whole texts in the forms in which lists arrive, each with the things that a careful person finds in it. The makers are invented. */
type Case = readonly [form: string, lines: readonly string[], items: readonly Record<string, unknown>[]];

const TABLES: readonly Case[] = [
  [
    'a sheet with an empty first column, sections of one cell, and a column of masses for each unit',
    [
      '\tItem\tQty\tWeight (oz)\tWeight (g)\tTotal (g)\tWorn?\tLink',
      '\tKitchen',
      '\tZorvik 900 ml pot\t1\t4.3\t122\t122\t\thttps://example.org/z',
      '\tMug 450ml\t2\t2.1\t60\t120\t\t',
      '',
      '\tLong spoon\t2\t0.6\t17\t34\t',
      '\tSubtotal\t\t\t\t742\t\t',
    ],
    [
      { kind: 'pot', ml: [900], g: 122 },
      { kind: 'mug', n: 2, ml: [450], g: 60 },
      { kind: 'utensil', n: 2, g: 17 },
    ],
  ],
  [
    // The second table has more columns than the first: nobody knows of what.
    'a table without a head below another table',
    ['Item\tQty\tWeight (g)', 'Pot 1 L\t1\t120', '', 'Mug\tred\t300 ml\t2', 'Bowl\tblue\t500 ml\t2'],
    [
      { kind: 'pot', ml: [1000], g: 120 },
      { kind: 'mug', n: 2, ml: [300] },
      { kind: 'bowl', n: 2, ml: [500] },
    ],
  ],
  [
    'figures in a column without a head are no counts where they are too large',
    ['Pot 1.6L\t220', 'Gas stove\t95', 'Mug\t60', 'Spoons\t3'],
    [{ kind: 'pot', ml: [1600] }, { kind: 'stove', stove: 'gas' }, { kind: 'mug' }, { kind: 'utensil', n: 3 }],
  ],
  [
    'what the column beside the name tells of a thing is no further thing',
    [
      'Category,Item,desc,qty,weight,unit,price',
      'Cooking,Stove,gas burner,1,73,g,39.95',
      'Cooking,Mug,fits in the pot,1,4.1,oz,35',
      'Cooking,Lid,for the pot,1,30,g,0',
    ],
    [
      { kind: 'stove', g: 73, stove: 'gas' },
      { kind: 'mug', g: 116 },
      { kind: 'lid', g: 30 },
    ],
  ],
  [
    'cells that copying has run together, with units',
    ['NameQtyWeight', 'Pot 0.9 L1118 g', 'Mug255 g', 'Spoon212 g'],
    [
      { kind: 'pot', ml: [900], g: '~118' },
      { kind: 'mug', n: '~2', g: '~55' },
      { kind: 'utensil', n: '~2', g: '~12' },
    ],
  ],
];

const PAGES: readonly Case[] = [
  [
    'a list of terms, each with what is said of it',
    [
      '<h2>Küche</h2>',
      '<dl><dt>Topf</dt><dd>1,5 Liter, 340 g</dd><dt>Kocher</dt><dd>Benzinkocher, 320 g</dd>',
      '<dt>Becher</dt><dd>2 Stück, je 70 g</dd></dl>',
    ],
    [
      { kind: 'pot', ml: [1500], g: 340 },
      { kind: 'stove', g: 320, stove: 'liquid-fuel' },
      { kind: 'mug', n: 2, g: 70 },
    ],
  ],
  [
    'two columns of a page on one line',
    [
      'Tente 1200g Popote alu 1L 160g',
      'Duvet 850g Réchaud gaz 95g',
      'Matelas 400g Cartouche 230g',
      'Frontale 80g Tasse 55g',
    ],
    [
      { kind: 'pot', ml: [1000], g: 160, material: 'aluminium' },
      { kind: 'stove', g: 95, stove: 'gas' },
      { kind: 'fuel', fuel: '~gas', net: 230 },
      { kind: 'mug', g: 55 },
    ],
  ],
  [
    'a maker before the figure of a can, and a material before that of a pot',
    ['Humblefern 110 g gas canister 200 g', 'Titanium 120 g pot'],
    [
      { kind: 'fuel', fuel: 'gas', net: 110, g: 200 },
      { kind: 'pot', g: 120, material: 'titanium' },
    ],
  ],
];

const NOTES: readonly Case[] = [
  [
    'counts with a dash behind them, as the other lines show',
    ['1 - 8 qt pot', '1 - skillet', '10 - cups', '2 - lanterns', '2 - 5 gal water jugs'],
    [{ kind: 'pot', ml: [7571] }, { kind: 'pan' }, { kind: 'mug', n: 10 }, { kind: 'bottle', n: 2, ml: [18927] }],
  ],
  [
    'a range with a dash is one where no other line counts so',
    ['2 - 5 gal water jug', 'skillet', '10 cups'],
    [{ kind: 'bottle', ml: ['7571–18927'] }, { kind: 'pan' }, { kind: 'mug', n: 10 }],
  ],
  [
    'a name, a dash and a sentence',
    [
      'Pot – the 900 ml Humblefern, 118 g with lid',
      'Stove – a little gas burner, 45 g, no igniter',
      'Fuel – one 110 g canister is plenty',
      'Mug – none, I drink from the pot',
      'Lid – no handle on it, 20 g',
    ],
    [
      { kind: 'pot', ml: [900], g: 118, lid: true },
      { kind: 'stove', g: 45, stove: 'gas' },
      { kind: 'fuel', fuel: '~gas', net: 110 },
      { kind: 'mug', carried: false },
      { kind: 'lid', g: 20 },
    ],
  ],
  [
    'two pots with a dash between them are two',
    ['- pot 1 L – pot 2 L'],
    [
      { kind: 'pot', ml: [1000] },
      { kind: 'pot', ml: [2000] },
    ],
  ],
  [
    'bullets with no space behind them',
    ['-pot 1.2l', '*spork', '•lighter', '*big mug* 300 ml'],
    [
      { kind: 'pot', ml: [1200] },
      { kind: 'utensil' },
      { kind: 'other-cook', role: 'lighter' },
      { kind: 'mug', ml: [300] },
    ],
  ],
  [
    'an export of records in braces',
    [
      '{ "kitchen": [',
      '  { "item": "Pot 1.1 L", "qty": 1, "weight_g": 152 },',
      '  { "item": "Alcohol", "ml": 250 },',
      '  { "item": "Mug", "qty": 2, "weight_g": 55 }',
      '] }',
    ],
    [
      { kind: 'pot', ml: [1100], g: 152 },
      { kind: 'fuel', fuel: 'alcohol', liquid: 250 },
      { kind: 'mug', n: 2, g: 55 },
    ],
  ],
];

describe('the forms of lists', () => {
  it.each([...TABLES, ...PAGES, ...NOTES])('%s', (_form, lines, items) => {
    expect(readList(lines.join('\n')).items.map(told)).toEqual(items);
  });

  it('takes the quotation marks of cells for no inches', () => {
    const text = '"Topf";"1";"165"\n"Becher";"2";"58"\n"Löffel";"2";"12"\n"Kocher";"1";"90"';
    expect(readList(text).units).toBe('metric');
    expect(readList('pot 5.5" x 4"\nlid 5.5"').units).toBe('us');
  });
});
