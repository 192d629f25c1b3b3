import type { FuelType, GasMix, GearRole, Material, StoveForm, StoveType } from '../../model/item.js';
import { phrase } from '../../model/phrase.js';
import type { Term } from '../text/terms.js';
import type { Context } from './context.js';
import { assumed, isMissing, spanOf, stated, within, type Draft } from './draft.js';
import { labelsOf } from './gas-shares.js';
import { termsOf, type Stretch } from './stretch.js';
import { isVessel, type Thing } from './things.js';

/** Reads what burns in it: of a stove its type and form, of fuel its type and mix. */
export function readFuelWords(stretch: Stretch, draft: Draft, context: Context): void {
  if (draft.kind === 'stove') {
    const types = within(stretch, draft, 'stoveTypes');
    const best = types.find((term) => term.value === 'integrated') ?? nearest(types, draft);
    const weak =
      best !== undefined &&
      context.stoveType !== undefined &&
      stretch.terms.some((term) => term.role === 'container' && term.first === best.first);
    if (best !== undefined && !weak) draft.stoveType = stated(best.value as StoveType, termSpan(stretch, best));
    else if (context.stoveType !== undefined)
      draft.stoveType = assumed(context.stoveType, phrase`the heading says so`, phrase`write what it burns`);
    const form = nearest(within(stretch, draft, 'stoveForms'), draft);
    if (form !== undefined) draft.stoveForm = stated(form.value as StoveForm, termSpan(stretch, form));
    return;
  }
  if (draft.kind !== 'fuel') return;
  const type = nearest(within(stretch, draft, 'fuelTypes'), draft);
  if (type !== undefined)
    draft.fuelType =
      draft.kindBecause === undefined
        ? stated(type.value as FuelType, termSpan(stretch, type))
        : assumed(type.value as FuelType, draft.kindBecause, phrase`write what burns`, termSpan(stretch, type));
  else if (isCan(stretch, draft))
    draft.fuelType = assumed('gas', phrase`cans and canisters hold gas`, phrase`write what is in it`);
  else if (context.fuelType !== undefined)
    draft.fuelType = assumed(context.fuelType, phrase`the heading says so`, phrase`write what is in it`);
  readMix(stretch, draft);
}

/** Of several gases the name does not hang on their order: "butane/propane" is what "propane/butane" is. */
function readMix(stretch: Stretch, draft: Draft): void {
  const label = labelsOf(stretch).find(({ first, last }) => first < draft.to && last >= draft.from);
  if (label !== undefined) {
    if (label.shares !== undefined) draft.gasShares = stated(label.shares, spanOf(stretch, label.first, label.last));
    for (let at = label.first; at <= label.last; at++) draft.taken.add(at);
  }
  const named = within(stretch, draft, 'gasMixes');
  const mix = named.find((term) => term.value === 'winter') ?? named.find((term) => term.value === 'isobutane');
  const [first, ...others] = named;
  if (mix !== undefined) draft.gasMix = stated(mix.value as GasMix, termSpan(stretch, mix));
  else if (first !== undefined && others.some((term) => term.value !== first.value))
    draft.gasMix = assumed(
      'isobutane',
      phrase`butane with propane boils about as an isobutane mix does`,
      phrase`write the shares of the gases`,
      spanOf(stretch, first.first, named.at(-1)?.last ?? first.last),
    );
  else if (first !== undefined) draft.gasMix = stated(first.value as GasMix, termSpan(stretch, first));
}

function isCan(stretch: Stretch, draft: Draft): boolean {
  return stretch.terms.some(
    (term) =>
      term.role === 'stoveTypes' && term.value === 'gas' && term.first >= draft.noun[0] && term.last <= draft.noun[1],
  );
}

function nearest(terms: readonly Term[], draft: Draft): Term | undefined {
  const distance = (term: Term) =>
    term.last < draft.noun[0] ? draft.noun[0] - term.last : term.first > draft.noun[1] ? term.first - draft.noun[1] : 0;
  return [...terms].sort((a, b) => distance(a) - distance(b))[0];
}

export function termSpan(
  stretch: Stretch,
  term: { readonly first: number; readonly last: number },
): readonly [number, number] {
  return spanOf(stretch, term.first, term.last);
}

/** Reads material, lid, bail and handles. */
export function readTraits(stretch: Stretch, draft: Draft, parts: readonly Thing[]): void {
  readMaterial(stretch, draft);
  if (!(isVessel(draft.kind) || draft.kind === 'stove' || draft.kind === 'other-cook')) return;
  const lid = parts.find((part) => part.partOf === draft.thing);
  if (lid !== undefined) draft.lid = stated(!lid.denied, termSpan(stretch, lid.term));
  else {
    const lidded = within(stretch, draft, 'lidded')[0];
    if (lidded !== undefined) draft.lid = stated(true, termSpan(stretch, lidded));
  }
  draft.bail = traitOf(stretch, draft, 'bail') ?? draft.bail;
  if (isMissing(draft.bail) && isVessel(draft.kind) && isHung(stretch, draft))
    draft.bail = assumed(true, phrase`a billy hangs by a bail`, phrase`write "no bail" if it has none`);
  draft.handles = traitOf(stretch, draft, 'handles') ?? draft.handles;
}

function isHung(stretch: Stretch, draft: Draft): boolean {
  return termsOf(stretch, 'hung').some((term) => term.first >= draft.noun[0] && term.last <= draft.noun[1]);
}

function traitOf(stretch: Stretch, draft: Draft, role: 'bail' | 'handles'): Draft['bail'] | undefined {
  for (const term of within(stretch, draft, role)) {
    if (term.first >= draft.noun[0] && term.last <= draft.noun[1]) continue;
    if (
      role === 'handles' &&
      termsOf(stretch, 'bail').some((bail) => bail.first <= term.first && bail.last >= term.last)
    )
      continue;
    const next = stretch.tokens[term.last + 1]?.fold;
    if (role === 'bail' && next === 'hole') continue;
    if (termsOf(stretch, 'missing').some((word) => word.first === term.last + 1)) continue;
    const no = termsOf(stretch, 'no').some(
      (word) =>
        term.first - word.last >= 1 && term.first - word.last <= 3 && !broken(stretch, word.last + 1, term.first),
    );
    return stated(!no, termSpan(stretch, term));
  }
  return undefined;
}

function broken(stretch: Stretch, from: number, to: number): boolean {
  for (let at = from; at <= to; at++) if ((stretch.breaks[at] ?? 0) > 0) return true;
  return false;
}

function readMaterial(stretch: Stretch, draft: Draft): void {
  if (!isMissing(draft.material)) return;
  for (const term of within(stretch, draft, 'materials')) {
    if (draft.kind === 'fuel' && (term.value === 'wood' || term.value === 'metal')) continue;
    const burns = stretch.terms.some(
      (other) =>
        (other.role === 'stoveTypes' || other.role === 'fuelTypes') &&
        other.first <= term.first &&
        other.last >= term.last,
    );
    if (burns && (draft.kind === 'stove' || draft.kind === 'fuel')) continue;
    if (isOfOther(stretch, draft, term)) continue;
    draft.material = stated(term.value as Material, termSpan(stretch, term));
    return;
  }
}

/** "wooden handle", "for the wood stove": the material of the noun that it stands right before. */
function isOfOther(stretch: Stretch, draft: Draft, material: Term): boolean {
  return (
    material.first > draft.noun[1] &&
    stretch.terms.some(
      ({ role, value, first, last }) =>
        (first === material.last + 1 || (first === material.first && last > material.last)) &&
        (role === 'handles' || role === 'bail' || (role === 'kind' && (value === 'stove' || value === 'utensil'))),
    )
  );
}

/** What several vessels of a row have in common: "2.5 L pot + 1.8 L pot, both with lids and folding handles". */
export function shareTraits(stretch: Stretch, drafts: readonly Draft[]): void {
  const both = termsOf(stretch, 'both').findLast(({ first }) => first > 0);
  const last = drafts.findLast(({ kind }) => isVessel(kind));
  if (both === undefined || last === undefined || both.first < last.noun[1]) return;
  for (const draft of drafts) {
    if (!isVessel(draft.kind) || draft === last) continue;
    for (const trait of ['lid', 'handles', 'bail'] as const) if (isMissing(draft[trait])) draft[trait] = last[trait];
    if (isMissing(draft.material)) draft.material = last.material;
  }
}

/** What an other-cook item is there for. */
export function readRole(stretch: Stretch, draft: Draft): void {
  if (draft.kind !== 'other-cook') return;
  const term = termsOf(stretch, 'roles').find((role) => role.first >= draft.noun[0] && role.last <= draft.noun[1]);
  if (term !== undefined) draft.role = term.value as GearRole;
}
