/** Firefox, with and without the built extension, for tests and figures. */
import path from 'node:path';
import puppeteer from 'puppeteer-core';
import { executableOf } from './browsers.mjs';
import { ROOT } from './files.mjs';

const ADD_ON = 'brimwise@brimwise.invalid';
/** Where Firefox puts the extension's pages; fixed, so that a test knows. */
const HOST = '6f1b2c34-1111-4222-8333-444455556666';

/**
 * Firefox with the built extension in it, as it is shipped.
 * @typedef {object} Extended
 * @property {import('puppeteer-core').Browser} browser
 * @property {(page: string) => Promise<import('puppeteer-core').Page>} open opens a page of the extension in a tab, ready to type in
 * @property {(script: string) => Promise<unknown>} inWindow runs a script in the document of the browser's own window, as the body of an async function
 */

/**
 * @param {import('puppeteer-core').LaunchOptions} [extra]
 * @returns {Promise<import('puppeteer-core').Browser>}
 */
export function launchFirefox(extra = {}) {
  return puppeteer.launch({ browser: 'firefox', executablePath: executableOf('firefox'), ...extra });
}

/**
 * @param {Record<string, unknown>} [prefs]
 * @param {string} [folder] the unpacked extension
 * @param {import('puppeteer-core').LaunchOptions} [extra]
 * @returns {Promise<Extended>}
 */
export async function launchExtended(prefs = {}, folder = path.join(ROOT, 'dist', 'firefox'), extra = {}) {
  const browser = await launchFirefox({
    ...extra,
    // Gives the test full power over this throw-away profile: its own pages, menus and toolbar.
    args: ['--remote-allow-system-access'],
    extraPrefsFirefox: { 'extensions.webextensions.uuids': JSON.stringify({ [ADD_ON]: HOST }), ...prefs },
  });
  await browser.installExtension(folder);
  // Puppeteer's BiDi connection reaches the browser's own window; it stands outside its typed API.
  const { connection } = /** @type {any} */ (browser);
  const tree = await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome', maxDepth: 0 });
  const window = tree.result.contexts.find((/** @type {{ url: string }} */ { url }) => url.endsWith('/browser.xhtml'));
  return {
    browser,
    async open(page) {
      const tab = await browser.newPage();
      const address = `moz-extension://${HOST}/${page}`;
      // This goto never settles: Firefox tells the end of such a load to nobody.
      tab.goto(address, { timeout: 1 }).catch(() => undefined);
      await until(() =>
        tab.evaluate(
          (wanted) => location.href === wanted && document.activeElement?.localName === 'brimwise-check',
          address,
        ),
      );
      return tab;
    },
    async inWindow(script) {
      const { result } = await connection.send('script.evaluate', {
        expression: `(async () => { ${script} })()`,
        target: { context: window.context },
        awaitPromise: true,
      });
      if (result.type === 'exception') throw new Error(result.exceptionDetails.text);
      return result.result.value;
    },
  };
}

/**
 * Presses the right button over an element of a page and picks an item of the extension's from the menu that the browser draws.
 * @param {Extended} extended
 * @param {import('puppeteer-core').Page} page with a selection, which the element is part of
 * @param {string} selector
 * @param {number} [which] place of the item among the extension's
 * @returns {Promise<{ labels: string[], at: number }>} the labels of all the extension's items, and when the one was picked, by the clock
 */
export async function pickMenuItem({ inWindow }, page, selector, which = 0) {
  const shown = inWindow(`
    const menu = document.getElementById('contentAreaContextMenu');
    if (menu.state !== 'open') await new Promise((resolve) => menu.addEventListener('popupshown', resolve, { once: true }));
  `);
  await page.locator(selector).click({ button: 'right' });
  await shown;
  const picked = await inWindow(`
    const menu = document.getElementById('contentAreaContextMenu');
    const own = [...menu.querySelectorAll('menu')].find(({ label }) => label === 'Brimwise');
    own.openMenu(true);
    await new Promise((resolve) => own.menupopup.addEventListener('popupshown', resolve, { once: true }));
    const items = [...own.menupopup.children];
    const at = Date.now();
    own.menupopup.activateItem(items[${which}]);
    return JSON.stringify({ at, labels: items.map(({ label }) => label) });
  `);
  return JSON.parse(String(picked));
}

/**
 * Asks again until it is so.
 * @param {() => Promise<boolean>} condition
 */
export async function until(condition) {
  for (let tries = 0; tries < 200; tries += 1) {
    if (await condition().catch(() => false)) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`It did not come to be: ${condition.toString()}`);
}
