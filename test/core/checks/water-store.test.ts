import { describe, expect, it } from 'vitest';
import { waterStore } from '../../../core/checks/water-store.js';
import type { Item } from '../../../core/model/item.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const bottle = (mL: number, given: Partial<Item> = {}) => item('bottle', { capacitiesMl: [stated(mL)], ...given });
const of = (people: number, ...items: Item[]) => findingOf(waterStore, factsOf({ people }, items));

describe('water carried, common practice, no source', () => {
  it.each([
    [1, [bottle(2000)], 'holds-up', '2\u00a0L'],
    [1, [bottle(1999)], 'holds-up', '2\u00a0L'],
    [1, [bottle(1000)], 'holds-up', '1\u00a0L'],
    [1, [bottle(999)], 'costs-you', '1\u00a0L'],
    [2, [bottle(1000, { quantity: stated(4) })], 'holds-up', '4\u00a0L'],
    [2, [bottle(1000)], 'costs-you', '1\u00a0L'],
    [3, [bottle(2000, { perPerson: true })], 'holds-up', '6\u00a0L'],
    [3, [bottle(900, { perPerson: true })], 'costs-you', '2.7\u00a0L'],
    [2, [bottle(750), item('bladder', { capacitiesMl: [stated(4000)] })], 'holds-up', '4.8\u00a0L'],
  ] as const)('%d people: %s', (people, items, grade, have) => {
    const finding = of(people, ...items);
    expect(finding.grade).toBe(grade);
    expect(finding.message).toContain(`Room for ${have} of water`);
  });

  it('fills less again on the way', () => {
    expect(of(1, bottle(1999))).toMatchObject({
      key: 'refilled',
      message: 'Room for 2\u00a0L of water, filled again on the way.',
    });
    expect(of(1, bottle(2000)).key).toBe('enough');
  });

  it('shows the margin, what lacks, and every bottle', () => {
    const finding = of(2, bottle(1000), bottle(500));
    expect(finding).toMatchObject({
      key: 'little',
      margin: '1.5\u00a0L of 4–6\u00a0L',
      fix: 'Room for 2.5\u00a0L more.',
    });
    expect(finding.evidence).toHaveLength(2);
    expect(finding.sum.map(({ text }) => text)).toEqual(['1.5\u00a0L', '2', '2–3\u00a0L', '4–6\u00a0L']);
    expect(finding.sum.map(({ sign, label, grounds }) => [sign, label, grounds])).toEqual([
      ['', 'carried in all', 'worked-out'],
      ['', 'people', 'stated'],
      ['×', 'a day and a night, each', 'common-practice'],
      ['=', 'room wanted', 'worked-out'],
    ]);
    expect(finding.sum[2]?.cites).toEqual(['cp-water-carried', 'efsa-water-2010', 'iom-water-2004']);
    expect(finding.sum[2]?.figure.value).toEqual({ low: 2, likely: 2.5, high: 3 });
    expect(finding.cites).toEqual(['cp-water-carried']);
    expect(finding.evidence[0]).toEqual({ line: 1, span: [0, 3], quote: 'pot', found: 'in-list' });
    expect(of(1, bottle(3000)).fix).toBeNull();
  });

  it('asks for a size only where it matters', () => {
    expect(of(1, bottle(1000), item('bottle'))).toMatchObject({
      grade: 'cant-tell',
      key: 'unknown',
      question: { item: 1, field: 'capacityMl' },
      message: 'Nothing says how much water the 1 piece holds.',
    });
    expect(of(1, item('bottle'), item('bladder')).message).toBe('Nothing says how much water the 2 pieces hold.');
    expect(of(1, bottle(2000), item('bottle')).grade).toBe('holds-up');
  });

  it('misses a bottle on a list that cooks, and is silent on one that does not, and on a typed pot', () => {
    const finding = of(2, item('pot'), item('stove'));
    expect(finding).toMatchObject({
      grade: 'costs-you',
      key: 'none',
      margin: 'no bottle',
      fix: 'Add bottles or a bladder for 4–6\u00a0L.',
    });
    expect(finding.evidence).toEqual([{ quote: 'no bottle, no bladder', found: 'absent' }]);
    expect(findingsOf(waterStore, factsOf({}, [item('pot')]))).toEqual([]);
    expect(findingsOf(waterStore, factsOf({}, [item('stove')]))).toEqual([]);
    expect(findingsOf(waterStore, factsOfPot({ capacity: 700 }, {}, { type: 'gas' }))).toEqual([]);
  });

  it('says that one person is assumed', () => {
    expect(findingOf(waterStore, factsOf({}, [bottle(2000)])).assumptions).toHaveLength(1);
  });
});
