import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { forget, launchExtended, openPopup, type Extended } from '../../scripts/chromium.mjs';
import * as firefox from '../../scripts/firefox.mjs';

const typed = (page: Page) => page.$eval('>>> textarea', (area) => area.value);

describe('the draft in Chromium', () => {
  let chromium: Extended;
  let page: Page;

  beforeAll(async () => {
    chromium = await launchExtended();
    page = await chromium.browser.newPage();
  });
  afterAll(() => chromium.browser.close());
  afterEach(async () => {
    for (const tab of await chromium.browser.pages()) if (tab !== page) await tab.close();
    await forget(chromium);
  });

  /** The panel's page in a tab: any second page of the extension. */
  async function openTab(): Promise<Page> {
    const tab = await chromium.browser.newPage();
    await tab.goto(`chrome-extension://${chromium.id}/panel/index.html`);
    await tab.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
    return tab;
  }

  it('is kept when the popup is closed in mid-word', async () => {
    const popup = await openPopup(chromium, page);
    await popup.keyboard.type('Pot 600 ml\nstove, screws on the canis');
    await popup.close();
    const again = await openPopup(chromium, page);
    expect(await typed(again)).toBe('Pot 600 ml\nstove, screws on the canis');
    await again.keyboard.type('ter');
    expect(await typed(again)).toContain('canister');
  });

  it('is kept when the popup closes before the store has taken the last stroke', async () => {
    const popup = await openPopup(chromium, page);
    await popup.keyboard.type('Pot 600 m');
    await popup.evaluate(() => Object.assign(chrome.storage.local, { set: () => new Promise(() => undefined) }));
    await popup.keyboard.type('l, lid');
    await popup.close();
    expect(await typed(await openTab())).toBe('Pot 600 ml, lid');
  });

  it('shows in every page of the extension that is open, as it is typed: none writes over another', async () => {
    const [one, other] = [await openTab(), await openTab()];
    await one.bringToFront();
    await one.keyboard.type('Pot 1 L');
    await expect.poll(() => typed(other)).toBe('Pot 1 L');
    await other.bringToFront();
    await other.keyboard.press('End');
    await other.keyboard.type(', lid');
    await expect.poll(() => typed(one)).toBe('Pot 1 L, lid');
  });

  it('is one for each window, the last one is there in a new one, and the one it replaced can be brought back', async () => {
    const one = await openTab();
    await one.keyboard.type('Pot 1 L');
    const { id: second } = await one.evaluate(() => chrome.windows.create({ url: '/panel/index.html' }));
    const other = await (
      await chromium.browser.waitForTarget(
        (target) => target.url().endsWith('/panel/index.html') && target !== one.target(),
      )
    ).asPage();
    await expect.poll(() => typed(other)).toBe('Pot 1 L');
    await other.$eval('>>> textarea', (area) => area.focus());
    await other.keyboard.down('Control');
    await other.keyboard.press('a');
    await other.keyboard.up('Control');
    await other.keyboard.type('Mug');
    await expect.poll(() => typed(other)).toBe('Mug');
    expect(await typed(one)).toBe('Pot 1 L');
    await one.reload();
    await expect.poll(() => typed(one)).toBe('Pot 1 L');
    await (await chromium.worker()).evaluate(() => chrome.storage.session.clear());
    const { id: third } = await one.evaluate(() => chrome.windows.create({ url: '/panel/index.html#3' }));
    const anew = await (await chromium.browser.waitForTarget((target) => target.url().endsWith('#3'))).asPage();
    await expect.poll(() => typed(anew)).toBe('Mug');
    await anew.click('#bring-back');
    await expect.poll(() => typed(anew)).toBe('Pot 1 L');
    await one.evaluate((ids) => Promise.all(ids.map((id) => chrome.windows.remove(id))), [second!, third!]);
  });

  it('keeps the caret where one types, though the own draft comes back from the store', async () => {
    const tab = await openTab();
    await tab.keyboard.type('Pot 1 L');
    await tab.keyboard.press('Home');
    await tab.keyboard.type('Big old ', { delay: 20 });
    expect(await typed(tab)).toBe('Big old Pot 1 L');
  });

  it('gives back the text of a draft whose other parts another version wrote', async () => {
    await (
      await chromium.worker()
    ).evaluate(() =>
      chrome.storage.local.set({
        draft: { by: 'x', draft: { entrance: 'stew', text: 'Pot 1 L', corrections: [{ at: 3 }], trip: [], later: 1 } },
      }),
    );
    expect(await typed(await openTab())).toBe('Pot 1 L');
  });

  it('is said not to be kept where the store is full, and the text is still there to copy', async () => {
    const popup = await openPopup(chromium, page);
    await popup.evaluate(async () => {
      const used = await chrome.storage.local.getBytesInUse(null);
      await chrome.storage.local.set({ ballast: 'x'.repeat(chrome.storage.local.QUOTA_BYTES - used - 40) });
    });
    await popup.keyboard.type('Pot 600 ml, and a line of some length to go with it');
    await popup.waitForFunction(() => document.querySelector('#notice')!.textContent !== '', { polling: 100 });
    expect(await popup.$eval('#notice', (notice) => notice.textContent)).toMatch(
      /^The browser keeps no draft \(.*\)\. Copy the text/,
    );
    expect(await typed(popup)).toBe('Pot 600 ml, and a line of some length to go with it');
    await (await chromium.worker()).evaluate(() => chrome.storage.local.remove('ballast'));
    await popup.keyboard.type('.');
    await popup.waitForFunction(() => document.querySelector('#notice')!.textContent === '', { polling: 100 });
  });

  it('is said not to be kept where the store refuses to be read, and one can type all the same', async () => {
    const tab = await chromium.browser.newPage();
    await tab.evaluateOnNewDocument(() => {
      const refuse = () => Promise.reject(new Error('the disk is gone'));
      Object.assign(chrome.storage.local, { get: refuse, set: refuse });
    });
    await tab.goto(`chrome-extension://${chromium.id}/panel/index.html`);
    await tab.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
    expect(await tab.$eval('#notice', (notice) => notice.textContent)).toMatch(
      /^The browser keeps no draft \(its store refuses\)\./,
    );
    await tab.keyboard.type('Pot 1 L');
    expect(await typed(tab)).toBe('Pot 1 L');
  });
});

describe('the draft in a Chromium that is started anew', () => {
  const place = mkdtempSync(path.join(tmpdir(), 'brimwise-'));
  const folder = path.join(place, 'extension');
  afterAll(() => rmSync(place, { recursive: true, force: true }));

  it('is still there, and when the extension has been updated in between too', async () => {
    const setVersion = (version: string) => {
      const file = path.join(folder, 'manifest.json');
      writeFileSync(file, JSON.stringify({ ...(JSON.parse(readFileSync(file, 'utf8')) as object), version }));
    };
    const start = async (use: (popup: Page) => Promise<void>) => {
      const { browser, ...rest } = await launchExtended([`--user-data-dir=${path.join(place, 'profile')}`], folder);
      try {
        await use(await openPopup({ browser, ...rest }, await browser.newPage()));
      } finally {
        await browser.close();
      }
    };
    cpSync(path.join(ROOT, 'dist', 'chrome'), folder, { recursive: true });
    setVersion('0.0.1');
    await start((popup) => popup.keyboard.type('Pot 600 ml, and a li'));
    setVersion('0.0.2');
    await start(async (popup) => {
      expect(await popup.evaluate(() => chrome.runtime.getManifest().version)).toBe('0.0.2');
      expect(await typed(popup)).toBe('Pot 600 ml, and a li');
    });
  });
});

describe('the draft in a Firefox that is started anew', () => {
  const userDataDir = mkdtempSync(path.join(tmpdir(), 'brimwise-'));
  afterAll(() => rmSync(userDataDir, { recursive: true, force: true }));

  it('is still there', async () => {
    const start = async (use: (page: Page) => Promise<void>) => {
      const { browser, open } = await firefox.launchExtended({}, undefined, { userDataDir });
      try {
        await use(await open('panel/index.html'));
      } finally {
        await browser.close();
      }
    };
    await start((page) => page.keyboard.type('Pot 600 ml, and a li'));
    await start(async (page) => expect(await typed(page)).toBe('Pot 600 ml, and a li'));
  });
});
