import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { launchChromium, waitForMatch } from '../../scripts/chromium.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';
import { serve } from '../../scripts/serve.mjs';
import type { BrimwiseCheck } from '../../widget/index.js';
import { watch } from './watch.js';

const CHECK = `<brimwise-check people="2">
  <p>What I carried.</p>
  <ul><li>Pot 1.3 L, 140 x 90 mm, with lid</li><li>Gas stove, screws onto the canister</li><li>Gas 230 g</li><li>foil windscreen</li></ul>
</brimwise-check>`;
const GERMAN = `<brimwise-check id="german" lang="de"><ul><li>Kochtopf 1,3 L mit Deckel</li><li>Gaskocher</li></ul></brimwise-check>`;
const SCRIPT = '<script type="module" src="brimwise.js"></script>';
const STRICT =
  "default-src 'none'; img-src data:; script-src 'self'; style-src 'self'; require-trusted-types-for 'script'";

/** As the libraries of old did to every page. */
const PATCHES = `
Array.prototype.toJSON = function () { return '[' + this.join() + ']'; };
Array.prototype.each = Array.prototype.forEach;
Array.prototype.first = function () { return this[0]; };
Array.from = function (item) { return item == null ? [] : [item]; };
Object.prototype.extend = function (other) { for (var key in other) this[key] = other[key]; return this; };
String.prototype.contains = function (part) { return this.indexOf(part) !== -1; };
String.prototype.toJSON = function () { return '"' + this + '"'; };
Function.prototype.bind = function (self) {
  var wrapped = this, first = Array.prototype.slice.call(arguments, 1);
  return function () { return wrapped.apply(self, first.concat(Array.prototype.slice.call(arguments))); };
};
Element.prototype.remove = function () { throw new Error('patched'); };
Element.prototype.show = Element.prototype.hide = function () { return this; };
window.$ = window.$$ = window.name = window.status = 'taken';
`;

const folder = mkdtempSync(path.join(tmpdir(), 'brimwise-host-'));

beforeAll(() => {
  cpSync(path.join(ROOT, 'dist', 'widget'), folder, { recursive: true });
  const script = readFileSync(path.join(folder, 'index.js'), 'utf8');
  writeFileSync(path.join(folder, 'brimwise.js'), script);
  writeFileSync(path.join(folder, 'another.js'), script.replaceAll('A second opinion.', 'Another version.'));
  writeFileSync(path.join(folder, 'patches.js'), PATCHES);
  writeFileSync(path.join(folder, 'revert.css'), '* { all: revert !important; box-sizing: content-box !important; }');
});
afterAll(() => rmSync(folder, { recursive: true }));

describe.each([
  ['Chromium', () => launchChromium()],
  ['Firefox', () => launchFirefox()],
])('a page with the widget in it, in %s', (_, launch) => {
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

  /** Opens a page of this body; `policy` is its content security policy. */
  async function open(body: string, { head = SCRIPT, policy = '', html = 'lang="en"' } = {}): Promise<void> {
    const meta = policy && `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
    writeFileSync(
      path.join(folder, 'index.html'),
      `<!doctype html><html ${html}><head><meta charset="utf-8">${meta}<title>A post</title><link rel="icon" href="data:,">${head}</head><body><main>${body}</main></body></html>`,
    );
    await page.goto(site.address);
  }

  const judged = () => waitForMatch(page, '[data-check]');
  /** Checks and grades of an element, which need no words. */
  const grades = (selector = 'brimwise-check') =>
    page.$eval(selector, (element) =>
      (element as BrimwiseCheck).report!.findings.map(({ check, grade }) => `${check} ${grade}`),
    );
  const style = (selector: string, name: string) =>
    page.$eval(`>>> ${selector}`, (part, property) => getComputedStyle(part).getPropertyValue(property), name);
  const scrolls = () =>
    page.evaluate(() => document.documentElement.scrollWidth > document.documentElement.clientWidth);

  it('under a strict policy with Trusted Types judges, in its own styles, in another language too, with no complaint', async () => {
    await open(CHECK + GERMAN, { policy: `${STRICT}; trusted-types lit-html` });
    await judged();
    await page.waitForFunction(() => document.querySelector<BrimwiseCheck>('#german')?.report);
    expect(await grades('#german')).toContain('lid holds-up');
    expect(await style('.finding .grade', 'font-weight')).toBe('700');
    expect(await style('.bw', 'box-sizing')).toBe('border-box');
    expect(complaints).toEqual([]);
  });

  it('under a policy that lets no templates be made keeps the writer’s words', async () => {
    await open(CHECK, { policy: `${STRICT}; trusted-types 'none'` });
    await page.waitForFunction(() => document.readyState === 'complete');
    expect(await page.$eval('li', (line) => line.checkVisibility())).toBe(true);
    expect(complaints.length).toBeGreaterThan(0);
  });

  it('whose script is blocked keeps the writer’s words and the list', async () => {
    await open(CHECK, { policy: "script-src 'none'" });
    expect(await page.evaluate(() => document.body.innerText)).toMatch(/What I carried\.\s+Pot 1\.3 L/);
  });

  it('in another language shows no English on the way there, and moves nothing that English does not', async () => {
    const watched = `<script>
      window.seen = new Set();
      window.shifts = 0;
      if (PerformanceObserver.supportedEntryTypes.includes('layout-shift'))
        new PerformanceObserver((list) => list.getEntries().forEach(({ value }) => (shifts += value))).observe({ type: 'layout-shift', buffered: true });
      requestAnimationFrame(function look() {
        const frame = document.querySelector('brimwise-check')?.shadowRoot?.querySelector('.bw');
        if (document.querySelector('li')) seen.add(frame ? frame.lang : document.querySelector('li').checkVisibility() ? 'own' : 'nothing');
        requestAnimationFrame(look);
      });
    </script><style>brimwise-check { display: block; min-block-size: 120rem }</style>`;
    const lookedAt = async (lang: string) => {
      await open(`${CHECK}<p>below</p>`, { html: `lang="${lang}"`, head: watched + SCRIPT });
      await judged();
      await page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));
      return page.evaluate(() => {
        const { seen, shifts } = window as unknown as { seen: Set<string>; shifts: number };
        return { seen: [...seen].filter((what) => what !== 'own'), shifts };
      });
    };
    const english = await lookedAt('en');
    const austrian = await lookedAt('de-AT');
    expect([english.seen, austrian.seen]).toEqual([['en'], ['de-AT']]);
    expect(austrian.shifts).toBeLessThanOrEqual(english.shifts);
    expect(complaints).toEqual([]);
  });

  it('whose words did not come speaks English', async () => {
    const words = path.join(folder, 'words');
    const aside = path.join(folder, 'aside');
    renameSync(words, aside);
    try {
      await open(
        '<brimwise-pot capacity="1.3 L"></brimwise-pot><brimwise-verdict capacity="1.3 L"></brimwise-verdict>',
        { html: 'lang="de"' },
      );
      await judged();
      expect(await page.$eval('>>> .bw', (frame) => frame.getAttribute('lang'))).toBe('en');
      expect(complaints.filter((told) => told.includes('speaks English'))).toHaveLength(1);
    } finally {
      renameSync(aside, words);
    }
  });

  it('that has lost what judges says so beside what is typed, and the writer’s words stand', async () => {
    const judges = readdirSync(folder).filter((file) => file.startsWith('judge-'));
    const aside = path.join(folder, 'aside');
    mkdirSync(aside);
    for (const file of judges) renameSync(path.join(folder, file), path.join(aside, file));
    try {
      await open('<brimwise-check></brimwise-check><brimwise-verdict capacity="1.3 L">Our verdict.</brimwise-verdict>');
      await waitForMatch(page, 'textarea');
      const area = (await page.$('>>> textarea'))!;
      await area.type('Pot 1.3 L');
      await waitForMatch(page, '[role="alert"]');
      expect(await page.$eval('>>> [role="alert"]', ({ textContent }) => textContent)).toContain('did not load');
      expect(await area.evaluate((field) => field.value)).toBe('Pot 1.3 L');
      expect(await page.evaluate(() => document.body.innerText)).toContain('Our verdict.');
      expect(complaints.filter((told) => told.includes('Brimwise judges nothing'))).toHaveLength(1);
    } finally {
      for (const file of judges) renameSync(path.join(aside, file), path.join(folder, file));
      rmSync(aside, { recursive: true });
    }
  });

  it('that reverts every style leaves the inside as it is', async () => {
    await open(`<div id="side">${CHECK}</div>`, { head: `<link rel="stylesheet" href="revert.css">${SCRIPT}` });
    await judged();
    expect([
      await style('.bw', 'box-sizing'),
      await style('.finding', 'position'),
      await style('.tally', 'display'),
    ]).toEqual(['border-box', 'relative', 'flex']);
    expect(await scrolls()).toBe(false);
    expect(complaints).toEqual([]);
  });

  it('whose built-ins are patched gets the same findings', async () => {
    await open(CHECK);
    await judged();
    const plain = await grades();
    await open(CHECK, { head: `<script src="patches.js"></script>${SCRIPT}` });
    await judged();
    const found = await page.$eval('brimwise-check', (element) =>
      element.report!.findings.map(({ check, grade }) => `${check} ${grade}`).join('|'),
    );
    expect(found.replaceAll('"', '').split('|')).toEqual(plain);
    expect(complaints).toEqual([]);
  });

  it('with two copies of two versions keeps the first, and neither complains', async () => {
    await open(CHECK, { head: `${SCRIPT}<script type="module" src="another.js"></script>` });
    await judged();
    expect(await page.$eval('>>> .foot', (foot) => foot.textContent)).toContain('A second opinion.');
    expect(complaints).toEqual([]);
  });

  it('may move, clone and template the element: what was typed goes along, and a clone begins anew', async () => {
    await open(`${CHECK}<aside></aside><template>${CHECK}</template>`);
    await judged();
    const before = await grades();
    await page.$eval('>>> .strip input', (field) => field.focus());
    await page.keyboard.type('5');
    const typed = await page.evaluate(async () => {
      const element = document.querySelector('brimwise-check')!;
      const { people } = element.draft.trip;
      document.querySelector('aside')!.append(element);
      await element.updateComplete;
      return [people, element.draft.trip['people']];
    });
    expect(typed[1]).toBe(typed[0]);
    await page.evaluate(() => {
      const main = document.querySelector('main')!;
      const clone = document.querySelector('brimwise-check')!.cloneNode(true) as Element;
      clone.id = 'clone';
      const fromTemplate = document.querySelector('template')!.content.cloneNode(true) as DocumentFragment;
      fromTemplate.firstElementChild!.id = 'template';
      const host = document.createElement('div');
      host.attachShadow({ mode: 'open' }).append(document.querySelector('template')!.content.cloneNode(true));
      main.append(clone, fromTemplate, host);
    });
    await page.waitForFunction(() =>
      ['#clone', '#template'].every((id) => document.querySelector<BrimwiseCheck>(id)?.report),
    );
    expect([await grades('#clone'), await grades('#template')]).toEqual([before, before]);
    expect(await grades('div >>> brimwise-check')).toEqual(before);
    expect(complaints).toEqual([]);
  });

  it('may hand the element to another document, before or after it was shown, styles and all', async () => {
    await open(`${CHECK}<iframe title="Another document"></iframe>`);
    await judged();
    const looks = await page.evaluate(async () => {
      const inner = document.querySelector('iframe')!.contentDocument!;
      const shown = document.querySelector('brimwise-check')!;
      const fresh = document.createElement('brimwise-check');
      fresh.textContent = 'Pot 1 L';
      inner.body.append(shown, fresh);
      await Promise.all([shown.updateComplete, fresh.updateComplete]);
      return [shown, fresh].map((element) => {
        const frame = element.shadowRoot!.querySelector('.bw')!;
        return [inner.defaultView!.getComputedStyle(frame).boxSizing, element.report !== null];
      });
    });
    expect(looks).toEqual([
      ['border-box', true],
      ['border-box', true],
    ]);
    expect(complaints).toEqual([]);
  });

  it('may hold a hundred', async () => {
    await open(CHECK.repeat(100));
    await page.waitForFunction(() =>
      [...document.querySelectorAll('brimwise-check')].every(
        (element) => element.report && element.shadowRoot!.querySelector('[data-check]'),
      ),
    );
    const found = await page.$$eval(
      'brimwise-check',
      (all) => new Set(all.map((element) => element.report!.summary.headline)).size,
    );
    expect([found, complaints]).toEqual([1, []]);
  });

  it('in Arabic, from right to left, with a narrow side, has no sideways scroll, and words that stand as they are written', async () => {
    await page.setViewport({ width: 1000, height: 800 });
    await open(`<div style="inline-size: 280px">${CHECK}</div>`, { html: 'lang="ar" dir="rtl"' });
    await judged();
    expect(await style('.headline', 'direction')).toBe('ltr');
    const { side, inner } = await page.evaluate(() => {
      const element = document.querySelector('brimwise-check')!;
      return {
        side: element.getBoundingClientRect().width,
        inner: element.shadowRoot!.querySelector('.bw')!.scrollWidth,
      };
    });
    expect([side, inner <= 280, await scrolls()]).toEqual([280, true, false]);
    expect(complaints).toEqual([]);
  });
});
