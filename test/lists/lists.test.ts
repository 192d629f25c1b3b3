import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { checkList } from '../../core/index.js';
import { remark } from '../../core/report/remark.js';
import { reportSchema } from '../../core/schema.js';

/**
 * Whole lists and what is said of them, as a person would read it. The expected words are our own past output, read and agreed to,
 * and no outside truth: after a change run `UPDATE=1 npx vitest run test/lists` and read the difference.
 */
const here = fileURLToPath(new URL('.', import.meta.url));
const cases = readdirSync(here, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map((entry) => entry.name);

describe('whole lists', () => {
  it('has a dozen of them', () => {
    expect(cases.length).toBeGreaterThanOrEqual(12);
  });

  it.each(cases)('%s', (name) => {
    const text = readFileSync(`${here}${name}/list.txt`, 'utf8');
    const report = checkList(text);
    reportSchema.parse(report);
    const words = remark(report, text);
    const file = `${here}${name}/expected.txt`;
    if (process.env['UPDATE']) writeFileSync(file, words);
    expect(words).toBe(readFileSync(file, 'utf8'));
    expect(words.toLowerCase()).not.toMatch(/\bsafe\b/);
  });

  it.each(cases.filter((name) => name.endsWith('-good')))('%s raises no false alarm', (name) => {
    const { counts } = checkList(readFileSync(`${here}${name}/list.txt`, 'utf8')).summary;
    expect([counts['can-hurt'], counts['falls-short'], counts['costs-you']]).toEqual([0, 0, 0]);
  });
});
