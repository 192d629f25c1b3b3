import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { launchExtended, openPopup, waitForFindings, type Extended } from '../../scripts/chromium.mjs';

/** Chromium calls these on its own account, with or without an extension: updates, the time, the account, its own components. */
const CHROMIUM_ITSELF =
  /(^|\/\/)(update|clients2|accounts|redirector|optimizationguide-pa|content-autofill|safebrowsing|android)\.(googleapis|google|gvt1)\.com[:/]/;

/** A proxy that lets nothing through and notes what was asked of it. */
describe('the extension behind a proxy that records', () => {
  const asked: string[] = [];
  let proxy: Server;
  let chromium: Extended;

  beforeAll(async () => {
    proxy = createServer((request, response) => {
      asked.push(request.url ?? '');
      response.writeHead(502).end();
    }).on('connect', (request, socket) => {
      asked.push(request.url ?? '');
      socket.end('HTTP/1.1 502 Bad Gateway\r\n\r\n');
    });
    await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve));
    const { port } = proxy.address() as AddressInfo;
    chromium = await launchExtended([`--proxy-server=127.0.0.1:${port}`, '--proxy-bypass-list=<-loopback>']);
  });
  afterAll(async () => {
    await chromium.browser.close();
    proxy.close();
  });

  it('asks for nothing while a list is typed, judged and taken to the panel', async () => {
    const page = await chromium.browser.newPage();
    const popup = await openPopup(chromium, page);
    await popup.keyboard.type('Pot 600 ml\nupright gas stove 73 g\nfoil windscreen\n');
    await waitForFindings(popup);
    const opening = chromium.browser.waitForTarget((target) => target.url().endsWith('/panel/index.html'));
    await popup.click('#beside');
    const panel = await (await opening).asPage();
    await waitForFindings(panel);
    expect(asked.filter((address) => !CHROMIUM_ITSELF.test(address))).toEqual([]);
  });

  it('would see a request if there were one', async () => {
    const page = await chromium.browser.newPage();
    await page.goto('http://brimwise.invalid/').catch(() => undefined);
    expect(asked).toContain('http://brimwise.invalid/');
  });
});
