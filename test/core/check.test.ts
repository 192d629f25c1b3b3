import { describe, expect, it, vi } from 'vitest';
import { checkList, checkPot, CHECKS, ENGLISH, GRADES, remark } from '../../core/index.js';
import { reportJsonSchema, reportSchema } from '../../core/schema.js';
import { SOURCES } from '../../core/data/sources/index.js';
import { countLines, orderFindings } from '../../core/report/word.js';
import type { Finding } from '../../core/model/finding.js';

const LIST = 'Two people, 3 days\nPot 1.3 L, no lid, 210 g\nGas stove, 84 g\ngas canister 230 g\na red kite\n';

describe('the conductor', () => {
  it('gives the same bytes for the same input', () => {
    expect(JSON.stringify(checkList(LIST))).toBe(JSON.stringify(checkList(LIST)));
    expect(JSON.stringify(checkPot({ capacity: 600 }))).toBe(JSON.stringify(checkPot({ capacity: 600 })));
  });

  it('hands a check only the facts it asks for', () => {
    const [check] = CHECKS;
    const judge = vi.spyOn(check!, 'judge');
    checkList(LIST);
    expect(judge).toHaveBeenCalledOnce();
    expect(Object.keys(judge.mock.calls[0]![0]).sort()).toEqual([...check!.needs].sort());
    judge.mockRestore();
  });

  it('turns a fault in one check into its own "Can’t tell", and goes on', () => {
    const [check] = CHECKS;
    const judge = vi.spyOn(check!, 'judge').mockImplementation(() => {
      throw new Error('broken on purpose');
    });
    const report = checkList(LIST);
    judge.mockRestore();
    expect(report.findings.find((finding) => finding.check === check!.id)).toMatchObject({
      grade: 'cant-tell',
      key: 'fault',
    });
    expect(report.problems).toContainEqual({
      field: `check.${check!.id}`,
      value: check!.id,
      message: 'broken on purpose',
    });
    expect(report.findings.length).toBeGreaterThan(1);
    reportSchema.parse(report);
  });

  it('orders findings by grade, then by place in the text', () => {
    const grades = checkList(LIST).findings.map((finding) => GRADES.indexOf(finding.grade));
    expect(grades).toEqual([...grades].sort((a, b) => a - b));
    const at = (start: number | undefined, check: string) =>
      ({
        check,
        grade: 'costs-you',
        evidence: [start === undefined ? {} : { span: [start, start + 1] }],
      }) as unknown as Finding;
    expect(orderFindings([at(undefined, 'last'), at(9, 'second'), at(2, 'first')]).map(({ check }) => check)).toEqual([
      'first',
      'second',
      'last',
    ]);
  });

  it('reads the trip from the list, and lets the person outrank it', () => {
    const report = checkList(LIST);
    expect(report.trip.people).toMatchObject({ grounds: 'stated', value: 2, span: expect.anything() });
    expect(LIST.slice(...(report.trip.people as unknown as { span: [number, number] }).span)).toMatch(/two/i);
    expect(checkList(LIST, { people: 4 }).trip.people).toEqual({ grounds: 'stated', value: 4, typed: true });
  });

  it('words the report in the units asked for', () => {
    expect(
      checkList(LIST, {}, [], { units: 'us' })
        .findings.map(({ margin }) => margin)
        .join(),
    ).toContain('fl oz');
    expect(checkList('Pot 32 fl oz\nstove').units).toBe('us');
  });

  it('cites only what the bibliography has, and lists each once', () => {
    const { sources, findings } = checkList(LIST);
    const ids = sources.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of findings.flatMap(({ cites }) => cites)) expect(ids).toContain(id);
    const known = SOURCES.map(({ id }) => id);
    for (const check of CHECKS) for (const id of check.cites) expect(known).toContain(id);
  });
});

const METRIC = { units: 'metric', locale: 'en' } as const;

describe('a headline', () => {
  it('is a sentence of 90 characters or fewer, worst first', () => {
    const { headline: words } = checkList(LIST).summary;
    expect(words.length).toBeLessThanOrEqual(90);
    expect(words).toMatch(/^[A-Z].*\.$/);
  });
});

describe('every line', () => {
  it('is counted as used, not cook kit or not understood', () => {
    const { lines } = checkList(LIST).reading;
    expect(countLines(lines, METRIC)).toBe('4 lines used, 1 not cook kit, 0 not understood');
    expect(countLines(lines.slice(0, 1), METRIC)).toBe('1 line used, 0 not cook kit, 0 not understood');
  });
});

describe('the schema', () => {
  it('takes a report through JSON and refuses what is no report', () => {
    const report = checkList(LIST);
    expect(reportSchema.parse(JSON.parse(JSON.stringify(report)))).toEqual(JSON.parse(JSON.stringify(report)));
    expect(reportSchema.safeParse({ ...report, version: 1 }).success).toBe(false);
    expect(reportSchema.safeParse({ ...report, extra: 1 }).success).toBe(false);
  });

  it('becomes a JSON Schema', () => {
    expect(reportJsonSchema()).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      type: 'object',
    });
  });
});

describe('the remark', () => {
  it('quotes the lines and defers to those who know the place', () => {
    const words = remark(checkList(LIST), LIST);
    expect(words).toContain('  > 2: Pot 1.3 L, no lid, 210 g');
    expect(words).toContain('Local fire rules, land managers and licensed instruction come first.');
  });

  it('joins its parts by the marks of its language, and the headline too', () => {
    const text = 'Pot 0.6 L, no lid\nspirit stove, spirit 50 ml\n4 people, 3 days';
    const language = { ...ENGLISH, colon: ' : ', semicolon: ' ; ' };
    const words = remark(checkList(text, {}, [], { language }), text, 'plain', language);
    const [headline = ''] = words.split('\n');
    expect(headline).toContain(' ; ');
    expect(words).toContain('  > 1 : Pot 0.6 L, no lid');
    expect(words).toContain('Holds up : ');
    expect(words).toMatch(/^ {2}the wind : .+ ; choose the wind\.$/m);
  });

  it('keeps the person’s own marks out of the Markdown', () => {
    const text = 'Pot 0.6 L *best* <b>ever</b>, no lid\nstove';
    const words = remark(checkList(text), text, 'markdown');
    expect(words).toContain('\\*best\\*');
    expect(words).toContain('\\<b\\>ever');
    expect(words).toMatch(/^\*\*.*\*\*/);
  });
});
