import { readFileSync } from 'node:fs';
import path from 'node:path';
import { cmd } from 'web-ext';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';

const FOLDER = path.join(ROOT, 'dist', 'firefox');

describe('the linter of the store, over the build for Firefox', () => {
  it('finds nothing but the template that lit-html makes of our source, and a question for chrome.dom', async () => {
    const { errors, warnings, notices } = await cmd.lint(
      { sourceDir: FOLDER, output: 'none' },
      { shouldExitProgram: false },
    );
    const found = [...errors, ...warnings, ...notices].map(({ code, file = '', line = 0 }) => ({
      code,
      text: readFileSync(path.join(FOLDER, file), 'utf8').split('\n')[line - 1]?.trim(),
    }));
    // What reads a page asks whether the browser has `chrome.dom`; Firefox has not, and is asked for nothing more.
    const isAsked = ({ text = '' }) => text.includes('chrome?.dom?.openOrClosedShadowRoot?.(');
    expect(found.filter((one) => !isAsked(one))).toEqual([
      // The value is the strings of a template literal, under the Trusted Types policy that the manifest names; what a person types is never among them.
      { code: 'UNSAFE_VAR_ASSIGNMENT', text: expect.stringMatching(/^return \w+\.innerHTML = \w+, \w+;$/) },
    ]);
    expect(new Set(found.filter(isAsked).map(({ code }) => code))).toEqual(new Set(['UNSUPPORTED_API']));
  });
});
