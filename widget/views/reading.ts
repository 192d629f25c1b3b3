import { html, nothing, type TemplateResult } from 'lit';
import { valueOf } from '../../core/figures.js';
import type {
  CorrectableField,
  Correction,
  Given,
  InputProblem,
  Item,
  Line,
  Reading,
  Report,
} from '../../core/index.js';
import { anchorOf, itemsOn, keyOf, newItemAnchor, passingAnchor, type Anchor } from '../anchor.js';
import type { Judged } from '../draft.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { editor, wordValue, type NewValue } from './value.js';

export interface ReadingModel extends Judged {
  /** Key of the value that is being corrected. */
  readonly editing: string | null;
  readonly folded: boolean;
  /** All lines, however many; else the first ROWS. */
  readonly whole: boolean;
  readonly level: number;
}

export interface ReadingActions {
  readonly onEdit: (key: string | null) => void;
  readonly onCorrect: (anchor: Anchor, value: NewValue, by: 'enter' | 'leaving') => void;
  readonly onForget: (correction: number) => void;
  readonly onFold: (folded: boolean) => void;
  readonly onWhole: () => void;
}

/** More lines than a kit list has: who pastes a book is not made to wait until all of it is drawn. */
const ROWS = 500;

/** Fields in the order they are shown; capacities stand before them, the count before the kind. */
const FIELDS = [
  'material',
  'stoveType',
  'stoveForm',
  'fuelType',
  'gasMix',
  'fuelMassG',
  'fuelVolumeMl',
  'diameterMm',
  'baseDiameterMm',
  'heightMm',
  'sizeMm',
  'burnerMm',
  'supportsMm',
  'lid',
  'bail',
  'handles',
  'massG',
] as const satisfies readonly CorrectableField[];

/** What was understood, line by line; each value can be put right in place. */
export function reading(model: ReadingModel, words: Words, actions: ReadingActions): TemplateResult {
  const { report, folded, level } = model;
  const lines = report.reading.lines;
  const off = lines.filter(({ use }) => use === 'not-cook-kit');
  const shown = lines.filter(
    ({ number, use }) => use === 'not-understood' || itemsOn(report.reading, number).length > 0,
  );
  return html`<section class="row reading ${folded ? 'folded' : ''}" part="reading" aria-label=${words.reading}>
    <div class="m">
      ${heading(level, 't', words.reading)}
      <p class="n">${report.summary.lines}</p>
      <button
        type="button"
        class="tog"
        aria-expanded=${folded ? 'false' : 'true'}
        aria-controls="read"
        @click=${() => actions.onFold(!folded)}
      >
        ${words.readingFold(report.summary.lines)}
      </button>
    </div>
    <div class="w" id="read">
      ${report.reading.notes.map((note) => html`<p class="note">${note}</p>`)}
      ${shown.length === 0 ? nothing : key(words)} ${rows(shown, model, words, actions)}
      ${
        off.length === 0
          ? nothing
          : html`<details class="fold shelf">
              <summary>${words.notCookKit(off.length)}</summary>
              ${rows(off, model, words, actions)}
            </details>`
      }
      ${unused(model, words, actions)}
    </div>
  </section>`;
}

/** What sentences name in passing, below the reading: one press counts one, one more all of them. */
export function alsoNamed(
  { draft, report, asRead, level }: ReadingModel,
  words: Words,
  onCount: (anchors: readonly Omit<Correction, 'value'>[]) => void,
): TemplateResult | typeof nothing {
  const { passing } = report.reading;
  if (passing.length === 0) return nothing;
  const anchors = passing.map((thing) => passingAnchor(draft.text, asRead, thing));
  return html`<section class="row also" part="also-named" aria-label=${words.alsoNamed}>
    <div class="m">
      ${heading(level, 't', words.alsoNamed)}
      <p class="n">${words.alsoNamedWhy}</p>
    </div>
    <div class="w">
      <ul class="read">
        ${passing.map((thing, at) => {
          const name = inWords(thing, report, words);
          return html`<li>
            <span class="ln">${thing.line}</span>
            <span
              ><span title=${thing.because}>${name}</span>
              <button
                type="button"
                class="act in"
                aria-label=${words.countIt(name, thing.line)}
                @click=${() => onCount(anchors.slice(at, at + 1))}
              >
                ${words.itCounts}
              </button></span
            >
          </li>`;
        })}
      </ul>
      ${
        passing.length === 1
          ? nothing
          : html`<button type="button" class="act" @click=${() => onCount(anchors)}>
              ${words.countAll(passing.length)}
            </button>`
      }
    </div>
  </section>`;
}

/** "pot 900 mL titanium": a thing with what is known of it. */
function inWords(item: Item, report: Report, words: Words): string {
  const said = [
    ...item.capacitiesMl.map((given) => ['capacityMl', given] as const),
    ...FIELDS.map((field) => [field, item[field]] as const),
  ].filter(([, { grounds }]) => grounds === 'stated');
  return [nameOf(item, words), ...said.map(([field, given]) => wordRange(field, given, report, words))].join(' ');
}

function rows(lines: readonly Line[], model: ReadingModel, words: Words, actions: ReadingActions): TemplateResult {
  const drawn = model.whole ? lines : lines.slice(0, ROWS);
  const others = lines.length - drawn.length;
  return html`<ol class="read">
      ${drawn.map((line) => lineRow(line, model, words, actions))}
    </ol>
    ${
      others === 0
        ? nothing
        : html`<button type="button" class="act" @click=${actions.onWhole}>${words.otherLines(others)}</button>`
    }`;
}

function key(words: Words): TemplateResult {
  return html`<p class="key">
    <span class="val">${words.grounds.stated}</span><span class="val worked">${words.grounds['worked-out']}</span
    ><span class="val assumed">${words.grounds.assumed}</span
    ><span class="val"><del>${words.was}</del><ins>${words.yours}</ins></span
    ><span>${words.pressToChange}</span>
  </p>`;
}

function lineRow(line: Line, model: ReadingModel, words: Words, actions: ReadingActions): TemplateResult {
  const { report } = model;
  const items = itemsOn(report.reading, line.number).flatMap((index) => {
    const item = report.reading.items[index];
    return item ? [{ item, index }] : [];
  });
  return html`<li>
    <span class="ln">${line.number}</span>
    <span
      >${
        items.length > 0
          ? items.map(({ item, index }) => itemWords(item, index, model, words, actions))
          : unread(line, model, words, actions)
      }</span
    >
  </li>`;
}

/** A line that nothing was read from, and the way to say what it is. */
function unread(line: Line, model: ReadingModel, words: Words, actions: ReadingActions): TemplateResult {
  const { draft, report, editing } = model;
  const anchor = newItemAnchor(draft.text, report.reading, line.number);
  const text = draft.text.slice(...line.span).trim();
  const odd = line.use === 'not-understood';
  return html`<span class=${odd ? '' : 'off'}
      >${short(text)}${odd ? html`${words.language.colon}${words.notUnderstood}` : nothing}</span
    >
    ${
      editing === keyOf(anchor)
        ? edit(anchor, '', words.whatIsIt(line.number), words, actions)
        : html`<button
            type="button"
            class="act in"
            data-value=${keyOf(anchor)}
            aria-label="${odd ? words.sayWhat : words.itIs}${words.language.colon}${words.whatIsIt(line.number)}"
            @click=${() => actions.onEdit(keyOf(anchor))}
          >
            ${odd ? words.sayWhat : words.itIs}
          </button>`
    }`;
}

function short(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text;
}

function itemWords(
  item: Item,
  index: number,
  model: ReadingModel,
  words: Words,
  actions: ReadingActions,
): TemplateResult {
  const { draft, report, asRead, editing } = model;
  const before = originalOf(item, index, report.reading, asRead);
  const button = (field: CorrectableField, given: Given<unknown>, was: Given<unknown> | undefined, vessel?: number) =>
    valueButton(
      { anchor: anchorOf(draft.text, report.reading, index, field, vessel), item, given, was },
      model,
      words,
      actions,
    );
  const kindAnchor = anchorOf(draft.text, report.reading, index, 'kind');
  const kindKey = keyOf(kindAnchor);
  const kind =
    editing === kindKey
      ? edit(kindAnchor, item.kind, words.editLabel(words.fields.kind, nameOf(item, words)), words, actions, item)
      : html`<button
          type="button"
          class="k val ${item.kindBecause ? 'assumed' : ''}"
          data-value=${kindKey}
          title=${item.kindBecause ?? nothing}
          aria-label=${words.kindLabel(nameOf(item, words), item.line)}
          @click=${() => actions.onEdit(kindKey)}
        >
          ${nameOf(item, words)}
        </button>`;
  if (!item.carried) {
    const carried = anchorOf(draft.text, report.reading, index, 'carried');
    return html`<span class="it off"
      >${nameOf(item, words)} ${words.notCarried(item.notCarriedBecause ?? '')}
      <button type="button" class="act in" @click=${() => actions.onCorrect(carried, true, 'enter')}>
        ${words.itCounts}
      </button></span
    >`;
  }
  const counted = item.quantity.grounds !== 'missing' && (item.quantity.value !== 1 || isTyped(item.quantity));
  return html`<span class="it"
    >${counted ? html`${button('quantity', item.quantity, before?.quantity)} × ` : nothing}${kind}
    ${item.capacitiesMl.map((given, vessel) => html`${button('capacityMl', given, before?.capacitiesMl[vessel], vessel)} `)}
    ${FIELDS.map((field) =>
      item[field].grounds === 'missing' ? nothing : html`${button(field, item[field], before?.[field])} `,
    )}
    ${item.boxMm.grounds === 'missing' ? nothing : html`<span class="val">${item.boxMm.value.join(' × ')} mm</span> `}
    ${wanted(index, report).map((field) => slot(item, index, field, model, words, actions))}</span
  >`;
}

/** What a thing is called: by what it is there for, where it has no kind of its own. */
function nameOf({ kind, role }: Item, words: Words): string {
  return role === undefined ? words.kinds[kind] : words.roles[role];
}

/** The same item before any correction. */
function originalOf(item: Item, index: number, now: Reading, asRead: Reading): Item | undefined {
  const place = itemsOn(now, item.line).indexOf(index);
  return asRead.items[itemsOn(asRead, item.line)[place] ?? -1];
}

function isTyped(given: Given<unknown>): boolean {
  return given.grounds === 'stated' && given.typed === true;
}

interface Value {
  readonly anchor: Anchor;
  readonly item: Item;
  readonly given: Given<unknown>;
  readonly was: Given<unknown> | undefined;
}

const GROUNDS_CLASS = { stated: '', 'worked-out': 'worked', assumed: 'assumed', missing: '' } as const;

function valueButton({ anchor, item, given, was }: Value, model: ReadingModel, words: Words, actions: ReadingActions) {
  const { field } = anchor;
  const valueKey = keyOf(anchor);
  const shown = ownWords(given, item, model) ?? wordRange(field, given, model.report, words);
  const kind = nameOf(item, words);
  if (model.editing === valueKey) {
    const value = valueOf(given);
    const start =
      typeof value === 'boolean' ? (value ? 'yes' : 'no') : typeof value === 'number' ? shown : String(value);
    return edit(anchor, start, words.editLabel(words.fields[field], kind), words, actions);
  }
  const struck = isTyped(given) && was && was.grounds !== 'missing' ? wordRange(field, was, model.report, words) : '';
  const grounds = isTyped(given) ? words.yours : words.grounds[given.grounds];
  const reason = given.grounds === 'assumed' ? given.because : given.grounds === 'worked-out' ? given.from : undefined;
  return html`<button
    type="button"
    class="val ${GROUNDS_CLASS[given.grounds]}"
    data-value=${valueKey}
    title=${reason ?? nothing}
    aria-label=${words.valueLabel(words.fields[field], kind, shown, reason ? `${grounds}, ${reason}` : grounds, item.line)}
    @click=${() => actions.onEdit(valueKey)}
  >
    ${isTyped(given) ? html`${struck && struck !== shown ? html`<del>${struck}</del>` : nothing}<ins>${shown}</ins>` : shown}
  </button>`;
}

/** A stated figure as the person writes it, where the text gives it a place of its own. */
function ownWords(given: Given<unknown>, item: Item, { draft, report }: ReadingModel): string | undefined {
  if (draft.units !== null || given.grounds !== 'stated' || typeof given.value !== 'number' || !given.span)
    return undefined;
  const words = report.reading.lines[item.line - 1] ? draft.text.slice(...given.span) : '';
  const { span } = given;
  const sharing = Object.values(item).filter((value: unknown) => {
    const other = value as { span?: unknown } | null;
    return Array.isArray(other?.span) && other.span[0] === span[0];
  });
  return sharing.length <= 1 && /^\d[^\n]{1,14}$/.test(words) ? words : undefined;
}

function wordRange(field: CorrectableField, given: Given<unknown>, report: Report, words: Words): string {
  if (given.grounds === 'missing') return words.grounds.missing;
  const low = wordValue(field, given.value, report.units, words);
  const most = given.grounds === 'stated' ? given.most : undefined;
  return most === undefined ? low : `${low}–${wordValue(field, most, report.units, words)}`;
}

/** Missing values of an item that a check asks for. A width is asked with the height. */
function wanted(index: number, report: Report): CorrectableField[] {
  const item = report.reading.items[index];
  const asked = report.findings.flatMap(({ question }) =>
    question && question.item === index && question.field !== 'kind' && !question.field.startsWith('trip.')
      ? [question.field as CorrectableField]
      : [],
  );
  const both = asked.flatMap((field) => (field === 'diameterMm' ? [field, 'heightMm' as const] : [field]));
  return [...new Set(both)].filter((field) => {
    if (field === 'capacityMl') return item?.capacitiesMl.length === 0;
    const given = item?.[field as (typeof FIELDS)[number]];
    return given?.grounds === 'missing';
  });
}

function slot(
  item: Item,
  index: number,
  field: CorrectableField,
  { draft, report, editing }: ReadingModel,
  words: Words,
  actions: ReadingActions,
): TemplateResult {
  const anchor = anchorOf(draft.text, report.reading, index, field);
  const label = words.slotLabel(words.fields[field], nameOf(item, words), item.line);
  if (editing === keyOf(anchor))
    return edit(anchor, '', words.editLabel(words.fields[field], nameOf(item, words)), words, actions);
  return html`<button
    type="button"
    class="open"
    data-value=${keyOf(anchor)}
    aria-label=${label}
    @click=${() => actions.onEdit(keyOf(anchor))}
  >
    ${words.fields[field]}
  </button> `;
}

function edit(
  anchor: Anchor,
  value: string,
  label: string,
  words: Words,
  actions: ReadingActions,
  item?: Item,
): TemplateResult {
  const drop = '-';
  return editor(
    { field: anchor.field, value, label },
    words,
    (next, by) => {
      if (next === drop) actions.onCorrect({ ...anchor, field: 'carried' }, false, by);
      else if (next === value) actions.onEdit(null);
      else actions.onCorrect(anchor, next, by);
    },
    () => actions.onEdit(null),
    item ? { [drop]: words.notThere } : {},
  );
}

/** Corrections that cannot be used: kept as typed, with the reason. */
function unused({ draft, report }: ReadingModel, words: Words, actions: ReadingActions): unknown {
  return report.problems.filter(isCorrection).map((problem) => {
    const at = Number(problem.field.slice('correction.'.length));
    const correction = draft.corrections[at];
    return html`<p class="err">
      ${correction ? html`<q>${short(correction.quote.trim())}</q> ` : nothing}${words.unused(problem.value, problem.message)}
      <button type="button" class="act in" @click=${() => actions.onForget(at)}>${words.forget}</button>
    </p>`;
  });
}

function isCorrection({ field }: InputProblem): boolean {
  return field.startsWith('correction.');
}
