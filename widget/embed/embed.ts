/**
 * The page for an iframe. Its hash says what it shows, as a form would: `element=brimwise-pot&people=2&state=…`; every other name is an
 * attribute of the element. It keeps nothing, asks for nothing, and tells the page around it how high it is:
 * `{ type: 'brimwise-height', height }`, in px.
 */
import '../index.js';
import type { BrimwiseCheck } from '../check-element.js';
import { carriedBy } from '../link.js';
import { ELEMENTS, type ElementName } from '../settings.js';

const place = document.querySelector('main')!;

async function show(): Promise<void> {
  const { element, state, list, lang, theme, ...attributes } = Object.fromEntries(
    new URLSearchParams(location.hash.slice(1)),
  ) as Record<string, string | undefined>;
  document.documentElement.lang = lang ?? 'en';
  if (theme === 'light' || theme === 'dark') attributes['data-theme'] = theme;
  const shown = document.createElement(
    ELEMENTS.includes(element as ElementName) ? (element as ElementName) : 'brimwise-check',
  ) as BrimwiseCheck;
  // Alone, as a link opens it, it has the first heading of the page.
  if (parent === window) shown.headingLevel = '1';
  for (const [name, value] of Object.entries(attributes)) {
    // A name that is no name of an attribute is left out, as one that no element knows is.
    if (/^[a-z][a-z-]*$/.test(name) && !name.startsWith('on')) shown.setAttribute(name, value ?? '');
  }
  shown.textContent = list ?? '';
  const carried = state === undefined ? null : await carriedBy(state);
  if (carried !== null && 'draft' in carried) shown.draft = carried.draft;
  const told = document.createElement('p');
  told.setAttribute('role', 'status');
  if (carried !== null && 'problem' in carried) told.textContent = carried.problem;
  place.replaceChildren(told, shown);
}

new ResizeObserver(() => {
  parent.postMessage({ type: 'brimwise-height', height: Math.ceil(place.getBoundingClientRect().height) }, '*');
}).observe(place);
addEventListener('hashchange', () => void show());
void show();
