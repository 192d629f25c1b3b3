/**
 * npm run release: what is published of the version in package.json, in dist/release: the zips of the build, the npm package, their SHA-256 sums and the
 * notes of that version from CHANGELOG.md. It builds anew and publishes nothing.
 */
import { execFileSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, mkdirSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ROOT } from './files.mjs';
import { ensureInstalled } from './install.mjs';

const DIST = path.join(ROOT, 'dist');
const RELEASE = path.join(DIST, 'release');

try {
  ensureInstalled();
  const { version } = JSON.parse(readFileSync(path.join(ROOT, 'package.json'), 'utf8'));
  requireCommitted();
  const notes = notesOf(version, readFileSync(path.join(ROOT, 'CHANGELOG.md'), 'utf8'));
  // Loaded only now: it needs the packages.
  const { build } = await import('./build.mjs');
  await build();
  mkdirSync(RELEASE);
  for (const zip of readdirSync(DIST).filter((file) => file.endsWith('.zip'))) {
    copyFileSync(path.join(DIST, zip), path.join(RELEASE, zip));
  }
  execFileSync('npm', ['pack', '--silent', '--pack-destination', RELEASE], { cwd: ROOT, stdio: 'inherit' });
  const sums = readdirSync(RELEASE)
    .sort()
    .map(
      (file) =>
        `${createHash('sha256')
          .update(readFileSync(path.join(RELEASE, file)))
          .digest('hex')}  ${file}\n`,
    );
  writeFileSync(path.join(RELEASE, 'SHA256SUMS'), sums.join(''));
  writeFileSync(path.join(RELEASE, 'NOTES.md'), notes);
  console.log(`\nIn dist/release, to be checked with "sha256sum -c SHA256SUMS":\n${sums.join('')}`);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

/** A release holds what is committed, so that anybody can build it again from its tag. */
function requireCommitted() {
  const changed = execFileSync('git', ['status', '--porcelain'], { cwd: ROOT, encoding: 'utf8' });
  if (changed !== '')
    throw new Error(`These files differ from the last commit; commit or undo them first:\n${changed}`);
}

/**
 * The part of the change log under the heading of a version.
 * @param {string} version @param {string} log
 * @throws Error if the version has no heading
 */
function notesOf(version, log) {
  const parts = log.split(/^## /m).slice(1);
  const part = parts.find((text) => text.split('\n', 1)[0]?.trim() === version);
  if (!part)
    throw new Error(`CHANGELOG.md has no heading "## ${version}". Move what is under "## Unreleased" below it.`);
  return `${part.slice(part.indexOf('\n')).trim()}\n`;
}
