import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CHECKS, checkList, checkPot } from '../../../core/index.js';
import { GRADES, type Finding } from '../../../core/model/finding.js';
import { headline } from '../../../core/report/headline.js';
import { CLAUSES, WANTED } from '../../../core/report/headline-words.js';
import { ROOT } from '../../../scripts/files.mjs';
import { german } from '../../../widget/messages/german.js';

const METRIC = { units: 'metric', locale: 'en' } as const;
const TWO = { people: 2, days: 3 };

/** A finding as the headline sees it. */
function found(check: string, grade: Finding['grade'], key = 'x', field?: string): Finding {
  return {
    check,
    grade,
    key,
    message: `${check} speaks.`,
    question: field === undefined ? null : { field },
  } as unknown as Finding;
}
const told = (findings: readonly Finding[], company = TWO) => headline(findings, company, METRIC);

/** Cases written from `design/faces.md` and the drawings before the rules were. */
describe('a headline', () => {
  it('says what can hurt before what falls short, and joins what falls short by one verb', () => {
    expect(
      told([
        found('canister-heat', 'can-hurt', 'windscreen'),
        found('snow-melt', 'falls-short', 'small'),
        found('fuel-amount', 'falls-short', 'short'),
        found('spark', 'costs-you'),
      ]),
    ).toBe('The windscreen can overheat the canister; the pot and the fuel fall short.');
  });

  it('keeps apart what only snow decides', () => {
    expect(told([found('snow-melt', 'falls-short', 'small-if')])).toBe('If it snows, the pot falls short.');
    expect(told([found('snow-melt', 'falls-short', 'small-if'), found('cold-gas', 'falls-short', 'stays')])).toBe(
      'The gas falls short; if it snows, so does the pot.',
    );
  });

  it('says of a good kit whom it feeds and waters, and for how long where the fuel is known to last', () => {
    const room = found('meal-room', 'holds-up');
    const water = found('water-store', 'holds-up');
    const fuel = found('fuel-amount', 'holds-up');
    expect(told([room, water, fuel])).toBe('Feeds and waters two for three days.');
    expect(told([room, water])).toBe('Feeds and waters two.');
    expect(told([room, fuel], { people: 1, days: 1 })).toBe('Feeds one person for one day.');
    expect(told([room, fuel], { people: 12, days: 16 })).toBe('Feeds 12 people for 16 days.');
    expect(headline([room, fuel], { people: 12, days: null }, METRIC)).toBe('Feeds 12 people.');
    expect(told([found('lid', 'holds-up')])).toBe('Nothing here falls short for two.');
  });

  it('adds what it costs, or else which answers are wanted', () => {
    const good = [found('meal-room', 'holds-up'), found('fuel-amount', 'holds-up')];
    const shape = found('proportion', 'cant-tell', 'size-missing', 'diameterMm');
    const fit = found('stove-fit', 'cant-tell', 'base-missing', 'baseDiameterMm');
    expect(told([...good, shape, fit])).toBe('Feeds two for three days; the width of the pot is wanted.');
    expect(told([...good, shape, found('stove-fit', 'costs-you', 'flame-narrow')])).toBe(
      'Feeds two for three days; the flame goes up the wall.',
    );
    expect(
      told([shape, found('fuel-match', 'cant-tell', 'no-fuel', 'kind'), found('lid', 'cant-tell', 'unknown', 'lid')]),
    ).toBe('Too little is known to judge; the width of the pot, the fuel and 1 more are wanted.');
    expect(told([found('strange', 'cant-tell')])).toBe('Too little is known to judge; one answer is wanted.');
  });

  it('says a sentence whole where its check has no clause, and stands when nothing is judged', () => {
    expect(told([found('strange', 'falls-short')])).toBe('Strange speaks.');
    expect(told([])).toBe('Nothing here to judge yet.');
  });

  it('is one sentence of 90 characters or fewer, whatever is found, and its worst is never left out', () => {
    const any = fc.record({
      check: fc.constantFrom(...CHECKS.map(({ id }) => id)),
      grade: fc.constantFrom(...GRADES),
      key: fc.constantFrom('x', 'small-if', 'pan', 'none'),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 12 }), fc.integer({ min: 1, max: 30 }), (some, people) => {
        const findings = GRADES.flatMap((grade) => some.filter((one) => one.grade === grade)).map((one) =>
          found(one.check, one.grade, one.key),
        );
        const words = told(findings, { people, days: 2 });
        expect(words.length).toBeLessThanOrEqual(90);
        expect(words).toMatch(/^[A-Z0-9][^.]*\.$/);
        const hurts = findings.some(({ grade }) => grade === 'can-hurt');
        if (hurts) expect(words.toLowerCase()).not.toMatch(/^(feeds|nothing here)/);
      }),
    );
  });

  it('has a clause for every finding, and a name for every answer, that a list or a pot brings about', () => {
    const practice = path.join(ROOT, 'test', 'practice', 'texts');
    const lists = readdirSync(practice).map((file) => readFileSync(path.join(practice, file), 'utf8'));
    const reports = [
      ...lists.flatMap((text) => [
        checkList(text),
        checkList(text, { waterFrom: 'snow', lowC: -20, people: 4, days: 5 }),
      ]),
      ...[60, 90, 140, 260].map((mm) =>
        checkPot(
          { diameter: mm, height: 120, bail: true },
          { people: 2 },
          { type: 'gas', form: 'upright', armSpan: 60 },
        ),
      ),
    ];
    const clauses: Readonly<Record<string, string>> = CLAUSES;
    const names: Readonly<Record<string, string>> = WANTED;
    const without = reports.flatMap(({ findings }) =>
      findings.flatMap(({ check, grade, key, question }) => {
        if (grade === 'holds-up') return [];
        if (grade === 'cant-tell')
          return question === null || (names[`${check}/${question.field}`] ?? names[question.field]) !== undefined
            ? []
            : [`${check}: ${question.field}`];
        const own = clauses[`${check}/${key.replace(/-if$/, '')}`] ?? clauses[`${check}/${grade}`];
        return own === undefined ? [`${check}/${grade}`] : [];
      }),
    );
    expect([...new Set(without)]).toEqual([]);
    for (const name of Object.keys(CLAUSES)) expect(CHECKS.map(({ id }) => id)).toContain(name.split('/')[0]);
  });

  it('is said in another language', () => {
    const wording = { ...METRIC, locale: 'de', language: german.language };
    expect(headline([found('lift', 'can-hurt'), found('cold-gas', 'falls-short')], TWO, wording)).toBe(
      'Nichts hebt den vollen Topf; das Gas reicht nicht.',
    );
  });
});
