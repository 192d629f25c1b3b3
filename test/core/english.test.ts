import { readdirSync } from 'node:fs';
import path from 'node:path';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { ON_DEMAND } from '../../core/data/words/on-demand.js';
import { practiceLists } from '../practice/predict.mjs';

type English = typeof import('../../core/english.js');

const whole = await import('../../core/index.js');

/** The door as a page that has just loaded has it. */
function fresh(): Promise<English> {
  vi.resetModules();
  return import('../../core/english.js');
}

/** What the widget does before it reads: learns until nothing is missing. */
async function learnAll(page: English, text: string, locale: string): Promise<string[]> {
  const learnt: string[] = [];
  for (let missing = page.languagesMissing(text, locale); missing.length > 0;) {
    await page.learnLanguages(missing);
    learnt.push(...missing);
    missing = page.languagesMissing(text, locale);
  }
  return learnt;
}

const lists = practiceLists();
const [inEnglish, inOthers] = [true, false].map((english) =>
  lists.filter(({ label }) => (label.lang === 'en') === english),
) as [typeof lists, typeof lists];

describe('the door with English alone', () => {
  let page: English;
  beforeEach(async () => {
    page = await fresh();
  });

  it('has practice lists enough to say so', () => {
    expect(inEnglish.length).toBeGreaterThan(20);
    expect(inOthers.length).toBeGreaterThan(20);
  });

  it('learns nothing for a list in English, and reads it as the whole core does', () => {
    for (const { id, text } of inEnglish) {
      expect(page.languagesMissing(text, 'en-GB'), id).toEqual([]);
      expect(page.readList(text, { locale: 'en' }), id).toEqual(whole.readList(text, { locale: 'en' }));
    }
  });

  it('looks at a text again once more of it is new than a few strokes, not before', () => {
    const [english] = inEnglish;
    const foreign = inOthers.find(({ text }) => page.languagesMissing(text, 'en').length > 1)!;
    expect(page.languagesMissing(english!.text, 'en')).toEqual([]);
    expect(page.languagesMissing(english!.text.replace('\n', 'x\n'), 'en')).toEqual([]);
    expect(page.languagesMissing(foreign.text, 'en').length).toBeGreaterThan(1);
    const growing = (length: number) => english!.text.slice(0, 200) + foreign.text.slice(0, length);
    for (let length = 0; length < 1000; length += 3) page.languagesMissing(growing(length), 'en');
    expect(page.languagesMissing(growing(1000), 'en').length).toBeGreaterThan(1);
  });

  it.each(inOthers)(
    'reads list $id ($label.lang) as the whole core does, on a page in whatever language',
    async ({ label, text }) => {
      await learnAll(page, text, 'en');
      expect(page.readList(text, { locale: 'en' })).toEqual(whole.readList(text, { locale: 'en' }));
      page = await fresh();
      await learnAll(page, text, label.lang);
      expect(page.readList(text, { locale: label.lang })).toEqual(whole.readList(text, { locale: label.lang }));
    },
  );

  it('learns one language for a list in the language of its page', async () => {
    const german = lists.filter(({ label }) => label.lang === 'de');
    expect(german.length).toBeGreaterThan(3);
    expect(await learnAll(page, german[0]!.text, 'de-AT')).toEqual(['de']);
    for (const { text } of german) expect(page.languagesMissing(text, 'de')).toEqual([]);
  });

  it('learns Norwegian for either of its written forms', () => {
    expect(page.languagesMissing('kjele 1 l', 'nb-NO')).toEqual(['no']);
    expect(page.languagesMissing('kjele 1 l', 'nn')).toEqual(['no']);
  });

  it('takes a text of figures and units for one in whatever language', () => {
    expect(page.languagesMissing('750 ml\n95 mm\n3.5 in', 'en')).toEqual([]);
    expect(page.languagesMissing('10 Zoll', 'en')).toContain('de');
  });

  it('learns nothing before there is a text', () => {
    expect(page.languagesMissing('', 'de')).toEqual([]);
  });

  it('says which words could not be loaded, and does not ask for them again', async () => {
    vi.doMock('../../core/data/words/de.js', () => {
      throw new Error('404');
    });
    expect(await page.learnLanguages(['de', 'fr'])).toEqual(['de']);
    expect(page.languagesMissing('Topf 1 l', 'de')).not.toContain('de');
    vi.doUnmock('../../core/data/words/de.js');
  });

  it('can load every language but English', () => {
    const files = readdirSync(path.join(ROOT, 'core/data/words')).map((file) => file.replace('.ts', ''));
    const languages = files.filter((name) => !['index', 'on-demand', 'words', 'en'].includes(name));
    expect(Object.keys(ON_DEMAND)).toEqual(languages.sort());
  });

  it('loads under each tag the words of that language', async () => {
    for (const [tag, load] of Object.entries(ON_DEMAND)) expect((await load()).language).toBe(tag);
  });
});
