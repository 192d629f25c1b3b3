/** The widget in every way that a page takes it in, with what each costs to load and the hash that a page can hold it to. */
import { createHash } from 'node:crypto';
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { gzipSync } from 'node:zlib';
import { build as bundle, transform } from 'esbuild';
import { filesIn, ROOT } from './files.mjs';

const JUDGE = /^judge-[0-9A-Z]+\.js$/;
const JUDGE_POT = /^judge-pot-[0-9A-Z]+\.js$/;

/**
 * The bundler leaves the text of templates alone: this makes the styles in them as short as it makes style sheets.
 * @param {import('esbuild').BuildOptions['target']} target
 * @returns {import('esbuild').Plugin}
 */
const shortStyles = (target) => ({
  name: 'short-styles',
  setup({ onLoad }) {
    onLoad({ filter: /\.css\.ts$/ }, async ({ path: file }) => {
      const [before = '', styles = '', after, ...more] = readFileSync(file, 'utf8').split('`');
      if (after === undefined || more.length > 0 || styles.includes('${'))
        throw new Error(`${file}: the styles are one template, with nothing to fill in.`);
      const { code } = await transform(styles.replaceAll('\\\\', '\\'), {
        loader: 'css',
        minify: true,
        target,
        charset: 'utf8',
      });
      return { contents: [before, code.trim().replaceAll('\\', '\\\\'), after].join('`'), loader: 'ts' };
    });
  },
});

/**
 * The words that a measure is typed with, written out: the bundler cannot tell that nothing else of a language is asked for.
 * @param {import('esbuild').BuildOptions} common
 * @returns {import('esbuild').Plugin}
 */
const measuresWrittenOut = (common) => ({
  name: 'measures-written-out',
  setup({ onLoad }) {
    onLoad({ filter: /english-measures\.ts$/ }, async ({ path: file }) => {
      const { outputFiles } = await bundle({
        ...common,
        entryPoints: [file],
        write: false,
        outdir: 'measures',
        plugins: [],
      });
      const code = Buffer.from(outputFiles[0]?.contents ?? []).toString('base64');
      const { MEASURES } = await import(`data:text/javascript;base64,${code}`);
      return { contents: `export const MEASURES = ${JSON.stringify(MEASURES)};`, loader: 'js' };
    });
  },
});

/**
 * Where all is in one file, what judges a list judges one pot too.
 * @type {import('esbuild').Plugin}
 */
const oneJudge = {
  name: 'one-judge',
  setup({ onResolve }) {
    onResolve({ filter: /^\.\/judge-pot\.js$/ }, () => ({ path: path.join(ROOT, 'widget', 'judge.ts') }));
  },
};

/**
 * Of the languages that are loaded when they are wanted, those alone that are named, by their tags.
 * @param {readonly string[]} tags
 * @returns {import('esbuild').Plugin}
 */
const languagesOnly = (tags) => ({
  name: 'languages-only',
  setup({ onLoad }) {
    onLoad({ filter: /on-demand\.ts$/ }, ({ path: file }) => ({
      contents: readFileSync(file, 'utf8').replace(/^ {2}(\w+): async .*\n/gm, (line, tag) =>
        tags.includes(tag) ? line : '',
      ),
      loader: 'ts',
    }));
  },
});

/**
 * A module that is built by itself, under a name with its hash: a page that keeps an older file in its cache never joins it to a newer one.
 * @param {Readonly<Record<string, string>>} files as they were built, by the modules as they are imported
 * @returns {import('esbuild').Plugin}
 */
const at = (files) => ({
  name: 'at',
  setup({ onResolve }) {
    onResolve({ filter: /^\./ }, ({ path: asked }) =>
      asked in files ? { path: `./${files[asked]}`, external: true } : undefined,
    );
  },
});

/**
 * The bundler leaves the text of templates alone: their indents become the one space that a page shows. Nothing else that it writes begins a line with two.
 * @param {string} file
 */
function withoutIndents(file) {
  writeFileSync(file, readFileSync(file, 'utf8').replace(/\n {2,}/g, ' '));
}

/**
 * @param {string} out the folder of the widget
 * @param {import('esbuild').BuildOptions} common
 */
export async function buildWidget(out, common) {
  const options = { ...common, minify: true, plugins: [shortStyles(common.target), measuresWrittenOut(common)] };
  const outfile = (/** @type {string} */ name) => path.join(out, name);
  const inParts = { ...options, outdir: out, splitting: true, chunkNames: 'words/[name]-[hash]' };
  // Each by itself: a page loads one of them, in one file.
  for (const part of ['judge', 'judge-pot'])
    await bundle({ ...inParts, entryPoints: [`widget/${part}.ts`], entryNames: '[name]-[hash]' });
  const built = (/** @type {RegExp} */ name) => filesIn(out).find((file) => name.test(file)) ?? '';
  const beside = at({ './judge.js': built(JUDGE), './judge-pot.js': built(JUDGE_POT) });
  await bundle({ ...inParts, entryPoints: ['widget/index.ts'], plugins: [...options.plugins, beside] });
  withoutIndents(outfile('index.js'));
  await bundle({
    ...options,
    entryPoints: ['widget/near.ts'],
    outfile: outfile('near.js'),
    external: ['./index.js'],
    plugins: [beside],
  });
  // A classic script loads nothing later: one for each language that the elements speak, with the reader's words of it, and one with all.
  const spoken = [
    ...readFileSync(path.join(ROOT, 'widget/spoken-on-demand.ts'), 'utf8').matchAll(/^ {2}(\w+): async/gm),
  ];
  const whole = { ...options, plugins: [...options.plugins, oneJudge] };
  const classic = { ...whole, entryPoints: ['widget/index.ts'], format: /** @type {const} */ ('iife') };
  for (const tags of [null, [], ...spoken.map(([, tag = '']) => [tag])]) {
    const file = outfile(tags === null ? 'classic.js' : `classic-${tags[0] ?? 'en'}.js`);
    const plugins = tags === null ? whole.plugins : [...whole.plugins, languagesOnly(tags)];
    await bundle({ ...classic, outfile: file, plugins });
    withoutIndents(file);
  }
  writeFileSync(outfile('embed.html'), await inOneFile('widget/embed/embed', whole));
  writeFileSync(outfile('custom-elements.json'), `${JSON.stringify(await elementsManifest(options), null, 2)}\n`);
  const hashes = Object.fromEntries(waysIn(out).map(({ file, integrity }) => [file, integrity]));
  writeFileSync(
    outfile('builder.html'),
    await inOneFile('widget/builder/builder', { ...whole, define: { HASHES: JSON.stringify(hashes) } }),
  );
}

/** What editors know of the elements: made from the settings. @param {import('esbuild').BuildOptions} options */
async function elementsManifest(options) {
  const { outputFiles } = await bundle({
    ...options,
    stdin: { contents: "export * from './widget/settings.ts'; export * from './widget/surface.ts';", resolveDir: ROOT },
    outfile: 'tables.js',
    write: false,
  });
  const code = Buffer.from(outputFiles[0]?.contents ?? []).toString('base64');
  /** @type {typeof import('../widget/settings.js') & typeof import('../widget/surface.js')} */
  const { ELEMENTS, ATTRIBUTES, settingsOn, attributeOf, CUSTOM_PROPERTIES, PARTS, EVENTS } = await import(
    `data:text/javascript;base64,${code}`
  );
  const events = Object.entries(EVENTS).map(([name, [detail, description]]) => ({
    name,
    description,
    type: { text: `CustomEvent<${detail}>` },
  }));
  const declarations = ELEMENTS.map((tagName) => ({
    kind: 'class',
    customElement: true,
    name: tagName.replace(/(?:^|-)(\w)/g, (_, letter) => letter.toUpperCase()),
    tagName,
    attributes: settingsOn(tagName).map(([name, { takes }]) => ({
      name: attributeOf(name),
      fieldName: name,
      description: ATTRIBUTES[name][0],
      type: {
        text: Array.isArray(takes) ? takes.map((/** @type {string} */ word) => `'${word}'`).join(' | ') : 'string',
      },
    })),
    events: tagName === 'brimwise-verdict' ? [] : events,
    cssProperties: Object.entries(CUSTOM_PROPERTIES).map(([name, [, description]]) => ({ name, description })),
    cssParts: Object.entries(PARTS).map(([name, description]) => ({ name, description })),
  }));
  const module = 'dist/widget/index.js';
  const exports = declarations.flatMap(({ name, tagName }) =>
    [
      { kind: 'js', name },
      { kind: 'custom-element-definition', name: tagName },
    ].map((door) => ({ ...door, declaration: { name, module } })),
  );
  return {
    schemaVersion: '1.0.0',
    modules: [{ kind: 'javascript-module', path: module, declarations, exports }],
  };
}

/**
 * A page with its style and script in it, and a policy that lets these two run and nothing else.
 * @param {string} page without its ending; its script and style sheet are called as it is
 * @param {import('esbuild').BuildOptions} options
 */
async function inOneFile(page, options) {
  const { name } = path.parse(page);
  const { outputFiles } = await bundle({
    ...options,
    entryPoints: [`${page}.ts`],
    outfile: `${name}.js`,
    format: 'iife',
    write: false,
  });
  const script = outputFiles[0]?.text ?? '';
  const { code: style } = await transform(readFileSync(path.join(ROOT, `${page}.css`), 'utf8'), {
    loader: 'css',
    minify: true,
    charset: 'utf8',
  });
  const hash = (/** @type {string} */ text) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`;
  const put = (/** @type {string} */ text, /** @type {string} */ what, /** @type {string} */ by) => {
    if (!text.includes(what)) throw new Error(`${page}.html has no ${what}`);
    return text.replace(what, () => by);
  };
  let html = readFileSync(path.join(ROOT, `${page}.html`), 'utf8');
  html = put(html, "script-src 'self'", `script-src ${hash(script)}`);
  html = put(html, "style-src 'self'", `style-src ${hash(style)}`);
  html = put(html, `<link rel="stylesheet" href="${name}.css" />`, `<style>${style}</style>`);
  return put(html, `<script src="${name}.js"></script>`, `<script>${script}</script>`);
}

/**
 * What the files are for, by their names.
 * @type {readonly { readonly name: string, readonly files: RegExp, readonly purpose: string }[]}
 */
const PURPOSES = [
  { name: 'index.js', files: /^index\.js$/, purpose: 'the module: the elements, all that one types into and sees' },
  {
    name: 'judge-….js',
    files: JUDGE,
    purpose: 'what reads and judges a list, with English words, once there is one to judge',
  },
  {
    name: 'judge-pot-….js',
    files: JUDGE_POT,
    purpose: 'what judges one pot, and reads no list: all that a verdict loads',
  },
  { name: 'near.js', files: /^near\.js$/, purpose: 'loads the module once a widget is near the screen' },
  {
    name: 'words/de-….js',
    files: /^words\/[a-z]{2}-/,
    purpose: 'the words of one more language to read, when a list or its page is in it',
  },
  {
    name: 'words/german-….js',
    files: /^words\/[a-z]{3,}-/,
    purpose: 'all that the elements say in one more language, when they speak it',
  },
  {
    name: 'classic-en.js',
    files: /^classic-en\.js$/,
    purpose: 'the classic script in English',
  },
  {
    name: 'classic-de.js',
    files: /^classic-(?!en)\w+\.js$/,
    purpose: 'the classic script in English and one more language',
  },
  { name: 'classic.js', files: /^classic\.js$/, purpose: 'the classic script, with every language' },
  { name: 'embed.html', files: /^embed\.html$/, purpose: 'the page for an iframe, with every language' },
];

/**
 * @typedef {object} Way
 * @property {string} file
 * @property {string} purpose
 * @property {number} bytes
 * @property {number} zipped with gzip, level 9
 * @property {string} integrity
 */

/** @param {string} folder of the built widget @returns {Way[]} */
export function waysIn(folder) {
  return PURPOSES.flatMap(({ files, purpose }) =>
    filesIn(folder)
      .filter((file) => files.test(file))
      .map((file) => {
        const content = readFileSync(path.join(folder, file));
        return {
          file,
          purpose,
          bytes: content.length,
          zipped: gzipSync(content, { level: 9 }).length,
          integrity: `sha384-${createHash('sha384').update(content).digest('base64')}`,
        };
      }),
  );
}

/** The sizes for a reader: the files of one purpose in one row. @param {Way[]} ways */
export function sizeTable(ways) {
  const rows = PURPOSES.map(({ name, files, purpose }) => {
    const kilobytes = ways.filter(({ file }) => files.test(file)).map(({ zipped }) => zipped / 1000);
    const [least, most] = [Math.min(...kilobytes), Math.max(...kilobytes)].map((size) =>
      size.toFixed(size < 10 ? 1 : 0),
    );
    return `| \`${name}\` | ${least === most ? least : `${least}–${most}`} kB | ${purpose} |`;
  });
  return ['| file | gzip | what it is |', '| --- | --- | --- |', ...rows].join('\n');
}
