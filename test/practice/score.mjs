// Reads the practice lists and prints how much of them was read right. `node test/practice/score.mjs [--verbose] [--next] [ids or languages…]`; `--next` takes the next reader.
import { scoreList, sum, recall, precision } from './judge.mjs';
import { bundledReader, practiceLists, prediction } from './predict.mjs';

const percent = (a, b) => (b ? `${((100 * a) / b).toFixed(1)} %` : '–');
const cell = (text, width) => String(text).padStart(width);

function fieldTable(title, counts) {
  console.log(
    `\n${title.padEnd(16)}${cell('stated', 8)}${cell('right', 8)}${cell('missed', 8)}${cell('wrong', 8)}${cell('share', 10)}   not stated  over-read     rate`,
  );
  for (const [name, c] of Object.entries(counts)) {
    const stated = c.right + c.missed + c.wrong;
    const unstated = c.over + c.silent;
    console.log(
      `${name.padEnd(16)}${cell(stated, 8)}${cell(c.right, 8)}${cell(c.missed, 8)}${cell(c.wrong, 8)}${cell(percent(c.right, stated), 10)}   ${cell(unstated, 10)}${cell(c.over, 11)}${cell(percent(c.over, unstated), 9)}`,
    );
  }
}

function row(name, results) {
  if (results.length === 0) return;
  const total = sum(results);
  const capacity = total.fields.capacity_ml;
  const stated = capacity.right + capacity.missed + capacity.wrong;
  console.log(
    `${name.padEnd(16)}${cell(total.lists, 6)}${cell(total.labels, 8)}${cell(total.hits, 7)}${cell(total.falses, 7)}${cell((100 * recall(total)).toFixed(1) + ' %', 10)}${cell((100 * precision(total)).toFixed(1) + ' %', 11)}${cell(percent(capacity.right, stated), 11)}`,
  );
}

const args = process.argv.slice(2);
const verbose = args.includes('--verbose');
const wanted = args.filter((arg) => !arg.startsWith('--'));
const { readList } = await bundledReader(args.includes('--next'));
const lists = practiceLists().filter(
  ({ id, label }) => wanted.length === 0 || wanted.includes(id) || wanted.includes(label.lang),
);
const results = lists.map(({ label, text }) => ({ lang: label.lang, ...scoreList(label, prediction(readList(text))) }));

if (verbose)
  for (const r of results) {
    console.log(`${r.id} ${r.lang}`);
    for (const l of r.missed)
      console.log(`    missed  line ${l.line} ${l.kind}${r.asideWrong.includes(l) ? ' (read as not carried)' : ''}`);
    for (const { p, why } of r.falses) console.log(`    false   line ${p.line} ${p.kind}: ${why}`);
    for (const d of r.details)
      console.log(
        `    ${d.is.padEnd(7)} line ${d.line} ${d.kind} ${d.field}: label ${JSON.stringify(d.label)}, read ${JSON.stringify(d.pred)}`,
      );
  }

console.log(
  `${''.padEnd(16)}${cell('lists', 6)}${cell('labels', 8)}${cell('found', 7)}${cell('false', 7)}${cell('recall', 10)}${cell('precision', 11)}${cell('capacities', 11)}`,
);
for (const lang of [...new Set(results.map((r) => r.lang))].sort())
  row(
    lang,
    results.filter((r) => r.lang === lang),
  );
row(
  'en and de',
  results.filter((r) => r.lang === 'en' || r.lang === 'de'),
);
row('all', results);
const total = sum(results);
console.log(`\nnot in the kit by the labels: ${total.away}, of which set aside: ${total.asideRight}`);
fieldTable('field', total.fields);
fieldTable('hint', total.context);
