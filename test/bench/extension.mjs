/**
 * npm run bench:extension: from the click on the menu item to the first finding of a list of 200 lines, in the extension as it is shipped, and how much
 * of that is ours: reading the selection, reading the list and its checks. Figures are this machine's.
 */
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import * as chromium from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import * as firefox from '../../scripts/firefox.mjs';
import { serve } from '../../scripts/serve.mjs';
import { scriptOf } from './core.mjs';
import { listOf } from './lists.mjs';
import { median } from './timing.mjs';

const LINES = 200;
const RUNS = 7;
const list = listOf(LINES).trimEnd().split('\n');
const place = mkdtempSync(path.join(tmpdir(), 'brimwise-bench-'));

/** Runs in each page of the extension: notes by the clock when the element first shows a finding. */
function note() {
  const look = setInterval(() => {
    if (document.querySelector('brimwise-check')?.shadowRoot?.querySelector('[data-check]') == null) return;
    clearInterval(look);
    document.documentElement.dataset.foundAt = String(Date.now());
  }, 1);
}

/** A copy of the built extension with that one script more in the page that opens. */
function noting(browser, page) {
  const folder = path.join(place, browser);
  cpSync(path.join(ROOT, 'dist', browser), folder, { recursive: true });
  const html = path.join(folder, page, 'index.html');
  writeFileSync(path.join(folder, 'note.js'), `(${note})();`);
  writeFileSync(html, readFileSync(html, 'utf8').replace('<script', '<script src="../note.js"></script><script'));
  return folder;
}

async function showList(page, address) {
  await page.goto(address);
  await page.evaluate((lines) => {
    const items = document.createElement('ul');
    items.id = 'lines';
    items.append(...lines.map((line) => Object.assign(document.createElement('li'), { textContent: line })));
    document.body.replaceChildren(items);
    document.getSelection().selectAllChildren(items);
  }, list);
}

/** Milliseconds of what is ours, each done once and cold, in a page that did nothing before. */
async function ours(browser, address) {
  const page = await browser.newPage();
  await showList(page, address);
  const timed = (run) =>
    page.evaluate(`(() => { const before = performance.now(); ${run}; return performance.now() - before; })()`);
  const selection = await timed(readFileSync(path.join(ROOT, 'dist', 'chrome', 'seen', 'read-selection.js'), 'utf8'));
  await page.evaluate(await scriptOf('core'));
  await page.evaluate((lines) => Object.assign(globalThis, { list: lines.join('\n') }), list);
  const judged = await timed('brimwise.checkList(list)');
  await page.close();
  return { selection, judged };
}

async function inChromium(address) {
  const extended = await chromium.launchExtended([], noting('chrome', 'page'));
  const page = await extended.browser.newPage();
  await showList(page, address);
  // Lets the extension in, as a click on the menu does with a screen.
  await (await chromium.openPopup(extended, page)).close();
  const measure = async () => {
    await chromium.forget(extended);
    await page.bringToFront();
    const { tab, at } = await chromium.pickMenuItem(extended, '');
    await tab.waitForFunction(() => document.documentElement.dataset.foundAt, { polling: 100 });
    const found = await tab.evaluate(() => Number(document.documentElement.dataset.foundAt));
    await tab.close();
    return { total: found - at, ...(await ours(extended.browser, address)) };
  };
  return { measure, close: () => extended.browser.close() };
}

async function inFirefox(address) {
  const extended = await firefox.launchExtended({}, noting('firefox', 'panel'));
  const observer = await extended.open('popup/index.html');
  const page = await extended.browser.newPage();
  const measure = async () => {
    await observer.evaluate('browser.storage.local.clear()');
    await showList(page, address);
    await page.bringToFront();
    const { at } = await firefox.pickMenuItem(extended, page, '#lines li');
    const foundAt = () =>
      observer.evaluate(
        `Number(browser.extension.getViews({ type: 'sidebar' })[0].document.documentElement.dataset.foundAt)`,
      );
    await firefox.until(async () => (await foundAt()) > 0);
    const total = (await foundAt()) - at;
    await extended.inWindow('SidebarController.hide()');
    return { total, ...(await ours(extended.browser, address)) };
  };
  return { measure, close: () => extended.browser.close() };
}

const site = await serve(path.join(ROOT, 'test', 'extension', 'pages'));
console.log(
  `From the menu click to the first finding of ${LINES} lines, median of ${RUNS} runs, everything loaded anew in each`,
);
for (const [name, start] of [
  ['Chromium, full page in a tab', inChromium],
  ['Firefox, sidebar', inFirefox],
]) {
  const { measure, close } = await start(`${site.address}course.html`);
  await measure();
  const runs = [];
  for (let i = 0; i < RUNS; i++) runs.push(await measure());
  await close();
  const of = (key) => median(runs.map((run) => run[key]));
  const totals = runs.map(({ total }) => total);
  const own = of('selection') + of('judged');
  const show = (what, ms) => console.log(`  ${what.padEnd(44)}${ms.toFixed(0).padStart(6)} ms`);
  console.log(`\n${name}`);
  show(`all (${Math.min(...totals)} to ${Math.max(...totals)})`, of('total'));
  show('reading the selection', of('selection'));
  show('reading the list and its checks', of('judged'));
  show('opening, loading and drawing', of('total') - own);
  console.log(`  ours, reading and checks: ${((100 * own) / of('total')).toFixed(0)} % of it`);
}
site.close();
rmSync(place, { recursive: true });
