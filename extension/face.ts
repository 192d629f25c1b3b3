/** What popup and panel share: the element, its draft kept at every stroke, and a sentence where it cannot be kept. */
import type { BrimwiseCheck, Draft } from '../widget/index.js';
import { message } from './browser.js';
import { keepDraft, readDraft } from './draft.js';

/** Puts the kept draft into the page's element, ready to type on. */
export async function mount(): Promise<BrimwiseCheck> {
  const check = byTag('brimwise-check');
  const draft = await readDraft();
  if (draft) check.draft = draft;
  check.addEventListener('brimwise-draft', ({ detail }) => void keep(detail));
  check.focus();
  // Firefox loads a popup before it shows it, and nothing takes the focus until then.
  window.addEventListener('focus', () => {
    if (document.activeElement === document.body) check.focus();
  });
  return check;
}

export async function keep(draft: Draft): Promise<void> {
  const notice = byId('notice');
  try {
    await keepDraft(draft);
    notice.textContent = '';
  } catch (error) {
    notice.textContent = message('draftNotKept', error instanceof Error ? error.message : String(error));
  }
}

export function byId(id: string): HTMLElement {
  const element = document.getElementById(id);
  if (!element) throw new Error(`The page has no #${id}.`);
  return element;
}

function byTag<Name extends keyof HTMLElementTagNameMap>(name: Name): HTMLElementTagNameMap[Name] {
  const element = document.querySelector(name);
  if (!element) throw new Error(`The page has no <${name}>.`);
  return element;
}
