import {
  checkList,
  checkPot,
  parseMeasure,
  readList,
  type Correction,
  type InputProblem,
  type Reading,
  type Report,
  type Trip,
  type UnitSystem,
  type CheckOptions,
} from '../core/english.js';

/** Fields as typed; what cannot be used among them is told beside the field. */
export type Fields = Readonly<Record<string, string | number | boolean>>;

/** All that the person typed, as plain JSON: what a page keeps to give it back later. */
export interface Draft {
  readonly entrance: 'list' | 'pot';
  readonly text: string;
  readonly corrections: readonly Correction[];
  /** By the names of `Trip`; what is not in it is taken from the list or assumed. */
  readonly trip: Fields;
  /** By the names of `PotInput` and `StoveInput`. */
  readonly pot: Fields;
  readonly stove: Fields;
  /** null: as the list is written. */
  readonly units: UnitSystem | null;
}

export const EMPTY_DRAFT: Draft = {
  entrance: 'list',
  text: '',
  corrections: [],
  trip: {},
  pot: {},
  stove: {},
  units: null,
};

/** A report with the draft it is of. */
export interface Judged {
  readonly draft: Draft;
  readonly report: Report;
  /** The reading before any correction, to show what a corrected value was. */
  readonly asRead: Reading;
}

/**
 * The second opinion on a draft; null where nothing is typed yet. `locale` (BCP 47) settles US and imperial units where the list does not;
 * `usual` is what to assume of the trip.
 */
export function judge(
  draft: Draft,
  { locale, language }: Pick<CheckOptions, 'locale' | 'language'> = {},
  usual: Fields = {},
): Judged | null {
  const options = {
    ...(locale === undefined ? {} : { locale }),
    ...(language === undefined ? {} : { language }),
    usual: tripOf(usual),
    ...(draft.units === null ? {} : { units: draft.units }),
  };
  if (draft.entrance === 'pot') {
    if (Object.keys(draft.pot).every((name) => name === 'name')) return null;
    const report = checkTyped(draft, options);
    return { draft, report, asRead: report.reading };
  }
  if (draft.text.trim() === '') return null;
  const report = checkList(draft.text, tripOf(draft.trip), draft.corrections, options);
  return { draft, report, asRead: draft.corrections.length === 0 ? report.reading : readList(draft.text, options) };
}

/** What cannot be used of typed fields, in the language that `options` ask for. */
export function problemsOf(
  fields: Pick<Draft, 'trip' | 'pot' | 'stove'>,
  options: CheckOptions = {},
): readonly InputProblem[] {
  return checkTyped(fields, options).problems;
}

function checkTyped({ trip, pot, stove }: Pick<Draft, 'trip' | 'pot' | 'stove'>, options: CheckOptions): Report {
  return checkPot(
    counted(pot, ['quantity']),
    tripOf(trip),
    Object.keys(stove).length === 0 ? undefined : counted(stove, ['armCount', 'powerW']),
    options,
  );
}

/** Figures of the trip are typed as text, with a comma or a true minus, or with a unit: "20 °F", "8000 ft". */
function tripOf(fields: Fields): Partial<Trip> {
  const trip: Record<string, unknown> = counted(fields, ['people', 'days', 'hotMealsPerDay', 'lowC', 'altitudeM']);
  if (typeof trip['lowC'] === 'string') trip['lowC'] = parseMeasure(trip['lowC'], 'temperature')?.value ?? trip['lowC'];
  if (typeof trip['altitudeM'] === 'string') {
    const length = parseMeasure(trip['altitudeM'], 'length');
    if (length) trip['altitudeM'] = length.value / 1000;
  }
  return trip;
}

/** The fields with those named as numbers, where they read as such; what does not stays as typed, to be told. */
function counted(fields: Fields, names: readonly string[]): Record<string, string | number | boolean> {
  return Object.fromEntries(
    Object.entries(fields).map(([name, value]) => {
      if (typeof value !== 'string' || !names.includes(name)) return [name, value];
      const number = Number(value.trim().replace('−', '-').replace(',', '.'));
      return [name, Number.isNaN(number) ? value : number];
    }),
  );
}
