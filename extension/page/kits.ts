/** The saved kits: opened, saved, renamed, removed, exported, imported; the last step can be undone. */
import { html, nothing, render, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { BrimwiseCheck } from '../../widget/index.js';
import { message } from '../browser.js';
import { byId, keep, reasonOf } from '../face.js';
import { NoJson } from '../json-lines.js';
import { DamagedFile, readKitsFile, writeKitsFile } from '../kits-file.js';
import { freeName, withKit, withKits, withoutKit, type Kit } from '../kit-list.js';
import { onKits, readKits, storeKits } from '../kits.js';

export async function showKits(check: BrimwiseCheck): Promise<void> {
  let kits: readonly Kit[] = [];
  /** The kit that is being renamed. */
  let renaming: string | null = null;
  /** What Save proposes. */
  let name = '';
  let undo: (() => Promise<void>) | null = null;

  try {
    kits = await readKits();
  } catch (error) {
    say(message('kitsNotKept', reasonOf(error)));
  }
  onKits((stored) => {
    kits = stored;
    show();
  });
  show();

  /** Stores the kits anew and says what was done; where the store refuses, nothing has changed. */
  async function change(next: readonly Kit[], done: string): Promise<void> {
    const before = kits;
    try {
      await storeKits(next);
    } catch (error) {
      say(message('kitsNotKept', reasonOf(error)));
      return;
    }
    kits = next;
    undo = () => change(before, message('undone'));
    say(done);
    show();
    // The row that had the focus is gone: the way back takes it.
    if (document.activeElement === document.body) byId('undo').focus();
  }

  function save(event: SubmitEvent): void {
    event.preventDefault();
    const field = (event.target as HTMLFormElement).elements.namedItem('name') as HTMLInputElement;
    name = field.value.trim();
    if (name === '') {
      say(message('nameMissing'));
      field.focus();
      return;
    }
    const done = kits.some((kit) => kit.name === name) ? message('replaced', name) : message('saved', name);
    void change(withKit(kits, name, check.draft), done);
  }

  function open(kit: Kit): void {
    const before = check.draft;
    const take = (draft: typeof before) => {
      check.draft = draft;
      void keep(draft);
    };
    take(kit.draft);
    name = kit.name;
    undo = () => {
      take(before);
      undo = null;
      say(message('undone'));
      show();
      check.focus();
      return Promise.resolve();
    };
    say(message('opened', kit.name));
    show();
    void check.focusResult();
  }

  function rename(event: SubmitEvent, kit: Kit): void {
    event.preventDefault();
    const field = (event.target as HTMLFormElement).elements.namedItem('new-name') as HTMLInputElement;
    const others = withoutKit(kits, kit.name);
    const wanted = field.value.trim();
    renaming = null;
    if (wanted === '' || wanted === kit.name) {
      show();
      return;
    }
    const free = freeName(others, wanted);
    void change([...others, { ...kit, name: free }], message('renamed', kit.name, free));
  }

  function exportAll(): void {
    const address = URL.createObjectURL(new Blob([writeKitsFile(kits)], { type: 'application/json' }));
    Object.assign(document.createElement('a'), { href: address, download: 'brimwise-kits.json' }).click();
    URL.revokeObjectURL(address);
  }

  async function importFile(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    const text = await file.text();
    input.value = '';
    let read: readonly Kit[];
    try {
      read = readKitsFile(text);
    } catch (error) {
      if (error instanceof NoJson) say(message('importNoJson', String(error.line)));
      else if (error instanceof DamagedFile) say(message('importDamaged', String(error.line), error.place));
      else throw error;
      return;
    }
    await change(withKits(kits, read), message('imported', String(read.length)));
  }

  function say(done: string): void {
    byId('done').textContent = done;
  }

  function show(): void {
    render(
      html`<h2>${message('kits')}</h2>
        <form @submit=${save}>
          <label>${message('kitName')} <input name="name" autocomplete="off" .value=${name} /></label>
          <button>${message('save')}</button>
        </form>
        ${
          kits.length === 0
            ? html`<p>${message('noKits')}</p>`
            : html`<ul>
                ${repeat(kits, ({ name }) => name, row)}
              </ul>`
        }
        <div class="ways">
          ${kits.length === 0 ? nothing : html`<button type="button" id="export" @click=${exportAll}>${message('export')}</button>`}
          <label
            >${message('import')}
            <input type="file" accept=".json,application/json" @change=${(event: Event) => void importFile(event)} />
          </label>
        </div>
        ${undo === null ? nothing : html`<button type="button" id="undo" @click=${undo}>${message('undo')}</button>`}`,
      byId('kits'),
    );
  }

  function row(kit: Kit): TemplateResult {
    if (renaming === kit.name) {
      return html`<li>
        <form @submit=${(event: SubmitEvent) => rename(event, kit)}>
          <label>${message('newName')} <input name="new-name" autocomplete="off" .value=${kit.name} /></label>
          <button>${message('rename')}</button>
        </form>
      </li>`;
    }
    const startRenaming = () => {
      renaming = kit.name;
      show();
      byId('kits').querySelector<HTMLInputElement>('[name="new-name"]')?.select();
    };
    const remove = () => void change(withoutKit(kits, kit.name), message('removed', kit.name));
    return html`<li>
      <button type="button" class="name" @click=${() => open(kit)}>${kit.name}</button>
      <div class="ways">
        <button type="button" aria-label=${message('renameLabel', kit.name)} @click=${startRenaming}>
          ${message('rename')}
        </button>
        <button type="button" aria-label=${message('removeLabel', kit.name)} @click=${remove}>
          ${message('remove')}
        </button>
      </div>
    </li>`;
  }
}
