/** The core as the bench runs it: bundled from its source, in memory. */
import path from 'node:path';
import { build } from 'esbuild';
import { ROOT } from '../../scripts/files.mjs';

/** @param {'esm' | 'iife'} format */
async function bundled(format) {
  const { outputFiles } = await build({
    entryPoints: [path.join(ROOT, 'core', 'index.ts')],
    bundle: true,
    minify: true,
    format,
    globalName: format === 'iife' ? 'brimwise' : undefined,
    write: false,
    logLevel: 'error',
  });
  return outputFiles[0].text;
}

export async function importCore() {
  return import('data:text/javascript;base64,' + Buffer.from(await bundled('esm')).toString('base64'));
}

/** For a page: everything under the global `brimwise`. */
export function coreScript() {
  return bundled('iife');
}
