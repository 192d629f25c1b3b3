import path from 'node:path';
import puppeteer, { type Browser, type Page } from 'puppeteer-core';
import { executableOf } from '../../scripts/browsers.mjs';
import { ROOT } from '../../scripts/files.mjs';

const ADD_ON = 'brimwise@brimwise.invalid';
/** Where Firefox puts the extension's pages; fixed, so that a test knows. */
const HOST = '6f1b2c34-1111-4222-8333-444455556666';

/** The part of puppeteer's BiDi connection that reaches the browser's own window; it stands outside its typed API. */
interface BidiConnection {
  send(method: string, params: object): Promise<{ result: unknown }>;
}

/** Firefox with the built extension in it, as it is shipped. */
export interface Extended {
  readonly browser: Browser;
  /** Opens a page of the extension in a tab. */
  open(page: string): Promise<Page>;
  /** Runs a script in the document of the browser's own window, as the body of an async function. */
  inWindow(script: string): Promise<unknown>;
}

export function launchFirefox(extra: Parameters<typeof puppeteer.launch>[0] = {}): Promise<Browser> {
  return puppeteer.launch({ browser: 'firefox', executablePath: executableOf('firefox'), ...extra });
}

export async function launchExtended(): Promise<Extended> {
  const browser = await launchFirefox({
    // Gives the test full power over this throw-away profile: its own pages, menus and toolbar.
    args: ['--remote-allow-system-access'],
    extraPrefsFirefox: { 'extensions.webextensions.uuids': JSON.stringify({ [ADD_ON]: HOST }) },
  });
  await browser.installExtension(path.join(ROOT, 'dist', 'firefox'));
  const { connection } = browser as unknown as { connection: BidiConnection };
  const tree = (await connection.send('browsingContext.getTree', { 'moz:scope': 'chrome', maxDepth: 0 })).result as {
    contexts: { url: string; context: string }[];
  };
  const window = tree.contexts.find(({ url }) => url.endsWith('/browser.xhtml'))!.context;
  return {
    browser,
    async open(page) {
      const tab = await browser.newPage();
      const address = `moz-extension://${HOST}/${page}`;
      // This goto never settles: Firefox tells the end of such a load to nobody.
      tab.goto(address, { timeout: 1 }).catch(() => undefined);
      await until(() =>
        tab.evaluate(
          (wanted) => location.href === wanted && document.activeElement?.localName === 'brimwise-check',
          address,
        ),
      );
      return tab;
    },
    async inWindow(script) {
      const { result } = await connection.send('script.evaluate', {
        expression: `(async () => { ${script} })()`,
        target: { context: window },
        awaitPromise: true,
      });
      const outcome = result as { type: string; result?: { value?: unknown }; exceptionDetails?: { text: string } };
      if (outcome.type === 'exception') throw new Error(outcome.exceptionDetails?.text);
      return outcome.result?.value;
    },
  };
}

/** Asks again until it is so. */
export async function until(condition: () => Promise<boolean>): Promise<void> {
  for (let tries = 0; tries < 200; tries += 1) {
    if (await condition().catch(() => false)) return;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`It did not come to be: ${condition.toString()}`);
}
