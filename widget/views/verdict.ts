import { html, nothing, type TemplateResult } from 'lit';
import { formatFigure, valueOf } from '../../core/figures.js';
import type { Finding, FigureUnit, Report } from '../../core/index.js';
import type { Judged } from '../draft.js';
import { judgeAtHand } from '../judging.js';
import type { Words } from '../messages/en.js';
import { findingRow } from './finding.js';
import { heading } from './heading.js';
import { sources } from './sources.js';
import { sumTable } from './sum.js';

/** What was judged, the verdict in a sentence, the pot to scale, so many rows, worst first, and what it was judged for. */
export function verdict({ draft, report }: Judged, level: number, rows: number, words: Words): TemplateResult {
  const shown = rowsOf(report, rows);
  const drawn = report.pots[0] ? judgeAtHand()?.sketch(report.pots[0], report.units, words) : nothing;
  return html`<div class="page verdict">
    <div part="headline">
      <p class="what">${judgedPot(draft.pot['name'], report, words)}</p>
      ${heading(level, 'headline', report.summary.headline)}
    </div>
    ${drawn}
    <div class="rows">${shown.map((finding) => findingRow(finding, level + 1, words))}</div>
    <div class="terms" part="sources">
      <p>${terms(report, shown.length, words)} ${words.foot}</p>
      <details class="fold">
        <summary>${words.verdict.sums}</summary>
        ${shown
          .filter(({ sum }) => sum.length > 0)
          .map(
            ({ title, sum }) =>
              html`<p class="from"><b>${title}</b></p>
                ${sumTable(sum, title, words)}`,
          )}
      </details>
      ${sources(report, words)}
    </div>
  </div>`;
}

/** What cannot be told has no row: nobody can answer here. What can hurt has one, however many there are. */
function rowsOf({ findings }: Report, rows: number): readonly Finding[] {
  const told = findings.filter(({ grade }) => grade !== 'cant-tell');
  const hurting = told.filter(({ grade }) => grade === 'can-hurt');
  return told.slice(0, Math.max(rows, hurting.length));
}

/** "Humblefern: 1.1 L, 130 × 95 mm, with lid". */
function judgedPot(name: unknown, { pots, stoves: [stove], units }: Report, words: Words): string {
  const pot = pots[0];
  const show = (value: number, unit: FigureUnit) =>
    formatFigure({ value, unit, places: unit === 'mm' ? 0 : 2 }, { ...words, units });
  const size = [pot?.rimMm, pot?.heightMm].flatMap((mm) => (typeof mm === 'number' ? [show(mm, 'mm')] : []));
  const parts = [
    pot?.capacityMl ? show(pot.capacityMl / 1000, 'L') : '',
    size.join(' × '),
    pot?.lid ? words.verdict.lid : '',
    pot?.bail ? words.verdict.bail : '',
    stove?.type ? words.verdict.stove(words.stoveTypes[stove.type as keyof Words['stoveTypes']]) : '',
  ].filter(Boolean);
  return `${typeof name === 'string' ? name : words.verdict.unnamed}${words.language.colon}${parts.join(', ')}`;
}

function terms({ trip, findings }: Report, shown: number, words: Words): string {
  const open = findings.filter(({ grade }) => grade === 'cant-tell').length;
  const people = valueOf(trip.people) ?? 1;
  const style = valueOf(trip.mealStyle) ?? 'simmer';
  return words.verdict.terms(people, style, valueOf(trip.waterFrom) === 'snow', shown, findings.length - open, open);
}
