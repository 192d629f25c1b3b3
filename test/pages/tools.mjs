/** Kept tools that make pages of lists, as they come. Each gives the inside of a page, or nothing where it is not made for such a list. */
import { spawnSync } from 'node:child_process';
import MarkdownIt from 'markdown-it';
import { marked } from 'marked';
import rehypeStringify from 'rehype-stringify';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import remarkRehype from 'remark-rehype';
import { unified } from 'unified';

const markdownIt = new MarkdownIt({ html: true, linkify: true });
const remark = unified()
  .use(remarkParse)
  .use(remarkGfm)
  .use(remarkRehype, { allowDangerousHtml: true })
  .use(rehypeStringify, { allowDangerousHtml: true });

const isProse = (/** @type {string} */ file) => /\.(md|txt)$/.test(file);

/** @type {Record<string, (text: string, file: string) => string | undefined>} */
export const TOOLS = {
  'markdown-it': (text, file) => (isProse(file) ? markdownIt.render(text) : undefined),
  marked: (text, file) => (isProse(file) ? /** @type {string} */ (marked.parse(text, { async: false })) : undefined),
  remark: (text, file) => (isProse(file) ? String(remark.processSync(text)) : undefined),
  pandoc: (text, file) => (isProse(file) ? command('pandoc', ['-f', 'gfm', '-t', 'html'], text) : undefined),
  'cmark-gfm': (text, file) =>
    isProse(file)
      ? command(
          'cmark-gfm',
          ['--unsafe', '-e', 'table', '-e', 'strikethrough', '-e', 'tasklist', '-e', 'autolink'],
          text,
        )
      : undefined,
  'as HTML': (text, file) => (file.endsWith('.html') ? text : undefined),
  'view of values': (text, file) => (file.endsWith('.csv') ? table(text) : undefined),
  'view of code': (text) => code(text),
};

/** Tools that are not there are named by the caller: their pages are missing from the figures. */
function command(/** @type {string} */ name, /** @type {string[]} */ args, /** @type {string} */ input) {
  const { status, stdout } = spawnSync(name, args, { input, encoding: 'utf8' });
  return status === 0 ? stdout : undefined;
}

const escaped = (/** @type {string} */ text) =>
  text.replace(/[&<>]/g, (sign) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;' })[sign] ?? sign);

/** A file of values as code hosts show it: a table with a column of numbers. */
function table(/** @type {string} */ text) {
  const rows = text.trimEnd().split('\n').map(cellsOf);
  const [head = [], ...body] = rows;
  return `<table class="values"><thead><tr><th></th>${head.map((cell) => `<th>${escaped(cell)}</th>`).join('')}</tr></thead><tbody>${body
    .map(
      (cells, at) =>
        `<tr id="L${at + 2}"><td class="number">${at + 1}</td>${cells.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`,
    )
    .join('')}</tbody></table>`;
}

function cellsOf(/** @type {string} */ line) {
  const mark = [';', '\t', ','].find((each) => line.split(each).length > 2) ?? ',';
  /** @type {string[]} */
  const cells = [];
  let cell = '';
  let quoted = false;
  for (const sign of line.replace(/\r$/, '')) {
    if (sign === '"') quoted = !quoted;
    else if (sign === mark && !quoted) {
      cells.push(cell);
      cell = '';
    } else cell += sign;
  }
  return [...cells, cell];
}

/** Any file as code hosts show it: a row a line, its number beside it, which no copy takes along. */
function code(/** @type {string} */ text) {
  return `<table class="code"><tbody>${text
    .split('\n')
    .map(
      (line, at) =>
        `<tr><td class="number" data-line-number="${at + 1}" style="user-select:none">${at + 1}</td><td style="white-space:pre">${escaped(line)}</td></tr>`,
    )
    .join('')}</tbody></table>`;
}
