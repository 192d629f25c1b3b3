import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import { forget, launchExtended, openPopup, waitForFindings, type Extended } from '../../scripts/chromium.mjs';

describe('the defaults, set on the full page', () => {
  let chromium: Extended;
  let page: Page;

  beforeAll(async () => {
    chromium = await launchExtended();
  });
  afterAll(() => chromium.browser.close());
  afterEach(async () => {
    await page.close();
    await forget(chromium);
  });

  async function open(): Promise<void> {
    page = await chromium.browser.newPage();
    await page.setViewport({ width: 1400, height: 900 });
    await page.goto(`chrome-extension://${chromium.id}/page/index.html`);
    await page.waitForFunction(() => document.querySelector('#defaults h2'), { polling: 100 });
  }
  /** What the trip shows of people, and whether as assumed. */
  const people = (where: Page) =>
    where.evaluate(() => {
      const field = document.querySelector('brimwise-check')!.shadowRoot!.querySelector('.strip .v')!;
      return [field.querySelector('input')!.placeholder, field.classList.contains('assumed')];
    });

  it('are assumed where the list says nothing, in every page that is open, and shown as assumed', async () => {
    await open();
    await page.type('#defaults [name="people"]', '5');
    const popup = await openPopup(chromium, await chromium.browser.newPage());
    await popup.keyboard.type('Pot 3 L');
    await waitForFindings(popup);
    expect(await people(popup)).toEqual(['5', true]);
    await popup.close();
  });

  it('give way to what the list says', async () => {
    await open();
    await page.type('#defaults [name="people"]', '5');
    await page.evaluate(() => document.querySelector('brimwise-check')!.focus());
    await page.keyboard.type('Two of us\nPot 3 L');
    await waitForFindings(page);
    await expect.poll(() => people(page)).toEqual(['2', false]);
  });

  it('say what is wrong beside the figure', async () => {
    await open();
    await page.type('#defaults [name="people"]', 'many');
    expect(await page.$eval('#default-people-problem', ({ textContent }) => textContent)).toContain('“many”');
  });

  it('set the units of what is open, and of a draft that is begun', async () => {
    await open();
    await page.select('#defaults [name="units"]', 'us');
    const units = (where: Page) => where.evaluate(() => document.querySelector('brimwise-check')!.draft.units);
    await expect.poll(() => units(page)).toBe('us');
    await page.evaluate(() => {
      localStorage.clear();
      return chrome.storage.local.remove('draft');
    });
    await page.reload();
    await page.waitForFunction(() => document.querySelector('#defaults h2'), { polling: 100 });
    expect(await units(page)).toBe('us');
  });

  /** What a store has of a field. */
  const inStore = async (area: 'local' | 'sync', field: string) =>
    (
      await (
        await chromium.worker()
      ).evaluate(
        async (where, key) => (await chrome.storage[where].get(key))[key] as { value: string } | undefined,
        area,
        `default.${field}`,
      )
    )?.value;
  /** What another browser of the same account has put there. */
  const fromElsewhere = async (fields: Record<string, { value: string; at: number }>) =>
    (await chromium.worker()).evaluate((sets) => chrome.storage.sync.set(sets), fields);
  const shown = (name: string, where = page) =>
    where.$eval(`#defaults [name="${name}"]`, (field) => (field as HTMLInputElement).value);

  it('take what the account has when they are ticked in a second browser, and give it what they have', async () => {
    await fromElsewhere({
      'default.people': { value: '4', at: 2000 },
      'default.season': { value: 'summer', at: 2000 },
    });
    await open();
    await page.select('#defaults [name="season"]', 'winter');
    await page.type('#defaults [name="days"]', '3');
    await page.click('[name="synced"]');
    await expect.poll(() => shown('people')).toBe('4');
    await expect.poll(() => inStore('sync', 'days')).toBe('3');
    expect([await inStore('sync', 'people'), await inStore('sync', 'season'), await shown('season')]).toEqual([
      '4',
      'winter',
      'winter',
    ]);
  });

  it('keep the later value of each field of two browsers, and show it in the open form', async () => {
    await open();
    await page.click('[name="synced"]');
    await page.type('#defaults [name="people"]', '2');
    await expect.poll(() => inStore('sync', 'people')).toBe('2');
    await fromElsewhere({
      'default.days': { value: '9', at: Date.now() + 60_000 },
      'default.people': { value: '7', at: 1 },
    });
    await expect.poll(() => shown('days')).toBe('9');
    expect(await shown('people')).toBe('2');
    await page.$eval('#defaults [name="days"]', (field) => (field as HTMLInputElement).select());
    await page.type('#defaults [name="days"]', '5');
    await expect.poll(() => inStore('sync', 'days')).toBe('5');
  });

  it('keep every field that two open forms set', async () => {
    await open();
    const one = page;
    await open();
    await one.bringToFront();
    await one.type('#defaults [name="people"]', '6');
    await page.bringToFront();
    await page.select('#defaults [name="units"]', 'us');
    await expect.poll(() => shown('people')).toBe('6');
    await expect.poll(() => shown('units', one)).toBe('us');
    await one.close();
  });

  it('are gone from the account when they are no longer shared, and stay in this browser', async () => {
    await fromElsewhere({ 'default.people': { value: '4', at: 2000 } });
    await open();
    await page.click('[name="synced"]');
    await expect.poll(() => shown('people')).toBe('4');
    await page.click('[name="synced"]');
    await expect.poll(() => inStore('sync', 'people')).toBeUndefined();
    await page.reload();
    await page.waitForFunction(() => document.querySelector('#defaults h2'), { polling: 100 });
    expect(await shown('people')).toBe('4');
  });

  it('are still there that an earlier version kept in one', async () => {
    await (
      await chromium.worker()
    ).evaluate(() => chrome.storage.local.set({ defaults: { people: '5', season: 'winter' } }));
    await open();
    expect([await shown('people'), await shown('season')]).toEqual(['5', 'winter']);
    await page.$eval('#defaults [name="people"]', (field) => (field as HTMLInputElement).select());
    await page.keyboard.press('Backspace');
    await expect.poll(async () => (await inStore('local', 'people')) ?? '').toBe('');
    await page.reload();
    await page.waitForFunction(() => document.querySelector('#defaults h2'), { polling: 100 });
    expect([await shown('people'), await shown('season')]).toEqual(['', 'winter']);
  });

  it('stay on this machine until the person wants them in all browsers', async () => {
    await open();
    await page.select('#defaults [name="season"]', 'winter');
    await expect.poll(() => inStore('local', 'season')).toBe('winter');
    expect(await inStore('sync', 'season')).toBeUndefined();
    await page.click('[name="synced"]');
    await expect.poll(() => inStore('sync', 'season')).toBe('winter');
    await page.reload();
    await page.waitForFunction(() => document.querySelector('#defaults h2'), { polling: 100 });
    expect(await page.$eval('#defaults [name="season"]', (field) => (field as HTMLSelectElement).value)).toBe('winter');
  });
});

describe('the language of the browser', () => {
  afterEach(() => vi.unstubAllEnvs());

  it('is that of the extension’s pages and of the element in them, until a default says another', async () => {
    // Chromium takes its language from here on Linux, and from the argument elsewhere.
    vi.stubEnv('LANGUAGE', 'de');
    const { browser, id } = await launchExtended(['--lang=de']);
    try {
      const page = await browser.newPage();
      await page.goto(`chrome-extension://${id}/page/index.html`);
      await page.waitForFunction(() => document.querySelector('#defaults h2'), { polling: 100 });
      const spoken = () =>
        page.evaluate(() => [
          document.documentElement.lang,
          document.querySelector('#defaults h2')!.textContent,
          document.querySelector('brimwise-check')!.shadowRoot!.querySelector('.bw')!.getAttribute('lang'),
        ]);
      expect(await spoken()).toEqual(['de', 'Vorgaben', 'de']);
      const choices = await page.$$eval('#defaults select:not([name="language"]) option', (options) =>
        options.map(({ textContent }) => textContent),
      );
      expect(choices).toEqual(expect.arrayContaining(['nur Wasser', 'Winter', 'metrisch']));
      expect(choices).not.toContain('winter');
      await page.type('#defaults [name="people"]', '900');
      await page.waitForFunction(() => document.querySelector('#default-people-problem')!.textContent, {
        polling: 100,
      });
      expect(await page.$eval('#default-people-problem', (told) => told.textContent)).toMatch(/^900: mehr, als /);
      await page.select('#defaults [name="language"]', 'en-GB');
      await page.waitForFunction(
        () => document.querySelector('brimwise-check')!.shadowRoot!.querySelector('.bw[lang="en-GB"]'),
        { polling: 100 },
      );
      expect(await spoken()).toEqual(['de', 'Vorgaben', 'en-GB']);
    } finally {
      await browser.close();
    }
  });
});
