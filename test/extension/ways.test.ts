import { createServer, type Server } from 'node:http';
import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launchChromium } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';
import { EMPTY_DRAFT } from '../../widget/draft.js';
import { stateOf } from '../../widget/link.js';
import { violationsIn } from './axe.js';
import { faultsOfWalk, walk } from './walk.js';
import { watch } from './watch.js';

const LIST = 'Humblefern Duo pot 1.3 L, aluminium, 210 g\nZorvik Stub gas stove, 89 g\ngas canister 230 g';
const POLICY = "default-src 'none'; script-src 'self'; frame-src 'self'; img-src data:";

/** A blog with one post, which has this in it, and the widget's files beside it. */
async function blog(): Promise<{ server: Server; address: string; write: (body: string) => void }> {
  let post = '';
  const server = createServer((request, response) => {
    const name = new URL(request.url ?? '', 'http://localhost').pathname.slice(1);
    const type = name.endsWith('.js') ? 'text/javascript' : 'text/html; charset=utf-8';
    response.setHeader('content-type', type);
    if (name === 'post') response.setHeader('content-security-policy', POLICY);
    response.end(name === 'post' ? post : readFileSync(path.join(ROOT, 'dist', 'widget', name)));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    server,
    address: `http://localhost:${(server.address() as AddressInfo).port}/post`,
    write: (body) =>
      (post = `<!doctype html><html lang="en"><title>A post</title><link rel="icon" href="data:,"><body>${body}</body></html>`),
  };
}

describe.each([
  ['Chromium', () => launchChromium()],
  ['Firefox', () => launchFirefox()],
])('the ways into a page, in %s', (_, launch) => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof blog>>;
  let page: Page;
  let complaints: string[];

  beforeAll(async () => {
    browser = await launch();
    site = await blog();
  });
  afterAll(async () => {
    await browser.close();
    site.server.close();
  });
  beforeEach(async () => {
    page = await browser.newPage();
    ({ complaints } = watch(page));
  });
  afterEach(() => page.close());

  const open = async (body: string) => {
    site.write(body);
    await page.goto(site.address);
  };
  const headline = (of: Page | Frame) =>
    of
      .waitForFunction(
        () =>
          document
            .querySelector('brimwise-check, brimwise-pot, brimwise-verdict')
            ?.shadowRoot?.querySelector('[part~="headline"]')?.textContent,
      )
      .then((handle) => handle.jsonValue());
  const framed = async (hash: string, before = '', after = '') => {
    const frame = `<iframe title="A second opinion" sandbox="allow-scripts" src="embed.html#${hash}"></iframe>`;
    await open(before + frame + after);
    return page.waitForFrame((frame) => frame.url().includes('embed.html'));
  };

  it('a classic script gives the element under a strict policy', async () => {
    await open(`<brimwise-check>${LIST}</brimwise-check><script src="classic.js"></script>`);
    expect(await headline(page)).toMatch(/\w/);
    expect(complaints).toEqual([]);
  });

  it('the module loads only once the reader comes near, and the text stands until then', async () => {
    await open(
      `<div><svg width="1" height="6000"></svg></div><brimwise-check>${LIST}</brimwise-check><script type="module" src="near.js"></script>`,
    );
    const loaded = () => page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 300)));
    expect((await loaded()).filter((name) => name.endsWith('/index.js'))).toEqual([]);
    await page.evaluate(() => document.querySelector('brimwise-check')!.scrollIntoView());
    expect(await headline(page)).toMatch(/\w/);
    expect((await loaded()).filter((name) => name.endsWith('/index.js'))).toHaveLength(1);
    expect(complaints).toEqual([]);
  });

  it('the module comes for an element that the page gets later, too', async () => {
    await open('<script type="module" src="near.js"></script>');
    await page.evaluate((list) => {
      document.body.innerHTML = `<brimwise-check>${list}</brimwise-check>`;
    }, LIST);
    expect(await headline(page)).toMatch(/\w/);
    expect(complaints).toEqual([]);
  });

  it('the page for an iframe works with no origin, and takes its presets from the hash', async () => {
    const frame = await framed('element=brimwise-pot&capacity=1.1+L&diameter=140+mm&people=2&lang=en');
    expect(await headline(frame)).toMatch(/\w/);
    expect(await frame.evaluate(() => self.origin)).toBe('null');
    await expect(frame.evaluate(() => localStorage.length)).rejects.toThrow(/sandboxed/);
    expect(await frame.$eval('brimwise-pot', (element) => element.getAttribute('people'))).toBe('2');
    expect(complaints).toEqual([]);
  });

  it('tells the page around the iframe how high it is', async () => {
    await page.evaluateOnNewDocument(() => {
      addEventListener('message', ({ data }) => Object.assign(window, { told: data as unknown }));
    });
    const frame = await framed('element=brimwise-pot&capacity=1.1+L');
    await headline(frame);
    const height = () => frame.$eval('main', (main) => Math.ceil(main.getBoundingClientRect().height));
    await page.waitForFunction(
      (high) => (window as { told?: { height: number } }).told?.height === high,
      {},
      await height(),
    );
    const told = await page.evaluate(() => (window as { told?: unknown }).told);
    expect(told).toEqual({ type: 'brimwise-height', height: await height() });
  });

  it('opens a link with a whole question in it', async () => {
    const draft = { ...EMPTY_DRAFT, text: LIST, trip: { people: 3, days: 4 } };
    const frame = await framed(`state=${await stateOf(draft)}`);
    await headline(frame);
    expect(await frame.$eval('brimwise-check', (element) => element.draft)).toEqual(draft);
  });

  it.each([
    ['damaged', '1.eJyr', /cut short or damaged/],
    ['of a later version', '9.abc', /later version/],
  ])('says what is wrong with a link that is %s', async (_what, state, sentence) => {
    const frame = await framed(`state=${state}`);
    const told = await frame.waitForFunction(() => document.querySelector('[role=status]')?.textContent);
    expect(await told.jsonValue()).toMatch(sentence);
    expect(await frame.$('brimwise-check')).not.toBeNull();
    expect(complaints).toEqual([]);
  });

  it('the page for an iframe may stand alone', async () => {
    await page.goto(site.address.replace('post', `embed.html#list=${encodeURIComponent(LIST)}`));
    expect(await headline(page)).toMatch(/\w/);
    expect(complaints).toEqual([]);
    expect(await violationsIn(page)).toEqual([]);
  });

  describe.each([
    ['nothing to judge', ''],
    ['a list', `list=${encodeURIComponent(LIST)}`],
    ['one pot', 'element=brimwise-pot&capacity=1.1+L&diameter=140&height=90&people=2'],
    ['a verdict', 'element=brimwise-verdict&capacity=1.1+L&diameter=140&people=2'],
    ['a link that is damaged', 'state=1.eJyr'],
  ])('the page for an iframe with %s', (_what, hash) => {
    it('is one in which axe minds nothing', async () => {
      const frame = await framed(hash);
      await frame.waitForSelector('brimwise-check, brimwise-pot, brimwise-verdict');
      expect(await violationsIn(frame)).toEqual([]);
    });

    it('is walked by keys alone, and let go', async () => {
      const frame = await framed(hash, '<button id="before">Before</button>', '<button id="after">After</button>');
      await frame.waitForSelector('brimwise-check, brimwise-pot, brimwise-verdict');
      await page.focus('#before');
      await walk(page, frame);
      expect(await page.evaluate(() => document.activeElement?.id)).toBe('after');
      expect(await faultsOfWalk(frame)).toEqual([]);
    });
  });
});
