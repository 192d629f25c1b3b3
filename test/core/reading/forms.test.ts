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

const SECTIONS: readonly Case[] = [
  [
    'heads that name the section',
    [
      'Kitchen\tQty\tWeight (g)',
      'Canister 230\t1\t375',
      '',
      'Sleep\tQty\tWeight (g)',
      'Canister 230\t1\t375',
      '',
      'Water\tg',
      'Bag 2 L\t40',
    ],
    [
      { kind: 'fuel', g: 375, fuel: '~gas', net: '~230' },
      { kind: 'bladder', ml: [2000], g: 40 },
    ],
  ],
  [
    'a table that describes one thing',
    [
      '# Zorvik Storm Pot',
      '',
      'Capacity\t1.3 L',
      'Weight\t182 g',
      'Diameter\t14 cm',
      '',
      '# Elsewhere',
      '',
      'Weight\t5 kg',
    ],
    [{ kind: '~pot', ml: [1300], g: 182, d: 140 }],
  ],
  [
    'the same of a page',
    [
      '<h1>Zorvik Storm Pot</h1><table><tr><td>Capacity</td><td>1.3 L</td></tr><tr><td>Height</td><td>9 cm</td></tr></table>',
    ],
    [{ kind: '~pot', ml: [1300], h: 90 }],
  ],
  [
    'what weighs the thing already, and a row of the list',
    ['Pot 1 L\t140 g', 'Weight\t182 g', 'Mug\t60 g'],
    [
      { kind: 'pot', ml: [1000], g: 140 },
      { kind: 'mug', g: 60 },
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
    'two tables side by side, with the same heads',
    ['Shelter\tg\tKitchen\tg', 'Tent\t1450\tPot 1 L\t140', 'Pegs\t120\tGas stove\t88', 'Mat\t410\tMug\t'],
    [{ kind: 'pot', ml: [1000], g: 140 }, { kind: 'stove', g: 88, stove: 'gas' }, { kind: 'mug' }],
  ],
  [
    'two tables side by side, both of kit',
    ['Item\tWeight\tItem\tWeight', 'Pot 1 L\t140 g\tTent\t1800 g', 'Mug\t60 g\tSpoon\t12 g'],
    [
      { kind: 'pot', ml: [1000], g: 140 },
      { kind: 'mug', g: 60 },
      { kind: 'utensil', g: 12 },
    ],
  ],
  [
    'what two things a thing is for, and a thing beside it',
    ['- lid for the kettle and the mug', '- lid for the kettle, and a mug 300 ml'],
    [{ kind: 'lid' }, { kind: 'lid' }, { kind: 'mug', ml: [300] }],
  ],
  [
    // No second table begins with a count.
    'one table with the same head twice',
    ['Item\tg\tQty\tg', 'Pot 1 L\t140\t1\t140', 'Mug\t60\t2\t120'],
    [
      { kind: 'pot', ml: [1000], g: 140 },
      { kind: 'mug', n: 2, g: 60 },
    ],
  ],
  [
    'ounces of what goes before',
    ['Tent 38 oz Pot 900 ml 4.1 oz', 'Plimt 16 oz mug 4 oz'],
    [
      { kind: 'pot', ml: [900], g: 116 },
      { kind: 'mug', ml: [473], g: 113 },
    ],
  ],
  [
    'names in bold before a colon',
    [
      '<ul><li><strong>Stove:</strong> Draskel spirit burner (18&nbsp;g)</li><li><strong>Pot:</strong> 850 ml</li></ul>',
    ],
    [
      { kind: 'stove', g: 18, stove: 'alcohol' },
      { kind: 'pot', ml: [850] },
    ],
  ],
  [
    'figures struck through',
    ['- [x] Stove ~~120 g~~ 80 g', '- [x] ~~Frying pan 20 cm~~'],
    [
      { kind: 'stove', g: 80 },
      { kind: 'pan', d: 200, carried: false },
    ],
  ],
  [
    'an aside that has its own object before the article',
    ['Llevamos entre los dos una olla de 1,4 litros (190 g), y un hornillo de gas de 85 g para la olla.'],
    [
      { kind: 'pot', ml: [1400], g: 190 },
      { kind: 'stove', g: 85, stove: 'gas' },
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

const STACKS: readonly Case[] = [
  [
    'cells one below the other, with their heads',
    ['Gear', 'Notes', 'Qty', 'Weight (oz)', 'Kitchen', 'Pot 1.1 L', 'with lid', '1', '5.2', 'Mug', 'steel', '2', '2.5'],
    [
      { kind: 'pot', ml: [1100], g: 147, lid: true },
      { kind: 'mug', n: 2, g: 71, material: 'steel' },
    ],
  ],
  [
    'cells one below the other without heads, blank lines between, one of them under its own section',
    [
      'Topf 1,2 l',
      '',
      '1',
      '',
      '210 g',
      '',
      'Becher',
      '',
      '2',
      '',
      '60 g',
      '',
      'Wasser',
      '',
      'Flasche',
      '',
      '2',
      '',
      '90 g',
    ],
    [
      { kind: 'pot', ml: [1200], g: 210 },
      { kind: 'mug', n: 2, g: 60 },
      { kind: 'bottle', n: 2, g: 90 },
    ],
  ],
  [
    'cells of a page without a table',
    [
      '<div><div>Pot 1.3 L</div><div>1</div><div>185 g</div></div>',
      '<div><div>Gas stove</div><div>1</div><div>92 g</div></div>',
    ],
    [
      { kind: 'pot', ml: [1300], g: 185 },
      { kind: 'stove', g: 92, stove: 'gas' },
    ],
  ],
  [
    'names and their counts',
    ['Pot', '1', 'Mugs', '4', 'Bowls', '4'],
    [{ kind: 'pot' }, { kind: 'mug', n: 4 }, { kind: 'bowl', n: 4 }],
  ],
  // 1, 2, 3 number the things, and figures that could be anything are none of ours.
  [
    'numbers between names',
    ['Kitchen:', 'Kettle', '1', 'Mug', '2', 'Bowl', '3'],
    [{ kind: 'kettle' }, { kind: 'mug' }, { kind: 'bowl' }],
  ],
  [
    'prices and figures without a unit',
    ['Pot 1 L', '1', '120', '39.95', 'Stove', '1', '80', '29.00'],
    [{ kind: 'pot', ml: [1000] }, { kind: 'stove' }],
  ],
  [
    'one figure below a name by chance',
    ['Pot 1 L', '2', 'I wonder whether that is enough.', 'Mug'],
    [{ kind: 'pot', ml: [1000] }, { kind: 'mug' }],
  ],
];

const FIELDS: readonly Case[] = [
  [
    'a line for each of its fields',
    [
      'Name: Pot 1.2 L',
      'Weight: 165 g (without lid 120 g)',
      'Dimensions: Ø 12.5 x 8 cm',
      'Material: titanium',
      '',
      'Name: Mug',
      'Weight: 65 g',
      'Qty: 2',
    ],
    [
      { kind: 'pot', ml: [1200], g: 165, d: 125, h: 80, material: 'titanium' },
      { kind: 'mug', n: 2, g: 65 },
    ],
  ],
  [
    'an outline whose headings are the things',
    ['* Küche', '** Topf', '   - Volumen: 1,2 l', '   - Gewicht: 165 g', '   - Material: Titan'],
    [{ kind: '~pot', ml: [1200], g: 165, material: 'titanium' }],
  ],
  [
    'a label that tells of something else, or not right below',
    ['- Pot 1 L', 'Weight: 8.2 kg base', '- Mug', 'Gear: 5 kg', '- Bowl', '', 'Weight: 7 kg'],
    [{ kind: 'pot', ml: [1000] }, { kind: 'mug' }, { kind: 'bowl' }],
  ],
  [
    'nested bullets, the upper ones of which only say of what sort the lower ones are',
    [
      '- Mugs',
      '  - 300 ml steel',
      '  - 450 ml titanium',
      '- Stove',
      '  - gas burner, 85 g',
      '- Pan',
      '  - lid',
      '- Pots',
      '  - a big and a small one',
    ],
    [
      { kind: '~mug', ml: [300], material: 'steel' },
      { kind: '~mug', ml: [450], material: 'titanium' },
      { kind: 'stove', g: 85, stove: 'gas' },
      { kind: 'pan' },
      { kind: 'lid' },
      { kind: 'pot', n: '?' },
    ],
  ],
];

const FORUM: readonly Case[] = [
  [
    'a forum post',
    [
      '[b]Kochen[/b]',
      '[list]',
      '[*]Topf 1,3L Alu 180g',
      '[*][url=https://example.org/b]Becher[/url] 0,4L 90g',
      '[*][b]Kocher:[/b] Gas, 95 g',
      '[/list]',
      '[b]Schlafen[/b]',
      '[list]',
      '[*]Flasche für die Nacht, 1 l',
      '[/list]',
    ],
    [
      { kind: 'pot', ml: [1300], g: 180, material: 'aluminium' },
      { kind: 'mug', ml: [400], g: 90 },
      { kind: 'stove', g: 95, stove: 'gas' },
      { kind: 'bottle', ml: [1000] },
    ],
  ],
  [
    'brackets that are no tags',
    ['- [x] pot [1.2 L]', '- [ ] mug [blue]', '- lid [b-ware] 20 g'],
    [{ kind: 'pot', ml: [1200] }, { kind: 'mug' }, { kind: 'lid', g: 20 }],
  ],
  [
    'a section in bold right below the list before it',
    ['**Kitchen**', 'Pot 1 L', 'Lighter', '**Repair**', 'Lighter, fuel 100 ml'],
    [
      { kind: 'pot', ml: [1000] },
      { kind: 'other-cook', role: 'lighter' },
    ],
  ],
];

const NOTES: readonly Case[] = [
  [
    'a sentence before the list is none of it, whatever it ends in',
    [
      "Here's my cook kit for the high route in September, let me know what you think",
      'Pot: 700 ml',
      'Spoon: long, 0.5 oz',
    ],
    [
      { kind: 'pot', ml: [700] },
      { kind: 'utensil', g: 14 },
    ],
  ],
  [
    'a line of many things is one, whatever it ends in',
    ['pot, pan, kettle, mug, bowl, spoon, fork, windscreen, stove, rope, map, whistle, tent', 'compass'],
    ['pot', 'pan', 'kettle', 'mug', 'bowl', 'utensil', 'utensil', 'windscreen', 'stove'].map((kind) => ({ kind })),
  ],
  [
    'a counting word before a size counts what comes after',
    ['coffee pot 1.5 l, two 6 l dry sacks'],
    [{ kind: 'kettle', ml: [1500] }],
  ],
  [
    'a thing alone on its line heads nothing where others stand alone before it',
    ['# Cuisine', 'Veste de pluie', 'réchaud', 'réchaud à gaz – 230 g'],
    [{ kind: 'stove' }, { kind: 'stove', g: 230, stove: 'gas' }],
  ],
  [
    'what a page strikes through does not go along',
    [
      '<ul><li>Pot 1 l</li><li><s>Mug 300 ml</s></li><li><del>pan</del> gas stove</li><li><strong>spoon</strong></li></ul>',
    ],
    [
      { kind: 'pot', ml: [1000] },
      { kind: 'mug', ml: [300], carried: false },
      { kind: 'pan', carried: false },
      { kind: 'stove', stove: 'gas' },
      { kind: 'utensil' },
    ],
  ],
  [
    'a question at the end asks, and a question mark behind a thing doubts',
    ['palnik gazowy 110 g', 'garnek 1,5 l', 'Czy starczy gazu?'],
    [
      { kind: 'stove', g: 110, stove: 'gas' },
      { kind: 'pot', ml: [1500] },
    ],
  ],
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

const FIGURES: readonly Case[] = [
  [
    'masses that go before the names',
    ['145 g  Pot 1 L', '375 g  Gas canister 230 g', '2.1 oz - mug', '16.9 oz bottle'],
    [
      { kind: 'pot', ml: [1000], g: 145 },
      { kind: 'fuel', fuel: 'gas', net: 230, g: 375 },
      { kind: 'mug', g: 60 },
      { kind: 'bottle', ml: [500] },
    ],
  ],
  [
    'pounds and ounces in two columns, and ounces alone',
    ['Item\tlb\toz', 'Dutch oven\t9\t4', 'Stove\t\t3', 'Kettle\t1.5\t24'],
    [
      { kind: 'pot', g: 4196 },
      { kind: 'stove', g: 85 },
      { kind: 'kettle', g: 680 },
    ],
  ],
  [
    'the same mass twice, and a count before a leader',
    ['Mug: 60 g = 2.1 oz', 'Bowls x2 ...... 70 g'],
    [
      { kind: 'mug', g: 60 },
      { kind: 'bowl', n: 2, g: 70 },
    ],
  ],
  [
    'a sentence of what each brings, below one of what all share',
    ['We namen een gasbrander van 90 gram en twee gasblikken van 230 gram. Ieder een eigen beker van 300 ml.'],
    [
      { kind: 'stove', g: 90, stove: 'gas' },
      { kind: 'fuel', n: 2, fuel: '~gas', net: 230 },
      { kind: 'mug', ml: [300], perPerson: true },
    ],
  ],
];

describe('the forms of lists', () => {
  it.each([...TABLES, ...SECTIONS, ...PAGES, ...STACKS, ...FIELDS, ...FORUM, ...NOTES, ...FIGURES])(
    '%s',
    (_form, lines, items) => {
      expect(readList(lines.join('\n')).items.map(told)).toEqual(items);
    },
  );

  it('takes the quotation marks of cells for no inches', () => {
    const text = '"Topf";"1";"165"\n"Becher";"2";"58"\n"Löffel";"2";"12"\n"Kocher";"1";"90"';
    expect(readList(text).units).toBe('metric');
    expect(readList('pot 5.5" x 4"\nlid 5.5"').units).toBe('us');
  });
});
