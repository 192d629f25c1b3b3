import { MISSING, type Given } from '../../model/given.js';
import type {
  FuelType,
  GasMix,
  GasShares,
  GearRole,
  Item,
  ItemKind,
  Material,
  StoveForm,
  StoveType,
} from '../../model/item.js';
import type { Span } from '../../model/span.js';
import type { Bare, Measure } from '../quantities/measures.js';
import { termsOf, type Stretch } from './stretch.js';
import type { Term } from '../text/terms.js';
import type { Thing } from './things.js';

/** An item while it is being read. */
export interface Draft {
  kind: ItemKind;
  readonly line: number;
  readonly span: Span;
  readonly thing: Thing | undefined;
  /** The tokens that tell of it: from, to (after the last). */
  readonly from: number;
  readonly to: number;
  /** Index of its noun, first and last token; −1 where the row names none. */
  readonly noun: readonly [first: number, last: number];
  carried: boolean;
  notCarriedBecause?: string;
  kindBecause?: string;
  quantity: Given<number>;
  perPerson: boolean;
  /** For each group that cooks on its own: how many are in one. */
  perGroup?: Given<number>;
  capacitiesMl: Given<number>[];
  massG: Given<number>;
  massBasis?: 'each' | 'line';
  diameterMm: Given<number>;
  baseDiameterMm: Given<number>;
  heightMm: Given<number>;
  boxMm: Given<readonly [number, number]>;
  sizeMm: Given<number>;
  burnerMm: Given<number>;
  supportsMm: Given<number>;
  material: Given<Material>;
  bail: Given<boolean>;
  lid: Given<boolean>;
  handles: Given<boolean>;
  stoveType: Given<StoveType>;
  stoveForm: Given<StoveForm>;
  fuelType: Given<FuelType>;
  gasMix: Given<GasMix>;
  gasShares: Given<GasShares>;
  fuelMassG: Given<number>;
  fuelVolumeMl: Given<number>;
  role?: GearRole;
  onlyIn?: 'summer' | 'winter';
  /** Measures and bare numbers already taken, by their first token. */
  readonly taken: Set<number>;
}

export function draftOf(
  kind: ItemKind,
  line: number,
  span: Span,
  thing: Thing | undefined,
  from: number,
  to: number,
  noun: readonly [number, number],
): Draft {
  return {
    kind,
    line,
    span,
    thing,
    from,
    to,
    noun,
    carried: true,
    quantity: MISSING,
    perPerson: false,
    capacitiesMl: [],
    massG: MISSING,
    diameterMm: MISSING,
    baseDiameterMm: MISSING,
    heightMm: MISSING,
    boxMm: MISSING,
    sizeMm: MISSING,
    burnerMm: MISSING,
    supportsMm: MISSING,
    material: MISSING,
    bail: MISSING,
    lid: MISSING,
    handles: MISSING,
    stoveType: MISSING,
    stoveForm: MISSING,
    fuelType: MISSING,
    gasMix: MISSING,
    gasShares: MISSING,
    fuelMassG: MISSING,
    fuelVolumeMl: MISSING,
    taken: new Set(),
  };
}

export function itemOf(draft: Draft): Item {
  const { kind, line, span, carried, quantity, perPerson, capacitiesMl, massG } = draft;
  const { diameterMm, baseDiameterMm, heightMm, boxMm, sizeMm, burnerMm, supportsMm } = draft;
  const { material, bail, lid, handles, stoveType, stoveForm, fuelType, gasMix, gasShares, fuelMassG, fuelVolumeMl } =
    draft;
  const item: Item = {
    kind,
    line,
    span,
    carried,
    quantity,
    perPerson,
    capacitiesMl,
    massG,
    diameterMm,
    baseDiameterMm,
    heightMm,
    boxMm,
    sizeMm,
    burnerMm,
    supportsMm,
    material,
    bail,
    lid,
    handles,
    stoveType,
    stoveForm,
    fuelType,
    gasMix,
    gasShares,
    fuelMassG,
    fuelVolumeMl,
  };
  if (draft.perGroup !== undefined) Object.assign(item, { perGroup: true });
  for (const field of SAID_OF_SOME) if (draft[field] !== undefined) Object.assign(item, { [field]: draft[field] });
  return item;
}

const SAID_OF_SOME = ['massBasis', 'notCarriedBecause', 'kindBecause', 'role', 'onlyIn'] as const;

export function isMissing(given: Given<unknown>): boolean {
  return given.grounds === 'missing';
}

/** A value that the text states, rounded off what arithmetic in units leaves behind. */
export function stated<T>(value: T, span: Span, most?: T): Given<T> {
  const tidy = (v: T): T => (typeof v === 'number' ? ((Math.round(v * 1e6) / 1e6) as T & number) : v);
  return most === undefined
    ? { grounds: 'stated', value: tidy(value), span }
    : { grounds: 'stated', value: tidy(value), most: tidy(most), span };
}

export function assumed<T>(value: T, because: string, replaceWith: string, span?: Span): Given<T> {
  return span === undefined
    ? { grounds: 'assumed', value, because, replaceWith }
    : { grounds: 'assumed', value, because, replaceWith, span };
}

export function spanOf(stretch: Stretch, first: number, last: number): Span {
  return [stretch.tokens[first]?.start ?? 0, stretch.tokens[last]?.end ?? 0];
}

/** What a draft's own tokens hold. */
export function measuresOf(stretch: Stretch, draft: Draft): Measure[] {
  return stretch.measures.filter(
    (measure) => measure.first >= draft.from && measure.last < draft.to && !draft.taken.has(measure.first),
  );
}

export function bareOf(stretch: Stretch, draft: Draft): Bare[] {
  return stretch.bare.filter(
    (number) => number.at >= draft.from && number.at < draft.to && !draft.taken.has(number.at),
  );
}

export function within(stretch: Stretch, draft: Draft, role: Term['role']): Term[] {
  return termsOf(stretch, role).filter((term) => term.first >= draft.from && term.last < draft.to);
}

/** A term of the role close to the tokens `first` to `last`, nothing but small words between, and no break of sentence. */
export function near(stretch: Stretch, role: Term['role'], first: number, last: number, reach = 2): Term | undefined {
  return termsOf(stretch, role).find((term) => {
    if (term.last < first) return first - term.last - 1 <= reach && noBreak(stretch, term.last + 1, first);
    if (term.first > last) return term.first - last - 1 <= reach && noBreak(stretch, last + 1, term.first);
    return false;
  });
}

function noBreak(stretch: Stretch, from: number, to: number): boolean {
  for (let at = from; at <= to; at++) if ((stretch.breaks[at] ?? 0) > 1) return false;
  return true;
}
