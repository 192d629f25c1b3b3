import { build as bundle } from 'esbuild';
import type { Frame, Page } from 'puppeteer-core';
import { ROOT } from '../../scripts/files.mjs';
import type * as Keys from '../widget/keys.js';

type View = typeof globalThis & { keys: typeof Keys; stops: Keys.Stop[] };

const { outputFiles } = await bundle({
  absWorkingDir: ROOT,
  entryPoints: ['test/widget/keys.ts'],
  bundle: true,
  format: 'iife',
  globalName: 'keys',
  footer: { js: 'globalThis.keys = keys;' },
  write: false,
});

/** Presses Tab, from where the focus is, through all of a page or of a frame in it. */
export async function walk(page: Page, within: Page | Frame = page): Promise<void> {
  await within.evaluate(outputFiles[0]!.text);
  await within.evaluate(() => {
    (globalThis as View).stops = [];
  });
  const gotOn = () =>
    within.evaluate(() => {
      const { keys, stops } = globalThis as View;
      const stop = keys.stopNow();
      if (stop === null || stops.some(({ element }) => element === stop.element)) return false;
      return stops.push(stop) > 0;
    });
  do await page.keyboard.press('Tab');
  while (await gotOn());
}

/** What was wrong with the last walk. */
export function faultsOfWalk(within: Page | Frame): Promise<string[]> {
  return within.evaluate(() => {
    const { keys, stops } = globalThis as View;
    return keys.faultsOf(stops, keys.everythingIn(document));
  });
}
