/** npm run shots: pictures of the page, the popup and the panel, in reports/shots, to look at; store-*.png are of the size that stores ask. Run the build first. */
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { forget, launchChromium, launchExtended, openPopup, waitForFindings } from './chromium.mjs';
import { ROOT } from './files.mjs';
import { serve } from './serve.mjs';

const FOLDER = path.join(ROOT, 'reports', 'shots');
const SCHEMES = ['light', 'dark'];
const WIDTHS = [320, 380, 760, 1200];
/** A panel is as wide as the person draws it; this is about what browsers begin with. */
const PANEL = { width: 380, height: 900 };
const STORE = { width: 1280, height: 800 };

/** @param {import('puppeteer-core').Page} page @param {string} scheme */
function setScheme(page, scheme) {
  return page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
}

/** @param {import('puppeteer-core').Page} page @param {{ fullPage?: boolean }} how @param {(string | number)[]} words */
function shoot(page, how, ...words) {
  return page.screenshot({
    ...how,
    path: /** @type {`${string}.png`} */ (path.join(FOLDER, `${words.join('-')}.png`)),
  });
}

/** @param {import('puppeteer-core').Page} full @param {string} name */
async function saveKit(full, name) {
  await full.waitForFunction(() => document.querySelector('#kits form'), { polling: 100 });
  await full.$eval('#kits [name="name"]', (field) => /** @type {HTMLInputElement} */ (field.value = ''));
  await full.type('#kits [name="name"]', `${name}\n`);
  await full.waitForFunction(
    (wanted) => [...document.querySelectorAll('#kits .name')].some(({ textContent }) => textContent === wanted),
    { polling: 100 },
    name,
  );
}

rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });

const site = await serve(path.join(ROOT, 'dist', 'demo'));
const chromium = await launchChromium();
const page = await chromium.newPage();
await page.goto(site.address);
await waitForFindings(page);
const demoList = await page.$eval('>>> textarea', (area) => area.value);
for (const scheme of SCHEMES) {
  await setScheme(page, scheme);
  for (const width of WIDTHS) {
    await page.setViewport({ width, height: 900 });
    await shoot(page, { fullPage: true }, 'page', width, scheme);
  }
}
await chromium.close();
site.close();

const post = await serve(path.join(ROOT, 'test', 'extension', 'pages'));
const extended = await launchExtended();
const over = await extended.browser.newPage();
await over.goto(`${post.address}post.html`);
for (const scheme of SCHEMES) {
  const popup = await openPopup(extended, over);
  await setScheme(popup, scheme);
  await shoot(popup, {}, 'popup', 'empty', scheme);
  await popup.keyboard.sendCharacter(demoList);
  await waitForFindings(popup);
  await shoot(popup, {}, 'popup', 'list', scheme);
  await popup.click('#this-page');
  await popup.waitForFunction(() => document.querySelector('#offers button'), { polling: 100 });
  await shoot(popup, {}, 'popup', 'offers', scheme);
  await popup.close();

  const panel = await extended.browser.newPage();
  await setScheme(panel, scheme);
  await panel.setViewport(PANEL);
  await panel.goto(`chrome-extension://${extended.id}/panel/index.html`);
  await waitForFindings(panel);
  await shoot(panel, { fullPage: true }, 'panel', scheme);
  await panel.setViewport(STORE);
  await shoot(panel, {}, 'store', scheme);
  await panel.close();

  const full = await extended.browser.newPage();
  await setScheme(full, scheme);
  await full.setViewport(STORE);
  await full.goto(`chrome-extension://${extended.id}/page/index.html`);
  await waitForFindings(full);
  for (const name of ['Two in winter', 'The small pot']) await saveKit(full, name);
  for (const width of [STORE.width, PANEL.width]) {
    await full.setViewport({ width, height: STORE.height });
    await shoot(full, { fullPage: true }, 'full', width, scheme);
  }
  await full.close();
  await forget(extended);
}
await extended.browser.close();
post.close();
console.log(`Pictures are in ${FOLDER}.`);
