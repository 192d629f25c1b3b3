/**
 * node test/pages/real.mjs TEXTS LABELS [--firefox] [--verbose]: real lists, rendered by kept tools, read from the page in a real browser, and judged beside
 * the reading of their source. The lists are other people's and stay outside the repository.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { launchChromium } from '../../scripts/chromium.mjs';
import { launchFirefox } from '../../scripts/firefox.mjs';
import { ROOT } from '../../scripts/files.mjs';
import { scoreList } from '../practice/judge.mjs';
import { bundledReader, prediction } from '../practice/predict.mjs';
import { align } from './align.mjs';
import { TOOLS } from './tools.mjs';

const args = process.argv.slice(2);
const [texts, labels] = args.filter((arg) => !arg.startsWith('--'));
const option = (/** @type {string} */ name) => args.find((arg) => arg.startsWith(`--${name}`))?.split('=')[1];
const verbose = args.includes('--verbose');
const only = option('only')?.split(',');
const tools = option('tools')?.split(',');

/** Frames around a list, as sites have them; what stands in them is ours. */
const FRAMES = {
  blog: (
    /** @type {string} */ inside,
  ) => `<body><a class="skip-link" style="position:absolute;left:-9999px" href="#content">Skip to content</a>
<header role="banner"><nav><ul><li><a href="#">Home</a></li><li><a href="#">Stoves</a></li><li><a href="#">Pots and pans</a></li></ul></nav></header>
<main id="content"><article><h1>What I carried</h1><div id="list">${inside}</div></article></main>
<aside><h2>Popular</h2><ul><li>Zorvik stove 84 g on sale</li><li>Humblefern pot 1.3 L</li></ul></aside>
<section id="comments"><h2>2 comments</h2><div class="comment"><p>I would bring a kettle 900 ml and a windscreen.</p></div><div class="comment"><p>My mug weighs 60 g.</p></div></section>
<footer><p>© Varn Hollow. Water bottles, stoves and pots.</p></footer></body>`,
  plain: (/** @type {string} */ inside) =>
    `<body><div class="sr-only" style="position:absolute;width:1px;height:1px;overflow:hidden;clip:rect(0,0,0,0)">Skip to content</div><div id="page"><div class="menu" role="navigation"><a href="#">Start</a> <a href="#">Kettles</a></div><div id="list">${inside}</div></div><div id="footer" role="contentinfo">All pots 20 % off</div></body>`,
};

const { outputFiles } = await build({
  absWorkingDir: ROOT,
  stdin: {
    contents:
      "export { selected } from './extension/seen/selection.ts'; export { pageSeen } from './extension/seen/page.ts';",
    resolveDir: ROOT,
    loader: 'ts',
  },
  bundle: true,
  write: false,
  format: 'iife',
  globalName: 'seen',
  footer: { js: 'globalThis.seen = seen;' },
});
const script = outputFiles[0].text;
const { readList } = await bundledReader();

const files = readdirSync(texts).filter((file) => existsLabel(file) && (!only || only.includes(path.parse(file).name)));
function existsLabel(/** @type {string} */ file) {
  return readdirSync(labels).includes(`${path.parse(file).name}.json`);
}

const browser = args.includes('--firefox') ? await launchFirefox() : await launchChromium();
const page = await browser.newPage();
await page.setViewport({ width: 1280, height: 900 });
const started = Date.now();
/** @type {Record<string, { hits: number, falses: number }>} */
const totals = {};
let pages = 0;
const bySource = { labels: 0, hits: 0, falses: 0 };
try {
  for (const file of files) {
    const source = readFileSync(path.join(texts, file), 'utf8');
    const label = JSON.parse(readFileSync(path.join(labels, `${path.parse(file).name}.json`), 'utf8'));
    const plain = scoreList({ traps: [], ...label }, prediction(readList(source)));
    for (const [tool, render] of Object.entries(TOOLS)) {
      if (tools && !tools.includes(tool)) continue;
      const inside = render(source, file);
      if (inside === undefined) continue;
      const frame = FRAMES[pages % 2 === 0 ? 'blog' : 'plain'];
      pages += 1;
      bySource.labels += plain.labels;
      bySource.hits += plain.hits.length;
      bySource.falses += plain.falses.length;
      const html = `<!doctype html><html lang="en">${frame(inside)}</html>`;
      await page.setContent(html, { waitUntil: 'domcontentloaded' });
      await page.evaluate(script);
      const read = await page.evaluate(() => {
        const { seen } = /** @type {any} */ (globalThis);
        const selection = /** @type {Selection} */ (document.getSelection());
        selection.selectAllChildren(/** @type {Element} */ (document.querySelector('#list')));
        const drag = seen.selected()?.text ?? '';
        selection.selectAllChildren(document.body);
        const all = seen.selected()?.text ?? '';
        selection.removeAllRanges();
        return { drag, all, page: seen.pageSeen().text };
      });
      for (const [way, text] of Object.entries(read)) {
        const lines = align(source, text);
        const predicted = prediction(readList(text));
        const items = predicted.items.map((item) => ({ ...item, line: lines[item.line - 1] ?? 0 }));
        const result = scoreList({ traps: [], ...label }, { ...predicted, items });
        const total = (totals[way] ??= { hits: 0, falses: 0 });
        total.hits += result.hits.length;
        total.falses += result.falses.length;
        const lost = plain.hits.filter(({ l }) => !result.hits.some((hit) => hit.l === l));
        const more = result.falses.length - plain.falses.length;
        if (verbose && (lost.length > 0 || more > 0)) {
          console.log(
            `${file} ${tool} ${way}: ${result.hits.length} of ${plain.hits.length}, false ${result.falses.length} (${plain.falses.length})`,
          );
          if (option('show'))
            console.log(
              lost.map(({ l }) => `   lost ${l.line} ${l.kind}: ${source.split('\n')[l.line - 1]}`).join('\n'),
              '\n',
              text.slice(0, Number(option('show'))),
            );
        }
      }
    }
  }
} finally {
  await browser.close();
}
const percent = (/** @type {number} */ a, /** @type {number} */ b) => `${((100 * a) / b).toFixed(1)} %`;
console.log(`${files.length} lists, ${pages} pages, ${((Date.now() - started) / 1000).toFixed(0)} s`);
console.log(`source: ${bySource.hits} of ${bySource.labels}, false ${bySource.falses}`);
for (const [way, { hits, falses }] of Object.entries(totals))
  console.log(`${way}: ${hits} (${percent(hits, bySource.hits)} of the source's), false ${falses}`);
