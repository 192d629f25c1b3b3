import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchChromium } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { serve } from '../../scripts/serve.mjs';
import { faultsOfWords, outcomeOf } from '../publishing/outcome.mjs';
import { asText, DOMPURIFY, MARKDOWN, mdx, sanitized } from '../publishing/renderers.mjs';
import { OF_README, SAMPLES } from '../publishing/samples.js';

/** The light part of the software that people publish with; `npm run publishers` goes through the rest. */
const folder = mkdtempSync(path.join(tmpdir(), 'brimwise-publishing-'));
let browser: Browser;
let page: Page;
let site: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  cpSync(path.join(ROOT, 'dist', 'widget'), path.join(folder, 'brimwise'), { recursive: true });
  site = await serve(folder);
  browser = await launchChromium();
  page = await browser.newPage();
});
afterAll(async () => {
  await browser.close();
  site.close();
  rmSync(folder, { recursive: true });
});

type Sample = Pick<(typeof SAMPLES)[number], 'expected'>;

/** What has become of a snippet once a page has this in its body. */
async function outcome(html: string, { expected }: Sample): Promise<Awaited<ReturnType<typeof outcomeOf>>> {
  writeFileSync(
    path.join(folder, 'index.html'),
    `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A post</title><link rel="icon" href="data:,"></head><body><article>${html}</article></body></html>`,
  );
  return outcomeOf(page, site.address, expected);
}
const WORKS = { outcome: 'works', faults: [] };
const inPost = (text: string) => `# A post\n\nWe *carried* it.\n\n${text}\n\nAnd *so* on.\n`;
const from = (...names: string[]) => SAMPLES.filter(({ name }) => names.includes(name));

describe('what is looked at', () => {
  it.each([
    [
      'a paragraph that escapes',
      '<brimwise-pot people="1" capacity="750 ml"><p>One who</p></brimwise-pot>',
      'the words stand outside of the element',
    ],
    [
      'a list that escapes',
      '<p><brimwise-check></p><pre>Pot 1 L</pre></brimwise-check>One who',
      'the element judges nothing',
    ],
    ['a style that became words', 'brimwise-pot:not(:defined) { display: block } One who', 'markup became words'],
    ['words that are lost', '', 'the words are lost'],
  ])(
    'finds %s',
    async (_, markdown, fault) => {
      const element = markdown.includes('check') ? 'brimwise-check' : 'brimwise-pot';
      const expected = { element, attributes: {}, words: ['One who'] } as const;
      const { faults } = await outcome(await MARKDOWN['CommonMark, its reference implementation']!(markdown), {
        expected,
      });
      expect(faults.join()).toContain(fault);
    },
    30_000,
  );
});

describe.each(Object.entries(MARKDOWN))('%s', (_, render) => {
  it('leaves the snippet of the readme as it is', async () => {
    expect(await outcome(await render(inPost(OF_README.text)), OF_README)).toEqual(WORKS);
  });

  it.each(from('Plain HTML'))(
    'leaves $expected.element of the builder as it is, the list in the $listIn',
    async (sample) => {
      expect(await outcome(await render(inPost(sample.text)), sample)).toEqual(WORKS);
    },
  );
});

describe('MDX', () => {
  it('leaves the snippet of the readme as it is', async () => {
    expect(await outcome(await mdx(inPost(OF_README.text)), OF_README)).toEqual(WORKS);
  });

  it.each(from('MDX'))('leaves $expected.element of the builder as it is, the list in the $listIn', async (sample) => {
    expect(await outcome(await mdx(inPost(sample.text)), sample)).toEqual(WORKS);
  });
});

describe.each(from('Plain HTML', 'WordPress block', 'Ghost'))(
  '$expected.element for $name, the list in the $listIn',
  (sample) => {
    it('works as it is', async () => {
      expect(await outcome(sample.text, sample)).toEqual(WORKS);
    });

    it('is plain text once sanitize-html has filtered it', async () => {
      expect(await outcome(sanitized(sample.text), sample)).toEqual({ outcome: 'words', faults: [] });
    });

    it('is plain text once DOMPurify has filtered it', async () => {
      await page.setJavaScriptEnabled(true);
      await page.goto('about:blank');
      await page.evaluate(DOMPURIFY);
      const filtered = await page.evaluate(
        (html) => (globalThis as unknown as { DOMPurify: { sanitize(html: string): string } }).DOMPurify.sanitize(html),
        sample.text,
      );
      expect(await outcome(filtered, sample)).toEqual({ outcome: 'words', faults: [] });
    });

    it('is plain text where html-to-text makes a mail of it', () => {
      expect(faultsOfWords({ innerText: asText(sample.text), inElement: null }, sample.expected)).toEqual([]);
    });
  },
);
