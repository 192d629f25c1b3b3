import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { filesIn, ROOT } from '../../scripts/files.mjs';

const EXTENSION = path.join(ROOT, 'extension');
const textsOf = (locale: string) =>
  JSON.parse(readFileSync(path.join(EXTENSION, '_locales', locale, 'messages.json'), 'utf8')) as Record<
    string,
    { message: string; placeholders?: Record<string, { content: string }> }
  >;
const english = textsOf('en');

describe('the texts of the extension', () => {
  it('are those that the manifest and the code ask for, no more and no less', () => {
    const code = filesIn(EXTENSION).filter((file) => file.endsWith('.ts'));
    const asking = [
      ...readFileSync(path.join(ROOT, 'manifest.json'), 'utf8').matchAll(/__MSG_(\w+)__/g),
      ...code.flatMap((file) => [
        ...readFileSync(path.join(EXTENSION, file), 'utf8').matchAll(/\b(?:message|way)\(\s*'(\w+)'/g),
      ]),
    ];
    expect([...new Set(asking.map(([, name]) => name))].sort()).toEqual(Object.keys(english).sort());
  });

  it('have the same names and placeholders in every language', () => {
    const shape = (texts: typeof english) =>
      Object.entries(texts)
        .map(([name, { message }]) => `${name} ${(message.match(/\$\w+\$/g) ?? []).join(' ')}`)
        .sort();
    for (const locale of readdirSync(path.join(EXTENSION, '_locales'))) {
      expect(shape(textsOf(locale)), locale).toEqual(shape(english));
    }
  });

  it('fit where the stores show them', () => {
    for (const locale of readdirSync(path.join(EXTENSION, '_locales'))) {
      const { name, description, language } = textsOf(locale);
      expect(name!.message.length, locale).toBeLessThanOrEqual(45);
      expect(description!.message.length, locale).toBeLessThanOrEqual(132);
      expect(language!.message).toBe(locale);
    }
  });
});
