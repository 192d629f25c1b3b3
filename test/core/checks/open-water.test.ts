import { describe, expect, test } from 'vitest';
import { openWater } from '../../../core/checks/open-water.js';
import type { TripHints } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const YOUNG: TripHints = { youthGroup: stated(true) };
const potOf = (capacityMl: number) => item('pot', { capacitiesMl: [stated(capacityMl)] });

describe('open-water', () => {
  test('young people around much boiling water', () => {
    const finding = plainly(findingOf(openWater, factsOf({ mealStyle: 'boil-only' }, [potOf(4000)], YOUNG)));
    // Skin burns in 5 s at 60 °C and in 1 s at 68 °C: Moritz and Henriques (1947), as tabulated later.
    expect(finding).toMatchObject({
      grade: 'costs-you',
      message: 'Young people around 3.6 L of boiling water: it burns in 1 s or less, and cooled to 60 °C still in 5 s.',
      margin: '3.6 L at 100 °C',
      fix: 'A ladle and a pot that stays put. Or fills under 1 L.',
      item: 0,
      assumptions: [],
      evidence: [{ line: 1, found: 'in-list' }],
      cites: ['moritz-henriques', 'cp-first-aid-burn'],
    });
    expect(finding.cautions).toEqual([
      'Cups stand on the ground to be filled. Feet stay clear, and one person alone handles the pot.',
      'A burn: cool running water, wet clothing off, cover it; blisters on face, hands or feet need a doctor.',
    ]);
    // By hand: 4 L × 0.9 = 3.6 L.
    expect(finding.sum.map(({ sign, text, label, grounds }) => [sign, text, label, grounds])).toEqual([
      ['', '4 L', 'to the brim', 'stated'],
      ['×', '0.9', 'the share that is filled', 'common-practice'],
      ['=', '3.6 L', 'of boiling water', 'worked-out'],
    ]);
    expect(finding.sum[1]?.cites).toEqual(['cp-fill-ceiling']);
  });

  test('boiling water burns as fast in the mountains', () => {
    const facts = factsOf({ altitudeM: 5000, mealStyle: 'boil-only' }, [potOf(4000)], YOUNG);
    const finding = plainly(findingOf(openWater, facts));
    expect(finding.margin).toBe('3.6 L at 83 °C');
    expect(finding.message).toContain('it burns in 1 s or less');
  });

  test('it begins at one litre in the pot', () => {
    // 0.67 of the brim when it simmers: 1495 mL hold 1002 mL, 1490 mL hold 998 mL.
    expect(findingsOf(openWater, factsOf({ mealStyle: 'simmer' }, [potOf(1495)], YOUNG))).toHaveLength(1);
    expect(findingsOf(openWater, factsOf({ mealStyle: 'simmer' }, [potOf(1490)], YOUNG))).toEqual([]);
    // On the threshold itself: 1000 mL × 0.9 = 900 mL.
    const from900 = { ...openWater, options: { ...openWater.options, fromMl: 900 } };
    expect(findingsOf(from900, factsOf({ mealStyle: 'boil-only' }, [potOf(1000)], YOUNG))).toHaveLength(1);
  });

  test('how full it is, is told as an assumption where nobody says how they cook', () => {
    expect(findingOf(openWater, factsOf({}, [potOf(4000)], YOUNG)).assumptions.map(({ what }) => what)).toEqual([
      'how they cook',
    ]);
    const guessed = { grounds: 'assumed', value: 4000, because: 'a guess', replaceWith: 'its size' } as const;
    const facts = factsOf({ mealStyle: 'simmer' }, [item('pot', { capacitiesMl: [guessed] })], YOUNG);
    expect(findingOf(openWater, facts).assumptions.map(({ what }) => what)).toEqual(['what the pot holds']);
  });

  test.each([
    ['nobody young is named', factsOf({}, [potOf(8000)])],
    ['the text says there is nobody young', factsOf({}, [potOf(8000)], { youthGroup: stated(false) })],
    ['no pot has a size', factsOf({}, [item('pot')], YOUNG)],
    ['there is no pot', factsOf({}, [item('stove')], YOUNG)],
    ['one pot was typed', factsOfPot({ capacity: 8000 })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(openWater, facts)).toEqual([]);
  });
});
