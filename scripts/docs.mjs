/**
 * npm run docs: writes the parts of README.md that are made from the core (the table of checks and the example), and those of widget/README.md that
 * are made from the widget's settings. Run the build first.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';
import { ROOT } from './files.mjs';
import { sizeTable, waysIn } from './widget.mjs';

const README = path.join(ROOT, 'README.md');
const WIDGET_README = path.join(ROOT, 'widget', 'README.md');
const EXAMPLE = path.join(ROOT, 'test', 'lists', 'solo-simmer-small', 'list.txt');

/** @typedef {Pick<typeof import('../core/index.js'), 'CHECKS' | 'checkList' | 'remark'>} Core */

/**
 * README.md as it is, with its made parts written anew.
 * @param {Core} core
 */
export function renderReadme({ CHECKS, checkList, remark }) {
  const list = readFileSync(EXAMPLE, 'utf8').trimEnd();
  const checks = table(
    ['check', 'asks', 'if it fails'],
    CHECKS.map(({ title, asks, costs }) => [title, asks, costs]),
  );
  const example = [
    'The list:',
    fenced(list),
    'What comes back, worded as a remark:',
    fenced(remark(checkList(list), list).trimEnd()),
  ].join('\n\n');
  return between(between(readFileSync(README, 'utf8'), 'checks', checks), 'example', example);
}

/**
 * widget/README.md as it is, with its made parts written anew.
 * @param {Pick<typeof import('../widget/settings.js'), 'SETTINGS' | 'attributeOf' | 'ELEMENTS'> & typeof import('../widget/surface.js')} widget
 */
export function renderWidgetReadme({
  SETTINGS,
  ATTRIBUTES,
  attributeOf,
  ELEMENTS,
  CUSTOM_PROPERTIES,
  PARTS,
  EVENTS,
  MEMBERS,
}) {
  /** @type {(takes: any, example: string) => string} */
  const taken = (takes, example) =>
    takes === 'text' || takes === 'figure'
      ? `\`${example}\``
      : 'several' in takes
        ? `some of ${codes(takes.several)}`
        : codes(takes);
  const settings = Object.entries(SETTINGS).map(([key, setting]) => {
    const name = /** @type {keyof typeof SETTINGS} */ (key);
    const [sets, example] = ATTRIBUTES[name];
    const of = 'on' in setting && setting.on.length < ELEMENTS.length ? setting.on : [];
    return [
      `\`${attributeOf(name)}\``,
      taken(setting.takes, example),
      of.length > 0 ? `${sets} Of ${codes(of.map((on) => `<${on}>`))}.` : sets,
    ];
  });
  /** @type {Record<string, string>} */
  const tables = {
    settings: table(['attribute', 'takes, or an example', 'sets'], settings),
    events: table(['event', '`detail`', 'told'], rows(EVENTS)),
    members: table(['name', 'type', 'what it is'], rows(MEMBERS)),
    properties: table(['property', 'where it is not set', 'sets'], rows(CUSTOM_PROPERTIES, false)),
    parts: table(
      ['part', 'what it is'],
      Object.entries(PARTS).map(([name, words]) => [`\`${name}\``, words]),
    ),
  };
  return Object.entries(tables).reduce(
    (text, [name, made]) => between(text, name, made),
    readFileSync(WIDGET_README, 'utf8'),
  );
}

/** @param {Readonly<Record<string, readonly [string, string]>>} entries */
function rows(entries, typed = true) {
  return Object.entries(entries).map(([name, [second, third]]) => [
    `\`${name}\``,
    typed && second ? `\`${second}\`` : second,
    third,
  ]);
}

/** @param {readonly string[]} words */
function codes(words) {
  return words.map((word) => `\`${word}\``).join(', ');
}

/** @param {readonly string[]} heads @param {readonly (readonly string[])[]} rows */
function table(heads, rows) {
  const line = (/** @type {readonly string[]} */ cells) =>
    `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(heads), line(heads.map(() => '---')), ...rows.map(line)].join('\n');
}

function fenced(/** @type {string} */ text) {
  return ['```text', text, '```'].join('\n');
}

/** @param {string} document @param {string} name @param {string} content */
function between(document, name, content) {
  const start = document.indexOf('-->', document.indexOf(`<!-- ${name}:`)) + '-->'.length;
  const end = document.indexOf(`<!-- /${name} -->`);
  if (!document.includes(`<!-- ${name}:`) || end < start) throw new Error(`There is no place for the ${name}.`);
  return `${document.slice(0, start)}\n${content}\n${document.slice(end)}`;
}

/** The tables of the widget's source, which the build does not keep apart. */
async function widgetTables() {
  const { outputFiles } = await bundle({
    stdin: { contents: "export * from './widget/settings.ts'; export * from './widget/surface.ts';", resolveDir: ROOT },
    bundle: true,
    format: 'esm',
    write: false,
  });
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].contents).toString('base64')}`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  writeFileSync(README, renderReadme(await import(new URL('../dist/core/index.js', import.meta.url).href)));
  const sizes = sizeTable(waysIn(path.join(ROOT, 'dist', 'widget')));
  writeFileSync(WIDGET_README, between(renderWidgetReadme(await widgetTables()), 'sizes', sizes));
}
