import { html, LitElement, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import type { Report } from '../core/index.js';
import type { Judged } from './draft.js';
import { languageOf, learnWords, wordsFor } from './language.js';
import { WORDS } from './messages/en.js';
import { PageLook } from './page-look.js';
import {
  attributeOf,
  NOTHING_SET,
  settingsOn,
  settle,
  type ElementName,
  type Region,
  type Settled,
  type SettingName,
  type SettingValues,
} from './settings.js';
import { drawingStyles } from './styles/drawing.css.js';
import { layout } from './styles/layout.css.js';
import { parts } from './styles/parts.css.js';
import { tokens } from './styles/tokens.css.js';

type WithSettings = Pick<typeof LitElement, keyof typeof LitElement> & (new () => LitElement & SettingValues);

/** The settings of an element as reactive properties, each with its attribute. */
export function settingProperties(element: ElementName): PropertyDeclarations {
  const declared = settingsOn(element).map(
    ([name]) => [name, { attribute: attributeOf(name), reflect: true }] as const,
  );
  return Object.fromEntries(declared);
}

/** What the elements share: their settings, the report, and the language they speak. */
export abstract class BrimwiseElement extends (LitElement as unknown as WithSettings) {
  static override styles = [tokens, parts, drawingStyles, layout];
  static override properties: PropertyDeclarations = { judged: { state: true } };

  declare protected judged: Judged | null;
  protected settled: Settled = NOTHING_SET;
  protected words = WORDS;
  #until = this.ownerDocument.createElement('slot');
  #look = new PageLook(this, () => this.settled.look);
  /** Whether the page around may have changed: its language, the list in the element. */
  #moved = true;

  constructor() {
    super();
    this.judged = null;
  }

  protected abstract readonly tag: ElementName;

  /** What is said of what stands in the fields; null while nothing does. */
  get report(): Report | null {
    return this.judged?.report ?? null;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.settleAnew();
  }

  override willUpdate(changed: PropertyValues): void {
    const known = settingsOn(this.tag).map(([name]) => name);
    if (!this.#moved && !known.some((name) => changed.has(name))) return;
    this.#moved = false;
    const before = this.settled;
    const values: Partial<SettingValues> = Object.fromEntries(known.map((name: SettingName) => [name, this[name]]));
    this.settled = settle(this.tag, values, this.lightList());
    this.words = wordsFor(languageOf(this, this.settled.language));
    if (this.settled.unusable.length > 0 && this.settled.unusable.join() !== before.unusable.join()) this.#hint();
    this.settledChanged(before);
  }

  /** Words that are not there yet are waited for, so that no one sees English give way to another language. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    const { language } = this;
    const asked = typeof language === 'string' ? language : null;
    const coming = [
      learnWords(languageOf(this, asked)),
      this.hasUpdated ? undefined : this.learnToRead?.(asked),
    ].filter((each) => each !== undefined);
    if (coming.length === 0) return super.scheduleUpdate();
    return Promise.all(coming).then(() => super.scheduleUpdate());
  }

  /** Loads what it takes to read what stands in the element from the start; undefined where that is there. */
  protected learnToRead?(asked: string | null): Promise<unknown> | undefined;

  /** What the writer put into the element stands until its words are there. */
  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = this.#root();
    root.append(this.#until);
    return root;
  }

  override firstUpdated(): void {
    this.renderRoot.removeChild(this.#until);
  }

  #root(): HTMLElement | DocumentFragment {
    if (this.ownerDocument === document) return super.createRenderRoot();
    const root = this.attachShadow({ mode: 'open' });
    this.#dress(root);
    return root;
  }

  /** Called where another document has taken the element. */
  adoptedCallback(): void {
    if (this.shadowRoot !== null) this.#dress(this.shadowRoot);
  }

  /** Style sheets belong to a document: one that takes the element needs its own. */
  #dress(root: ShadowRoot): void {
    const view = this.ownerDocument.defaultView;
    if (view === null) return;
    root.adoptedStyleSheets = BrimwiseElement.styles.map(({ cssText }) => {
      const sheet = new view.CSSStyleSheet();
      sheet.replaceSync(cssText);
      return sheet;
    });
  }

  /** Reads settings, list and language again before the next update. */
  protected settleAnew(): void {
    this.#moved = true;
    this.requestUpdate();
  }

  /** Called before an update where the settings, the list in the element or the language may have changed. */
  protected abstract settledChanged(before: Settled): void;

  /** The list that the page has put into the element. */
  protected lightList(): string {
    return '';
  }

  /** The whole, in the page's look or its own. */
  protected frame(label: string, content: unknown): TemplateResult {
    const classes = `bw ${this.settled.look === 'page' ? 'of-page' : ''} ${this.#look.dark ? 'dark' : ''}`;
    return html`<div
      class=${classes}
      part="frame"
      role="region"
      lang=${this.words.locale}
      dir="ltr"
      aria-label=${label}
    >
      ${content}
    </div>`;
  }

  protected shows(region: Region): boolean {
    return this.settled.show?.has(region) ?? true;
  }

  /** For the writer, who sees the console; the reader gets what is left. */
  #hint(): void {
    // eslint-disable-next-line no-console -- an attribute that cannot be used is told where its writer looks
    console.warn(`<${this.tag}> leaves out ${this.settled.unusable.join(' ')}`);
  }
}
