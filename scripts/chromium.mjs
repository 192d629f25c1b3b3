/** Chromium, with and without the built extension, for tests and pictures. */
import path from 'node:path';
import puppeteer from 'puppeteer-core';
import { executableOf, SANDBOX_ARGS } from './browsers.mjs';
import { ROOT } from './files.mjs';

/** Without these, Chromium calls home more than it must. */
const QUIET_ARGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * Chromium with the extension in it.
 * @typedef {object} Extended
 * @property {import('puppeteer-core').Browser} browser
 * @property {import('puppeteer-core').Extension} extension
 * @property {string} id
 * @property {() => Promise<import('puppeteer-core').WebWorker>} worker the background
 */

/** @param {readonly string[]} [args] */
export function launchChromium(args = []) {
  return puppeteer.launch({
    executablePath: executableOf('chromium'),
    args: [...SANDBOX_ARGS, ...QUIET_ARGS, ...args],
  });
}

/**
 * @param {readonly string[]} [args]
 * @param {string} [folder] the unpacked extension
 * @returns {Promise<Extended>}
 */
export async function launchExtended(args = [], folder = path.join(ROOT, 'dist', 'chrome')) {
  const browser = await puppeteer.launch({
    executablePath: executableOf('chromium'),
    pipe: true,
    enableExtensions: [folder],
    args: [...SANDBOX_ARGS, ...QUIET_ARGS, ...args],
  });
  const background = () =>
    browser.waitForTarget((target) => target.type() === 'service_worker' && target.url().endsWith('/background.js'), {
      timeout: 10_000,
    });
  const id = new URL((await background()).url()).host;
  const extension = (await browser.extensions()).get(id);
  if (!extension) throw new Error('Chromium did not load the extension.');
  return {
    browser,
    extension,
    id,
    async worker() {
      const worker = await (await background()).worker();
      if (!worker) throw new Error('The background is not running.');
      return worker;
    },
  };
}

/**
 * Presses the toolbar button over a page and gives the popup that opens, once it is ready to type in.
 * @param {Extended} extended
 * @param {import('puppeteer-core').Page} over
 */
export async function openPopup({ browser, extension }, over) {
  await over.bringToFront();
  // One that is still closing is not the one that opens.
  const before = new Set(browser.targets());
  const opening = browser.waitForTarget((target) => !before.has(target) && target.url().endsWith('/popup/index.html'));
  await over.triggerExtensionAction(extension);
  const popup = await (await opening).asPage();
  await popup.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
  return popup;
}

/**
 * Forgets all that the extension has kept.
 * @param {Extended} extended
 */
export async function forget({ browser, id, worker }) {
  await (
    await worker()
  ).evaluate(() =>
    Promise.all([chrome.storage.local.clear(), chrome.storage.sync.clear(), chrome.storage.session.clear()]),
  );
  const [page] = await browser.pages();
  const session = await page?.createCDPSession();
  await session?.send('Storage.clearDataForOrigin', {
    origin: `chrome-extension://${id}`,
    storageTypes: 'local_storage',
  });
  await session?.detach();
}

/** Whether the element of a page shows a finding; to be asked in that page. */
export function hasFindings() {
  return document.querySelector('brimwise-check')?.shadowRoot?.querySelector('[data-check]') != null;
}

/**
 * Waits until the element of a page shows a finding. It asks by the clock: a popup that nobody sees paints no frames to ask by.
 * @param {import('puppeteer-core').Page} page
 */
export async function waitForFindings(page) {
  await page.waitForFunction(hasFindings, { polling: 100, timeout: 90_000 });
}

/**
 * Waits until something in a page, or in an element's shadow root, matches. It asks by the clock, for the same reason, and because no one is told
 * of what changes in a shadow root.
 * @param {import('puppeteer-core').Page} page
 * @param {string} selector
 */
export async function waitForMatch(page, selector) {
  const matches = (/** @type {string} */ wanted) => {
    const shadows = [...document.querySelectorAll('*')].map(({ shadowRoot }) => shadowRoot);
    return [document, ...shadows].some((root) => (root?.querySelector(wanted) ?? null) !== null);
  };
  await page.waitForFunction(matches, { polling: 100 }, selector);
}

/**
 * Picks an item from the menu over the selection in the active tab, and gives the tab that opens, once it is ready to type in. Chromium draws no menu
 * without a screen: its event is sent instead, and the real listener runs. No panel opens without a click, so the full page does, in a tab.
 * @param {Extended} extended
 * @param {string} selectionText the selection as the browser would tell it
 * @param {string} [menuItemId]
 * @param {string} [pageUrl]
 * @returns {Promise<{ tab: import('puppeteer-core').Page, at: number }>} at: when it was picked, by the clock
 */
export async function pickMenuItem(
  { browser, worker },
  selectionText,
  menuItemId = 'list',
  pageUrl = 'https://kit.invalid/',
) {
  const opening = browser.waitForTarget((target) => target.url().endsWith('/page/index.html'));
  const background = await worker();
  const at = await background.evaluate(
    async (click) => {
      const [over] = await chrome.tabs.query({ active: true, lastFocusedWindow: true });
      const picked = Date.now();
      chrome.contextMenus.onClicked.dispatch(click, over);
      return picked;
    },
    { menuItemId, frameId: 0, selectionText, pageUrl },
  );
  const tab = await (await opening).asPage();
  await tab.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
  return { tab, at };
}
