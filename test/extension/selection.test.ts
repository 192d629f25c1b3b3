import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readPage, type PagePart } from '../../extension/selection.js';
import { launchChromium } from '../../scripts/chromium.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';

/** What is in #pick is selected; what must come out. */
const CASES: readonly [name: string, html: string, lines: readonly string[]][] = [
  ['a list, one line an item', '<ul id="pick"><li>Pot 1 L<li> <b>Stove</b>,\n 84 g </ul>', ['Pot 1 L', 'Stove, 84 g']],
  ['a list in a list', '<ul id="pick"><li>Kitchen<ul><li>Pot<li>Lid</ul></ul>', ['Kitchen', 'Pot', 'Lid']],
  [
    'a table, its cells kept, the empty one too',
    '<table id="pick"><tr><th>Item<th>Volume<th>Mass<tr><td>Pot<td>1.3 L<td>210 g<tr><td>Stove<td><td>84 g</table>',
    ['Item\tVolume\tMass', 'Pot\t1.3 L\t210 g', 'Stove\t\t84 g'],
  ],
  [
    'a cell of two lines in one row',
    '<table id="pick"><tr><td>Pot<br>with lid<td><p>1 L</p></table>',
    ['Pot with lid\t1 L'],
  ],
  ['line breaks', '<p id="pick">Pot 600 ml<br>Stove<br>\n<br>Lid</p>', ['Pot 600 ml', 'Stove', 'Lid']],
  [
    'headings and paragraphs',
    '<div id="pick"><h2>Cooking</h2>For two<p>Pot</p><div>Lid</div></div>',
    ['Cooking', 'For two', 'Pot', 'Lid'],
  ],
  ['text set as it is', '<pre id="pick">Pot   1 L\nStove</pre>', ['Pot   1 L', 'Stove']],
  [
    'words in several pieces',
    '<p id="pick">Ti<i>tan</i>ium <a href="#">pot</a> 600&nbsp;ml</p>',
    ['Titanium pot 600\u00a0ml'],
  ],
  [
    'not what is hidden',
    '<div id="pick">Pot<span hidden> 9 L</span><span style="visibility:hidden"> 8 L</span><script>0</script><style>p{}</style></div>',
    ['Pot'],
  ],
  [
    'what stands in form fields, but no secret',
    '<div id="pick"><div>Pot <input value="1.2"> L</div><div>For <select><option>1<option selected>2</select></div><input type="password" value="x"></div>',
    ['Pot 1.2 L', 'For 2'],
  ],
  [
    'markup in text as text',
    '<p id="pick">&lt;img src=x onerror=alert(1)&gt; pot</p>',
    ['<img src=x onerror=alert(1)> pot'],
  ],
  [
    'an open shadow root in it, with what is slotted',
    '<div id="pick"><div>Pot</div><div><template shadowrootmode="open"><p>Lid</p><slot></slot></template><b>Stove</b></div></div>',
    ['Pot', 'Lid', 'Stove'],
  ],
  ['text that can be edited', '<div id="pick" contenteditable><div>Pot</div><div>Lid</div></div>', ['Pot', 'Lid']],
];

describe.each([
  ['Chromium', () => launchChromium()],
  ['Firefox', () => launchFirefox()],
])('a selection read in %s', (_, launch) => {
  let browser: Browser;
  let page: Page;
  beforeAll(async () => {
    browser = await launch();
    page = await browser.newPage();
  });
  afterAll(() => browser.close());

  /** Writes the page as a parser would, so that shadow roots come to be. */
  const show = (html: string) =>
    page.evaluate((markup) => {
      document.open();
      document.write(`<!doctype html><body><p>before</p>${markup}<p>after</p>`);
      document.close();
    }, html);
  const read = (wanted: string) => page.evaluate(readPage as (wanted: string) => PagePart[], wanted);
  const selection = async () => (await read('selection'))[0]?.text ?? '';
  const select = () =>
    page.evaluate(() => {
      document.getSelection()!.selectAllChildren(document.querySelector('#pick')!);
    });

  it.each(CASES)('gives %s', async (_, html, lines) => {
    await show(html);
    await select();
    expect((await selection()).split('\n')).toEqual(lines);
  });

  it('starts and ends within words', async () => {
    await show('<ul id="pick"><li>Pot 1.3 L<li>Stove<li>Lid and more</ul>');
    await page.evaluate(() => {
      const items = document.querySelectorAll('li');
      document.getSelection()!.setBaseAndExtent(items[0]!.firstChild!, 4, items[2]!.firstChild!, 3);
    });
    expect(await selection()).toBe('1.3 L\nStove\nLid');
  });

  it('reads a selection within a shadow root', async () => {
    await show('<div id="host"><template shadowrootmode="open"><ul><li>Pot<li>Lid</ul></template></div>');
    await page.evaluate(() => {
      const list = document.querySelector('#host')!.shadowRoot!.querySelector('ul')!;
      document.getSelection()!.setBaseAndExtent(list, 0, list, 2);
    });
    expect(await selection()).toBe('Pot\nLid');
  });

  it('reads the part of a text field that is selected', async () => {
    await show('<textarea>Notes\nPot 1 L\nLid</textarea>');
    await page.evaluate(() => {
      const area = document.querySelector('textarea')!;
      area.focus();
      area.setSelectionRange(6, 17);
    });
    expect(await selection()).toBe('Pot 1 L\nLid');
  });

  it('gives nothing where nothing is selected', async () => {
    await show('<p>Pot</p>');
    expect(await selection()).toBe('');
  });

  it('gives each list and table of the page with the heading before it or its caption, and changes nothing', async () => {
    await show(
      `<h1>Varn Hollow</h1><p>Two of us.</p><h2>Cooking</h2><ul><li>Pot 1.3 L<li>Stove<ul><li>burner</ul></ul>
      <table><caption>Figures</caption><tr><td>Height<td>90 mm</table><p>Gas<br>Lid</p><ol></ol><ul hidden><li>no</ul>`,
    );
    const before = await page.content();
    expect(await read('lists')).toEqual([
      { heading: 'Cooking', text: 'Pot 1.3 L\nStove\nburner' },
      { heading: 'Figures', text: 'Figures\nHeight\t90 mm' },
      { heading: 'Cooking', text: 'Gas\nLid' },
    ]);
    expect(await page.content()).toBe(before);
  });

  it('takes 20,000 lines', async () => {
    await show(`<ul id="pick">${'<li>Pot 1 L'.repeat(20_000)}</ul>`);
    await select();
    const text = await selection();
    expect(text.split('\n').length).toBe(20_000);
  });
});
