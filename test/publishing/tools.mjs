/** The software that is too heavy for the project's own packages: it is installed at the versions below into a folder outside of the repository, and kept there. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { ROOT } from '../../scripts/files.mjs';

/** Where it is kept: `PUBLISHERS` says another folder. */
export const FOLDER = process.env['PUBLISHERS'] ?? path.join(tmpdir(), 'brimwise-publishers');

/** From npm. */
const PACKAGES = {
  '@11ty/eleventy': '3.1.2',
  '@mozilla/readability': '0.6.0',
  astro: '5.18.2',
  jsdom: '29.1.1',
  juice: '11.1.1',
  'rehype-parse': '9.0.1',
  'rehype-sanitize': '6.0.0',
  'rehype-stringify': '10.0.1',
  unified: '11.0.5',
  vitepress: '1.6.4',
};
/** From Debian, as its stable release has them: downloaded and unpacked, and nothing of the machine is changed. */
const DEBIAN = ['hugo', 'jekyll', 'ruby-kramdown', 'php-cli', 'wordpress'];

const NPM = path.join(FOLDER, 'npm');
const UNPACKED = path.join(FOLDER, 'debian', 'root');

/** Installs what is missing. */
export function ensureTools() {
  mkdirSync(NPM, { recursive: true });
  const wanted = JSON.stringify({ private: true, type: 'module', dependencies: PACKAGES }, null, 2);
  const manifest = path.join(NPM, 'package.json');
  if (!existsSync(path.join(NPM, 'node_modules')) || readFileSync(manifest, 'utf8') !== wanted) {
    writeFileSync(manifest, wanted);
    execFileSync('npm', ['install', '--no-audit', '--no-fund', '--no-package-lock'], { cwd: NPM, stdio: 'inherit' });
  }
  if (existsSync(UNPACKED)) return;
  const archives = path.join(FOLDER, 'debian', 'archives');
  mkdirSync(path.join(archives, 'partial'), { recursive: true });
  const download = ['install', '--yes', '--download-only', '--no-install-recommends', '--reinstall'];
  execFileSync('apt-get', [...download, '-o', `Dir::Cache::archives=${archives}/`, ...DEBIAN], { stdio: 'inherit' });
  mkdirSync(UNPACKED);
  for (const archive of readdirSync(archives).filter((file) => file.endsWith('.deb')))
    execFileSync('dpkg-deb', ['--extract', path.join(archives, archive), UNPACKED]);
  // The one path that a package of Ruby holds for certain.
  const sass = path.join(UNPACKED, 'usr/share/rubygems-integration/all/gems/sassc-2.4.0/lib/sassc/native.rb');
  writeFileSync(sass, readFileSync(sass, 'utf8').replace('"/usr/lib/', `"${UNPACKED}/usr/lib/`));
}

const RUBY = ['vendor_ruby', '3.1.0'].map((part) => `${UNPACKED}/usr/lib/ruby/${part}`);
const LIB = `${UNPACKED}/usr/lib/x86_64-linux-gnu`;

/**
 * Runs a program of Debian's.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {{ cwd?: string, input?: string }} [options]
 * @returns {string} what it printed
 */
export function debian(program, args, options = {}) {
  return execFileSync(path.join(UNPACKED, 'usr', 'bin', program), args, {
    ...options,
    encoding: 'utf8',
    stdio: ['pipe', 'pipe', 'inherit'],
    env: {
      ...process.env,
      LD_LIBRARY_PATH: LIB,
      RUBYLIB: [...RUBY, `${LIB}/ruby/3.1.0`, `${LIB}/ruby/vendor_ruby/3.1.0`].join(':'),
      GEM_PATH: [
        'share/rubygems-integration/all',
        'share/rubygems-integration/3.1.0',
        'lib/x86_64-linux-gnu/rubygems-integration/3.1.0',
        'lib/ruby/gems/3.1.0',
      ]
        .map((part) => `${UNPACKED}/usr/${part}`)
        .join(':'),
    },
  });
}

/** WordPress' own filter over a text. @param {'kses' | 'autop'} filter @param {string} html */
export function wordpress(filter, html) {
  const script = path.join(ROOT, 'test', 'publishing', 'wordpress.php');
  return debian('php8.2', [script, path.join(UNPACKED, 'usr', 'share', 'wordpress'), filter], { input: html });
}

/** Runs the command of a package. @param {string} name @param {readonly string[]} args @param {string} cwd */
export function command(name, args, cwd) {
  return execFileSync(path.join(NPM, 'node_modules', '.bin', name), args, {
    cwd,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1' },
  });
}

/** A package. @param {string} name @returns {Promise<any>} */
export async function load(name) {
  const script = path.join(NPM, 'load.mjs');
  if (!existsSync(script)) writeFileSync(script, 'export const load = (name) => import(name);\n');
  return (await import(script)).load(name);
}

/** A new folder beside the packages, where what is built finds them. @param {string} name */
export function siteFolder(name) {
  const folder = path.join(NPM, 'sites', name);
  mkdirSync(folder, { recursive: true });
  return folder;
}

/** @param {string} name of a package @returns {string} */
export const versionOf = (name) => PACKAGES[/** @type {keyof typeof PACKAGES} */ (name)] ?? '';
/** @param {string} name of Debian's @returns {string} */
export function debianVersionOf(name) {
  const file =
    readdirSync(path.join(FOLDER, 'debian', 'archives')).find((archive) => archive.startsWith(`${name}_`)) ?? '';
  return decodeURIComponent(file.split('_')[1] ?? '')
    .replace(/^\d+:/, '')
    .replace(/[-+].*/, '');
}
