import type { Forms, Words } from '../../data/words/words.js';
import { foldPhrase } from './fold.js';

/** What a word may say: its role in `Words`, the value under which it stands there, and whether it speaks of many. */
export interface Sense {
  readonly role: Role;
  readonly value: string | number;
  readonly many: boolean | undefined;
  /** Senses of one layer never overlap: a number for each role, and one for all nouns of things. */
  readonly layer: number;
}

export type Role =
  | Exclude<
      keyof Words,
      | 'language'
      | 'name'
      | 'decimal'
      | 'unspaced'
      | 'headFirst'
      | 'trip'
      | 'kinds'
      | 'containers'
      | 'numbers'
      | 'dimensions'
      | 'columns'
      | 'sections'
      | 'units'
    >
  | 'kind'
  | 'container'
  | 'number'
  | 'dimension'
  | 'column'
  | 'section'
  | 'unit'
  | 'month'
  | 'season'
  | 'snow'
  | 'party'
  | 'span'
  | Exclude<keyof Words['trip'], 'seasons' | 'months' | 'party' | 'span' | 'snow'>;

/** A phrase and all it may say. */
export interface Phrase {
  readonly words: readonly string[];
  readonly senses: readonly Sense[];
}

interface Lexicon {
  readonly words: Words;
  /** Phrases by their first word, longest first. */
  readonly phrases: ReadonlyMap<string, readonly Phrase[]>;
  /** By the ending, or the beginning, of a longer word. */
  readonly endings: ReadonlyMap<string, readonly Sense[]>;
  readonly beginnings: ReadonlyMap<string, readonly Sense[]>;
}

const ROLE_OF: Readonly<Record<string, Role>> = {
  kinds: 'kind',
  containers: 'container',
  numbers: 'number',
  dimensions: 'dimension',
  columns: 'column',
  sections: 'section',
  units: 'unit',
  months: 'month',
  seasons: 'season',
  snow: 'snow',
  wind: 'wind',
  party: 'party',
  span: 'span',
  materials: 'materials',
};
const SHORTEST_PART = 2;
/** In a language that is not the text's likeliest: a short ending would fit any word. */
const SHORTEST_FOREIGN_PART = 4;

const layers = new Map<Role, number>();

function layerOf(role: Role): number {
  if (isThing(role)) return 0;
  // "Each cook group" is no "each".
  if (role === 'eachGroup') return layerOf('perPerson');
  const known = layers.get(role);
  if (known !== undefined) return known;
  layers.set(role, layers.size + 1);
  return layers.size;
}

/** Layers are fewer than this. */
export const MOST_LAYERS = 128;

function compile(words: Words): Lexicon {
  const phrases = new Map<string, Map<string, { words: string[]; senses: Sense[] }>>();
  const endings = new Map<string, Sense[]>();
  const beginnings = new Map<string, Sense[]>();
  const add = (entry: string, sense: Sense) => {
    const bare = entry.replaceAll('~', '').trim();
    const folded = foldPhrase(bare);
    const first = folded[0];
    if (first === undefined) return;
    const key = folded.join(' ');
    const under = phrases.get(first) ?? new Map<string, { words: string[]; senses: Sense[] }>();
    phrases.set(first, under);
    const phrase = under.get(key) ?? { words: folded, senses: [] };
    under.set(key, phrase);
    phrase.senses.push(sense);
    if (folded.length > 1) return;
    const trimmed = entry.trim();
    if (trimmed.startsWith('~')) endings.set(first, [...(endings.get(first) ?? []), sense]);
    if (trimmed.endsWith('~')) beginnings.set(first, [...(beginnings.get(first) ?? []), sense]);
  };
  const addForms = (forms: Forms, role: Role, value: string | number) => {
    const [one = '', many] = forms.split('|');
    const layer = layerOf(role);
    const several = new Set(many?.split(',').map((entry) => entry.trim()));
    for (const entry of one.split(',')) {
      // A word on both sides is the same of one and of many.
      const either = many === undefined || several.delete(entry.trim());
      add(entry, { role, value, many: either ? undefined : false, layer });
    }
    for (const entry of several) add(entry, { role, value, many: true, layer });
  };
  const addField = (key: string, field: unknown) => {
    const role = ROLE_OF[key] ?? (key as Role);
    if (typeof field === 'string') addForms(field, role, key);
    else if (Array.isArray(field))
      field.forEach((entry: unknown, i) => {
        if (typeof entry === 'string') addForms(entry, role, i + 1);
        else if (Array.isArray(entry)) addForms(String(entry[1]), role, Number(entry[0]));
      });
    else for (const [value, forms] of Object.entries(field as Record<string, Forms>)) addForms(forms, role, value);
  };
  for (const [key, field] of Object.entries(words)) {
    if (key === 'trip') for (const [name, inner] of Object.entries(words.trip)) addField(name, inner);
    else if (key !== 'language' && key !== 'name' && key !== 'decimal' && key !== 'unspaced' && key !== 'headFirst')
      addField(key, field);
  }
  const sorted = new Map<string, readonly Phrase[]>();
  for (const [first, under] of phrases)
    sorted.set(
      first,
      [...under.values()].sort((a, b) => b.words.length - a.words.length),
    );
  return { words, phrases: sorted, endings, beginnings };
}

/** So many dictionaries, and so many words of one, are kept for the next text. */
const MOST_DICTIONARIES = 8;
const MOST_WORDS = 20_000;

/** The languages that a reader knows, and what has been looked up in them. */
export class Lexicons {
  /** English first, the others by their tags: the order they were learnt in makes no difference. */
  private readonly languages: readonly Words[];
  private readonly compiled: Map<Words, Lexicon>;
  private readonly dictionaries = new Map<string, Dictionary>();
  private readonly tellings = new Map<string, Telling>();
  private owners: ReadonlyMap<string, readonly number[]> | undefined;

  constructor(languages: readonly Words[], compiled = new Map<Words, Lexicon>()) {
    const rank = ({ language }: Words) => (language === 'en' ? '' : language);
    this.languages = [...languages].sort((a, b) => (rank(a) < rank(b) ? -1 : 1));
    this.compiled = compiled;
  }

  /** These languages and more; one that is known already is left as it is, unless more of it comes. */
  with(more: readonly Words[]): Lexicons {
    const extent = (words: Words | undefined) => (words === undefined ? 0 : Object.keys(words).length);
    const news = more.filter(
      (words) => extent(words) > extent(this.languages.find(({ language }) => language === words.language)),
    );
    if (news.length === 0) return this;
    const kept = this.languages.filter(({ language }) => !news.some((words) => words.language === language));
    return new Lexicons([...kept, ...news], this.compiled);
  }

  tags(): readonly string[] {
    return this.languages.map(({ language }) => language);
  }

  /** The dictionary of some languages, the likeliest first. It remembers what it has looked up. */
  dictionaryOf(tags: readonly string[]): Dictionary {
    const key = tags.join();
    const known = this.dictionaries.get(key);
    if (known !== undefined) return known;
    if (this.dictionaries.size >= MOST_DICTIONARIES) this.dictionaries.clear();
    const own = tags.flatMap((tag) => this.all().filter((lexicon) => lexicon.words.language === tag));
    const dictionary = new Dictionary(own);
    this.dictionaries.set(key, dictionary);
    return dictionary;
  }

  /** A word tells by being known, shared among the languages that know it; else each language that knows its ending. */
  tellingOf(word: string): Telling {
    const known = this.tellings.get(word);
    if (known !== undefined) return known;
    this.owners ??= owned(this.all());
    const owners = this.owners.get(word) ?? [];
    const telling =
      owners.length > 0
        ? { languages: owners, score: 1 / owners.length }
        : { languages: endingLanguages(word, this.all()), score: 1 };
    if (this.tellings.size >= MOST_WORDS) this.tellings.clear();
    this.tellings.set(word, telling);
    return telling;
  }

  /** The lexicons, each made on first use. */
  private all(): readonly Lexicon[] {
    return this.languages.map((words) => {
      const known = this.compiled.get(words) ?? compile(words);
      this.compiled.set(words, known);
      return known;
    });
  }
}

let learnt = new Lexicons([]);

/** Adds languages to those that today's reader knows; one it knows already is left as it is. */
export function learn(languages: readonly Words[]): void {
  learnt = learnt.with(languages);
}

/** What today's reader has learnt. */
export function known(): Lexicons {
  return learnt;
}

export function dictionaryOf(tags: readonly string[]): Dictionary {
  return learnt.dictionaryOf(tags);
}

/** The languages learnt, by tag. */
export function languageTags(): readonly string[] {
  return learnt.tags();
}

/** What one word opens, in some languages, the likeliest first. */
export interface Opening {
  /** Longest first; of the same length the likelier language first. */
  readonly phrases: readonly Phrase[];
  /** Senses by its ending or beginning as a compound, the longest part first. */
  readonly parts: readonly Sense[];
  /** Some of it tells US from imperial units. */
  readonly tellsSystem: boolean;
}

/** Looks words up in some languages, the likeliest first. */
export class Dictionary {
  readonly languages: readonly Words[];
  private readonly lexicons: readonly Lexicon[];
  private readonly openings = new Map<string, Opening | null>();

  /** @param lexicons  the likeliest first */
  constructor(lexicons: readonly Lexicon[]) {
    this.lexicons = lexicons;
    this.languages = lexicons.map((lexicon) => lexicon.words);
  }

  /** The mark of tenths in the likeliest language. */
  get decimal(): '.' | ',' {
    return this.languages[0]?.decimal ?? '.';
  }

  opening(word: string): Opening | null {
    const known = this.openings.get(word);
    if (known !== undefined) return known;
    const phrases: Phrase[] = [];
    const hiding: Phrase[] = [];
    let isUnit = false;
    for (const [i, lexicon] of this.lexicons.entries())
      for (const { words, senses } of lexicon.phrases.get(word) ?? []) {
        // A unit of a likelier language is no thing of another: of the English quart the French mug.
        const said = senses.filter((sense) => isSaid(sense) && !(isUnit && sense.role === 'kind'));
        isUnit ||= words.length === 1 && senses.some((sense) => sense.role === 'unit') && !senses.some(isNoun);
        if (said.length > 0)
          (i > 0 && said.some((sense) => sense.role === 'notKit') ? hiding : phrases).push({ words, senses: said });
      }
    // What only a less likely language calls no kit hides nothing that another one knows.
    phrases.push(...hiding);
    if (this.lexicons.length > 1) phrases.sort((a, b) => b.words.length - a.words.length);
    const parts =
      word.length > 3
        ? this.lexicons.flatMap((lexicon, i) =>
            partsOf(word, lexicon, i === 0 ? SHORTEST_PART : SHORTEST_FOREIGN_PART).filter(isSaid),
          )
        : [];
    // "Durchmesser" measures, and is no knife ("Messer").
    const measures = [...phrases.flatMap(({ senses }) => senses), ...parts].some(({ role }) => role === 'dimension');
    const kept = measures ? parts.filter(({ role }) => role !== 'notKit') : parts;
    const opening =
      phrases.length + kept.length > 0 ? { phrases, parts: kept, tellsSystem: tellSystem(phrases, kept) } : null;
    if (this.openings.size >= MOST_WORDS) this.openings.clear();
    this.openings.set(word, opening);
    return opening;
  }
}

/** A telltale word only tells the language. */
function isSaid({ role }: Sense): boolean {
  return role !== 'tellTale';
}

function isNoun({ role }: Sense): boolean {
  return isThing(role);
}

function tellSystem(phrases: readonly Phrase[], parts: readonly Sense[]): boolean {
  return [...phrases.flatMap((phrase) => phrase.senses), ...parts].some(
    ({ role }) => role === 'imperial' || role === 'imperialSigns',
  );
}

/** Of each role the sense of the longest ending; and of the beginnings. */
function partsOf(word: string, lexicon: Lexicon, shortest: number): Sense[] {
  const found: Sense[] = [];
  const roles = new Set<number>();
  const take = (senses: readonly Sense[] | undefined) => {
    for (const sense of senses ?? []) {
      if (!roles.has(sense.layer)) found.push(sense);
    }
    for (const sense of senses ?? []) roles.add(sense.layer);
  };
  if (lexicon.endings.size > 0)
    for (let i = 1; i <= word.length - shortest; i++) take(lexicon.endings.get(word.slice(i)));
  roles.clear();
  if (lexicon.beginnings.size > 0)
    for (let i = word.length - 1; i >= shortest; i--) take(lexicon.beginnings.get(word.slice(0, i)));
  return found;
}

/** Roles of nouns that stand for a thing or hide one: of these only one holds at a place. */
export function isThing(role: Role): boolean {
  return role === 'kind' || role === 'container' || role === 'notKit';
}

/** Which languages know a word: for telling the language of a text. */
function owned(lexicons: readonly Lexicon[]): ReadonlyMap<string, readonly number[]> {
  const map = new Map<string, number[]>();
  for (const [language, lexicon] of lexicons.entries())
    for (const [first, under] of lexicon.phrases) {
      const telling = under.some(
        (phrase) => phrase.words.length === 1 && phrase.senses.some((sense) => TELLING.has(sense.role)),
      );
      if (telling) map.set(first, [...(map.get(first) ?? []), language]);
    }
  return map;
}

const TELLING = new Set<Role>([
  'tellTale',
  'kind',
  'notKit',
  'container',
  'materials',
  'section',
  'column',
  'month',
  'season',
  'day',
  'people',
  'totals',
  'with',
  'no',
  'tablets',
  'number',
  'unit',
]);

/** What a word tells of the language it is in: some languages, and how much for each. */
export interface Telling {
  /** As indices of `languageTags`. */
  readonly languages: readonly number[];
  readonly score: number;
}

/** Which languages name a thing by the ending of a longer word. */
function endingLanguages(word: string, lexicons: readonly Lexicon[]): readonly number[] {
  if (word.length < 6) return [];
  return lexicons.flatMap((lexicon, language) => {
    for (let i = 1; i <= word.length - 4; i++) {
      const senses = lexicon.endings.get(word.slice(i));
      if (senses?.some((sense) => isThing(sense.role))) return [language];
    }
    return [];
  });
}
