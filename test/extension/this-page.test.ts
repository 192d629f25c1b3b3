import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { offersIn } from '../../extension/offers.js';
import { forget, launchExtended, openPopup, waitForFindings, type Extended } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { serve } from '../../scripts/serve.mjs';

describe('what of a page is offered', () => {
  const offered = (text: string) => offersIn([{ heading: '', text, zone: 'main' }]).map(({ entrance }) => entrance);

  it.each([
    ['a kit list', 'pot 1.3 L\nstove\ngas 230 g', ['list']],
    ['a table of one pot', 'Capacity\t1.3 L\nDiameter\t140 mm\nHeight\t90 mm', ['pot']],
    ['a packing list with a kitchen in it', 'tent 1.4 kg\ndown bag\npot 900 ml\nspoon\ngas canister 100 g', ['list']],
    ['gear without a kitchen', 'tent 1.4 kg\ndown bag\n2 mats', []],
    ['a menu of a site', 'Home\nAbout us\nContact', []],
    ['the size of another thing', 'Length 190 cm\nWidth 60 cm\nWeight 480 g', []],
    ['a recipe', '200 g rice\n1 onion\n2 tbsp oil\n500 ml water', []],
  ])('is right for %s', (_, text, entrances) => {
    expect(offered(text)).toEqual(entrances);
  });
});

describe('“This page” in the popup', () => {
  let chromium: Extended;
  let site: Awaited<ReturnType<typeof serve>>;
  let page: Page;
  let popup: Page;

  beforeAll(async () => {
    site = await serve(path.join(ROOT, 'test', 'extension', 'pages'));
    chromium = await launchExtended();
    page = await chromium.browser.newPage();
  });
  afterAll(async () => {
    await chromium.browser.close();
    site.close();
  });
  afterEach(async () => {
    await popup.close();
    await forget(chromium);
  });

  const look = async (address?: string) => {
    if (address !== undefined) await page.goto(address);
    popup = await openPopup(chromium, page);
    await popup.click('#this-page');
    await popup.waitForFunction(() => document.querySelector('#told')!.textContent !== '', { polling: 100 });
  };
  const told = () => popup.$eval('#told', ({ textContent }) => textContent);
  const offers = () => popup.$$eval('#offers .offer', (all) => all.map(({ textContent }) => textContent));

  it('offers the kit lists and pot figures by their headings, and changes nothing in the page', async () => {
    await page.goto(`${site.address}post.html`);
    const before = await page.content();
    await look(`${site.address}post.html`);
    expect(await offers()).toEqual(['Kitchen', 'Humblefern in figures']);
    expect(await told()).toBe('Found on this page: 2.');
    expect(await popup.evaluate(() => document.activeElement?.textContent)).toBe('Kitchen');
    expect(await page.content()).toBe(before);
  });

  it('takes the list that is chosen, line by line, with its findings', async () => {
    await look(`${site.address}post.html`);
    await popup.keyboard.press('Enter');
    await waitForFindings(popup);
    expect(await popup.$eval('>>> textarea', (area) => area.value)).toBe(
      '- Humblefern pot 1.3 L, lid\n- Zorvik burner, screws onto the canister\n- gas canister 230 g\n- 2 mugs 450 mL',
    );
    expect(await offers()).toEqual([]);
  });

  it('adds lists below what stands there, one after the other, and stays open for more', async () => {
    await look(`${site.address}trip.html`);
    expect(await offers()).toEqual(['All of this page', 'Kitchen', 'Table', expect.stringContaining('Pots')]);
    await popup.click('aria/Add Kitchen[role="button"]');
    await popup.click('aria/Add Table[role="button"]');
    expect(await popup.$eval('>>> textarea', (area) => area.value)).toBe(
      '- Humblefern pot 1.3 L, lid\n- Zorvik burner\n- gas canister 230 g\n\nMug\t450 mL\t60 g\nKettle\t900 mL\t170 g',
    );
    expect(await told()).toBe('Added below what stood here.');
    expect(await offers()).toHaveLength(4);
  });

  it('brings the page’s words about the trip with a list, and gives all of the page without what stands beside it', async () => {
    await look(`${site.address}trip.html`);
    await popup.click('aria/Kitchen[role="button"]');
    await waitForFindings(popup);
    const text = () => popup.$eval('>>> textarea', (area) => area.value);
    expect(await text()).toBe(
      '# Varn Hollow in winter\nThree of us walked for four days in February.\n\n- Humblefern pot 1.3 L, lid\n- Zorvik burner\n- gas canister 230 g',
    );
    await popup.click('#this-page');
    await popup.waitForSelector('#offers .offer');
    await popup.click('#offers .offer');
    await expect.poll(text).toContain('Kettle\t900 mL');
    expect(await text()).not.toMatch(/Skip|skillet|wok/);
    await popup.click('#bring-back');
    expect(await text()).toContain('Three of us');
    await popup.click('#bring-back');
    expect(await text()).toContain('Kettle\t900 mL');
  });

  it('fills in the pot that is chosen', async () => {
    await look(`${site.address}post.html`);
    await popup.keyboard.press('Tab');
    await popup.keyboard.press('Tab');
    await popup.keyboard.press('Enter');
    await waitForFindings(popup);
    expect(await popup.evaluate(() => document.querySelector('brimwise-check')!.draft.pot)).toEqual({
      capacity: '1.3 L',
      diameter: '140 mm',
      height: '90 mm',
    });
  });

  it('says that a page of the browser itself cannot be read, and leaves the text box', async () => {
    await look('chrome://version');
    expect(await told()).toMatch(/^This page cannot be read from here\./);
    await popup.focus('>>> textarea');
    await popup.keyboard.type('Pot 1 L');
    expect(await popup.$eval('>>> textarea', (area) => area.value)).toBe('Pot 1 L');
  });

  it('says that nothing on a page reads as cook kit', async () => {
    await page.goto(`${site.address}post.html`);
    await page.$$eval('h2 + *', (lists) => lists.forEach((list) => list.remove()));
    await look();
    expect(await told()).toMatch(/^No list on this page reads as cook kit\./);
  });
});
