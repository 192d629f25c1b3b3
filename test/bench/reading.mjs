/** npm run bench: how fast lists are read and judged, beside yardsticks in the same run. Figures are this machine's, ratios travel. */
import { HOSTILE, listOf, typed } from './lists.mjs';
import { importCore } from './core.mjs';
import { throttledMs, THROTTLE, typingMs } from './throttled.mjs';
import { cpuMs, warmedMs } from './timing.mjs';
import { jsonOf, RECOGNISERS, splitAndStick } from './yardsticks.mjs';

const { checkList, readList } = await importCore();

/** Lists of so many lines, and how many of them are read. */
const LISTS = { 200: 200, 5000: 15 };
const SIZES_KB = [1, 10, 100, 1000, 10_000];
const show = (name, ms, more = '') => console.log(`${name.padEnd(46)}${ms.toFixed(2).padStart(10)} ms  ${more}`);
const times = (ratio) => `${ratio < 10 ? ratio.toFixed(1) : ratio.toFixed(0)} ×`;

const perLine = {};
for (const [key, runs] of Object.entries(LISTS)) {
  const lines = Number(key);
  const texts = Array.from({ length: runs }, (_none, i) => listOf(lines, i));
  const json = texts.map(jsonOf);
  const of = (run) => warmedMs(runs, run);
  const split = of((i) => splitAndStick(texts[i]));
  const parse = of((i) => JSON.parse(json[i]));
  const read = of((i) => readList(texts[i]));
  const checked = of((i) => checkList(texts[i]));
  const against = (ms) => `${times(ms / split)} split and sticky, ${times(ms / parse)} JSON.parse`;
  console.log(
    `\n${lines} lines, ${(Buffer.byteLength(texts[0]) / 1000).toFixed(0)} kB, ${readList(texts[0]).items.length} things`,
  );
  show('(a) split and one sticky regular expression', split, `finds ${splitAndStick(texts[0])} numbers with a unit`);
  show('(b) JSON.parse', parse);
  show('reading', read, against(read));
  show('reading and checks', checked, against(checked));
  perLine[lines] = checked / lines;
}

const strokes = typed(listOf(200), 200);
const stroke = (run) => warmedMs(strokes.length, (i) => run(strokes[i]));
const split = stroke(splitAndStick);
console.log('\nOne keystroke in a list of 200 lines, all of it read again');
show('reading', stroke(readList), `${times(stroke(readList) / split)} split and sticky`);
show('reading and checks', stroke(checkList), `${times(stroke(checkList) / split)} split and sticky`);

console.log('\nA line, beside general recognisers of quantities (c)');
for (const [name, { lines, read }] of Object.entries(RECOGNISERS)) {
  const own = listOf(lines).split('\n');
  const ms = warmedMs(3, () => own.forEach(read)) / lines;
  show(name, ms, `${times(ms / perLine[5000])} the time of reading and checks`);
}

console.log('\nLinear in the text: reading');
const perKb = SIZES_KB.map((kb) => {
  const texts = Array.from({ length: kb < 1000 ? 1000 / kb : 3 }, (_none, i) =>
    listOf(Math.ceil(kb * 30), i).slice(0, kb * 1000),
  );
  const ms =
    kb < 1000 ? warmedMs(texts.length, (i) => readList(texts[i])) : cpuMs(texts.length, (i) => readList(texts[i]));
  show(`${kb} kB`, ms, `${((1000 * ms) / kb).toFixed(1)} µs a kB`);
  return ms / kb;
});
console.log(`10 MB takes ${times(perKb.at(-1) / perKb[0])} the time a kB that 1 kB does`);

console.log('\nHostile texts: reading');
for (const [name, make] of Object.entries(HOSTILE)) {
  const text = make();
  show(
    name,
    cpuMs(3, () => readList(text)),
  );
}

console.log(`\n200 lines in Chromium at a ${THROTTLE}th of its speed; one frame is 16 ms`);
const throttled = await throttledMs(Array.from({ length: 30 }, (_none, i) => listOf(200, i)));
show('reading', throttled.read);
show('reading and checks', throttled.checked);
show('typing: the longest task that a stroke brings', await typingMs(listOf(200), 20));
