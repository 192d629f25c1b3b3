import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ROOT } from './files.mjs';

/** Installs what package-lock.json pins where something of it is missing. Uses nothing but Node itself. */
export function ensureInstalled() {
  const wrong = firstMissing();
  if (!wrong) return;
  console.log(`Installing the packages of package-lock.json (${wrong}) …`);
  const done = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: ROOT,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
  });
  if (done.status !== 0) throw new Error('npm ci failed; its words stand above.');
}

/** What stands in the way of using node_modules as it is; undefined where nothing does. */
function firstMissing() {
  const installed = path.join(ROOT, 'node_modules', '.package-lock.json');
  if (!existsSync(installed)) return 'there is no node_modules';
  const have = packagesOf(installed);
  for (const [name, { version, optional, devOptional, link }] of Object.entries(
    packagesOf(path.join(ROOT, 'package-lock.json')),
  )) {
    if (name === '' || link) continue;
    const got = have[name]?.version;
    // Optional packages belong to other systems, or to this one.
    if (got === undefined && (optional || devOptional)) continue;
    if (got !== version) return `${name} is ${got ?? 'missing'}, ${version} is pinned`;
  }
  return undefined;
}

/** @returns {Record<string, { version: string, optional?: boolean, devOptional?: boolean, link?: boolean }>} */
function packagesOf(/** @type {string} */ lock) {
  return JSON.parse(readFileSync(lock, 'utf8')).packages;
}
