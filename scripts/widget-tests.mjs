/** node scripts/widget-tests.mjs <file>: runs web-test-runner after its config and writes { passed, failed } to the file. */
import { writeFileSync } from 'node:fs';
import { startTestRunner } from '@web/test-runner';

/** @typedef {import('@web/test-runner').TestSuiteResult} Suite */

const [, , file] = process.argv;
const runner = await startTestRunner({ readCliArgs: false, autoExitProcess: false });
const passedAll = await new Promise((resolve) => runner?.on('stopped', resolve));

const sessions = [...(runner?.sessions.all() ?? [])];
const tests = sessions.flatMap((session) => (session.testResults ? testsOf(session.testResults) : []));
const passed = tests.filter((test) => test.passed && !test.skipped).length;
// A file that did not load has no tests, only errors.
const broken = sessions.filter((session) => session.errors.length > 0).length;
const failed = tests.length - passed + broken;
if (file) writeFileSync(file, JSON.stringify({ passed, failed }));
process.exit(passedAll && failed === 0 ? 0 : 1);

/** @param {Suite} suite @returns {Suite['tests']} */
function testsOf(suite) {
  return [...suite.tests, ...suite.suites.flatMap(testsOf)];
}
