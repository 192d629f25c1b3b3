import type { Material, StoveForm, StoveType } from './item.js';
import type { Measure } from './measure.js';

/** One pot as typed. What is left out costs only the checks that need it. */
export interface PotInput {
  readonly name?: string;
  /** To the brim. */
  readonly capacity?: Measure;
  /** Outside, at the rim. */
  readonly diameter?: Measure;
  /** Outside, at the base; the rim's where left out. */
  readonly baseDiameter?: Measure;
  readonly height?: Measure;
  /** Height of the bail's ears above the base; the rim where left out. */
  readonly earHeight?: Measure;
  readonly mass?: Measure;
  readonly material?: Material;
  readonly lid?: boolean;
  readonly bail?: boolean;
  /** Any other handle; a number counts them. */
  readonly handles?: boolean | number;
  readonly quantity?: number;
}

/** The stove under it, as typed. */
export interface StoveInput {
  readonly type?: StoveType;
  readonly form?: StoveForm;
  /** Width of the flame: burner head, ring of jets, fire-pot. */
  readonly burnerDiameter?: Measure;
  readonly armCount?: number;
  /** Diameter of the free circle between the arms. */
  readonly armInner?: Measure;
  /** Diameter of the circle through the tips of the arms. */
  readonly armSpan?: Measure;
  /** Height at which the pot stands. */
  readonly height?: Measure;
  /** Diameter of the circle through the stove's own feet, or of the canister it stands on. */
  readonly footDiameter?: Measure;
  readonly powerW?: number;
}
