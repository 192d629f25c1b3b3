/**
 * node scripts/build.mjs [folder]: everything that is shipped, into dist/ or the folder given. The same sources give the same bytes.
 *
 *   core/              ESM for Node and browsers, with types
 *   widget/            the module, and beside it, for when they are wanted, what judges and the words of other languages; a classic script; a page for iframes
 *   demo/              the page with the widget and a demo list
 *   chrome/ firefox/   the extension, unpacked and readable, and a zip of each
 */
import { execFileSync } from 'node:child_process';
import { cpSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { build as bundle } from 'esbuild';
import { zipSync } from 'fflate';
import { filesIn, ROOT } from './files.mjs';
import { BROWSERS, manifestFor } from './manifest.mjs';
import { buildWidget, sizeTable, waysIn } from './widget.mjs';

/** @type {import('esbuild').BuildOptions} */
const COMMON = {
  absWorkingDir: ROOT,
  bundle: true,
  format: 'esm',
  target: ['es2022', 'chrome120', 'firefox128', 'safari16.4'],
  platform: 'browser',
  charset: 'utf8',
  legalComments: 'none',
  logLevel: 'warning',
};

/**
 * Where every language is there from the start, or English alone is wanted, none is loaded later.
 * @type {import('esbuild').Plugin}
 */
const NO_LANGUAGE_LATER = {
  name: 'no-language-later',
  setup({ onLoad }) {
    onLoad({ filter: /words\/on-demand\.ts$/ }, () => ({ contents: 'export const ON_DEMAND = {};', loader: 'ts' }));
  },
};

/**
 * The scripts that read a page run in it, each alone; the browser hands back what their last statement comes to.
 * @type {import('esbuild').BuildOptions}
 */
export const INJECTED = {
  entryPoints: ['extension/seen/read-selection.ts', 'extension/seen/read-page.ts'],
  format: 'iife',
  globalName: 'seen',
  footer: { js: 'seen.result;' },
};

/** Zip entries cannot go without a time: this one says nothing, and is the same wherever it is built. */
const NO_TIME = new Date(1980, 0, 1);

/**
 * @param {string} out folder to write to
 * @param {{ types?: boolean, fresh?: boolean }} options types: false leaves out the declarations, which take most of the time; fresh: false writes
 *   over what is in the folder instead of emptying it first, so that a page that is open never finds it empty
 */
export async function build(out = path.join(ROOT, 'dist'), { types = true, fresh = true } = {}) {
  if (fresh) rmSync(out, { recursive: true, force: true });
  const to = (/** @type {string[]} */ ...parts) => path.join(out, ...parts);
  const from = (/** @type {string[]} */ ...parts) => path.join(ROOT, ...parts);

  await bundle({ ...COMMON, entryPoints: ['core/index.ts', 'core/schema.ts'], outdir: to('core') });
  await buildWidget(to('widget'), COMMON);
  if (types) {
    const tsc = from('node_modules/typescript/bin/tsc');
    execFileSync(process.execPath, [tsc, '-p', from('tsconfig.build.json'), '--outDir', out], { stdio: 'inherit' });
  }

  cpSync(from('widget/demo'), to('demo'), { recursive: true });
  cpSync(to('widget/index.js'), to('demo/brimwise.js'));
  for (const beside of filesIn(to('widget')).filter((file) => /^(judge-|words\/)/.test(file))) {
    cpSync(to('widget', beside), to('demo', beside));
  }

  const { version } = readJson(from('package.json'));
  const manifest = readJson(from('manifest.json'));
  const kitsSchema = await kitsFileSchema();
  for (const browser of BROWSERS) {
    await bundle({
      ...COMMON,
      entryPoints: [
        'extension/background.ts',
        'extension/popup/popup.ts',
        'extension/panel/panel.ts',
        'extension/page/page.ts',
      ],
      outbase: 'extension',
      outdir: to(browser),
      splitting: true,
      chunkNames: 'shared/[name]-[hash]',
      plugins: [NO_LANGUAGE_LATER],
    });
    await bundle({ ...COMMON, ...INJECTED, outdir: to(browser, 'seen') });
    for (const asset of filesIn(from('extension')).filter(isAsset)) {
      cpSync(from('extension', asset), to(browser, asset));
    }
    writeFileSync(to(browser, 'kits.schema.json'), kitsSchema);
    writeFileSync(
      to(browser, 'manifest.json'),
      JSON.stringify(manifestFor(browser, manifest, version), null, 2) + '\n',
    );
    writeFileSync(to(`brimwise-${version}-${browser}.zip`), zip(to(browser)));
  }
}

/** Pages, styles, icons and texts of the extension go along as they are. */
function isAsset(/** @type {string} */ file) {
  return /\.(html|css|png)$/.test(file) || file.startsWith('_locales/');
}

/** The JSON Schema of the file that kits are exported to. */
async function kitsFileSchema() {
  const { outputFiles } = await bundle({
    ...COMMON,
    entryPoints: ['extension/kits-file.ts'],
    write: false,
    plugins: [NO_LANGUAGE_LATER],
  });
  const { kitsFileJsonSchema } = await import(`data:text/javascript,${encodeURIComponent(outputFiles[0].text)}`);
  return JSON.stringify(kitsFileJsonSchema(), null, 2) + '\n';
}

function readJson(/** @type {string} */ file) {
  return JSON.parse(readFileSync(file, 'utf8'));
}

function zip(/** @type {string} */ folder) {
  const entries = filesIn(folder).map((file) => [file, readFileSync(path.join(folder, file))]);
  return zipSync(Object.fromEntries(entries), { level: 9, mtime: NO_TIME });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const out = process.argv[2] ? path.resolve(process.argv[2]) : path.join(ROOT, 'dist');
  await build(out);
  const ways = waysIn(path.join(out, 'widget'));
  console.log(sizeTable(ways), '\n');
  for (const { file, integrity } of ways) console.log(`${file.padEnd(22)} ${integrity}`);
}
