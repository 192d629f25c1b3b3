import { html, nothing, type TemplateResult } from 'lit';
import type { Report } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';

/** Nothing to judge: what was read, what was looked for, one line to copy. */
export function noKit(
  report: Report,
  level: number,
  words: Words,
  onAddLine: ((line: string) => void) | null,
): TemplateResult {
  const read = report.reading.lines.filter(({ use }) => use !== 'blank').length;
  return html`<div class="head row" part="headline">
    <div class="m"></div>
    <div class="w">
      ${heading(level, 'headline', words.noKit)}
      <p>${words.noKitRead(read)} <span class="nb">${words.lineToCopy}</span></p>
      ${
        onAddLine === null
          ? nothing
          : html`<button type="button" class="act" @click=${() => onAddLine(words.lineToCopy)}>
              ${words.useLine}
            </button>`
      }
    </div>
  </div>`;
}
