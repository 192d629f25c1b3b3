import { phrase } from '../model/phrase.js';
import type { Reading } from '../model/reading.js';
import { finish, type Steps } from '../steps.js';
import { rowsOf } from './formats/index.js';
import { LONGEST_LINE, readable, splitLines } from './formats/lines.js';
import type { Row, SourceLine } from './formats/rows.js';
import { itemOf } from './items/draft.js';
import { wordCells } from './items/columns.js';
import { stretchOf, type Stretch } from './items/stretch.js';
import { languagesIn } from './languages.js';
import { massUnitsOf, systemOf } from './usual-units.js';
import { dictionaryOf } from './text/lexicon.js';
import { Beginning } from './text/beginning.js';

import { Reader } from './reader.js';
import { passingOf } from './passing.js';
import { Tale } from './story.js';

export interface ReadOptions {
  /** BCP 47 tag that settles a doubtful language and its pints. */
  readonly locale?: string;
}

/** So many rows tell the unit of the masses that show none. */
const SAMPLE_ROWS = 500;

/** So many rows are one step. */
const ROWS_A_STEP = 32;

/** Reads a text as a kit list. Never throws, on any string; the same text gives the same reading. */
export function readList(text: string, options: ReadOptions = {}): Reading {
  return finish(readInSteps(text, options));
}

/** The same, in steps. */
export function* readInSteps(text: string, options: ReadOptions = {}): Steps<Reading> {
  const lines = splitLines(text);
  const toRead = lines.map(readable);
  const beginning = new Beginning(text, toRead);
  yield;
  const languages = languagesIn(beginning.read, options.locale);
  const dictionary = dictionaryOf(languages.read);
  const rows = yield* rowsOf(text, toRead, dictionary);
  const system = systemOf(beginning.read, dictionary, options.locale);
  const context = { decimal: dictionary.decimal, ...system.measures };
  const read = (row: Row) => stretchOf(text, beginning, row, wordCells(text, row), dictionary, context);
  const first: Stretch[] = [];
  for (const row of rows.slice(0, SAMPLE_ROWS)) {
    if (first.length % ROWS_A_STEP === 0) yield;
    first.push(read(row));
  }
  const reader = new Reader(
    text,
    lines,
    dictionary,
    massUnitsOf(first),
    plainLists(rows),
    system.system === 'us' ? 'f' : 'c',
  );
  const tale = new Tale();
  for (const [i, row] of rows.entries()) {
    if (i % ROWS_A_STEP === 0) yield;
    const stretch = first[i] ?? read(row);
    tale.hear(stretch);
    reader.read(stretch, rows, i);
  }
  yield;
  reader.close();
  const found = reader.items.map(itemOf);
  const story = tale.isStory(found);
  const items = story ? [] : found;
  const passing = passingOf(items, [...(story ? found : []), ...reader.named.map(itemOf)]);
  yield;
  return {
    items,
    passing,
    lines: reader.lines(items, passing),
    trip: story ? {} : reader.trip.hints,
    languages: languages.spoken,
    units: system.system,
    notes: notesOf(lines, reader),
  };
}

/** Where few lines have a bullet or cells, the lines without are the list. */
function plainLists(rows: readonly Row[]): boolean {
  const full = rows.filter((row) => row.type !== 'rule' && row.type !== 'columns');
  return full.filter((row) => row.bullet).length * 3 < full.length;
}

/** More things than this on one line of a text of few lines: its breaks were lost on the way. */
const FLATTENED = 5;

function notesOf(lines: readonly SourceLine[], reader: Reader): string[] {
  const notes: string[] = [];
  const count = new Map<Row, number>();
  for (const row of reader.rows) count.set(row, (count.get(row) ?? 0) + 1);
  const most = Math.max(0, ...count.values());
  if (most >= FLATTENED && most * 2 > reader.items.length)
    notes.push(phrase`The list came as one line; its things were told apart by their figures.`);
  if (lines.some((line) => line.end - line.start > LONGEST_LINE))
    notes.push(phrase`A line is longer than any list; only its beginning was read.`);
  return notes;
}
