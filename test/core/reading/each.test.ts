import { describe, expect, it } from 'vitest';
import { readList } from '../../../core/index.js';
import { valueOf } from '../../../core/model/given.js';

/** What a text names, how many where it says more than one, how large, and whether every person brings it. */
function brought(text: string): string[] {
  return readList(text).items.map(({ kind, quantity, capacitiesMl, perPerson }) => {
    const count = valueOf(quantity) ?? 1;
    return [
      ...(count === 1 ? [] : [count]),
      kind,
      ...capacitiesMl.map((given) => `${String(valueOf(given))} ml`),
      ...(perPerson ? ['each'] : []),
    ].join(' ');
  });
}

describe('what each person brings', () => {
  it.each([
    ['Item\tPer person\tNotes\nMug\t1\t\nBowl\t2\t', ['mug each', '2 bowl each']],
    ['Item\tper person\tper group\nMug\t1\t\nPot 2 L\t\t2', ['mug each', '2 pot 2000 ml']],
    ['Item,Qty per person,Weight\nMug,2,90 g\nBowl,1,50 g', ['2 mug each', 'bowl each']],
    [
      '| Was | pro Person | Gruppe |\n|---|---|---|\n| Löffel | x | |\n| Teller | – | |',
      ['utensil each', 'other-cook'],
    ],
    ['Matériel\tPar personne\tPoids\nQuart\t1\t80 g', ['mug each']],
    [
      '| who | what |\n|---|---|\n| everyone | mug, bowl |\n| Kit | pot 2.5 L |',
      ['mug each', 'bowl each', 'pot 2500 ml'],
    ],
    ['Utrustning\tper person\nKåsa\t1\nSked\t1', ['mug each', 'utensil each']],
  ])('in a column: %j', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it.each([
    ['Iedereen neemt mee: bord, beker, bestek', ['other-cook each', 'mug each', 'utensil each']],
    ['Jeder TN: Becher, Trinkflasche 1 l', ['mug each', 'bottle 1000 ml each']],
    [
      'Hi all,\nEach scout brings own plate, bowl, mug and water bottle 1 litre.\n- pot 6 L\n- pan\n- kettle',
      [
        ...['other-cook', 'bowl', 'mug', 'bottle 1000 ml'].map((thing) => `${thing} each`),
        'pot 6000 ml',
        'pan',
        'kettle',
      ],
    ],
    ['Each scout: mess kit, cup', ['other-cook each', 'mug each']],
    [
      'Everyone brings mug, bowl and spoon; pot 5 L is shared',
      ['mug each', 'bowl each', 'utensil each', 'pot 5000 ml'],
    ],
    ['Per person: mug, spoon, shared: pot 3 L', ['mug each', 'utensil each', 'pot 3000 ml']],
    ['Jeder: Teller, Becher, Löffel', ['other-cook each', 'mug each', 'utensil each']],
    ['Pro Person: 1 Becher, 1 Löffel. Gemeinsam: Topf 3 L', ['mug each', 'utensil each', 'pot 3000 ml']],
    ['chacun : gamelle, quart, cuillère', ['pot each', 'mug each', 'utensil each']],
    ['cada uno: plato, taza', ['other-cook each', 'mug each']],
    ['ognuno: tazza, cucchiaio', ['mug each', 'utensil each']],
    ['cada um: prato, caneca, colher', ['other-cook each', 'mug each', 'utensil each']],
    ['Alla: kåsa, sked', ['mug each', 'utensil each']],
    ['Kajaktur 4 dage. Hver medbringer: kop, ske, 4 l vand', ['mug each', 'utensil each']],
    ['Hver: kopp, skje', ['mug each', 'utensil each']],
    ['Alle: krus, ske, tallerken i alt', ['mug each', 'utensil each', 'other-cook each']],
    ['Iedereen: mok, bord, lepel', ['mug each', 'other-cook each', 'utensil each']],
    ['Każdy: kubek, łyżka, miska', ['mug each', 'utensil each', 'bowl each']],
    ['各自:マグ、スプーン', ['mug each', 'utensil each']],
    ['У каждого: кружка, ложка, миска', ['mug each', 'utensil each', 'bowl each']],
  ])('after the words that open the line: %s', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it.each([
    ['Group gear:\n- pot 5 L\nPersonal gear:\n- mug 300 ml', ['pot 5000 ml', 'mug 300 ml each']],
    ['Jeder bringt mit:\n- Becher\nGruppenmaterial:\n- Topf 5 L', ['mug each', 'pot 5000 ml']],
    ['GROUP KIT\nPot 5 L\nPERSONAL KIT\nMug\nSpoon', ['pot 5000 ml', 'mug each', 'utensil each']],
    ['Coletivo\npanela 8L\nIndividual\nprato\ncaneca', ['pot 8000 ml', 'other-cook each', 'mug each']],
    ['- Mug\neach\n- Pot 1 L', ['mug', 'pot 1000 ml']],
    ['Persönliche Ausrüstung\n- Becher\n- Löffel', ['mug each', 'utensil each']],
    ['Matériel individuel :\n- quart\nMatériel collectif :\n- marmite 5 L', ['mug each', 'pot 5000 ml']],
    ['Material individual:\n- taza\n- cuchara', ['mug each', 'utensil each']],
    ['Personlig utrustning:\n- kåsa\nGemensamt:\n- kastrull 3 l', ['mug each', 'pot 3000 ml']],
    ['個人装備\n- マグ 300ml\n共同装備\n- 鍋 3L', ['mug 300 ml each', 'pot 3000 ml']],
  ])('under a heading: %j', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it.each([
    ['1 mug each', ['mug each']],
    ['1 mug/person', ['mug each']],
    ['- 2 bottles p.p.', ['2 bottle each']],
    ['Water bottles 1 L/person', ['bottle 1000 ml each']],
    ['Mug, bowl and spoon each', ['mug each', 'bowl each', 'utensil each']],
    ['1 pot, 1 mug each', ['pot', 'mug each']],
    ['Fuel: 100 g gas per person', ['fuel each']],
    ['une gourde 1 L par pers.', ['bottle 1000 ml each']],
    ['- termo 1L cada uno', ['bottle 1000 ml each']],
    ['- garrafa 1.5L cada', ['bottle 1500 ml each']],
    ['mugs - own', ['mug each']],
    ['pentola 1 l ciascuno', ['pot 1000 ml each']],
    ['thermos 1L chacun', ['bottle 1000 ml each']],
    ['マグ 1人1個', ['mug each']],
  ])('after the thing: %s', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it.each([
    ['Pot 0.75 L pp', ['pot']],
    ['Pots: 1.5 pints per person', ['pot']],
    ['Pot 3 L (0.75 L pp)', ['pot 3000 ml']],
    ['Topf, 0,7 l pro Person', ['pot']],
    ['Casserole 0,75 L par personne', ['pot']],
  ])('a share of a pot is no size of it: %s', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it.each([
    ['2 pots, 1 L each', ['2 pot 1000 ml']],
    ['mugs (each 60 g)', ['mug']],
    ['Por cada 3 personas: 1 hornillo, 1 olla de 2 litros', ['stove', 'pot 2000 ml']],
    ['my own stove, gas', ['stove']],
    ['2 bottles 1 L each', ['2 bottle 1000 ml']],
    ['mug 60 g each', ['mug']],
    ['Bensin 0,2 l pr person pr dag', ['fuel']],
    ['Töpfe, jeder 1 L', ['pot 1000 ml']],
    ['Jeder Topf 1 L', ['pot 1000 ml']],
    ['2 cuillères, 12 g chacune', ['2 utensil']],
    ['Was\tMenge\tWer\nTeller tief, Becher\t4\tjeder\nTopf\t1\tUlli', ['4 bowl', '4 mug', 'pot']],
  ])('each of the things is none of the people: %j', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it.each([
    ["Chacun apporte : gobelet, 1,5 L d'eau.", ['mug each']],
    ['Plate, mug, 1.5 l of water', ['other-cook', 'mug']],
    ['Alle har egen kopp, skje og tallerken', ['mug each', 'utensil each', 'other-cook each']],
    ['Bottle, 1.5 l water', ['bottle 1500 ml']],
    ['Mug 0.5 l', ['mug 500 ml']],
  ])('water to bring is no size: %s', (text, things) => {
    expect(brought(text)).toEqual(things);
  });

  it('makes no party of it', () => {
    for (const text of ['- 2 bottles p.p.', 'マグ 1人1個', 'マグ(一人一個)', 'Water: 1 L/person'])
      expect(readList(text).trip.people).toBeUndefined();
  });
});
