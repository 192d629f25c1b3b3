import { html, nothing, type TemplateResult } from 'lit';
import type { UnitSystem } from '../../core/index.js';
import type { Words } from '../messages/en.js';

export interface ActionsModel {
  readonly units: UnitSystem | null;
  readonly judged: boolean;
  /** Whether there is anything to press; the note stands without. */
  readonly shown: boolean;
  /** After a press on Copy: done, or the text itself where the browser refused. */
  readonly copied: { readonly done: boolean; readonly text: string } | null;
}

/** What can be done with the findings, the units they are worded in, and what stands before any of it. */
export function actions(
  { units, judged, copied, shown }: ActionsModel,
  words: Words,
  on: {
    readonly onWrite: () => void;
    readonly onCopy: (format: 'plain' | 'markdown') => void;
    readonly onUnits: (units: UnitSystem | null) => void;
  },
): TemplateResult {
  const bar = html`<div class="bar">
      ${
        judged
          ? html`<button type="button" class="act write-letter" @click=${on.onWrite}>${words.writeLetter}</button>
              <button type="button" class="act" @click=${() => on.onCopy('plain')}>${words.copy}</button>
              <button type="button" class="act" @click=${() => on.onCopy('markdown')}>${words.copyMarkdown}</button>
              <button type="button" class="act" @click=${() => window.print()}>${words.print}</button>`
          : nothing
      }
      <fieldset class="choice units">
        <legend class="vh">${words.unitsLegend}</legend>
        ${Object.entries(words.units).map(
          ([name, word]) =>
            html`<label
              ><input
                type="radio"
                name="units"
                .checked=${(units ?? 'as-written') === name}
                @change=${() => on.onUnits(name === 'as-written' ? null : (name as UnitSystem))}
              /><span>${word}</span></label
            >`,
        )}
      </fieldset>
    </div>
    <p role="status">${copied === null ? nothing : copied.done ? words.copied : words.copyRefused}</p>
    ${copied && !copied.done ? html`<textarea class="by-hand" readonly aria-label=${words.copyText} .value=${copied.text}></textarea>` : nothing}`;
  return html`<footer class="foot" part="actions">
    ${shown ? bar : nothing}
    <p>${words.foot}</p>
  </footer>`;
}
