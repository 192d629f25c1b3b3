import { html, LitElement, nothing, type PropertyValues, type TemplateResult } from 'lit';
import { repeat } from 'lit/directives/repeat.js';
import {
  remark,
  type CorrectableField,
  type Finding,
  type Grade,
  type InputProblem,
  type Report,
  type UnitSystem,
} from '../core/index.js';
import { anchorOf, keyOf, withCorrection, type Anchor } from './anchor.js';
import { EMPTY_DRAFT, judge, type Draft, type Fields, type Judged } from './draft.js';
import { WORDS as words } from './messages/en.js';
import { POT_FIELD, STOVE_FIELD } from './pot-fields.js';
import { drawingStyles } from './styles/drawing.css.js';
import { layout } from './styles/layout.css.js';
import { parts } from './styles/parts.css.js';
import { tokens } from './styles/tokens.css.js';
import { actions, type ActionsModel } from './views/actions.js';
import { answer } from './views/answer.js';
import { cantTell } from './views/cant-tell.js';
import { day } from './views/day.js';
import { drawing } from './views/drawing.js';
import { foldedFinding, openFinding } from './views/finding.js';
import { headline } from './views/headline.js';
import { holdsUp } from './views/holds-up.js';
import { mast } from './views/mast.js';
import { noKit } from './views/no-kit.js';
import { potForm } from './views/pot-form.js';
import { problems } from './views/problems.js';
import { reading } from './views/reading.js';
import { plainBreaks, sheet } from './views/sheet.js';
import { sources } from './views/sources.js';
import { tripStrip, type OnTrip } from './views/trip-strip.js';
import type { NewValue } from './views/value.js';

/** Milliseconds from the last stroke to the check; a long text waits until the hands rest. */
const TYPING_MS = 60;
const LONG_TEXT = { length: 20_000, ms: 400 };
/** Milliseconds after which headline and tally are spoken. */
const REST_MS = 1000;
/** Findings that stand open; the rest are one press away. */
const OPEN = 3;
/** From this width on (px) there is room for Why beside every open finding. */
const WIDE = 600;

/**
 * `<brimwise-check>`: a second opinion on a kit list or on one pot, as one types.
 *
 * @property draft  what is typed; may be set before or after the element is connected
 * @attribute heading-level  level of its first headings, 2 where left out
 * @attribute data-theme  "light" or "dark"; the reader's system where left out
 * @event brimwise-draft  at every change by the person, at once; `detail` is the draft
 */
export class BrimwiseCheck extends LitElement {
  static override styles = [tokens, parts, drawingStyles, layout];
  static override properties = {
    draft: { attribute: false },
    headingLevel: { type: Number, attribute: 'heading-level' },
    judged: { state: true },
    editing: { state: true },
    listFolded: { state: true },
    readingFolded: { state: true },
    said: { state: true },
    copied: { state: true },
  };

  declare draft: Draft;
  declare headingLevel: number;
  declare private judged: Judged | null;
  declare private editing: string | null;
  declare private listFolded: boolean;
  declare private readingFolded: boolean;
  declare private said: string;
  declare private copied: ActionsModel['copied'];

  #own: Draft | null = null;
  #checkTimer = 0;
  #restTimer = 0;
  /** What takes the focus once it is there. */
  #focusNext: string | null = null;

  constructor() {
    super();
    this.draft = EMPTY_DRAFT;
    this.headingLevel = 2;
    this.judged = null;
    this.editing = null;
    this.listFolded = true;
    this.readingFolded = true;
    this.said = '';
    this.copied = null;
  }

  /** The caret goes to the list, or to the first field of the pot. */
  override focus(options?: FocusOptions): void {
    const focusField = () => this.#find('textarea, .form input:not([type])')?.focus(options);
    if (this.hasUpdated) focusField();
    else void this.updateComplete.then(focusField);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#checkTimer);
    clearTimeout(this.#restTimer);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if (this.hasUpdated) this.#check();
  }

  override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('draft') || this.draft === this.#own) return;
    this.draft = { ...EMPTY_DRAFT, ...this.draft };
    this.#own = this.draft;
    this.editing = null;
    this.#check();
  }

  override updated(): void {
    if (this.#focusNext === null) return;
    const next = this.#find(this.#focusNext);
    this.#focusNext = null;
    next?.focus();
    if (next instanceof HTMLInputElement) next.select();
  }

  #find(selector: string): HTMLElement | null {
    return this.renderRoot.querySelector<HTMLElement>(selector);
  }

  #change(part: Partial<Draft>, delay = 0): void {
    this.draft = { ...this.draft, ...part };
    this.#own = this.draft;
    this.copied = null;
    this.dispatchEvent(new CustomEvent('brimwise-draft', { bubbles: true, composed: true, detail: this.draft }));
    clearTimeout(this.#checkTimer);
    if (delay === 0) this.#check();
    else this.#checkTimer = window.setTimeout(() => this.#check(), delay);
  }

  /** Delay of a check after a stroke. */
  get #typing(): number {
    return this.draft.text.length > LONG_TEXT.length ? LONG_TEXT.ms : TYPING_MS;
  }

  #check(): void {
    clearTimeout(this.#checkTimer);
    this.judged = judge(this.draft);
    clearTimeout(this.#restTimer);
    this.#restTimer = window.setTimeout(() => {
      this.said = this.judged === null ? '' : spoken(this.judged.report);
    }, REST_MS);
  }

  #setText = (text: string): void => this.#change({ text }, this.#typing);

  #setTrip: OnTrip = (name, value) => this.#change({ trip: withField(this.draft.trip, name, value) }, this.#typing);

  /** Takes "pot.capacity" or "stove.type"; undefined or "" empties it. */
  #setPot = (field: string, value: string | number | boolean | undefined): void => {
    const [part, name] = field.split('.');
    if (name === undefined || (part !== 'pot' && part !== 'stove')) return;
    this.#change({ [part]: withField(this.draft[part], name, value) }, this.#typing);
  };

  #edit = (key: string | null): void => {
    // A field that is taken away after Enter or Escape is left once more.
    if (key === null && this.editing === null) return;
    this.#focusNext = key === null ? valueSelector(this.editing) : '.reading [data-edit]';
    this.editing = key;
  };

  #correct = (anchor: Anchor, value: NewValue, by: 'enter' | 'leaving'): void => {
    if (by === 'leaving' && this.editing === null) return;
    this.editing = null;
    if (by === 'enter') this.#focusNext = valueSelector(keyOf(anchor));
    this.#change({ corrections: withCorrection(this.draft.corrections, anchor, value) });
  };

  #answer = (item: number | undefined, field: CorrectableField, value: NewValue): void => {
    if (item === undefined) {
      const pot = POT_FIELD[field];
      const name = pot ? `pot.${pot}` : `stove.${STOVE_FIELD[field]}`;
      this.#setPot(name, value ?? undefined);
      return;
    }
    if (this.judged === null) return;
    const anchor = anchorOf(this.judged.draft.text, this.judged.report.reading, item, field);
    this.#change({ corrections: withCorrection(this.draft.corrections, anchor, value) });
  };

  #canSet = (item: number | undefined, field: CorrectableField): boolean =>
    item !== undefined || (this.draft.entrance === 'pot' && (field in POT_FIELD || field in STOVE_FIELD));

  #addLine = (line: string): void => {
    const { text } = this.draft;
    this.#change({ text: text === '' || text.endsWith('\n') ? text + line : `${text}\n${line}` });
  };

  #showLine = (line: number): void => {
    const area = this.#find('textarea');
    const span = this.judged?.report.reading.lines[line - 1]?.span;
    if (!(area instanceof HTMLTextAreaElement) || span === undefined) return;
    const { text } = this.draft;
    area.focus();
    area.setSelectionRange(plainBreaks(text.slice(0, span[0])).length, plainBreaks(text.slice(0, span[1])).length);
  };

  #showGrade = (grade: Grade): void => {
    const finding = this.#find(`.finding[data-grade="${grade}"]`);
    if (finding instanceof HTMLDetailsElement) {
      finding.open = true;
      finding.querySelector('summary')?.focus();
    } else finding?.focus();
    finding?.scrollIntoView({ block: 'start' });
  };

  #copy = async (): Promise<void> => {
    if (this.judged === null) return;
    const text = remark(this.judged.report, this.judged.draft.text);
    try {
      await navigator.clipboard.writeText(text);
      this.copied = { done: true, text };
    } catch {
      this.copied = { done: false, text };
    }
  };

  override render(): TemplateResult {
    const { entrance } = this.draft;
    return html`<div class="bw" role="region" aria-label=${words.region}>
      ${entrance === 'list' ? this.#list() : this.#pot()}
      <p class="vh" role="status">${this.said}</p>
    </div>`;
  }

  #mast(): TemplateResult {
    return mast(this.draft.entrance, words, (entrance) => this.#change({ entrance }));
  }

  #list(): TemplateResult {
    const { draft, judged } = this;
    const level = this.headingLevel;
    return html`<div class="page spread">
      ${this.#mast()}
      <div class="left">
        ${this.#trip()}
        ${sheet(
          {
            text: draft.text,
            reading: judged?.report.reading ?? null,
            readText: judged?.draft.text ?? '',
            folded: this.listFolded,
            level,
          },
          words,
          {
            onText: this.#setText,
            onFold: (folded) => (this.listFolded = folded),
            onExample: () => this.#change({ text: words.exampleList }),
          },
        )}
        ${
          judged === null
            ? nothing
            : reading({ ...judged, editing: this.editing, folded: this.readingFolded, level }, words, {
                onEdit: this.#edit,
                onCorrect: this.#correct,
                onForget: (at) => this.#change({ corrections: draft.corrections.filter((_, i) => i !== at) }),
                onFold: (folded) => (this.readingFolded = folded),
              })
        }
      </div>
      <div class="right">${judged === null ? nothing : this.#findings(judged)}</div>
      ${this.#foot()}
    </div>`;
  }

  #pot(): TemplateResult {
    const { draft, judged } = this;
    const pot = judged?.report.pots[0];
    return html`<div class="page bench">
      ${this.#mast()}
      <div class="a">
        <div class="form">
          ${potForm(
            { pot: draft.pot, stove: draft.stove, problems: judged?.report.problems ?? [], level: this.headingLevel },
            words,
            this.#setPot,
          )}
          ${this.#trip()}
        </div>
      </div>
      <div class="b">
        ${judged === null ? nothing : headline(judged.report, this.headingLevel, words, this.#showGrade)}
        <div class="col">${judged === null ? nothing : this.#judgements(judged)}</div>
      </div>
      <div class="c">
        <div class="plate">
          ${judged === null || pot === undefined ? nothing : drawing(pot, judged.report.stove, judged.report.units, words)}
        </div>
      </div>
      ${this.#foot()}
    </div>`;
  }

  #trip(): TemplateResult {
    const report = this.judged?.report;
    return tripStrip(
      {
        typed: this.draft.trip,
        trip: report?.trip ?? null,
        reading: this.draft.entrance === 'list' ? (report?.reading ?? null) : null,
        problems: report?.problems ?? [],
        level: this.headingLevel,
      },
      words,
      this.#setTrip,
      () => this.#change({ trip: {} }),
    );
  }

  #findings(judged: Judged): TemplateResult {
    const { report } = judged;
    if (report.findings.length === 0)
      return noKit(report, this.headingLevel, words, () => this.#addLine(words.lineToCopy));
    return html`${headline(report, this.headingLevel, words, this.#showGrade)}${this.#judgements(judged)}`;
  }

  #judgements({ report }: Judged): TemplateResult {
    const level = this.headingLevel + 1;
    const wide = this.clientWidth >= WIDE;
    const of = (...grades: Grade[]) => report.findings.filter(({ grade }) => grades.includes(grade));
    const context = { words, level, sources: report.sources, onLine: this.#showLine };
    return html`${repeat(of('can-hurt', 'falls-short', 'costs-you'), keyOfFinding, (finding, i) =>
      i < OPEN
        ? openFinding(finding, { ...context, whyOpen: wide || i === 0 })
        : foldedFinding(finding, { ...context, whyOpen: true }),
    )}
    ${cantTell(of('cant-tell'), {
      ...context,
      answer: (question) =>
        answer(question, {
          words,
          report,
          trip: this.draft.trip,
          onTrip: this.#setTrip,
          onValue: this.#answer,
          canSet: this.#canSet,
          onAddLine: this.#addLine,
        }),
    })}
    ${holdsUp(of('holds-up'), level, words)} ${day(report, level, words)}
    ${problems(report.problems.filter(elsewhere), words)} ${sources(report, words)}`;
  }

  #foot(): TemplateResult {
    return actions({ units: this.draft.units, judged: this.judged !== null, copied: this.copied }, words, {
      onCopy: () => void this.#copy(),
      onUnits: (units: UnitSystem | null) => this.#change({ units }),
    });
  }
}

/** Faults of checks: everything else is told beside its field. */
function elsewhere({ field }: InputProblem): boolean {
  return field.startsWith('check.');
}

function keyOfFinding({ check, item, key }: Finding): string {
  return `${check} ${item ?? ''} ${key}`;
}

function valueSelector(key: string | null): string | null {
  return key === null ? null : `[data-value="${CSS.escape(key)}"]`;
}

function spoken({ summary }: Report): string {
  const counts = Object.entries(summary.counts).flatMap(([grade, count]) =>
    count === 0 ? [] : [words.tally[grade as Grade](count)],
  );
  return `${summary.headline} ${counts.join(', ')}.`;
}

/** The fields with one set as typed; without it where it is emptied. */
function withField(fields: Fields, name: string, value: string | number | boolean | undefined): Fields {
  const rest = Object.fromEntries(Object.entries(fields).filter(([other]) => other !== name));
  return value === undefined || value === '' ? rest : { ...rest, [name]: value };
}
