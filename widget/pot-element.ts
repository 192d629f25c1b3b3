import { html, nothing, type PropertyDeclarations, type PropertyValues, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { repeat } from 'lit/directives/repeat.js';
import type { CorrectableField, Finding, Grade, InputProblem, Report, UnitSystem } from '../core/index.js';
import { EMPTY_DRAFT, isAsked, type Draft, type Fields, type Judged } from './draft.js';
import { BrimwiseElement, settingProperties } from './element.js';
import { loadJudge, judgeAtHand } from './judging.js';
import { nearestLang } from './language.js';
import type { Words } from './messages/en.js';
import { POT_FIELD, STOVE_FIELD } from './pot-fields.js';
import { follow, withLocked, type ElementName, type Settled } from './settings.js';
import { actions, type ActionsModel } from './views/actions.js';
import { answer } from './views/answer.js';
import { cantTell } from './views/cant-tell.js';
import { day } from './views/day.js';
import { foldedFinding, openFinding } from './views/finding.js';
import { heading } from './views/heading.js';
import { headline } from './views/headline.js';
import { cautionRows } from './views/cautions.js';
import { holdsUp } from './views/holds-up.js';
import { IN_SIGHT, potForm } from './views/pot-form.js';
import { problems } from './views/problems.js';
import { sources } from './views/sources.js';
import { tripStrip, type OnTrip } from './views/trip-strip.js';
import type { NewValue } from './views/value.js';

/** Milliseconds from the last stroke to the check; a long text waits until the hands rest. */
const TYPING_MS = 60;
const LONG_TEXT = { length: 20_000, ms: 400 };
/** Milliseconds after which headline and tally are spoken. */
const REST_MS = 1000;
/** Findings that stand open, and all that can hurt; the rest are one press away. */
const OPEN = 3;
/** From this width on (px) there is room for Why beside every open finding. */
const WIDE = 600;

/**
 * `<brimwise-pot>`: a second opinion on one pot, as one types its figures.
 *
 * @property draft  what is typed; may be set before or after the element is connected
 * @property usual  what to assume of a trip, by the names of `Trip`, where neither the reader nor the list says it
 * @event brimwise-draft  at every change by the reader, at once; `detail` is the draft
 * @event brimwise-report  when a change by the reader has been judged; `detail` is the report, or null
 */
export class BrimwisePot extends BrimwiseElement {
  static override properties: PropertyDeclarations = {
    ...settingProperties('brimwise-pot'),
    draft: { attribute: false },
    usual: { attribute: false },
    said: { state: true },
    unjudged: { state: true },
    copied: { state: true },
    tripFolded: { state: true },
    potFolded: { state: true },
    writing: { state: true },
  };

  declare draft: Draft;
  declare usual: Fields;
  declare private said: string;
  /** The part that judges did not come. */
  declare private unjudged: boolean;
  declare private copied: ActionsModel['copied'];
  declare private tripFolded: boolean;
  declare private potFolded: boolean;
  /** An answer is being written in place of the page. */
  declare private writing: boolean;

  #own: Draft | null = null;
  #wide = false;
  #checkTimer = 0;
  #restTimer = 0;
  /** What takes the focus once it is there. */
  protected focusNext: string | null = null;

  constructor() {
    super();
    this.draft = EMPTY_DRAFT;
    this.usual = {};
    this.said = '';
    this.unjudged = false;
    this.copied = null;
    this.tripFolded = true;
    this.potFolded = true;
    this.writing = false;
  }

  protected get tag(): ElementName {
    return 'brimwise-pot';
  }

  /** The caret goes to the list, or to the first field of the pot. */
  override focus(options?: FocusOptions): void {
    const focusField = () => this.find('textarea, .form input:not([type])')?.focus(options);
    if (this.hasUpdated) focusField();
    else void this.updateComplete.then(focusField);
  }

  /** The focus goes to the headline of the findings; to what one types in where there is none. */
  async focusResult(): Promise<void> {
    await this.updateComplete;
    if (isAsked(this.draft)) {
      await loadJudge(this.draft.entrance);
      await this.updateComplete;
    }
    const headline = this.find('.headline');
    if (headline === null) return this.focus();
    headline.tabIndex = -1;
    headline.focus();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearTimeout(this.#checkTimer);
    clearTimeout(this.#restTimer);
  }

  protected override settledChanged(before: Settled): void {
    this.draft = follow({ ...EMPTY_DRAFT, ...this.draft }, before.draft, this.settled.draft);
    this.#own = null;
  }

  override willUpdate(changed: PropertyValues<this>): void {
    super.willUpdate(changed);
    if (this.draft === this.#own) {
      if (changed.has('usual')) this.#check();
      return;
    }
    this.draft = withLocked({ ...EMPTY_DRAFT, ...this.draft }, this.settled);
    this.#own = this.draft;
    this.draftReplaced();
    this.#check();
  }

  /** Called where another than the reader has set the draft. */
  protected draftReplaced(): void {
    this.tripFolded = true;
  }

  override updated(): void {
    if (this.focusNext === null) return;
    const next = this.find(this.focusNext);
    this.focusNext = null;
    next?.focus();
    if (next instanceof HTMLInputElement) next.select();
  }

  protected find(selector: string): HTMLElement | null {
    return this.renderRoot.querySelector<HTMLElement>(selector);
  }

  /** A change by the reader. */
  protected change(part: Partial<Draft>, delay = 0): void {
    // Sentences that were written about another list go; the rest of a letter stays.
    const letter =
      'letter' in part ? {} : { letter: judgeAtHand()?.keptLetter(this.draft.letter) ?? this.draft.letter };
    this.draft = { ...this.draft, ...letter, ...part };
    this.#own = this.draft;
    this.copied = null;
    this.#tell('brimwise-draft', this.draft);
    clearTimeout(this.#checkTimer);
    if (delay === 0) this.#check(true);
    else this.#checkTimer = window.setTimeout(() => void this.#checkTyped(this.draft), delay);
  }

  #tell(name: string, detail: unknown): void {
    this.dispatchEvent(new CustomEvent(name, { bubbles: true, composed: true, detail }));
  }

  /** Delay of a check after a stroke. */
  protected get typing(): number {
    return this.draft.text.length > LONG_TEXT.length ? LONG_TEXT.ms : TYPING_MS;
  }

  /** A stroke is judged between others. */
  async #checkTyped(draft: Draft): Promise<void> {
    const judged = await judgeAtHand(draft.entrance)?.judgeBetweenStrokes(
      () => draft !== this.draft,
      draft,
      this.words,
      this.usual,
    );
    if (draft === this.draft) this.#check(true, judged);
  }

  #check(byReader = false, judged?: Judged | null): void {
    clearTimeout(this.#checkTimer);
    const judging = judgeAtHand(this.draft.entrance);
    if (judging === null && (byReader || isAsked(this.draft))) {
      void this.#checkLater(byReader);
      return;
    }
    const missing = judging?.languagesMissing(typedText(this.draft), this.settled.language ?? nearestLang(this)) ?? [];
    if (missing.length > 0) {
      void this.#learn(missing).then(() => this.#check(byReader));
      return;
    }
    // Asked while nothing is half drawn: later, the browser would have to lay out the page for it.
    this.#wide = (this.find('.bw')?.clientWidth ?? this.clientWidth) >= WIDE;
    this.judged = judged === undefined ? (judging?.judge(this.draft, this.words, this.usual) ?? null) : judged;
    this.unjudged = false;
    if (byReader) this.#tell('brimwise-report', this.report);
    clearTimeout(this.#restTimer);
    this.#restTimer = window.setTimeout(() => {
      this.said = this.judged === null ? '' : spoken(this.judged.report, this.words);
    }, REST_MS);
  }

  /** Checks once the part that judges is there; what it says of the settings counts from then on. */
  async #checkLater(byReader: boolean): Promise<void> {
    const { entrance } = this.draft;
    await loadJudge(entrance);
    if (judgeAtHand(entrance) === null) {
      this.unjudged = true;
      return;
    }
    this.settleAnew();
    await this.updateComplete;
    this.#check(byReader);
  }

  protected override isAsked(): boolean {
    return isAsked({ ...EMPTY_DRAFT, ...this.draft }) || super.isAsked();
  }

  protected override readyToJudge(): Promise<unknown> | undefined {
    return super.readyToJudge()?.then(() => this.#readyToRead()) ?? this.#readyToRead();
  }

  #readyToRead(): Promise<unknown> | undefined {
    const { draft, language } = this.settledNow();
    const missing = judgeAtHand(draft.entrance)?.languagesMissing(draft.text, language ?? nearestLang(this)) ?? [];
    return missing.length === 0 ? undefined : this.#learn(missing);
  }

  async #learn(tags: readonly string[]): Promise<void> {
    const failed = (await judgeAtHand()?.learnLanguages(tags)) ?? [];
    // eslint-disable-next-line no-console -- a file that is missing is told where the writer looks
    if (failed.length > 0) console.warn(`<${this.tag}> reads on without its words of: ${failed.join(' ')}`);
  }

  #setTrip: OnTrip = (name, value) => {
    // Whoever types into the fields keeps them.
    this.tripFolded = false;
    this.change({ trip: withField(this.draft.trip, name, value) }, this.typing);
  };

  /** Takes "pot.capacity" or "stove.type"; undefined or "" empties it. */
  #setPot = (field: string, value: string | number | boolean | undefined): void => {
    const [part, name] = field.split('.');
    if (name === undefined || (part !== 'pot' && part !== 'stove')) return;
    this.change({ [part]: withField(this.draft[part], name, value) }, this.typing);
  };

  /** An answer to a question: about an item of the list, or about the one pot and its stove. */
  protected answer(_item: number | undefined, field: CorrectableField, value: NewValue): void {
    const name = typedField(field);
    if (name !== undefined) this.#setPot(name, value ?? undefined);
  }

  protected canAnswer(_item: number | undefined, field: CorrectableField): boolean {
    const name = typedField(field);
    return name !== undefined && !this.settled.locked.has(name);
  }

  /** Puts one more line into the list; null where there is none to put it into. */
  protected get addLine(): ((line: string) => void) | null {
    return null;
  }

  /** Leads to a line of the list. */
  protected showLine: (line: number) => void = () => {};

  #showGrade = (grade: Grade): void => {
    const finding = this.find(`.finding[data-grade="${grade}"]`);
    if (finding instanceof HTMLDetailsElement) {
      finding.open = true;
      finding.querySelector('summary')?.focus();
    } else finding?.focus();
    finding?.scrollIntoView({ block: 'start' });
  };

  #copy = async (format: 'plain' | 'markdown'): Promise<void> => {
    const judging = judgeAtHand();
    if (this.judged === null || judging === null) return;
    const text = judging.remark(this.judged.report, this.judged.draft.text, format, this.words.language);
    try {
      await navigator.clipboard.writeText(text);
      this.copied = { done: true, text };
    } catch {
      this.copied = { done: false, text };
    }
  };

  #copyLetter = async (texts: Readonly<Record<'html' | 'plain' | 'markdown', string>>, format: keyof typeof texts) => {
    try {
      if (format === 'html')
        await navigator.clipboard.write([
          new ClipboardItem({
            'text/html': new Blob([texts.html], { type: 'text/html' }),
            'text/plain': new Blob([texts.plain], { type: 'text/plain' }),
          }),
        ]);
      else await navigator.clipboard.writeText(texts[format]);
      this.copied = { done: true, text: texts.plain };
    } catch {
      this.copied = { done: false, text: format === 'html' ? texts.plain : texts[format] };
    }
  };

  /** Keeps what is done in the letter, without judging anew: nothing of the question has changed. */
  #setLetter = (name: string, value: string | boolean | undefined): void => {
    this.draft = { ...this.draft, letter: withField(this.draft.letter, name, value) };
    this.#own = this.draft;
    this.copied = null;
    this.#tell('brimwise-draft', this.draft);
  };

  #write = (writing: boolean): void => {
    this.writing = writing;
    this.copied = null;
    this.focusNext = writing ? '[name="letter-first"]' : '.write-letter';
  };

  #letterPage(judged: Judged): unknown {
    const { settled, words } = this;
    return html`<div class="page broad">
      ${this.mast()}
      ${judgeAtHand()?.letter(judged, this.draft.letter, this.copied, settled.level, words, heading, {
        onSet: this.#setLetter,
        onCopy: (texts, format) => void this.#copyLetter(texts, format),
        onClose: () => this.#write(false),
      })}
      <footer class="foot" part="actions"><p>${words.foot}</p></footer>
    </div>`;
  }

  override render(): TemplateResult {
    const { judged } = this;
    const writing = this.writing && judged !== null && judged.report.findings.length > 0;
    return this.frame(
      this.words.region,
      html`${writing ? this.#letterPage(judged) : this.page()}
        ${this.unjudged ? html`<p class="note" role="alert">${this.words.unjudged}</p>` : nothing}
        <p class="vh" role="status">${this.said}</p>`,
    );
  }

  protected page(): TemplateResult {
    const { draft, judged, settled } = this;
    const pot = judged?.report.pots[0];
    const drawn =
      judged === null || pot === undefined
        ? nothing
        : judgeAtHand()?.drawing(pot, judged.report.stoves[0] ?? null, judged.report.units, this.words);
    return html`<div class="page bench">
      ${this.mast()}
      <div class="a">
        ${this.trip()}
        <div class="form ${this.potFolded && !problemOutOfSight(judged?.report.problems) ? 'folded' : ''}" part="form">
          ${
            this.shows('form')
              ? potForm(
                  {
                    pot: draft.pot,
                    stove: draft.stove,
                    problems: judged?.report.problems ?? [],
                    level: settled.level,
                    locked: settled.locked,
                    folded: this.potFolded,
                  },
                  this.words,
                  this.#setPot,
                  (folded) => (this.potFolded = folded),
                )
              : nothing
          }
        </div>
      </div>
      <div class="b">
        ${judged === null ? nothing : this.headline(judged)}
        <div class="col">${judged === null ? nothing : this.judgements(judged)}</div>
      </div>
      <div class="c">
        ${this.shows('drawing') ? html`<div class="plate" part="drawing">${drawn}</div>` : nothing}
        ${this.shows('chart') ? this.#lookFor() : nothing}
      </div>
      ${this.foot()}
    </div>`;
  }

  /** With no pot yet, it is what one begins with. */
  #lookFor(): unknown {
    const judging = judgeAtHand();
    const { draft, words, usual, settled } = this;
    if (judging === null) return nothing;
    return guard([draft, words, usual, settled], () => {
      const look = judging.lookForPot(draft, words, usual);
      if (look === null) return nothing;
      return html`<section class="plate look" part="chart">
        ${heading(settled.level, 't', look.words.title)} ${judging.chart(look, draft.units ?? 'metric', words)}
      </section>`;
    });
  }

  protected mast(): TemplateResult | typeof nothing {
    return nothing;
  }

  protected trip(): TemplateResult | typeof nothing {
    if (!this.shows('trip')) return nothing;
    const report = this.judged?.report;
    const set = this.settled.draft.trip;
    return tripStrip(
      {
        typed: this.draft.trip,
        set,
        trip: report?.trip ?? null,
        reading: this.draft.entrance === 'list' ? (report?.reading ?? null) : null,
        problems: report?.problems ?? [],
        level: this.settled.level,
        units: report?.units ?? 'metric',
        locked: this.settled.locked,
        onePot: this.draft.entrance === 'pot',
        folded: this.tripFolded && report !== undefined,
      },
      this.words,
      this.#setTrip,
      () => this.change({ trip: set }),
      (folded) => {
        this.tripFolded = folded;
        this.focusNext = '.strip-row :is(input, select)';
      },
    );
  }

  protected headline({ report }: Judged): TemplateResult {
    return headline(report, this.settled.level, this.words, this.#showGrade);
  }

  protected judgements({ report }: Judged): TemplateResult {
    const level = this.settled.level + 1;
    const of = (...grades: Grade[]) => report.findings.filter(({ grade }) => grades.includes(grade));
    const context = { words: this.words, level, sources: report.sources, onLine: this.showLine };
    return html`${repeat(of('can-hurt', 'falls-short', 'costs-you'), keyOfFinding, (finding, i) =>
      i < OPEN || finding.grade === 'can-hurt'
        ? openFinding(finding, { ...context, whyOpen: this.#wide || i === 0 })
        : foldedFinding(finding, { ...context, whyOpen: true }),
    )}
    ${cantTell(of('cant-tell'), {
      ...context,
      answer: (question) =>
        answer(question, {
          words: this.words,
          report,
          trip: this.draft.trip,
          locked: this.settled.locked,
          onTrip: this.#setTrip,
          onValue: (item, field, value) => this.answer(item, field, value),
          canSet: (item, field) => this.canAnswer(item, field),
          onAddLine: this.addLine,
        }),
    })}
    ${cautionRows(report.cautions, level, report.sources, this.words)} ${holdsUp(of('holds-up'), level, this.words)}
    ${this.shows('day') ? day(report, level, this.words) : nothing}
    ${problems(report.problems.filter(elsewhere), this.words)}
    ${this.shows('sources') ? sources(report, this.words) : nothing}`;
  }

  protected foot(): TemplateResult {
    return actions(
      { units: this.draft.units, judged: this.judged !== null, copied: this.copied, shown: this.shows('actions') },
      this.words,
      {
        onWrite: () => this.#write(true),
        onCopy: (format) => void this.#copy(format),
        onUnits: (units: UnitSystem | null) => this.change({ units }),
      },
    );
  }
}

/** What is typed that tells its language: the list, or the figures of the pot with their units. */
function typedText({ entrance, text, pot, stove }: Draft): string {
  if (entrance === 'list') return text;
  return Object.values({ ...pot, ...stove })
    .filter((value) => typeof value === 'string' && /\d/.test(value))
    .join('\n');
}

/** Where the form has a field that a question asks for: "pot.capacity". */
function typedField(field: CorrectableField): string | undefined {
  if (POT_FIELD[field]) return `pot.${POT_FIELD[field]}`;
  return STOVE_FIELD[field] && `stove.${STOVE_FIELD[field]}`;
}

/** Faults of checks: everything else is told beside its field. */
function elsewhere({ field }: InputProblem): boolean {
  return field.startsWith('check.');
}

/** A field that cannot be used is not folded away. */
function problemOutOfSight(problems: readonly InputProblem[] = []): boolean {
  return problems.some(({ field }) => /^(pot|stove)\./.test(field) && !IN_SIGHT.includes(field));
}

function keyOfFinding({ check, item, key }: Finding): string {
  return `${check} ${item ?? ''} ${key}`;
}

function spoken({ summary }: Report, words: Words): string {
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
