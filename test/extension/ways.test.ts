import { createServer, type Server } from 'node:http';
import { readFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import type { Browser, Frame, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { launchChromium } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { EMPTY_DRAFT } from '../../widget/draft.js';
import { stateOf } from '../../widget/link.js';

const LIST = 'Humblefern Duo pot 1.3 L, aluminium, 210 g\nZorvik Stub gas stove, 89 g\ngas canister 230 g';
const POLICY = "default-src 'none'; script-src 'self'; frame-src 'self'";

/** A blog with one post, which has this in it, and the widget's files beside it. */
async function blog(): Promise<{ server: Server; address: string; write: (body: string) => void }> {
  let post = '';
  const server = createServer((request, response) => {
    const name = new URL(request.url ?? '', 'http://localhost').pathname.slice(1);
    const type = name.endsWith('.js') ? 'text/javascript' : 'text/html; charset=utf-8';
    response.setHeader('content-type', type);
    if (name === 'post') response.setHeader('content-security-policy', POLICY);
    if (name === 'favicon.ico') response.writeHead(204).end();
    else response.end(name === 'post' ? post : readFileSync(path.join(ROOT, 'dist', 'widget', name)));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    server,
    address: `http://localhost:${(server.address() as AddressInfo).port}/post`,
    write: (body) => (post = `<!doctype html><html lang="en"><title>A post</title><body>${body}</body></html>`),
  };
}

describe('the ways into a page', () => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof blog>>;
  let page: Page;
  const said: string[] = [];

  beforeAll(async () => {
    browser = await launchChromium();
    site = await blog();
  });
  afterAll(async () => {
    await browser.close();
    site.server.close();
  });
  beforeEach(async () => {
    page = await browser.newPage();
    said.length = 0;
    page.on('console', (message) => said.push(message.text()));
    page.on('pageerror', (error) => said.push(String(error)));
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
  const framed = async (hash: string) => {
    await open(`<iframe title="A second opinion" sandbox="allow-scripts" src="embed.html#${hash}"></iframe>`);
    return page.waitForFrame((frame) => frame.url().includes('embed.html'));
  };

  it('a classic script gives the element under a strict policy', async () => {
    await open(`<brimwise-check>${LIST}</brimwise-check><script src="classic.js"></script>`);
    expect(await headline(page)).toMatch(/\w/);
    expect(said).toEqual([]);
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
    expect(said).toEqual([]);
  });

  it('the page for an iframe works with no origin, and takes its presets from the hash', async () => {
    const frame = await framed('element=brimwise-pot&capacity=1.1+L&diameter=140+mm&people=2&lang=en');
    expect(await headline(frame)).toMatch(/\w/);
    expect(await frame.evaluate(() => self.origin)).toBe('null');
    expect(await frame.$eval('brimwise-pot', (element) => element.getAttribute('people'))).toBe('2');
    expect(said).toEqual([]);
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

  it('says what is wrong with a link that is damaged', async () => {
    const frame = await framed('state=1.eJyr');
    const told = await frame.waitForFunction(() => document.querySelector('[role=status]')?.textContent);
    expect(await told.jsonValue()).toMatch(/cut short or damaged/);
    expect(await frame.$('brimwise-check')).not.toBeNull();
  });

  it('the builder shows what is set in three pages, and gives it to be copied', async () => {
    await page.goto(site.address.replace('post', 'builder.html'));
    const fill = (id: string, value: string) =>
      page.$eval(
        id,
        (field, typed) => {
          (field as HTMLInputElement).value = typed;
          field.dispatchEvent(new Event('change'));
        },
        value,
      );
    await fill('#set-people', '5');
    await fill('#folder', '/files/');
    expect(await page.$$eval('.sample brimwise-check', (all) => all.map((one) => one.getAttribute('people')))).toEqual([
      '5',
      '5',
      '5',
    ]);
    const text = await page.$eval('#h-copy ~ pre', (pre) => pre.textContent);
    expect(text).toContain('<brimwise-check people="5" days="3">');
    expect(text).toContain('src="/files/near.js" integrity="sha384-');
    expect(await headline(page)).toMatch(/\w/);
    expect(said).toEqual([]);
  });

  it('the builder opens a link with a question, and says what is wrong with one', async () => {
    const address = site.address.replace('post', 'builder.html');
    const draft = { ...EMPTY_DRAFT, text: LIST, trip: { people: 7 } };
    await page.goto(`${address}#element=brimwise-check&state=${await stateOf(draft)}`);
    await page.waitForFunction(
      () => document.querySelector<HTMLElement & { draft: unknown }>('.sample brimwise-check') !== null,
    );
    await headline(page);
    expect(await page.$eval('.sample brimwise-check', (element) => element.draft)).toEqual(draft);
    expect(await page.$eval('#list', (field) => (field as HTMLTextAreaElement).value)).toBe(LIST);
    await page.goto(`${address}#state=9.abc`);
    const told = await page.waitForFunction(() => document.querySelector('[role=status]')?.textContent);
    expect(await told.jsonValue()).toMatch(/later version/);
  });

  it('nothing that axe-core finds is wrong with the builder', async () => {
    await page.setBypassCSP(true);
    await page.goto(site.address.replace('post', 'builder.html'));
    await headline(page);
    await page.addScriptTag({ path: path.join(ROOT, 'node_modules/axe-core/axe.min.js') });
    const found = await page.evaluate(async () => {
      const { axe } = window as unknown as { axe: { run: (o: object) => Promise<{ violations: { id: string }[] }> } };
      return (await axe.run({ exclude: '.sample' })).violations.map(({ id }) => id);
    });
    expect(found).toEqual([]);
  });
});
