import path from 'node:path';
import { TargetType, type Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { serve } from '../../scripts/serve.mjs';
import * as chromium from '../../scripts/chromium.mjs';
import * as firefox from '../../scripts/firefox.mjs';

const PAGES = path.join(ROOT, 'test', 'extension', 'pages');
/** What must arrive of pages/list.html, whose script tampers with what pages share. */
const TEXT = '## Cooking\n\nPot\t1.3 L\t210 g\nStove\t\t84 g\n\nGas 230 g\nLid <img src=x onerror="document.title=1">';

const textIn = (panel: Page) => panel.$eval('>>> textarea', (area) => area.value);
const toldIn = (panel: Page) => panel.$eval('#told', (told) => told.textContent);
const selectList = (page: Page) =>
  page.evaluate(() => {
    document.getSelection()!.selectAllChildren(document.querySelector('#pick')!);
  });

describe('the menu over a selection, in Chromium', () => {
  let extended: chromium.Extended;
  let site: Awaited<ReturnType<typeof serve>>;
  let page: Page;
  let untouched: string;

  beforeAll(async () => {
    site = await serve(PAGES);
    extended = await chromium.launchExtended();
    page = await extended.browser.newPage();
    await page.goto(`${site.address}list.html`);
    untouched = await page.content();
  });
  afterAll(async () => {
    await extended.browser.close();
    site.close();
  });
  afterEach(async () => {
    for (const tab of await extended.browser.pages()) if (tab !== page) await tab.close();
    await chromium.forget(extended);
  });

  const clickItem = async (selectionText: string, item?: string) =>
    (await chromium.pickMenuItem(extended, selectionText, item)).tab;

  it.each(['list', 'pot'])('has the item for a %s', async (item) => {
    const worker = await extended.worker();
    const isThere = () =>
      worker.evaluate(
        (id) =>
          new Promise<boolean>((resolve) =>
            chrome.contextMenus.update(id, {}, () => resolve(chrome.runtime.lastError === undefined)),
          ),
        item,
      );
    // The browser puts the items there while the extension is being installed, after it has started.
    await expect.poll(isThere).toBe(true);
  });

  it('takes what the browser tells where it may not read the page, and says that line breaks are lost', async () => {
    const panel = await clickItem('Pot 1 L Lid');
    await expect.poll(() => textIn(panel)).toBe('Pot 1 L Lid');
    expect(await toldIn(panel)).toMatch(/^This page lets no extension read it, and the line breaks .* are lost\./);
  });

  it('says that nothing could be read where the browser tells nothing either, and leaves the draft and the text box', async () => {
    const popup = await chromium.openPopup(extended, page);
    await popup.keyboard.type('my own list');
    await popup.close();
    const pdf = await extended.browser.newPage();
    await pdf.goto('chrome://version');
    const panel = await clickItem('');
    await expect.poll(() => toldIn(panel)).toMatch(/^Nothing could be read there\./);
    expect(await textIn(panel)).toBe('my own list');
    await panel.keyboard.type(' and more');
    expect(await textIn(panel)).toContain(' and more');
  });

  it('names the setting that lets it read a file of this computer', async () => {
    const { tab } = await chromium.pickMenuItem(extended, 'Pot 1 L', 'list', 'file:///home/kit.html');
    await expect.poll(() => toldIn(tab)).toMatch(/“Allow access to file URLs” is switched on/);
    expect(await textIn(tab)).toBe('Pot 1 L');
  });

  it('fills in the pot from a few lines of figures, judges it, and shows what was selected', async () => {
    const figures = 'Capacity: 1.3 L\nDiameter: 140 mm\nHeight: 90 mm\nBail handle';
    const panel = await clickItem(figures, 'pot');
    await chromium.waitForFindings(panel);
    const field = (name: string) => panel.$eval(`>>> [name="${name}"]`, (input) => (input as HTMLInputElement).value);
    expect([await field('pot.capacity'), await field('pot.diameter'), await field('pot.height')]).toEqual([
      '1.3 L',
      '140 mm',
      '90 mm',
    ]);
    expect(await panel.$eval('#arrived pre', (selected) => selected.textContent)).toBe(figures);
  });

  it('takes a selection without figures of a pot as a list, and says so', async () => {
    const panel = await clickItem('Free delivery over 50', 'pot');
    await expect.poll(() => textIn(panel)).toBe('Free delivery over 50');
    expect(await toldIn(panel)).toMatch(/^No figures of a pot were found/);
  });

  it('puts the focus on the headline of the findings', async () => {
    const panel = await clickItem('Pot 600 ml\nstove');
    await expect
      .poll(() => panel.evaluate(() => document.querySelector('brimwise-check')!.shadowRoot!.activeElement?.className))
      .toBe('headline');
  });

  it('reads the selection with its lines and cells once the person has let it in', async () => {
    const popup = await chromium.openPopup(extended, page);
    await popup.close();
    await page.bringToFront();
    await selectList(page);
    const panel = await clickItem('all in one line');
    await expect.poll(() => textIn(panel)).toBe(TEXT);
    expect(await toldIn(panel)).toBe('');
    expect(await panel.title()).toBe('Brimwise');
  });

  it('gives back the text that stood there before', async () => {
    const popup = await chromium.openPopup(extended, page);
    await popup.keyboard.type('my own list');
    await popup.close();
    await page.bringToFront();
    await selectList(page);
    const panel = await clickItem('');
    await expect.poll(() => textIn(panel)).toBe(TEXT);
    await panel.click('#bring-back');
    await expect.poll(() => textIn(panel)).toBe('my own list');
    await panel.reload();
    await panel.waitForFunction(() => document.activeElement?.localName === 'brimwise-check');
    await expect.poll(() => textIn(panel)).toBe('my own list');
  });

  it('still answers when the browser has stopped the background and woken it again', async () => {
    const popup = await chromium.openPopup(extended, page);
    await (await extended.worker()).close();
    const running = () =>
      extended.browser.targets().filter((target) => target.type() === TargetType.SERVICE_WORKER).length;
    await expect.poll(running).toBe(0);
    // Nobody listens to this message; it wakes the background all the same.
    await popup.evaluate(() => chrome.runtime.sendMessage('wake').catch(() => undefined));
    await expect.poll(running).toBe(1);
    await popup.close();
    await page.bringToFront();
    await selectList(page);
    const panel = await clickItem('');
    await expect.poll(() => textIn(panel)).toBe(TEXT);
  });

  it('changes nothing in the page', async () => {
    expect(await page.content()).toBe(untouched);
  });
});

describe('the menu over a selection, in Firefox', () => {
  let extended: firefox.Extended;
  let site: Awaited<ReturnType<typeof serve>>;

  beforeAll(async () => {
    site = await serve(PAGES);
    extended = await firefox.launchExtended();
  });
  afterAll(async () => {
    await extended.browser.close();
    site.close();
  });

  const sidebarText = (observer: Page) =>
    observer.evaluate(() => {
      const { extension } = (globalThis as unknown as { browser: typeof import('webextension-polyfill') }).browser;
      const [sidebar] = extension.getViews({ type: 'sidebar' });
      return sidebar!.document.querySelector('brimwise-check')!.shadowRoot!.querySelector('textarea')!.value;
    });

  it('opens the sidebar with the lines and cells of the selection, by the real menu', async () => {
    const page = await extended.browser.newPage();
    await page.goto(`${site.address}list.html`);
    await selectList(page);
    const { labels } = await firefox.pickMenuItem(extended, page, 'h2');
    expect(labels).toEqual(['Second opinion on this kit list', 'Second opinion on this pot']);
    const observer = await extended.open('popup/index.html');
    await firefox.until(async () => (await sidebarText(observer)) !== '');
    expect(await sidebarText(observer)).toBe(TEXT);
    await extended.inWindow('SidebarController.hide()');
  });

  it('still answers when the browser has stopped the background', async () => {
    const page = await extended.browser.newPage();
    await page.goto(`${site.address}course.html`);
    await page.evaluate(() => {
      document.getSelection()!.selectAllChildren(document.querySelector('#list')!);
    });
    const state = await extended.inWindow(`
      const { extension } = WebExtensionPolicy.getByID('brimwise@brimwise.invalid');
      await extension.terminateBackground();
      return extension.backgroundState;
    `);
    expect(state).toBe('stopped');
    await firefox.pickMenuItem(extended, page, '#list li');
    const observer = await extended.open('popup/index.html');
    await firefox.until(async () => (await sidebarText(observer)).startsWith('Two of us, 3 days'));
    expect(await sidebarText(observer)).toContain('\n- Humblefern Duo pot 1.3 L');
    await extended.inWindow('SidebarController.hide()');
  });

  it('opens the sidebar by the keys, with what is selected', async () => {
    const observer = await extended.open('popup/index.html');
    const page = await extended.browser.newPage();
    await page.goto(`${site.address}list.html`);
    await selectList(page);
    const keys = await extended.inWindow(`
      const key = document.querySelector('keyset[id^="ext-keyset-id-brimwise"] key[key="L"]');
      key.doCommand();
      return key.getAttribute('modifiers');
    `);
    expect(keys).toBe('alt,shift');
    await firefox.until(
      () => observer.evaluate("browser.extension.getViews({ type: 'sidebar' }).length === 1") as Promise<boolean>,
    );
    await firefox.until(async () => (await sidebarText(observer)) === TEXT);
  });
});
