import type { Assumption, Evidence, Figure, Figures, Grade, Question, SumLine } from './finding.js';
import type { Kit } from './kit.js';
import type { DayPlan } from './plan.js';
import type { SourceId } from './source.js';
import type { GroundedTrip, TripHints } from './trip.js';

/** Everything a check may ask for. */
export interface Facts extends Kit {
  readonly trip: GroundedTrip;
  readonly hints: TripHints;
  readonly plan: DayPlan;
}
export type Need = keyof Facts;

/**
 * Sentences by key. `{name}` is a figure or word of the verdict; `{n:round|rounds}` picks the singular or the plural
 * by the figure n and prints only the word. A range prints with an en dash.
 */
export type Messages = Readonly<Record<string, string>>;

/** Evidence in the check's own words: the key of what was looked for, or of what was typed. */
export interface WordedEvidence {
  readonly message: string;
  readonly found: 'typed' | 'absent';
}

/** What a check found of one pot, or of the kit. */
export interface Verdict {
  /** Null for a danger that no kit can rule out: it is told as a caution of the report, and never as something that holds up. */
  readonly grade: Grade | null;
  /** Key of the sentence. */
  readonly message: string;
  /** Key of the margin: "{have} of {need}". */
  readonly margin: string;
  readonly figures: Figures;
  readonly sum?: readonly SumLine[];
  /** At least one. */
  readonly evidence: readonly (Evidence | WordedEvidence)[];
  /** Key of the smallest change that lifts the grade. */
  readonly fix?: string;
  /** For "Can't tell": what would settle it, and the key of the question. */
  readonly question?: Question & { readonly message: string };
  readonly cites?: readonly SourceId[];
  readonly assumptions?: readonly Assumption[];
  /** Keys of cautions. */
  readonly cautions?: readonly string[];
  /** Which pot, as an index in `reading.items`. */
  readonly item?: number | null;
}

/** A check judges one thing. `judge` gets only what `needs` names; it returns nothing where it has nothing to say. */
export interface Check<N extends Need = Need, O extends object = object> {
  /** Its file name. */
  readonly id: string;
  /** Its name in words, for tables and headings. */
  readonly title: string;
  /** The question it answers. */
  readonly asks: string;
  /** What the person loses when it fails. */
  readonly costs: string;
  readonly needs: readonly N[];
  readonly cites: readonly SourceId[];
  /** When not to trust it. */
  readonly limits: string;
  /** Thresholds, with their grounds in a comment beside each. */
  readonly options: O;
  readonly messages: Messages;
  judge(facts: Pick<Facts, N>, options: O): readonly Verdict[];
}

/** Keeps the types of a check's needs and options together. */
export function defineCheck<const N extends Need, O extends object>(check: Check<N, O>): Check<N, O> {
  return check;
}

export function figure(value: Figure['value'], unit: Figure['unit'], places?: number): Figure {
  return places === undefined ? { value, unit } : { value, unit, places };
}
