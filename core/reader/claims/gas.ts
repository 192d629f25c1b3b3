import type { GasMix } from '../../model/item.js';
import type { Given } from '../../model/given.js';
import { phrase } from '../../model/phrase.js';
import { assumed, stated } from '../../reading/items/draft.js';
import { labelsOf } from '../../reading/items/gas-shares.js';
import type { Row } from '../rows/row.js';
import type { Phrase } from '../phrases/phrases.js';
import type { Claim } from './claim.js';
import { rule } from './rule.js';

/** The shares of a label are of nothing else. */
const CERTAIN = { strength: 12, distance: 0 };

export const gasMix = rule({
  id: 'gas-mix',
  needs: ['gasMixes'],
  find: (scene) =>
    scene.things.flatMap((thing): Claim[] => {
      const { row } = scene;
      if (thing.kind !== 'fuel') return [];
      const claims = labelsOf(row.stretch).flatMap(({ first, last, shares }): Claim[] => {
        const own = scene.owns(thing, first, last) || (thing.first <= last && thing.last >= first);
        if (!own || shares === undefined) return [];
        const given = stated(shares, row.span(first, last));
        return [scene.claim('gas-mix', thing, 'gasShares', given, [[first, last]], CERTAIN)];
      });
      const mix = mixOf(
        row,
        row.of('gasMixes').filter(({ first, last }) => scene.tie(thing, first, last) !== undefined),
      );
      if (mix !== undefined) claims.push(scene.claim('gas-mix', thing, 'gasMix', mix, [], CERTAIN));
      return claims;
    }),
  examples: [
    ['- gas 230 g, isobutane', 'fuel 230 g net gas isobutane'],
    ['- canister 230 g (70 % butane, 30 % propane)', 'fuel 230 g net gas ~isobutane butane 70 % propane 30 %'],
  ],
  not: [['- 2 gas canisters 230 g', 'fuel ×2 230 g net gas']],
});

/** Of several gases the name does not hang on their order: "butane/propane" is what "propane/butane" is. */
function mixOf(row: Row, named: readonly Phrase[]): Given<GasMix> | undefined {
  const one = named.find(({ value }) => value === 'winter') ?? named.find(({ value }) => value === 'isobutane');
  const [first] = named;
  const said = one ?? (named.every(({ value }) => value === first?.value) ? first : undefined);
  if (said !== undefined) return stated(said.value as GasMix, row.span(said.first, said.last));
  if (first === undefined) return undefined;
  return assumed(
    'isobutane',
    phrase`butane with propane boils about as an isobutane mix does`,
    phrase`write the shares of the gases`,
    row.span(first.first, named.at(-1)?.last ?? first.last),
  );
}
