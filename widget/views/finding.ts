import { html, nothing, type TemplateResult } from 'lit';
import type { Evidence, Finding, Source } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { heading } from './heading.js';
import { citations } from './sources.js';
import { sumTable } from './sum.js';

export interface FindingContext {
  readonly words: Words;
  readonly level: number;
  readonly sources: readonly Source[];
  /** Whether Why stands open from the start. */
  readonly whyOpen: boolean;
  readonly onLine: (line: number) => void;
}

/** A finding that stands open. */
export function openFinding(finding: Finding, context: FindingContext): TemplateResult {
  return html`<article
    class="finding row"
    part="finding"
    tabindex="-1"
    data-check=${finding.check}
    data-grade=${finding.grade}
  >
    ${marginOf(finding, context.words)}
    <div class="w">${heading(context.level, 'say', finding.message)}${body(finding, context)}</div>
  </article>`;
}

/** A finding without folds, questions and lines of a list: grade, figure, sentence and its cautions. */
export function findingRow(finding: Finding, level: number, words: Words): TemplateResult {
  return html`<div class="finding row" part="finding" data-check=${finding.check} data-grade=${finding.grade}>
    ${marginOf(finding, words)}
    <div class="w">${heading(level, 'say', finding.message)}${cautions(finding, words)}</div>
  </div>`;
}

/** A finding that keeps grade, figure, sentence and cautions until it is opened: a caution is never folded away. */
export function foldedFinding(finding: Finding, context: FindingContext): TemplateResult {
  return html`<details class="finding" part="finding" data-check=${finding.check} data-grade=${finding.grade}>
    <summary>
      ${marginOf(finding, context.words)}
      <div class="w">${heading(context.level, 'say', finding.message)}${cautions(finding, context.words)}</div>
    </summary>
    <div class="w">${body({ ...finding, cautions: [] }, context)}</div>
  </details>`;
}

function marginOf(finding: Finding, words: Words): TemplateResult {
  return html`<div class="m">
    <p class="grade">${words.language.grades[finding.grade]}</p>
    <p class="fig">${marginFigure(finding.margin, words.joints)}</p>
  </div>`;
}

/** The figures that a margin begins with are large, the words after them small: "871 of 946–1182 mL, to the brim". */
export function marginFigure(margin: string, joints: Words['joints']): TemplateResult | string {
  const parts = margin.split(' ');
  const isFigure = (part: string) => /^[\d−×.,–:()]/.test(part);
  let end = parts.findIndex((part) => !isFigure(part) && !joints.includes(part));
  if (end < 0) end = parts.length;
  while (end > 0 && !isFigure(parts[end - 1]!)) end--;
  if (end === 0) return margin;
  const large = parts.slice(0, end).map((part) => (isFigure(part) ? part.replace(/,$/, '') : html`<i>${part}</i>`));
  return html`<b>${large.map((part, i) => (i === 0 ? part : html` ${part}`))}</b> ${parts.slice(end).join(' ')}`;
}

function body(finding: Finding, { words, sources, whyOpen, onLine }: FindingContext): TemplateResult {
  const cited = sources.filter(({ id }) => finding.cites.includes(id));
  return html`${finding.fix ? html`<p class="fix"><span>${finding.fix}</span></p>` : nothing}
  ${cautions(finding, words)} ${evidence(finding.evidence, words, onLine)}
  ${
    finding.sum.length + cited.length + finding.assumptions.length === 0
      ? nothing
      : html`<details class="why fold" ?open=${whyOpen}>
          <summary>${words.why}</summary>
          ${sumTable(finding.sum, finding.title, words)} ${cited.length > 0 ? citations(cited, words) : nothing}
          ${finding.assumptions.map(
            (given) =>
              html`<p class="from">
                <b>${words.assumedHere}</b> ${words.assumption(given.what, given.because, given.replaceWith)}
              </p>`,
          )}
        </details>`
  }`;
}

export function cautions(finding: Finding, words: Words): readonly TemplateResult[] {
  return finding.cautions.map((caution) => html`<p class="caution"><b>${words.caution}</b> ${caution}</p>`);
}

/** The person's own words that a finding rests on, each with the way to its line. */
export function evidence(evidence: readonly Evidence[], words: Words, onLine: (line: number) => void): TemplateResult {
  return html`<p class="from ev">
    ${evidence.map(({ line, quote, found }, i) => {
      const place =
        line === undefined
          ? found === 'absent'
            ? words.lookedFor
            : words.typed
          : html`<button type="button" class="act in" @click=${() => onLine(line)}>${words.line(line)}</button>`;
      return html`${i > 0 ? ', ' : nothing}${place} <q>${quote}</q>`;
    })}
  </p>`;
}
