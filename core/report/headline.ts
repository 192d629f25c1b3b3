import type { Figures, Finding } from '../model/finding.js';
import { fillTemplate, tell, told, type Wording } from './format.js';
import { CLAUSES, HEADLINE_MESSAGES, WANTED } from './headline-words.js';
import { ENGLISH } from './language.js';

/** Longest headline, in characters. */
const LONGEST = 90;
/** A message key that speaks of snow that may not come. */
const IF_SNOW = /-if$/;

/** Whom the kit is judged for; `days` is null where nobody says how long the trip is. */
export interface Company {
  readonly people: number;
  readonly days: number | null;
}

/**
 * What the findings come to, in one sentence of 90 characters or fewer. What can hurt comes first, then what falls short; only where there is neither,
 * whom the kit feeds and waters, and after it what that costs or which answers are wanted.
 */
export function headline(findings: readonly Finding[], company: Company, wording: Wording): string {
  if (findings.length === 0) return phrase('empty', {}, wording);
  const of = (grade: Finding['grade']) => findings.filter((finding) => finding.grade === grade);
  const bad = [...clauses(of('can-hurt'), wording), ...shortfalls(of('falls-short'), wording)];
  if (bad.length > 0) return sentence(bad, wording);
  const costs = clauses(of('costs-you'), wording);
  const open = of('cant-tell');
  return sentence(
    [feeds(findings, company, wording), ...(costs.length > 0 ? costs : open.length > 0 ? [wanted(open, wording)] : [])],
    wording,
  );
}

function clauseOf({ check, key, grade }: Finding): string | undefined {
  const known: Readonly<Record<string, string>> = CLAUSES;
  return known[`${check}/${key.replace(IF_SNOW, '')}`] ?? known[`${check}/${grade}`];
}

/** One clause a finding, each once. A finding that has none of its own says its sentence. */
function clauses(findings: readonly Finding[], wording: Wording): readonly string[] {
  const { inside } = wording.language ?? ENGLISH;
  const said = findings.map((finding) => {
    const clause = clauseOf(finding);
    return clause === undefined ? inside(finding.message.replace(/\.$/, '')) : tell(clause, wording);
  });
  return [...new Set(said)];
}

/** Things that fall short share a verb: "the pot and the gas fall short"; those of which snow alone decides stand apart. */
function shortfalls(findings: readonly Finding[], wording: Wording): readonly string[] {
  const isThing = (finding: Finding) => clauseOf(finding)?.startsWith('=') === true;
  const things = (some: readonly Finding[]) => [
    ...new Set(some.map((finding) => tell(clauseOf(finding)!.slice(1), wording))),
  ];
  const always = things(findings.filter((finding) => isThing(finding) && !IF_SNOW.test(finding.key)));
  const snow = things(findings.filter((finding) => isThing(finding) && IF_SNOW.test(finding.key))).filter(
    (thing) => !always.includes(thing),
  );
  return [
    ...clauses(
      findings.filter((finding) => !isThing(finding)),
      wording,
    ),
    ...(always.length === 0 ? [] : [together('falls', always.slice(0, 3), wording)]),
    ...(snow.length === 0 ? [] : [together(always.length === 0 ? 'snow' : 'snow-too', snow.slice(0, 2), wording)]),
  ];
}

/** Whom the kit feeds, whether it waters them, and for how long where the fuel is known to last. */
function feeds(findings: readonly Finding[], { people, days }: Company, wording: Wording): string {
  const holds = (check: string, ...grades: Finding['grade'][]) =>
    findings.some((finding) => finding.check === check && grades.includes(finding.grade));
  const who = people <= 9 ? `who-${people}` : 'people';
  const long = days === null || days > 9 ? 'days' : `long-${days}`;
  const figures: Figures = {
    who,
    people: { value: people, unit: 'people' },
    long,
    days: { value: days ?? 1, unit: 'days' },
  };
  if (!holds('meal-room', 'holds-up', 'costs-you')) {
    const known = findings.some(({ grade }) => grade === 'holds-up' || grade === 'costs-you');
    return phrase(known ? 'good' : 'little-known', figures, wording);
  }
  const waters = holds('water-store', 'holds-up') && !holds('snow-melt', 'cant-tell');
  const lasts = days !== null && holds('fuel-amount', 'holds-up', 'costs-you');
  return phrase(`feeds${waters ? '-waters' : ''}${lasts ? '-long' : ''}`, figures, wording);
}

/** The answers that are wanted, two of them by name. */
function wanted(open: readonly Finding[], wording: Wording): string {
  const known: Readonly<Record<string, string>> = WANTED;
  const names = open.flatMap(({ check, question }) => {
    const name = question === null ? undefined : (known[`${check}/${question.field}`] ?? known[question.field]);
    return name === undefined ? [] : [tell(name, wording)];
  });
  const different = [...new Set(names)];
  const count = (value: number) => ({ value, unit: '' }) as const;
  if (different.length === 0)
    return phrase(open.length === 1 ? 'answers-1' : 'answers-more', { more: count(open.length) }, wording);
  if (different.length <= 2) return together('wanted', different, wording);
  const [a = '', b = ''] = different;
  return phrase('wanted-more', { a, b, more: count(different.length - 2) }, wording);
}

function together(what: 'falls' | 'snow' | 'snow-too' | 'wanted', things: readonly string[], wording: Wording): string {
  const [a = '', b = '', c = ''] = things;
  return phrase(`${what}-${things.length}`, { a, b, c }, wording);
}

function phrase(key: string, figures: Figures, wording: Wording): string {
  const messages = told(HEADLINE_MESSAGES, wording);
  return fillTemplate(messages[key] ?? '', figures, messages, wording);
}

/** As many clauses as fit, joined by semicolons; the first alone where it is longer than the line. */
function sentence([first = '', ...rest]: readonly string[], wording: Wording): string {
  const { semicolon } = wording.language ?? ENGLISH;
  let joined = first;
  for (const clause of rest) {
    const longer = joined + semicolon + clause;
    if (longer.length + 1 > LONGEST) break;
    joined = longer;
  }
  return `${joined.charAt(0).toUpperCase()}${joined.slice(1)}.`;
}
