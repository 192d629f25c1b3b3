import { describe, expect, it } from 'vitest';
import { readList } from '../../core/index.js';
import { PASTED } from './pasted.js';
import { told } from './told.js';

describe.each(PASTED.map((one) => [one.name, one] as const))('%s', (_name, { cases, not }) => {
  it.each(cases.map(([text, items]) => [text, items] as const))('is read: %s', (text, items) => {
    expect(readList(text).items.map(told)).toEqual(items);
  });

  if (not.length > 0)
    it.each(not.map(([text, items]) => [text, items] as const))('leaves alone: %s', (text, items) => {
      expect(readList(text).items.map(told)).toEqual(items);
    });
});
