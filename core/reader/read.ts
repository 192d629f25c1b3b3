import type { Words } from '../data/words/words.js';
import { phrase } from '../model/phrase.js';
import type { Reading } from '../model/reading.js';
import { rowsOf } from '../reading/formats/index.js';
import { LONGEST_LINE, readable, splitLines } from '../reading/formats/lines.js';
import type { Row as Source, SourceLine } from '../reading/formats/rows.js';
import { wordCells } from '../reading/items/columns.js';
import { itemOf } from '../reading/items/draft.js';
import { languagesIn } from '../reading/languages.js';
import { passingOf } from '../reading/passing.js';
import { Tale } from '../reading/story.js';
import { Beginning } from '../reading/text/beginning.js';
import { Lexicons, type Dictionary } from '../reading/text/lexicon.js';
import { massUnitsOf, systemOf } from '../reading/usual-units.js';
import { finish, type Steps } from '../steps.js';
import type { Report } from './items/decide.js';
import { List } from './items/list.js';
import { Phrases } from './phrases/phrases.js';
import { rowOf, type Row } from './rows/row.js';
import { Tokens } from './tokens/tokens.js';
import { Interned } from './words/interned.js';

export interface ReadOptions {
  /** BCP 47 tag that settles a doubtful language and its pints. */
  readonly locale?: string;
}

export interface Reader {
  /** Reads a text as a kit list. Never throws, on any string; the same text gives the same reading. */
  readonly readList: (text: string, options?: ReadOptions) => Reading;
  /** The same, in steps. */
  readonly readInSteps: (text: string, options?: ReadOptions) => Steps<Reading>;
}

/** Rows sampled to find the unit of masses written without one. */
const SAMPLE_ROWS = 500;
/** Rows of one step. */
const ROWS_A_STEP = 32;

/** A reader of some languages, with nothing kept outside of it. `report` hears how each row was decided, and leaves rules out. */
export function createReader(languages: readonly Words[], report: Report = { without: new Set() }): Reader {
  const lexicons = new Lexicons(languages);
  const phrases = new Phrases();
  const interned = new Map<Dictionary, Interned>();
  const wordsOf = (dictionary: Dictionary) => {
    const words = interned.get(dictionary) ?? new Interned(dictionary);
    interned.set(dictionary, words);
    words.trim();
    return words;
  };

  function* readInSteps(text: string, options: ReadOptions = {}): Steps<Reading> {
    const lines = splitLines(text);
    const toRead = lines.map(readable);
    const beginning = new Beginning(text, toRead);
    yield;
    const { spoken, read } = languagesIn(beginning.read, options.locale, lexicons);
    const dictionary = lexicons.dictionaryOf(read);
    const words = wordsOf(dictionary);
    const sources = yield* rowsOf(text, toRead, dictionary);
    const system = systemOf(beginning.read, dictionary, options.locale);
    const context = { decimal: dictionary.decimal, ...system.measures };
    const rowAt = (source: Source) => rowOf(text, source, wordCells(text, source), new Tokens(words), phrases, context);
    const first: Row[] = [];
    for (const source of sources.slice(0, SAMPLE_ROWS)) {
      if (first.length % ROWS_A_STEP === 0) yield;
      first.push(rowAt(source));
    }
    const units = massUnitsOf(first.map(({ stretch }) => stretch));
    const degrees = system.system === 'us' ? 'f' : 'c';
    const list = new List(report, text, lines, dictionary, units, plainLists(sources), degrees);
    const tale = new Tale();
    for (const [i, source] of sources.entries()) {
      if (i % ROWS_A_STEP === 0) yield;
      const row = first[i] ?? rowAt(source);
      tale.hear(row.stretch);
      list.readRow(row, sources, i);
    }
    yield;
    list.close();
    const found = list.items.map(itemOf);
    const story = tale.isStory(found);
    const items = story ? [] : found;
    const passing = passingOf(items, [...(story ? found : []), ...list.named.map(itemOf)]);
    yield;
    return {
      items,
      passing,
      lines: list.lines(items, passing),
      trip: story ? {} : list.trip.hints,
      languages: spoken,
      units: system.system,
      notes: notesOf(lines, list),
    };
  }

  return { readInSteps, readList: (text, options = {}) => finish(readInSteps(text, options)) };
}

/** Where few lines have a bullet or cells, the lines without are the list. */
function plainLists(rows: readonly Source[]): boolean {
  const full = rows.filter((row) => row.type !== 'rule' && row.type !== 'columns');
  return full.filter((row) => row.bullet).length * 3 < full.length;
}

/** More things than this on one line of a text of few lines: its breaks were lost on the way. */
const FLATTENED = 5;

function notesOf(lines: readonly SourceLine[], list: List): string[] {
  const notes: string[] = [];
  const count = new Map<Source, number>();
  for (const row of list.rows) count.set(row, (count.get(row) ?? 0) + 1);
  const most = Math.max(0, ...count.values());
  if (most >= FLATTENED && most * 2 > list.items.length)
    notes.push(phrase`The list came as one line; its things were told apart by their figures.`);
  if (lines.some((line) => line.end - line.start > LONGEST_LINE))
    notes.push(phrase`A line is longer than any list; only its beginning was read.`);
  return notes;
}
