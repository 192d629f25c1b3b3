import { html, nothing, type TemplateResult } from 'lit';
import type { Words } from '../messages/en.js';

/** A field that the page has set: its label and its value. */
export type SetField = readonly [label: string, value: string];

/** What the page has set and the reader cannot change, in one line. */
export function setByPage(fields: readonly SetField[], words: Words): TemplateResult | typeof nothing {
  const told = fields.filter(([, value]) => value !== '');
  if (told.length === 0) return nothing;
  return html`<p class="under set">
    ${words.setByPage} ${told.map(([label, value], i) => html`${i > 0 ? ', ' : nothing}${label} <b>${value}</b>`)}
  </p>`;
}
