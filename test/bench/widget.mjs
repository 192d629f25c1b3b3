/** npm run bench:widget: what the widget costs a post, beside the same post without it and with the smallest element of the same library. */
import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import path from 'node:path';
import { build } from 'esbuild';
import { launchChromium } from '../../scripts/chromium.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { listOf } from './lists.mjs';
import { THROTTLE, typingMs } from './throttled.mjs';
import { median } from './timing.mjs';

const RUNS = 7;
const LIST = `Humblefern Duo pot 1.3 L, 140 x 90 mm, aluminium, 210 g, with lid
Zorvik Stub gas stove, burner 45 mm, 89 g
gas canister 230 g
2 plastic mugs 450 mL
2 long spoons`;
const FILLING = '<p>We carried the same pot for a week, and it was too small by the second day.</p>';

const smallest = await build({
  stdin: {
    contents: `import { html, LitElement } from 'lit';
      customElements.define('smallest-element', class extends LitElement { render() { return html\`<p>One line.</p>\`; } });`,
    resolveDir: ROOT,
  },
  bundle: true,
  format: 'esm',
  minify: true,
  write: false,
});

/** Each post: what stands in it, and what shows that it is there. */
const POSTS = {
  'without a widget': { body: '', shows: 'p' },
  'smallest element': {
    body: '<smallest-element></smallest-element><script type="module" src="smallest.js"></script>',
    element: 'smallest-element',
    shows: 'p',
  },
  'brimwise-verdict': {
    body: '<style>brimwise-verdict:not(:defined) { display: block; min-block-size: 40rem }</style><script type="module" src="index.js"></script><brimwise-verdict capacity="1.1 L" diameter="140" height="90" people="2"><p>A verdict.</p></brimwise-verdict>',
    element: 'brimwise-verdict',
    shows: '[part~=headline]',
  },
  'brimwise-check': {
    body: `<style>brimwise-check:not(:defined) { display: block; min-block-size: 60rem }</style><script type="module" src="index.js"></script><brimwise-check people="2" days="3"><pre>${LIST}</pre></brimwise-check>`,
    element: 'brimwise-check',
    shows: '[part~=headline]',
  },
};

const server = createServer((request, response) => {
  const name = decodeURIComponent((request.url ?? '/').slice(1));
  const post = POSTS[name];
  if (post !== undefined) {
    response.setHeader('content-type', 'text/html; charset=utf-8');
    response.end(
      `<!doctype html><html lang="en"><title>A post</title><body>${FILLING}${post.body}${FILLING.repeat(20)}</body></html>`,
    );
  } else if (name.endsWith('.js')) {
    response.setHeader('content-type', 'text/javascript');
    response.end(
      name === 'smallest.js' ? smallest.outputFiles[0].text : readFileSync(path.join(ROOT, 'dist', 'widget', name)),
    );
  } else response.writeHead(404).end();
});
await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve));
const address = `http://localhost:${server.address().port}/`;

/** One visit on a phone that has not been there before. */
async function visit(browser, name) {
  const { element, shows } = POSTS[name];
  const context = await browser.createBrowserContext();
  try {
    const page = await context.newPage();
    await page.setViewport({ width: 390, height: 844 });
    const session = await page.createCDPSession();
    await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
    await page.evaluateOnNewDocument(
      (tag, part) => {
        window.shift = 0;
        new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) window.shift += entry.value;
        }).observe({ type: 'layout-shift', buffered: true });
        if (tag === undefined) return;
        void customElements.whenDefined(tag).then(() => {
          const upgraded = performance.now();
          const look = () => {
            if (document.querySelector(tag)?.shadowRoot?.querySelector(part))
              window.first = performance.now() - upgraded;
            else requestAnimationFrame(look);
          };
          look();
        });
      },
      element,
      shows,
    );
    await session.send('Performance.enable');
    await page.goto(address + encodeURIComponent(name));
    if (element !== undefined) await page.waitForFunction(() => window.first !== undefined);
    await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 500)));
    const { metrics } = await session.send('Performance.getMetrics');
    const scripts = 1000 * metrics.find(({ name }) => name === 'ScriptDuration').value;
    return { scripts, ...(await page.evaluate(() => ({ first: window.first ?? 0, shift: window.shift }))) };
  } finally {
    await context.close();
  }
}

const browser = await launchChromium();
console.log(`Chromium at ${THROTTLE} × CPU throttle, 390 × 844, median of ${RUNS} first visits\n`);
console.log(
  `${'a post'.padEnd(20)}${'all scripts, ms'.padStart(18)}${'upgrade to result, ms'.padStart(24)}${'layout shift'.padStart(15)}`,
);
for (const name of Object.keys(POSTS)) {
  const visits = [];
  for (let i = 0; i < RUNS; i++) visits.push(await visit(browser, name));
  const of = (key) => median(visits.map((one) => one[key]));
  console.log(
    `${name.padEnd(20)}${of('scripts').toFixed(0).padStart(18)}${of('first').toFixed(0).padStart(24)}${of('shift').toFixed(3).padStart(15)}`,
  );
}
await browser.close();
server.close();

const typing = await typingMs(listOf(200), 20);
console.log(`\nlongest task of a stroke in a list of 200 lines: ${typing.toFixed(0)} ms`);
