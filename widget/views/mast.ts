import { html, svg, type TemplateResult } from 'lit';
import type { Draft } from '../draft.js';
import type { Words } from '../messages/en.js';

const POT = svg`<path d="M2.2 3.2H4v12.6a1.4 1.4 0 0 0 1.4 1.4h9.2a1.4 1.4 0 0 0 1.4-1.4V3.2h1.8" fill="none" stroke="currentColor" stroke-width="1.9"/><path d="M4 8.1h12" stroke="currentColor" stroke-width="1.4"/>`;

/** The name, and the two entrances. */
export function mast(
  entrance: Draft['entrance'],
  words: Words,
  onEntrance: (entrance: Draft['entrance']) => void,
): TemplateResult {
  const option = (value: Draft['entrance']) =>
    html`<label
      ><input
        class="vh"
        type="radio"
        name="entrance"
        value=${value}
        .checked=${entrance === value}
        @change=${() => onEntrance(value)}
      /><span>${words.entrances[value]}</span></label
    >`;
  return html`<div class="mast" part="mast">
    <span class="mark"><svg viewBox="0 0 20 20" aria-hidden="true">${POT}</svg><span>${words.name}</span></span>
    <fieldset class="tabs">
      <legend class="vh">${words.entrances.legend}</legend>
      ${option('list')}${option('pot')}
    </fieldset>
  </div>`;
}
