/** The next reader, bundled from its source in memory, for the scripts that look into it. */
import path from 'node:path';
import { build } from 'esbuild';
import { ROOT } from './files.mjs';

const SOURCE = `
export { LANGUAGES } from './core/data/words/index.js';
export { readList as readToday } from './core/reading/index.js';
export { createReader, RULES, tell } from './core/reader/index.js';
`;

/** What the next reader exports, the languages, and today's `readList` as `readToday`. */
export async function importReader() {
  const { outputFiles } = await build({
    stdin: { contents: SOURCE, resolveDir: path.join(ROOT), loader: 'ts' },
    bundle: true,
    format: 'esm',
    platform: 'neutral',
    write: false,
    logLevel: 'error',
  });
  return import('data:text/javascript;base64,' + Buffer.from(outputFiles[0].text).toString('base64'));
}
