/**
 * npm run rules [TEXTS LABELS]: switches each rule of the next reader off in turn, and prints what it wins and loses on the practice lists, on
 * real lists where a folder of texts and one of labels are given, and on the examples of all rules. Items found and values right, less what is false.
 */
import fs from 'node:fs';
import path from 'node:path';
import { scoreList, sum } from '../test/practice/judge.mjs';
import { practiceLists, prediction } from '../test/practice/predict.mjs';
import { importReader } from './reader.mjs';

const { createReader, LANGUAGES, RULES, tell } = await importReader();
const [texts, labels] = process.argv.slice(2);

/** Lists with labels in a folder of texts and one of labels, by the same names. */
function listsIn(textsDir, labelsDir) {
  return fs.readdirSync(textsDir).flatMap((name) => {
    const label = path.join(labelsDir, `${path.parse(name).name}.json`);
    if (!fs.existsSync(label)) return [];
    const text = fs.readFileSync(path.join(textsDir, name), 'utf8');
    return [{ text, label: { traps: [], ...JSON.parse(fs.readFileSync(label, 'utf8')) } }];
  });
}

const practice = practiceLists();
const real = texts === undefined || labels === undefined ? [] : listsIn(texts, labels);
const examples = RULES.flatMap(({ examples, not }) => [...examples, ...not]);

/** What is right, and what is not, of all labels of some lists. */
function judged(lists, readList) {
  const total = sum(lists.map(({ label, text }) => scoreList(label, prediction(readList(text)))));
  const fields = Object.values(total.fields);
  return {
    right: total.hits + fields.reduce((n, { right }) => n + right, 0),
    wrong: total.falses + fields.reduce((n, { wrong, over }) => n + wrong + over, 0),
  };
}

const measured = (off) => {
  const { readList } = createReader(LANGUAGES, { without: new Set(off) });
  const told = examples.filter(([text, is]) => tell(readList(text).items) === is).length;
  return { practice: judged(practice, readList), real: judged(real, readList), told };
};
const change = (a, b) => `+${Math.max(0, a.right - b.right)} −${Math.max(0, b.right - a.right)}`;
const worse = (a, b) => `${b.wrong - a.wrong >= 0 ? '+' : '−'}${Math.abs(b.wrong - a.wrong)}`;

const all = measured([]);
console.log(
  `${RULES.length} rules; practice: ${all.practice.right} right, ${all.practice.wrong} wrong; real: ${all.real.right} right, ${all.real.wrong} wrong`,
);
console.log(
  `\n${'without'.padEnd(28)}${'practice: right lost'.padStart(22)}${'wrong'.padStart(8)}${'real: right lost'.padStart(20)}${'wrong'.padStart(8)}${'examples lost'.padStart(16)}`,
);
for (const { id } of RULES) {
  const without = measured([id]);
  console.log(
    `${id.padEnd(28)}${change(all.practice, without.practice).padStart(22)}${worse(all.practice, without.practice).padStart(8)}${change(all.real, without.real).padStart(20)}${worse(all.real, without.real).padStart(8)}${String(all.told - without.told).padStart(16)}`,
  );
}
