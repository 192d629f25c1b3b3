/** What judges typed fields: a pot, a trip, a stove. It reads no list. */
import {
  checkPot,
  lookFor,
  parseMeasure,
  type CheckOptions,
  type InputProblem,
  type LookFor,
  type PotInput,
  type Report,
  type StoveInput,
  type Trip,
} from '../core/typed-door.js';
import { isAsked, type Draft, type Fields, type Judged } from './draft.js';
import { drawing } from './styles/drawing.css.js';
import { findings } from './styles/findings.css.js';
import { letter as letterStyles } from './styles/letter.css.js';
import { takeTags } from './tags.js';
import { chart } from './views/chart.js';
import { drawing as drawnPot, sketch } from './views/drawing.js';
import { keptLetter, letter } from './views/letter.js';

export type Speech = Pick<CheckOptions, 'locale' | 'language'>;

/** The second opinion on a typed pot; null where none is typed. */
export function judgeTyped(draft: Draft, speech: Speech = {}, usual: Fields = {}): Judged | null {
  if (!isAsked(draft)) return null;
  const report = checkTyped(draft, optionsOf(draft, speech, usual));
  return { draft, report, asRead: report.reading };
}

export function optionsOf({ units }: Draft, { locale, language }: Speech, usual: Fields): CheckOptions {
  return {
    ...(locale === undefined ? {} : { locale }),
    // The elements bring a copy of English of their own: left out, the core takes its own, and has nothing to look up.
    ...(language === undefined || Object.keys(language.sentences).length === 0 ? {} : { language }),
    usual: tripOf(usual),
    ...(units === null ? {} : { units }),
  };
}

/** What pot to look for on the trip and with the stove of a draft, and near to its pot. */
export function lookForPot(draft: Draft, speech: Speech = {}, usual: Fields = {}): LookFor | null {
  return lookFor(potOf(draft.pot), tripOf(draft.trip), stoveOf(draft.stove), optionsOf(draft, speech, usual));
}

/** What cannot be used of typed fields, in the language that `options` ask for. */
export function problemsOf(
  fields: Pick<Draft, 'trip' | 'pot' | 'stove'>,
  options: CheckOptions = {},
): readonly InputProblem[] {
  return checkTyped(fields, options).problems;
}

export function checkTyped({ trip, pot, stove }: Pick<Draft, 'trip' | 'pot' | 'stove'>, options: CheckOptions): Report {
  return checkPot(potOf(pot), tripOf(trip), stoveOf(stove), options);
}

function potOf(pot: Fields): PotInput {
  return counted(pot, ['quantity']);
}

function stoveOf(stove: Fields): StoveInput | undefined {
  return Object.keys(stove).length === 0 ? undefined : counted(stove, ['armCount', 'powerW']);
}

/** Figures of the trip are typed as text, with a comma or a true minus, or with a unit: "20 °F", "8000 ft". */
export function tripOf(fields: Fields): Partial<Trip> {
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

/** What both parts have: what is seen of a report, with its style sheets, and what is said of typed fields. */
export const OF_ONE_POT = {
  takeTags,
  chart,
  drawing: drawnPot,
  sketch,
  letter,
  keptLetter,
  lookForPot,
  problemsOf,
  styles: { findings, drawing, letter: letterStyles },
};
