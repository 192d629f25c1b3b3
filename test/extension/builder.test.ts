import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launchChromium, waitForMatch } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';
import { serve } from '../../scripts/serve.mjs';
import { EMPTY_DRAFT } from '../../widget/draft.js';
import { stateOf } from '../../widget/link.js';
import { ELEMENTS } from '../../widget/settings.js';
import { violationsIn } from './axe.js';
import { faultsOfWalk, walk } from './walk.js';
import { watch } from './watch.js';

const LIST = 'Humblefern Duo pot 1.3 L, aluminium, 210 g\nZorvik Stub gas stove, 89 g\ngas canister 230 g';

/** The same element stands in each of the three samples. */
const THRICE = ['landmark-unique'];

describe.each([
  ['Chromium', () => launchChromium()],
  ['Firefox', () => launchFirefox()],
])('the builder, in %s', (_, launch) => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof serve>>;
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    browser = await launch();
    site = await serve(path.join(ROOT, 'dist', 'widget'));
  });
  afterAll(async () => {
    await browser.close();
    site.close();
  });
  beforeEach(async () => {
    page = await browser.newPage();
    ({ complaints } = watch(page));
  });
  afterEach(() => page.close());

  async function open(hash = ''): Promise<void> {
    await page.goto(`${site.address}builder.html${hash}`);
    await waitForMatch(page, '[part~="headline"]');
  }
  /** Types into a field, over what stands there, and leaves it. */
  async function fill(selector: string, value: string): Promise<void> {
    await page.$eval(selector, (field) => (field as HTMLInputElement).select());
    await page.type(selector, value);
    await page.keyboard.press('Tab');
  }
  const press = (name: string) => page.locator(`::-p-xpath(//button[. = "${name}"])`).click();
  const told = () => page.waitForFunction(() => document.querySelector('[role=status]')?.textContent);

  it('shows what is set in three pages, and copies it for each kind of site', async () => {
    await page.evaluateOnNewDocument(() => {
      const { clipboard } = navigator;
      const write = clipboard.writeText.bind(clipboard);
      clipboard.writeText = (text) => {
        Object.assign(globalThis, { copied: text });
        return write(text);
      };
    });
    await open();
    await fill('#set-people', '5');
    await fill('#folder', '/files/');
    const samples = await page.$$eval('.sample brimwise-check', (all) =>
      all.map(({ people, report }) => ({ people, judgedFor: report?.trip.people })),
    );
    expect(samples).toHaveLength(3);
    for (const sample of samples) expect(sample).toMatchObject({ people: '5', judgedFor: { value: 5 } });

    const headline = await page.$eval('brimwise-check', ({ report }) => report!.summary.headline);
    const sites = await page.$$eval('#h-copy ~ h3', (all) => all.map(({ textContent }) => textContent));
    expect(sites).toEqual([
      'Plain HTML',
      'WordPress block',
      'Ghost',
      'Hugo shortcode',
      'Jekyll include',
      'MDX',
      'Frame',
      'Link',
    ]);
    for (const name of sites.filter((one) => one !== 'Link')) {
      await press(`Copy ${name}`);
      await page.waitForFunction(
        (wanted) => document.querySelector('[role=status]')?.textContent === wanted,
        {},
        `${name}: copied.`,
      );
      const copied = await page.evaluate(() => (globalThis as unknown as { copied: string }).copied);
      expect(copied, name).toMatch(
        name === 'Frame' ? /people=5/ : /<brimwise-check (from="#kit-list" )?people="5" days="3" style=/,
      );
      expect(copied, name).toContain(name === 'Frame' ? 'src="/files/embed.html#' : 'src="/files/near.js"');
      expect(copied, name).not.toContain('integrity');
      // The verdict itself stands in the snippet.
      expect(copied, name).toContain(headline);
    }
    expect(complaints).toEqual([]);
  });

  it('opens a link with a question', async () => {
    const draft = { ...EMPTY_DRAFT, text: LIST, trip: { people: 7 } };
    await open(`#element=brimwise-check&state=${await stateOf(draft)}`);
    await page.waitForFunction((text) => document.querySelector('brimwise-check')?.draft.text === text, {}, LIST);
    expect(await page.$eval('brimwise-check', (element) => element.draft)).toEqual(draft);
    expect(await page.$eval('#list', (field) => (field as HTMLTextAreaElement).value)).toBe(LIST);
    expect(complaints).toEqual([]);
  });

  it('makes a link that the page for frames opens', async () => {
    await open();
    await fill('#folder', './');
    await page.$eval('brimwise-check', (element) => element.focus());
    await page.keyboard.type('Mug 300 ml, ');
    const draft = await page.$eval('brimwise-check', (element) => element.draft);
    await press('Make the link');
    const link = await page.waitForFunction(
      () =>
        [...document.querySelectorAll('pre')].find(({ textContent }) => textContent.includes('state='))?.textContent,
    );
    await page.goto((await link.jsonValue())!);
    await waitForMatch(page, '[part~="headline"]');
    expect(draft.text).toContain('Mug 300 ml');
    expect(await page.$eval('brimwise-check', (element) => element.draft)).toEqual(draft);
    expect(complaints).toEqual([]);
  });

  it.each([
    ['damaged', '1.eJyr', /cut short or damaged/],
    ['of a later version', '9.abc', /later version/],
  ])('says what is wrong with a link that is %s', async (_what, state, sentence) => {
    await open(`#state=${state}`);
    expect(await (await told()).jsonValue()).toMatch(sentence);
    expect(await violationsIn(page, THRICE)).toEqual([]);
  });

  describe.each(ELEMENTS)('with %s, everything in it open', (element) => {
    beforeEach(async () => {
      await open(`#element=${element}&capacity=1.1+L&diameter=140&height=90&people=2&stove=gas`);
      await page.waitForSelector(`.sample ${element}`);
      await press('Make the link');
      await press('Copy Plain HTML');
      await told();
      await page.$$eval('details', (all) => all.forEach((details) => (details.open = true)));
    });

    it('is a page in which axe minds nothing', async () => {
      expect(await violationsIn(page, THRICE)).toEqual([]);
    });

    it('is walked by keys alone', async () => {
      await page.$eval('h1', (heading) => {
        heading.tabIndex = -1;
        heading.focus();
      });
      await walk(page);
      expect(await faultsOfWalk(page)).toEqual([]);
    });
  });

  it('is set by keys alone', async () => {
    await open();
    await page.focus('[name=element]');
    await page.keyboard.press('ArrowDown');
    await page.waitForSelector('.sample brimwise-pot');
    expect(await page.evaluate(() => (document.activeElement as HTMLInputElement).name)).toBe('element');
    await page.focus('#set-capacity');
    await page.keyboard.type('1.1 L\n');
    await page.waitForFunction(
      () => document.querySelector<HTMLElement & { capacity: string }>('.sample brimwise-pot')?.capacity === '1.1 L',
    );
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('set-capacity');
  });
});
