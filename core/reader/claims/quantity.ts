import { phrase } from '../../model/phrase.js';
import { assumed, stated } from '../../reading/items/draft.js';
import { isDegrees } from '../../reading/trip/degrees.js';
import type { Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Claim } from './claim.js';
import { rule } from './rule.js';
import type { Scene } from './scene.js';

/** More pieces of one thing is a model, a size or a mass; more right after a singular noun, too; more parts no cook set has. */
const MOST = 99;
const MOST_BESIDE = 24;
const MOST_PARTS = 20;

interface Count {
  readonly value: number;
  readonly first: number;
  readonly last: number;
}

/** A whole number: digits that no unit follows, or a number word. */
function countsIn(row: Row): Count[] {
  const counts: Count[] = [];
  for (const { at, value, number } of row.bare)
    if (number.whole && !isDegrees(row.stretch, at)) counts.push({ value, first: at, last: at });
  for (const { value, first, last } of row.of('number'))
    // French "et" is one in Norwegian; between two figures it joins them.
    if (Number.isInteger(value) && row.opens('and', first) === undefined && !isDegrees(row.stretch, first))
      counts.push({ value: Number(value), first, last });
  return counts.sort((a, b) => a.first - b.first);
}

const countEndingAt = (row: Row, at: number) => countsIn(row).find(({ last }) => last === at);
const countOpeningAt = (row: Row, at: number) => countsIn(row).find(({ first }) => first === at);

function claimCount(scene: Scene, rule: string, thing: Thing, count: Count, strength: number, distance = 0): Claim {
  const given = stated(count.value, scene.row.span(count.first, count.last));
  return scene.claim(rule, thing, 'quantity', given, [[count.first, count.last]], { strength, distance });
}

/** Strengths: before the name, after it, by what a name alone says. */
const BEFORE = 6;
const AFTER = 5;
const NAMED = 0.5;
const GUESSED = 0.2;

export const parts = rule({
  id: 'parts-of-a-set',
  needs: ['parts'],
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      if (thing.kind !== 'pot' || thing.many === true) return [];
      return row.of('parts').flatMap((word) => {
        const hyphen = row.is(word.first - 1, '-') ? 1 : 0;
        const count = countEndingAt(row, word.first - 1 - hyphen);
        const tie = scene.tie(thing, word.first, word.last);
        if (tie === undefined || count === undefined || count.value < 2 || count.value > MOST_PARTS) return [];
        const given = assumed(
          1,
          phrase`a set of ${count.value} parts; how many of them are pots is not said`,
          phrase`write the pots of the set one by one`,
          row.span(count.first, word.last),
        );
        return [
          scene.claim('parts-of-a-set', thing, 'quantity', given, [[count.first, word.last]], { ...tie, strength: 8 }),
        ];
      });
    }),
  examples: [['- cook set 3 piece', 'pot']],
  not: [['- 3 pots', 'pot ×3']],
});

export const bracketed = rule({
  id: 'counted-in-brackets',
  needs: ['kind'],
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      const open = thing.last + 1;
      if (thing.kind !== 'pot' || !row.is(open, '(')) return [];
      let close = open + 1;
      while (close < row.tokens.n && !row.is(close, ')')) {
        if (row.opens('people', close) !== undefined || row.opens('kind', close) !== undefined) return [];
        close++;
      }
      const counts = countsIn(row).filter(({ first, last }) => first > open && last < close);
      if (counts.length < 2) return [];
      const value = counts.reduce((sum, count) => sum + count.value, 0);
      const count = { value, first: counts[0]!.first, last: counts.at(-1)!.last };
      return [claimCount(scene, 'counted-in-brackets', thing, count, 7)];
    }),
  examples: [['- Pot set (one medium and one small)', 'pot ×2']],
  not: [['- Pot (one)', 'pot']],
});

export const packs = rule({
  id: 'packs-of',
  needs: ['packOf'],
  find: (scene) =>
    scene.row.of('packOf').flatMap((pack) => {
      const { row } = scene;
      const inside = countOpeningAt(row, pack.last + 1);
      if (inside === undefined || inside.value < 1 || inside.value > MOST) return [];
      const times = countEndingAt(row, pack.first - 1);
      const factor = times !== undefined && times.value <= MOST ? times : undefined;
      const value = inside.value * (factor?.value ?? 1);
      const count = { value, first: factor?.first ?? pack.first, last: inside.last };
      return scene.things.flatMap((thing) => {
        const tie = scene.tie(thing, count.first, count.last);
        return tie === undefined ? [] : [claimCount(scene, 'packs-of', thing, count, 7, tie.distance)];
      });
    }),
  examples: [['- fuel tablets, 2 packs of 6, 14 g each', 'fuel ×12 14 g net solid-fuel']],
  not: [['- 2 packs, mug', 'mug']],
});

export const countBefore = rule({
  id: 'count-before-the-name',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const { row } = scene;
      const previous = scene.things.findLast((other) => other.last < thing.first);
      const from = Math.max(previous === undefined ? 0 : previous.last + 1, scene.startOf(thing));
      const pair = pairBefore(row, thing, from);
      if (pair !== undefined) return [claimCount(scene, 'count-before-the-name', thing, pair, BEFORE)];
      for (const count of countsIn(row).reverse()) {
        if (count.last >= thing.first || count.first < from) continue;
        if (isLabelled(row, count, thing)) break;
        if (count.value > MOST || isName(scene, thing, count, from)) continue;
        if (isOfUnknown(row, thing, count)) break;
        if (previous !== undefined && !countsThis(scene, thing, count)) continue;
        return [claimCount(scene, 'count-before-the-name', thing, count, BEFORE, thing.first - count.last)];
      }
      return [];
    }),
  examples: [
    ['- 2 x 1 L bottles', 'bottle ×2 1000 ml'],
    ['- two mugs, one pot', 'mug ×2; pot'],
    ['- both mugs', 'mug ×2'],
  ],
  not: [
    ['- Burrow 2 pot', 'pot'],
    ['- two-burner stove', 'stove'],
    ['- pot no. 1', 'pot'],
  ],
});

/** "a pair of cups"; a double burner is one stove. */
function pairBefore(row: Row, thing: Thing, from: number): Count | undefined {
  if (thing.kind === 'stove' && thing.many === false) return undefined;
  const pair = row.of('pair').find(({ first, last }) => {
    const tied = row.is(last + 1, '-') && row.tokens.gap[last + 1] === 0;
    const people = row.covers('eachGroup', first) !== undefined;
    return first >= from && last < thing.first && thing.first - last <= 3 && !tied && !people;
  });
  return pair === undefined ? undefined : { value: 2, first: pair.first, last: pair.last };
}

/** "Each patrol (6): pots": what stands in the label of a line counts none of its things. */
function isLabelled(row: Row, count: Count, thing: Thing): boolean {
  for (let at = count.last + 1; at < thing.first; at++) if (row.is(at, ':') && row.is(at - 1, ')')) return true;
  return false;
}

/** Behind the thing before, a count is of this one if nothing parts them, or the row counts before its names. */
function countsThis({ row, things }: Scene, thing: Thing, count: Count): boolean {
  if (row.breakIn(count.last + 1, thing.first) > 0) return row.breakAt(count.first) > 0;
  const previous = things.findLast((other) => other.last < thing.first)!;
  if (row.breakIn(previous.last + 1, count.first) > 0) return true;
  const after = row.bare.some(({ at }) => at === things.at(-1)!.last + 1);
  return thing.many !== false && !after && !row.is(count.first - 1, 'x', '×');
}

/** "2 grills, bottle 10 kg": what a word between counts, unknown as it may be, and a comma parts from the thing. */
function isOfUnknown(row: Row, thing: Thing, count: Count): boolean {
  const next = count.last + 1;
  if (thing.many === true || !row.tokens.isWord(next) || row.is(next, 'x')) return false;
  if (row.opens('pieces', next) !== undefined || row.opens('with', next) !== undefined) return false;
  for (let at = next + 1; at < thing.first; at++) if (row.is(at, ',')) return true;
  return false;
}

/** "2nd pot", "24er Pfanne", "2e gourde". */
const ORDINALS: ReadonlySet<string> = new Set(['nd', 'rd', 'th', 'er', 'e', 'eme', 'º', 'ª']);

/** A number that is part of a name ("Burrow 2 pot", "two-burner stove", "no. 1"), of a person or a measure. */
function isName({ row }: Scene, thing: Thing, count: Count, from: number): boolean {
  const { tokens } = row;
  const { first } = count;
  const next = count.last + 1;
  if (isOfNext(row, thing, first, next)) return true;
  if (row.is(next, 'x', '×', '*', ')')) return false;
  if (tokens.gap[first] === 0 && first > from) {
    if (tokens.isWord(first - 1)) return true;
    // "T-5 stove"; a dash that opens the line is a bullet.
    if (row.is(first - 1, '-') && tokens.gap[first - 1] === 0 && tokens.isWord(first - 2)) return true;
  }
  if (tokens.gap[next] === 0 && ORDINALS.has(tokens.fold(next))) return true;
  if (thing.many === false && row.is(first - 1, '.') && row.is(first - 2, 'no', 'nr')) return true;
  const opens = first === from || row.breakAt(first) > 0 || (first > 0 && tokens.kind[first - 1] === 3);
  const counts = opens || row.ends('article', first - 1) !== undefined;
  return !counts && !(thing.many === true && thing.first - count.last <= 4);
}

/** Of flames, people or a month, or after a sign that makes it a price or a size. */
function isOfNext(row: Row, thing: Thing, first: number, next: number): boolean {
  if (row.is(next, '-') && row.tokens.gap[next] === 0) return true;
  if (thing.kind === 'stove' && row.opens('flames', next) !== undefined) return true;
  if (row.is(first - 1, '#', '$', '€', '£', '=', 'ø') || row.opens('month', next) !== undefined) return true;
  return row.opens('people', next) !== undefined && next < thing.first;
}

export const countAfter = rule({
  id: 'count-after-the-name',
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const next = scene.things.find((other) => other.first > thing.last);
      const to = Math.min(next?.first ?? Infinity, scene.endOf(thing));
      return countsIn(scene.row).flatMap((count) => {
        if (count.first <= thing.last || count.last >= to || count.value > MOST) return [];
        if (isSharedOut(scene.row, thing, count)) return [];
        const called = isCalled(scene.row, thing, count);
        if (!isTimes(scene.row, count) && !called && !standsAlone(scene.row, thing, count, to)) {
          if (!followsClosely(scene, thing, count)) return [];
        }
        // Tablets are counted in their name, whatever the column of counts says of the box: "12 pcs of 5 g".
        const strength = called && thing.kind === 'fuel' && count.value > 1 && scene.isOneBox(thing) ? 11 : AFTER;
        return [claimCount(scene, 'count-after-the-name', thing, count, strength, count.first - thing.last)];
      });
    }),
  examples: [
    ['- mugs x2', 'mug ×2'],
    ['- bottles (2)', 'bottle ×2'],
    ['- Becher 4', 'mug ×4'],
    ['- fuel tablets 6 pcs', 'fuel ×6 solid-fuel'],
    ['- mugs: 2 × 450 ml', 'mug ×2 450 ml'],
  ],
  not: [
    ['- pot 1.3 L', 'pot 1300 ml'],
    ['- 2.5 l petrol in 3 bottles', 'fuel 2500 ml liquid liquid-fuel'],
  ],
});

/** "2.5 l in 3 bottles": what is measured as a whole is only carried in so many. */
function isSharedOut(row: Row, { kind }: Thing, { first }: Count): boolean {
  return (
    kind === 'fuel' &&
    row.ends('asides', first - 1) !== undefined &&
    row.figures.some(({ unit, last }) => unit.dimension === 'volume' && last < first)
  );
}

/** "mugs x2 260 g"; "× 2" and "2 x" that no further number follows: of "bottle 34 x2" the 2. */
function isTimes({ tokens }: Row, { first, last }: Count): boolean {
  const sign = (at: number) => tokens.fold(at) === 'x' || tokens.fold(at) === '×';
  const isNumber = (at: number) => at >= 0 && at < tokens.n && tokens.number[at] !== undefined;
  if (sign(last + 1) && tokens.gap[last + 1]! > 0 && tokens.gap[last + 2] === 0 && last + 2 < tokens.n) return false;
  if (!sign(first - 1) && !sign(last + 1)) return false;
  if (tokens.fold(first - 1) === 'x' && tokens.gap[first - 1] === 0 && isNumber(first - 2)) return false;
  const glued = tokens.gap[first] === 0 && sign(first - 1) && tokens.gap[first - 1] === 1;
  return glued || !isNumber(last + 1) || tokens.gap[last + 1] === 2;
}

/** "6 pcs", "12 tablets", "count: 2", "two each". */
function isCalled(row: Row, { kind }: Thing, { first, last }: Count): boolean {
  if (kind === 'fuel' && row.opens('tablets', last + 1) !== undefined) return true;
  const pieces = row.opens('pieces', last + 1);
  if (pieces !== undefined && !row.bare.some(({ at }) => at === pieces.last + 1)) return true;
  if (row.of('countLabels').some((label) => label.last === first - 1 || label.last === first - 2)) return true;
  return row.opens('perPerson', last + 1) !== undefined || row.covers('perPerson', first) !== undefined;
}

/** Between commas or brackets with nothing else, before another number, or as the first word of a cell. */
function standsAlone(row: Row, { many }: Thing, { value, first, last }: Count, to: number): boolean {
  const opens = row.breakAt(first);
  const spoken = row.tokens.isWord(first);
  const next = last + 1;
  const ends =
    next >= row.tokens.n || (row.tokens.number[next] !== undefined && !spoken) || next >= to || row.breakAt(next) > 0;
  if (many !== true && value > MOST_BESIDE) return false;
  if (opens === 2 && value > MOST_BESIDE && row.source.cells.length > 1) return false;
  if (opens > 0 && ends && !row.is(first - 1, '$', '€', '£', '=', 'ø', '#')) return true;
  return opens === 2 && many === true && spoken;
}

/** "Kettle 1", "Becher 4", "Sporks 5 1.8", "mugs: 2 × 450 ml", "bottle, 33 oz 3 Wiz", "stoves (gas) 2 Wiz". */
function followsClosely({ row, lent }: Scene, { last: noun, many }: Thing, { value, first, last }: Count): boolean {
  const { tokens } = row;
  if (tokens.isWord(first)) return false;
  const start = noun + 1;
  if (row.is(first - 1, ':') && first - start <= 2) return true;
  if (value < 1 || value > MOST_BESIDE) return false;
  const ends = last + 1 >= tokens.n;
  if (first === start && many !== true && lent.massUnit !== undefined && ends) return false;
  const number = !ends && tokens.number[last + 1] !== undefined;
  if (first === start) return tokens.gap[first]! > 0 && (value === 1 || many !== false || number);
  const measured = row.figures.some((figure) => figure.last === first - 1);
  return measured ? tokens.isWord(last + 1) : row.is(first - 1, ')');
}

export const countFromName = rule({
  id: 'count-by-the-name',
  find: (scene) =>
    scene.things.map((thing) => {
      const { first, last, many, noun } = thing;
      const span = scene.row.span(first, last);
      const give = (given: Claim<'quantity'>['given'], strength: number) =>
        scene.claim('count-by-the-name', thing, 'quantity', given, [], { strength, distance: 0 });
      if (first < 0 || noun === undefined)
        return give(assumed(1, phrase`one line is taken as one piece`, phrase`write how many`), GUESSED);
      if (many === undefined)
        return give(assumed(1, phrase`no number is given`, phrase`write how many`, span), GUESSED);
      if (!many || oneEach(scene.row)) return give(stated(1, span), NAMED);
      return give({ grounds: 'missing' }, NAMED);
    }),
  examples: [
    ['- mug', 'mug'],
    ['- cookset for mugs', 'pot'],
  ],
  not: [['- mugs', 'mug ×?']],
});

/** "cups, one each": the one is part of the phrase. */
function oneEach(row: Row): boolean {
  return row
    .of('perPerson')
    .some(({ first, last }) =>
      (['article', 'number'] as const).some((role) => row.within(role, first, last) !== undefined),
    );
}

export const countOfBoth = rule({
  id: 'count-of-both',
  needs: ['kind'],
  find: (scene) =>
    scene.things.flatMap((thing, i) => {
      const { row } = scene;
      const before = scene.things[i - 1];
      const joint = thing.first - 1;
      if (before === undefined || before.last !== joint - 1 || !row.is(joint, '+', '&')) return [];
      if (row.tokens.gap[joint] !== 0 || row.tokens.gap[thing.first] !== 0) return [];
      const count = countsIn(row).findLast(({ value, last }) => value > 1 && last < before.first);
      if (count === undefined || row.breakIn(count.last + 1, before.first) > 0) return [];
      const given = stated(count.value, row.span(count.first, count.last));
      return [scene.claim('count-of-both', thing, 'quantity', given, [], { strength: 1, distance: 0 })];
    }),
  examples: [['- 4x bowl+cup', 'bowl ×4; mug ×4']],
  not: [['- 4 bowls + cup', 'bowl ×4; mug']],
});
