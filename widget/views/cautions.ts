import { html, type TemplateResult } from 'lit';
import type { Caution, Source } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { citations } from './sources.js';

/** Dangers that no kit can rule out: always open, whatever holds up. */
export function cautionRows(
  cautions: readonly Caution[],
  level: number,
  sources: readonly Source[],
  words: Words,
): readonly TemplateResult[] {
  return cautions.map(({ check, title, message, margin, cautions: sentences, cites }) => {
    const cited = sources.filter(({ id }) => cites.includes(id));
    return html`<article class="finding row" part="caution" data-check=${check}>
      <div class="m">
        <p class="grade">${words.caution}</p>
        <p class="fig">${title}</p>
      </div>
      <div class="w">
        ${heading(level, 'say', message)} ${sentences.map((sentence) => html`<p class="caution">${sentence}</p>`)}
        <details class="why fold">
          <summary>${words.why}</summary>
          <p class="from">${margin}</p>
          ${citations(cited, words)}
        </details>
      </div>
    </article>`;
  });
}
