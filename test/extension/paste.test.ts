import type { Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import * as chromium from '../../scripts/chromium.mjs';
import * as firefox from '../../scripts/firefox.mjs';

/** Runs in a page of the extension: a paste as the browser would send it, of a piece of a page and its plain text. */
function paste(html: string, plain: string): void {
  const area = document.querySelector('brimwise-check')!.shadowRoot!.querySelector('textarea')!;
  area.focus();
  const clipboardData = new DataTransfer();
  clipboardData.setData('text/html', html);
  clipboardData.setData('text/plain', plain);
  // Earlier versions of Firefox take one kind of data, under other names.
  const init = { clipboardData, dataType: 'text/html', data: html, bubbles: true, composed: true, cancelable: true };
  area.dispatchEvent(new ClipboardEvent('paste', init));
}

const LIST =
  '<ul><li>Pot 1 L<ul><li>lid</ul><li><s>Stove</s> 84 g</ul><table><tr><th>Item<th>Mass<tr><td>Mug<td>60 g</table>';
const TEXT = '- Pot 1 L\n  - lid\n- ~~Stove~~ 84 g\n\nItem\tMass\nMug\t60 g';
const HARM =
  '<ul><li>Pot<img src="https://harm.invalid/x.png" onerror="globalThis.ran = 1"><script>globalThis.ran = 2</script><iframe src="https://harm.invalid"></iframe><li style="background:url(https://harm.invalid/y)">Lid</ul>';

describe.each(['Chromium', 'Firefox'])('a paste from a page, in %s', (name) => {
  let open: () => Promise<Page>;
  let close: () => Promise<void>;
  let page: Page;
  beforeAll(async () => {
    if (name === 'Chromium') {
      const extended = await chromium.launchExtended();
      open = async () => {
        const tab = await extended.browser.newPage();
        await tab.goto(`chrome-extension://${extended.id}/panel/index.html`);
        await tab.waitForFunction(() => document.activeElement?.localName === 'brimwise-check', { polling: 100 });
        return tab;
      };
      close = () => extended.browser.close();
    } else {
      const extended = await firefox.launchExtended();
      open = () => extended.open('panel/index.html');
      close = () => extended.browser.close();
    }
    page = await open();
  });
  afterAll(() => close());
  afterEach(() =>
    page.evaluate(() => {
      const check = document.querySelector('brimwise-check')!;
      check.draft = { ...check.draft, text: '' };
      return check.updateComplete;
    }),
  );
  const typed = () => page.$eval('>>> textarea', (area) => area.value);

  it('keeps bullets, columns and what is struck through, and is judged', async () => {
    await page.evaluate(paste, LIST, 'Pot 1 L lid');
    await expect.poll(typed).toBe(TEXT);
    await expect.poll(() => page.evaluate(chromium.hasFindings)).toBe(true);
  });

  it('runs nothing and asks for nothing', async () => {
    const asked: string[] = [];
    page.on('request', (request) => asked.push(request.url()));
    await page.evaluate(paste, HARM, 'Pot Lid');
    await expect.poll(typed).toBe('- Pot\n- Lid');
    expect(await page.evaluate(() => (globalThis as { ran?: number }).ran ?? null)).toBeNull();
    expect(asked).toEqual([]);
  });
});
