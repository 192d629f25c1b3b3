import { describe, expect, it } from 'vitest';
import { hang } from '../../../core/checks/hang.js';
import type { PotInput } from '../../../core/model/pot.js';
import { spillAngleDeg } from '../../../core/physics/stability.js';
import { factsOfPot, findingOf, findingsOf } from './facts.js';

const hung = (pot: PotInput, people = 1) =>
  findingOf(hang, factsOfPot({ bail: true, ...pot }, { people, mealStyle: 'boil-only' }));

describe('hung from a bail', () => {
  it('a 2 : 3 one-litre pot at 85 % spills at about 24°, a 3 : 2 one at about 11° (common practice, no source)', () => {
    const spill = (ratio: number) => {
      const height = Math.cbrt((4 * 1e6) / (Math.PI * ratio ** 2));
      return spillAngleDeg({ rimMm: height * ratio, heightMm: height, fillMm: height * 0.85 });
    };
    expect(Math.round(spill(2 / 3))).toBe(24);
    expect(Math.round(spill(3 / 2))).toBe(11);
  });

  it.each([
    // atan(2 × 10 % of the height ÷ width) at a fill of 90 %, elementary geometry.
    [95, 100, 'costs-you', 'slops', 12],
    [93, 100, 'holds-up', 'steady', 12],
    [190, 100, 'costs-you', 'slops', 6],
    [191, 100, 'can-hurt', 'brimful', 6],
  ] as const)('%d × %d mm full for many: %s', (diameter, height, grade, key, spill) => {
    const finding = hung(
      { capacity: (Math.PI / 4) * diameter ** 2 * height * 1e-3, diameter, height, earHeight: height * 3 },
      60,
    );
    expect(finding).toMatchObject({ grade, key });
    expect(finding.figures['spill']).toMatchObject({ value: expect.closeTo(spill, 0), unit: '°' });
  });

  it('turns over where its weight acts above the ears', () => {
    // 250 × 60 mm, 54 mm of water: 60 − 27 − 125² ÷ (4 × 54) = −39 mm, the free surface as in ship stability.
    const finding = hung({ capacity: 2945, diameter: 250, height: 60 }, 60);
    expect(finding).toMatchObject({
      grade: 'can-hurt',
      key: 'turns',
      fix: 'Ears nearer the rim, or less water in it.',
      cautions: [expect.stringContaining('stick through the bail')],
    });
    expect(finding.sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '33\u00a0mm'],
      ['−', '72\u00a0mm'],
      ['=', '−39\u00a0mm'],
    ]);
    expect(finding.margin).toBe('−39\u00a0mm below the ears');
  });

  it('counts the ears where they are, and the pot’s own mass', () => {
    const pot = { capacity: 2945, diameter: 250, height: 60 };
    expect(hung({ ...pot, earHeight: 100 }, 60).key).not.toBe('turns');
    const light = hung({ ...pot, earHeight: 98 }, 60);
    const heavy = hung({ ...pot, earHeight: 98, mass: 5000 }, 60);
    const metacentric = (finding: typeof light) => (finding.figures['metacentric'] as { value: number }).value;
    expect(metacentric(light)).toBeCloseTo(98 - 27 - 125 ** 2 / (4 * 54), 0);
    expect(metacentric(heavy)).toBeGreaterThan(metacentric(light));
  });

  it('names the fill that steadies it', () => {
    const finding = hung({ capacity: (Math.PI / 4) * 15 ** 2 * 10, diameter: 150, height: 100 }, 60);
    expect(finding.key).toBe('slops');
    // 100 − tan 12° × 75 mm leaves 84 mm of water, 1486 mL.
    expect(finding.fix).toBe('Fill it to 1480\u00a0mL at most: 12° to the spill.');
    expect(finding.cautions).toEqual([]);
    expect(finding.sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '10\u00a0mm'],
      ['÷', '75\u00a0mm'],
      ['=', '8°'],
    ]);
  });

  it('plans no more than those who eat from it need', () => {
    const big = { capacity: 4000, diameter: 160, height: 200 };
    expect(hung(big, 1).figures['spill']).toMatchObject({ value: expect.closeTo(68, -1) });
    expect(hung(big, 1).grade).toBe('holds-up');
    expect(hung(big, 1).message).toBe(
      `It may lean ${Math.round((hung(big, 1).figures['spill'] as { value: number }).value)}° on its bail before it spills.`,
    );
  });

  it('is silent without a bail or without dimensions', () => {
    for (const pot of [
      { bail: false, capacity: 1000, diameter: 100, height: 150 },
      { capacity: 1000, diameter: 100, height: 150 },
      { bail: true, capacity: 1000 },
    ]) {
      expect(findingsOf(hang, factsOfPot(pot))).toEqual([]);
    }
  });
});
