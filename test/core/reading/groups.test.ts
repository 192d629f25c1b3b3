import { describe, expect, it } from 'vitest';
import { readList } from '../../../core/index.js';
import { valueOf } from '../../../core/model/given.js';
import { told } from '../../reading/told.js';

/** What a text says of groups: how many people, how many groups, how many in each. */
function groups(text: string): (number | undefined)[] {
  const { people, cookGroups, peoplePerPot } = readList(text).trip;
  return [people, cookGroups, peoplePerPot].map((given) => given && valueOf(given));
}

describe('groups that each cook on their own', () => {
  it.each([
    ['8 people, 2 cook groups of 4', [8, 2, 4]],
    ['2 cook groups of 4', [8, 2, 4]],
    ['Ten students in 5 pairs', [10, 5, 2]],
    ['3 Kochgruppen zu je 4', [12, 3, 4]],
    ['12 Jugendliche in 6 Zweierteams', [12, 6, 2]],
    ['3 groupes de cuisine de 4', [12, 3, 4]],
    ['12 personnes en 6 binômes', [12, 6, 2]],
    ['2 grupos de cocina de 5', [10, 2, 5]],
    ['3 squadriglie da 6', [18, 3, 6]],
    ['3 patrulhas de 6, uma panela cada', [18, 3, 6]],
    ['3 kookgroepen van 4', [12, 3, 4]],
    ['3 matlag om 4', [12, 3, 4]],
    ['3 kogegrupper på 4, en gryde til hver', [12, 3, 4]],
    ['3 zastępy po 6', [18, 3, 6]],
    ['4 патруля по 5', [20, 4, 5]],
    ['12 people, 3 cook groups', [12, 3, undefined]],
  ])('%s', (text, told) => {
    expect(groups(`${text}\n- pot 3 L`)).toEqual(told);
  });

  it.each([
    'Socks, 3 pairs',
    '- 2 pairs of gloves',
    'in 5 pairs of socks',
    '2 groups of tents',
    '3 Paar Socken',
    '5 paires de chaussettes',
    '4 par strumpor',
    '2 pary skarpet',
    'The group left at 6',
  ])('are none: %s', (text) => {
    expect(groups(`${text}\n- pot 3 L`)).toEqual([undefined, undefined, undefined]);
  });

  it.each([
    ['Per pair:\n- pot 1.5 L\n- gas stove', 2],
    ['Each patrol (6): pot 1.5 L, gas stove', 6],
    ['Every cook group of 4 carries:\n- pot 1.5 L\n- gas stove', 4],
    ['Each tent has a pot 1.5 L and a gas stove.', undefined],
    ['Pro Zweierteam:\n- Topf 1,5 l\n- Gaskocher', 2],
    ['Je Kochgruppe (4): Topf 1,5 l, Gaskocher', 4],
    ['Par binôme :\n- popote 1,5 l\n- réchaud à gaz', 2],
    ['Cada pareja: olla 1,5 l, hornillo de gas', 2],
    ['Per coppia: pentola 1,5 l, fornello a gas', 2],
    ['Por dupla: panela 1,5 l, fogareiro a gás', 2],
    ['Per tweetal: pan 1,5 l, gasbrander', 2],
    ['Varje patrull (6):\n- kastrull 1,5 l\n- gaskök', 6],
    ['Pr. patrulje (6): gryde 1,5 l, gasblus', 6],
    ['Na parę: garnek 1,5 l, kuchenka gazowa', 2],
    ['На пару: котелок 1,5 л, газовая горелка', 2],
  ])('what each brings: %j', (text, people) => {
    const { items, trip } = readList(text);
    expect(items.map(({ kind, perGroup, perPerson }) => [kind, perGroup, perPerson])).toEqual([
      ['pot', true, false],
      ['stove', true, false],
    ]);
    expect(trip.peoplePerPot && valueOf(trip.peoplePerPot)).toBe(people);
    expect(trip.people).toBeUndefined();
  });

  it.each([
    ['pot 1 L, 1 per pair', { kind: 'pot', ml: [1000], perGroup: true }],
    ['1 pot between three', { kind: 'pot', perGroup: true }],
    ['1 pot 2 L per cook group', { kind: 'pot', ml: [2000], perGroup: true }],
    ['ein Topf 2 l pro Seilschaft', { kind: 'pot', ml: [2000], perGroup: true }],
    ['une popote 2 l par cordée', { kind: 'pot', ml: [2000], perGroup: true }],
    ['una olla 2 l por patrulla', { kind: 'pot', ml: [2000], perGroup: true }],
    // For all together, as far as it says.
    ['popote 2 l pour 4 personnes', { kind: 'pot', ml: [2000] }],
    ['pot 2 L for the group', { kind: 'pot', ml: [2000] }],
    // Each has their own.
    ['4 people, each with own 600 ml pot', { kind: 'pot', ml: [600], perPerson: true }],
    ['jeder mit eigenem Topf 0,6 l', { kind: 'pot', ml: [600], perPerson: true }],
    ['chacun sa popote 60 cl', { kind: 'pot', ml: [600], perPerson: true }],
    ['cada uno con su olla 600 ml', { kind: 'pot', ml: [600], perPerson: true }],
  ])('in one line: %s', (text, item) => {
    expect(readList(text).items.map(told)).toEqual([item]);
  });

  it('lend to their heading’s things alone', () => {
    const { items } = readList('## Per pair\n- pot 1 L\n\n## Per person\n- mug\n\n## Shared\n- frying pan');
    expect(items.map(({ perGroup, perPerson }) => [perGroup ?? false, perPerson])).toEqual([
      [true, false],
      [false, true],
      [false, false],
    ]);
  });
});
