/** The core and the widget as the bench runs them: bundled from their source, in memory. */
import path from 'node:path';
import { build } from 'esbuild';
import { ROOT } from '../../scripts/files.mjs';

/**
 * @param {'core' | 'widget'} door
 * @param {'esm' | 'iife'} format
 */
async function bundled(door, format) {
  const { outputFiles } = await build({
    entryPoints: [path.join(ROOT, door, 'index.ts')],
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
  return import('data:text/javascript;base64,' + Buffer.from(await bundled('core', 'esm')).toString('base64'));
}

/** For a page: everything under the global `brimwise`. */
export function scriptOf(door) {
  return bundled(door, 'iife');
}
