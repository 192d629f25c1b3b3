/** The saved kits: found, opened, saved, noted, copied, renamed, removed, exported, imported; the last steps can be undone. */
import { html, nothing, render, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import type { BrimwiseCheck, Draft } from '../../widget/index.js';
import { message } from '../browser.js';
import { byId, keep, reasonOf } from '../face.js';
import { NoJson } from '../json-lines.js';
import { DamagedFile, LaterFile, stepsOfKitsFile, textOfBytes, writeKitsFile } from '../kits-file.js';
import { freeName, inOrder, kitsWith, withKit, withKits, withoutKit, type Kit, type KitOrder } from '../kit-list.js';
import { changeKits, onKits, readKits } from '../kits.js';

/** Rows that are drawn at first, and more at each wish. */
const ROWS = 50;
const MOST_UNDOS = 20;

export async function showKits(check: BrimwiseCheck): Promise<void> {
  let kits: readonly Kit[] = [];
  /** The kit that is being renamed or noted. */
  let changing: { readonly name: string; readonly what: 'name' | 'note' } | null = null;
  /** What Save proposes. */
  let name = '';
  /** A name that Save was asked for and another kit has. */
  let taken: string | null = null;
  let words = '';
  let order: KitOrder = 'name';
  let drawn = ROWS;
  const undos: (() => Promise<void>)[] = [];
  /** A file that is being read. */
  let importing: { done: number; all: number; stopped: boolean } | null = null;

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
  async function change(next: (kits: readonly Kit[]) => readonly Kit[], done: string, undoable = true): Promise<void> {
    try {
      const { before, after } = await changeKits(next);
      kits = after;
      if (undoable) remember(() => change((now) => reversed(now, before, after), message('undone'), false));
    } catch (error) {
      say(message('kitsNotKept', reasonOf(error)));
      return;
    }
    say(done);
    show();
    // The row that had the focus is gone: the way back takes it.
    if (document.activeElement === document.body) document.getElementById('undo')?.focus();
  }

  function remember(undo: () => Promise<void>): void {
    undos.push(undo);
    if (undos.length > MOST_UNDOS) undos.shift();
  }

  async function undo(): Promise<void> {
    await undos.pop()?.();
    show();
    if (document.activeElement === document.body) (document.getElementById('undo') ?? check).focus();
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
    if (kits.some((kit) => kit.name === name)) {
      taken = name;
      say(message('nameTaken', name));
      show();
      byId('replace').focus();
      return;
    }
    saveAs(name, message('saved', name));
  }

  function saveAs(wanted: string, done: string): void {
    taken = null;
    name = wanted;
    const { draft } = check;
    void change((now) => {
      const { notes, tags } = now.find((kit) => kit.name === wanted) ?? {};
      return withKit(now, {
        name: wanted,
        draft,
        ...(notes ? { notes } : {}),
        ...(tags ? { tags } : {}),
        saved: today(),
      });
    }, done);
  }

  function open(kit: Kit): void {
    const before = check.draft;
    const take = (draft: Draft) => {
      check.draft = draft;
      void keep(draft);
    };
    take(kit.draft);
    name = kit.name;
    remember(() => {
      take(before);
      say(message('undone'));
      show();
      check.focus();
      return Promise.resolve();
    });
    say(message('opened', kit.name));
    show();
    void check.focusResult();
  }

  function rename(event: SubmitEvent, kit: Kit): void {
    event.preventDefault();
    const field = (event.target as HTMLFormElement).elements.namedItem('new-name') as HTMLInputElement;
    const wanted = field.value.trim();
    changing = null;
    if (wanted === '' || wanted === kit.name) {
      show();
      return;
    }
    const free = freeName(withoutKit(kits, kit.name), wanted);
    void change(
      (now) => withKit(withoutKit(now, kit.name), { ...kit, name: free }),
      message('renamed', kit.name, free),
    );
  }

  function note(event: SubmitEvent, kit: Kit): void {
    event.preventDefault();
    const { elements } = event.target as HTMLFormElement;
    const notes = (elements.namedItem('notes') as HTMLTextAreaElement).value.trim();
    const tags = (elements.namedItem('tags') as HTMLInputElement).value
      .split(/[,;]/)
      .map((tag) => tag.trim())
      .filter(Boolean);
    changing = null;
    const { name, draft, saved } = kit;
    const noted: Kit = {
      name,
      draft,
      ...(saved ? { saved } : {}),
      ...(notes ? { notes } : {}),
      ...(tags.length > 0 ? { tags } : {}),
    };
    void change((now) => withKit(now, noted), message('noted', name));
  }

  function duplicate(kit: Kit): void {
    const free = freeName(kits, kit.name);
    void change((now) => withKit(now, { ...kit, name: free, saved: today() }), message('duplicated', free, kit.name));
  }

  function exportKits(chosen: readonly Kit[], file: string): void {
    const address = URL.createObjectURL(new Blob([writeKitsFile(chosen)], { type: 'application/json' }));
    Object.assign(document.createElement('a'), { href: address, download: `${file}.json` }).click();
    URL.revokeObjectURL(address);
  }

  async function importFile(event: Event): Promise<void> {
    const input = event.target as HTMLInputElement;
    const [file] = input.files ?? [];
    if (!file) return;
    const text = textOfBytes(new Uint8Array(await file.arrayBuffer()));
    input.value = '';
    const state = (importing = { done: 0, all: 0, stopped: false });
    try {
      const read = await readInSteps(text, state);
      if (read === undefined) {
        say(message('importStopped'));
        return;
      }
      const { same } = withKits(kits, read);
      const told = [
        message('imported', String(read.length)),
        ...(same > 0 ? [message('importSame', String(same))] : []),
      ];
      await change((now) => withKits(now, read).kits, told.join(' '));
    } catch (error) {
      if (error instanceof NoJson) say(message('importNoJson', String(error.line)));
      else if (error instanceof LaterFile) say(message('importLater'));
      else if (error instanceof DamagedFile) say(message('importDamaged', String(error.line), error.place));
      else throw error;
    } finally {
      importing = null;
      show();
    }
  }

  /** The kits of a file, with the page at rest between the steps; undefined where it was stopped. */
  async function readInSteps(text: string, state: NonNullable<typeof importing>): Promise<readonly Kit[] | undefined> {
    const steps = stepsOfKitsFile(text);
    for (let rested = performance.now(); ;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (performance.now() - rested < 50) continue;
      Object.assign(state, step.value);
      show();
      await new Promise((resolve) => setTimeout(resolve));
      rested = performance.now();
      if (state.stopped) return undefined;
    }
  }

  function say(done: string): void {
    byId('done').textContent = done;
  }

  function show(): void {
    const found = inOrder(kitsWith(kits, words), order);
    render(
      html`<h2>${message('kits')}</h2>
        <form @submit=${save}>
          <label>${message('kitName')} <input name="name" autocomplete="off" .value=${name} /></label>
          <button>${message('save')}</button>
        </form>
        ${taken === null ? nothing : whereTaken(taken)}
        ${kits.length === 0 ? html`<p>${message('noKits')}</p>` : list(found)}
        <div class="ways">
          ${
            kits.length === 0
              ? nothing
              : html`<button
                  type="button"
                  id="export"
                  @click=${() => exportKits(inOrder(kits, 'name'), 'brimwise-kits')}
                >
                  ${message('export')}
                </button>`
          }
          <label
            >${message('import')}
            <input type="file" accept=".json,application/json" @change=${(event: Event) => void importFile(event)} />
          </label>
        </div>
        ${importing === null ? nothing : progressOf(importing)}
        ${undos.length === 0 ? nothing : html`<button type="button" id="undo" @click=${() => void undo()}>${message('undo')}</button>`}`,
      byId('kits'),
    );
  }

  function list(found: readonly Kit[]): TemplateResult {
    const search = (event: Event) => {
      words = (event.target as HTMLInputElement).value;
      drawn = ROWS;
      show();
    };
    const arrange = (event: Event) => {
      order = (event.target as HTMLSelectElement).value as KitOrder;
      show();
    };
    const more = () => {
      const next = drawn;
      drawn += ROWS;
      show();
      byId('kits').querySelectorAll<HTMLElement>('li .name')[next]?.focus();
    };
    return html`<form role="search" @submit=${(event: Event) => event.preventDefault()}>
        <label
          >${message('search')} <input name="words" type="search" autocomplete="off" .value=${words} @input=${search}
        /></label>
        <label
          >${message('order')}
          <select name="order" @change=${arrange}>
            <option value="name" .selected=${order === 'name'}>${message('byName')}</option>
            <option value="newest" .selected=${order === 'newest'}>${message('newest')}</option>
          </select></label
        >
      </form>
      <p id="shown" role="status">
        ${found.length === 0 ? message('noMatch') : message('shownOf', String(Math.min(drawn, found.length)), String(kits.length))}
      </p>
      <ul>
        ${repeat(found.slice(0, drawn), ({ name }) => name, row)}
      </ul>
      ${found.length <= drawn ? nothing : html`<button type="button" id="more" @click=${more}>${message('showMore')}</button>`}`;
  }

  function whereTaken(wanted: string): TemplateResult {
    const free = freeName(kits, wanted);
    const leave = () => {
      taken = null;
      say('');
      show();
      byId('kits').querySelector<HTMLInputElement>('[name="name"]')?.focus();
    };
    return html`<p class="ways" id="taken">
      <button type="button" id="replace" @click=${() => saveAs(wanted, message('replaced', wanted))}>
        ${message('replaceIt')}
      </button>
      <button type="button" @click=${() => saveAs(free, message('saved', free))}>${message('saveAs', free)}</button>
      <button type="button" @click=${leave}>${message('cancel')}</button>
    </p>`;
  }

  function progressOf(state: NonNullable<typeof importing>): TemplateResult {
    const told = message('importing', String(state.done), String(state.all));
    return html`<p id="importing">
      <progress max=${Math.max(1, state.all)} .value=${state.done} aria-label=${told}></progress> ${told}
      <button type="button" @click=${() => (state.stopped = true)}>${message('cancel')}</button>
    </p>`;
  }

  function row(kit: Kit): TemplateResult {
    if (changing?.name === kit.name) return changing.what === 'name' ? renameForm(kit) : noteForm(kit);
    const start = (what: 'name' | 'note') => {
      changing = { name: kit.name, what };
      show();
      byId('kits')
        .querySelector<HTMLInputElement>(what === 'name' ? '[name="new-name"]' : '[name="notes"]')
        ?.select();
    };
    const way = (id: string, label: string, does: () => void): TemplateResult =>
      html`<button type="button" aria-label=${label} @click=${does}>${message(id)}</button>`;
    const remove = () => void change((now) => withoutKit(now, kit.name), message('removed', kit.name));
    const about = [kit.saved, ...(kit.tags ?? []), kit.notes?.split('\n')[0]?.slice(0, 80)].filter(Boolean).join(' · ');
    return html`<li>
      <button type="button" class="name" @click=${() => open(kit)}>${kit.name}</button>
      ${about === '' ? nothing : html`<span class="about">${about}</span>`}
      <div class="ways">
        ${way('rename', message('renameLabel', kit.name), () => start('name'))}
        ${way('note', message('noteLabel', kit.name), () => start('note'))}
        ${way('duplicate', message('duplicateLabel', kit.name), () => duplicate(kit))}
        ${way('exportOne', message('exportLabel', kit.name), () => exportKits([kit], 'brimwise-kit'))}
        ${way('remove', message('removeLabel', kit.name), remove)}
      </div>
    </li>`;
  }

  function renameForm(kit: Kit): TemplateResult {
    return html`<li>
      <form @submit=${(event: SubmitEvent) => rename(event, kit)}>
        <label>${message('newName')} <input name="new-name" autocomplete="off" .value=${kit.name} /></label>
        <button>${message('rename')}</button>
      </form>
    </li>`;
  }

  function noteForm(kit: Kit): TemplateResult {
    return html`<li>
      <form @submit=${(event: SubmitEvent) => note(event, kit)}>
        <label>${message('notes')} <textarea name="notes" rows="3" .value=${kit.notes ?? ''}></textarea></label>
        <label>${message('tags')} <input name="tags" autocomplete="off" .value=${(kit.tags ?? []).join(', ')} /></label>
        <button>${message('keepNote')}</button>
      </form>
    </li>`;
  }
}

/** The kits with one change taken back, whatever else was changed since. */
function reversed(now: readonly Kit[], before: readonly Kit[], after: readonly Kit[]): readonly Kit[] {
  const had = new Map(before.map((kit) => [kit.name, JSON.stringify(kit)]));
  const has = new Map(after.map((kit) => [kit.name, JSON.stringify(kit)]));
  const gone = new Set(after.filter(({ name }) => had.get(name) !== has.get(name)).map(({ name }) => name));
  const back = before.filter(({ name }) => had.get(name) !== has.get(name));
  return [...now.filter(({ name }) => !gone.has(name) && !back.some((kit) => kit.name === name)), ...back];
}

/** The day by the person's own clock, as YYYY-MM-DD. */
function today(): string {
  const now = new Date();
  return [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, '0')).join('-');
}
