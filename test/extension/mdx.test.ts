import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launchChromium } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';
import { serve } from '../../scripts/serve.mjs';
import { waysIn } from '../../scripts/widget.mjs';
import { snippets } from '../../widget/builder/snippets.js';
import type { BrimwiseCheck, BrimwisePot } from '../../widget/index.js';
import { browserScript, renderedOnServer } from './mdx.mjs';
import { watch } from './watch.js';

const POST = readFileSync(path.join(ROOT, 'test', 'extension', 'pages', 'post.mdx'), 'utf8');
/** Braces, quotes, signs of Markdown and of HTML, an empty line. */
const LIST = 'Pot "Duo" 1.3 L <aluminium> & lid\n\n- *Gas* {stove} {{89 g}} `x`';
const SNIPPET = snippets(
  {
    element: 'brimwise-check',
    attributes: { people: '2', name: 'a "pot" & {c}' },
    list: LIST,
    listIn: 'element',
    standing: ['The *meal* takes {two} rounds.', 'Falls short: <one> & two.'],
    folder: '',
    way: 'near.js',
    held: true,
  },
  Object.fromEntries(waysIn(path.join(ROOT, 'dist', 'widget')).map(({ file, integrity }) => [file, integrity])),
).find(({ name }) => name === 'MDX')!.text;
const WIDGET = '<script type="module" src="index.js"></script>';
const PROPS = { people: '2', litres: '1.3' };

type Props = Partial<typeof PROPS>;
type View = typeof globalThis & { post: Record<'hydrate' | 'render', (props: Props) => void> };

const folder = mkdtempSync(path.join(tmpdir(), 'brimwise-mdx-'));

beforeAll(async () => {
  cpSync(path.join(ROOT, 'dist', 'widget'), folder, { recursive: true });
  writeFileSync(path.join(folder, 'post.js'), await browserScript(POST));
  writeFileSync(path.join(folder, 'snippet.js'), await browserScript(SNIPPET));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe.each([
  ['Chromium', () => launchChromium()],
  ['Firefox', () => launchFirefox()],
])('a post written in MDX, in %s', (_, launch) => {
  let browser: Browser;
  let page: Page;
  let site: Awaited<ReturnType<typeof serve>>;
  let complaints: string[];

  beforeAll(async () => {
    site = await serve(folder);
    browser = await launch();
  });
  afterAll(async () => {
    await browser.close();
    site.close();
  });
  beforeEach(async () => {
    page = await browser.newPage();
    ({ complaints } = watch(page));
  });
  afterEach(() => page.close());

  const judged = () =>
    page.waitForFunction(() =>
      [...document.querySelectorAll<BrimwiseCheck>('brimwise-check, brimwise-pot, brimwise-verdict')].every(
        ({ report, shadowRoot }) => report && shadowRoot?.querySelector('[data-check]'),
      ),
    );
  const call = (name: 'hydrate' | 'render', props: Props = PROPS) =>
    page.evaluate((does, given) => (globalThis as View).post[does](given), name, props);
  const draft = (id: string) => page.$eval(`#${id}`, (element) => (element as BrimwisePot).draft);
  /** React tells of its tools, and times itself, on the console: neither is a complaint. */
  const minded = () => complaints.filter((words) => !/^(info|timeStamp): /.test(words));

  async function open({
    head = WIDGET,
    html = '',
    script = 'post.js',
  }: { head?: string; html?: string; script?: string } = {}): Promise<void> {
    writeFileSync(
      path.join(folder, 'index.html'),
      `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>A post</title><link rel="icon" href="data:,">${head}</head><body><main id="post">${html}</main><script src="${script}"></script></body></html>`,
    );
    await page.goto(site.address);
  }
  const fromServer = () => renderedOnServer(POST, PROPS);

  /** What each element makes of what MDX gave it. */
  async function expectAllRead(): Promise<void> {
    await judged();
    expect((await draft('list')).text).toBe(
      'Pot 1.3 L, 140 x 90 mm, with lid\nGas stove, screws onto the canister\nGas 230 g\nfoil windscreen',
    );
    expect((await draft('list')).trip).toEqual({ people: '2', days: '3' });
    expect((await draft('table')).text).toBe('Item\tWeight\nPot 0.9 L\t130 g\nSpirit stove\t95 g');
    expect((await draft('block')).text).toBe('Pot 1 L\nWood stove');
    const { pot, trip } = await draft('pot');
    expect([pot, trip]).toMatchObject([
      { capacity: '1.3 L', diameter: '140', height: '90', lid: true },
      { mealStyle: 'simmer' },
    ]);
    expect(await page.$eval('brimwise-verdict', ({ report }) => report!.pots.length)).toBe(1);
    expect(await page.$eval('#list', ({ className }) => className)).toBe('wide');
    expect(minded()).toEqual([]);
  }

  it('is read and judged where the elements come before the page is taken over', async () => {
    await open({ html: await fromServer() });
    await judged();
    await call('hydrate');
    await expectAllRead();
  });

  it('is read and judged where the elements come after it', async () => {
    await open({ head: '', html: await fromServer() });
    await call('hydrate');
    await page.addScriptTag({ url: 'index.js', type: 'module' });
    await expectAllRead();
  });

  it('is read and judged where the browser alone renders it, with a no that is none in HTML', async () => {
    await open();
    await page.waitForFunction(() => customElements.get('brimwise-check'));
    await call('render');
    await expectAllRead();
    expect((await draft('pot')).pot['bail']).toBe(false);
  });

  it('that is rendered again is followed, but for what the reader has typed', async () => {
    await open({ html: await fromServer() });
    await call('hydrate');
    await judged();
    await page.$eval('brimwise-check#block', (element) => element.focus());
    await page.keyboard.type('Mug, ');
    const typed = (await draft('block')).text;
    expect(typed).toContain('Mug, ');
    await page.$eval('#list', (element) => element.shadowRoot!.querySelector<HTMLElement>('.strip input')!.focus());
    await page.keyboard.type('4');
    const { people } = (await draft('list')).trip;

    await call('render', { people: '5', litres: '0.7' });
    await page.waitForFunction(() => document.querySelector<BrimwisePot>('#list')!.draft.text.startsWith('Pot 0.7 L'));
    expect([(await draft('block')).text, (await draft('list')).trip]).toEqual([typed, { people, days: '3' }]);
    expect(await page.$eval('#list', ({ shadowRoot }) => shadowRoot!.activeElement?.localName)).toBe('input');
    const eaters = () => page.$eval('brimwise-verdict', ({ report }) => report!.trip.people);
    expect(await eaters()).toMatchObject({ grounds: 'stated', value: 5 });

    await call('render', { litres: '0.7' });
    await page.waitForFunction(
      () => document.querySelector('brimwise-verdict')!.report!.trip.people.grounds !== 'stated',
    );
    expect((await draft('list')).trip).toEqual({ people, days: '3' });
    expect(minded()).toEqual([]);
  });

  it.each(['hydrate', 'render'] as const)('has what the builder gives for it, by %s', async (way) => {
    const html = way === 'hydrate' ? await renderedOnServer(SNIPPET, {}) : '';
    await open({ head: '', html, script: 'snippet.js' });
    await call(way);
    await judged();
    expect(await page.$eval('brimwise-check', ({ draft }) => [draft.text, draft.pot, draft.trip])).toEqual([
      LIST.replace('\n\n', '\n'),
      { name: 'a "pot" & {c}' },
      { people: '2' },
    ]);
    expect(minded()).toEqual([]);
  });
});
