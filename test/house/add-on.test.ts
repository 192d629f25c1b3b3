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
    // The value is the strings of a template literal, under the Trusted Types policy that the manifest names; what a person types is never among them.
    // The two scripts that read a page ask whether the browser has `chrome.dom`; Firefox has not, and is asked for nothing more.
    const shadow = { code: 'UNSUPPORTED_API', text: expect.stringContaining('chrome?.dom?.openOrClosedShadowRoot?.(') };
    expect(found).toEqual([
      shadow,
      shadow,
      { code: 'UNSAFE_VAR_ASSIGNMENT', text: expect.stringMatching(/^return \w+\.innerHTML = \w+, \w+;$/) },
    ]);
  });
});
