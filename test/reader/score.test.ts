import { readFileSync, writeFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { LANGUAGES } from '../../core/data/words/index.js';
import { createReader } from '../../core/reader/index.js';
import { readList } from '../../core/reading/index.js';
import { precision, recall, scoreList, sum } from '../practice/judge.mjs';
import { practiceLists, prediction } from '../practice/predict.mjs';

const FILE = new URL('score.json', import.meta.url);

/** What a reader reaches on the practice lists: shares in percent, and of each field what is right, missed, wrong and over-read. */
function scored(read: typeof readList) {
  const total = sum(practiceLists().map(({ label, text }) => scoreList(label, prediction(read(text)))));
  const percent = (share: number) => Number((100 * share).toFixed(1));
  const counts = ({ right, missed, wrong, over }: { right: number; missed: number; wrong: number; over: number }) =>
    `${right} right, ${missed} missed, ${wrong} wrong, ${over} over`;
  return {
    recall: percent(recall(total)),
    precision: percent(precision(total)),
    fields: Object.fromEntries(Object.entries(total.fields).map(([field, one]) => [field, counts(one)])),
    hints: Object.fromEntries(Object.entries(total.context).map(([hint, one]) => [hint, counts(one)])),
  };
}

/** The score itself is held, not a floor: `UPDATE=1` writes it, and a person reads what changed. */
it('reads the practice lists as well as is written down, today and next', () => {
  const score = { today: scored(readList), next: scored(createReader(LANGUAGES).readList) };
  if (process.env['UPDATE'] !== undefined) writeFileSync(FILE, `${JSON.stringify(score, null, 2)}\n`);
  expect(score).toEqual(JSON.parse(readFileSync(FILE, 'utf8')));
});
