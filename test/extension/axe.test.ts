import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import * as chromium from '../../scripts/chromium.mjs';
import { filesIn, ROOT } from '../../scripts/files.mjs';
import * as firefox from '../../scripts/firefox.mjs';
import { serve } from '../../scripts/serve.mjs';
import { violationsIn } from './axe.js';

const PAGES = filesIn(path.join(ROOT, 'dist', 'chrome')).filter((file) => file.endsWith('.html'));
/** Something of every grade, a line that is no cook kit, and one that nobody understands. */
const LIST = `Two of us, 3 days, late January, water from snow
pot 1.3 L, 140 x 90 mm, aluminium
gas stove, screws onto the canister
gas canister 230 g, butane
foil windscreen, goes right round
foam mats
qwrtz 17`;
const WIDTHS = { popup: 480, panel: 380, narrow: 320, room: 1280 };

/** Everything that can be opened, opened, until nothing new comes. */
function openAll(): void {
  const roots: ParentNode[] = [document];
  for (const root of roots)
    for (const element of root.querySelectorAll('*')) {
      if (element instanceof HTMLDetailsElement) element.open = true;
      if (element.shadowRoot) roots.push(element.shadowRoot);
    }
}

describe('axe, in Chromium', () => {
  let site: Awaited<ReturnType<typeof serve>>;
  let extended: chromium.Extended;
  let blank: Page;
  let page: Page;

  beforeAll(async () => {
    site = await serve(path.join(ROOT, 'test', 'extension', 'pages'));
    extended = await chromium.launchExtended();
    blank = await extended.browser.newPage();
  });
  afterAll(async () => {
    await extended.browser.close();
    site.close();
  });
  afterEach(async () => {
    for (const tab of await extended.browser.pages()) if (tab !== blank) await tab.close();
    await chromium.forget(extended);
  });

  async function open(file: string, scheme = 'light', width = WIDTHS.panel): Promise<void> {
    page = await extended.browser.newPage();
    await page.setViewport({ width, height: 800 });
    await setScheme(page, scheme);
    await page.goto(`chrome-extension://${extended.id}/${file}`, { waitUntil: 'load' });
    await page.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
  }

  function setScheme(where: Page, value: string): Promise<void> {
    return where.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);
  }

  it('knows pages to look at', () => {
    expect(PAGES).toContain('popup/index.html');
    expect(PAGES).toContain('panel/index.html');
  });

  describe.each(PAGES)('on %s', (file) => {
    it.each(['light', 'dark'])('minds nothing before anything is typed, %s', async (scheme) => {
      await open(file, scheme);
      expect(await violationsIn(page)).toEqual([]);
    });
  });

  describe.each(['popup/index.html', 'panel/index.html'])('on %s', (file) => {
    it.each([
      ['light', WIDTHS.popup],
      ['dark', WIDTHS.panel],
      ['light', WIDTHS.narrow],
    ])('minds nothing in the findings of a list, all of it open, %s, %d wide', async (scheme, width) => {
      await open(file, scheme, width);
      await page.keyboard.sendCharacter(LIST);
      await chromium.waitForFindings(page);
      await page.evaluate(openAll);
      expect(await violationsIn(page)).toEqual([]);
    });
  });

  it.each([
    ['light', WIDTHS.room],
    ['dark', WIDTHS.panel],
  ])('minds nothing on the full page with findings, saved kits and defaults, %s, %d wide', async (scheme, width) => {
    await open('page/index.html', scheme, width);
    await page.keyboard.sendCharacter(LIST);
    await chromium.waitForFindings(page);
    await chromium.waitForMatch(page, '#defaults [name="season"]');
    for (const name of ['Two in winter', 'The small pot']) {
      await page.$eval('#kits [name="name"]', (field) => ((field as HTMLInputElement).value = ''));
      await page.type('#kits [name="name"]', `${name}\n`);
      await chromium.waitForMatch(page, `#kits [aria-label="Remove ${name}"]`);
    }
    await page.click('[aria-label="Rename The small pot"]');
    await chromium.waitForMatch(page, '[name="new-name"]');
    await page.type('#defaults [name="people"]', '5');
    await page.type('#defaults [name="days"]', 'many');
    await page.select('#defaults [name="season"]', 'winter');
    await chromium.waitForMatch(page, '#default-days-problem:not(:empty)');
    await page.evaluate(openAll);
    expect(await violationsIn(page)).toEqual([]);
  });

  it.each(['light', 'dark'])('minds nothing in the popup with what the page offers, %s', async (scheme) => {
    await blank.goto(`${site.address}post.html`);
    const popup = await chromium.openPopup(extended, blank);
    await setScheme(popup, scheme);
    await popup.click('#this-page');
    await chromium.waitForMatch(popup, '#offers button');
    expect(await violationsIn(popup)).toEqual([]);
    await popup.close();
  });

  it('minds nothing in the popup in colours that the person forces', async () => {
    await blank.goto(`${site.address}post.html`);
    const popup = await chromium.openPopup(extended, blank);
    // Puppeteer's own way refuses this feature.
    const session = await popup.createCDPSession();
    await session.send('Emulation.setEmulatedMedia', { features: [{ name: 'forced-colors', value: 'active' }] });
    await popup.keyboard.sendCharacter(LIST);
    await chromium.waitForFindings(popup);
    await popup.click('#this-page');
    await chromium.waitForMatch(popup, '#offers button');
    await popup.evaluate(openAll);
    expect(await popup.evaluate(() => matchMedia('(forced-colors: active)').matches)).toBe(true);
    expect(await violationsIn(popup)).toEqual([]);
    await popup.close();
  });

  it('minds nothing in a pot that came in, with what was selected, and what stood there before', async () => {
    await open('panel/index.html');
    await page.keyboard.type('my own list');
    await page.close();
    await blank.bringToFront();
    const { tab } = await chromium.pickMenuItem(extended, 'Capacity: 1.3 L\nDiameter: 140 mm\nHeight: 90 mm', 'pot');
    await chromium.waitForFindings(tab);
    await chromium.waitForMatch(tab, '#bring-back');
    await tab.evaluate(openAll);
    expect(await violationsIn(tab)).toEqual([]);
  });

  it('minds nothing where the page could not be read', async () => {
    await blank.bringToFront();
    const { tab } = await chromium.pickMenuItem(extended, '');
    await chromium.waitForMatch(tab, '#told:not(:empty)');
    expect(await violationsIn(tab)).toEqual([]);
  });

  it('minds nothing where the draft is not kept', async () => {
    await open('panel/index.html');
    await page.evaluate(() => {
      chrome.storage.local.set = () => Promise.reject(new Error('the disk is full'));
    });
    await page.keyboard.type('Pot 1 L');
    await chromium.waitForMatch(page, '#notice:not(:empty)');
    expect(await violationsIn(page)).toEqual([]);
  });
});

describe('axe, in Firefox', () => {
  let extended: firefox.Extended;
  beforeAll(async () => {
    extended = await firefox.launchExtended();
  });
  afterAll(() => extended.browser.close());

  it.each(PAGES)('minds nothing in the findings of a list on %s', async (file) => {
    const page = await extended.open(file);
    await page.keyboard.type(LIST);
    await firefox.until(() => page.evaluate(chromium.hasFindings));
    await page.evaluate(openAll);
    expect(await violationsIn(page)).toEqual([]);
    await page.close();
  });
});
