import type { Assumption, Finding, Grade, WordedSumLine } from './finding.js';
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
}

export interface StoveFigures {
  readonly type: string | null;
  readonly form: string | null;
  readonly burnerMm: number | null;
  readonly armSpanMm: number | null;
  readonly armCount: number | null;
  readonly heightMm: number | null;
  readonly footMm: number | null;
}

/** A second opinion. Plain JSON: no dates, no ids made up, the same input gives the same bytes. */
export interface Report {
  /** Of the report's shape. */
  readonly version: 1;
  readonly trip: GroundedTrip;
  readonly reading: Reading;
  /** Worst first, then by place in the text. */
  readonly findings: readonly Finding[];
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
  readonly pots: readonly PotFigures[];
  readonly stove: StoveFigures | null;
  readonly units: UnitSystem;
}
