import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import * as chromium from '../../scripts/chromium.mjs';
import { filesIn, ROOT } from '../../scripts/files.mjs';
import * as firefox from '../../scripts/firefox.mjs';
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
const WIDTHS = { popup: 480, panel: 380, narrow: 320 };

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
  let extended: chromium.Extended;
  let blank: Page;
  let page: Page;

  beforeAll(async () => {
    extended = await chromium.launchExtended();
    blank = await extended.browser.newPage();
  });
  afterAll(() => extended.browser.close());
  afterEach(async () => {
    for (const tab of await extended.browser.pages()) if (tab !== blank) await tab.close();
    await chromium.forget(extended);
  });

  async function open(file: string, scheme = 'light', width = WIDTHS.panel): Promise<void> {
    page = await extended.browser.newPage();
    await page.setViewport({ width, height: 800 });
    await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
    await page.goto(`chrome-extension://${extended.id}/${file}`, { waitUntil: 'load' });
    await page.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
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

  it.each(['popup/index.html', 'panel/index.html'])('minds nothing in the findings of a list on %s', async (file) => {
    const page = await extended.open(file);
    await page.keyboard.type(LIST);
    await firefox.until(() => page.evaluate(chromium.hasFindings));
    await page.evaluate(openAll);
    expect(await violationsIn(page)).toEqual([]);
    await page.close();
  });
});
