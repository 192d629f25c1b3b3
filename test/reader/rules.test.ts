import { describe, expect, it } from 'vitest';
import { LANGUAGES } from '../../core/data/words/index.js';
import { createReader, RULES, tell } from '../../core/reader/index.js';

const reader = createReader(LANGUAGES);

describe.each(RULES)('$id', ({ id, examples, not }) => {
  const without = createReader(LANGUAGES, { without: new Set([id]) });

  it.each(examples)('tells of %j', (text, told) => {
    expect(tell(reader.readList(text).items)).toBe(told);
    // A rule without which its example is told the same is no rule.
    expect(tell(without.readList(text).items)).not.toBe(told);
  });

  it.each(not)('leaves %j alone', (text, told) => {
    expect(tell(reader.readList(text).items)).toBe(told);
  });
});

it('has an example and a counter-example for every rule, and every rule a name of its own', () => {
  expect(RULES.filter(({ examples, not }) => examples.length === 0 || not.length === 0)).toEqual([]);
  expect(new Set(RULES.map(({ id }) => id)).size).toBe(RULES.length);
});
