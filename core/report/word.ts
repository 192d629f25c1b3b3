import { sourceById } from '../data/sources/index.js';
import type { Check, Verdict } from '../model/check.js';
import {
  GRADES,
  type Assumption,
  type Caution,
  type Figure,
  type Figures,
  type Finding,
  type Grade,
  type Range,
  type SumLine,
  type WordedSumLine,
} from '../model/finding.js';
import type { Messages } from '../model/check.js';
import { valueOf } from '../model/given.js';
import type { Kit, Stove, Vessel } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import type { Line } from '../model/reading.js';
import type { WordedDay, WordedPlace, WordedUse } from '../model/report.js';
import type { Source } from '../model/source.js';
import { fillTemplate, formatFigure, likely, tell, told, type Wording } from './format.js';
import { ENGLISH, retold } from './language.js';
import { REPORT_MESSAGES } from './messages.js';

type AnyCheck = Pick<Check, 'id' | 'title' | 'messages' | 'cites'>;

/** Puts a verdict into words: a finding, or a caution where it has no grade. A missing message is a programming error: TypeError. */
export function wordVerdict(check: AnyCheck, verdict: Verdict, wording: Wording): Finding | Caution {
  const messages = told(check.messages, wording);
  const say = (key: string) => fillTemplate(messageOf(messages, key), verdict.figures, messages, wording);
  const { question } = verdict;
  const worded: Caution = {
    check: check.id,
    key: verdict.message,
    title: tell(check.title, wording),
    message: say(verdict.message),
    margin: say(verdict.margin),
    figures: verdict.figures,
    sum: wordSum(verdict.sum ?? [], messages, wording, say),
    evidence: verdict.evidence.map((one) => ('message' in one ? { quote: say(one.message), found: one.found } : one)),
    cites: verdict.cites ?? check.cites,
    assumptions: inLanguage(verdict.assumptions ?? [], wording),
    cautions: (verdict.cautions ?? []).map(say),
    item: verdict.item ?? null,
  };
  if (verdict.grade === null) return worded;
  return {
    ...worded,
    grade: verdict.grade,
    fix: verdict.fix === undefined ? null : say(verdict.fix),
    question: question === undefined ? null : { ...question, text: say(question.message) },
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
export function gatherAssumptions(findings: readonly Caution[]): Assumption[] {
  const seen = new Map<string, Assumption>();
  for (const assumption of findings.flatMap((finding) => finding.assumptions)) {
    const key = `${assumption.what}\n${assumption.because}`;
    if (!seen.has(key)) seen.set(key, assumption);
  }
  return [...seen.values()];
}

/** The bibliography of what the findings and the day cite, in order of first use. */
export function gatherSources(findings: readonly Caution[], day: WordedDay | null, wording: Wording): Source[] {
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
export function wordDay(
  plan: DayPlan,
  english: Messages,
  { people, days }: { readonly people: number; readonly days: number | null },
  wording: Wording,
): WordedDay | null {
  if (plan.perDay === null || plan.tasks.length === 0) return null;
  const messages = told(english, wording);
  const say = (key: string, figures: Figures) => fillTemplate(messageOf(messages, key), figures, messages, wording);
  const words = (value: Range, unit: 'L' | 'rounds' | 'loads' | 'min' | 'g') => formatFigure({ value, unit }, wording);
  // Wood is gathered on the way, by the armful.
  const wood = plan.burns === 'wood';
  const { eatenMin } = plan;
  const { minutes } = plan.perDay;
  const [eats, done] = [eatenMin?.likely ?? 0, minutes.likely];
  const key =
    eatenMin === null
      ? 'done-only'
      : `${people === 1 ? 'eats' : 'all-eat'}-${Math.round(done) > Math.round(eats) ? 'done' : 'only'}`;
  return {
    boilC: plan.boilC,
    eatenMin,
    doneMin: minutes,
    headline: say(key, {
      people: { value: people, unit: 'people' },
      eaten: { value: eats, unit: 'min', places: 0 },
      done: { value: done, unit: 'min', places: 0 },
    }),
    fuel: plan.fuels
      .filter(({ grams }) => grams.high > 0)
      .map(({ burns, grams }) => say('grams-of', { fuel: burns, grams: { value: grams.likely, unit: 'g', places: 0 } }))
      .join(' + '),
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
    perDay: say(wood ? 'per-day-wood' : 'per-day', {
      litres: { value: plan.perDay.litres, unit: 'L' },
      minutes: { value: minutes, unit: 'min' },
      grams: { value: plan.perDay.grams, unit: 'g' },
      kg: inKg(plan.perDay.grams),
    }),
    perTrip:
      plan.tripGrams === null || days === null
        ? null
        : say(wood ? 'per-trip-wood' : plan.carriedGrams === null ? 'per-trip' : 'per-trip-carried', {
            days: { value: days, unit: 'days' },
            grams: { value: plan.tripGrams, unit: 'g' },
            kg: inKg(plan.tripGrams),
            ...(plan.carriedGrams === null ? {} : { carried: { value: plan.carriedGrams, unit: 'g' } as const }),
          }),
  };
}

/** The heat places and what is done on each, in words; pots and stoves are told by their place in the report. */
export function wordPlaces(
  plan: DayPlan,
  kit: Kit,
  { pots, stoves }: { readonly pots: readonly Vessel[]; readonly stoves: readonly Stove[] },
  english: Messages,
  wording: Wording,
): WordedPlace[] {
  const messages = told(english, wording);
  const say = (key: string, figures: Figures) => fillTemplate(messageOf(messages, key), figures, messages, wording);
  const words = (value: Range | null, unit: 'L' | 'min' | 'g') =>
    value === null ? '' : formatFigure({ value, unit }, wording);
  return plan.places.map(({ stove, burns, alike, uses, startMin, minutes, grams }) => {
    const of = stove === null ? undefined : kit.stoves[stove];
    const name = of?.name ?? messageOf(messages, burns === null ? 'no-flame' : 'open-fire');
    return {
      stove: of === undefined ? null : stoves.indexOf(of),
      burns,
      alike,
      minutes,
      grams,
      words: {
        name: alike === 1 ? name : say('places', { name, alike: { value: alike, unit: '' } }),
        burns: burns === null ? '' : messageOf(messages, burns),
        minutes: words(minutes, 'min'),
        grams: words(grams, 'g'),
      },
      uses: uses.map((use, i): WordedUse => {
        const vessel = kit.vessels[use.vessel]!;
        const one = divided(use.litres, use.turns);
        const many = use.task === 'melt' ? 'loads-of' : use.turns.high > 1 ? 'turns-of' : null;
        return {
          task: use.task,
          title: messageOf(messages, use.task),
          pot: pots.indexOf(vessel),
          litres: use.litres,
          turns: use.turns,
          startMin: startMin[i] ?? null,
          minutes: use.heated?.minutes ?? null,
          grams: use.heated?.grams ?? null,
          stallsC: use.stall?.atC ?? null,
          words: {
            pot: say('pot', {
              name: vessel.name,
              capacity: { value: (valueOf(vessel.capacityMl) ?? 0) / 1000, unit: 'L' },
            }),
            turns:
              many === null
                ? words(use.litres, 'L')
                : say(many, {
                    turns: { value: use.turns, unit: 'rounds' },
                    each: { value: one, unit: 'L' },
                    litres: { value: use.litres, unit: 'L' },
                  }),
            minutes: words(use.heated?.minutes ?? null, 'min'),
            grams: words(use.heated?.grams ?? null, 'g'),
          },
        };
      }),
    };
  });
}

/** What stands in the pot in one turn. */
function divided(litres: Range, turns: Range): Range {
  const each = [litres.low / turns.low, litres.likely / turns.likely, litres.high / turns.high];
  return { low: Math.min(...each), likely: each[1]!, high: Math.max(...each) };
}

function inKg({ low, likely, high }: Range): Figure {
  return { value: { low: low / 1000, likely: likely / 1000, high: high / 1000 }, unit: 'kg', places: 1 };
}
