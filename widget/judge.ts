/** The part of the widget that reads and judges: all of the core, and so by far the most of what is loaded. It comes by `judging.ts`, and only there. */
import {
  checkListInSteps,
  checkPot,
  finish,
  languagesMissing,
  learnLanguages,
  lookFor,
  parseMeasure,
  readList,
  remark,
  type CheckOptions,
  type InputProblem,
  type LookFor,
  type PotInput,
  type Report,
  type Steps,
  type StoveInput,
  type Trip,
} from '../core/english.js';
import { isAsked, type Draft, type Fields, type Judged } from './draft.js';
import { drawing } from './styles/drawing.css.js';
import { findings } from './styles/findings.css.js';
import { letter as letterStyles } from './styles/letter.css.js';
import { takeTags } from './tags.js';
import { chart } from './views/chart.js';
import { drawing as drawnPot, sketch } from './views/drawing.js';
import { keptLetter, letter } from './views/letter.js';

/**
 * The second opinion on a draft; null where nothing is typed yet. `locale` (BCP 47) settles US and imperial units where the list does not;
 * `usual` is what to assume of the trip.
 */
export function judge(draft: Draft, speech?: Speech, usual?: Fields): Judged | null {
  return finish(judgeInSteps(draft, speech, usual));
}

type Speech = Pick<CheckOptions, 'locale' | 'language'>;

/** Milliseconds of work after which strokes and frames have their turn: half a frame. */
const WORK_MS = 8;

/** The same, without holding the page up. Gives up, with undefined, once it is `outdated`. */
export async function judgeBetweenStrokes(
  outdated: () => boolean,
  ...asked: Parameters<typeof judge>
): Promise<Judged | null | undefined> {
  const steps = judgeInSteps(...asked);
  let step;
  do {
    const until = performance.now() + WORK_MS;
    do step = steps.next();
    while (step.done !== true && performance.now() < until);
    await nextTask();
    if (outdated()) return undefined;
  } while (step.done !== true);
  return step.value;
}

/** A timer would be held back where the page is not in sight. */
function nextTask(): Promise<unknown> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = (event) => {
      port1.close();
      resolve(event);
    };
    port2.postMessage(null);
  });
}

function* judgeInSteps(draft: Draft, speech: Speech = {}, usual: Fields = {}): Steps<Judged | null> {
  const options = optionsOf(draft, speech, usual);
  if (!isAsked(draft)) return null;
  if (draft.entrance === 'pot') {
    const report = checkTyped(draft, options);
    return { draft, report, asRead: report.reading };
  }
  const report = yield* checkListInSteps(draft.text, tripOf(draft.trip), draft.corrections, options);
  return { draft, report, asRead: draft.corrections.length === 0 ? report.reading : readList(draft.text, options) };
}

function optionsOf({ units }: Draft, { locale, language }: Speech, usual: Fields): CheckOptions {
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

function checkTyped({ trip, pot, stove }: Pick<Draft, 'trip' | 'pot' | 'stove'>, options: CheckOptions): Report {
  return checkPot(potOf(pot), tripOf(trip), stoveOf(stove), options);
}

function potOf(pot: Fields): PotInput {
  return counted(pot, ['quantity']);
}

function stoveOf(stove: Fields): StoveInput | undefined {
  return Object.keys(stove).length === 0 ? undefined : counted(stove, ['armCount', 'powerW']);
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

/** All that the elements need of this part, and the style sheets of what is seen of a report. */
export const JUDGING = {
  judge,
  judgeBetweenStrokes,
  lookForPot,
  takeTags,
  chart,
  drawing: drawnPot,
  sketch,
  letter,
  keptLetter,
  problemsOf,
  languagesMissing,
  learnLanguages,
  remark,
  styles: { findings, drawing, letter: letterStyles },
};
