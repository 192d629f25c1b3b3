import { readFileSync } from 'node:fs';
import path from 'node:path';
import type * as Axe from 'axe-core';
import type { Frame, Page } from 'puppeteer-core';
import { ROOT } from '../../scripts/files.mjs';

const AXE = readFileSync(path.join(ROOT, 'node_modules', 'axe-core', 'axe.min.js'), 'utf8');

/** What axe minds in a page or frame as it stands, with the place of each; the rules in `except` are left out. */
export async function violationsIn(page: Page | Frame, except: readonly string[] = []): Promise<string[]> {
  await page.evaluate(AXE);
  const found = await page.evaluate((left) => {
    // The first heading of a page with a frame stands around the frame.
    const off = self === top ? left : [...left, 'page-has-heading-one'];
    const { axe } = globalThis as unknown as { axe: typeof Axe };
    return axe.run({ rules: Object.fromEntries(off.map((rule) => [rule, { enabled: false }])) });
  }, except);
  return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
