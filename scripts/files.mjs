import { readdirSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the repository. */
export const ROOT = fileURLToPath(new URL('..', import.meta.url));

/**
 * All files under a folder, as sorted paths relative to it with forward slashes.
 * @param {string} folder
 * @returns {string[]}
 */
export function filesIn(folder) {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).replaceAll(path.sep, '/'))
    .sort();
}
