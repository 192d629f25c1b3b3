import { html, nothing, type TemplateResult } from 'lit';
import type { WordedSumLine } from '../../core/index.js';
import type { Words } from '../messages/en.js';

/** A sum as one does it by hand: sign at the left, figures at the right, a rule over the result; beside each line what it is. */
export function sumTable(sum: readonly WordedSumLine[], title: string, words: Words): TemplateResult | typeof nothing {
  if (sum.length === 0) return nothing;
  return html`<table class="sum">
    <caption class="vh">
      ${words.howWorkedOut(title)}
    </caption>
    <tbody>
      ${sum.map(
        ({ sign, text, label, grounds }) =>
          html`<tr class=${sign === '=' ? 'res' : ''}>
            <td>
              ${sign === '' || sign === '=' ? nothing : html`<span class="o">${sign}</span>`}${figure(text, grounds)}
            </td>
            <th scope="row">${label}${mark(grounds, words)}</th>
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function figure(text: string, grounds: WordedSumLine['grounds']): TemplateResult | string {
  if (grounds === 'stated') return html`<span class="val">${text}</span>`;
  return grounds === 'assumed' ? html`<span class="val assumed">${text}</span>` : text;
}

function mark(grounds: WordedSumLine['grounds'], words: Words): TemplateResult | typeof nothing {
  switch (grounds) {
    case 'published':
      return html` <span class="src pub">${words.published}</span>`;
    case 'common-practice':
      return html` <span class="src cp">${words.commonPractice}</span>`;
    case 'assumed':
      return html` <span class="src">${words.assumed}</span>`;
    default:
      return nothing;
  }
}
