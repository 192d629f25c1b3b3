import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { AxeResults } from 'axe-core';
import type { Page } from 'puppeteer-core';
import { ROOT } from '../../scripts/files.mjs';

const AXE = readFileSync(path.join(ROOT, 'node_modules', 'axe-core', 'axe.min.js'), 'utf8');

/** What axe minds in a page as it stands, with the place of each. */
export async function violationsIn(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const { violations } = (await page.evaluate('axe.run()')) as AxeResults;
  return violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html}`));
}
