import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import * as chromium from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import * as firefox from '../../scripts/firefox.mjs';
import { serve } from '../../scripts/serve.mjs';
import { watch } from './watch.js';

const PAGES = path.join(ROOT, 'test', 'extension', 'pages');
/** The text of pages/hostile.html, as it is seen there: its paragraphs stand apart. */
const CODE = `Pot 1.3 L <script>globalThis.ran = 1</script>
Stove <img src=x onerror="globalThis.ran = 2">
</textarea><svg onload="globalThis.ran = 3"> gas 230 g
Lid
Mug \${globalThis.ran = 6} {{constructor}}`.replaceAll('\n', '\n\n');

const MANY = 20_000;

const fill = (page: Page, count: number) =>
  page.evaluate((lines) => {
    document.querySelector('#pick')!.innerHTML =
      '<h2>Kit</h2><ul>' + '<li>Pot 1 L, titanium, 130 g</li>'.repeat(lines - 1) + '</ul>';
  }, count);
const select = (page: Page) =>
  page.evaluate(() => {
    document.getSelection()!.selectAllChildren(document.querySelector('#pick')!);
  });
/** Lines with something on them: a gap may stand under the heading. */
const filledIn = (text: string) => text.split('\n').filter((line) => line !== '').length;
const linesIn = async (tab: Page) => filledIn(await tab.$eval('>>> textarea', (area) => area.value));

/** What a page of the extension shows of a text that came in; it is asked in that page. */
function state(view: Window) {
  const check = view.document.querySelector('brimwise-check')!.shadowRoot!;
  return {
    text: check.querySelector('textarea')!.value,
    judged: check.querySelector('[data-check]') !== null,
    ran: (view as { ran?: unknown }).ran ?? null,
    foreign: [view.document, check].flatMap((root) => [
      ...root.querySelectorAll('img, [onerror], [onload], a[href^="javascript"]'),
    ]).length,
  };
}

let site: Awaited<ReturnType<typeof serve>>;
beforeAll(async () => {
  site = await serve(PAGES);
});
afterAll(() => site.close());

describe('a selection that means harm, in Chromium', () => {
  let extended: chromium.Extended;
  let page: Page;
  beforeAll(async () => {
    extended = await chromium.launchExtended();
    page = await extended.browser.newPage();
  });
  afterAll(() => extended.browser.close());
  beforeEach(async () => {
    await chromium.forget(extended);
    await page.goto(`${site.address}hostile.html`);
    // Lets the extension in, as a click on the menu does with a screen.
    await (await chromium.openPopup(extended, page)).close();
    await page.bringToFront();
  });

  it('is shown as text, and no code in it runs', async () => {
    await select(page);
    const { tab } = await chromium.pickMenuItem(extended, '');
    const { complaints } = watch(tab);
    await chromium.waitForFindings(tab);
    expect(await tab.evaluate(`(${String(state)})(window)`)).toEqual({
      text: CODE,
      judged: true,
      ran: null,
      foreign: 0,
    });
    expect(complaints).toEqual([]);
    await tab.close();
  });

  it(`is read and judged to the end where it has ${MANY} lines`, async () => {
    await fill(page, MANY);
    await select(page);
    const { tab } = await chromium.pickMenuItem(extended, '');
    await expect.poll(() => linesIn(tab), { timeout: 60_000 }).toBe(MANY);
    await chromium.waitForFindings(tab);
    await tab.close();
  });
});

describe('a selection that means harm, in Firefox', () => {
  let extended: firefox.Extended;
  let observer: Page;
  beforeAll(async () => {
    extended = await firefox.launchExtended();
    observer = await extended.open('popup/index.html');
  });
  afterAll(() => extended.browser.close());

  const inSidebar = () =>
    observer.evaluate(`(${String(state)})(browser.extension.getViews({ type: 'sidebar' })[0])`) as Promise<
      ReturnType<typeof state>
    >;

  it('is shown as text, and no code in it runs', async () => {
    const page = await extended.browser.newPage();
    await page.goto(`${site.address}hostile.html`);
    await select(page);
    await firefox.pickMenuItem(extended, page, '#pick p');
    await firefox.until(async () => (await inSidebar()).judged);
    expect(await inSidebar()).toEqual({ text: CODE, judged: true, ran: null, foreign: 0 });
  });

  it(`is read and judged to the end where it has ${MANY} lines`, async () => {
    const page = await extended.browser.newPage();
    await page.goto(`${site.address}hostile.html`);
    await fill(page, MANY);
    await select(page);
    await firefox.pickMenuItem(extended, page, '#pick h2');
    await expect.poll(async () => filledIn((await inSidebar()).text), { timeout: 60_000 }).toBe(MANY);
    expect(await inSidebar()).toMatchObject({ judged: true, ran: null });
  });
});
