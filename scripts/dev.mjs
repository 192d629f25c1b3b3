/**
 * npm run dev: the page with the widget, rebuilt and reloaded whenever a source file is saved. `npm run dev -- chrome` or `-- firefox` opens a browser
 * as well, with a profile of its own, the extension in it and a page of lists to select from; the extension reloads too.
 */
import { watch } from 'node:fs';
import path from 'node:path';
import { ROOT } from './files.mjs';
import { ensureInstalled } from './install.mjs';

const SOURCES = ['core', 'widget', 'extension', 'manifest.json'];
/** An editor writes a file in several goes; one build does for all of them. */
const SETTLE_MS = 150;
const PREFERRED_PORT = 4173;

ensureInstalled();
// Loaded only now: they need the packages.
const { build } = await import('./build.mjs');
const { executableOf, SANDBOX_ARGS } = await import('./browsers.mjs');
const { serve } = await import('./serve.mjs');
const { cmd } = await import('web-ext');

const TARGETS = /** @type {const} */ ({
  chrome: { target: 'chromium', binary: 'chromiumBinary', browser: 'chromium' },
  firefox: { target: 'firefox-desktop', binary: 'firefox', browser: 'firefox' },
});

const which = process.argv[2];
try {
  if (which !== undefined && !isTarget(which)) throw new Error('Say which browser: npm run dev -- chrome, or firefox.');
  if (which !== undefined) requireDisplay();
  console.log('Building …');
  await build(undefined, { types: false });
  const site = await serve(path.join(ROOT, 'dist', 'demo'), PREFERRED_PORT, { live: true });
  console.log(`The page with the widget: ${site.address}`);
  if (which !== undefined) await openExtended(which);
  rebuildOnChange(site.reload);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}

/** @returns {word is keyof typeof TARGETS} */
function isTarget(/** @type {string} */ word) {
  return Object.hasOwn(TARGETS, word);
}

/** Builds once for each burst of changes, and once more if something changed while it was building. @param {() => void} built */
function rebuildOnChange(built) {
  /** @type {ReturnType<typeof setTimeout> | undefined} */
  let settling;
  let building = false;
  let changed = false;
  const rebuild = async () => {
    if (building) {
      changed = true;
      return;
    }
    building = true;
    changed = false;
    try {
      await build(undefined, { types: false, fresh: false });
      console.log('Built.');
      built();
    } catch (error) {
      // What was built before stays served until the fault is mended; esbuild has printed where it is.
      console.error(error instanceof Error ? error.message : error);
    }
    building = false;
    if (changed) void rebuild();
  };
  for (const source of SOURCES) {
    watch(path.join(ROOT, source), { recursive: true }, () => {
      clearTimeout(settling);
      settling = setTimeout(rebuild, SETTLE_MS);
    });
  }
}

/** @param {keyof typeof TARGETS} name */
async function openExtended(name) {
  const { target, binary, browser } = TARGETS[name];
  const pages = await serve(path.join(ROOT, 'test', 'extension', 'pages'));
  await cmd.run(
    {
      target: [target],
      [binary]: executableOf(browser),
      sourceDir: path.join(ROOT, 'dist', name),
      startUrl: [`${pages.address}course.html`],
      args: target === 'chromium' ? [...SANDBOX_ARGS] : [],
      noInput: true,
      noReload: false,
    },
    { shouldExitProgram: false },
  );
  console.log(`
Select a list on the page, press the right button over it, and pick "Second opinion on this kit list".
Or press Alt+Shift+K for the popup, Alt+Shift+L for the panel beside the page.`);
}

function requireDisplay() {
  if (process.platform === 'linux' && !process.env['DISPLAY'] && !process.env['WAYLAND_DISPLAY']) {
    throw new Error('There is no display (neither DISPLAY nor WAYLAND_DISPLAY is set), so no browser can be shown.');
  }
}
