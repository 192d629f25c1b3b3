/** What has become of a snippet in a page that other software made: it works, or its words stand; what was markup never becomes words. */

/** The markup of our snippets, as a reader would see it if it became words. */
const MARKUP = /min-height|display:|brimwise|<\/|\/>|&[a-z]+;|&#|wp:|\{\{|\{%|crossorigin|module/i;

/**
 * @typedef {object} Expected
 * @property {string} element
 * @property {Readonly<Record<string, string>>} attributes
 * @property {readonly string[]} words what a reader sees where no script runs
 * @property {string} [list] what the element judges
 */

/**
 * Looks at a page before any script has run, as a feed or a search engine does.
 * @param {{ innerText: string, inElement: string | null }} seen
 * @param {Expected} expected
 * @returns {string[]} what is wrong; empty where nothing is
 */
export function faultsOfWords({ innerText, inElement }, { words, list = '' }) {
  const flat = (/** @type {string} */ text) => text.replace(/[\s\u00a0]+/g, ' ');
  const lines = list.split('\n').filter((line) => line.trim() !== '');
  const faults = [...words, ...lines]
    .filter((line) => !flat(innerText).includes(flat(line)))
    .map((line) => `the words are lost: ${line}`);
  const markup = MARKUP.exec(innerText);
  if (markup) faults.push(`markup became words: ${innerText.slice(Math.max(0, markup.index - 20), markup.index + 40)}`);
  if (inElement !== null && !flat(inElement).includes(flat(words[0] ?? '')))
    faults.push('the words stand outside of the element');
  return faults;
}

/**
 * Opens the page without scripts, then with them.
 * @param {import('puppeteer-core').Page} page
 * @param {string} address
 * @param {Expected} expected
 * @returns {Promise<{ outcome: 'works' | 'words', faults: string[] }>}
 */
export async function outcomeOf(page, address, expected) {
  await page.setJavaScriptEnabled(false);
  await page.goto(address, { waitUntil: 'load' });
  const seen = await page.evaluate(
    (name) => ({
      innerText: document.body.innerText,
      inElement: document.querySelector(name)?.textContent ?? null,
    }),
    expected.element,
  );
  const faults = faultsOfWords(seen, expected);
  if (seen.inElement === null) return { outcome: 'words', faults };
  await page.setJavaScriptEnabled(true);
  await page.goto(address, { waitUntil: 'load' });
  await page.$eval(expected.element, (element) => element.scrollIntoView());
  const judged = await page
    .waitForFunction(
      (name) => {
        const element = /** @type {any} */ (document.querySelector(name));
        return element?.report && element.shadowRoot.querySelector('[data-check]') !== null;
      },
      { timeout: 15_000 },
      expected.element,
    )
    .then(
      () => true,
      () => false,
    );
  if (!judged) return { outcome: 'words', faults: [...faults, 'the element judges nothing'] };
  const has = await page.$eval(expected.element, (element) => ({
    attributes: Object.fromEntries([...element.attributes].map(({ name, value }) => [name, value])),
    text: /** @type {any} */ (element).draft?.text ?? '',
  }));
  for (const [name, value] of Object.entries(expected.attributes))
    if (has.attributes[name] !== value) faults.push(`${name} became ${has.attributes[name]}`);
  const lines = (/** @type {string} */ text) =>
    text
      .split('\n')
      .filter((line) => line.trim() !== '')
      .join('\n');
  if (expected.list !== undefined && lines(has.text) !== lines(expected.list))
    faults.push(`the list became ${has.text}`);
  return { outcome: 'works', faults };
}
