import type { Assumption, Evidence, Range, SumLine } from './finding.js';
import type { FuelType } from './item.js';

/** One filling or melting task of a day, in the order it is done. */
export interface Task {
  readonly id: 'melt' | 'meal' | 'drinks' | 'treat';
  /** Water heated, L a day. */
  readonly litres: Range;
  /** Fillings of the pot, or packings with snow when melting; of each pot, where each person cooks in their own. */
  readonly rounds: Range;
  /** Energy into the water, kJ. */
  readonly energyKj: Range;
  readonly minutes: Range;
  /** Fuel, g. */
  readonly grams: Range;
  /** How the litres and the grams come out; labels are message keys of `core/plan/messages`. */
  readonly sum: readonly SumLine[];
}

/** A day with this kit, worked out once; every check reads it. */
export interface DayPlan {
  /** Which vessel cooks: an index in `kit.vessels`; null where there is none with a capacity. */
  readonly pot: number | null;
  /** Which vessel melts snow: an index in `kit.vessels`; null where there is none. */
  readonly meltPot: number | null;
  /** mL of the cooking pot that may be used, by meal style; null where its capacity is missing. */
  readonly roomMl: number | null;
  /** Share of the brim that may be filled, 0 to 1. */
  readonly ceiling: number;
  /** mL of one person's meal: least and full portion, and the drink that comes with it. */
  readonly leastMl: number;
  readonly fullMl: number;
  readonly drinkMl: number;
  /** °C at which water boils where they cook. */
  readonly boilC: number;
  readonly airPressureKpa: number;
  /** What burns under the pot; null where they cook at no fire and no stove. */
  readonly burns: FuelType | null;
  /** °C at which a flame too weak for its pot stalls short of the boil; null where it boils, or nothing is worked out. */
  readonly stallsC: number | null;
  /** Tasks of a day, in order; empty where no vessel or no stove lets one work them out, and where the flame stalls. */
  readonly tasks: readonly Task[];
  /** All tasks together. */
  readonly perDay: { readonly litres: Range; readonly minutes: Range; readonly grams: Range } | null;
  /** Fuel for the trip, g. */
  readonly tripGrams: Range | null;
  /** Net fuel carried for what burns, g; null where some of it is not known, and for wood, which is found on the way. */
  readonly carriedGrams: number | null;
  readonly evidence: readonly Evidence[];
  /** What the figures of heat and fuel assume; empty where nothing is worked out. */
  readonly assumptions: readonly Assumption[];
}
