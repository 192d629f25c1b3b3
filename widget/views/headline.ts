import { html, nothing, type TemplateResult } from 'lit';
import { GRADES } from '../../core/figures.js';
import type { Grade, Report } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';

/** One sentence, then how many findings there are of each grade; each count leads to its findings. */
export function headline(
  { summary, findings }: Report,
  level: number,
  words: Words,
  onGrade: (grade: Grade) => void,
): TemplateResult {
  return html`<div class="head row" part="headline">
    <div class="m"><p class="fig">${words.checks(findings.length)}</p></div>
    <div class="w">
      ${heading(level, 'headline', summary.headline)}
      <ul class="tally" aria-label=${words.tallyLabel}>
        ${GRADES.map((grade) =>
          summary.counts[grade] === 0
            ? nothing
            : html`<li>
                <button type="button" data-grade=${grade} @click=${() => onGrade(grade)}>
                  ${words.tally[grade](summary.counts[grade])}
                </button>
              </li>`,
        )}
      </ul>
    </div>
  </div>`;
}
