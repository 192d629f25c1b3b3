import { stated } from '../../reading/items/draft.js';
import type { ItemKind } from '../../model/item.js';
import type { Phrase } from '../phrases/phrases.js';
import { SIGN } from '../tokens/tokens.js';
import type { Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Claim } from './claim.js';
import { isRate } from './amounts.js';
import { groupOf } from '../../reading/trip/groups.js';
import { rule } from './rule.js';
import type { Scene } from './scene.js';

const CERTAIN = { strength: 5, distance: 0 };

export const perPerson = rule({
  id: 'per-person',
  needs: ['perPerson', 'people'],
  find: (scene) => {
    return forEachPerson(scene).map((thing): Claim => scene.claim('per-person', thing, 'perPerson', true, [], CERTAIN));
  },
  examples: [
    ['- mug, one each', 'mug a person'],
    ['- 1 bowl per person', 'bowl a person'],
    ['Each scout: mug, bowl', 'mug a person; bowl a person'],
    ['- plate, mug and spoon each', 'other-cook a person; mug a person; utensil a person'],
  ],
  not: [
    ['- fuel tablets, 14 g each', 'fuel 14 g net solid-fuel'],
    ['- pot, 0.75 l per person', 'pot'],
  ],
});

export const lentPerPerson = rule({
  id: 'per-person-from-the-heading',
  find: (scene) =>
    scene.lent.perPerson
      ? scene.things.map((thing): Claim =>
          scene.claim('per-person-from-the-heading', thing, 'perPerson', true, [], CERTAIN),
        )
      : [],
  examples: [['Everyone brings:\n- mug', 'mug a person']],
  not: [['Group kit:\n- mug', 'mug']],
});

export const perGroup = rule({
  id: 'per-group',
  find: (scene) =>
    scene.things.flatMap((thing, i): Claim[] => {
      if (scene.lent.perPerson || forEachPerson(scene).includes(thing)) return [];
      const to = Math.min(scene.endOf(thing), scene.things[i + 1]?.first ?? Infinity);
      const said = groupOf(scene.row.stretch, [thing.first, thing.last], to);
      const given = said ?? scene.lent.perGroup;
      return given === undefined ? [] : [scene.claim('per-group', thing, 'perGroup', given, [], CERTAIN)];
    }),
  examples: [['- Per pair: pot 1 l, stove', 'pot a group 1000 ml; stove a group']],
  not: [['- pot for a pair of friends', 'pot']],
});

/** The things that everybody brings, by what the row says. */
function forEachPerson(scene: Scene): Thing[] {
  const own = scene.things.filter((thing) => isForEach(scene, thing) || isLed(scene.row, thing));
  const ware = scene.things.filter((thing) => !own.includes(thing) && isBeforeWare(scene, thing, own));
  return [...own, ...ware];
}

/** "one each", "per person", "je eine", "a mug each"; not "14 g each", nor a pot's "0.75 l per person". */
function isForEach(scene: Scene, thing: Thing): boolean {
  const { row } = scene;
  const shared = row.of('people').some((word) => sharesOut(row, word) && scene.tie(thing, word.first, word.last));
  return shared || row.of('perPerson').some((word) => saysOf(scene, thing, word));
}

/** "1人1個", "1 person 1 mug": for one person so many. */
function sharesOut({ tokens }: Row, { first, last }: Phrase): boolean {
  return tokens.number[first - 1]?.value === 1 && last + 1 < tokens.n && tokens.number[last + 1] !== undefined;
}

function saysOf(scene: Scene, thing: Thing, word: Phrase): boolean {
  const { row } = scene;
  if (scene.tie(thing, word.first, word.last) === undefined || isOfNext(row, thing, word)) return false;
  const ambiguous = row.opens('each', word.first)?.last === word.last;
  const measured = row.figures.find(({ last }) => last === word.first - 1);
  if (measured !== undefined && ambiguous)
    return measured.unit.dimension === 'volume' && thing.noun?.many === false && !isCounted(row, thing);
  const pot = thing.kind === 'pot' || thing.kind === 'kettle';
  if (measured !== undefined && ((pot && measured.unit.dimension === 'volume') || isRate(row, measured))) return false;
  if (word.last > word.first || row.is(word.first, 'pp')) return true;
  if (measured !== undefined || isOfPieces(row, thing, word)) return false;
  if (!ambiguous) return true;
  const count = (at: number) =>
    row.bare.some((one) => one.at === at && one.number.whole) || row.ends('number', at) !== undefined;
  if (count(word.first - 1)) return true;
  if (count(word.last + 1)) return row.opens('people', word.last + 2) === undefined;
  const next = word.last + 1;
  return word.first - 1 === thing.last && (next >= row.tokens.n || row.breakAt(next) > 0);
}

function isCounted(row: Row, { first }: Thing): boolean {
  return row.bare.some(({ at, value }) => at < first && value > 1);
}

/** "… two cans of 230 g. Each a mug": a later sentence that names a thing of its own speaks of that. */
function isOfNext(row: Row, { last }: Thing, word: Phrase): boolean {
  const { from, to } = row.clause(word.first, word.last);
  return from > last && row.of('kind').some((noun) => noun.first > word.last && noun.last < to);
}

/** "Jeder Topf", "Töpfe, jeder 1 L": each of the things, not of the people. */
function isOfPieces(row: Row, { first }: Thing, word: Phrase): boolean {
  return word.last === first - 1 || row.figures.some((figure) => figure.first === word.last + 1);
}

/** Words of the label that opens a line: "everyone else brings:". */
const LONGEST_LABEL = 4;

/** Whether the words that everybody brings it open the line or sentence of a thing: "each scout: …"; up to what is shared. */
function isLed(row: Row, thing: Thing): boolean {
  const at = Math.max(thing.first, 0);
  const lead = row.of('perPerson').findLast((word) => word.first <= at && opensLabel(row, word));
  if (lead === undefined || row.breakIn(lead.last + 1, at) === 2) return false;
  return !row.of('shared').some(({ first }) => first > lead.first && first < at);
}

function opensLabel(row: Row, { first, last }: Phrase): boolean {
  if (first > 0 && row.breakAt(first) < 2) return false;
  if (last > first) return true;
  for (let at = first + 1; at < first + LONGEST_LABEL && at < row.tokens.n; at++) {
    if (row.is(at, ':', '=')) return true;
    if (row.tokens.kind[at] === SIGN) return at === first + 1 && row.is(at, '-', '–');
  }
  return false;
}

/** What one eats and drinks from. */
const WARE: ReadonlySet<ItemKind> = new Set(['mug', 'bowl', 'utensil', 'other-cook']);

/** "Plate, mug and spoon each": what stands after the last piece of ware is of those before it as well. */
function isBeforeWare({ row, things }: Scene, thing: Thing, own: readonly Thing[]): boolean {
  for (const next of things.slice(things.indexOf(thing) + 1)) {
    if (!WARE.has(thing.kind) || !WARE.has(next.kind) || row.breakIn(thing.last + 1, next.first) === 2) return false;
    if (own.includes(next)) return true;
  }
  return false;
}

export const countInName = rule({
  id: 'count-in-the-name',
  needs: ['unit'],
  find: (scene) =>
    scene.things.flatMap((thing): Claim[] => {
      const { row } = scene;
      const figure = row.figures.find(({ first, last }) => last === thing.last && first < thing.first);
      const number = row.tokens.number[figure?.first ?? -1];
      if (thing.kind !== 'mug' || figure === undefined || number?.whole !== true) return [];
      const given = stated(number.value, row.span(figure.first, figure.first));
      const places = [[figure.first, figure.last] as const];
      return [scene.claim('count-in-the-name', thing, 'quantity', given, places, { strength: 9, distance: 0 })];
    }),
  examples: [['- 4 cups', 'mug ×4']],
  not: [['- 3 cup kettle', 'kettle 710 ml']],
});
