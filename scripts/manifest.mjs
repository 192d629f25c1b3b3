/** What each browser does not know of manifest.json, as paths; `[value]` is an entry of a list. Everything else is shared. */
const NOT_FOR = {
  chrome: ['background.scripts', 'sidebar_action', 'browser_specific_settings'],
  firefox: ['background.service_worker', 'side_panel', 'permissions[sidePanel]', 'minimum_chrome_version'],
};

/** The browsers the extension is built for. */
export const BROWSERS = /** @type {const} */ (['chrome', 'firefox']);

/**
 * The manifest of one browser, from the one at the root.
 * @param {'chrome' | 'firefox'} browser
 * @param {Record<string, any>} source manifest.json
 * @param {string} version of package.json
 * @returns {Record<string, any>}
 */
export function manifestFor(browser, source, version) {
  const manifest = { ...structuredClone(source), version };
  for (const path of NOT_FOR[browser]) {
    const [, key, inner, entry] = /^(\w+)(?:\.(\w+))?(?:\[(\w+)\])?$/.exec(path);
    if (entry) manifest[key] = manifest[key].filter((/** @type {string} */ value) => value !== entry);
    else if (inner) delete manifest[key][inner];
    else delete manifest[key];
  }
  return manifest;
}
