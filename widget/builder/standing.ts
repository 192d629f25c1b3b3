import type { Report } from '../../core/index.js';
import type { JUDGING } from '../judge.js';
import type { Words } from '../messages/en.js';

/**
 * A verdict in a few sentences, the headline first: what stands in the element until it is drawn, in feeds, in e-mail and in search. What can
 * hurt is always told, with its caution; of the rest the worst `most` findings. What cannot be told is left out, for nobody can answer there.
 */
export function standing(
  report: Report,
  { language }: Pick<Words, 'language'>,
  remark: typeof JUDGING.remark,
  most = 3,
): readonly string[] {
  const told = report.findings.filter(({ grade }) => grade !== 'cant-tell' && grade !== 'holds-up');
  const hurting = told.filter(({ grade }) => grade === 'can-hurt');
  const sentences = told
    .slice(0, Math.max(most, hurting.length))
    .flatMap(({ grade, message, margin, fix, cautions }) => [
      `${language.grades[grade]} (${margin})${language.colon}${message}`,
      ...(fix === null ? [] : [fix]),
      ...cautions,
    ]);
  // A remark ends with whose word comes first.
  const foot = remark(report, '', 'plain', language).trimEnd().split('\n').at(-1)!;
  return [...new Set([report.summary.headline, ...sentences, foot])];
}
