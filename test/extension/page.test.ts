import path from 'node:path';
import type { Browser, Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';
import { serve } from '../../scripts/serve.mjs';
import { launchChromium, waitForMatch } from '../../scripts/chromium.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';
import { watch } from './watch.js';

describe.each([
  ['Chromium', () => launchChromium()],
  ['Firefox', () => launchFirefox()],
])('the page that npm start serves, in %s', (_, launch) => {
  let browser: Browser;
  let page: Page;
  let site: Awaited<ReturnType<typeof serve>>;

  beforeAll(async () => {
    site = await serve(path.join(ROOT, 'dist', 'demo'));
    browser = await launch();
    page = await browser.newPage();
  });
  afterAll(async () => {
    await browser.close();
    site.close();
  });

  it('shows the findings of the demo list, with no message and no request but for its own files', async () => {
    const { complaints, requests } = watch(page);
    await page.goto(site.address);
    await waitForMatch(page, '[data-check]');
    const list = await page.$eval('>>> textarea', (area) => area.value);
    expect(list.split('\n').length).toBeGreaterThan(3);
    expect(complaints).toEqual([]);
    expect(requests).toContain(site.address);
    expect(requests.filter((url) => !url.startsWith(site.address) && !url.startsWith('data:'))).toEqual([]);
  });
});
