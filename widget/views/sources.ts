import { html, nothing, type TemplateResult } from 'lit';
import { wordSource } from '../../core/figures.js';
import type { Assumption, Source } from '../../core/index.js';
import type { Words } from '../messages/en.js';

/** Sources told apart by grade, each grade by its name. */
export function citations(sources: readonly Source[], words: Words): TemplateResult {
  const published = sources.filter(({ grade }) => grade === 'published');
  const practice = sources.filter(({ grade }) => grade === 'common-practice');
  return html`<p class="from">
    ${
      published.length > 0
        ? html`<b>${words.Published}</b>
            ${published.map((source) => wordSource(source)).join(words.language.semicolon)}. `
        : nothing
    }${
      practice.length > 0
        ? html`<b>${words.CommonPractice}</b> ${practice.map((source) => source.title).join(words.language.semicolon)}.`
        : nothing
    }
  </p>`;
}

/** All that the report cites, and all that it assumes. */
export function sources(
  { sources, assumptions }: { readonly sources: readonly Source[]; readonly assumptions: readonly Assumption[] },
  words: Words,
): TemplateResult {
  return html`${
    assumptions.length > 0
      ? html`<details class="fold shelf" part="sources">
          <summary>${words.assumptions} (${assumptions.length})</summary>
          <ul class="from">
            ${assumptions.map((given) => html`<li>${words.assumption(given.what, given.because, given.replaceWith)}</li>`)}
          </ul>
        </details>`
      : nothing
  }${
    sources.length > 0
      ? html`<details class="fold shelf" part="sources">
          <summary>${words.sources} (${sources.length})</summary>
          <ul class="from">
            ${sources.map(
              (source) =>
                html`<li>
                  <span class="src ${source.grade === 'published' ? 'pub' : 'cp'}"
                    >${source.grade === 'published' ? words.published : words.commonPractice}</span
                  >
                  ${wordSource(source)}.${source.note ? html` ${source.note}` : nothing}
                </li>`,
            )}
          </ul>
        </details>`
      : nothing
  }`;
}
