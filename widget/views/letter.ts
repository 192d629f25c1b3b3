import type { TemplateResult } from 'lit';
import {
  countSentences,
  isTicked,
  letterParagraphs,
  letterParts,
  letterSay,
  LETTER_SECTIONS,
  writeLetter,
  type LetterChoice,
  type LetterFormat,
  type LetterParagraph,
  type LetterPart,
} from '../../core/typed-door.js';
import type { Fields, Judged } from '../draft.js';
import type { Words } from '../messages/en.js';
import { html, nothing } from '../tags.js';
import type { heading as Heading } from './heading.js';

export interface LetterActions {
  /** Sets one thing by name; undefined gives it back. */
  readonly onSet: (name: string, value: string | boolean | undefined) => void;
  readonly onCopy: (texts: Readonly<Record<LetterFormat, string>>, format: LetterFormat) => void;
  readonly onClose: () => void;
}

/** After a press on Copy: done, or the text itself where the browser refused. */
export type Copied = { readonly done: boolean; readonly text: string } | null;

const FORMATS = { html: 'rich', plain: 'plain', markdown: 'markdown' } as const;

/** What the person made of the letter, as the draft keeps it: `first`, `format`, `sources`, `tick <id>`, `text <id>`. */
function choiceIn(kept: Fields): LetterChoice & { readonly format: LetterFormat } {
  const named = <T>(prefix: string): Record<string, T> =>
    Object.fromEntries(
      Object.entries(kept).flatMap(([name, value]) =>
        name.startsWith(prefix) ? [[name.slice(prefix.length), value as T]] : [],
      ),
    );
  const format = kept['format'];
  return {
    first: String(kept['first'] ?? ''),
    ticks: named<boolean>('tick '),
    texts: named<string>('text '),
    sources: kept['sources'] === true,
    format: format === 'plain' || format === 'markdown' ? format : 'html',
  };
}

/** What of a letter outlives a change of the list: all but the sentences that were about it. */
export function keptLetter(kept: Fields): Fields {
  return Object.fromEntries(Object.entries(kept).filter(([name]) => !/^t(ick|ext) /.test(name)));
}

/** An answer to one person: at the left what it may tell, in the order of action; at the right the letter, to be edited and copied. */
export function letter(
  { report }: Judged,
  kept: Fields,
  copied: Copied,
  level: number,
  words: Words,
  heading: typeof Heading,
  on: LetterActions,
): TemplateResult {
  const say = letterSay(words);
  const parts = letterParts(report, words);
  const choice = choiceIn(kept);
  const paragraphs = letterParagraphs(report, parts, choice, words);
  const asked: Readonly<Record<LetterPart['section'], string>> = {
    before: say('beforeTheyGo'),
    gain: say('smallGain'),
    ask: say('toAsk'),
  };
  const written = (format: LetterFormat) => writeLetter(paragraphs, format);
  const count = countSentences(paragraphs);
  return html`<section class="answer two" part="letter" aria-label=${say('title')}>
    <div class="plan">
      ${heading(level, 'vh', say('title'))}
      <button type="button" class="act" @click=${on.onClose}>${say('close')}</button>
      ${LETTER_SECTIONS.map((section) => {
        const own = parts.filter((part) => part.section === section);
        if (own.length === 0) return nothing;
        return html`<fieldset>
          <legend class="t">${asked[section]}</legend>
          ${own.map((part) => tick(part, isTicked(part, choice), words, on))}
        </fieldset>`;
      })}
    </div>
    <div class="write">
      ${heading(level + 1, 'vh', say('letter'))}
      <div class="letter">
        <label class="first"
          ><span class="l">${say('firstLine')}</span
          ><input
            name="letter-first"
            autocomplete="off"
            .value=${choice.first}
            @input=${(event: Event) => on.onSet('first', (event.target as HTMLInputElement).value || undefined)}
        /></label>
        ${paragraphs.map((paragraph) => stood(paragraph, choice, say('caution'), (words) => heading(level + 2, '', words), on))}
      </div>
      <p class="note-line">${say('stays')}</p>
      <div class="opts">
        <fieldset class="choice">
          <legend class="l">${say('copyAs')}</legend>
          ${(Object.keys(FORMATS) as LetterFormat[]).map(
            (format) =>
              html`<label
                ><input
                  type="radio"
                  name="letter-format"
                  .checked=${choice.format === format}
                  @change=${() => on.onSet('format', format)}
                /><span>${say(FORMATS[format])}</span></label
              >`,
          )}
          <label
            ><input
              type="checkbox"
              .checked=${choice.sources}
              @change=${(event: Event) => on.onSet('sources', (event.target as HTMLInputElement).checked || undefined)}
            /><span>${say('atTheEnd')}</span></label
          >
        </fieldset>
      </div>
      <div class="send">
        <button
          type="button"
          class="press"
          @click=${() => on.onCopy({ html: written('html'), plain: written('plain'), markdown: written('markdown') }, choice.format)}
        >
          ${copied?.done === true ? say('copied') : say('copy')}
        </button>
        <p class="l" role="status">
          ${copied === null ? say('count', { n: { value: count, unit: '' } }) : copied.done ? say('copied') : say('refused')}
        </p>
      </div>
      ${copied !== null && !copied.done ? html`<textarea class="by-hand" readonly aria-label=${say('letter')} .value=${copied.text}></textarea>` : nothing}
    </div>
  </section>`;
}

function tick(part: LetterPart, ticked: boolean, words: Words, { onSet }: LetterActions): TemplateResult {
  return html`<label class="tick" data-grade=${part.grade}
    ><input
      type="checkbox"
      .checked=${ticked}
      @change=${(event: Event) => onSet(`tick ${part.id}`, (event.target as HTMLInputElement).checked)}
    /><span
      >${part.title}<span class="vh">, ${words.language.grades[part.grade]}</span
      ><span class="t2">${part.figure}</span></span
    ></label
  >`;
}

/** A paragraph as it stands in the letter. What tells of a finding is a field; cautions stay as they are. */
function stood(
  { as, words, part }: LetterParagraph,
  choice: LetterChoice,
  caution: string,
  heading: (words: string) => TemplateResult,
  { onSet }: LetterActions,
): TemplateResult | typeof nothing {
  switch (as) {
    case 'first':
      return nothing;
    case 'heading':
      return html`<div class="para lead">${heading(words)}</div>`;
    case 'caution':
      return html`<div class="para kept">
        <span class="mk" aria-hidden="true">${caution}</span>
        <p>${words}</p>
      </div>`;
    case 'text': {
      if (part === undefined) return html`<div class="para"><p>${words}</p></div>`;
      const own = choice.texts[part.id] !== undefined;
      return html`<div class="para ${own ? 'own' : ''}">
        ${/\d/.test(part.figure) && part.section !== 'ask' ? html`<span class="mk" aria-hidden="true">${part.figure.split(', ')[0]}</span>` : nothing}
        <div class="grow">
          <div aria-hidden="true">${words}${'\u00a0'}</div>
          <textarea
            rows="1"
            aria-label=${part.title}
            .value=${words}
            @input=${(event: Event) => onSet(`text ${part.id}`, (event.target as HTMLTextAreaElement).value)}
          ></textarea>
        </div>
      </div>`;
    }
    default:
      return html`<div class="para ${as}"><p>${words}</p></div>`;
  }
}
