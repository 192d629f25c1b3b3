/**
 * The browsers that the tests drive. `node scripts/browsers.mjs [--install]` prints where they are; with --install, and as root on Debian, it
 * installs the missing ones from the system's packages. Uses nothing but Node itself.
 */
import { execFileSync, spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const BROWSERS = {
  chromium: {
    variable: 'CHROME_BIN',
    debianPackage: 'chromium',
    commands: ['chromium', 'chromium-browser', 'google-chrome-for-testing'],
    places: [
      '/Applications/Chromium.app/Contents/MacOS/Chromium',
      '/Applications/Google Chrome for Testing.app/Contents/MacOS/Google Chrome for Testing',
    ],
  },
  firefox: {
    variable: 'FIREFOX_BIN',
    debianPackage: 'firefox-esr',
    commands: ['firefox-esr', 'firefox', 'firefox-developer-edition'],
    places: ['/Applications/Firefox.app/Contents/MacOS/firefox'],
  },
};

/** @typedef {keyof typeof BROWSERS} Browser */

/** Chromium's sandbox does not start for root; everywhere else it stays on. */
export const SANDBOX_ARGS = process.getuid?.() === 0 ? ['--no-sandbox'] : [];

/**
 * The executable of a browser: the one its variable names, or the first that is found.
 * @param {Browser} browser
 * @throws Error that says how to get it where there is none.
 */
export function executableOf(browser) {
  const found = find(browser);
  if (found) return found;
  const { variable, debianPackage } = BROWSERS[browser];
  const how = existsSync('/etc/debian_version')
    ? `as root: apt-get update && apt-get install -y ${debianPackage}`
    : "with your system's package manager";
  throw new Error(`No ${browser} found. Install it (${how}), or set ${variable} to its executable.`);
}

/** Finds all browsers, and installs the missing ones where that can be done; throws as executableOf does where one stays missing. */
export function ensureBrowsers() {
  const names = /** @type {Browser[]} */ (Object.keys(BROWSERS));
  const missing = names.filter((name) => !find(name));
  if (missing.length > 0 && canInstall()) {
    console.log(`Installing ${missing.join(' and ')} …`);
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    const packages = missing.map((name) => BROWSERS[name].debianPackage);
    for (const args of [
      ['update', '-qq'],
      ['install', '-y', '-qq', '--no-install-recommends', ...packages],
    ]) {
      execFileSync('apt-get', args, { stdio: ['ignore', 'inherit', 'inherit'], env });
    }
  }
  return Object.fromEntries(names.map((name) => [BROWSERS[name].variable, executableOf(name)]));
}

/** @param {Browser} browser */
function find(browser) {
  const { variable, commands, places } = BROWSERS[browser];
  const named = process.env[variable];
  if (named) {
    if (runs(named)) return named;
    throw new Error(`${variable} is ${named}, which is no executable file.`);
  }
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return [...commands.flatMap((command) => folders.map((folder) => path.join(folder, command))), ...places].find(runs);
}

function runs(/** @type {string} */ file) {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function canInstall() {
  return (
    existsSync('/etc/debian_version') &&
    process.getuid?.() === 0 &&
    spawnSync('apt-get', ['--version'], { stdio: 'ignore' }).status === 0
  );
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  try {
    if (process.argv.includes('--install')) ensureBrowsers();
    for (const name of /** @type {Browser[]} */ (Object.keys(BROWSERS))) console.log(`${name}: ${executableOf(name)}`);
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exitCode = 1;
  }
}
