/** npm run docs: writes the parts of README.md that are made from the core: the table of checks and the example. Run the build first. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { ROOT } from './files.mjs';

const README = path.join(ROOT, 'README.md');
const EXAMPLE = path.join(ROOT, 'test', 'lists', 'solo-simmer-small', 'list.txt');

/** @typedef {Pick<typeof import('../core/index.js'), 'CHECKS' | 'checkList' | 'remark'>} Core */

/**
 * README.md as it is, with its made parts written anew.
 * @param {Core} core
 */
export function renderReadme({ CHECKS, checkList, remark }) {
  const list = readFileSync(EXAMPLE, 'utf8').trimEnd();
  const table = [
    '| check | asks | if it fails |',
    '| --- | --- | --- |',
    ...CHECKS.map(({ title, asks, costs }) => `| ${title} | ${asks} | ${costs} |`),
  ].join('\n');
  const example = [
    'The list:',
    fenced(list),
    'What comes back, worded as a remark:',
    fenced(remark(checkList(list), list).trimEnd()),
  ].join('\n\n');
  return between(between(readFileSync(README, 'utf8'), 'checks', table), 'example', example);
}

function fenced(/** @type {string} */ text) {
  return ['```text', text, '```'].join('\n');
}

/** @param {string} document @param {string} name @param {string} content */
function between(document, name, content) {
  const start = document.indexOf('-->', document.indexOf(`<!-- ${name}:`)) + '-->'.length;
  const end = document.indexOf(`<!-- /${name} -->`);
  if (!document.includes(`<!-- ${name}:`) || end < start) throw new Error(`README.md has no place for the ${name}.`);
  return `${document.slice(0, start)}\n${content}\n${document.slice(end)}`;
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(README, renderReadme(await import(new URL('../dist/core/index.js', import.meta.url).href)));
}
