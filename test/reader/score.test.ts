import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../core/data/words/index.js';
import { createReader } from '../../core/reader/index.js';
import { readList } from '../../core/reading/index.js';
import { precision, recall, scoreList, sum } from '../practice/judge.mjs';
import { practiceLists, prediction } from '../practice/predict.mjs';

const FILE = new URL('score.json', import.meta.url);

type Shares = Record<string, { right: number; wrong: number; over: number }>;

/** What a reader reaches on the practice lists: shares in percent, and of each field what is right, wrong and over-read. */
function scored(read: typeof readList) {
  const total = sum(practiceLists().map(({ label, text }) => scoreList(label, prediction(read(text)))));
  const percent = (share: number) => Number((100 * share).toFixed(1));
  const fields: Shares = {};
  for (const [field, { right, wrong, over }] of Object.entries({ ...total.fields, ...total.context }))
    fields[field] = { right, wrong, over };
  return { recall: percent(recall(total)), precision: percent(precision(total)), fields };
}

type Score = Record<'today' | 'next', ReturnType<typeof scored>>;

/** The score itself is written down: `UPDATE=1` writes it, and a person reads what changed. Nothing may fall behind it. */
describe.each(['today', 'next'] as const)('%s', (reader) => {
  const own = scored(reader === 'today' ? readList : createReader(LANGUAGES).readList);
  const written = existsSync(FILE) ? (JSON.parse(readFileSync(FILE, 'utf8')) as Score) : undefined;
  if (process.env['UPDATE'] !== undefined)
    writeFileSync(FILE, `${JSON.stringify({ ...written, [reader]: own }, null, 2)}\n`);

  it('finds as much on the practice lists as is written down', () => {
    expect(own.recall).toBeGreaterThanOrEqual(written?.[reader].recall ?? 0);
    expect(own.precision).toBeGreaterThanOrEqual(written?.[reader].precision ?? 0);
  });

  it.each(Object.entries(own.fields))('reads %s as well', (field, { right, wrong, over }) => {
    const before = written?.[reader].fields[field];
    expect(right).toBeGreaterThanOrEqual(before?.right ?? 0);
    expect(wrong + over).toBeLessThanOrEqual(before === undefined ? Infinity : before.wrong + before.over);
  });
});
