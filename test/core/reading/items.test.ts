import { describe, expect, it } from 'vitest';
import { valueOf, type Given } from '../../../core/model/given.js';
import type { Item } from '../../../core/model/item.js';
import { readList } from '../../../core/reading/index.js';

/** What an item says, without what it does not: guesses carry a tilde. */
function told(item: Item): Record<string, unknown> {
  const out: Record<string, unknown> = { kind: item.kind };
  const put = (name: string, given: Given<unknown>) => {
    const value = valueOf(given);
    if (value === undefined) return;
    const tidy = typeof value === 'number' ? Math.round(value) : value;
    out[name] = given.grounds === 'assumed' ? `~${JSON.stringify(tidy)}` : tidy;
  };
  put('n', item.quantity);
  if (item.capacitiesMl.length > 0) out['ml'] = item.capacitiesMl.map((given) => Math.round(valueOf(given) ?? 0));
  put('g', item.massG);
  put('d', item.diameterMm);
  put('h', item.heightMm);
  put('net', item.fuelMassG);
  put('liquid', item.fuelVolumeMl);
  put('burner', item.burnerMm);
  put('supports', item.supportsMm);
  put('material', item.material);
  put('lid', item.lid);
  put('bail', item.bail);
  if (!item.carried) out['carried'] = false;
  if (item.perPerson) out['perPerson'] = true;
  return out;
}

const read = (text: string) => readList(text).items.map(told);

describe('items', () => {
  it.each([
    ['2x 450 ml mugs', [{ kind: 'mug', n: 2, ml: [450] }]],
    ['mugs x2', [{ kind: 'mug', n: 2 }]],
    ['mugs (2)', [{ kind: 'mug', n: 2 }]],
    [
      'two mugs, one pot',
      [
        { kind: 'mug', n: 2 },
        { kind: 'pot', n: 1 },
      ],
    ],
    ['- bottles: 4', [{ kind: 'bottle', n: 4 }]],
    ['- fuel tablets, 2 packs of 6, 14 g each', [{ kind: 'fuel', n: 12, net: 14 }]],
    [
      '6 mugs, 4 cups',
      [
        { kind: 'mug', n: 6 },
        { kind: 'mug', n: 4 },
      ],
    ],
    ['two-liter pot w/ bail', [{ kind: 'pot', n: 1, ml: [2000], bail: true }]],
    ['Two-burner stove', [{ kind: 'stove', n: 1 }]],
    ['2 burner propane stove', [{ kind: 'stove', n: 1 }]],
    ['2 flammiger Gaskocher', [{ kind: 'stove', n: 1 }]],
    ['2 burners', [{ kind: 'stove', n: 2 }]],
    [
      'kitchen:\n  - mug (1 per person)\n  - pot 2 l',
      [
        { kind: 'mug', n: 1, perPerson: true },
        { kind: 'pot', n: 1, ml: [2000] },
      ],
    ],
    ['gas stove (double burner)', [{ kind: 'stove', n: 1 }]],
    ['Stove, 2 burners', [{ kind: 'stove', n: 1 }]],
    [
      '2 stoves, 2 burners',
      [
        { kind: 'stove', n: 2 },
        { kind: 'stove', n: 2 },
      ],
    ],
    ['bottle 1l 34 x2', [{ kind: 'bottle', n: 2, ml: [1000] }]],
    [
      'Stove 95g Gas 230g 2 mugs Pot 1.3 L',
      [
        { kind: 'stove', n: 1, g: 95 },
        { kind: 'fuel', n: 1, net: 230 },
        { kind: 'mug', n: 2 },
        { kind: 'pot', n: 1, ml: [1300] },
      ],
    ],
    [
      'Mugs 2 Bowls 3 Spoons 4',
      [
        { kind: 'mug', n: 2 },
        { kind: 'bowl', n: 3 },
        { kind: 'utensil', n: 4 },
      ],
    ],
    [
      'Fornello 95 g Gas 230 g 2 tazze Pentola 1,3 L',
      [
        { kind: 'stove', n: 1, g: 95 },
        { kind: 'fuel', n: 1, net: 230 },
        { kind: 'mug', n: 2 },
        { kind: 'pot', n: 1, ml: [1300] },
      ],
    ],
    [
      'Kocher Topf Becher Löffel',
      [
        { kind: 'stove', n: 1 },
        { kind: 'pot', n: 1 },
        { kind: 'mug', n: '~1' },
        { kind: 'utensil', n: '~1' },
      ],
    ],
    ['Mug pot 750 ml', [{ kind: 'pot', n: 1, ml: [750] }]],
    [
      'Popote, 4 quarts, 4 cuillères',
      [
        { kind: 'pot', n: 1 },
        { kind: 'mug', n: 4 },
        { kind: 'utensil', n: 4 },
      ],
    ],
    [
      'Becher 4, Teller 4, Löffel 5',
      [
        { kind: 'mug', n: 4 },
        { kind: 'other-cook', n: 4 },
        { kind: 'utensil', n: 5 },
      ],
    ],
    [
      'お椀 4、コップ 3',
      [
        { kind: 'bowl', n: 4 },
        { kind: 'mug', n: 3 },
      ],
    ],
    ['Topf 2', [{ kind: 'pot', n: 1 }]],
    ['titan mug 550 w/ lid (76 g)', [{ kind: 'mug', n: 1, ml: [550], g: 76, material: 'titanium', lid: true }]],
    ['stove 3000 W / 10000 BTU', [{ kind: 'stove', n: 1 }]],
    ['Espressokanne für 3 Tassen', [{ kind: 'other-cook', n: 1 }]],
    ['- for 4 of us 4 mugs', [{ kind: 'mug', n: 4 }]],
    ['- 2 kneips, bottle 1 l', [{ kind: 'bottle', n: 1, ml: [1000] }]],
    ['- 2 small, blue mugs', [{ kind: 'mug', n: 2 }]],
    ['Газ 450 г х 3', [{ kind: 'fuel', n: 3, net: 450 }]],
    ['- Moka da 3 tazze', [{ kind: 'other-cook', n: 1, ml: [710] }]],
    ['Pot: 4 quarts', [{ kind: 'pot', n: 1, ml: [3785] }]],
  ])('counts: %s', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it.each([
    [
      'kitchen:\n  - item: pot\n    capacity: 3 L\n    lid: yes\n  - item: pot\n    lid: no\n    weight: 290 g',
      [
        { kind: 'pot', n: 1, ml: [3000], lid: true },
        { kind: 'pot', n: 1, g: 290, lid: false },
      ],
    ],
    ['- fuel:\n    what: white gas\n    amount: 1.5 L', [{ kind: 'fuel', n: 1, liquid: 1500 }]],
    ['- stove: Plimt, 73 g\n    type: gas stove\n    burner: 30 mm', [{ kind: 'stove', n: 1, g: 73, burner: 30 }]],
    ['Pot 1.4 L\n\n162 g', [{ kind: 'pot', n: 1, ml: [1400], g: 162 }]],
    ['Pot 1.4 L\nRice\n500 g', [{ kind: 'pot', n: 1, ml: [1400] }]],
    [
      'Cook kit 11.2 oz total\n- pot, 700 ml: 3.6 oz\n- canister (4 oz)',
      [
        { kind: 'pot', n: 1, ml: [700], g: 102 },
        { kind: 'fuel', n: 1, net: 113 },
      ],
    ],
    [
      '- cook set: pot, lid, pan; 540 g',
      [
        { kind: 'pot', n: 1, g: 540, lid: true },
        { kind: 'pan', n: 1 },
      ],
    ],
    [
      '- Topfset (2 Töpfe 1,9 L und 1,2 L, Pfanne) 480 g',
      [
        { kind: 'pot', n: 2, ml: [1900, 1200], g: 480 },
        { kind: 'pan', n: 1 },
      ],
    ],
    [
      'pots:\n- 1 l, 120 g\n- the big one, 2 l\n- water 2 l\n- rice 500 g\nstove: gas',
      [
        { kind: 'pot', n: '~1', ml: [1000], g: 120 },
        { kind: 'pot', n: '~1', ml: [2000] },
        { kind: 'stove', n: 1 },
      ],
    ],
    [
      'Küche wiegt 312 g: Kocher 45 g, Topf 0,9 l 120 g',
      [
        { kind: 'stove', n: 1, g: 45 },
        { kind: 'pot', n: 1, ml: [900], g: 120 },
      ],
    ],
    [
      'Stormkök litet (2 kastruller 1 l, stekpanna) 720 g',
      [
        { kind: 'stove', n: 1, g: 720 },
        { kind: 'pot', n: 2, ml: [1000] },
        { kind: 'pan', n: 1 },
      ],
    ],
    [
      'Pot 1 l (lid 20 g, pan 90 g)',
      [
        { kind: 'pot', n: 1, ml: [1000] },
        { kind: 'lid', n: 1, g: 20 },
        { kind: 'pan', n: 1, g: 90 },
      ],
    ],
    [
      'Old stove: 380g. New stove 73 g',
      [
        { kind: 'stove', n: 1, g: 380 },
        { kind: 'stove', n: 1, g: 73 },
      ],
    ],
    ['- 3 billies nesting 2.5/4/6 litre', [{ kind: 'pot', n: 3, ml: [2500, 4000, 6000], bail: '~true' }]],
    ['- pot 2/4/2021', [{ kind: 'pot', n: 1 }]],
    ['- Fuel: 4oz bottle, 18 g empty, holds 120 ml', [{ kind: 'fuel', n: 1, ml: [120], g: 18 }]],
    [
      '- 1 olla de 20 litros y otra de 10\n- otra olla 2 l, 120 g',
      [
        { kind: 'pot', n: 1, ml: [20000] },
        { kind: 'pot', n: 1, ml: [10000] },
        { kind: 'pot', n: 1, ml: [2000], g: 120 },
      ],
    ],
    [
      'Gourdes 2x1L + poche 3L\nsac 30 L',
      [
        { kind: 'bottle', n: 2, ml: [1000] },
        { kind: 'bladder', n: 1, ml: [3000] },
      ],
    ],
    [
      'Alles in Gramm gewogen\nTopf 600 ml Titan 76\nLöffel 9\nFlasche 1,5 l 34 x2',
      [
        { kind: 'pot', n: 1, ml: [600], g: 76, material: 'titanium' },
        { kind: 'utensil', n: '~1', g: 9 },
        { kind: 'bottle', n: 2, ml: [1500] },
      ],
    ],
    [
      'I count every gram, in this list as well.\nPot 600 ml 76\nStove',
      [
        { kind: 'pot', n: 1, ml: [600] },
        { kind: 'stove', n: 1 },
      ],
    ],
    [
      'Cooking: 1 stove/3 people, 1 pot 2.5 l per stove',
      [
        { kind: 'stove', n: 1 },
        { kind: 'pot', n: 1, ml: [2500] },
      ],
    ],
    [
      '- Ein Topf 1 l, 1 Kocher pro Topf',
      [
        { kind: 'pot', n: 1, ml: [1000] },
        { kind: 'stove', n: 1 },
      ],
    ],
    [
      'Gas: double burner & grill + 7kg butane cylinder',
      [
        { kind: 'stove', n: 1 },
        { kind: 'other-cook', n: 1 },
        { kind: 'fuel', n: 1, net: 7000 },
      ],
    ],
    [
      'Kettle 312 g: lid 40 g',
      [
        { kind: 'kettle', n: 1, g: 312 },
        { kind: 'lid', n: 1, g: 40 },
      ],
    ],
    ['Topf 1 l mit Deckel 280 g', [{ kind: 'pot', n: 1, ml: [1000], g: 280, lid: true }]],
    [
      'Olla 1 l 120 g con tapa 20 g',
      [
        { kind: 'pot', n: 1, ml: [1000], g: 120 },
        { kind: 'lid', n: 1, g: 20 },
      ],
    ],
    ['Fuel: 0.2 l/person/day, 3 bottles of 1 l', [{ kind: 'fuel', n: 3, ml: [1000] }]],
    [
      'Kitchen: Canister 110 g x2 Mug 300 ml',
      [
        { kind: 'fuel', n: 2, net: 110 },
        { kind: 'mug', n: 1, ml: [300] },
      ],
    ],
    ['- propane cylinder (16.4 oz) x 3', [{ kind: 'fuel', n: 3, net: 465 }]],
  ])('gathers what belongs to a thing: %s', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it.each([
    ['- pot grips', [{ kind: 'other-cook', n: 1 }]],
    ['- pot hook', [{ kind: 'other-cook', n: 1 }]],
    [
      'Gryta 2 l\nPrimusgas 230 g x 2',
      [
        { kind: 'pot', n: 1, ml: [2000] },
        { kind: 'fuel', n: 2, net: 230 },
      ],
    ],
    [
      'Kjele 2 liter\nPrimusgass 230 g',
      [
        { kind: 'pot', n: 1, ml: [2000] },
        { kind: 'fuel', n: 1, net: 230 },
      ],
    ],
    [
      'Kookpan 2 liter\nGasblikje 230 gr, vol 370 gr',
      [
        { kind: 'pot', n: 1, ml: [2000] },
        { kind: 'fuel', n: 1, net: 230, g: 370 },
      ],
    ],
    [
      'Lille gryde med låg og ske\nRødsprit 0,5 l',
      [
        { kind: 'pot', n: 1, lid: true },
        { kind: 'utensil', n: 1 },
        { kind: 'fuel', n: '~1', liquid: 500 },
      ],
    ],
    ['Réchaud essence 350 g', [{ kind: 'stove', n: 1, g: 350 }]],
    [
      '- Kocher Gas 95 g + 1 Kartusche 450 g',
      [
        { kind: 'stove', n: 1, g: 95 },
        { kind: 'fuel', n: 1, net: 450 },
      ],
    ],
    [
      'Patrol cook kit (8 kids, 2 nights)\n1 - 4 qt pot',
      [
        { kind: 'pot', n: 1 },
        { kind: 'pot', n: 1, ml: [3785] },
      ],
    ],
    ['2 pans 1.75 l + 1.5 l', [{ kind: 'pot', n: 2, ml: [1750, 1500] }]],
    ['pan 24 cm, 1.2 kg', [{ kind: 'pan', n: 1, g: 1200, d: 240 }]],
    ['frying pan 1.5 l', [{ kind: 'pan', n: 1, ml: [1500] }]],
    ['Big pasta pot 5 L', [{ kind: 'pot', n: 1, ml: [5000] }]],
    ['- cold soak jar 500 ml, 40 g', [{ kind: 'bowl', n: 1, ml: [500], g: 40 }]],
    ['- coffee cone', [{ kind: 'other-cook', n: 1 }]],
    [
      'Réchaud 90 g et popote\nPince casserole 45 g',
      [
        { kind: 'stove', n: 1, g: 90 },
        { kind: 'pot', n: 1 },
        { kind: 'other-cook', n: 1, g: 45 },
      ],
    ],
    [
      'Bottiglia carburante 0,6 l x2\nPentola con coperchio',
      [
        { kind: 'fuel', n: 2, ml: [600] },
        { kind: 'pot', n: 1, lid: true },
      ],
    ],
    [
      'Caneca para cada um e isqueiro\nPanelinha 1 L 140 g',
      [
        { kind: 'mug', n: 1, perPerson: true },
        { kind: 'other-cook', n: 1 },
        { kind: 'pot', n: 1, ml: [1000], g: 140 },
      ],
    ],
  ])('knows the word: %s', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it.each([
    ['Packlista\nKök\nkastrull 1 l\nbensinkök', ['pot', 'stove']],
    ['Packlista\nKök\nkastrull 1 l\nsked', ['stove', 'pot', 'utensil']],
    ['Stove\nPot\nMug', ['stove', 'pot', 'mug']],
    ['Stove:\nPot\nMug', ['pot', 'mug']],
    ['My 3-season cook system:\nPot: 1 l\nLid', ['pot', 'lid']],
    ['My kit\nstove\nbig pot\nwater 3 l\nmug', ['stove', 'pot', 'mug']],
    ['Stove\n- Pot\n- Mug', ['pot', 'mug']],
    ['Popote\n\nCasserole 1 l\nRéchaud 90 g\nBol', ['pot', 'stove', 'bowl']],
  ])('tells a heading from a thing of its name: %j', (text, kinds) => {
    expect(readList(text).items.map(({ kind }) => kind)).toEqual(kinds);
  });

  it.each([
    ['16 oz mug', [{ kind: 'mug', n: 1, ml: [473] }]],
    ['Mug 2.4 oz', [{ kind: 'mug', n: 1, g: 68 }]],
    ['Steel mug, 24oz, 5.9 oz', [{ kind: 'mug', n: 1, ml: [710], g: 167, material: 'steel' }]],
    ['2 qt pot 11 oz', [{ kind: 'pot', n: 1, ml: [1893], g: 312 }]],
    ['8 oz canister - 13.2 oz', [{ kind: 'fuel', n: 1, net: 227, g: 374 }]],
    ['Stove — 2.6 oz', [{ kind: 'stove', n: 1, g: 74 }]],
  ])('tells ounces apart: %s', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it.each([
    ['Pot Ø13 x 9 cm', [{ kind: 'pot', n: 1, d: 130, h: 90 }]],
    ['Pot, 9x14 (cm), 1L', [{ kind: 'pot', n: 1, ml: [1000], d: '~90', h: '~140' }]],
    ['pot 12 cm high × 18 cm Ø', [{ kind: 'pot', n: 1, d: 180, h: 120 }]],
    ['Pot 5.5" x 4"', [{ kind: 'pot', n: 1, d: 140, h: 102 }]],
    ['Frying pan 10 in', [{ kind: 'pan', n: 1, d: 254 }]],
    ['Stove (burner 42 mm, arms 120 mm)', [{ kind: 'stove', n: 1, burner: 42, supports: 120 }]],
    ['Hot pot d=160 h=110', [{ kind: 'pot', n: 1, d: '~160', h: '~110' }]],
  ])('reads sizes: %s', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it.each([
    ['Gas can 230g (full) 381 g', [{ kind: 'fuel', n: 1, net: 230, g: 381 }]],
    ['Canister 213g', [{ kind: 'fuel', n: 1, g: 213 }]],
    ['2 gas (110)', [{ kind: 'fuel', n: 2, net: '~110' }]],
    ['Gaskartusche 230g (voll ca. 380g)', [{ kind: 'fuel', n: 1, net: 230, g: 380 }]],
    ['gas 2.75kg bottle', [{ kind: 'fuel', n: 1, net: 2750 }]],
    ['| Item | oz |\n|--|--|\n| Canister, 8 oz | 13.1 |', [{ kind: 'fuel', n: 1, net: 227, g: 371 }]],
    [
      '1 large (450 g) + 1 small (230 g) canister',
      [
        { kind: 'fuel', n: 1, net: 450 },
        { kind: 'fuel', n: 1, net: 230 },
      ],
    ],
    [
      'Cartouches de gaz: 1x 450g, 2x 230g',
      [
        { kind: 'fuel', n: 1, net: 450 },
        { kind: 'fuel', n: 2, net: 230 },
      ],
    ],
    [
      '- one 1 L and two 2 L bottles',
      [
        { kind: 'bottle', n: 1, ml: [1000] },
        { kind: 'bottle', n: 2, ml: [2000] },
      ],
    ],
    ['- gas for 2 people, 230 g', [{ kind: 'fuel', n: 1, net: 230 }]],
    [
      'Gas 230 + 110',
      [
        { kind: 'fuel', n: '~1', net: '~230' },
        { kind: 'fuel', n: '~1', net: '~110' },
      ],
    ],
    [
      '1 11kg Gasflasche + Reserve 5kg',
      [
        { kind: 'fuel', n: 1, net: 11000 },
        { kind: 'fuel', n: '~1', net: 5000 },
      ],
    ],
    [
      '- white gas stove as backup (w/ 20 oz bottle, full)',
      [
        { kind: 'stove', n: 1 },
        { kind: 'fuel', n: 1, ml: [591] },
      ],
    ],
    [
      '- Benzinkocher mit Pumpe und Flasche 0,6 l',
      [
        { kind: 'stove', n: 1 },
        { kind: 'fuel', n: 1, ml: [600] },
      ],
    ],
    [
      '- petrol stove + bottle 1 l',
      [
        { kind: 'stove', n: 1 },
        { kind: 'bottle', n: 1, ml: [1000] },
      ],
    ],
    [
      '- gas stove with a bottle 1 l',
      [
        { kind: 'stove', n: 1 },
        { kind: 'bottle', n: 1, ml: [1000] },
      ],
    ],
    ['Fuel 230g can gross 380', [{ kind: 'fuel', n: 1, net: 230, g: '~380' }]],
    [
      '- bombona 230 (pesa 360)\n- olla',
      [
        { kind: 'fuel', n: 1, net: '~230', g: '~360' },
        { kind: 'pot', n: 1 },
      ],
    ],
    ['Gas 230, full of 900 jokes', [{ kind: 'fuel', n: 1, net: '~230' }]],
    ['- canister 230 g, one (gross 375 g)', [{ kind: 'fuel', n: 1, net: 230, g: 375 }]],
    [
      '- gass 230 g for to personer\n- kjele 1 l',
      [
        { kind: 'fuel', n: 1, net: 230 },
        { kind: 'pot', n: 1, ml: [1000] },
      ],
    ],
    [
      '- gasblik van 230 g\n- de pan',
      [
        { kind: 'fuel', n: 1, net: 230 },
        { kind: 'pot', n: 1 },
      ],
    ],
    [
      'Fuel\n- water bottle 1 l\n- bottle 0.6 l',
      [
        { kind: 'bottle', n: 1, ml: [1000] },
        { kind: 'fuel', n: 1, ml: [600] },
      ],
    ],
    ['3.1oz canister top', [{ kind: 'stove', n: 1, g: 88 }]],
    ['- water: 22 l in 4 x 5 l cans', [{ kind: 'bottle', n: 4, ml: [5000] }]],
    ['- white gas 2.5 l in 3 bottles', [{ kind: 'fuel', n: '~1', liquid: 2500 }]],
    ['- 2 cans of beans, water', []],
    ['Meths 300ml', [{ kind: 'fuel', n: '~1', liquid: 300 }]],
    ['Fuel bottle 0.6 l (95 g)', [{ kind: 'fuel', n: 1, ml: [600], g: 95 }]],
  ])('tells fuel from its can: %s', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it.each([
    ['Kochset 1,5 + 2,5 l Alu mit Deckel, Zange', 'gripper'],
    ['3 pots 1.75 l aluminium with lids and grippers', 'gripper'],
    ['pot gripper', 'gripper'],
    ['lighter', 'lighter'],
    ['Feuerzeug', 'lighter'],
    ['matches', 'matches'],
    ['stove board (plywood)', 'board'],
  ])('says what other gear is for: %s', (text, role) => {
    expect(readList(text).items.at(-1)).toMatchObject({ kind: 'other-cook', role });
  });

  it.each([
    ['Bottles 1 L (kids: 0.6 L) 2 + 3', [2, 3]],
    ['4x bowl+cup', [4, 4]],
    ['Pot set (one medium and one small)', [2]],
  ])('counts in order: %s', (text, counts) => {
    expect(readList(text).items.map((item) => valueOf(item.quantity))).toEqual(counts);
  });

  it.each([
    ['~~Big pot 4 l~~', 'struck through'],
    ['- pan? no', 'the line says there is none'],
    ['Not taking:\n- kettle', 'it is said to stay behind'],
    ['no stove (cold soak)', 'the line says there is none'],
  ])('sets aside: %s', (text, because) => {
    const { items } = readList(text);
    expect(items.map((item) => [item.carried, item.notCarriedBecause])).toEqual([[false, because]]);
  });

  it.each([
    [
      'Item\tQty\tWeight (g)\nPot 1 L\t1\t120\nMug\t2\t60',
      [
        { kind: 'pot', n: 1, ml: [1000], g: 120 },
        { kind: 'mug', n: 2, g: 60 },
      ],
    ],
    ['| Item | oz |\n|---|---|\n| Pot, 900 ml | 4.0 |', [{ kind: 'pot', n: 1, ml: [900], g: 113 }]],
    [
      '<ul><li>Pot, 1&nbsp;l</li><li>Stove</li></ul>',
      [
        { kind: 'pot', n: 1, ml: [1000] },
        { kind: 'stove', n: 1 },
      ],
    ],
    [
      '<table><tr><th>Was</th><th>Gewicht</th></tr><tr><td>Gr&ouml;&szlig;ter Kochtopf 2&nbsp;l</td><td>1.250&nbsp;g</td></tr></table>',
      [{ kind: 'pot', n: 1, ml: [2000], g: 1250 }],
    ],
    [
      'TopfSt\u00fcckGewicht (g)\nTopf 0,9 l Titan1109\nDeckel121',
      [
        { kind: 'pot', n: '~1', ml: [900], g: '~109', material: 'titanium' },
        { kind: 'lid', n: '~1', g: '~21' },
      ],
    ],
    [
      'Gegenstand;Anzahl;Gewicht je;Summe\nTopf 1,4 l;1;185;185\nTassen 0,3 l;2;48;96\nLöffel;2;9;18',
      [
        { kind: 'pot', n: 1, ml: [1400], g: '~185' },
        { kind: 'mug', n: 2, ml: [300], g: '~48' },
        { kind: 'utensil', n: 2, g: '~9' },
      ],
    ],
    [
      'Item\tQty\tWeight\nPot 1 l\t1\t4\nMug\t1\t2\nStove\t1\t3',
      [
        { kind: 'pot', n: 1, ml: [1000] },
        { kind: 'mug', n: 1 },
        { kind: 'stove', n: 1 },
      ],
    ],
    ['pot, with lid......126 g   titanium', [{ kind: 'pot', n: 1, g: 126, material: 'titanium', lid: true }]],
    [
      'Pot 1L 110g Stove 85g Mug 450ml 60g',
      [
        { kind: 'pot', n: 1, ml: [1000], g: 110 },
        { kind: 'stove', n: 1, g: 85 },
        { kind: 'mug', n: 1, ml: [450], g: 60 },
      ],
    ],
    ['- bottle: 1 L\n    count: 2\n    g: 36', [{ kind: 'bottle', n: 2, ml: [1000], g: 36 }]],
  ])('reads the form %j', (text, items) => {
    expect(read(text)).toEqual(items);
  });

  it('tells a size for a season from the usual one', () => {
    const { items, trip } = readList('pot (1L) or (2L) if winter');
    expect(items.map((item) => [item.onlyIn, valueOf(item.capacitiesMl[0] ?? { grounds: 'missing' })])).toEqual([
      ['summer', 1000],
      ['winter', 2000],
    ]);
    expect(trip.season).toBeUndefined();
  });
});

describe('columns of numbers', () => {
  it.each([
    [
      '| | What | g |\n|--|--|--|\n| 1 | Pot 0.9 l | 112 |\n| 2 | Lid | 21 |\n| 3 | Mug | 47 |\n| 4 | Stove | 90 |',
      [1, 1, 1, 1],
    ],
    ['#\tItem\tQty\tg\n1\tPot 1 l\t1\t120\n2\tStove\t1\t90\n3\tMugs\t2\t60\n4\tSpoons\t2\t9', [1, 1, 2, 2]],
    // Counts, not the numbers of the rows.
    ['Qty\tItem\n1\tPot 1 l\n2\tMugs\n3\tSpoons', [1, 2, 3]],
    ['1\tPot 1 l\n2\tMugs 0.3 l\n3\tSpoons', [1, 2, 3]],
  ])('are the numbers of the rows or counts: %j', (text, counts) => {
    expect(readList(text).items.map(({ quantity }) => valueOf(quantity))).toEqual(counts);
  });

  it.each([
    ['Matériel;Qté;Poids (g)\nAlcool à brûler;200 ml;160\nPopote;1;110', { liquid: 200, g: 160 }],
    ['Equipo | Cantidad | Peso\nGasolina blanca | 2 L |\nOlla 1 l | 1 |', { liquid: 2000 }],
    ['Item,Amount,Notes\nGas,230 g,\nPot 1 l,1,', { n: 1, net: 230 }],
    ['Gegenstand\tAnzahl\tGewicht\nSpiritus\t1 l\t\nTopf\t1\t90 g', { liquid: 1000 }],
  ])('may hold amounts: %j', (text, fuel) => {
    expect(read(text)[0]).toEqual({ n: '~1', ...fuel, kind: 'fuel' });
  });
});

describe('what stays behind', () => {
  it.each([
    ['- mug 400 ml instead of the pot', 'mug, -pot'],
    ['- Tasse 400 ml au lieu de la popote', 'mug, -pot'],
    ['Stove 90 g. pan left at home but kettle 1 l', 'stove, -pan, kettle'],
    ['- Becher 400 ml statt Topf', 'mug, -pot'],
    ['- Pot 1.5 l. Big pan left at home, stove 90 g', 'pot, -pan, stove'],
    ['- stove 90 g, pan left at home', 'stove, -pan'],
    ['- pan 24 cm, left at home, stove 90 g', '-pan, stove'],
    ['- pan left at home and stove 90 g', '-pan, stove'],
    ['- pot 1 l (left at home), mug 400 ml', '-pot, mug'],
    ['- mug 400 ml, pot 1 l (left at home)', 'mug, -pot'],
    ['- big pot (not needed), stove 90 g, kettle (left at home)', '-pot, stove, -kettle'],
    ['Left the kettle at home. Pot 1.2 l, stove 80 g.', '-kettle, pot, stove'],
    ['- Kocher 90 g, der große Topf bleibt zu Hause; Gas 230 g', 'stove, -pot, fuel'],
    ['- réchaud 90 g, poêle laissée à la maison, gaz 230 g', 'stove, -pan, fuel'],
    ['- hornillo 90 g, sartén se queda en casa, gas 230 g', 'stove, -pan, fuel'],
    ['- kök 90 g, stekpannan lämnas hemma, gas 230 g', 'stove, -pan, fuel'],
    ['- ストーブ 90g、フライパンは置いていく、クッカー 900ml', 'stove, -pan, pot'],
    // One word for all of them.
    ['- pot 1 l, mug, kettle: left at home', '-pot, -mug, -kettle'],
    ['- pot 1 l and kettle left at home', '-pot, -kettle'],
    ['- mug, bowl and pan left at home', '-mug, -bowl, -pan'],
    ['- pot 1 l, mug, left at home', '-pot, -mug'],
    ['- not taking: pot 1 l, mug', '-pot, -mug'],
    ['- Pot 1 l. Left at home.', '-pot'],
  ])('%s', (text, things) => {
    const { items } = readList(text);
    expect(items.map(({ kind, carried }) => (carried ? kind : `-${kind}`)).join(', ')).toBe(things);
  });

  it.each([
    ['- mugs 2, one left at home', 'mug', '~1'],
    ['- 3 mugs (one stays home)', 'mug', '~2'],
  ])('leaves the rest: %s', (text, kind, n) => {
    expect(read(text)).toEqual([{ kind, n }]);
  });
});

describe('sets and sentences', () => {
  it.each([
    ['pot set (1.5 L, 2 L, 3 L)', [{ kind: 'pot', n: '~3', ml: [1500, 2000, 3000] }]],
    ['nesting pots: 1.5 L, 2 L and 3 L', [{ kind: 'pot', n: '~3', ml: [1500, 2000, 3000] }]],
    ['pot 1.5 L, 1.3 L to the line', [{ kind: 'pot', n: 1, ml: [1500] }]],
    [
      'stove w/ windscreen - 18 oz',
      [
        { kind: 'stove', n: 1, g: 510 },
        { kind: 'windscreen', n: 1 },
      ],
    ],
    [
      'stove with windscreen (30 g)',
      [
        { kind: 'stove', n: 1 },
        { kind: 'windscreen', n: 1, g: 30 },
      ],
    ],
    ['long spoon x2 ...... 40 g', [{ kind: 'utensil', n: 2, g: 40 }]],
    ['2.5 L white gas in 3 bottles', [{ kind: 'fuel', n: '~1', liquid: 2500 }]],
    ['2 bottles of white gas, 1 L', [{ kind: 'fuel', n: 2, liquid: 1000 }]],
    ['3 cups of 400 ml', [{ kind: 'mug', n: 3, ml: [400] }]],
    [
      'gas stove, 100 g gas x2, lighter, 1 l bottle, 2 l water bag',
      [
        { kind: 'stove', n: 1 },
        { kind: 'fuel', n: 2, net: 100 },
        { kind: 'other-cook', n: 1 },
        { kind: 'bottle', n: 1, ml: [1000] },
        { kind: 'bladder', n: 1, ml: [2000] },
      ],
    ],
    [
      'Pot 1 L. The burner is about 5 cm wide.',
      [
        { kind: 'pot', n: 1, ml: [1000] },
        { kind: 'stove', n: 1, d: 50 },
      ],
    ],
    [
      'We each carry a 500 ml mug and a 1 l bottle. leaving the frying pan at home this time.',
      [
        { kind: 'mug', n: 1, ml: [500] },
        { kind: 'bottle', n: 1, ml: [1000] },
      ],
    ],
    [
      'Off again, five days along the ridge, and it will be cold by the end of the month up there. We take a 1.3 l pot, a small gas stove and two 230 g gas cans. Somebody had better bring a book.',
      [
        { kind: 'pot', n: 1, ml: [1300] },
        { kind: 'stove', n: 1 },
        { kind: 'fuel', n: 2, net: 230 },
      ],
    ],
  ])('%s', (text, items) => {
    expect(read(text)).toEqual(items);
  });
});

describe('what a text says of the trip', () => {
  it.each([
    ['Lake trip, July, the two of us, 6 days', { people: 2, days: 6, season: 'summer' }],
    ['Solo, 4 days, fall, no snow expected', { people: 1, days: 4, season: 'autumn', waterFrom: 'liquid' }],
    ['Kanutour, August, zu viert, 5 Tage', { people: 4, days: 5, season: 'summer' }],
    ['Traversée, septembre, 7 jours à deux', { people: 2, days: 7, season: 'autumn' }],
    ['the coldest night was minus 28 C', { lowC: -28 }],
    ['camps from 2900 to 4100 m', { altitudeM: 4100 }],
    ['Quilt rated to -10 °C', {}],
    ['Tent, 2-person', {}],
    ['Food for 4 days', {}],
    ['Rain jacket, may be needed', {}],
    ['1 pot between three', { peoplePerPot: 3 }],
    ['six pupils, one night', { people: 6, days: 2, youthGroup: true }],
    ['Family of four', { people: 4 }],
    ['people: 3', { people: 3 }],
    ['just me and my brother, 3 days', { people: 2, days: 3 }],
    ['6 speidere + 2 ledere, 3 netter', { people: 8, days: 4, youthGroup: true }],
    ['24 kinderen, 4 leiding, 5 dagen', { people: 28, days: 5, youthGroup: true }],
    ['A 3-day trip, 2 people', { people: 2, days: 3 }],
    ['Paklijst voor de 5-daagse tocht met 2 personen', { people: 2, days: 5 }],
    ['4-tägige Tour zu zweit', { people: 2, days: 4 }],
    ['Lista na 4 dni w góry, 2 osoby', { people: 2, days: 4 }],
    ['24 students, 3 staff', { people: 27, youthGroup: true }],
    ['2 adults and 2 kids, 3 days', { people: 4, days: 3, youthGroup: true }],
    ['7 scouts + 2 leaders', { people: 9, youthGroup: true }],
    ['12 students and two of us nearby', { people: 12, youthGroup: true }],
    ['groupe de 4, 3 jours', { people: 4, days: 3 }],
    ['8 scouts', { people: 8, youthGroup: true }],
    ['rice and lentils, all cooked in the pot', { mealStyle: 'simmer' }],
    ['boil-only, freeze-dried dinners', { mealStyle: 'boil-only' }],
    ['cooking on the fire only', { cookAt: 'fire' }],
    ['snow for all water', { waterFrom: 'snow' }],
    ['agua de nieve desde el campamento 2', { waterFrom: 'snow' }],
    ['eau à partir de la neige', { waterFrom: 'snow' }],
    ['acqua dalla neve', { waterFrom: 'snow' }],
    ['água da neve', { waterFrom: 'snow' }],
    ['Wir müssen Schnee schmelzen', { waterFrom: 'snow' }],
    ['we smelten sneeuw', { waterFrom: 'snow' }],
    ['vi smälter snö', { waterFrom: 'snow' }],
    ['vi smelter snø', { waterFrom: 'snow' }],
    ['vand fra sne', { waterFrom: 'snow' }],
    ['woda ze śniegu', { waterFrom: 'snow' }],
    ['воду топим из снега, вода из снега', { waterFrom: 'snow' }],
    ['水は雪を溶かして作る', { waterFrom: 'snow' }],
    ['Schneeketten, pala de nieve, raquettes à neige', {}],
    ['Fire ban in August', { firesAllowed: false, season: 'summer' }],
  ])('%s', (text, hints) => {
    const { trip } = readList(text);
    expect(
      Object.fromEntries(Object.entries(trip).map(([key, given]) => [key, valueOf(given as Given<unknown>)])),
    ).toEqual(hints);
  });
});
