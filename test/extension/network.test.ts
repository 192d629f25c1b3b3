import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import type { Page } from 'puppeteer-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import * as chromium from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import * as firefox from '../../scripts/firefox.mjs';

const PAGE = readFileSync(path.join(ROOT, 'test', 'extension', 'pages', 'course.html'));
const ADDRESS = 'http://course.invalid/';

/** Browsers call these on their own account, with or without an extension: updates, the time, the account, their own components. */
const BROWSER_ITSELF =
  /(^|\/\/)((update|clients2|accounts|redirector|optimizationguide-pa|content-autofill|safebrowsing|android)\.(googleapis|google|gvt1)\.com|[\w.-]+\.(mozilla\.(com|net|org)|firefox\.com))[:/]/;

/** A proxy that notes what is asked of it, and has one page to give. */
async function startProxy(): Promise<{ asked: string[]; port: number; server: Server }> {
  const asked: string[] = [];
  const server = createServer((request, response) => {
    asked.push(request.url ?? '');
    if (request.url === ADDRESS) response.writeHead(200, { 'content-type': 'text/html; charset=utf-8' }).end(PAGE);
    else response.writeHead(502).end();
  }).on('connect', (request, socket) => {
    asked.push(request.url ?? '');
    socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { asked, port: (server.address() as AddressInfo).port, server };
}

const selectList = (page: Page) =>
  page.evaluate(() => {
    document.getSelection()!.selectAllChildren(document.querySelector('#list')!);
  });

describe('behind a proxy that records, the extension asks for nothing', () => {
  let proxy: Awaited<ReturnType<typeof startProxy>>;
  beforeAll(async () => {
    proxy = await startProxy();
  });
  afterAll(() => {
    proxy.server.closeAllConnections();
    proxy.server.close();
  });

  /** All that was asked for: the one page that a person opened, and nothing else. */
  const askedFor = () => proxy.asked.splice(0).filter((address) => !BROWSER_ITSELF.test(address));

  it('in Chromium, while a list is typed, judged, taken to the panel, and another one read from a page', async () => {
    const extended = await chromium.launchExtended([
      `--proxy-server=127.0.0.1:${proxy.port}`,
      '--proxy-bypass-list=<-loopback>',
    ]);
    try {
      const page = await extended.browser.newPage();
      await page.goto(ADDRESS);
      const popup = await chromium.openPopup(extended, page);
      await popup.keyboard.type('Pot 600 ml\nupright gas stove 73 g\nfoil windscreen\n');
      await chromium.waitForFindings(popup);
      const opening = extended.browser.waitForTarget((target) => target.url().endsWith('/panel/index.html'));
      await popup.click('#beside');
      const panel = await (await opening).asPage();
      await chromium.waitForFindings(panel);
      await panel.close();
      await page.bringToFront();
      await selectList(page);
      const { tab } = await chromium.pickMenuItem(extended, '');
      await expect.poll(() => tab.$eval('>>> textarea', (area) => area.value)).toContain('\n- Humblefern Duo');
      await chromium.waitForFindings(tab);
      expect(askedFor()).toEqual([ADDRESS]);
    } finally {
      await extended.browser.close();
    }
  });

  it('in Firefox, while a list is typed, judged, and another one read from a page', async () => {
    const extended = await firefox.launchExtended({
      'network.proxy.type': 1,
      'network.proxy.http': '127.0.0.1',
      'network.proxy.http_port': proxy.port,
      'network.proxy.ssl': '127.0.0.1',
      'network.proxy.ssl_port': proxy.port,
      'network.proxy.no_proxies_on': '',
      'network.proxy.allow_hijacking_localhost': true,
    });
    try {
      const own = await extended.open('popup/index.html');
      await own.keyboard.type('Pot 600 ml\nupright gas stove 73 g\nfoil windscreen\n');
      await firefox.until(() => own.evaluate(chromium.hasFindings));
      const page = await extended.browser.newPage();
      await page.goto(ADDRESS);
      await selectList(page);
      await firefox.pickMenuItem(extended, page, '#list li');
      const judged = `(({ document }) => {
        const check = document.querySelector('brimwise-check').shadowRoot;
        return check.querySelector('textarea').value.includes('Humblefern Duo') && check.querySelector('[data-check]') !== null;
      })(browser.extension.getViews({ type: 'sidebar' })[0])`;
      await firefox.until(() => own.evaluate(judged) as Promise<boolean>);
      expect(askedFor()).toEqual([ADDRESS]);
    } finally {
      await extended.browser.close();
    }
  });
});
