import type { Finding, FigureUnit } from '../model/finding.js';

/** What a report needs to be in a language. The key of a sentence is the English one, so that a sentence that changes there is missing here, and seen. */
export interface Language {
  readonly grades: Readonly<Record<Finding['grade'], string>>;
  /** English sentences, placeholders and all, with those of this language. A sentence that is missing stays English. */
  readonly sentences: Readonly<Record<string, string>>;
  /** Units that are written otherwise than in English; a per cent sign with the space before it. */
  readonly units: Readonly<
    Partial<Record<FigureUnit | 'fl oz' | 'qt' | 'pt' | 'in' | 'ft' | 'oz' | 'lb' | 'oz/h', string>>
  >;
  /** A sentence or a title as it stands within another: without the capital that only its place gave it. */
  readonly inside: (sentence: string) => string;
  /** The marks between two parts of a line, with the spaces that the language sets about them. */
  readonly colon: string;
  readonly semicolon: string;
}

/** The language that the code is written in. */
export const ENGLISH: Language = {
  grades: {
    'can-hurt': 'Can hurt',
    'falls-short': 'Falls short',
    'costs-you': 'Costs you',
    'cant-tell': 'Can’t tell',
    'holds-up': 'Holds up',
  },
  sentences: {},
  units: {},
  inside: (sentence) =>
    /^[A-Z][a-z ]/.test(sentence) ? sentence.charAt(0).toLowerCase() + sentence.slice(1) : sentence,
  colon: ': ',
  semicolon: '; ',
};

/** The sentence in a language; one that code has filled is found by its pattern. `number` writes a number as the language does. */
export function say(english: string, language: Language, number: (value: number) => string): string {
  if (language === ENGLISH) return english;
  const known = language.sentences[english];
  if (known !== undefined) return known;
  for (const { parts, sentence } of patternsOf(language)) {
    const values = valuesIn(english, parts);
    if (values === undefined) continue;
    const worded = values.map((value, i) => {
      // What stands in quotes is the person's.
      if (parts[i]!.endsWith('“')) return value;
      return language.sentences[value] ?? value.replace(/^\d+\.\d+/, (figure) => number(Number(figure)));
    });
    return sentence.replace(/\{(\d)\}/g, (_, i: string) => worded[Number(i)] ?? '');
  }
  return english;
}

interface Pattern {
  /** What stands before, between and after the values. */
  readonly parts: readonly string[];
  readonly sentence: string;
}

const patterns = new WeakMap<Language, readonly Pattern[]>();

/** Those with the most values first: what they match, one with fewer may match too. */
function patternsOf(language: Language): readonly Pattern[] {
  const known = patterns.get(language);
  if (known !== undefined) return known;
  const made = Object.entries(language.sentences)
    .map(([english, sentence]) => ({ parts: english.split(/\{\d\}/), sentence }))
    .filter(({ parts }) => parts.length > 1)
    .sort((a, b) => b.parts.length - a.parts.length);
  patterns.set(language, made);
  return made;
}

function valuesIn(text: string, parts: readonly string[]): readonly string[] | undefined {
  const [first = '', ...rest] = parts;
  if (!text.startsWith(first) || !text.endsWith(parts.at(-1)!)) return undefined;
  const values: string[] = [];
  let at = first.length;
  for (const [i, part] of rest.entries()) {
    const end = i === rest.length - 1 ? text.length - part.length : text.indexOf(part, at);
    if (end < at) return undefined;
    values.push(text.slice(at, end));
    at = end + part.length;
  }
  return values;
}

/** Fields that hold words of the code, wherever in a report they stand. */
const WORDED = new Set(['what', 'because', 'replaceWith', 'from', 'kindBecause', 'notCarriedBecause']);

/** The same value with the words of the code in it said by `tell`: its reasons and cures, and not what the person wrote. */
export function retold<T>(value: T, tell: (english: string) => string): T {
  if (Array.isArray(value)) return value.map((part: unknown) => retold(part, tell)) as T;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, part]: [string, unknown]) => [
      key,
      WORDED.has(key) && typeof part === 'string' ? tell(part) : retold(part, tell),
    ]),
  ) as T;
}
