import type { Finding, Grade } from './model/finding.js';
import { GRADES } from './model/finding.js';
import type { Report } from './model/report.js';

/** One judged thing of one candidate: the worst finding of a check. */
export interface ComparedCell {
  readonly grade: Grade;
  readonly message: string;
  readonly margin: string;
}

/** What is judged, and how each candidate does; null where the check has nothing to say of it. */
export interface ComparedRow {
  readonly check: string;
  readonly title: string;
  /** One grade and one margin for all. */
  readonly alike: boolean;
  readonly cells: readonly (ComparedCell | null)[];
}

/** Candidates side by side. Plain JSON. There is no winner and no score in it: what decides is for the person to weigh. */
export interface Comparison {
  /** Of the comparison's shape. */
  readonly version: 1;
  readonly candidates: readonly { readonly name: string; readonly headline: string; readonly worst: Grade | null }[];
  /** In the order of the checks. */
  readonly rows: readonly ComparedRow[];
}

/** The reports of some candidates side by side, by the order in which `checks` are judged. */
export function sideBySide(
  judged: readonly { readonly name: string; readonly report: Report }[],
  checks: readonly string[],
): Comparison {
  const rows = checks.flatMap((check): ComparedRow[] => {
    const found = judged.map(({ report }) => report.findings.find((finding) => finding.check === check));
    const title = found.find((finding) => finding !== undefined)?.title;
    return title === undefined ? [] : [{ check, title, alike: areAlike(found), cells: found.map(cellOf) }];
  });
  return {
    version: 1,
    candidates: judged.map(({ name, report }) => ({ name, headline: report.summary.headline, worst: worstOf(report) })),
    rows,
  };
}

function cellOf(finding: Finding | undefined): ComparedCell | null {
  return finding === undefined ? null : { grade: finding.grade, message: finding.message, margin: finding.margin };
}

function areAlike([first, ...rest]: readonly (Finding | undefined)[]): boolean {
  return rest.every((finding) => finding?.grade === first?.grade && finding?.margin === first?.margin);
}

/** The worst grade of a report; null where nothing is judged. */
export function worstOf({ summary }: Report): Grade | null {
  return GRADES.find((grade) => summary.counts[grade] > 0) ?? null;
}

/** One list of many. */
export interface ManyRow {
  readonly name: string;
  readonly headline: string;
  readonly worst: Grade | null;
  readonly counts: Report['summary']['counts'];
}

/** Many lists in one table. Plain JSON. */
export interface Many {
  /** Of the table's shape. */
  readonly version: 1;
  /** In the order of the lists. */
  readonly rows: readonly ManyRow[];
  /** What more than half of the lists do not name or say, the most frequent first; `who` are the names of those lists. */
  readonly missing: readonly { readonly check: string; readonly title: string; readonly who: readonly string[] }[];
}

/** The reports of many lists as one table. */
export function inOneTable(
  judged: readonly { readonly name: string; readonly report: Report }[],
  checks: readonly string[],
): Many {
  const missing = checks.flatMap((check) => {
    const without = judged.flatMap(({ name, report }) => {
      const finding = report.findings.find((one) => one.check === check && isMissing(one));
      return finding === undefined ? [] : [{ name, title: finding.title }];
    });
    const [first] = without;
    if (first === undefined || without.length * 2 <= judged.length) return [];
    return [{ check, title: first.title, who: without.map(({ name }) => name) }];
  });
  return {
    version: 1,
    rows: judged.map(({ name, report }) => ({
      name,
      headline: report.summary.headline,
      worst: worstOf(report),
      counts: report.summary.counts,
    })),
    missing: missing.sort((a, b) => b.who.length - a.who.length),
  };
}

/** A finding that rests on something the list does not name, or that waits for an answer. */
function isMissing({ grade, evidence }: Finding): boolean {
  return grade === 'cant-tell' || (grade !== 'holds-up' && evidence.some(({ found }) => found === 'absent'));
}
