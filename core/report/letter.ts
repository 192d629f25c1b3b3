import type { Finding, Grade } from '../model/finding.js';
import type { Report } from '../model/report.js';
import { fillTemplate, told, type Wording } from './format.js';
import { ENGLISH } from './language.js';
import { LETTER_MESSAGES } from './letter-words.js';
import { escapeMarkdown, wordSource } from './remark.js';

/** The order of action: mend before the trip, cheap gains, what the writer has to tell. */
export const LETTER_SECTIONS = ['before', 'gain', 'ask'] as const;
export type LetterSection = (typeof LETTER_SECTIONS)[number];

/** One finding, or one question, as a letter tells it. */
export interface LetterPart {
  /** Of the check, the pot and the message: the same as long as the finding is. */
  readonly id: string;
  readonly section: LetterSection;
  readonly grade: Grade;
  /** Beside its tick: the finding's sentence, or the question. */
  readonly title: string;
  /** The margin, or what the answer would settle. */
  readonly figure: string;
  /** What happens, the arithmetic as one clause, and what to do. */
  readonly text: string;
  readonly cautions: readonly string[];
  readonly cites: readonly string[];
  /** Whether it is in the letter from the start. */
  readonly ticked: boolean;
}

export type LetterFormat = 'html' | 'plain' | 'markdown';

/** What the person made of the parts: ticks and sentences by id, the first line, and how it is copied. */
export interface LetterChoice {
  readonly first: string;
  readonly ticks: Readonly<Record<string, boolean>>;
  readonly texts: Readonly<Record<string, string>>;
  readonly sources: boolean;
}

/** What costs something is in the letter from the start up to this many parts, and so are questions: about ten sentences. */
const FEW_GAINS = 2;
const FEW_QUESTIONS = 2;

type Speech = Pick<Wording, 'locale' | 'language'>;

/** The findings as parts of a letter to whoever wrote the list. What can hurt and what falls short is ticked. */
export function letterParts(report: Report, speech: Speech): readonly LetterPart[] {
  const of = (...grades: Grade[]) => report.findings.filter(({ grade }) => grades.includes(grade));
  return [
    ...of('can-hurt', 'falls-short').map((finding) => partOf(finding, 'before', true)),
    ...of('costs-you').map((finding, i) => partOf(finding, 'gain', i < FEW_GAINS)),
    ...questions(of('cant-tell'), speech),
  ];
}

function partOf(finding: Finding, section: LetterSection, ticked: boolean): LetterPart {
  const { check, item, key, grade, message, margin, fix, cautions, cites } = finding;
  // A margin that is a figure is the arithmetic in one clause; one that is a word repeats the sentence.
  const clause = /^[×−]?\s?\d/.test(margin) ? `${message.replace(/\.$/, '')} (${margin}).` : message;
  return {
    id: `${check} ${item ?? ''} ${key}`,
    section,
    grade,
    title: message.replace(/\.$/, ''),
    figure: margin,
    // One way out is enough: the others stand with the finding.
    text: [clause, ...(fix === null ? [] : [firstSentence(fix)])].join(' '),
    cautions,
    cites,
    ticked,
  };
}

function firstSentence(words: string): string {
  return /^.*?[.?](?=\s|$)/s.exec(words)?.[0] ?? words;
}

/** Each question once, with the checks that its answer would settle. */
function questions(open: readonly Finding[], speech: Speech): readonly LetterPart[] {
  const byText = new Map<string, readonly Finding[]>();
  for (const finding of open) {
    const text = finding.question?.text;
    if (text !== undefined) byText.set(text, [...(byText.get(text) ?? []), finding]);
  }
  const { inside } = speech.language ?? ENGLISH;
  return [...byText].map(([text, findings], i) => ({
    id: `ask ${findings[0]!.question!.field} ${findings[0]!.question!.item ?? ''}`,
    section: 'ask',
    grade: 'cant-tell',
    title: text,
    figure: letterSay(speech)('settles', {
      checks: [...new Set(findings.map(({ title }) => inside(title)))].join(', '),
    }),
    text,
    cautions: [...new Set(findings.flatMap(({ cautions }) => cautions))],
    cites: [],
    ticked: i < FEW_QUESTIONS,
  }));
}

/** The letter's own words in the language of the report. */
export function letterSay({ locale, language = ENGLISH }: Speech) {
  const wording = { units: 'metric', locale, language } as const;
  const messages = told(LETTER_MESSAGES, wording);
  return (key: keyof typeof LETTER_MESSAGES, figures: Parameters<typeof fillTemplate>[1] = {}): string =>
    fillTemplate(messages[key]!, figures, {}, wording);
}

/** A paragraph of the letter as it stands, before it is set in a format. */
export interface LetterParagraph {
  readonly as: 'first' | 'heading' | 'text' | 'caution' | 'closing' | 'source';
  readonly words: string;
  /** The part it tells of. */
  readonly part?: LetterPart;
}

export function isTicked(part: LetterPart, { ticks }: Pick<LetterChoice, 'ticks'>): boolean {
  return ticks[part.id] ?? part.ticked;
}

/** The letter in paragraphs: what is ticked, in the order of action. A caution stands once, and as long as a finding that it is of. */
export function letterParagraphs(
  report: Report,
  parts: readonly LetterPart[],
  choice: LetterChoice,
  speech: Speech,
): readonly LetterParagraph[] {
  const say = letterSay(speech);
  const ticked = parts.filter((part) => isTicked(part, choice));
  const cautioned = new Set<string>();
  const asked = ticked.filter(({ section }) => section === 'ask').length;
  const heading: Readonly<Record<LetterSection, string>> = {
    before: say('beforeYouGo'),
    gain: say('smallGain'),
    ask: say(asked === 1 ? 'question' : 'questions'),
  };
  const body = LETTER_SECTIONS.flatMap((section): LetterParagraph[] => {
    const own = ticked.filter((part) => part.section === section);
    if (own.length === 0) return [];
    return [
      { as: 'heading', words: heading[section] },
      ...own.flatMap((part): LetterParagraph[] => [
        { as: 'text', words: choice.texts[part.id] ?? part.text, part },
        ...part.cautions.flatMap((words): LetterParagraph[] => {
          if (cautioned.has(words)) return [];
          cautioned.add(words);
          return [{ as: 'caution', words, part }];
        }),
      ]),
    ];
  });
  const cites = new Set(ticked.flatMap((part) => part.cites));
  const sources = choice.sources ? report.sources.filter(({ id }) => cites.has(id)) : [];
  return [
    ...(choice.first.trim() === '' ? [] : [{ as: 'first', words: choice.first.trim() } as const]),
    ...(ticked.length === 0 ? [{ as: 'text', words: say('allWell') } as const] : body),
    ...(asked === 0 ? [] : [{ as: 'closing', words: say(asked === 1 ? 'writeBack' : 'writeBackMany') } as const]),
    ...(sources.length === 0
      ? []
      : [
          { as: 'heading', words: say('sources') } as const,
          ...sources.map((source) => ({ as: 'source', words: `${wordSource(source)}.` }) as const),
        ]),
  ];
}

/** The paragraphs as text: plain, Markdown, or HTML for a rich paste into mail. */
export function writeLetter(paragraphs: readonly LetterParagraph[], format: LetterFormat): string {
  const set = ({ as, words }: LetterParagraph): string => {
    switch (format) {
      case 'plain':
        return words;
      case 'markdown':
        return as === 'heading' ? `**${escapeMarkdown(words)}**` : escapeMarkdown(words);
      case 'html':
        return as === 'heading' ? `<p><b>${escapeHtml(words)}</b></p>` : `<p>${escapeHtml(words)}</p>`;
    }
  };
  const written = paragraphs.filter(({ words }) => words.trim() !== '').map(set);
  return `${written.join(format === 'html' ? '\n' : '\n\n')}\n`;
}

function escapeHtml(words: string): string {
  return words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}

/** Sentences in the paragraphs that carry them. */
export function countSentences(paragraphs: readonly LetterParagraph[]): number {
  return paragraphs
    .filter(({ as }) => as === 'text' || as === 'caution' || as === 'closing')
    .reduce((sum, { words }) => sum + (words.match(/[.?!…](?=\s|$)/g) ?? []).length, 0);
}
