import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { ElementHandle, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import {
  forget,
  launchExtended,
  openPopup,
  waitForFindings,
  waitForMatch,
  type Extended,
} from '../../scripts/chromium.mjs';
import * as firefox from '../../scripts/firefox.mjs';
import { violationsIn } from './axe.js';
import { watch } from './watch.js';

const LIST = readFileSync(path.join(ROOT, 'test', 'lists', 'solo-simmer-small', 'list.txt'), 'utf8');

describe('the full page and its saved kits', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'brimwise-'));
  let chromium: Extended;
  let page: Page;

  beforeAll(async () => {
    chromium = await launchExtended();
  });
  afterAll(async () => {
    await chromium.browser.close();
    rmSync(folder, { recursive: true, force: true });
  });
  afterEach(async () => {
    await page.close();
    await forget(chromium);
  });

  async function open(): Promise<Page> {
    const tab = await chromium.browser.newPage();
    // Wide enough for the kits to stand beside the findings, which push nothing away from under the pointer there.
    await tab.setViewport({ width: 1400, height: 900 });
    await tab.goto(`chrome-extension://${chromium.id}/page/index.html`);
    await waitForMatch(tab, '#kits h2');
    return (page = tab);
  }
  const typed = () => page.$eval('>>> textarea', (area) => area.value);
  const type = async (text: string) => {
    await page.evaluate(() => document.querySelector('brimwise-check')!.focus());
    await page.keyboard.type(text);
  };
  const names = () => page.$$eval('#kits .name', (all) => all.map(({ textContent }) => textContent));
  const done = () => page.$eval('#done', ({ textContent }) => textContent);
  const press = (label: string) => page.click(`aria/${label}[role="button"]`);
  const save = async (name: string) => {
    await page.$eval('#kits [name="name"]', (field) => ((field as HTMLInputElement).value = ''));
    await page.type('#kits [name="name"]', name);
    await press('Save');
    await expect.poll(names).toContain(name);
  };
  const importText = async (text: string) => {
    const file = path.join(folder, 'import.json');
    writeFileSync(file, text);
    const input = (await page.$('[type="file"]')) as ElementHandle<HTMLInputElement>;
    await input.uploadFile(file);
  };

  it.each([900, 300])(
    'stand in sight wherever one has scrolled to, all of them within reach, in a window %d px high',
    async (height) => {
      await open();
      await page.setViewport({ width: 1400, height });
      await waitForMatch(page, '#defaults [name="people"]');
      await type(LIST);
      await waitForFindings(page);
      await page.evaluate(() => scrollTo(0, document.documentElement.scrollHeight));
      const scrolled = await page.evaluate(() => scrollY);
      expect(scrolled).toBeGreaterThan(height);
      const inSight = (selector: string) =>
        page.$eval(selector, (part) => {
          const { top, bottom } = part.getBoundingClientRect();
          return top >= 0 && bottom <= innerHeight;
        });
      expect(await inSight('#kits h2')).toBe(true);
      await page.$$eval('#defaults input', (fields) => fields.at(-1)!.focus());
      expect(await inSight('#defaults input:focus')).toBe(true);
      expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    },
  );

  it('saves what is typed under a name and opens it again, and the text before comes back by Undo', async () => {
    await open();
    await type('Pot 1 L');
    await save('Humblefern');
    await type(', lid');
    await press('Humblefern');
    await expect.poll(typed).toBe('Pot 1 L');
    await press('Undo');
    await expect.poll(typed).toBe('Pot 1 L, lid');
    await page.reload();
    await waitForMatch(page, '#kits .name');
    expect([await typed(), await names()]).toEqual(['Pot 1 L, lid', ['Humblefern']]);
  });

  it('replaces a kit of the same name, says so, and gives the old one back by Undo', async () => {
    await open();
    await type('Pot 1 L');
    await save('a');
    await type(' and more');
    await save('a');
    await expect.poll(done).toBe('“a” is taken.');
    expect(await page.evaluate(() => document.activeElement!.id)).toBe('replace');
    await page.keyboard.press('Enter');
    await expect.poll(done).toBe('“a” is replaced by what stands here.');
    expect(await names()).toEqual(['a']);
    await press('Undo');
    await expect.poll(done).toBe('Undone.');
    await press('a');
    await expect.poll(typed).toBe('Pot 1 L');
  });

  it('renames and removes, each with Undo', async () => {
    await open();
    await type('Pot 1 L');
    await save('a');
    await save('b');
    await press('Rename a');
    await page.keyboard.type('b');
    await page.keyboard.press('Enter');
    await expect.poll(names).toEqual(['b', 'b 2']);
    await press('Undo');
    await expect.poll(names).toEqual(['a', 'b']);
    await press('Remove a');
    await expect.poll(names).toEqual(['b']);
    await press('Undo');
    await expect.poll(names).toEqual(['a', 'b']);
  });

  it('keeps the keyboard in the kits: at Undo once a row is gone, at the text once that is back', async () => {
    await open();
    await type('Pot 1 L');
    await save('a');
    await save('b');
    const focused = () => page.evaluate(() => document.activeElement!.id || document.activeElement!.localName);
    await page.focus('[aria-label="Remove a"]');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('undo');
    await page.keyboard.press('Enter');
    await expect.poll(names).toEqual(['a', 'b']);
    await press('Rename a');
    await page.keyboard.type('c');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('undo');
    await press('c');
    await page.focus('#undo');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('brimwise-check');
  });

  it('exports one file and takes it back where nothing is left', async () => {
    await open();
    await type('Pot 1 L');
    await save('Humblefern');
    const session = await page.createCDPSession();
    await session.send('Browser.setDownloadBehavior', {
      behavior: 'allow',
      downloadPath: folder,
      eventsEnabled: true,
    });
    const finished = new Promise<void>((resolve) => {
      session.on('Browser.downloadProgress', ({ state }) => {
        if (state === 'completed') resolve();
      });
    });
    await page.click('#export');
    await finished;
    const file = readFileSync(path.join(folder, 'brimwise-kits.json'), 'utf8');
    expect(JSON.parse(file)).toEqual({
      brimwise: 'kits',
      version: 1,
      kits: [
        { name: 'Humblefern', saved: expect.stringMatching(/^\d{4}-\d\d-\d\d$/), entrance: 'list', lines: ['Pot 1 L'] },
      ],
    });
    await press('Remove Humblefern');
    await expect.poll(names).toEqual([]);
    await importText(file);
    await expect.poll(names).toEqual(['Humblefern']);
  });

  it('refuses a damaged file with the line that is wrong, and changes nothing', async () => {
    await open();
    await type('Pot 1 L');
    await save('a');
    await importText('{\n"brimwise": "kits",\n"version": 1,\n"kits": [{ "name": "b" },\n{ "name": 3 }] }');
    await expect.poll(done).toBe('Line 5 of the file is wrong (kits.1.name). Nothing is changed.');
    await importText('{\n"brimwise": ');
    await expect.poll(done).toBe('Line 2 of the file is no JSON. Nothing is changed.');
    expect(await names()).toEqual(['a']);
  });

  it('says that the store is full, and the kits before are still there', async () => {
    await open();
    await type('Pot 1 L');
    await save('a');
    await page.evaluate(async () => {
      const used = await chrome.storage.local.getBytesInUse(null);
      await chrome.storage.local.set({ ballast: 'x'.repeat(chrome.storage.local.QUOTA_BYTES - used - 40) });
    });
    await page.type('#kits [name="name"]', 'another with a long name');
    await press('Save');
    await expect.poll(done).toMatch(/^The browser keeps no kits \(.+\)\. Nothing is changed/);
    expect(await names()).toEqual(['a']);
  });

  it('shows a name with markup in it as text', async () => {
    await open();
    await type('Pot 1 L');
    await save('<img src=x onerror=alert(1)>');
    expect(await page.$$eval('#kits img', (images) => images.length)).toBe(0);
  });

  it('is led to from the top of a narrow page, past all the findings, by the keyboard alone', async () => {
    await open();
    await page.setViewport({ width: 380, height: 700 });
    await type(LIST);
    await waitForFindings(page);
    const top = () => page.$eval('#kits h2', (heading) => heading.getBoundingClientRect().top);
    expect(await top()).toBeGreaterThan(700);
    await page.focus('#to-kept');
    await page.keyboard.press('Enter');
    await expect.poll(top).toBeLessThan(700);
    await page.keyboard.press('Tab');
    expect(await page.evaluate(() => document.activeElement?.getAttribute('name'))).toBe('name');
  });

  it('complains of nothing, and gives axe nothing to mind, wide and narrow, light and dark', async () => {
    await open();
    const { complaints } = watch(page);
    await type('Pot 1 L');
    await save('Humblefern');
    await press('Rename Humblefern');
    for (const [width, value] of [
      [1400, 'light'],
      [360, 'dark'],
    ] as const) {
      await page.setViewport({ width, height: 900 });
      await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value }]);
      expect(await violationsIn(page)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    }
    expect(complaints).toEqual([]);
  });

  it('is opened from the popup, with the draft in it', async () => {
    const popup = await openPopup(chromium, await chromium.browser.newPage());
    await popup.keyboard.type('Pot 1 L');
    const opening = chromium.browser.waitForTarget((target) => target.url().endsWith('/page/index.html'));
    await popup.click('#room');
    page = (await (await opening).page())!;
    await waitForMatch(page, '#kits h2');
    await expect.poll(typed).toBe('Pot 1 L');
  });
});

describe('the full page and its saved kits in Firefox', () => {
  let extended: firefox.Extended;
  let page: Page;

  beforeAll(async () => {
    extended = await firefox.launchExtended();
    page = await extended.open('page/index.html');
    await waitForMatch(page, '#kits h2');
  });
  afterAll(() => extended.browser.close());

  const typed = () => page.$eval('>>> textarea', (area) => area.value);
  const type = async (text: string) => {
    await page.evaluate(() => document.querySelector('brimwise-check')!.focus());
    await page.keyboard.type(text);
  };
  const names = () => page.$$eval('#kits .name', (all) => all.map(({ textContent }) => textContent));
  const textOf = (selector: string) => page.$eval(selector, ({ textContent }) => textContent);
  const press = (selector: string) => page.$eval(selector, (button) => (button as HTMLElement).click());

  it('saves what is typed under a name and opens it again, and the text before comes back by Undo', async () => {
    await type('Pot 1 L');
    await page.type('#kits [name="name"]', 'Humblefern\n');
    await expect.poll(names).toEqual(['Humblefern']);
    await type(', lid');
    await press('#kits .name');
    await expect.poll(typed).toBe('Pot 1 L');
    await press('#undo');
    await expect.poll(typed).toBe('Pot 1 L, lid');
  });

  it('says of each that the store refuses, and the text and the kits before are still there', async () => {
    await page.evaluate(() => {
      const { local } = (globalThis as unknown as { browser: typeof chrome }).browser.storage;
      Object.assign(local, { set: () => Promise.reject(new Error('the disk is full')) });
    });
    await type(', a spoon');
    await expect
      .poll(() => textOf('#notice'))
      .toMatch(/^The browser keeps no draft \(its store is full\)\. Copy the text/);
    await page.type('#kits [name="name"]', ' again\n');
    await expect
      .poll(() => textOf('#done'))
      .toMatch(/^The browser keeps no kits \(its store is full\)\. Nothing is changed/);
    expect(await names()).toEqual(['Humblefern']);
    expect(await typed()).toBe('Pot 1 L, lid, a spoon');
  });
});
