import type { ItemKind } from '../../model/item.js';
import type { Measure } from '../quantities/measures.js';
import type { Term } from '../text/terms.js';
import { clauseOf, segmentOf, type Clause } from './clauses.js';
import type { Context } from './context.js';
import { termsOf, type Stretch } from './stretch.js';
import { isVessel } from './things.js';

/** What a noun is taken for, containers by what is in them; undefined for none of ours. */
export function kindOf(stretch: Stretch, term: Term, sorts: readonly Term[], context: Context): ItemKind | undefined {
  const clause = clauseOf(stretch, term);
  const has = (role: Term['role']) =>
    stretch.terms.some((other) => other.role === role && other.first >= clause.from && other.last < clause.to);
  const about = context.section;
  const elsewhere =
    about === 'car' || about === 'play' || about === 'medicine' || about === 'wash' || about === 'clothes';
  if (term.role === 'kind') {
    const kind = term.value as ItemKind;
    if (kind === 'fuel' && (has('otherUse') || elsewhere || (about === 'other' && !has('pieces') && !context.cooks)))
      return undefined;
    if (about === 'play' || (about === 'food' && isPackage(stretch, term, clause))) return undefined;
    if (about === 'car' && !isVesselToCookIn(kind)) return undefined;
    if (kind === 'other-cook' && about === 'other' && isGripper(stretch, term)) return undefined;
    if (kind === 'windscreen' && (about === 'sleep' || about === 'clothes' || isJacket(stretch, term, context)))
      return undefined;
    if (kind === 'bottle' && has('otherUse')) return undefined;
    if (
      kind === 'bottle' &&
      ((about === 'fuel' && !isOfWater(stretch, term)) ||
        stretch.terms.some(
          (other) =>
            other.role === 'kind' &&
            other.value === 'fuel' &&
            other.first === clause.from &&
            stretch.tokens[other.last + 1]?.fold === ':',
        ))
    )
      return 'fuel';
    if (kind === 'bottle' && comesWithStove(stretch, term, clause)) return 'fuel';
    if ((kind === 'bottle' || kind === 'bladder') && namesFuel(stretch, term, sorts, around(stretch, term, clause)))
      return 'fuel';
    if ((about === 'wash' || about === 'medicine') && kind !== 'stove' && kind !== 'pot')
      return about === 'wash' && (kind === 'mug' || kind === 'other-cook') ? 'other-cook' : undefined;
    if (
      isVessel(kind) &&
      stretch.terms.some(
        (other) =>
          other.role === 'food' &&
          (other.first === term.last + 1 || other.last === term.first - 1) &&
          kind !== 'mug' &&
          kind !== 'kettle',
      )
    )
      return undefined;
    return kind;
  }
  const fed = stretch.terms.some((other) => other.role === 'food' && Math.abs(other.first - term.first) <= 4);
  if (has('otherUse') || (fed && term.role !== 'fuelTypes') || elsewhere) return undefined;
  if (term.role === 'fuelTypes')
    return about === 'water' || about === 'sleep' || isPill(stretch, term, clause, context) ? undefined : 'fuel';
  if (term.value === 'soft')
    return (has('water') || about === 'water' || followsBottle(stretch, term)) && hasVolume(stretch, clause)
      ? 'bladder'
      : has('water') && about === 'water'
        ? 'bladder'
        : undefined;
  if (namesFuel(stretch, term, sorts, around(stretch, term, clause))) return 'fuel';
  if (term.value === 'rigid') return undefined;
  if (isOfLitres(stretch, term) && (about === 'water' || has('water'))) return 'bottle';
  const measured = stretch.measures.some(
    (measure) =>
      measure.last < term.first &&
      measure.last >= term.first - 2 &&
      (measure.unit.dimension === 'mass' || measure.unit.dimension === 'ounce'),
  );
  const bare = stretch.bare.some((number) => number.at === term.first - 1 && number.value >= 90 && number.value <= 500);
  const segment = segmentOf(stretch, term);
  const figured = stretch.measures.some(
    (measure) =>
      isMassive(measure) &&
      ((measure.first >= segment.from && measure.last < segment.to) || isBeside(stretch, term, measure)),
  );
  return measured ||
    bare ||
    (figured && longName(stretch, term)) ||
    ((about === 'cook' || about === 'food') && longName(stretch, term)) ||
    about === 'fuel'
    ? 'fuel'
    : undefined;
}

/** "Car camping" heads what one cooks with too; cans, bottles and lighters under "Car" and "Repair" are of other things. */
function isVesselToCookIn(kind: ItemKind): boolean {
  return kind === 'pot' || kind === 'pan' || kind === 'kettle' || kind === 'stove' || kind === 'mug' || kind === 'bowl';
}

/** "Jam, one pot" under "Food": what is named first is in it. */
function isPackage(stretch: Stretch, term: Term, { from }: Clause): boolean {
  return termsOf(stretch, 'food').some(({ first, last }) => first >= from && last < term.first);
}

/** "Canister, 8 oz". */
function isBeside(stretch: Stretch, term: Term, measure: Measure): boolean {
  return measure.first === term.last + 2 && stretch.tokens[term.last + 1]?.fold === ',';
}

/** Of a clause, what lies between the nearest other things on either side: their words are theirs. */
function around(stretch: Stretch, term: Term, clause: Clause): Clause {
  let { from, to } = clause;
  for (const other of termsOf(stretch, 'kind')) {
    if (other.value === 'fuel') continue;
    if (other.last < term.first) from = Math.max(from, other.last + 1);
    else if (other.first > term.last) to = Math.min(to, other.first);
  }
  return { from, to };
}

/** "Corta-vento 300 g": a jacket, unless a stove or the kitchen is about. */
function isJacket(stretch: Stretch, term: Term, context: Context): boolean {
  return (
    !context.cooks &&
    termsOf(stretch, 'jackets').some((jacket) => jacket.first === term.first && jacket.last === term.last) &&
    !stretch.terms.some((other) => other.role === 'kind' && other.value === 'stove')
  );
}

/** Tongs among tools and spares lift no pot. */
function isGripper(stretch: Stretch, term: Term): boolean {
  return termsOf(stretch, 'roles').some((role) => role.value === 'gripper' && role.first === term.first);
}

/** Tablets that do not say of what, away from stove and fuel. */
export function areLooseTablets(stretch: Stretch, term: Term, context: Context): boolean {
  if (context.section === 'fuel' || context.section === 'cook') return false;
  return termsOf(stretch, 'tablets').some((word) => word.first === term.first && word.last === term.last);
}

/** "Ibuprofen, 12 tablets": tablets of something that no word here knows. */
function isPill(stretch: Stretch, term: Term, clause: Clause, context: Context): boolean {
  if (
    !areLooseTablets(stretch, term, context) ||
    (stretch.byRole.has('stoveTypes') && stretch.terms.some((other) => other.role === 'kind'))
  )
    return false;
  return stretch.tokens.some(
    (token, at) =>
      token.type === 'word' &&
      at >= clause.from &&
      at < clause.to &&
      token.fold.length > 2 &&
      !stretch.terms.some((other) => other.first <= at && other.last >= at && other.role !== 'food') &&
      !stretch.measures.some((measure) => measure.first <= at && measure.last >= at),
  );
}

function isMassive(measure: Measure): boolean {
  return measure.unit.dimension === 'mass' || measure.unit.dimension === 'ounce';
}

/** canister, cartridge: words that alone mean gas; a can or tank does not. */
function longName(stretch: Stretch, term: Term): boolean {
  return (stretch.tokens[term.first]?.fold.length ?? 0) > 5;
}

function namesFuel(stretch: Stretch, term: Term, sorts: readonly Term[], clause: Clause): boolean {
  if (sorts.some((sort) => sort.value === 'fuel')) return true;
  return (
    stretch.terms.some(
      (other) =>
        other.role === 'fuelTypes' &&
        other.first >= clause.from &&
        other.last < clause.to &&
        other.first !== term.first &&
        other.value !== 'wood',
    ) ||
    stretch.terms.some((other) => other.role === 'fuelTypes' && other.first === term.first && other.last === term.last)
  );
}

/** "Bottles 2 x 1 l + bag 3 l". */
function followsBottle(stretch: Stretch, term: Term): boolean {
  return (
    stretch.terms.some((other) => other.role === 'kind' && other.value === 'bottle' && other.last < term.first) &&
    stretch.measures.some(
      (measure) =>
        measure.unit.dimension === 'volume' && (measure.first === term.last + 1 || measure.last === term.first - 1),
    )
  );
}

/** "Petrol stove with pump and bottle 0.6 l": what such a stove comes with holds its fuel. */
function comesWithStove(stretch: Stretch, term: Term, clause: Clause): boolean {
  const before = (other: Term) => other.first >= clause.from && other.last < term.first;
  const poured = termsOf(stretch, 'stoveTypes').find(
    (type) => before(type) && (type.value === 'liquid-fuel' || type.value === 'alcohol'),
  );
  if (poured === undefined || isOfWater(stretch, term)) return false;
  const things = termsOf(stretch, 'kind').filter(before);
  const withs = termsOf(stretch, 'with').filter(
    (word) =>
      before(word) && word.first > poured.last && !termsOf(stretch, 'and').some((and) => and.first === word.first),
  );
  return withs.length > 0 && things.length > 0 && things.every(({ value }) => value === 'stove' || value === 'fuel');
}

/** "Water bottle". */
function isOfWater(stretch: Stretch, term: Term): boolean {
  return termsOf(stretch, 'water').some((water) => water.first >= term.first && water.last <= term.last);
}

/** "5 l cans". */
function isOfLitres(stretch: Stretch, term: Term): boolean {
  return stretch.measures.some((measure) => measure.unit.dimension === 'volume' && measure.last === term.first - 1);
}

function hasVolume(stretch: Stretch, clause: Clause): boolean {
  return stretch.measures.some(
    (measure) => measure.unit.dimension === 'volume' && measure.first >= clause.from && measure.last < clause.to,
  );
}
