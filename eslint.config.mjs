import js from '@eslint/js';
import { defineConfig, globalIgnores } from 'eslint/config';
import { configs as lit } from 'eslint-plugin-lit';
import { configs as wc } from 'eslint-plugin-wc';
import tseslint from 'typescript-eslint';

/** A wall: files under `folder` may not import what matches `group`. */
const wall = (folder, group, message, more = []) => ({
  files: [`${folder}/**/*.ts`],
  rules: {
    'no-restricted-imports': [
      'error',
      {
        patterns: [{ group, message }, ...more],
        paths: [{ name: 'zod', message: "The named import pulls every locale: import * as z from 'zod/mini'." }],
      },
    ],
  },
});

const NO_FACES = ['**/widget/**', '**/extension/**'];
/** Folders of core that `folder` may not see, besides the faces. */
const below = (...names) => [...names.map((name) => `**/${name}/**`), ...NO_FACES];

/** The folders of the next reader in the order of the text's way through them: none sees one after it. */
const readerWalls = (folders) =>
  folders.map((folder, i) =>
    wall(
      `core/reader/${folder}`,
      [
        ...below('kit', 'physics', 'plan', 'checks', 'report', 'input'),
        ...folders.slice(i + 1).map((later) => `../${later}/**`),
        '../read.js',
      ],
      'A text goes from words and tokens to phrases, rows, things, claims and items, and never back.',
    ),
  );

export default defineConfig(
  globalIgnores(['dist/**', 'coverage/**', 'reports/**', '**/*.mjs', '.stryker-tmp/**']),
  js.configs.recommended,
  tseslint.configs.recommendedTypeChecked,
  {
    languageOptions: { parserOptions: { projectService: true, tsconfigRootDir: import.meta.dirname } },
    rules: {
      'no-console': 'error',
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true, allowBoolean: true }],
    },
  },
  {
    files: ['core/**/*.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        ...[
          'window',
          'document',
          'navigator',
          'localStorage',
          'fetch',
          'setTimeout',
          'setInterval',
          'performance',
          'Date',
          'crypto',
        ].map((name) => ({
          name,
          message: 'The core has no DOM, clock, network or randomness: the same input gives the same report.',
        })),
      ],
      'no-restricted-properties': [
        'error',
        { object: 'Math', property: 'random', message: 'The same input gives the same report.' },
      ],
    },
  },
  wall('core', NO_FACES, 'The core knows no face.'),
  wall(
    'core/model',
    below('data', 'reading', 'kit', 'physics', 'plan', 'checks', 'report', 'input'),
    'The model is types only and imports nothing but itself.',
  ),
  wall(
    'core/data',
    below('reading', 'kit', 'physics', 'plan', 'checks', 'report', 'input'),
    'Data are literals: they see the model and nothing else.',
  ),
  wall(
    'core/reading',
    below('kit', 'physics', 'plan', 'checks', 'report', 'input'),
    'Reading text needs the model and the vocabulary, nothing that judges.',
  ),
  wall(
    'core/reader',
    below('kit', 'physics', 'plan', 'checks', 'report', 'input'),
    'Reading text needs the model and the vocabulary, nothing that judges.',
  ),
  ...readerWalls(['words', 'tokens', 'phrases', 'rows', 'things', 'claims', 'items']),
  { files: ['core/reader/**/*.ts'], rules: { complexity: ['error', 25] } },
  wall(
    'core/physics',
    below('reading', 'kit', 'plan', 'checks', 'report', 'input'),
    'Physics are pure functions on numbers: they know no list and no kit.',
  ),
  wall('core/kit', below('plan', 'checks', 'report'), 'The kit is put together before anything is planned or judged.'),
  wall(
    'core/plan',
    below('reading', 'checks', 'report', 'input'),
    'The plan is what checks share; it knows none of them.',
  ),
  wall(
    'core/checks',
    below('reading', 'kit', 'report', 'input'),
    'A check sees the facts it asks for, the physics and the plan, and never another check.',
    [{ regex: '^\\./', message: 'A check never imports another: what two share goes into the plan.' }],
  ),
  wall(
    'core/report',
    below('reading', 'kit', 'physics', 'plan', 'checks', 'input'),
    'The report words what it is given and works nothing out.',
  ),
  wall(
    'widget',
    ['**/core/*/**', '**/extension/**'],
    'A face sees the report: import from core/figures.js, or types from core/index.js.',
  ),
  {
    files: ['widget/**/*.ts'],
    // The letter is a part of what judges, and comes with it.
    ignores: ['widget/judge.ts', 'widget/judge-pot.ts', 'widget/judge-fields.ts', 'widget/views/letter.ts'],
    rules: {
      '@typescript-eslint/no-restricted-imports': [
        'error',
        {
          patterns: [
            {
              group: [
                '**/core/index.js',
                '**/core/english.js',
                '**/core/typed.js',
                '**/core/typed-door.js',
                '**/judge.js',
                '**/judge-*.js',
              ],
              allowTypeImports: true,
              message:
                'What reads and judges comes when there is something to judge: by judging.js. Figures and vocabularies are in core/figures.js.',
            },
          ],
        },
      ],
    },
  },
  wall(
    'extension',
    ['**/core/*/**', '**/widget/*/**'],
    'The extension mounts the elements: import from core/index.js and widget/index.js.',
  ),
  { files: ['core/checks/index.ts'], rules: { 'no-restricted-imports': 'off' } },
  {
    files: ['extension/**/*.ts'],
    ignores: ['extension/browser.ts'],
    rules: {
      'no-restricted-globals': [
        'error',
        { name: 'browser', message: 'extension/browser.ts is the one file that touches the browser API.' },
        { name: 'chrome', message: 'extension/browser.ts is the one file that touches the browser API.' },
      ],
    },
  },
  { files: ['widget/**/*.ts'], ...lit['flat/recommended'] },
  { files: ['widget/**/*.ts'], ...wc['flat/best-practice'] },
  {
    files: ['test/**/*.ts'],
    rules: {
      '@typescript-eslint/no-unused-expressions': 'off',
      // The matchers that stand for a part of a value (expect.stringContaining) are typed as any.
      '@typescript-eslint/no-unsafe-assignment': 'off',
    },
  },
);
