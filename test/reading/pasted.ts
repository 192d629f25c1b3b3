/**
 * What real people paste, as tables: a text, and each thing that a careful person takes from it (see `told.ts`). `cases` are what a
 * rule is for; `not` are look-alikes that it must leave alone. The texts are our own, the makers invented.
 */
export interface PastedClass {
  readonly name: string;
  readonly cases: readonly PastedCase[];
  readonly not: readonly PastedCase[];
}
export type PastedCase = readonly [text: string, items: readonly Record<string, unknown>[]];

const LIGHTER = { kind: 'other-cook', role: 'lighter' };
const GAS_230 = { kind: 'fuel', fuel: 'gas', net: 230 };

const GAS_SHARES: PastedClass = {
  name: 'shares of a gas mix, in any order of words',
  cases: [
    [
      '- gas canister 230 g (70% butane 30% propane)',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- 2 canisters butane/propane 70/30, 230 g',
      [{ kind: 'fuel', n: 2, fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- Gas 450 g, 30/70 propane/butane',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { propane: 0.3, butane: 0.7 }, net: 450 }],
    ],
    [
      '- canister 230 g isobutane with 20 % propane',
      [{ kind: 'fuel', fuel: 'gas', mix: 'isobutane', shares: { propane: 0.2, isobutane: 0.8 }, net: 230 }],
    ],
    [
      '- canister 110 g: 25% propane, 25% isobutane, 50% butane',
      [
        {
          kind: 'fuel',
          fuel: 'gas',
          mix: 'isobutane',
          shares: { propane: 0.25, isobutane: 0.25, butane: 0.5 },
          net: 110,
        },
      ],
    ],
    [
      '- Gaskartusche 230 g, 70 % Butan, 30 % Propan',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- cartouche de gaz 230 g, propane 30 % butane 70 %',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { propane: 0.3, butane: 0.7 }, net: 230 }],
    ],
    [
      '- bombola gas 230 g, butano propano 70/30',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- баллон газ 230 г, 70% бутан 30% пропан',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
    [
      '- ガス缶 230g ブタン70% プロパン30%',
      [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', shares: { butane: 0.7, propane: 0.3 }, net: 230 }],
    ],
  ],
  not: [
    ['- canister 230 g, 80% full, isobutane', [{ kind: 'fuel', fuel: 'gas', mix: 'isobutane', net: 230 }]],
    // They do not add up: nobody knows the rest.
    ['- canister 230 g, 30% butane 30% propane', [{ kind: 'fuel', fuel: 'gas', mix: '~isobutane', net: 230 }]],
    [
      '- propane 5 kg, butane 3 kg',
      [
        { kind: 'fuel', fuel: 'gas', mix: 'propane', net: 5000 },
        { kind: 'fuel', fuel: 'gas', mix: 'butane', net: 3000 },
      ],
    ],
  ],
};

const FIRST_LINES: PastedClass = {
  name: 'a thing on the first line, or the first below a blank one',
  cases: [
    [
      'gas stove\npot 1.2 L, lid\nlighter',
      [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1200], lid: true }, LIGHTER],
    ],
    [
      'pot 1.2 L\nmug\n\nupright gas burner\ngas canister 230 g',
      [{ kind: 'pot', ml: [1200] }, { kind: 'mug' }, { kind: 'stove', stove: 'gas', form: 'upright' }, GAS_230],
    ],
    ['GAS STOVE\nPOT 1 L\nMUG', [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1000] }, { kind: 'mug' }]],
    [
      '2 gas stoves\npot 3 L\npot 2 L',
      [
        { kind: 'stove', n: 2, stove: 'gas' },
        { kind: 'pot', ml: [3000] },
        { kind: 'pot', ml: [2000] },
      ],
    ],
    ['Gaskocher\nTopf 1,2 l\nBecher', [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1200] }, { kind: 'mug' }]],
    [
      'réchaud à gaz\ncasserole 1,2 l\ntasse',
      [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1200] }, { kind: 'mug' }],
    ],
    [
      'hornillo de gas\nolla 1,2 l\ntaza',
      [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1200] }, { kind: 'mug' }],
    ],
    ['gasolkök\nkastrull 1,2 l\nmugg', [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1200] }, { kind: 'mug' }]],
    [
      'горелка газовая\nкотелок 1,2 л\nкружка',
      [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1200], bail: '~true' }, { kind: 'mug' }],
    ],
    // A heading that names what nothing else names is that thing.
    ['Mug\n- pot 1 L\n- gas stove', [{ kind: 'mug' }, { kind: 'pot', ml: [1000] }, { kind: 'stove', stove: 'gas' }]],
  ],
  not: [
    // Bold, a colon, deeper lines and prose below make a heading of it; then another stove is the stove.
    [
      'Gas stove:\nburner 85 g\npot 1 L',
      [
        { kind: 'stove', g: 85, stove: '~gas' },
        { kind: 'pot', ml: [1000] },
      ],
    ],
    [
      'Stove\ngas burner 85 g\npot 1 L',
      [
        { kind: 'stove', g: 85, stove: 'gas' },
        { kind: 'pot', ml: [1000] },
      ],
    ],
    ['Pots and pans\nfrying pan 24 cm\nmug', [{ kind: 'pan', d: 240 }, { kind: 'mug' }]],
    ['Cook kit\ngas stove\nmug', [{ kind: 'stove', stove: 'gas' }, { kind: 'mug' }]],
  ],
};

const FOOD_HEADINGS: PastedClass = {
  name: 'kit under a heading that means food',
  cases: [
    ...[
      'Food',
      'Food & Drink',
      'Essen',
      'Verpflegung',
      'Nourriture',
      'Comida',
      'Cibo',
      'Eten',
      'Mat',
      'Mad',
      'Jedzenie',
      'Еда',
      '食事',
    ].map(
      (heading) =>
        [
          `## ${heading}\n\n- gas stove\n- pot 900 ml\n- mug`,
          [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [900] }, { kind: 'mug' }],
        ] as const,
    ),
    ['## Verpflegung\n- Kocher\n- Topf 900 ml\n- Nudeln 500 g', [{ kind: 'stove' }, { kind: 'pot', ml: [900] }]],
    ['## Nourriture\n- réchaud\n- casserole 900 ml\n- riz 500 g', [{ kind: 'stove' }, { kind: 'pot', ml: [900] }]],
    [
      '## Еда\n- горелка\n- котелок 900 мл\n- рис 500 г',
      [{ kind: 'stove' }, { kind: 'pot', ml: [900], bail: '~true' }],
    ],
  ],
  not: [
    ['## Food\n- Jam, one pot\n- Noodles, 4 cups\n- Beans, 2 cans', []],
    ['## Food\n- rice 500 g\n- vitamin tablets\n- tea', []],
  ],
};

const FURNITURE: PastedClass = {
  name: 'what is copied along from the head of a page sets nothing aside',
  cases: [
    ['Skip to content\npot 900 ml\nmug', [{ kind: 'pot', ml: [900] }, { kind: 'mug' }]],
    ['Skip to main content\n\n- pot 900 ml\n- mug', [{ kind: 'pot', ml: [900] }, { kind: 'mug' }]],
  ],
  not: [
    [
      'Skip:\n- pot 900 ml\n- mug',
      [
        { kind: 'pot', ml: [900], carried: false },
        { kind: 'mug', carried: false },
      ],
    ],
  ],
};

const HYPHENS: PastedClass = {
  name: 'a short word inside a hyphen is no preposition',
  cases: [
    [
      '- pot 1.2 L\n- screw-on gas burner',
      [
        { kind: 'pot', ml: [1200] },
        { kind: 'stove', stove: 'gas', form: 'upright' },
      ],
    ],
    ['- gas canister 230 g\n- clip-on windscreen', [GAS_230, { kind: 'windscreen' }]],
  ],
  not: [['- pot 1.2 L\n- sticker on the stove', [{ kind: 'pot', ml: [1200] }]]],
};

const AGES: PastedClass = {
  name: 'ages and cooking times count nothing',
  cases: [
    ['- 20 year old gas burner', [{ kind: 'stove', stove: 'gas' }]],
    ['- 10 Jahre alter Topf 2 l', [{ kind: 'pot', ml: [2000] }]],
    ['- réchaud à gaz de 20 ans', [{ kind: 'stove', stove: 'gas' }]],
    ['- hornillo de gas de 15 años', [{ kind: 'stove', stove: 'gas' }]],
    ['- 12 år gammalt gasolkök', [{ kind: 'stove', stove: 'gas' }]],
    ['- горелка газовая, 20 лет', [{ kind: 'stove', stove: 'gas' }]],
    ['- gas stove, 8 minutes a litre', [{ kind: 'stove', stove: 'gas' }]],
  ],
  not: [['- 2 old gas stoves', [{ kind: 'stove', n: 2, stove: 'gas' }]]],
};

const PARTED_TABLES: PastedClass = {
  name: 'a table goes on below a line of prose',
  cases: [
    [
      '| Item | Qty | All (g) |\n|---|---|---|\n| Mug | 2 | 180 |\n\nThe leader keeps these with the tents, since nobody else wants to carry them about.\n\n| Pot 3 L | 8 | 1,810 |',
      [
        { kind: 'mug', n: 2, g: 180 },
        { kind: 'pot', n: 8, ml: [3000], g: 1810 },
      ],
    ],
  ],
  not: [
    // Other columns, of another table.
    [
      '| Item | Qty | All (g) |\n|---|---|---|\n| Mug | 2 | 180 |\n\nThe leader keeps these with the tents, since nobody else wants to carry them about.\n\n| Pot 3 L | steel |',
      [
        { kind: 'mug', n: 2, g: 180 },
        { kind: 'pot', ml: [3000], material: 'steel' },
      ],
    ],
  ],
};

const BESIDE: PastedClass = {
  name: 'two lists side by side',
  cases: [
    [
      'Kitchen          Light\n[ ] Mug          [ ] Torch\n[ ] Pot 1 L      [ ] Batteries\n[ ] Gas stove    [ ] Lantern\n[ ] Spoon',
      [{ kind: 'mug' }, { kind: 'pot', ml: [1000] }, { kind: 'stove', stove: 'gas' }, { kind: 'utensil' }],
    ],
    [
      'Schlafen         Küche\n[ ] Zelt         [ ] Becher\n[ ] Matte        [ ] Topf 1 l\n[ ] Kissen       [ ] Gaskocher',
      [{ kind: 'mug' }, { kind: 'pot', ml: [1000] }, { kind: 'stove', stove: 'gas' }],
    ],
    [
      '☐ tasse          ☐ lampe\n☐ casserole 1 l  ☐ piles\n☐ réchaud        ☐ tente',
      [{ kind: 'mug' }, { kind: 'pot', ml: [1000] }, { kind: 'stove' }],
    ],
    [
      '[ ] taza         [ ] linterna\n[ ] olla 1 l     [ ] pilas\n[ ] hornillo     [ ] tienda',
      [{ kind: 'mug' }, { kind: 'pot', ml: [1000] }, { kind: 'stove' }],
    ],
  ],
  not: [['[ ] Mug  [x] packed\n[ ] Pot 1 L  [ ] packed\n', [{ kind: 'mug' }, { kind: 'pot', ml: [1000] }]]],
};

const RECORDS: PastedClass = {
  name: 'records with fields',
  cases: [
    [
      'gear:\n  - name: "Zorvik 650 ml pot"\n    weight_oz: 5.7\n    notes: "the pot for two"\n    tags: ["Sleep"]\n  - name: Gnat stove\n    weight_oz: 3\n    url: https://example.org/stove\n',
      [
        { kind: 'pot', ml: [650], g: 162 },
        { kind: 'stove', g: 85 },
      ],
    ],
    [
      '[\n{\n"name": "Mug 450 ml",\n"weight_g": 60,\n"quantity": 2\n},\n{\n"name": "Pot 1 L",\n"weight_g": 120\n}\n]',
      [
        { kind: 'mug', n: 2, ml: [450], g: 60 },
        { kind: 'pot', ml: [1000], g: 120 },
      ],
    ],
    [
      '- Name: Topf 1 l\n  Gewicht: 120 g\n- Name: Becher\n  Anzahl: 2',
      [
        { kind: 'pot', ml: [1000], g: 120 },
        { kind: 'mug', n: 2 },
      ],
    ],
    [
      '- nom: casserole 1 l\n  poids: 120 g\n- nom: tasse\n  quantité: 2',
      [
        { kind: 'pot', ml: [1000], g: 120 },
        { kind: 'mug', n: 2 },
      ],
    ],
    [
      '- nombre: olla 1 l\n  peso: 120 g\n- nombre: taza\n  cantidad: 2',
      [
        { kind: 'pot', ml: [1000], g: 120 },
        { kind: 'mug', n: 2 },
      ],
    ],
  ],
  not: [
    [
      '- pot: 1 L\n- mug: 2\n- what: a spoon',
      [{ kind: 'pot', ml: [1000] }, { kind: 'mug', n: 2 }, { kind: 'utensil' }],
    ],
  ],
};

const TASKS: PastedClass = {
  name: 'a task list as comma-separated values',
  cases: [
    [
      'TYPE,CONTENT,PRIORITY,INDENT,DATE\ntask,Tent,4\ntask,Water bottle x 2,4\ntask,Cups,4\ntask,Socks,4',
      [
        { kind: 'bottle', n: 2 },
        { kind: 'mug', n: 4 },
      ],
    ],
  ],
  not: [],
};

const HTML_IN_A_POST: PastedClass = {
  name: 'a table in HTML inside another text',
  cases: [
    [
      'What I carry on long walks.\n\n<table><tr><th>Item</th><th>kg</th></tr><tr><td>Pot 1 L</td><td>0.144</td></tr><tr><td>Gas stove</td><td>0.09</td></tr></table>',
      [
        { kind: 'pot', ml: [1000], g: 144 },
        { kind: 'stove', g: 90, stove: 'gas' },
      ],
    ],
    [
      'Was ich trage.\n\n<div><table>\n<tr><th>Teil</th><th>g</th></tr>\n<tr><td>Topf 1 l</td><td>144</td></tr>\n</table></div>\n\n- Becher',
      [{ kind: 'pot', ml: [1000], g: 144 }, { kind: 'mug' }],
    ],
  ],
  not: [],
};

const TOLD_TWICE: PastedClass = {
  name: 'label and description, and what is told twice',
  cases: [
    ['- Spare stove (Zorvik Gnat stove)', [{ kind: 'stove' }]],
    ['- Ersatzkocher (Zorvik Gaskocher)', [{ kind: 'stove', stove: 'gas' }]],
    ['- tasse (tasse en titane)', [{ kind: 'mug', material: 'titanium' }]],
    ['- taza (taza de acero)', [{ kind: 'mug', material: 'steel' }]],
    ['- Quelbo tazza <sub>tazza in titanio</sub>', [{ kind: 'mug', material: 'titanium' }]],
    ['- ~~Quelbo Gnat~~ <sub>fornello a gas</sub>', [{ kind: 'stove', stove: 'gas', carried: false }]],
    ['- cup/bowl', [{ kind: 'mug' }]],
    ['- water bottles/bladders 1 L', [{ kind: 'bottle', n: '?', ml: [1000] }]],
    [
      'POT->two cup aluminium pot\nMUG->steel',
      [
        { kind: 'pot', ml: [473], material: 'aluminium' },
        { kind: 'mug', material: 'steel' },
      ],
    ],
    [
      '- gas stove 115 g\n- pot 1 L\n\nBringing the gas stove (115 g) rather than a fire seems like a good idea, since it saves a fair bit\nof trouble on wet days, and the pot sits on the stove better than over sticks.',
      [
        { kind: 'stove', g: 115, stove: 'gas' },
        { kind: 'pot', ml: [1000] },
      ],
    ],
  ],
  not: [
    [
      '- 2 pots (pot 1 L, pot 2 L)',
      [
        { kind: 'pot', n: 2 },
        { kind: 'pot', ml: [1000] },
        { kind: 'pot', ml: [2000] },
      ],
    ],
    [
      '- gas stove 115 g\n- pot 1 L\n\nA pot of 2.5 L, a wide one, goes in the other pack.',
      [
        { kind: 'stove', g: 115, stove: 'gas' },
        { kind: 'pot', ml: [1000] },
        { kind: 'pot', ml: [2500] },
      ],
    ],
    ['- pot/pan', [{ kind: 'pot' }, { kind: 'pan' }]],
  ],
};

const WRAPPED: PastedClass = {
  name: 'a paragraph broken into lines is no list',
  cases: [
    [
      '- pot 1 L\n\nThere are many ways to keep the rain off, and all of them have friends among\nstoves in the shops that we saw on the way, but when the wind comes up the valley\nwindscreens help less than a wall does.',
      [{ kind: 'pot', ml: [1000] }],
    ],
  ],
  not: [
    ['gas stove\npot 1 L\nmug', [{ kind: 'stove', stove: 'gas' }, { kind: 'pot', ml: [1000] }, { kind: 'mug' }]],
    // Few words a line, beside lists that have bullets.
    [
      '- tent\n- mat\n- torch\n\npot\nmug\nstove\nspoon',
      [{ kind: 'pot' }, { kind: 'mug' }, { kind: 'stove' }, { kind: 'utensil' }],
    ],
  ],
};

const SENTENCES: PastedClass = {
  name: 'sentences of who takes things along',
  cases: [
    ['We each carried a bowl and a spoon.', [{ kind: 'bowl' }, { kind: 'utensil' }]],
    ['On our trips I take a stove and a small pot.', [{ kind: 'stove' }, { kind: 'pot' }]],
    ["La mienne se compose d'une casserole et d'une poêle.", [{ kind: 'pot' }, { kind: 'pan' }]],
    ['Im Sommer hatten wir zwei Töpfe mit.', [{ kind: 'pot', n: 2 }]],
    [
      'Llevamos un hornillo de gas, una olla y dos tazas.',
      [{ kind: 'stove', stove: 'gas' }, { kind: 'pot' }, { kind: 'mug', n: 2 }],
    ],
    ['Bierzemy kuchenkę i menażkę.', [{ kind: 'stove' }, { kind: 'pot' }]],
    ['Мы берём горелку и котелок.', [{ kind: 'stove' }, { kind: 'pot', bail: '~true' }]],
    ['Vi tog med en gryta och ett spritkök.', [{ kind: 'pot' }, { kind: 'stove', stove: 'alcohol' }]],
  ],
  not: [
    ['Take the pot off the stove when it boils.', []],
    ['You do not need a stove here.', []],
    ['- burner, takes a 12 cm pot', [{ kind: 'stove' }]],
  ],
};

const CAR_CAMPING: PastedClass = {
  name: 'kit under a heading of camping by car',
  cases: [
    ['## Car camping\n- stove\n- pot 5 L\n- mug', [{ kind: 'stove' }, { kind: 'pot', ml: [5000] }, { kind: 'mug' }]],
    [
      '## Auto Camping\n- Kocher\n- Topf 5 l\n- Pfanne',
      [{ kind: 'stove' }, { kind: 'pot', ml: [5000] }, { kind: 'pan' }],
    ],
  ],
  not: [['## Car\n- petrol can 10 L\n- lighter', []]],
};

const gas = (net: number | string, n = 1) => ({ kind: 'fuel', ...(n === 1 ? {} : { n }), fuel: 'gas', net });

const CANISTERS: PastedClass = {
  name: 'canisters of several sizes, and half-full ones',
  cases: [
    ['- 3 gas canisters: 450 g, 230 g, 110 g', [gas(450), gas(230), gas(110)]],
    ['- Gas: 3 Kartuschen 450 g, 230 g, 110 g', [gas(450), gas(230), gas(110)]],
    ['- 2 cartouches de gaz : 230 g, 110 g', [gas(230), gas(110)]],
    ['- 2 cartuchos de gas: 230 g, 110 g', [gas(230), gas(110)]],
    ['- gas: 1 x 450 g, 2 x 230 g, one half-full 110 g', [gas(450), gas(230, 2), gas('~55')]],
    ['- gas canister 230 g, half empty', [gas('~115')]],
    ['- Gaskartusche 230 g, halb voll', [{ kind: 'fuel', fuel: '~gas', net: '~115' }]],
    ['- cartouche de gaz 230 g, à moitié vide', [gas('~115')]],
    ['- cartucho de gas 230 g, medio vacío', [gas('~115')]],
  ],
  not: [
    ['- 3 gas canisters 230 g', [gas(230, 3)]],
    ['- gas canister 230 g, full 380 g', [{ ...gas(230), g: 380 }]],
  ],
};

const FUEL_IN_BOTTLES: PastedClass = {
  name: 'what a fuel is in is no bottle of water and no more fuel',
  cases: [
    ['- petrol 2 L (2 bottles 1 L)', [{ kind: 'fuel', fuel: 'liquid-fuel', liquid: 2000 }]],
    ['- petrol: 1.5 litres (0.5 L bottle + 1 L bottle)', [{ kind: 'fuel', fuel: 'liquid-fuel', liquid: 1500 }]],
    ['- Benzin 2 l (2 Flaschen 1 l)', [{ kind: 'fuel', fuel: 'liquid-fuel', liquid: 2000 }]],
    ['- bensin 2 l (2 flaskor 1 l)', [{ kind: 'fuel', fuel: 'liquid-fuel', liquid: 2000 }]],
  ],
  not: [['- water bottle 1 L (bottle, steel)', [{ kind: 'bottle', ml: [1000], material: 'steel' }]]],
};

const MATERIALS: PastedClass = {
  name: 'the material of a handle, and the wood of a wood stove, are not the pot’s',
  cases: [
    ['- pot 1 L, lid, wooden handle', [{ kind: 'pot', ml: [1000], lid: true, handles: true }]],
    ['- pot 2 L with lid for the wood stove', [{ kind: 'pot', ml: [2000], lid: true }]],
  ],
  not: [['- pot 1 L, steel, folding handles', [{ kind: 'pot', ml: [1000], material: 'steel', handles: true }]]],
};

const BOTH: PastedClass = {
  name: 'what is said of both is of each',
  cases: [
    [
      '- 2.5 L pot + 1.8 L pot, both with lids and folding handles',
      [
        { kind: 'pot', ml: [2500], lid: true, handles: true },
        { kind: 'pot', ml: [1800], lid: true, handles: true },
      ],
    ],
    [
      '- Topf 2,5 l + Topf 1,8 l, beide mit Deckel',
      [
        { kind: 'pot', ml: [2500], lid: true },
        { kind: 'pot', ml: [1800], lid: true },
      ],
    ],
  ],
  not: [
    [
      '- pot 2.5 L, pot 1.8 L with lid',
      [
        { kind: 'pot', ml: [2500] },
        { kind: 'pot', ml: [1800], lid: true },
      ],
    ],
  ],
};

const NAMES: PastedClass = {
  name: 'names that the reader did not know',
  cases: [
    ['- pressure cooker 6 L, two handles', [{ kind: 'pot', ml: [6000], handles: true }]],
    ['- 2 plywood boards for the stoves', [{ kind: 'other-cook', n: 2, material: 'wood', role: 'board' }]],
    ['- water drums 2 × 20 L', [{ kind: 'bottle', n: 2, ml: [20000] }]],
    ['- dromedary bag\n- hydration pack', [{ kind: 'bladder' }, { kind: 'bladder' }]],
    [
      '- Gasrechaud\n- Propanflasche 5 kg',
      [
        { kind: 'stove', stove: 'gas' },
        { kind: 'fuel', fuel: 'gas', mix: 'propane', net: 5000 },
      ],
    ],
    ['- gas stove on its canister', [{ kind: 'stove', stove: 'gas', form: 'upright' }]],
    ['- autocuiseur 6 l', [{ kind: 'pot', ml: [6000] }]],
    ['- скороварка 6 л', [{ kind: 'pot', ml: [6000] }]],
  ],
  not: [['- water treatment tabs\n- pan scraper', []]],
};

export const PASTED: readonly PastedClass[] = [
  GAS_SHARES,
  FIRST_LINES,
  FOOD_HEADINGS,
  FURNITURE,
  HYPHENS,
  AGES,
  PARTED_TABLES,
  BESIDE,
  RECORDS,
  TASKS,
  HTML_IN_A_POST,
  TOLD_TWICE,
  WRAPPED,
  SENTENCES,
  CAR_CAMPING,
  CANISTERS,
  FUEL_IN_BOTTLES,
  MATERIALS,
  BOTH,
  NAMES,
];
