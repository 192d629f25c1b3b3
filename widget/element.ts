import { html, LitElement, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import type { Report } from '../core/index.js';
import { isAsked, type Judged } from './draft.js';
import { loadJudge, judgeAtHand } from './judging.js';
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
import { reserve } from './reserve.js';
import { dress } from './styles/index.js';

type WithSettings = Pick<typeof LitElement, keyof typeof LitElement> & (new () => LitElement & SettingValues);

/** The settings of an element as reactive properties, each with its attribute. */
export function settingProperties(element: ElementName): PropertyDeclarations {
  const declared = settingsOn(element).map(
    ([name]) => [name, { attribute: attributeOf(name), reflect: true }] as const,
  );
  return Object.fromEntries(declared);
}

/** How high each element of the page stood before it was defined, in px. */
const reserved = new WeakMap<Element, number>();

/** Takes note of the height that a page reserves for elements which are not defined yet: what waits to be drawn keeps it, and nothing below moves. */
export function keepHeights(names: readonly string[]): void {
  for (const element of document.querySelectorAll<HTMLElement>(names.join())) {
    reserve(element);
    reserved.set(element, element.offsetHeight);
  }
}

/** What the elements share: their settings, the report, and the language they speak. */
export abstract class BrimwiseElement extends (LitElement as unknown as WithSettings) {
  static override properties: PropertyDeclarations = { judged: { state: true } };

  declare protected judged: Judged | null;
  protected settled: Settled = NOTHING_SET;
  protected words = WORDS;
  #dressedForReports = false;
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
    if (judgeAtHand() !== null && !this.#dressedForReports) this.#dress();
    if (!this.#moved && !settingsOn(this.tag).some(([name]) => changed.has(name))) return;
    this.#moved = false;
    const before = this.settled;
    this.settled = this.settledNow();
    this.words = wordsFor(languageOf(this, this.settled.language));
    if (this.settled.unusable.length > 0 && this.settled.unusable.join() !== before.unusable.join()) this.#hint();
    this.settledChanged(before);
  }

  /** What is not there yet is waited for: words, so that no one sees English give way to another language; and the first findings stand with all that is drawn first. */
  protected override scheduleUpdate(): void | Promise<unknown> {
    const { language } = this;
    const asked = typeof language === 'string' ? language : null;
    const coming = [
      learnWords(languageOf(this, asked)),
      this.hasUpdated || !this.isAsked() ? undefined : this.readyToJudge(),
    ].filter((each) => each !== undefined);
    if (coming.length === 0) return super.scheduleUpdate();
    return Promise.all(coming).then(() => super.scheduleUpdate());
  }

  /** Whether anything stands in the element that can be judged. */
  protected isAsked(): boolean {
    return isAsked(this.settledNow().draft);
  }

  /** Loads what it takes to read and judge what stands in the element; undefined where that is there. */
  protected readyToJudge(): Promise<unknown> | undefined {
    const part = this.settledNow().draft.entrance;
    return judgeAtHand(part) === null ? loadJudge(part) : undefined;
  }

  protected settledNow(): Settled {
    const names = settingsOn(this.tag).map(([name]) => name);
    const values: Partial<SettingValues> = Object.fromEntries(names.map((name: SettingName) => [name, this[name]]));
    return settle(this.tag, values, this.lightList(), judgeAtHand()?.problemsOf ?? (() => []));
  }

  /** What the writer put into the element stands until all is there to draw it, in the height that the page reserves. */
  protected override createRenderRoot(): HTMLElement | DocumentFragment {
    const root = super.createRenderRoot();
    this.#until.style.display = 'block';
    this.#until.style.minBlockSize = `${reserved.get(this) ?? 0}px`;
    root.append(this.#until);
    this.#dress();
    return root;
  }

  override firstUpdated(): void {
    this.renderRoot.removeChild(this.#until);
  }

  /** Called where another document has taken the element. */
  adoptedCallback(): void {
    this.#dress();
  }

  #dress(): void {
    if (this.shadowRoot === null) return;
    dress(this.shadowRoot);
    this.#dressedForReports = judgeAtHand() !== null;
  }

  /** Reads settings, list and language again before the next update. */
  protected settleAnew(): void {
    this.#moved = true;
    this.requestUpdate();
  }

  /** Called before an update where the settings, the list in the element or the language may have changed. */
  protected abstract settledChanged(before: Settled): void;

  /** The list that the page gives the element; null where it is said to stand elsewhere, and does not. */
  protected lightList(): string | null {
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
