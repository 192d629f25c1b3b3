import { describe, expect, test } from 'vitest';
import { snowBase } from '../../../core/checks/snow-base.js';
import type { Trip } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const STOVE = item('stove', { stoveType: stated('gas') });
const BOARD = item('other-cook', { role: 'board' });

describe('snow-base', () => {
  test.each<[string, Partial<Trip>]>([
    ['winter', { season: 'winter' }],
    ['winter, though the water is liquid', { season: 'winter', waterFrom: 'liquid' }],
    ['snow for water', { waterFrom: 'snow' }],
    ['snow that may be the water', { waterFrom: 'either' }],
  ])('%s and no board cost', (_, trip) => {
    expect(findingOf(snowBase, factsOf(trip, [STOVE, item('utensil')]))).toMatchObject({
      grade: 'costs-you',
      message: 'Nothing on the list goes under the stove: on snow it melts in and tips.',
      margin: 'no board',
      fix: 'A board under the stove. Or a spare lid or a shovel blade.',
      cautions: ['A stove that tips spills boiling water. Tread the snow hard and level before it is lit.'],
      evidence: [{ quote: 'no board', found: 'absent' }, { found: 'in-list' }],
      assumptions: [],
      cites: ['cp-snow-base'],
      item: null,
    });
  });

  test('a board holds up', () => {
    const lighter = item('other-cook', { role: 'lighter', span: [0, 1] });
    const board = { ...BOARD, span: [1, 3] as const };
    expect(findingOf(snowBase, factsOf({ season: 'winter' }, [STOVE, lighter, board]))).toMatchObject({
      grade: 'holds-up',
      message: 'The stove has something to stand on, on snow.',
      margin: 'a board',
      fix: null,
      cautions: [],
      evidence: [{ span: [1, 3], found: 'in-list' }],
    });
  });

  test('snow read from the text counts', () => {
    expect(findingOf(snowBase, factsOf({}, [STOVE], { waterFrom: stated('snow') })).grade).toBe('costs-you');
  });

  test('a winter that is only assumed is told, unless snow is known', () => {
    const season = {
      grounds: 'assumed',
      value: 'winter',
      because: 'the month',
      replaceWith: 'set the season',
    } as const;
    const told = [{ what: 'the season', because: 'the month', replaceWith: 'set the season' }];
    expect(findingOf(snowBase, factsOf({}, [STOVE], { season })).assumptions).toEqual(told);
    expect(findingOf(snowBase, factsOf({}, [STOVE, BOARD], { season })).assumptions).toEqual(told);
    expect(findingOf(snowBase, factsOf({ waterFrom: 'snow' }, [STOVE], { season })).assumptions).toEqual([]);
  });

  test.each([
    ['it is summer', factsOf({ season: 'summer' }, [STOVE])],
    ['nothing is said', factsOf({}, [STOVE, BOARD])],
    ['the water is known to be liquid', factsOf({ waterFrom: 'liquid' }, [STOVE])],
    ['snow is only assumed from the cold', factsOf({ lowC: -8 }, [STOVE])],
    ['there is no stove', factsOf({ season: 'winter' }, [item('pot'), BOARD])],
    ['one pot was typed', factsOfPot({ capacity: 1000 }, { season: 'winter' }, { type: 'gas' })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(snowBase, facts)).toEqual([]);
  });
});
