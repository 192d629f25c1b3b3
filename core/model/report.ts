import type { Assumption, Caution, Finding, Grade, WordedSumLine } from './finding.js';
import type { Range } from './finding.js';
import type { UnitSystem } from './measure.js';
import type { Reading } from './reading.js';
import type { Source } from './source.js';
import type { GroundedTrip } from './trip.js';

/** A value that was put in and cannot be used: kept as typed, left out of the arithmetic. */
export interface InputProblem {
  /** "pot.diameter", "trip.people", "correction.2". */
  readonly field: string;
  /** As it was given. */
  readonly value: string;
  /** What is wrong and the likely cure: "8 mm is less than any pot; 80?" */
  readonly message: string;
}

export interface WordedTask {
  readonly id: string;
  readonly title: string;
  readonly litres: Range;
  readonly rounds: Range;
  readonly energyKj: Range;
  readonly minutes: Range;
  readonly grams: Range;
  /** litres, rounds, minutes and grams in words. */
  readonly words: {
    readonly litres: string;
    readonly rounds: string;
    readonly minutes: string;
    readonly grams: string;
  };
  readonly sum: readonly WordedSumLine[];
}

/** A day with this kit, in words. */
export interface WordedDay {
  readonly tasks: readonly WordedTask[];
  /** One sentence for the day and one for the trip against the fuel carried. */
  readonly perDay: string;
  readonly perTrip: string | null;
  readonly boilC: number;
  /** Minutes from lighting until all have eaten; null without a meal. */
  readonly eatenMin: Range | null;
  /** Until all is done. */
  readonly doneMin: Range;
  /** "All six eat 49 minutes after lighting; …". */
  readonly headline: string;
  /** Fuel a day by its kind, the main one first: "144 g of canister gas + 80 g of alcohol". */
  readonly fuel: string;
}

/** A vessel as the drawing needs it, mm and mL; null where a figure is missing. */
export interface PotFigures {
  readonly item: number | null;
  readonly name: string;
  readonly capacityMl: number | null;
  readonly rimMm: number | null;
  readonly baseMm: number | null;
  readonly heightMm: number | null;
  readonly earMm: number | null;
  /** Height of the fill line over the base. */
  readonly fillMm: number | null;
  readonly fillMl: number | null;
  readonly bail: boolean | null;
  readonly lid: boolean | null;
  readonly tipDeg: number | null;
  readonly spillDeg: number | null;
  readonly needMl: readonly [least: number, full: number];
  /** Heights over the base at which the least and the full portion stand. */
  readonly needMm: readonly [least: number, full: number] | null;
  /** The edge of the stove that it goes over: distance from the axis, and height over the ground. */
  readonly edge: { readonly mm: number; readonly upMm: number } | null;
}

export interface StoveFigures {
  readonly item: number | null;
  readonly name: string;
  readonly type: string | null;
  readonly form: string | null;
  readonly burnerMm: number | null;
  readonly armSpanMm: number | null;
  readonly armCount: number | null;
  readonly heightMm: number | null;
  readonly footMm: number | null;
  /** Distance of the line between two arms or feet from the axis, as a share of their circle's radius. */
  readonly supportShare: number;
  /** Widths of base that an open flame suits; null for other stoves, and where its width is not known. */
  readonly suitsMm: readonly [least: number, most: number] | null;
}

/** People who eat out of the same pots. */
export interface KitchenFigures {
  /** People in one. */
  readonly people: number;
  /** Kitchens like it. */
  readonly alike: number;
  /** Its pots, indices in `pots`; a pot of which two are used stands there twice. */
  readonly pots: readonly number[];
  readonly roomMl: number;
  /** Fillings of the room that one meal takes. */
  readonly servings: Range;
  /** Turns on the flames until all have eaten. */
  readonly turns: Range;
}

/** One pot over one heat place for one task, a day. */
export interface WordedUse {
  readonly task: string;
  readonly title: string;
  /** Index in `pots`. */
  readonly pot: number;
  readonly litres: Range;
  readonly turns: Range;
  /** Minutes from lighting at which it begins, likely; null where nothing is worked out. */
  readonly startMin: number | null;
  readonly minutes: Range | null;
  readonly grams: Range | null;
  /** °C at which the flame stalls under this pot as it is; null where it boils. */
  readonly stallsC: number | null;
  readonly words: {
    /** "2.5 L pot". */
    readonly pot: string;
    /** "2 turns of 1.1 L", "1.1 L". */
    readonly turns: string;
    readonly minutes: string;
    readonly grams: string;
  };
}

/** A heat place that is used, and what is done on it, one after another. */
export interface WordedPlace {
  /** Index in `stoves`; null for an open fire, and where nothing burns. */
  readonly stove: number | null;
  readonly burns: string | null;
  /** So many places do the same side by side. */
  readonly alike: number;
  readonly uses: readonly WordedUse[];
  readonly minutes: Range | null;
  /** On one place. */
  readonly grams: Range | null;
  readonly words: { readonly name: string; readonly burns: string; readonly minutes: string; readonly grams: string };
}

/** A second opinion. Plain JSON: no dates, no ids made up, the same input gives the same bytes. */
export interface Report {
  /** Of the report's shape. */
  readonly version: 2;
  readonly trip: GroundedTrip;
  readonly reading: Reading;
  /** Worst first, then by place in the text. */
  readonly findings: readonly Finding[];
  /** Dangers that no kit can rule out, in the order of the checks. */
  readonly cautions: readonly Caution[];
  readonly summary: {
    /** 90 characters or fewer, worst first. */
    readonly headline: string;
    readonly counts: Readonly<Record<Grade, number>>;
    /** "12 lines used, 1 not cook kit, 1 not understood". */
    readonly lines: string;
  };
  /** All assumptions that any finding rests on, once each. */
  readonly assumptions: readonly Assumption[];
  /** The bibliography of what is cited. */
  readonly sources: readonly Source[];
  readonly problems: readonly InputProblem[];
  readonly day: WordedDay | null;
  /** The pots cooked in, largest first, and other vessels that the day uses. */
  readonly pots: readonly PotFigures[];
  /** The stove that heats most first; then as listed. */
  readonly stoves: readonly StoveFigures[];
  readonly kitchens: readonly KitchenFigures[];
  /** The heat places in use, the main one first. */
  readonly places: readonly WordedPlace[];
  readonly units: UnitSystem;
}
