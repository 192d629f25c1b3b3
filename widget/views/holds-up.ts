import { html, nothing, type TemplateResult } from 'lit';
import type { Finding } from '../../core/index.js';
import type { Words } from '../messages/en.js';
import { cautions } from './finding.js';
import { heading } from './heading.js';

/** What holds up, folded: the names; open, one line a check. */
export function holdsUp(findings: readonly Finding[], level: number, words: Words): TemplateResult | typeof nothing {
  if (findings.length === 0) return nothing;
  const titles = [...new Set(findings.map(({ title }) => title))];
  const names = titles.map((title, i) => (i === 0 ? title : words.language.inside(title))).join(', ');
  return html`<details class="finding" part="finding" data-grade="holds-up">
    <summary>
      <div class="m">
        <p class="grade">${words.language.grades['holds-up']}</p>
        <p class="fig">${words.checks(findings.length)}</p>
      </div>
      <div class="w">
        ${heading(level, 'say', `${names}.`)}${unique(findings).map((finding) => cautions(finding, words))}
      </div>
    </summary>
    <div class="w">
      <ul class="good">
        ${findings.map(
          ({ check, title, message, margin, evidence }) =>
            html`<li data-check=${check}>
              <b>${title}</b><span>${message} ${margin}${lines(evidence, words)}</span>
            </li>`,
        )}
      </ul>
    </div>
  </details>`;
}

/** Each caution once, whichever check says it. */
function unique(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.map((finding) => ({
    ...finding,
    cautions: finding.cautions.filter((words) => !seen.has(words) && seen.add(words)),
  }));
}

function lines(evidence: Finding['evidence'], words: Words): string {
  const numbers = [...new Set(evidence.flatMap(({ line }) => (line === undefined ? [] : [line])))];
  return numbers.length === 0 ? '' : ` (${numbers.map((line) => words.language.inside(words.line(line))).join(', ')})`;
}
