import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { forget, launchExtended, openPopup, waitForFindings, type Extended } from '../../scripts/chromium.mjs';
import * as firefox from '../../scripts/firefox.mjs';
import { violationsIn } from './axe.js';
import { watch } from './watch.js';

const LIST = readFileSync(path.join(ROOT, 'test', 'lists', 'solo-simmer-small', 'list.txt'), 'utf8');

describe('the popup in Chromium', () => {
  let chromium: Extended;
  let page: Page;
  let popup: Page;

  beforeAll(async () => {
    chromium = await launchExtended();
    page = await chromium.browser.newPage();
  });
  afterAll(() => chromium.browser.close());
  afterEach(async () => {
    if (!popup.isClosed()) await popup.close();
    await forget(chromium);
  });

  const open = async () => (popup = await openPopup(chromium, page));

  it('opens ready to type: keys go into the list with nothing clicked', async () => {
    await open();
    await popup.keyboard.type('Pot 1');
    expect(await popup.$eval('>>> textarea', (area) => area.value)).toBe('Pot 1');
  });

  it('closes on Escape with the draft kept, but not where Escape gives back a value that is being changed', async () => {
    await open();
    await popup.keyboard.type('Pot 600 ml');
    await waitForFindings(popup);
    await popup.evaluate(() => {
      const root = document.querySelector('brimwise-check')!.shadowRoot!;
      for (const fold of root.querySelectorAll<HTMLElement>('.tog[aria-expanded="false"]')) fold.click();
    });
    await popup.evaluate(() => {
      document.querySelector('brimwise-check')!.shadowRoot!.querySelector<HTMLElement>('[data-value]')!.click();
    });
    await popup.waitForFunction(
      () => document.querySelector('brimwise-check')!.shadowRoot!.activeElement?.matches('[data-edit]'),
      { polling: 100 },
    );
    await popup.keyboard.press('Escape');
    expect(popup.isClosed()).toBe(false);
    await popup.focus('>>> textarea');
    await popup.keyboard.type(', lid');
    // The popup may be gone before the key is answered for.
    popup.keyboard.down('Escape').catch(() => undefined);
    await expect.poll(() => popup.isClosed()).toBe(true);
    await open();
    expect(await popup.$eval('>>> textarea', (area) => area.value)).toContain(', lid');
  });

  it('shows the findings of a list, with no message, no request but for its own files, and nothing axe minds', async () => {
    await open();
    const { complaints, requests } = watch(popup);
    await popup.reload();
    await popup.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
    await popup.keyboard.sendCharacter(LIST);
    await waitForFindings(popup);
    expect(complaints).toEqual([]);
    expect(requests.length).toBeGreaterThan(2);
    expect(requests.filter((url) => !url.startsWith(`chrome-extension://${chromium.id}/`))).toEqual([]);
    expect(await violationsIn(popup)).toEqual([]);
  });

  it('opens the panel beside the page, with the draft in it', async () => {
    await open();
    await popup.keyboard.type('Pot 1 L');
    const opening = chromium.browser.waitForTarget((target) => target.url().endsWith('/panel/index.html'));
    await popup.click('#beside');
    const panel = await (await opening).asPage();
    const contexts = await (
      await chromium.worker()
    ).evaluate(() => chrome.runtime.getContexts({ contextTypes: ['SIDE_PANEL'] }));
    expect(contexts.length).toBe(1);
    await waitForFindings(panel);
    expect(await panel.$eval('>>> textarea', (area) => area.value)).toBe('Pot 1 L');
    await panel.close();
  });
});

describe('the popup in Firefox', () => {
  let extended: firefox.Extended;
  /** A page of the extension in a tab; from there the popup's own document is in reach. */
  let observer: Page;

  beforeAll(async () => {
    extended = await firefox.launchExtended();
    observer = await extended.open('panel/index.html');
  });
  afterAll(() => extended.browser.close());

  const open = async () => {
    await extended.inWindow(`
      const id = 'brimwise_brimwise_invalid-browser-action';
      CustomizableUI.addWidgetToArea(id, 'nav-bar');
      document.getElementById(id).querySelector('.unified-extensions-item-action-button').click();
    `);
    await firefox.until(() => inPopup(({ document }) => document.activeElement?.localName === 'brimwise-check'));
  };
  const inPopup = <T>(ask: (popup: Window) => T): Promise<T> =>
    observer.evaluate(`(${String(ask)})(browser.extension.getViews({ type: 'popup' })[0])`) as Promise<T>;

  it('opens by the toolbar button, ready to type, and keeps the draft when it is closed in mid-word', async () => {
    await open();
    await inPopup(({ document }) => {
      const area = document.querySelector('brimwise-check')!.shadowRoot!.querySelector('textarea')!;
      area.value = 'Pot 600 ml\nstove, screws on the canis';
      area.dispatchEvent(new InputEvent('input', { bubbles: true, composed: true }));
    });
    await inPopup((popup) => popup.close());
    await firefox.until(
      () => observer.evaluate('browser.extension.getViews({ type: "popup" }).length === 0') as Promise<boolean>,
    );
    await open();
    expect(
      await inPopup(
        ({ document }) => document.querySelector('brimwise-check')!.shadowRoot!.querySelector('textarea')!.value,
      ),
    ).toBe('Pot 600 ml\nstove, screws on the canis');
  });
});
