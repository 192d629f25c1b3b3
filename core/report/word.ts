import { sourceById } from '../data/sources/index.js';
import type { Check, Verdict } from '../model/check.js';
import {
  GRADES,
  type Assumption,
  type Figure,
  type Figures,
  type Finding,
  type Grade,
  type SumLine,
  type WordedSumLine,
} from '../model/finding.js';
import type { Messages } from '../model/check.js';
import type { DayPlan } from '../model/plan.js';
import type { Line } from '../model/reading.js';
import type { WordedDay } from '../model/report.js';
import type { Source } from '../model/source.js';
import { fillTemplate, formatFigure, likely, tell, told, type Wording } from './format.js';
import { ENGLISH, retold } from './language.js';
import { REPORT_MESSAGES } from './messages.js';

type AnyCheck = Pick<Check, 'id' | 'title' | 'messages' | 'cites'>;

/** Puts a verdict into words. A missing message is a programming error: TypeError. */
export function wordVerdict(check: AnyCheck, verdict: Verdict, wording: Wording): Finding {
  const messages = told(check.messages, wording);
  const say = (key: string) => fillTemplate(messageOf(messages, key), verdict.figures, messages, wording);
  const { question } = verdict;
  return {
    check: check.id,
    grade: verdict.grade,
    key: verdict.message,
    title: tell(check.title, wording),
    message: say(verdict.message),
    margin: say(verdict.margin),
    figures: verdict.figures,
    sum: wordSum(verdict.sum ?? [], messages, wording, say),
    evidence: verdict.evidence.map((one) => ('message' in one ? { quote: say(one.message), found: one.found } : one)),
    fix: verdict.fix === undefined ? null : say(verdict.fix),
    question: question === undefined ? null : { ...question, text: say(question.message) },
    cites: verdict.cites ?? check.cites,
    assumptions: inLanguage(verdict.assumptions ?? [], wording),
    cautions: (verdict.cautions ?? []).map(say),
    item: verdict.item ?? null,
  };
}

/** Reasons and cures that came with the values, in the language of the report. */
export function inLanguage<T>(value: T, wording: Wording): T {
  return (wording.language ?? ENGLISH) === ENGLISH ? value : retold(value, (english) => tell(english, wording));
}

function messageOf(messages: Messages, key: string): string {
  const message = messages[key];
  if (message === undefined) throw new TypeError(`No message "${key}": add it to the messages.`);
  return message;
}

export function wordSum(
  sum: readonly SumLine[],
  messages: Messages,
  wording: Wording,
  say = (key: string) => messageOf(messages, key),
): WordedSumLine[] {
  return sum.map((line) => ({
    sign: line.sign,
    figure: line.figure,
    text: formatFigure(line.figure, wording),
    label: say(line.label),
    grounds: line.grounds,
    cites: line.cites ?? [],
  }));
}

/** Worst first, then by place in the text, then in the order of the checks. */
export function orderFindings(findings: readonly Finding[]): Finding[] {
  const place = (finding: Finding) => Math.min(...finding.evidence.map((evidence) => evidence.span?.[0] ?? Infinity));
  return findings
    .map((finding, order) => ({ finding, order, grade: GRADES.indexOf(finding.grade), place: place(finding) }))
    .sort((a, b) => a.grade - b.grade || (a.place === b.place ? 0 : a.place - b.place) || a.order - b.order)
    .map(({ finding }) => finding);
}

export function countGrades(findings: readonly Finding[]): Record<Grade, number> {
  const counts = { 'can-hurt': 0, 'falls-short': 0, 'costs-you': 0, 'cant-tell': 0, 'holds-up': 0 };
  for (const finding of findings) counts[finding.grade]++;
  return counts;
}

/** "12 lines used, 1 not cook kit, 1 not understood". */
export function countLines(lines: readonly Line[], wording: Wording): string {
  const count = (use: Line['use']) => countOf(lines.filter((line) => line.use === use).length);
  return phraseOf('lines', wording, {
    used: count('used'),
    off: count('not-cook-kit'),
    unknown: count('not-understood'),
  });
}

function countOf(value: number): Figure {
  return { value, unit: '' };
}

/** One of the report's own messages. */
function phraseOf(key: keyof typeof REPORT_MESSAGES, wording: Wording, figures: Figures = {}): string {
  const messages = told(REPORT_MESSAGES, wording);
  return fillTemplate(messageOf(messages, key), figures, messages, wording);
}

/** Every assumption once, in the order met. */
export function gatherAssumptions(findings: readonly Finding[]): Assumption[] {
  const seen = new Map<string, Assumption>();
  for (const assumption of findings.flatMap((finding) => finding.assumptions)) {
    const key = `${assumption.what}\n${assumption.because}`;
    if (!seen.has(key)) seen.set(key, assumption);
  }
  return [...seen.values()];
}

/** The bibliography of what the findings and the day cite, in order of first use. */
export function gatherSources(findings: readonly Finding[], day: WordedDay | null, wording: Wording): Source[] {
  const sums = [...findings.map((finding) => finding.sum), ...(day?.tasks ?? []).map((task) => task.sum)].flat();
  const ids = [...findings.flatMap((finding) => finding.cites), ...sums.flatMap((line) => line.cites)];
  return [...new Set(ids)].map(sourceById).map((source) => ({
    ...source,
    // A publication keeps its own title; a practice is told in our words.
    ...(source.grade === 'common-practice' ? { title: tell(source.title, wording) } : {}),
    ...(source.note === undefined ? {} : { note: tell(source.note, wording) }),
  }));
}

/** The day in words; null where it could not be worked out. */
export function wordDay(plan: DayPlan, english: Messages, days: number | null, wording: Wording): WordedDay | null {
  if (plan.perDay === null || plan.tasks.length === 0) return null;
  const messages = told(english, wording);
  const words = (value: DayPlan['tasks'][number]['litres'], unit: 'L' | 'rounds' | 'loads' | 'min' | 'g') =>
    formatFigure({ value, unit }, wording);
  return {
    boilC: plan.boilC,
    tasks: plan.tasks.map((task) => ({
      id: task.id,
      title: messageOf(messages, task.id),
      litres: task.litres,
      rounds: task.rounds,
      energyKj: task.energyKj,
      minutes: task.minutes,
      grams: task.grams,
      words: {
        litres: words(task.litres, 'L'),
        rounds: `${words(task.rounds, 'rounds')} ${messageOf(messages, task.id === 'melt' ? 'loads' : likely(task.rounds) === 1 ? 'round' : 'rounds')}`,
        minutes: words(task.minutes, 'min'),
        grams: words(task.grams, 'g'),
      },
      sum: wordSum(task.sum, messages, wording),
    })),
    perDay: fillTemplate(
      messageOf(messages, 'per-day'),
      {
        litres: { value: plan.perDay.litres, unit: 'L' },
        minutes: { value: plan.perDay.minutes, unit: 'min' },
        grams: { value: plan.perDay.grams, unit: 'g' },
      },
      messages,
      wording,
    ),
    perTrip:
      plan.tripGrams === null || days === null
        ? null
        : fillTemplate(
            messageOf(messages, plan.carriedGrams === null ? 'per-trip' : 'per-trip-carried'),
            {
              days: { value: days, unit: 'days' },
              grams: { value: plan.tripGrams, unit: 'g' },
              ...(plan.carriedGrams === null ? {} : { carried: { value: plan.carriedGrams, unit: 'g' } as const }),
            },
            messages,
            wording,
          ),
  };
}
