import { html, nothing, type TemplateResult } from 'lit';
import type { InputProblem } from '../../core/index.js';
import type { Words } from '../messages/en.js';

/** What was left out and belongs to no field in view: kept as typed, with the reason. */
export function problems(left: readonly InputProblem[], words: Words): TemplateResult | typeof nothing {
  if (left.length === 0) return nothing;
  return html`<div class="left-out">
    <p class="err"><b>${words.problems}</b></p>
    <ul>
      ${left.map(({ value, message }) => html`<li class="err"><q>${value}</q> ${message}</li>`)}
    </ul>
  </div>`;
}
