import { ESLint } from 'eslint';
import { describe, expect, it } from 'vitest';
import { ROOT } from '../../scripts/files.mjs';

/** An import that a wall must stop, written into a file that exists. */
const STOPPED = [
  ['core/model/span.ts', '../data/constants.js'],
  ['core/model/span.ts', '../../widget/index.js'],
  ['core/data/constants.ts', '../physics/water.js'],
  ['core/reading/index.ts', '../kit/index.js'],
  ['core/reading/index.ts', '../physics/water.js'],
  ['core/physics/water.ts', '../reading/index.js'],
  ['core/kit/index.ts', '../plan/index.js'],
  ['core/plan/index.ts', '../checks/index.js'],
  ['core/checks/lid.ts', './hang.js'],
  ['core/checks/lid.ts', '../reading/index.js'],
  ['core/report/format.ts', '../physics/water.js'],
  ['widget/index.ts', '../core/physics/water.js'],
  ['widget/index.ts', '../core/index.js'],
  ['widget/index.ts', '../core/english.js'],
  ['widget/index.ts', './judge.js'],
  ['extension/menu.ts', '../core/reading/index.js'],
] as const;

const PASSED = [
  ['core/reading/index.ts', '../model/span.js'],
  ['core/checks/lid.ts', '../physics/water.js'],
  ['core/checks/index.ts', './lid.js'],
  ['widget/index.ts', '../core/figures.js'],
  ['widget/judge.ts', '../core/english.js'],
  ['extension/menu.ts', '../widget/index.js'],
] as const;

const eslint = new ESLint({ cwd: ROOT, ruleFilter: ({ ruleId }) => ruleId.includes('no-restricted') });

async function complaints(code: string, file: string): Promise<string[]> {
  const [result] = await eslint.lintText(code, { filePath: file });
  return result!.messages.map(({ ruleId, message }) => `${ruleId}: ${message}`);
}

describe('the walls', () => {
  it.each(STOPPED)('stop %s from importing %s, and say why', async (file, imported) => {
    const [complaint, ...more] = await complaints(`import '${imported}';\n`, file);
    expect(complaint).toMatch(/no-restricted-imports: .*restricted.* \w+ .*\.$/s);
    expect(more).toEqual([]);
  });

  it.each(PASSED)('let %s import %s', async (file, imported) => {
    expect(await complaints(`import '${imported}';\n`, file)).toEqual([]);
  });

  it.each([
    ['core/model/span.ts', 'export const now = Date.now();\n'],
    ['core/model/span.ts', 'export const luck = Math.random();\n'],
    ['core/model/span.ts', "export const page = document.querySelector('p');\n"],
    ['extension/menu.ts', 'export const id = chrome.runtime.id;\n'],
    ['core/schema.ts', "import { z } from 'zod';\nexport const s = z;\n"],
    ['core/reading/index.ts', "import { z } from 'zod';\nexport const s = z;\n"],
  ])('stop %s from: %s', async (file, code) => {
    expect((await complaints(code, file)).length).toBeGreaterThan(0);
  });
});
