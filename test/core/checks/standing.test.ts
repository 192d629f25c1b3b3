import { describe, expect, it } from 'vitest';
import { standing } from '../../../core/checks/standing.js';
import type { StoveInput } from '../../../core/model/pot.js';
import { factsOfPot, findingOf, findingsOf } from './facts.js';

/** 140 mm across with 100 mm of water (1539 mL): the published row of the tipping cylinder. */
const POT = { capacity: 1539.4 / 0.9, diameter: 140, height: 111.1 };
const on = (stove: StoveInput, pot = POT) =>
  findingOf(standing, factsOfPot(pot, { people: 60, mealStyle: 'boil-only' }, stove));
const value = (finding: ReturnType<typeof on>, name: string) => (finding.figures[name] as { value: number }).value;

describe('standing', () => {
  it('tips at 31.77° over an edge 40 mm off, and at 13.82° on a stand of 100 mm', () => {
    // Statics of the truncated cylinder; the triple 38.66°, 32.72°, 31.77° and 13.82° is tested in test/published.
    expect(value(on({ armCount: 4, armSpan: 80 / Math.SQRT1_2 }), 'tip')).toBeCloseTo(31.77, 1);
    expect(value(on({ form: 'upright', footDiameter: 80, height: 100 }), 'tip')).toBeCloseTo(13.82, 1);
  });

  it.each([
    [{ form: 'upright', footDiameter: 120, height: 100 }, 'holds-up', 'steady'],
    [{ form: 'upright', footDiameter: 80, height: 100 }, 'costs-you', 'spills-first'],
    [{ form: 'upright', footDiameter: 50, height: 100 }, 'can-hurt', 'tips-first'],
  ] as const)('%j: %s', (stove, grade, key) => {
    expect(on(stove)).toMatchObject({ grade, key });
  });

  it('grades at 10° and 15°', () => {
    const at = (footDiameter: number) => on({ form: 'upright', footDiameter, height: 100 });
    const grades = Array.from({ length: 60 }, (_, i) => at(40 + i)).map(
      (finding) => [value(finding, 'tip'), finding.grade] as const,
    );
    for (const [tip, grade] of grades) expect(grade).toBe(tip < 10 ? 'can-hurt' : tip < 15 ? 'costs-you' : 'holds-up');
    expect(new Set(grades.map(([, grade]) => grade)).size).toBe(3);
  });

  it('takes three legs at half the circle, four at 0.71, a canister whole', () => {
    // R cos(π/n): 0.500 and 0.707 of the circle.
    const edge = (stove: StoveInput) => on(stove).sum[0]?.text;
    expect(edge({ armCount: 3, footDiameter: 120, height: 50 })).toBe('30\u00a0mm');
    expect(edge({ armCount: 4, footDiameter: 120, height: 50 })).toBe('42\u00a0mm');
    expect(edge({ footDiameter: 120, height: 50 })).toBe('30\u00a0mm');
    expect(edge({ form: 'upright', footDiameter: 120, height: 50 })).toBe('60\u00a0mm');
    expect(edge({ armCount: 3, armSpan: 100 })).toBe('25\u00a0mm');
    // Arms that reach past the base hold no more than the base.
    expect(edge({ armCount: 4, armSpan: 400 })).toBe(`${Math.round(70 * Math.SQRT1_2)}\u00a0mm`);
  });

  it('goes by the worse of arms and feet', () => {
    const both = on({ armCount: 3, armSpan: 100, footDiameter: 300, height: 60 });
    expect(both.sum[0]?.text).toBe('25\u00a0mm');
    expect(on({ armCount: 3, armSpan: 300, footDiameter: 60, height: 60 }).sum[0]?.text).toBe('15\u00a0mm');
  });

  it('names feet or arms that would do, and the caution', () => {
    const narrow = on({ form: 'upright', footDiameter: 60, height: 100 });
    const feet = value(narrow, 'feet');
    expect(narrow.fix).toBe(`Feet ${feet}\u00a0mm across, or fill it less.`);
    expect(on({ form: 'upright', footDiameter: feet, height: 100 }).grade).toBe('holds-up');
    expect(on({ form: 'upright', footDiameter: feet - 10, height: 100 }).grade).not.toBe('holds-up');
    expect(narrow.cautions).toEqual([expect.stringContaining('Boiling water burns in a second')]);
    const arms = on({ armCount: 3, armSpan: 40 });
    expect(arms.fix).toBe(`A stove with arms ${value(arms, 'feet')}\u00a0mm across, or fill it less.`);
  });

  it('finds no cure where two arms hold nothing sideways', () => {
    expect(on({ armCount: 2, armSpan: 100 })).toMatchObject({ grade: 'can-hurt', fix: null });
  });

  it('says whether it spills first', () => {
    const finding = on({ form: 'upright', footDiameter: 80, height: 100 });
    expect(value(finding, 'spill')).toBeLessThan(value(finding, 'tip'));
    expect(finding.message).toBe('It spills at 9° and goes over at 14°.');
    expect(finding.margin).toBe('14° of 15°, before it tips');
  });

  it('counts the pot’s own mass', () => {
    const stove = { form: 'upright', footDiameter: 80, height: 100 } as const;
    expect(value(on(stove, { ...POT, mass: 3000 } as never), 'tip')).not.toBeCloseTo(value(on(stove), 'tip'), 1);
  });

  it('of a pot locked to its burner asks only the foot', () => {
    expect(findingsOf(standing, factsOfPot(POT, {}, { type: 'integrated', armCount: 3, armSpan: 60 }))).toEqual([]);
    expect(on({ type: 'integrated', form: 'upright', footDiameter: 80, height: 100 }).sum[0]?.text).toBe('40\u00a0mm');
  });

  it('is silent without stove, supports or dimensions', () => {
    expect(findingsOf(standing, factsOfPot(POT))).toEqual([]);
    expect(findingsOf(standing, factsOfPot(POT, {}, { type: 'gas', armCount: 3 }))).toEqual([]);
    expect(findingsOf(standing, factsOfPot({ capacity: 1000 }, {}, { armSpan: 100 }))).toEqual([]);
  });
});
