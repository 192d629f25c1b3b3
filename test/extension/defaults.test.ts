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

  it('stay on this machine until the person wants them in all browsers', async () => {
    await open();
    await page.select('#defaults [name="season"]', 'winter');
    const synced = async () =>
      (await (await chromium.worker()).evaluate(() => chrome.storage.sync.get('defaults')))['defaults'];
    const local = async () =>
      (await (await chromium.worker()).evaluate(() => chrome.storage.local.get('defaults')))['defaults'];
    await expect.poll(local).toMatchObject({ season: 'winter' });
    expect(await synced()).toBeUndefined();
    await page.click('[name="synced"]');
    await expect.poll(synced).toMatchObject({ season: 'winter' });
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
