/** npm run shots: pictures of the page and the popup, in reports/shots, to look at. Run the build first. */
import { mkdirSync, rmSync } from 'node:fs';
import path from 'node:path';
import { launchChromium, launchExtended, openPopup } from './chromium.mjs';
import { ROOT } from './files.mjs';
import { serve } from './serve.mjs';

const FOLDER = path.join(ROOT, 'reports', 'shots');
const SCHEMES = ['light', 'dark'];
const WIDTHS = [320, 380, 760, 1200];
const FOUND = '>>> [data-check]';

/** @param {import('puppeteer-core').Page} page @param {string} scheme */
function setScheme(page, scheme) {
  return page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
}

function file(/** @type {(string | number)[]} */ ...words) {
  return /** @type {`${string}.png`} */ (path.join(FOLDER, `${words.join('-')}.png`));
}

rmSync(FOLDER, { recursive: true, force: true });
mkdirSync(FOLDER, { recursive: true });

const site = await serve(path.join(ROOT, 'dist', 'demo'));
const chromium = await launchChromium();
const page = await chromium.newPage();
await page.goto(site.address);
await page.waitForSelector(FOUND);
const demoList = await page.$eval('>>> textarea', (area) => area.value);
for (const scheme of SCHEMES) {
  await setScheme(page, scheme);
  for (const width of WIDTHS) {
    await page.setViewport({ width, height: 900 });
    await page.screenshot({ path: file('page', width, scheme), fullPage: true });
  }
}
await chromium.close();
site.close();

const extended = await launchExtended();
const over = await extended.browser.newPage();
for (const scheme of SCHEMES) {
  const popup = await openPopup(extended, over);
  await setScheme(popup, scheme);
  await popup.screenshot({ path: file('popup', 'empty', scheme) });
  await popup.keyboard.sendCharacter(demoList);
  await popup.waitForSelector(FOUND);
  await popup.screenshot({ path: file('popup', 'list', scheme) });
  await popup.screenshot({ path: file('popup', 'whole', scheme), fullPage: true });
  await popup.close();
  await (await extended.worker()).evaluate(() => chrome.storage.local.clear());
}
await extended.browser.close();
console.log(`Pictures are in ${FOLDER}.`);
