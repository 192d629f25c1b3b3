/** The core in a Chromium slowed down to the speed of a phone. */
import { launchChromium } from '../../scripts/chromium.mjs';
import { coreScript } from './core.mjs';

export const THROTTLE = 4;

/** Median milliseconds of reading each text, and of reading and judging it, once the page has gone through all of them. */
export async function throttledMs(texts) {
  const browser = await launchChromium();
  const page = await browser.newPage();
  await page.addScriptTag({ content: await coreScript() });
  const session = await page.createCDPSession();
  await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
  const result = await page.evaluate((lists) => {
    const { checkList, readList } = globalThis.brimwise;
    const median = (run) => {
      const times = lists.map((text) => {
        const before = performance.now();
        run(text);
        return performance.now() - before;
      });
      return times.sort((a, b) => a - b)[Math.floor(times.length / 2)];
    };
    median(readList);
    const read = median(readList);
    median((text) => checkList(text));
    return { read, checked: median((text) => checkList(text)) };
  }, texts);
  await browser.close();
  return result;
}
