import path from 'node:path';
import puppeteer, { type Browser, type Extension, type Page, type WebWorker } from 'puppeteer-core';
import { executableOf, SANDBOX_ARGS } from '../../scripts/browsers.mjs';
import { ROOT } from '../../scripts/files.mjs';

/** Without these, Chromium calls home on its own account. */
export const QUIET_ARGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** Chromium with the built extension in it, as it is shipped. */
export interface Extended {
  readonly browser: Browser;
  readonly extension: Extension;
  readonly id: string;
  worker(): Promise<WebWorker>;
}

export function launchChromium(args: readonly string[] = []): Promise<Browser> {
  return puppeteer.launch({ executablePath: executableOf('chromium'), args: [...SANDBOX_ARGS, ...QUIET_ARGS, ...args] });
}

export async function launchExtended(args: readonly string[] = []): Promise<Extended> {
  const browser = await puppeteer.launch({
    executablePath: executableOf('chromium'),
    pipe: true,
    enableExtensions: [path.join(ROOT, 'dist', 'chrome')],
    args: [...SANDBOX_ARGS, ...QUIET_ARGS, ...args],
  });
  const background = await browser.waitForTarget(
    (target) => target.type() === 'service_worker' && target.url().endsWith('/background.js'),
  );
  const id = new URL(background.url()).host;
  const extension = (await browser.extensions()).get(id);
  if (!extension) throw new Error('Chromium did not load the extension.');
  return {
    browser,
    extension,
    id,
    async worker() {
      const worker = await background.worker();
      if (!worker) throw new Error('The background is not running.');
      return worker;
    },
  };
}

/** Presses the toolbar button over a page and gives the popup that opens. */
export async function openPopup({ browser, extension }: Extended, over: Page): Promise<Page> {
  await over.bringToFront();
  const opening = browser.waitForTarget((target) => target.url().endsWith('/popup/index.html'));
  await over.triggerExtensionAction(extension);
  const popup = await (await opening).asPage();
  await popup.waitForFunction(() => customElements.get('brimwise-check') !== undefined);
  return popup;
}

/** What a page complains of, and what it asks for; filled as it happens. */
export function watch(page: Page): { complaints: string[]; requests: string[] } {
  const complaints: string[] = [];
  const requests: string[] = [];
  page.on('console', (message) => complaints.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => complaints.push(String(error)));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  page.on('request', (request) => requests.push(request.url()));
  return { complaints, requests };
}
