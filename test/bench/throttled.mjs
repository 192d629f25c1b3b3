/** The core, and the widget, in a Chromium slowed down to the speed of a phone. */
import { launchChromium } from '../../scripts/chromium.mjs';
import { scriptOf } from './core.mjs';
import { median } from './timing.mjs';

export const THROTTLE = 4;

/** Runs on a page of a slowed-down Chromium that has loaded a door. */
async function slowed(door, run) {
  const browser = await launchChromium();
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: await scriptOf(door) });
    const session = await page.createCDPSession();
    await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
    return await run(page);
  } finally {
    await browser.close();
  }
}

/** Median milliseconds of reading each text, and of reading and judging it, once the page has gone through all of them. */
export function throttledMs(texts) {
  return slowed('core', async (page) => {
    const times = await page.evaluate((lists) => {
      const { checkList, readList } = globalThis.brimwise;
      const each = (run) =>
        lists.map((text) => {
          const before = performance.now();
          run(text);
          return performance.now() - before;
        });
      each(readList);
      const read = each(readList);
      each((text) => checkList(text));
      return { read, checked: each((text) => checkList(text)) };
    }, texts);
    return { read: median(times.read), checked: median(times.checked) };
  });
}

/** Time between two strokes: longer than a check takes, so that each stroke is judged on its own. */
const STROKE_MS = 600;
/** Strokes that are not counted: the page has to warm up. */
const FIRST = 5;

/** Median over the strokes, in milliseconds, of the longest task that a stroke in the middle of the list brings the page. */
export function typingMs(text, strokes) {
  return slowed('widget', async (page) => {
    await page.evaluate((list) => {
      const check = document.createElement('brimwise-check');
      check.draft = { ...globalThis.brimwise.EMPTY_DRAFT, text: list };
      document.body.append(check);
    }, text);
    await page.waitForFunction(() => document.querySelector('brimwise-check').renderRoot?.querySelector('.finding'));
    await page.evaluate(
      (at) => {
        const area = document.querySelector('brimwise-check').renderRoot.querySelector('textarea');
        area.focus();
        area.setSelectionRange(at, at);
      },
      text.indexOf('\n', text.length / 2),
    );
    await page.tracing.start({
      categories: ['toplevel', 'devtools.timeline', 'disabled-by-default-devtools.timeline'],
    });
    for (let i = 0; i < FIRST + strokes; i++) {
      await page.keyboard.press('x');
      await new Promise((done) => setTimeout(done, STROKE_MS));
    }
    return median(longestTasks(JSON.parse(Buffer.from(await page.tracing.stop()).toString())).slice(FIRST));
  });
}

/** Of each stroke, the longest task of its thread until the next. */
function longestTasks({ traceEvents }) {
  const strokes = traceEvents.filter(({ name, args }) => name === 'EventDispatch' && args.data?.type === 'keydown');
  const tasks = traceEvents.filter(
    ({ name, tid, pid }) => name === 'RunTask' && tid === strokes[0].tid && pid === strokes[0].pid,
  );
  return strokes.map(({ ts }, i) => {
    const until = strokes[i + 1]?.ts ?? Infinity;
    const own = tasks.filter((task) => task.ts + task.dur > ts && task.ts < until);
    return Math.max(...own.map(({ dur }) => dur)) / 1000;
  });
}
