import type { Assumption, Grade, Range, SumLine } from './finding.js';
import type { FuelType } from './item.js';

export const TASKS = ['melt', 'meal', 'drinks', 'treat'] as const;
/** Snow to water, a hot meal, hot drinks, water boiled to be drunk: in the order of a day. */
export type TaskId = (typeof TASKS)[number];

/** What of a use takes heat: kJ into the pot, minutes over the flame, fuel in g. */
export interface Heated {
  readonly energyKj: Range;
  readonly minutes: Range;
  readonly grams: Range;
}

/** What brings a pot to the boil whose flame is too weak for it as it is. */
export type StallCure = 'lid' | 'calm' | 'lid-calm';

/** A flame too weak for its pot. */
export interface Stall {
  /** °C at which it stalls. */
  readonly atC: number;
  /** What lets it boil, the least first; null where nothing of it does. */
  readonly cure: StallCure | null;
}

/** One pot over one heat place for one task, as often as a day asks for it. */
export interface Use {
  readonly task: TaskId;
  /** Index in `kit.vessels`. */
  readonly vessel: number;
  /** L a day. */
  readonly litres: Range;
  /** Fillings of the pot, or packings with snow. */
  readonly turns: Range;
  /** With the cure where the flame stalls; null where nothing burns, and where nothing cures it. */
  readonly heated: Heated | null;
  readonly stall: Stall | null;
}

/** A heat place, where one pot stands over a flame, and what is done on it, one use after another. */
export interface Place {
  /** Index in `kit.stoves`; null for an open fire, and where nothing burns. */
  readonly stove: number | null;
  readonly burns: FuelType | null;
  /** So many places do the same side by side. */
  readonly alike: number;
  readonly uses: readonly Use[];
  /** Minutes from lighting at which each use begins, likely. */
  readonly startMin: readonly number[];
  /** Of one place, until it is free; null where nothing is worked out. */
  readonly minutes: Range | null;
  /** Fuel on one place, g a day; null where nothing is worked out. */
  readonly grams: Range | null;
}

/** How the hot meal is cooked: the plan with the best grade, then the fewest turns, then the fewest minutes. */
export interface Meal {
  /** People who eat out of the same pots: everybody, those of a cook group, or one with a pot of their own. */
  readonly people: number;
  /** Groups like it. */
  readonly alike: number;
  /** Each has a pot of their own. */
  readonly own: boolean;
  /** The pots of one group, each an index in `kit.vessels`, largest first; of own pots the smallest alone. A pot of which two are used stands there twice. */
  readonly vessels: readonly number[];
  /** To the brim, all pots of one group, mL. */
  readonly brimMl: number;
  /** mL that may be filled at once. */
  readonly roomMl: number;
  /** Fillings of that room which one meal takes. */
  readonly servings: Range;
  /** Turns on the flames until the last of all groups eats; a turn is one filling of every place. */
  readonly turns: Range;
  /** Minutes the last waits after the first eats; null where nothing is worked out. */
  readonly waitsMin: number | null;
  readonly grade: Grade;
}

/** How snow is melted: the largest volume that counts, then lids, then the fewest minutes. */
export interface Melt {
  /** People whose water one group melts. */
  readonly people: number;
  readonly alike: number;
  /** The pots of one group, indices in `kit.vessels`, side by side. */
  readonly vessels: readonly number[];
  /** To the brim, all pots of one group, mL. */
  readonly brimMl: number;
  /** Volume wanted for so many people, mL. */
  readonly wantedMl: number;
  /** Water a person a day, L. */
  readonly eachL: Range;
}

/** All uses of one task together. */
export interface Task {
  readonly id: TaskId;
  /** Water heated, L a day. */
  readonly litres: Range;
  /** Turns on the flames; of snow, packings of each pot. */
  readonly rounds: Range;
  /** Energy into the water, kJ. */
  readonly energyKj: Range;
  /** Of the places that burn side by side, the slowest. */
  readonly minutes: Range;
  /** Fuel, g; of unlike fuels, each in its own grams. */
  readonly grams: Range;
  /** How the litres and the grams come out; labels are message keys of `core/plan/messages`. */
  readonly sum: readonly SumLine[];
}

/** One kind of fuel: what a day takes and what is carried. */
export interface FuelNeed {
  readonly burns: FuelType;
  /** g a day. */
  readonly grams: Range;
  /** Net, g; null where some of it is not known, and for wood, which is found on the way. */
  readonly carriedG: number | null;
  /** Grams of the main fuel that give a pot as much heat as one of this. */
  readonly worth: number;
}

/** A day with this kit, worked out once; every check reads it. */
export interface DayPlan {
  /** Groups that cook on their own and carry the same; 1 where nothing is told. */
  readonly groups: number;
  /** Null where there is no pot with a capacity. */
  readonly meal: Meal | null;
  /** Null where there is no metal vessel with a capacity; worked out whether or not snow is the water. */
  readonly melt: Melt | null;
  /** The heat places that are used, the main one first. */
  readonly places: readonly Place[];
  /** Share of the brim that may be filled, 0 to 1. */
  readonly ceiling: number;
  /** mL of one person's meal: least and full portion, and the drink that comes with it. */
  readonly leastMl: number;
  readonly fullMl: number;
  readonly drinkMl: number;
  /** °C at which water boils where they cook. */
  readonly boilC: number;
  readonly airPressureKpa: number;
  /** What burns under the pots in the main; null where they cook at no fire and no stove. */
  readonly burns: FuelType | null;
  /** Tasks of a day, in order; empty where no vessel or no stove lets one work them out. */
  readonly tasks: readonly Task[];
  /** Everything together; grams are of the main fuel, others counted by the heat they give. Null where some of it never boils. */
  readonly perDay: { readonly litres: Range; readonly minutes: Range; readonly grams: Range } | null;
  /** Minutes from lighting until all have eaten. */
  readonly eatenMin: Range | null;
  /** Fuel for the trip, g of the main fuel. */
  readonly tripGrams: Range | null;
  /** Net fuel carried, g of the main fuel; null where some of it is not known, and for wood. */
  readonly carriedGrams: number | null;
  /** The kinds of fuel that burn, the main one first. */
  readonly fuels: readonly FuelNeed[];
  /** What the figures of heat and fuel assume; empty where nothing is worked out. */
  readonly assumptions: readonly Assumption[];
}
