import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { checkList, checkPot, remark } from '../../../core/index.js';
import { fillTemplate } from '../../../core/report/format.js';
import { say, retold } from '../../../core/report/language.js';
import { filesIn, ROOT } from '../../../scripts/files.mjs';
import { LANGUAGES, learnWords, wordsFor } from '../../../widget/language.js';
import { WORDS, type Words } from '../../../widget/messages/en.js';
import { englishEntries } from './english-entries.js';
import { sentencesOfCore } from './sentences.js';

const MESSAGES = path.join(ROOT, 'widget', 'messages');
const SEEN = path.join(ROOT, 'test', 'core', 'words', 'seen');

const files = readdirSync(MESSAGES).filter((file) => file !== 'en.ts');
const languages = await Promise.all(
  files.map(async (file) => {
    const [words] = Object.values((await import(path.join(MESSAGES, file))) as Record<string, Words>);
    return { name: path.parse(file).name, words: words! };
  }),
);

const sentences = sentencesOfCore();

/** The placeholders of a template: those that print a figure or word, and the names that plurals go by. */
function placeholders(template: string): { printed: string[]; names: Set<string> } {
  const all = [...template.matchAll(/\{(\w+)(#)?(:[^{}]*)?\}/g)];
  return {
    printed: all
      .filter(([, , , choice]) => choice === undefined)
      .map(([whole]) => whole)
      .sort(),
    names: new Set(all.map(([, name]) => name!)),
  };
}

const PRACTICE = path.join(ROOT, 'test', 'practice', 'texts');
const LISTS = path.join(ROOT, 'test', 'lists');
const texts = [
  ...filesIn(PRACTICE).map((file) => readFileSync(path.join(PRACTICE, file), 'utf8')),
  ...filesIn(LISTS)
    .filter((file) => file.endsWith('list.txt'))
    .map((file) => readFileSync(path.join(LISTS, file), 'utf8')),
  'pot 3 mm wide, 900 kg\nbottle of alcohol 900 ml\nspirit burner',
];

it('every file is a language that the elements speak', async () => {
  expect(languages.map(({ words }) => words.locale).sort()).toEqual(LANGUAGES.filter((tag) => tag !== 'en').sort());
  for (const { words } of languages) {
    await learnWords(words.locale);
    expect(wordsFor(words.locale)).toBe(words);
    expect(wordsFor(`${words.locale}-CH`)).toMatchObject({ name: words.name, list: words.list });
  }
});

describe.each(languages)('$name', ({ name, words }) => {
  const { language, locale } = words;
  const tell = (english: string) => say(english, language, (value) => value.toLocaleString(locale));

  it('has every sentence of the core', () => {
    expect([...sentences].filter(([english]) => language.sentences[english] === undefined)).toEqual([]);
  });

  it('has no sentence that the core says no more', () => {
    expect(Object.keys(language.sentences).filter((english) => !sentences.has(english))).toEqual([]);
  });

  it('prints what the English prints', () => {
    for (const [english, sentence] of Object.entries(language.sentences)) {
      const [from, to] = [placeholders(english), placeholders(sentence)];
      expect(to.printed, english).toEqual(from.printed);
      expect(
        [...to.names].filter((each) => !from.names.has(each)),
        english,
      ).toEqual([]);
    }
  });

  it('ends a sentence where the English ends one', () => {
    const end = (text: string) => /[.?]$/.exec(text)?.[0] ?? '';
    for (const [english, sentence] of Object.entries(language.sentences)) {
      expect(end(sentence), english).toBe(end(english));
      expect(sentence, english).toBe(sentence.trim());
    }
  });

  it('fills a plural by its figure', () => {
    const english = '{days#} {days:day|days} take {grams} of fuel.';
    const filled = (days: number) =>
      fillTemplate(
        tell(english),
        { days: { value: days, unit: 'days' }, grams: { value: 95.5, unit: 'g', places: 1 } },
        {},
        { ...words, units: 'metric' },
      );
    expect(filled(1)).not.toBe(filled(2).replace('2', '1'));
    expect(filled(2)).toContain((95.5).toLocaleString(locale));
  });

  it('words every reason that a reading of the practice lists gives', () => {
    const untold = new Set<string>();
    const look = (english: string) => {
      if (tell(english) === english && language.sentences[english] === undefined) untold.add(english);
      return english;
    };
    for (const text of texts) {
      const { reading, trip, assumptions, problems } = checkList(text);
      retold([reading, trip, assumptions], look);
      for (const words of [...reading.notes, ...problems.map(({ message }) => message)]) look(words);
    }
    const pot = checkPot(
      { capacity: '9 ml', diameter: 'wide', height: 3000, material: 'gold' as never, quantity: 0 },
      { people: 1.5, days: 900, lowC: -90, wind: 'gale' as never },
      { type: 'gas', armCount: 40, powerW: 1 },
    );
    for (const { message } of pot.problems) look(message);
    expect(pot.problems.length).toBeGreaterThan(8);
    expect([...untold]).toEqual([]);
  });

  it('leaves no English in what a report and its remark say, and never says safe', () => {
    const english = new Set(
      [...sentences.keys()].filter((sentence) => !/[{}]/.test(sentence) && / .* /.test(sentence)),
    );
    for (const text of texts) {
      const report = checkList(text, {}, [], { language, locale });
      // What the person wrote stays as it is.
      const found = strings({ ...report, reading: null }).filter((words) => english.has(words));
      expect(found.filter((words) => language.sentences[words] !== words)).toEqual([]);
      const told = remark(report, '', 'plain', language);
      expect(told).toContain(
        language.sentences['A second opinion. Local fire rules, land managers and licensed instruction come first.']!,
      );
      expect(told).not.toMatch(/\b(safe|ungefährlich|gefahrlos|sans danger|sans risque|segur[oa])\b/i);
    }
  });

  it('has an example that reads as the English one does', () => {
    const kindsOf = (list: string) =>
      checkList(list)
        .reading.items.map(({ kind, role }) => `${kind} ${role ?? ''}`)
        .sort();
    expect(kindsOf(words.exampleList)).toEqual(kindsOf(WORDS.exampleList));
    const [own, theirs] = [checkList(words.exampleList), checkList(WORDS.exampleList)];
    expect(own.findings.map(({ check, key }) => `${check} ${key}`)).toEqual(
      theirs.findings.map(({ check, key }) => `${check} ${key}`),
    );
    expect(kindsOf(words.lineToCopy)).toEqual(kindsOf(WORDS.lineToCopy));
  });

  it('puts lines into a list that are read as what they name', () => {
    for (const kind of ['stove', 'fuel'] as const)
      expect(checkList(`${words.lineToCopy}\n${words.kinds[kind]}`).reading.items.map((item) => item.kind)).toContain(
        kind,
      );
  });

  /** What this language was made from: `UPDATE=1` notes the English as it is, once what it names has been looked at. */
  it('was looked at since the English of the interface changed', () => {
    const file = path.join(SEEN, `${name}.json`);
    const now = englishEntries();
    expect(Object.keys(now).length).toBeGreaterThan(150);
    if (process.env['UPDATE'] === '1') writeFileSync(file, `${JSON.stringify(now, null, 2)}\n`);
    const seen = existsSync(file) ? (JSON.parse(readFileSync(file, 'utf8')) as Record<string, string>) : {};
    const keys = [...new Set([...Object.keys(now), ...Object.keys(seen)])];
    expect(keys.filter((key) => now[key] !== seen[key])).toEqual([]);
  });
});

function strings(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(strings) : [];
}
