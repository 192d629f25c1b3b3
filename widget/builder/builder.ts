/** The page on which a writer sets a widget up, sees it in three kinds of page, and copies it out. */
import '../index.js';
import { html, nothing, render, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { BrimwiseCheck } from '../check-element.js';
import { judgeAtHand, loadJudge } from '../judging.js';
import { languageOf, wordsFor } from '../language.js';
import { carriedBy, stateOf } from '../link.js';
import { attributeOf, ELEMENTS, settingsOn, type ElementName } from '../settings.js';
import { ATTRIBUTES } from '../surface.js';
import { embedAddress, HASH_WORDS, snippets, WAYS, type Choice, type Hashes, type Way } from './snippets.js';
import { standing } from './standing.js';

/** Of the files beside this page; the build puts them in. */
declare const HASHES: Hashes;

const EXAMPLE = `Humblefern Duo pot 1.3 L, 140 x 90 mm, aluminium, 210 g, with lid
Zorvik Stub gas stove, burner 45 mm, 89 g
gas canister 230 g
2 plastic mugs 450 mL
2 long spoons`;

const SAMPLES = {
  plain: 'A plain page',
  dark: 'A dark page',
  narrow: 'A column of 280 px',
} as const;
/** Settings that the page has its own fields for. */
const OWN_FIELD: readonly string[] = ['list', 'from'];
const GROUPS = { trip: 'The trip', pot: 'The pot', stove: 'The stove', rest: 'The widget' } as const;
const SHOWN: Readonly<Record<ElementName, string>> = {
  'brimwise-check': 'a kit list, or one pot: the reader types',
  'brimwise-pot': 'one pot: the reader types',
  'brimwise-verdict': 'a fixed verdict on the pot of a review',
};

let choice: Omit<Choice, 'standing'> = {
  element: 'brimwise-check',
  attributes: { people: '2', days: '3' },
  list: EXAMPLE,
  listIn: 'element',
  folder: '/brimwise/',
  way: 'near.js',
  held: false,
};
let told = '';
let link = '';
/** The verdict of the first sample in words. */
let said: readonly string[] = [];
const place = document.querySelector('main')!;

function set(part: Partial<Choice>): void {
  choice = { ...choice, ...part };
  const known = new Set(settingsOn(choice.element).map(([name]) => attributeOf(name)));
  const attributes = Object.entries(choice.attributes).filter(
    ([name, value]) => known.has(name) && value.trim() !== '',
  );
  choice = { ...choice, attributes: Object.fromEntries(attributes) };
  told = '';
  link = '';
  show();
}

/** A setting as a field, by what it takes. */
function field([name, setting]: ReturnType<typeof settingsOn>[number]): TemplateResult {
  const attribute = attributeOf(name);
  const [sets, example] = ATTRIBUTES[name];
  const value = choice.attributes[attribute] ?? '';
  const onChange = ({ target }: Event) =>
    set({ attributes: { ...choice.attributes, [attribute]: (target as HTMLInputElement).value } });
  const id = `set-${attribute}`;
  return html`<div class="field">
    <label for=${id}>${attribute}</label>
    ${
      Array.isArray(setting.takes)
        ? html`<select id=${id} aria-describedby="${id}-sets" @change=${onChange}>
            <option value="" ?selected=${value === ''}>left out</option>
            ${setting.takes.map((word: string) => html`<option ?selected=${word === value}>${word}</option>`)}
          </select>`
        : html`<input
            id=${id}
            aria-describedby="${id}-sets"
            .value=${value}
            placeholder=${example}
            autocomplete="off"
            @change=${onChange}
          />`
    }
    <small id="${id}-sets">${sets.replaceAll('`', '')}</small>
  </div>`;
}

function form(): TemplateResult {
  const settings = settingsOn(choice.element);
  const groupOf = (fills: string | undefined) => (fills?.split('.')[0] ?? 'rest') as keyof typeof GROUPS;
  return html`<form @submit=${(event: Event) => event.preventDefault()}>
    <fieldset>
      <legend>What stands in the post</legend>
      ${ELEMENTS.map(
        (element) =>
          html`<label class="choice"
            ><input
              type="radio"
              name="element"
              .checked=${element === choice.element}
              @change=${() => set({ element })}
            /><span><code>${element}</code> ${SHOWN[element]}</span></label
          >`,
      )}
    </fieldset>
    ${
      choice.element === 'brimwise-check'
        ? html`<div class="field">
              <label for="list">The list</label>
              <textarea
                id="list"
                rows="6"
                .value=${choice.list}
                @change=${({ target }: Event) => set({ list: (target as HTMLTextAreaElement).value })}
              ></textarea>
              <small>Readers see it as text where scripts do not run: in feeds, e-mail and print.</small>
            </div>
            <label class="choice"
              ><input
                type="checkbox"
                .checked=${choice.listIn === 'post'}
                @change=${({ target }: Event) => set({ listIn: (target as HTMLInputElement).checked ? 'post' : 'element' })}
              /><span
                >The list stands in the post before the element, and stays when an editor or a filter takes the element
                apart</span
              ></label
            >`
        : nothing
    }
    ${Object.entries(GROUPS).map(([group, title]) => {
      const own = settings.filter(([name, { fills }]) => groupOf(fills) === group && !OWN_FIELD.includes(name));
      return html`<details ?open=${group === (choice.element === 'brimwise-check' ? 'trip' : 'pot')}>
        <summary>${title}</summary>
        ${own.map(field)}
      </details>`;
    })}
    <fieldset>
      <legend>How it gets there</legend>
      <div class="field">
        <label for="folder">Folder of the files on your site</label>
        <input
          id="folder"
          .value=${choice.folder}
          autocomplete="off"
          @change=${({ target }: Event) => set({ folder: (target as HTMLInputElement).value })}
        />
      </div>
      ${Object.entries(WAYS).map(
        ([way, when]) =>
          html`<label class="choice"
            ><input
              type="radio"
              name="way"
              .checked=${way === choice.way}
              @change=${() => set({ way: way as Way })}
            /><span><code>${way}</code> loads it ${when}</span></label
          >`,
      )}
      <label class="choice"
        ><input
          type="checkbox"
          .checked=${choice.held}
          aria-describedby="held-words"
          @change=${({ target }: Event) => set({ held: (target as HTMLInputElement).checked })}
        /><span>With an <code>integrity</code> hash</span></label
      >
      <small id="held-words">${HASH_WORDS}</small>
    </fieldset>
  </form>`;
}

/** A new element for each choice: what a reader typed into the last one is not the writer's. */
function live(): Element {
  const element = document.createElement(choice.element);
  for (const [name, value] of Object.entries(choice.attributes)) element.setAttribute(name, value);
  if (choice.element === 'brimwise-check') element.textContent = choice.list;
  return element;
}

async function makeLink(): Promise<void> {
  const element = place.querySelector<BrimwiseCheck>('.sample brimwise-check, .sample brimwise-pot');
  link =
    element === null
      ? new URL(embedAddress(choice), location.href).href
      : new URL(embedAddress(choice, await stateOf(element.draft)), location.href).href;
  show();
}

async function copy(text: string, name: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(text);
    told = `${name}: copied.`;
  } catch {
    told = `${name}: this browser does not let the page copy. Select the text and copy it by hand.`;
  }
  show();
}

function show(): void {
  const texts = snippets({ ...choice, standing: said }, HASHES);
  const page = html`<h1>Put a second opinion into a post</h1>
    <div class="columns">
      <section aria-labelledby="h-set">
        <h2 id="h-set">Set</h2>
        ${form()}
      </section>
      <section aria-labelledby="h-see">
        <h2 id="h-see">See</h2>
        ${Object.entries(SAMPLES).map(
          ([kind, title]) =>
            html`<h3>${title}</h3>
              <article class="sample ${kind}">
                <p>We carried the same pot for a week. Before the next trip, a second opinion:</p>
                ${guard([choice], live)}
              </article>`,
        )}
      </section>
    </div>
    <section aria-labelledby="h-copy">
      <h2 id="h-copy">Copy</h2>
      <p role="status">${told}</p>
      ${texts.map(
        ({ name, goes, text }) =>
          html`<h3>${name}</h3>
            <p>${goes}</p>
            <pre tabindex="0">${text}</pre>
            <button type="button" @click=${() => void copy(text, name)}>Copy ${name}</button>`,
      )}
      <h3>Link</h3>
      <p>
        A link to the question as it stands in the first sample. What it carries stays behind the # and is sent to no
        server.
      </p>
      ${link === '' ? nothing : html`<pre tabindex="0">${link}</pre>`}
      <button type="button" @click=${() => void makeLink()}>Make the link</button>
    </section>`;
  render(page, place);
  void say();
}

/** Takes the verdict down once the first sample has judged what is set. */
async function say(): Promise<void> {
  const sample = place.querySelector<BrimwiseCheck>(`.sample ${choice.element}`)!;
  await loadJudge('list');
  await sample.updateComplete;
  const { report } = sample;
  const words = wordsFor(languageOf(sample, choice.attributes['language'] ?? null));
  const next = report === null ? [] : standing(report, words, judgeAtHand()!.remark);
  if (!sample.isConnected || next.join() === said.join()) return;
  said = next;
  show();
}

/** A link opened here: its choice, and its question in the samples. */
async function open(): Promise<void> {
  const { element, state, list, ...attributes } = Object.fromEntries(
    new URLSearchParams(location.hash.slice(1)),
  ) as Record<string, string | undefined>;
  set({
    ...(ELEMENTS.includes(element as ElementName) ? { element: element as ElementName } : {}),
    ...(element === undefined ? {} : { attributes: attributes as Record<string, string> }),
    ...(list === undefined ? {} : { list }),
  });
  if (state === undefined) return;
  const carried = await carriedBy(state);
  if ('problem' in carried) {
    told = carried.problem;
    show();
    return;
  }
  if (carried.draft.text !== '') set({ list: carried.draft.text });
  for (const sample of place.querySelectorAll<BrimwiseCheck>('.sample brimwise-check, .sample brimwise-pot')) {
    sample.draft = carried.draft;
  }
}

addEventListener('hashchange', () => void open());
void open();
