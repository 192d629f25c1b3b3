/** npm run try:chrome, npm run try:firefox: builds, and opens a browser of its own profile with the extension in it, over a page with lists to select. */
import path from 'node:path';
import { ROOT } from './files.mjs';
import { ensureInstalled } from './install.mjs';

const which = process.argv[2];
ensureInstalled();
// Loaded only now: they need the packages.
const { default: puppeteer } = await import('puppeteer-core');
const { build } = await import('./build.mjs');
const { executableOf, SANDBOX_ARGS } = await import('./browsers.mjs');
const { serve } = await import('./serve.mjs');

/** A window as the person would have it: of their size, and with no banner of automation where it can be left out. */
const WINDOW = /** @type {const} */ ({ headless: false, defaultViewport: null });

const OPEN = {
  chrome: () =>
    puppeteer.launch({
      ...WINDOW,
      executablePath: executableOf('chromium'),
      pipe: true,
      enableExtensions: [path.join(ROOT, 'dist', 'chrome')],
      ignoreDefaultArgs: ['--enable-automation'],
      args: [...SANDBOX_ARGS, '--no-first-run'],
    }),
  async firefox() {
    const browser = await puppeteer.launch({ ...WINDOW, browser: 'firefox', executablePath: executableOf('firefox') });
    await browser.installExtension(path.join(ROOT, 'dist', 'firefox'));
    return browser;
  },
};

/** @param {'chrome' | 'firefox'} name */
async function open(name) {
  if (process.platform === 'linux' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY']) {
    throw new Error(
      'There is no display here (neither DISPLAY nor WAYLAND_DISPLAY is set), so no browser can be shown.',
    );
  }
  console.log('Building …');
  await build();
  const browser = await OPEN[name]();
  const site = await serve(path.join(ROOT, 'test', 'extension', 'pages'));
  const [page = await browser.newPage()] = await browser.pages();
  await page.goto(`${site.address}course.html`);
  console.log(`
Select a list on the page, press the right button over it, and pick "Second opinion on this kit list".
Or press Alt+Shift+K for the popup, Alt+Shift+L for the panel beside the page.
Close the browser, or press Ctrl+C here, to end.`);
  browser.once('disconnected', () => site.close());
}

try {
  if (which !== 'chrome' && which !== 'firefox') throw new Error('Say which: node scripts/try.mjs chrome, or firefox.');
  await open(which);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
