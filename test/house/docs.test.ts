import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { CHECKS, checkList, remark } from '../../core/index.js';
import { renderReadme, renderWidgetReadme } from '../../scripts/docs.mjs';
import { attributeOf, ELEMENTS, SETTINGS, type SettingName } from '../../widget/settings.js';
import { ATTRIBUTES, CUSTOM_PROPERTIES, EVENTS, MEMBERS, PARTS } from '../../widget/surface.js';
import { filesIn, ROOT } from '../../scripts/files.mjs';

const readme = readFileSync(path.join(ROOT, 'README.md'), 'utf8');

describe('README and core', () => {
  it('are in step: `npm run docs` changes nothing', () => {
    expect(renderReadme({ CHECKS, checkList, remark })).toBe(readme);
  });

  it('README names every check once', () => {
    for (const { title } of CHECKS) expect(readme.split(`\n| ${title} |`).length - 1, title).toBe(1);
  });
});

describe('the widget’s README', () => {
  const widget = readFileSync(path.join(ROOT, 'widget', 'README.md'), 'utf8');

  it('is in step with the tables of the source: `npm run docs` changes nothing', () => {
    expect(
      renderWidgetReadme({ SETTINGS, ATTRIBUTES, attributeOf, ELEMENTS, CUSTOM_PROPERTIES, EVENTS, MEMBERS, PARTS }),
    ).toBe(widget);
  });

  it('uses no attribute, custom property or part that is not in the tables', () => {
    const attributes = new Set(Object.keys(SETTINGS).map((name) => attributeOf(name as SettingName)));
    const tags = widget.match(/<brimwise-\w+[^>]*>/g)!;
    const used = tags.flatMap((tag) => [...tag.matchAll(/ ([a-z-]+)="/g)].map(([, name]) => name!));
    expect(used.length).toBeGreaterThan(5);
    expect(used.filter((name) => !attributes.has(name))).toEqual([]);
    const properties = widget.match(/--brim-[a-z]+/g)!;
    expect(properties.filter((name) => !(name in CUSTOM_PROPERTIES))).toEqual([]);
    const parts = [...widget.matchAll(/::part\((\w+)\)/g)].map(([, name]) => name!);
    expect(parts.filter((name) => !(name in PARTS))).toEqual([]);
  });
});

describe('the list of checks', () => {
  it('is the folder of checks', () => {
    const files = filesIn(path.join(ROOT, 'core', 'checks')).filter((file) => file !== 'index.ts');
    expect(CHECKS.map(({ id }) => `${id}.ts`).sort()).toEqual(files);
  });

  it('has a test for each', () => {
    const tests = filesIn(path.join(ROOT, 'test', 'core', 'checks'));
    expect(CHECKS.map(({ id }) => `${id}.test.ts`).filter((file) => !tests.includes(file))).toEqual([]);
  });

  it('never calls a thing safe, scores it or shouts', () => {
    for (const { id, title, asks, costs, messages } of CHECKS) {
      for (const words of [title, asks, costs, ...Object.values(messages)]) {
        expect(words, id).not.toMatch(/\bsafe(ly|ty)?\b|!|\bshould\b|\bmust\b|\d\s?\/\s?10\b/i);
      }
    }
  });
});
