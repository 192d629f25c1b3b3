import { phrase } from '../../model/phrase.js';
import type { Span } from '../../model/span.js';
import { assumed, stated } from '../../reading/items/draft.js';
import type { ColumnFigures } from '../../reading/items/columns.js';
import type { Thing } from '../things/thing.js';
import type { Claim, Field, Told } from './claim.js';

/** What a column says outranks all words. */
const STRENGTH = 10;

/** What the columns of figures say of the things of their row; a mass stands with the first that is no small gear. */
export function columnClaims(things: readonly Thing[], figures: ColumnFigures): Claim[] {
  const claims: Claim[] = [];
  const add = <F extends Field>(thing: Thing, field: F, given: Told[F], basis?: Claim['basis']) =>
    claims.push({ of: thing.id, field, given, tokens: [], distance: 0, rule: 'columns', strength: STRENGTH, basis });
  const { quantity, fused } = figures;
  const each = figures.ownedByEach === true && (quantity?.value ?? 1) === 1;
  const because = phrase`figures run together by copying: the first digit is taken as the count`;
  const given = ({ value, span }: { value: number; span: Span }) =>
    fused === true ? assumed(value, because, phrase`write the count and the mass apart`, span) : stated(value, span);
  for (const thing of things) {
    if (quantity !== undefined) add(thing, 'quantity', given(quantity));
    if (figures.perPerson === true || each) add(thing, 'perPerson', true);
  }
  const thing = things.find(({ kind }) => kind !== 'other-cook' && kind !== 'utensil') ?? things[0];
  const mass = figures.each ?? figures.mass ?? figures.total;
  if (thing === undefined || mass === undefined || mass.value <= 0) return claims;
  if (figures.net === true && thing.kind === 'fuel') add(thing, 'fuelMassG', stated(mass.value, mass.span));
  else if (figures.guessed === true)
    add(
      thing,
      'massG',
      assumed(
        mass.value,
        phrase`the column shows no unit; figures this large are taken as grams`,
        phrase`write the unit`,
        mass.span,
      ),
      basisOf(figures),
    );
  else add(thing, 'massG', given(mass), basisOf(figures));
  return claims;
}

function basisOf({ each, mass, total, quantity }: ColumnFigures): 'each' | 'line' | undefined {
  if (each !== undefined) return 'each';
  if (mass === undefined) return 'line';
  if (total === undefined || quantity === undefined || quantity.value < 2) return undefined;
  return Math.abs(total.value - mass.value * quantity.value) < 0.02 * total.value ? 'each' : undefined;
}
