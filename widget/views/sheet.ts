import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import type { Given, Item, Line, Reading, Span } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { pastedText } from '../pasted.js';

export interface SheetModel {
  readonly text: string;
  /** The reading that the marks are taken from, and the text it is of. */
  readonly reading: Reading | null;
  readonly readText: string;
  readonly folded: boolean;
  readonly level: number;
  /** Whether the page keeps the list as it is. */
  readonly locked: boolean;
}

export interface SheetActions {
  readonly onText: (text: string, pasted: boolean) => void;
  readonly onFold: (folded: boolean) => void;
  readonly onExample: () => void;
}

type Mark = { readonly span: Span; readonly as: 'item' | 'value' | 'guess' };

/** Lines that carry proof marks: those of a list. What is longer stands there unmarked, so that nobody waits for it to be drawn. */
const MARKED = 1000;

/** The list: a textarea with the real text, over a layer that repeats it and carries numbers, ruling and proof marks. */
export function sheet(model: SheetModel, words: Words, actions: SheetActions): TemplateResult {
  const text = plainBreaks(model.text);
  const lines = text.split('\n');
  const marked = marksByLine(model);
  return html`<section class="row list-row ${model.folded ? 'folded' : ''}" part="list" aria-label=${words.list}>
      <div class="m">
        ${heading(model.level, 't', words.list)}
        ${
          text === '' || model.locked
            ? nothing
            : html`<button
                type="button"
                class="act"
                aria-label=${words.clearLabel}
                @click=${() => actions.onText('', false)}
              >
                ${words.clear}
              </button>`
        }
      </div>
      <div class="sheet" id="sheet">
        <div class="lines" aria-hidden="true">
          ${(text === '' ? words.placeholder.split('\n') : lines).map((line, i) => {
            const read = i < MARKED ? marked.get(line) : undefined;
            return guard([line, read], () => markedLine(line, read));
          })}
        </div>
        <textarea
          aria-label=${words.list}
          spellcheck="false"
          ?readonly=${model.locked}
          autocomplete="off"
          placeholder=${words.placeholder}
          .value=${live(text)}
          @input=${(event: InputEvent) => {
            const area = event.target as HTMLTextAreaElement;
            const pasted = event.inputType === 'insertFromPaste' || event.inputType === 'insertFromDrop';
            actions.onText(area.value, pasted);
            if (pasted) area.closest('.sheet')!.scrollTop = 0;
          }}
          @focus=${() => actions.onFold(false)}
          @paste=${pasteCells}
        ></textarea>
      </div>
      ${
        model.reading === null
          ? nothing
          : html`<button
              type="button"
              class="tog"
              aria-expanded=${model.folded ? 'false' : 'true'}
              aria-controls="sheet"
              @click=${() => actions.onFold(!model.folded)}
            >
              ${words.allLines(lines.length)}
            </button>`
      }
    </section>
    ${
      text === '' && !model.locked
        ? html`<p class="under begin">
            ${words.noList}
            <button type="button" class="act in" @click=${actions.onExample}>${words.example}</button>
          </p>`
        : nothing
    }`;
}

/** A table whose cells the plain text has lost is put in with its cells; every other paste is left to the browser. */
function pasteCells(event: ClipboardEvent): void {
  const plain = event.clipboardData?.getData('text/plain') ?? '';
  const text = pastedText(plain, event.clipboardData?.getData('text/html') ?? '');
  const area = event.target as HTMLTextAreaElement;
  if (text === plain) return;
  event.preventDefault();
  area.setRangeText(text, area.selectionStart, area.selectionEnd, 'end');
  area.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'insertFromPaste', data: text }));
}

/** As a textarea holds it: each break one character. */
export function plainBreaks(text: string): string {
  return text.replace(/\r\n?/g, '\n');
}

interface LineMarks {
  readonly use: Line['use'];
  readonly marks: readonly Mark[];
}

/** Of each reading, its marks: they are the same until the next check. */
const known = new WeakMap<Reading, ReadonlyMap<string, LineMarks>>();

/** Marks by the words of their line, so that a line keeps them while another is typed. Their spans are within the line. */
function marksByLine({ reading, readText }: SheetModel): ReadonlyMap<string, LineMarks> {
  const byLine = new Map<string, LineMarks>();
  if (reading === null) return byLine;
  const before = known.get(reading);
  if (before !== undefined) return before;
  known.set(reading, byLine);
  const marks = [
    ...reading.items.flatMap(itemMarks),
    ...Object.values(reading.trip).flatMap((given) => valueMark(given)),
  ];
  marks.sort((a, b) => a.span[0] - b.span[0]);
  let next = 0;
  for (const { span, use } of reading.lines) {
    const own: Mark[] = [];
    let end = span[0];
    for (; next < marks.length && marks[next]!.span[0] < span[1]; next++) {
      const mark = marks[next]!;
      if (mark.span[0] < end || mark.span[1] > span[1]) continue;
      own.push({ ...mark, span: [mark.span[0] - span[0], mark.span[1] - span[0]] });
      end = mark.span[1];
    }
    const words = readText.slice(...span);
    if (!byLine.has(words)) byLine.set(words, { use, marks: own });
  }
  return byLine;
}

function itemMarks(item: Item): Mark[] {
  const own = Object.values(item).flatMap((value: unknown) =>
    (Array.isArray(value) ? (value as unknown[]) : [value]).flatMap((given) =>
      isGiven(given) ? valueMark(given) : [],
    ),
  );
  return [{ span: item.span, as: 'item' }, ...own.filter(({ span }) => span[0] !== item.span[0])];
}

function isGiven(value: unknown): value is Given<unknown> {
  return typeof value === 'object' && value !== null && 'grounds' in value;
}

function valueMark(given: Given<unknown>): Mark[] {
  if (given.grounds === 'missing' || given.span === undefined) return [];
  return [{ span: given.span, as: given.grounds === 'assumed' ? 'guess' : 'value' }];
}

const USE_CLASS: Readonly<Record<Line['use'], string>> = {
  used: '',
  blank: '',
  'not-cook-kit': 'no',
  'not-understood': 'huh',
};

function markedLine(line: string, read: LineMarks | undefined): TemplateResult {
  // A no-break space would give an empty line its height, and its own width: a word joiner has none.
  if (line === '') return html`<div>${'\u2060'}</div>`;
  if (read === undefined) return html`<div>${line}</div>`;
  if (read.use === 'not-understood') return html`<div class="huh"><u>${line}</u></div>`;
  const parts: unknown[] = [];
  let at = 0;
  for (const { span, as } of read.marks) {
    parts.push(line.slice(at, span[0]));
    const words = line.slice(...span);
    parts.push(as === 'item' ? html`<b>${words}</b>` : html`<i class=${as}>${words}</i>`);
    at = span[1];
  }
  parts.push(line.slice(at));
  return html`<div class=${USE_CLASS[read.use]}>${parts}</div>`;
}
