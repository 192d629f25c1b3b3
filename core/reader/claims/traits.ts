import type { Given } from '../../model/given.js';
import type { ItemKind } from '../../model/item.js';
import { phrase } from '../../model/phrase.js';
import { assumed, stated } from '../../reading/items/draft.js';
import type { Role } from '../../reading/text/lexicon.js';
import type { Phrase } from '../phrases/phrases.js';
import type { Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Claim, Field } from './claim.js';
import { rule } from './rule.js';
import { isVessel } from './vessels.js';

/** Words that say something of the thing they hang together with: of which kinds, and in which field. */
interface Trait {
  readonly role: Role;
  readonly field: Field;
  readonly of: (kind: ItemKind) => boolean;
  /** Words that say it only in appearance. */
  readonly but?: (row: Row, word: Phrase, thing: Thing) => boolean;
}

const TRAITS: readonly Trait[] = [
  { role: 'materials', field: 'material', of: () => true, but: isOfOther },
  { role: 'stoveTypes', field: 'stoveType', of: (kind) => kind === 'stove' },
  { role: 'stoveForms', field: 'stoveForm', of: (kind) => kind === 'stove' },
  { role: 'fuelTypes', field: 'fuelType', of: (kind) => kind === 'fuel' },
];

export const traits = rule({
  id: 'traits',
  needs: ['materials', 'stoveTypes', 'stoveForms', 'fuelTypes'],
  find: (scene) =>
    scene.things.flatMap((thing) =>
      TRAITS.filter(({ of }) => of(thing.kind)).flatMap(({ role, field, but }) =>
        scene.row.of(role).flatMap((word): Claim[] => {
          const tie = scene.tie(thing, word.first, word.last);
          if (tie === undefined || !scene.owns(thing, word.first, word.last) || but?.(scene.row, word, thing) === true)
            return [];
          const because = field === 'fuelType' ? thing.because : undefined;
          const span = scene.row.span(word.first, word.last);
          const given =
            because === undefined
              ? stated(word.value, span)
              : assumed(word.value, because, phrase`write what burns`, span);
          // An all-in-one system is one whatever else is said of what it burns.
          const strength = word.value === 'integrated' ? 9 : tie.strength;
          return [scene.claim('traits', thing, field, given as never, [], { ...tie, strength })];
        }),
      ),
    ),
  examples: [
    ['- pot, titanium', 'pot titanium'],
    ['- gas stove, screws onto the can', 'stove gas upright'],
    ['- petrol 0.5 l', 'fuel 500 ml liquid liquid-fuel'],
  ],
  not: [['- wood stove', 'stove wood']],
});

/** "wooden handle", "for the wood stove": of the noun that it stands right before, or what burns. */
function isOfOther(row: Row, word: Phrase, thing: Thing): boolean {
  const before = ({ first, last }: Phrase) => first === word.last + 1 || (first === word.first && last > word.last);
  const part = row.of('handles').some(before) || row.of('bail').some(before);
  const noun = row.of('kind').some((one) => (one.value === 'stove' || one.value === 'utensil') && before(one));
  return (word.first > thing.last && (part || noun)) || burns(row, word, thing);
}

/** Wood and the like that burns is not what a stove or a fuel is made of. */
function burns(row: Row, word: Phrase, { kind }: Thing): boolean {
  if (kind !== 'fuel' && kind !== 'stove') return false;
  if (kind === 'fuel' && (word.value === 'wood' || word.value === 'metal')) return true;
  return (['stoveTypes', 'fuelTypes'] as const).some((role) =>
    row.of(role).some(({ first, last }) => first <= word.first && last >= word.last),
  );
}

export const lentTypes = rule({
  id: 'types-from-the-heading',
  find: (scene) =>
    scene.things.flatMap((thing): Claim[] => {
      const { stoveType, fuelType } = scene.lent;
      const weak = { strength: 0.5, distance: 0 };
      if (thing.kind === 'stove' && stoveType !== undefined) {
        // What is named by its can alone may burn anything that the heading names.
        const vague = scene.row
          .of('stoveTypes')
          .every((type) => scene.row.of('container').some(({ first }) => first === type.first));
        const given = assumed(stoveType, phrase`the heading says so`, phrase`write what it burns`);
        return [
          scene.claim('types-from-the-heading', thing, 'stoveType', given, [], vague ? { ...weak, strength: 5 } : weak),
        ];
      }
      if (thing.kind !== 'fuel') return [];
      if (thing.fuel === 'gas')
        return [
          scene.claim(
            'types-from-the-heading',
            thing,
            'fuelType',
            assumed<'gas'>('gas', phrase`cans and canisters hold gas`, phrase`write what is in it`),
            [],
            weak,
          ),
        ];
      if (fuelType === undefined) return [];
      const given = assumed(fuelType, phrase`the heading says so`, phrase`write what is in it`);
      return [scene.claim('types-from-the-heading', thing, 'fuelType', given, [], weak)];
    }),
  examples: [['## Spirit\n- stove 95 g', 'stove 95 g ~alcohol']],
  not: [['- stove 95 g', 'stove 95 g']],
});

export const fittings = rule({
  id: 'lid-bail-handles',
  needs: ['kind', 'bail', 'handles', 'lidded', 'hung'],
  find: (scene) =>
    scene.things.flatMap((thing): Claim[] => {
      const { row } = scene;
      const { kind, lid, first, last } = thing;
      if (!isVessel(kind) && kind !== 'stove' && kind !== 'other-cook') return [];
      const claims: Claim[] = [];
      const add = (field: 'lid' | 'bail' | 'handles', given: Given<boolean>, strength: number, distance = 0) =>
        claims.push(scene.claim('lid-bail-handles', thing, field, given, [], { strength, distance }));
      if (lid !== undefined) add('lid', stated(!lid.denied, row.span(lid.phrase.first, lid.phrase.last)), 9);
      for (const word of row.of('lidded')) {
        const tie = scene.tie(thing, word.first, word.last);
        if (tie !== undefined) add('lid', stated(true, row.span(word.first, word.last)), tie.strength, tie.distance);
      }
      for (const role of ['bail', 'handles'] as const)
        for (const word of row.of(role)) {
          const tie = scene.tie(thing, word.first, word.last);
          if (tie === undefined || !scene.owns(thing, word.first, word.last) || !isFitting(row, word, thing)) continue;
          add(role, stated(!isDenied(row, word), row.span(word.first, word.last)), tie.strength, tie.distance);
        }
      if (isVessel(kind) && row.within('hung', Math.max(first, 0), last) !== undefined)
        add('bail', assumed(true, phrase`a billy hangs by a bail`, phrase`write "no bail" if it has none`), 0.5);
      return claims;
    }),
  examples: [
    ['- pot with lid and bail', 'pot lid bail'],
    ['- billy 2 l', 'pot 2000 ml ~bail'],
    ['- pot, no lid', 'pot no lid'],
    ['- pot without handles', 'pot no handles'],
  ],
  not: [['- pot handle', 'other-cook gripper']],
});

function isFitting(row: Row, word: Phrase, thing: Thing): boolean {
  if (word.first >= thing.first && word.last <= thing.last) return false;
  if (row.opens('missing', word.last + 1) !== undefined) return false;
  if (word.role === 'bail') return !row.is(word.last + 1, 'hole');
  return !row.of('bail').some(({ first, last }) => first <= word.first && last >= word.last);
}

function isDenied(row: Row, word: Phrase): boolean {
  return row
    .of('no')
    .some((no) => word.first - no.last >= 1 && word.first - no.last <= 3 && row.breakIn(no.last + 1, word.first) === 0);
}

export const roles = rule({
  id: 'roles-of-gear',
  needs: ['roles'],
  find: (scene) =>
    scene.things.flatMap((thing) => {
      const word = scene.row.within('roles', thing.first, thing.last);
      if (thing.kind !== 'other-cook' || word === undefined) return [];
      return [scene.claim('roles-of-gear', thing, 'role', word.value as never, [], { strength: 1, distance: 0 })];
    }),
  examples: [['- pot gripper 30 g', 'other-cook 30 g gripper']],
  not: [['- plate', 'other-cook']],
});
