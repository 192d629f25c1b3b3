import type { Given } from './given.js';
import type { Span } from './span.js';

export const ITEM_KINDS = [
  'pot',
  'mug',
  'kettle',
  'pan',
  'lid',
  'stove',
  'fuel',
  'windscreen',
  'bottle',
  'bladder',
  'bowl',
  'utensil',
  'other-cook',
] as const;
/** A kettle is for water only; an other-cook item is a gripper, a cosy, a plate, a tripod, a lighter. */
export type ItemKind = (typeof ITEM_KINDS)[number];

export const MATERIALS = ['titanium', 'aluminium', 'steel', 'iron', 'enamel', 'plastic', 'wood', 'metal'] as const;
export type Material = (typeof MATERIALS)[number];

export const FUEL_TYPES = ['gas', 'alcohol', 'wood', 'liquid-fuel', 'solid-fuel'] as const;
export type FuelType = (typeof FUEL_TYPES)[number];

export const STOVE_TYPES = [...FUEL_TYPES, 'integrated'] as const;
/** An integrated stove is a gas burner with its own pot locked on. */
export type StoveType = (typeof STOVE_TYPES)[number];

export const STOVE_FORMS = ['upright', 'remote'] as const;
/** Of a gas stove: screwed on top of the canister, or beside it on a hose. */
export type StoveForm = (typeof STOVE_FORMS)[number];

export const GAS_MIXES = ['butane', 'isobutane', 'winter', 'propane'] as const;
/** What a canister is said to hold; winter is an isobutane and propane mix. */
export type GasMix = (typeof GAS_MIXES)[number];

export type GasId = 'propane' | 'isobutane' | 'butane';
/** Shares of a gas mix by mass; they add up to 1. */
export type GasShares = Readonly<Partial<Record<GasId, number>>>;

export const GEAR_ROLES = ['gripper', 'lighter', 'matches', 'board', 'tripod', 'foil'] as const;
/** What an other-cook item is there for, where a check asks. */
export type GearRole = (typeof GEAR_ROLES)[number];

/** One thing of the list. */
export interface Item {
  readonly kind: ItemKind;
  /** 1-based line of the text. */
  readonly line: number;
  /** The word or words that name it. */
  readonly span: Span;
  /** False: named but not in the kit (struck, at home, wished for, compared). */
  readonly carried: boolean;
  /** Why it does not count, as a clause, where `carried` is false ("struck through"). */
  readonly notCarriedBecause?: string;
  /** True where the kind itself is a guess; the reason. */
  readonly kindBecause?: string;
  /** Count; the count is for each person where `perPerson`. */
  readonly quantity: Given<number>;
  readonly perPerson: boolean;
  /** The count is for each group that cooks on its own: `trip.cookGroups` groups of `trip.peoplePerPot` people, where the text tells them. */
  readonly perGroup?: true;
  /** What each vessel holds, mL; one entry a vessel of a nested set, in the order of the text; empty where nothing is said. */
  readonly capacitiesMl: readonly Given<number>[];
  /** Mass, g. Of fuel: the whole can or bottle. */
  readonly massG: Given<number>;
  /** Whether the mass is of one piece or of the row, where the text tells. */
  readonly massBasis?: 'each' | 'line';
  /** Outside diameter at the rim, mm. */
  readonly diameterMm: Given<number>;
  /** Outside diameter of the base, mm. */
  readonly baseDiameterMm: Given<number>;
  readonly heightMm: Given<number>;
  /** Sides of a rectangular tin, mm: length and width; its height is `heightMm`. */
  readonly boxMm: Given<readonly [length: number, width: number]>;
  /** One dimension whose direction the text does not say, mm. */
  readonly sizeMm: Given<number>;
  /** Width of the flame: burner head, ring of jets, fire-pot, mm. */
  readonly burnerMm: Given<number>;
  /** Outer width of what the pot stands on, mm. */
  readonly supportsMm: Given<number>;
  readonly material: Given<Material>;
  readonly bail: Given<boolean>;
  /** True: the text says it has a lid; false: that it has none. */
  readonly lid: Given<boolean>;
  /** Any handle on the vessel but a bail. */
  readonly handles: Given<boolean>;
  readonly stoveType: Given<StoveType>;
  readonly stoveForm: Given<StoveForm>;
  readonly fuelType: Given<FuelType>;
  readonly gasMix: Given<GasMix>;
  /** The shares on the label of a gas canister ("70 % butane, 30 % propane"). */
  readonly gasShares: Given<GasShares>;
  /** Net fuel in one can, tablet or bottle, g. */
  readonly fuelMassG: Given<number>;
  /** Liquid fuel itself, mL. */
  readonly fuelVolumeMl: Given<number>;
  /** What an other-cook item is for, where it is known. */
  readonly role?: GearRole;
  /** Carried only in this season, by the text ("2 L if winter"). */
  readonly onlyIn?: 'summer' | 'winter';
}

/** The fields of an item that a person may correct. `capacityMl` is one vessel's. */
export const CORRECTABLE = [
  'kind',
  'carried',
  'quantity',
  'capacityMl',
  'massG',
  'diameterMm',
  'baseDiameterMm',
  'heightMm',
  'sizeMm',
  'burnerMm',
  'supportsMm',
  'material',
  'bail',
  'lid',
  'handles',
  'stoveType',
  'stoveForm',
  'fuelType',
  'gasMix',
  'fuelMassG',
  'fuelVolumeMl',
] as const;
export type CorrectableField = (typeof CORRECTABLE)[number];
