import { html, nothing, type TemplateResult } from 'lit';
import { formatFigure } from '../../core/figures.js';
import type { Report } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { sumTable } from './sum.js';

/** A day with this kit: each task in litres, rounds, minutes and fuel, and how they come out. */
export function day({ day, units }: Report, level: number, words: Words): TemplateResult | typeof nothing {
  if (day === null) return nothing;
  return html`<section class="row day" part="day" aria-label=${words.day}>
    <div class="m">${heading(level, 't', words.day)}</div>
    <div class="w">
      <ul class="good">
        ${day.tasks.map(
          ({ title, words: { litres, rounds, minutes, grams } }) =>
            html`<li><b>${title}</b><span>${[litres, rounds, minutes, grams].join(' · ')}</span></li>`,
        )}
      </ul>
      <p>${day.perDay}</p>
      ${day.perTrip ? html`<p>${day.perTrip}</p>` : nothing}
      <p class="from">
        ${words.boilsAt(formatFigure({ value: day.boilC, unit: '°C', places: 0 }, { ...words, units }))}
      </p>
      <details class="why fold">
        <summary>${words.why}</summary>
        ${day.tasks.map(({ title, sum }) =>
          sum.length === 0
            ? nothing
            : html`<p class="from"><b>${title}</b></p>
                ${sumTable(sum, title, words)}`,
        )}
      </details>
    </div>
  </section>`;
}
