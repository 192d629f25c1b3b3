import type { CorrectableField, ItemKind } from './item.js';
import type { Span } from './span.js';
import type { SourceId } from './source.js';

/** Worst first. Somebody could be burned or poisoned; the meal or the water will not happen as planned; it works, at a price; cannot tell; holds up. */
export const GRADES = ['can-hurt', 'falls-short', 'costs-you', 'cant-tell', 'holds-up'] as const;
export type Grade = (typeof GRADES)[number];

/** Units of figures that leave the core; '' is a count or a ratio. */
export type FigureUnit =
  | ''
  | 'mL'
  | 'L'
  | 'ppm'
  | 'mm'
  | 'cm²'
  | 'm'
  | 'g'
  | 'kg'
  | 'g/mL'
  | 'kg/m³'
  | '°C'
  | '°'
  | 'kPa'
  | 'J'
  | 'kJ'
  | 'MJ/kg'
  | 'kJ/kg'
  | 'W'
  | 'kW'
  | 'kW/m²'
  | 'min'
  | 's'
  | 'h'
  | '%'
  | 'g/h'
  | 'g/L'
  | 'mL/person'
  | 'kcal'
  | 'days'
  | 'people'
  | 'rounds'
  | 'loads';

/** A number with its spread; `low` ≤ `likely` ≤ `high`. */
export interface Range {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}

/** A figure of a finding: one value, or a range. */
export interface Figure {
  readonly value: number | Range;
  readonly unit: FigureUnit;
  /** Decimal places it is worth showing; worked out from its size where absent. */
  readonly places?: number;
}

/** Figures and words by the name that the message's placeholders use. A word names a message of the catalogue or stands as itself. */
export type Figures = Readonly<Record<string, Figure | string>>;

/** One line of a sum, set as one does it by hand. */
export interface SumLine {
  readonly sign: '' | '+' | '−' | '×' | '÷' | '=';
  readonly figure: Figure;
  /** Message key of what the line is ("to the brim"). */
  readonly label: string;
  readonly grounds: 'stated' | 'worked-out' | 'assumed' | 'published' | 'common-practice';
  readonly cites?: readonly SourceId[];
}

/** What a finding rests on: a place in the text, a typed value, or an absence. */
export interface Evidence {
  /** 1-based line; absent for a typed value or an absence. */
  readonly line?: number;
  readonly span?: Span;
  /** The person's own words, sliced from the text; or what was typed; or what was looked for. */
  readonly quote: string;
  readonly found: 'in-list' | 'typed' | 'absent';
}

/** A question that would settle a "Can't tell". Findings with the same question are shown together. */
export interface Question {
  /** Index of the item in `reading.items`; absent for a question about the trip. */
  readonly item?: number;
  readonly field: CorrectableField | `trip.${string}` | 'kind';
  readonly kind?: ItemKind;
}

export interface Assumption {
  readonly what: string;
  readonly because: string;
  readonly replaceWith: string;
}

/** One check's answer about one pot or about the kit, in figures and in words. Plain JSON. */
export interface Finding {
  /** Id of the check: "meal-room". */
  readonly check: string;
  readonly grade: Grade;
  /** Which of the check's messages, so that a face can word it in another language. */
  readonly key: string;
  /** The name of the check in words: "Room for the meal". */
  readonly title: string;
  /** The sentence: "One meal takes two rounds." */
  readonly message: string;
  /** The margin: "402 of 473–591 mL". */
  readonly margin: string;
  /** Figures by name. */
  readonly figures: Figures;
  /** The sum, worded. */
  readonly sum: readonly WordedSumLine[];
  /** At least one. */
  readonly evidence: readonly Evidence[];
  /** The smallest change that lifts the grade, as a figure; null where there is none. */
  readonly fix: string | null;
  readonly question: (Question & { readonly text: string }) | null;
  readonly cites: readonly SourceId[];
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly string[];
  /** Which pot it is about, as an index in `reading.items`; null for the kit. */
  readonly item: number | null;
}

/** A danger that the trip gives cause to name and that no kit can rule out: it has no grade, since nothing on a list makes it right or wrong. */
export type Caution = Omit<Finding, 'grade' | 'fix' | 'question'>;

export interface WordedSumLine {
  readonly sign: SumLine['sign'];
  readonly figure: Figure;
  /** The figure in words, with its unit. */
  readonly text: string;
  readonly label: string;
  readonly grounds: SumLine['grounds'];
  readonly cites: readonly SourceId[];
}
