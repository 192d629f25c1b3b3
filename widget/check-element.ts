import { html, nothing, type PropertyDeclarations, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import type { CorrectableField, Correction } from '../core/index.js';
import { anchorOf, keyOf, withCorrection, type Anchor } from './anchor.js';
import type { Judged } from './draft.js';
import { settingProperties } from './element.js';
import { lightList } from './light-list.js';
import { BrimwisePot } from './pot-element.js';
import type { ElementName, Settled } from './settings.js';
import { mast } from './views/mast.js';
import { noKit } from './views/no-kit.js';
import { alsoNamed, reading } from './views/reading.js';
import { plainBreaks, sheet } from './views/sheet.js';
import type { NewValue } from './views/value.js';

/** `<brimwise-check>`: the whole: a second opinion on a kit list or on one pot, as one types. The list that stands in the element is the one to begin with. */
export class BrimwiseCheck extends BrimwisePot {
  static override properties: PropertyDeclarations = {
    ...settingProperties('brimwise-check'),
    editing: { state: true },
    listFolded: { state: true },
    readingFolded: { state: true },
    readingWhole: { state: true },
  };

  declare private editing: string | null;
  declare private listFolded: boolean;
  declare private readingFolded: boolean;
  declare private readingWhole: boolean;

  /** A parser may give the list after the element, and a framework may change it. */
  #list = new MutationObserver(() => this.settleAnew());
  /** What is watched for the list: the element, what `from` finds, or all of the page until it finds anything. */
  #watched: Node | null = null;

  /** How tall the left of two facing pages is: where it comes to rest depends on it. */
  #tall = new ResizeObserver((entries) => {
    for (const { target, borderBoxSize } of entries)
      (target as HTMLElement).style.setProperty('--tall', `${borderBoxSize[0]?.blockSize ?? 0}px`);
  });
  #left: Element | null = null;

  constructor() {
    super();
    this.editing = null;
    this.listFolded = true;
    this.readingFolded = true;
    this.readingWhole = false;
  }

  protected override get tag(): ElementName {
    return 'brimwise-check';
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#watch();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#list.disconnect();
    this.#tall.disconnect();
    this.#left = null;
    this.#watched = null;
  }

  override updated(): void {
    super.updated();
    const left = this.find('.spread > .left');
    if (left === this.#left) return;
    this.#tall.disconnect();
    if (left !== null) this.#tall.observe(left);
    this.#left = left;
  }

  protected override lightList(): string | null {
    const place = this.#place();
    if (place === null) return null;
    return place === this && typeof this.list === 'string' ? this.list : lightList(place);
  }

  /** Where the list stands: in what `from` finds, or in the element; null where nothing is found. */
  #place(): Element | null {
    if (typeof this.from !== 'string' || this.from.trim() === '') return this;
    try {
      return (this.getRootNode() as Document | ShadowRoot).querySelector(this.from);
    } catch {
      return null;
    }
  }

  #watch(): void {
    const watched = this.#place() ?? this.getRootNode();
    if (watched === this.#watched) return;
    this.#list.disconnect();
    this.#list.observe(watched, { childList: true, subtree: true, characterData: true });
    this.#watched = watched;
  }

  protected override settledChanged(before: Settled): void {
    super.settledChanged(before);
    if (this.isConnected) this.#watch();
  }

  protected override draftReplaced(): void {
    super.draftReplaced();
    this.editing = null;
    this.readingWhole = false;
  }

  /** What is pasted folds, so that its headline comes into view; what is typed on is seen whole. */
  #setText = (text: string, pasted: boolean): void => {
    this.listFolded = pasted;
    this.change({ text }, this.typing);
  };

  #edit = (key: string | null): void => {
    // A field that is taken away after Enter or Escape is left once more.
    if (key === null && this.editing === null) return;
    this.focusNext = key === null ? valueSelector(this.editing) : '.reading [data-edit]';
    this.editing = key;
  };

  #correct = (anchor: Anchor, value: NewValue, by: 'enter' | 'leaving'): void => {
    if (by === 'leaving' && this.editing === null) return;
    this.editing = null;
    if (by === 'enter') this.focusNext = valueSelector(keyOf(anchor));
    this.change({ corrections: withCorrection(this.draft.corrections, anchor, value) });
  };

  /** Counts what is named in passing; the focus goes to the next such thing, else to the reading. */
  #count = (anchors: readonly Omit<Correction, 'value'>[]): void => {
    const left = (this.judged?.report.reading.passing.length ?? 0) - anchors.length;
    this.focusNext = left > 0 ? '.also button' : '.reading button';
    const { corrections } = this.draft;
    this.change({ corrections: anchors.reduce((kept, anchor) => withCorrection(kept, anchor, true), corrections) });
  };

  protected override answer(item: number | undefined, field: CorrectableField, value: NewValue): void {
    if (item === undefined) {
      super.answer(item, field, value);
      return;
    }
    if (this.judged === null) return;
    const anchor = anchorOf(this.judged.draft.text, this.judged.report.reading, item, field);
    this.change({ corrections: withCorrection(this.draft.corrections, anchor, value) });
  }

  protected override canAnswer(item: number | undefined, field: CorrectableField): boolean {
    return item !== undefined || (this.draft.entrance === 'pot' && super.canAnswer(item, field));
  }

  #addLine = (line: string): void => {
    const { text } = this.draft;
    this.change({ text: text === '' || text.endsWith('\n') ? text + line : `${text}\n${line}` });
  };

  protected override get addLine(): ((line: string) => void) | null {
    return this.settled.locked.has('text') ? null : this.#addLine;
  }

  protected override showLine = (line: number): void => {
    const area = this.find('textarea');
    const span = this.judged?.report.reading.lines[line - 1]?.span;
    if (!(area instanceof HTMLTextAreaElement) || span === undefined) return;
    const { text } = this.draft;
    area.focus();
    area.setSelectionRange(plainBreaks(text.slice(0, span[0])).length, plainBreaks(text.slice(0, span[1])).length);
  };

  protected override mast(): TemplateResult | typeof nothing {
    if (!this.shows('mast')) return nothing;
    return mast(this.draft.entrance, this.words, (entrance) => this.change({ entrance }));
  }

  override render(): TemplateResult {
    return this.#place() === null ? html`<slot></slot>` : super.render();
  }

  protected override page(): TemplateResult {
    if (this.draft.entrance === 'pot') return super.page();
    const { judged } = this;
    return html`<div class="page spread">
      ${this.mast()}
      <div class="left">
        ${this.trip()} ${this.shows('list') ? this.#sheet() : nothing}
        ${judged === null || !this.shows('reading') ? nothing : this.#reading(judged)}
      </div>
      <div class="right">${judged === null ? nothing : this.#findings(judged)}</div>
      ${this.foot()}
    </div>`;
  }

  #sheet(): TemplateResult {
    const { draft, judged, settled } = this;
    return sheet(
      {
        text: draft.text,
        reading: judged?.report.reading ?? null,
        readText: judged?.draft.text ?? '',
        folded: this.listFolded,
        level: settled.level,
        locked: settled.locked.has('text'),
      },
      this.words,
      {
        onText: this.#setText,
        onFold: (folded) => (this.listFolded = folded),
        onExample: () => this.change({ text: this.words.exampleList }),
      },
    );
  }

  /** Left as it is while a stroke of the list waits for its check, for nothing in it has changed; so are the findings. */
  #reading(judged: Judged): unknown {
    const { editing, readingFolded: folded, readingWhole: whole, settled } = this;
    return guard([judged, editing, folded, whole, settled], () => {
      const model = { ...judged, editing, folded, whole, level: settled.level };
      const understood = reading(model, this.words, {
        onEdit: this.#edit,
        onCorrect: this.#correct,
        onForget: (at) => this.change({ corrections: this.draft.corrections.filter((_, i) => i !== at) }),
        onFold: (next) => (this.readingFolded = next),
        onWhole: () => (this.readingWhole = true),
      });
      return html`${understood}${alsoNamed(model, this.words, this.#count)}`;
    });
  }

  #findings(judged: Judged): unknown {
    const { report } = judged;
    return guard([judged, this.draft.trip, this.settled], () =>
      report.findings.length === 0
        ? noKit(report, this.settled.level, this.words, this.addLine)
        : html`${this.headline(judged)}${this.judgements(judged)}`,
    );
  }
}

function valueSelector(key: string | null): string | null {
  return key === null ? null : `[data-value="${CSS.escape(key)}"]`;
}
