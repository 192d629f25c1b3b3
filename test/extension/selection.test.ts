import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { PageSeen } from '../../extension/seen/page.js';
import type { Selected } from '../../extension/seen/selection.js';
import { ROOT } from '../../scripts/files.mjs';
import { launchChromium } from '../../scripts/chromium.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';

const script = (name: string) => readFileSync(path.join(ROOT, 'dist', 'chrome', 'seen', name), 'utf8');
const READ_SELECTION = script('read-selection.js');
const READ_PAGE = script('read-page.js');

/** What is in #pick is selected; what must come out. */
const CASES: readonly [name: string, html: string, lines: readonly string[]][] = [
  [
    'a list, one line an item',
    '<ul id="pick"><li>Pot 1 L<li> <b>Stove</b>,\n 84 g </ul>',
    ['- Pot 1 L', '- Stove, 84 g'],
  ],
  ['a list in a list', '<ul id="pick"><li>Kitchen<ul><li>Pot<li>Lid</ul></ul>', ['- Kitchen', '  - Pot', '  - Lid']],
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
    ['## Cooking', '', 'For two', '', 'Pot', '', 'Lid'],
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
    ['Pot', '', 'Lid', '', 'Stove'],
  ],
  [
    'nothing that nobody sees',
    `<div id="pick">Pot<div style="opacity:0">9 L</div><div style="font-size:0">8 L</div><div style="position:absolute;left:-9999px">7 L</div>
    <details><summary>Lid</summary>6 L</details><div style="clip-path:inset(50%)">5 L</div><div style="position:absolute;clip:rect(0,0,0,0)">4 L</div>
    <div style="position:absolute;inline-size:1px;block-size:1px;overflow:hidden">3 L</div><div style="block-size:0;overflow:hidden">2 L</div>
    <div style="color:transparent">10 L</div><div style="transform:scale(0)">11 L</div><div style="text-indent:-9999px">12 L</div></div>`,
    ['Pot', '#### Lid'],
  ],
  [
    'struck text as struck',
    '<ul id="pick"><li><s>Pot 1 L</s><li>Stove <del>84 g </del>90 g<li style="text-decoration:line-through">Lid</ul>',
    ['- ~~Pot 1 L~~', '- Stove ~~84 g~~ 90 g', '- ~~Lid~~'],
  ],
  [
    'not what stands beside the text',
    '<div id="pick"><a style="position:absolute;left:-999px">Skip to content</a><nav>Kettles</nav><main><h1>Kit</h1><p>Pot</p><aside>Mug</aside></main><div id="comments"><p>Pan</p></div><footer>Bowl</footer></div>',
    ['# Kit', '', 'Pot'],
  ],
  [
    'what stands beside the text, where that is what is selected',
    '<aside><ul id="pick"><li>Pot<li>Mug</ul></aside>',
    ['- Pot', '- Mug'],
  ],
  [
    'things in a cell on lines of their own',
    '<table id="pick"><tr><th>Where<th>What<tr><td>Kitchen<td>Pot 1 L<br>Stove 84 g<br>Gas 230 g<tr><td>Table<td><ul><li>Mug<li>Bowl</ul></table>',
    ['Where\tWhat', 'Kitchen', '- Pot 1 L', '- Stove 84 g', '- Gas 230 g', 'Table', '- Mug', '- Bowl'],
  ],
  [
    'columns that run in step within cells as rows',
    '<table id="pick"><tr><td>Pot<br>Stove<td>210 g<br>84 g</table>',
    ['Pot\t210 g', 'Stove\t84 g'],
  ],
  [
    'a table within a table',
    '<table id="pick"><tr><td>Cook kit<td><table><tr><td>Pot<td>210 g<tr><td>Stove<td>84 g</table></table>',
    ['Cook kit', 'Pot\t210 g', 'Stove\t84 g'],
  ],
  [
    'room for a cell that reaches over two rows, and no numbers of lines',
    '<table id="pick"><tr><th><th>Where<th>What<tr><td>1<td rowspan=2>Kitchen<td>Pot<tr><td>2<td>Stove<tr><td>3<td>Table<td>Mug</table>',
    ['Where\tWhat', 'Kitchen\tPot', '\tStove', 'Table\tMug'],
  ],
  [
    'boxes on one line in one line',
    '<div id="pick"><div style="display:flex"><span>Pot</span><span>1.3 L</span></div><div style="display:grid;grid-template-columns:1fr 1fr"><b>Stove</b><i>84 g</i><b>Lid</b><i>30 g</i></div></div>',
    ['Pot\t1.3 L', 'Stove\t84 g', 'Lid\t30 g'],
  ],
  [
    'terms and what is said of them',
    '<dl id="pick"><dt>Pot<dd>1.3 L<dt>Kitchen<dd>Stove<dd>Lid</dl>',
    ['- Pot: 1.3 L', 'Kitchen:', '- Stove', '- Lid'],
  ],
  [
    'no mark of a note as a figure',
    '<p id="pick">Pot 210<sup>1</sup> g, 1<sup>1</sup>/<sub>2</sub> L, 95 cm<sup>2</sup><sup><a href="#">[2]</a></sup></p>',
    ['Pot 210 g, 1 1/2 L, 95 cm²'],
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
  const selected = async () => (await page.evaluate(READ_SELECTION)) as Selected | null;
  const selection = async () => (await selected())?.text ?? '';
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
    expect(await selection()).toBe('- 1.3 L\n- Stove\n- Lid');
  });

  it('brings the heads of a table along with some of its rows, and keeps the columns of a row that is cut', async () => {
    await show(
      '<table><tr><th>Item<th>Volume<th>Mass<tr><td>Pot<td>1.3 L<td>210 g<tr><td>Stove<td><td>84 g<tr><td>Lid<td><td>30 g</table>',
    );
    const from = (row: number, cell: number, to: number, last: number) =>
      page.evaluate(
        (a, b, c, d) => {
          const { rows } = document.querySelector('table')!;
          const end = rows[c]!.cells[d]!.firstChild!;
          document.getSelection()!.setBaseAndExtent(rows[a]!.cells[b]!.firstChild!, 0, end, end.textContent!.length);
        },
        row,
        cell,
        to,
        last,
      );
    await from(1, 1, 2, 2);
    expect(await selected()).toMatchObject({ text: 'Item\tVolume\tMass\n\t1.3 L\t210 g\nStove\t\t84 g', headed: true });
    await from(3, 0, 3, 2);
    expect(await selection()).toBe('Item\tVolume\tMass\nLid\t\t30 g');
  });

  it('keeps cells that are picked one by one in their rows', async () => {
    await show('<table><tr><th>Item<th>Mass<tr><td>Pot<td>210 g<tr><td>Stove<td>84 g<tr><td>Lid<td>30 g</table>');
    const ranges = await page.evaluate(() => {
      const selection = document.getSelection()!;
      selection.removeAllRanges();
      const { rows } = document.querySelector('table')!;
      for (const row of [1, 3]) {
        for (const [cell] of [...rows[row]!.cells].entries()) {
          const range = document.createRange();
          range.setStart(rows[row]!, cell);
          range.setEnd(rows[row]!, cell + 1);
          selection.addRange(range);
        }
      }
      return selection.rangeCount;
    });
    // Chromium knows one range only.
    if (ranges > 1) expect(await selection()).toBe('Item\tMass\nPot\t210 g\nLid\t30 g');
    else expect(await selection()).toBe('Pot');
  });

  it('reads a selection within a shadow root', async () => {
    await show('<div id="host"><template shadowrootmode="open"><ul><li>Pot<li>Lid</ul></template></div>');
    await page.evaluate(() => {
      const list = document.querySelector('#host')!.shadowRoot!.querySelector('ul')!;
      document.getSelection()!.setBaseAndExtent(list, 0, list, 2);
    });
    expect(await selection()).toBe('- Pot\n- Lid');
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

  it('gives the whole page and each part of it with the heading before it or its caption, and changes nothing', async () => {
    await show(
      `<h1>Varn Hollow</h1><p>Two of us.</p><h2>Cooking</h2><ul><li>Pot 1.3 L<li>Stove<ul><li>burner</ul></ul>
      <table><caption>Figures</caption><tr><td>Height<td>90 mm</table><p>Gas<br>Lid</p><ol></ol><ul hidden><li>no</ul>
      <aside><ul><li>Kettle</ul></aside><div class="comments"><ul><li>Pan</ul></div>`,
    );
    const before = await page.content();
    const { text, parts } = (await page.evaluate(READ_PAGE)) as PageSeen;
    expect(text.split('\n').filter((line) => line !== '')).toEqual([
      'before',
      '# Varn Hollow',
      'Two of us.',
      '## Cooking',
      '- Pot 1.3 L',
      '- Stove',
      '  - burner',
      '#### Figures',
      'Height\t90 mm',
      'Gas',
      'Lid',
      'after',
    ]);
    expect(parts).toEqual([
      { heading: '', text: 'before', zone: 'main' },
      { heading: 'Varn Hollow', text: 'Two of us.', zone: 'main' },
      { heading: 'Cooking', text: '- Pot 1.3 L\n- Stove\n  - burner', zone: 'main' },
      { heading: 'Figures', text: 'Height\t90 mm', zone: 'main' },
      { heading: 'Figures', text: 'Gas\nLid', zone: 'main' },
      { heading: 'Figures', text: 'after', zone: 'main' },
      { heading: 'Figures', text: '- Kettle', zone: 'beside' },
      { heading: 'Figures', text: '- Pan', zone: 'comments' },
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
