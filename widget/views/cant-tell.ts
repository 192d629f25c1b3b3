import { html, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { cautions, evidence } from './finding.js';
import { heading } from './heading.js';

export interface CantTellContext {
  readonly words: Words;
  readonly level: number;
  /** What a question is answered by, where it can be answered here. */
  readonly answer: (question: NonNullable<Finding['question']>) => unknown;
  readonly onLine: (line: number) => void;
}

interface Group {
  readonly question: Finding['question'];
  readonly findings: Finding[];
}

/** What cannot be told, grouped by the answer that would settle it; each question is asked where it stands. */
export function cantTell(findings: readonly Finding[], context: CantTellContext): TemplateResult | typeof nothing {
  if (findings.length === 0) return nothing;
  const { words, level } = context;
  const groups = groupByAnswer(findings);
  const asked = groups.filter(({ question }) => question !== null);
  const settled = asked.reduce((sum, group) => sum + group.findings.length, 0);
  return html`<article class="finding row" part="finding" tabindex="-1" data-grade="cant-tell">
    <div class="m">
      <p class="grade">${words.language.grades['cant-tell']}</p>
      <p class="fig">${words.checks(findings.length)}</p>
    </div>
    <div class="w">
      ${heading(level, 'say', asked.length > 0 ? words.settle(asked.length, settled) : words.untold(findings.length))}
      ${groups.map((group) => (group.question === null ? group.findings.map((finding) => open(finding, context)) : ask(group, context)))}
    </div>
  </article>`;
}

function groupByAnswer(findings: readonly Finding[]): Group[] {
  const groups = new Map<string, Group>();
  for (const finding of findings) {
    const { question } = finding;
    const key = question ? `${question.item ?? ''} ${question.field} ${question.kind ?? ''}` : '';
    const group = groups.get(key) ?? { question, findings: [] };
    group.findings.push(finding);
    groups.set(key, group);
  }
  return [...groups.values()];
}

function ask({ question, findings }: Group, { words, answer }: CantTellContext): TemplateResult {
  return html`<fieldset class="ask">
    <legend class="q">${question?.text}</legend>
    ${question ? answer(question) : nothing}
    <p class="settles">${words.settles([...new Set(findings.map(({ title }) => title))])}</p>
    <ul class="settles">
      ${findings.map(
        ({ check, message, margin }) => html`<li data-check=${check}>${message} <span class="fg">${margin}</span></li>`,
      )}
    </ul>
    ${findings.map((finding) => cautions(finding, words))}
  </fieldset>`;
}

function open(finding: Finding, { words, onLine }: CantTellContext): TemplateResult {
  return html`<div class="ask" data-check=${finding.check}>
    <p class="q">${finding.message}</p>
    <p class="settles">${finding.title}: ${finding.margin}</p>
    ${cautions(finding, words)} ${finding.fix ? html`<p class="fix"><span>${finding.fix}</span></p>` : nothing}
    ${evidence(finding.evidence, words, onLine)}
  </div>`;
}
