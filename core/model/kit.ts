import type { Evidence } from './finding.js';
import type { Given } from './given.js';
import type { FuelType, GasMix, GasShares, GearRole, ItemKind, Material, StoveForm, StoveType } from './item.js';

/** Something that came from an item of the list or from a typed field. */
export interface Thing {
  /** Index in `reading.items`; null for a typed pot or stove. */
  readonly item: number | null;
  /** How the person names it. */
  readonly name: string;
  readonly evidence: Evidence;
}

/** How many of a thing there are. */
export interface Counted {
  /** Missing where the list does not count it: one at least. */
  readonly quantity: Given<number>;
  /** The count is for each person. */
  readonly perPerson: boolean;
  /** The count is for each group that cooks on its own. */
  readonly perGroup: boolean;
}

/** One vessel that can stand over a flame: of a nested set, one each. */
export interface Vessel extends Thing, Counted {
  readonly kind: Extract<ItemKind, 'pot' | 'mug' | 'kettle' | 'pan'>;
  /** To the brim, mL: stated, or worked out from the dimensions. */
  readonly capacityMl: Given<number>;
  /** Only what the text or the person states, mL. */
  readonly statedCapacityMl: Given<number>;
  /** Outside, at the rim, mm. */
  readonly diameterMm: Given<number>;
  /** Outside, at the base, mm; the rim's is assumed where nothing is said. */
  readonly baseDiameterMm: Given<number>;
  readonly heightMm: Given<number>;
  /** Of a bail's ears above the base, mm; the rim is assumed where nothing is said. */
  readonly earHeightMm: Given<number>;
  /** Sides of a rectangular tin, mm. */
  readonly boxMm: Given<readonly [length: number, width: number]>;
  /** Of this one vessel, g; missing where a set shares one mass. */
  readonly massG: Given<number>;
  readonly material: Given<Material>;
  readonly bail: Given<boolean>;
  readonly lid: Given<boolean>;
  /** Number of other handles. */
  readonly handles: Given<number>;
  /** A fixed part of an integrated stove. */
  readonly lockedToBurner: boolean;
}

export interface Stove extends Thing, Counted {
  /** Pots that stand over a flame of it at once: its burners. */
  readonly places: number;
  readonly type: Given<StoveType>;
  readonly form: Given<StoveForm>;
  readonly burnerMm: Given<number>;
  readonly armCount: Given<number>;
  /** Diameter of the free circle between the arms, mm. */
  readonly armInnerMm: Given<number>;
  /** Diameter of the circle through the tips of the arms, mm. */
  readonly armSpanMm: Given<number>;
  /** Height at which the pot stands, mm. */
  readonly heightMm: Given<number>;
  /** Diameter of the circle through the stove's feet, or of the canister, mm. */
  readonly footMm: Given<number>;
  readonly powerW: Given<number>;
}

export interface Fuel extends Thing, Counted {
  readonly type: Given<FuelType>;
  readonly mix: Given<GasMix>;
  /** The shares on its label; they outrank the name of the mix. */
  readonly shares: Given<GasShares>;
  /** Net fuel in one, g: stated, or worked out from volume, or from the gross mass of a canister. */
  readonly netG: Given<number>;
}

/** A thing of which only the count, the capacity and the place in the list matter. */
export interface Piece extends Thing, Counted {
  readonly kind: ItemKind;
  readonly role?: GearRole;
  readonly capacityMl: Given<number>;
  readonly diameterMm: Given<number>;
  readonly material: Given<Material>;
}

/** What is carried, sorted by what it is for. The kit, not the list: nothing with `carried: false` is in it. */
export interface Kit {
  /** True when one pot was typed: checks about the rest of the kit then stay silent. */
  readonly onePot: boolean;
  /** Pots, and whatever else is cooked in when there is no pot: the largest mug or kettle. Largest first. */
  readonly pots: readonly Vessel[];
  /** All vessels that can stand over a flame, pots included; largest first. */
  readonly vessels: readonly Vessel[];
  readonly stoves: readonly Stove[];
  readonly fuels: readonly Fuel[];
  readonly lids: readonly Piece[];
  readonly windscreens: readonly Piece[];
  /** Bottles and bladders. */
  readonly waterCarriers: readonly Piece[];
  /** Bowls and mugs. */
  readonly eatWare: readonly Piece[];
  /** Utensils and other cook gear: grippers, lighters, boards. */
  readonly gear: readonly Piece[];
}
