/** What popup, panel and page share: the element, its draft kept at every stroke, and a sentence where it cannot be kept. */
// Every language at once: nothing is loaded later.
import '../core/index.js';
import { loadJudge } from '../widget/judging.js';
import type { BrimwiseCheck, Draft } from '../widget/index.js';
import { message, openPage, thisWindow } from './browser.js';
import { onDefaults, readDefaults, tripPart, type Defaults } from './defaults.js';
import { keepDraft, onDraftElsewhere, readDraft } from './draft.js';
import { readPastes } from './paste.js';

/** Puts the kept draft into the page's element, ready to type on. What is typed in another page of the extension shows in this one too. */
export async function mount(): Promise<BrimwiseCheck> {
  // The element speaks as the texts around it do.
  document.documentElement.lang = message('language');
  const check = byTag('brimwise-check');
  try {
    // What judges lies beside this page: it is there before the first draft is.
    const [defaults] = await Promise.all([readDefaults(), loadJudge('list')]);
    takeDefaults(defaults);
    check.draft = (await readDraft()) ?? { ...check.draft, units: defaults.units === '' ? null : defaults.units };
  } catch (error) {
    tell(error);
  }
  onDefaults(() => void readDefaults().then(takeDefaults, tell));
  readPastes(check);
  check.addEventListener('brimwise-draft', ({ detail }) => void keep(detail));
  await onDraftElsewhere((draft) => (check.draft = draft));
  byId('private').textContent = (await thisWindow()).isPrivate ? message('private') : '';
  const room = document.getElementById('room');
  if (room) {
    room.textContent = message('openPage');
    room.addEventListener('click', () => void openPage());
  }
  check.focus();
  // Firefox loads a popup before it shows it, and nothing takes the focus until then.
  window.addEventListener('focus', () => {
    if (document.activeElement === document.body) check.focus();
  });
  return check;

  function takeDefaults(defaults: Defaults): void {
    check.usual = tripPart(defaults);
    check.language = defaults.language === '' ? null : defaults.language;
  }
}

/** The last draft on its way to the store. */
let keeping: Promise<void> = Promise.resolve();

/** Keeps the draft, or says that the browser does not. */
export async function keep(draft: Draft): Promise<void> {
  keeping = keepDraft(draft);
  try {
    await keeping;
    byId('notice').textContent = '';
  } catch (error) {
    tell(error);
  }
}

/** Settles when the last draft is kept; rejects where it is not. */
export function kept(): Promise<void> {
  return keeping;
}

function tell(error: unknown): void {
  byId('notice').textContent = message('draftNotKept', reasonOf(error));
}

/** Why a store refuses, in words that help: browsers tell it in their own, and in English. */
export function reasonOf(error: unknown): string {
  const told = error instanceof Error ? `${error.name} ${error.message}` : String(error);
  return /quota|full|space|exceed/i.test(told) ? message('storeFull') : message('storeRefuses');
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
