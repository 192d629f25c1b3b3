import { describe, expect, it } from 'vitest';
import { spark } from '../../../core/checks/spark.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const stove = item('stove');
const lighter = item('other-cook', { role: 'lighter' });
const matches = item('other-cook', { role: 'matches' });

describe('something to light it, common practice, no source', () => {
  it.each([
    [[lighter], 'Something to light the stove with: a lighter.', '1 on the list'],
    [[matches], 'Something to light the stove with: matches.', '1 on the list'],
    [[lighter, matches], 'Something to light the stove with: a lighter and matches.', '2 on the list'],
  ])('holds up with %j', (means, message, margin) => {
    const finding = findingOf(spark, factsOf({}, [stove, ...means]));
    expect(finding).toMatchObject({ grade: 'holds-up', message, margin, fix: null });
    expect(finding.evidence).toHaveLength(means.length);
  });

  it('costs you where nothing lights a stove, a fuel or a fire', () => {
    for (const facts of [
      factsOf({}, [stove]),
      factsOf({}, [item('fuel')]),
      factsOf({ cookAt: 'fire' }, [item('pot')]),
    ]) {
      const finding = findingOf(spark, facts);
      expect(finding).toMatchObject({
        grade: 'costs-you',
        key: 'none',
        margin: 'none on the list',
        fix: 'Add a lighter, and matches kept dry apart from it.',
      });
      expect(finding.evidence).toContainEqual({ quote: 'no lighter, no matches', found: 'absent' });
    }
  });

  it('names a second means in winter and on snow, where there is one', () => {
    const said =
      'One thing to light the stove with, a lighter: in the snow a second means, kept apart from it, is usual.';
    for (const trip of [{ season: 'winter' }, { waterFrom: 'snow' }] as const) {
      expect(findingOf(spark, factsOf(trip, [stove, lighter]))).toMatchObject({ grade: 'holds-up', message: said });
      expect(findingOf(spark, factsOf(trip, [stove, lighter, matches])).key).toBe('lights');
      const two = { ...lighter, quantity: stated(2) };
      expect(findingOf(spark, factsOf(trip, [stove, two]))).toMatchObject({ key: 'lights', margin: '2 on the list' });
    }
    expect(findingOf(spark, factsOf({ season: 'summer', waterFrom: 'either' }, [stove, lighter])).key).toBe('lights');
  });

  it('is silent where nothing burns, and on a typed pot', () => {
    expect(findingsOf(spark, factsOf({}, [item('pot')]))).toEqual([]);
    expect(findingsOf(spark, factsOf({ cookAt: 'fire' }, [item('bowl')]))).toEqual([]);
    expect(findingsOf(spark, factsOfPot({ capacity: 700 }, { cookAt: 'fire' }, { type: 'gas' }))).toEqual([]);
  });
});
