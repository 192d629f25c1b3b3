import { html, type TemplateResult } from 'lit';
import type { Words } from '../messages/en.js';

/** A field that the page has set: no line to write on. */
export function lockedField(label: string, value: string, words: Words): TemplateResult {
  return html`<div class="field locked">
    <span class="l">${words.setByPage(label)}</span> <span class="v"><span class="set">${value}</span></span>
  </div>`;
}
