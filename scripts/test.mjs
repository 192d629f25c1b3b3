/**
 * npm test: installs if needed, finds or installs the browsers, runs every stage to its end and counts. A stage without tests of its own counts
 * as one; a runner's counts are those it reports itself; a stage that dies, or skips a test, has failed.
 */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { ensureBrowsers } from './browsers.mjs';
import { ROOT } from './files.mjs';
import { ensureInstalled } from './install.mjs';

/** @typedef {{ passed: number, failed: number }} Count */
/** @typedef {{ name: string, script: string, args: string[], report?: { file: string, count: (report: any) => Count } }} Stage */

const REPORTS = path.join(ROOT, 'reports', 'test');

/** The doors without code have no types. */
const ATTW = '--pack . --profile esm-only --exclude-entrypoints'
  .split(' ')
  .concat(['classic.js', 'embed.html', 'custom-elements.json'].map((file) => `./widget/${file}`));

/** @type {Stage[]} */
const STAGES = [
  { name: 'types', script: 'typescript/bin/tsc', args: ['-p', '.'] },
  { name: 'lint', script: 'eslint/bin/eslint.js', args: ['.', '--max-warnings', '0'] },
  { name: 'format', script: 'prettier/bin/prettier.cjs', args: ['--check', '--log-level', 'warn', '.'] },
  { name: 'dead code', script: 'knip/bin/knip.js', args: [] },
  { name: 'build', script: '../scripts/build.mjs', args: [] },
  { name: 'package', script: 'publint/src/cli.js', args: ['--strict'] },
  { name: 'types of the package', script: '@arethetypeswrong/cli/dist/index.js', args: ATTW },
  vitest('core, figures, lists, house', 'core', []),
  {
    name: 'widget in Chromium',
    script: '../scripts/widget-tests.mjs',
    args: [path.join(REPORTS, 'widget.json')],
    report: { file: path.join(REPORTS, 'widget.json'), count: (report) => report },
  },
  vitest('page and extension in real browsers', 'extension', ['--config', 'test/extension/vitest.config.ts']),
];

/** @param {string} name @param {string} key @param {string[]} args @returns {Stage} */
function vitest(name, key, args) {
  const file = path.join(REPORTS, `${key}.json`);
  return {
    name,
    script: 'vitest/vitest.mjs',
    args: ['run', ...args, '--reporter=default', '--reporter=json', `--outputFile.json=${file}`],
    report: {
      file,
      count: (report) => ({
        passed: report.numPassedTests,
        failed: report.numTotalTests - report.numPassedTests,
      }),
    },
  };
}

/** @param {Stage} stage @returns {Count} */
function run({ name, script, args, report }) {
  console.log(`\n── ${name}`);
  const started = Date.now();
  const { status } = spawnSync(process.execPath, [path.join(ROOT, 'node_modules', script), ...args], {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
  });
  const count = report ? read(report) : { passed: status === 0 ? 1 : 0, failed: 0 };
  // An error outside all tests, or a runner that died: the exit code tells, the counts do not.
  if (status !== 0 && count.failed === 0) count.failed = 1;
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  console.log(
    `── ${name}: ${count.failed === 0 ? 'passed' : 'FAILED'} (${count.passed} of ${count.passed + count.failed}, ${seconds} s)`,
  );
  return count;
}

/** @param {NonNullable<Stage['report']>} report @returns {Count} */
function read({ file, count }) {
  try {
    const { passed, failed } = count(JSON.parse(readFileSync(file, 'utf8')));
    return { passed, failed: passed + failed === 0 ? 1 : failed };
  } catch {
    return { passed: 0, failed: 1 };
  }
}

process.env['CI'] ??= 'true';
const counts = prepare() ? STAGES.map(run) : [{ passed: 0, failed: 1 }];
const sum = (/** @type {keyof Count} */ key) => counts.reduce((total, count) => total + count[key], 0);
console.log(`\n${sum('passed')} passed, ${sum('failed')} failed`);
process.exitCode = sum('failed') === 0 ? 0 : 1;

function prepare() {
  try {
    ensureInstalled();
    Object.assign(process.env, ensureBrowsers());
    rmSync(REPORTS, { recursive: true, force: true });
    mkdirSync(REPORTS, { recursive: true });
    return true;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return false;
  }
}
