import { describe, expect, it } from 'vitest';
import { labelVolume } from '../../../core/checks/label-volume.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

// π/4 × 100² × 100 mm is 785.4 mL, elementary geometry; so is the share of what is stated.
const OUTSIDE = 785.398;
const stating = (capacity: number) =>
  findingOf(labelVolume, factsOfPot({ capacity, diameter: 100, height: 100, name: 'tin' }));

describe('stated against outside, common practice, no source', () => {
  it.each([
    [OUTSIDE / 1.199, 'holds-up', 'agrees'],
    [OUTSIDE / 1.201, 'holds-up', 'loosely'],
    [OUTSIDE / 1.299, 'holds-up', 'loosely'],
    [OUTSIDE / 1.301, 'cant-tell', 'large'],
    [OUTSIDE, 'holds-up', 'agrees'],
    [OUTSIDE / 0.801, 'holds-up', 'agrees'],
    [OUTSIDE / 0.799, 'cant-tell', 'impossible'],
  ] as const)('%d mL stated: %s', (capacity, grade, key) => {
    expect(stating(capacity)).toMatchObject({ grade, key });
  });

  it('asks which is right', () => {
    const finding = findingOf(labelVolume, factsOfPot({ capacity: 1300, diameter: 80, height: 125 }));
    expect(finding.message).toBe('1300\u00a0mL cannot fit in 80 × 125\u00a0mm. Which is right?');
    expect(finding.question).toMatchObject({
      field: 'capacityMl',
      text: '“pot”: how much does it hold, filled to the brim?',
    });
    expect(stating(500).message).toBe('785\u00a0mL outside is much for a pot that states 500\u00a0mL. Which is right?');
    expect(stating(500).question).not.toBeNull();
  });

  it('shows the sum', () => {
    expect(stating(700).sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '785\u00a0mL'],
      ['÷', '700\u00a0mL'],
      ['=', '1.12'],
    ]);
    expect(stating(700).margin).toBe('700\u00a0mL stated, 785\u00a0mL outside');
  });

  it('knows a flaring pot and a box', () => {
    // 17 × 13 × 6 cm is 1326 mL.
    const tin = item('pot', { boxMm: stated([170, 130] as const), heightMm: stated(60), capacitiesMl: [stated(1300)] });
    expect(findingOf(labelVolume, factsOf({}, [tin]))).toMatchObject({ key: 'agrees', item: 0 });
    // π × 10 × (12² + 12 × 8 + 8²) / 12 cm is 795.9 mL; as a cylinder it would be 1131.
    expect(
      findingOf(labelVolume, factsOfPot({ capacity: 780, diameter: 120, baseDiameter: 80, height: 100 })).key,
    ).toBe('agrees');
    expect(findingOf(labelVolume, factsOfPot({ capacity: 780, diameter: 120, height: 100 })).key).toBe('large');
  });

  it('is silent where either is not stated', () => {
    for (const pot of [
      { diameter: 100, height: 100 },
      { capacity: 700, diameter: 100 },
      { capacity: 700, height: 100 },
    ])
      expect(findingsOf(labelVolume, factsOfPot(pot))).toEqual([]);
  });
});
