import type { Caution, Finding } from '../model/finding.js';
import type { Report } from '../model/report.js';
import type { Source } from '../model/source.js';
import { fillTemplate, told } from './format.js';
import { ENGLISH, type Language } from './language.js';
import { REPORT_MESSAGES } from './messages.js';

/** How one part of a remark is set. */
interface Setting {
  readonly heading: (words: string) => string;
  readonly quote: (words: string) => string;
  readonly point: (words: string) => string;
}

const SETTINGS: Readonly<Record<'plain' | 'markdown', Setting>> = {
  plain: { heading: (words) => words, quote: (words) => `  > ${words}`, point: (words) => `  ${words}` },
  markdown: {
    heading: (words) => `**${escapeMarkdown(words)}**`,
    quote: (words) => `> ${escapeMarkdown(words)}`,
    point: (words) => `- ${escapeMarkdown(words)}`,
  },
};

/** Marks that would format the person's own words. */
export function escapeMarkdown(words: string): string {
  return words.replace(/[\\`*_{}[\]<>#|~]/g, '\\$&');
}

/** The words that stand around the findings, in a language. */
type Say = (key: keyof typeof REPORT_MESSAGES, figures?: Readonly<Record<string, string>>) => string;

function sayIn(language: Language): Say {
  const wording = { units: 'metric', locale: 'en', language } as const;
  const messages = told(REPORT_MESSAGES, wording);
  return (key, figures = {}) => fillTemplate(messages[key]!, figures, {}, wording);
}

/**
 * The findings as a neutral remark, ready to send to whoever wrote the list: plain text or Markdown, with the lines quoted from `text`.
 * What holds up is named in one line; the cautions of all findings, and those that no kit can rule out, are always there. `language` is that of the report.
 */
export function remark(
  report: Report,
  text: string,
  format: 'plain' | 'markdown' = 'plain',
  language: Language = ENGLISH,
): string {
  const set = SETTINGS[format];
  const say = sayIn(language);
  const { colon, semicolon } = language;
  const told = report.findings.filter((finding) => finding.grade !== 'holds-up');
  const good = report.findings.filter((finding) => finding.grade === 'holds-up');
  const holds = good.map((finding) => language.inside(finding.title));
  const parts = [
    set.heading(report.summary.headline),
    ...told.map((finding) => wordFinding(finding, report, text, set, language)),
    ...report.cautions.map((caution) => wordCaution(caution, report, set, language)),
  ];
  if (holds.length > 0) {
    const cautions = new Set(good.flatMap((finding) => finding.cautions));
    parts.push(
      [
        `${language.grades['holds-up']}${colon}${[...new Set(holds)].join(', ')}.`,
        ...[...cautions].map((words) => set.point(say('caution', { words }))),
      ].join('\n'),
    );
  }
  if (report.day)
    parts.push(
      `${set.heading(say('day'))}\n${[report.day.perDay, ...(report.day.perTrip ? [report.day.perTrip] : [])].map(set.point).join('\n')}`,
    );
  if (report.assumptions.length > 0) {
    parts.push(
      `${set.heading(say('assumed'))}\n${report.assumptions.map((assumption) => set.point(`${assumption.what}${colon}${assumption.because}${semicolon}${assumption.replaceWith}.`)).join('\n')}`,
    );
  }
  parts.push(say('foot'));
  return `${parts.join('\n\n')}\n`;
}

function wordFinding(finding: Finding, report: Report, text: string, set: Setting, language: Language): string {
  const say = sayIn(language);
  const quotes = finding.evidence
    .filter((evidence) => evidence.line !== undefined)
    .map((evidence) => {
      const line = report.reading.lines[evidence.line! - 1];
      return set.quote(
        `${evidence.line}${language.colon}${(line ? text.slice(...line.span) : evidence.quote).trim().slice(0, 200)}`,
      );
    });
  return [
    set.heading(`${language.grades[finding.grade]} (${finding.margin})`),
    finding.message,
    ...new Set(quotes),
    ...(finding.question ? [set.point(finding.question.text)] : []),
    ...(finding.fix ? [set.point(finding.fix)] : []),
    ...finding.cautions.map((caution) => set.point(say('caution', { words: caution }))),
    // An open question rests on no publication yet.
    ...(finding.grade === 'cant-tell' ? [] : wordPublished(finding, report, set, language)),
  ].join('\n');
}

function wordCaution(caution: Caution, report: Report, set: Setting, language: Language): string {
  return [
    set.heading(sayIn(language)('caution', { words: caution.title })),
    caution.message,
    ...caution.cautions.map(set.point),
    ...wordPublished(caution, report, set, language),
  ].join('\n');
}

/** The publications that it rests on, in one line. */
function wordPublished({ cites }: Caution, report: Report, set: Setting, language: Language): string[] {
  const published = cites
    .map((id) => report.sources.find((source) => source.id === id))
    .filter((source) => source?.grade === 'published');
  if (published.length === 0) return [];
  const sources = published.map((source) => wordSource(source!)).join(language.semicolon);
  return [set.point(sayIn(language)('published', { sources }))];
}

/** Title, year and place of a source. */
export function wordSource(source: Source): string {
  return [source.by ? `${source.by}, ${source.title}` : source.title, source.year, source.place]
    .filter((part) => part !== undefined)
    .join(', ');
}
