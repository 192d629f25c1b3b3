/** node scripts/icons.mjs: the extension's icons, from extension/icons/brimwise.svg. Their bytes depend on the browser, so they are kept, not built. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import puppeteer from 'puppeteer-core';
import { executableOf, SANDBOX_ARGS } from './browsers.mjs';
import { ROOT } from './files.mjs';

const folder = path.join(ROOT, 'extension', 'icons');
const drawing = readFileSync(path.join(folder, 'brimwise.svg'), 'base64');
const browser = await puppeteer.launch({ executablePath: executableOf('chromium'), args: SANDBOX_ARGS });
const page = await browser.newPage();
for (const size of [16, 32, 48, 128]) {
  await page.setViewport({ width: size, height: size });
  await page.setContent(
    `<style>body{margin:0}img{display:block}</style><img width="${size}" height="${size}" src="data:image/svg+xml;base64,${drawing}">`,
  );
  await page.screenshot({ path: path.join(folder, `${size}.png`), omitBackground: true });
}
await browser.close();
