import { describe, expect, test } from 'vitest';
import { air } from '../../../core/checks/air.js';
import type { Trip } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const STOVE = item('stove', { stoveType: stated('gas') });
const POT = item('pot', { capacitiesMl: [stated(1000)], diameterMm: stated(130) });
const wide = (given: Parameters<typeof item>[1]) => item('pan', given);

describe('air', () => {
  test('a good winter kit is told quietly to cook outside', () => {
    const finding = plainly(findingOf(air, factsOf({ season: 'winter' }, [POT, STOVE])));
    // A stove burning two hours in a small tent left 21.5 % of the blood bound: Thomassen and others (2004).
    expect(finding).toMatchObject({
      grade: 'holds-up',
      message: 'Cook outside the tent; a stove in it fills it with carbon monoxide.',
      margin: '21.5% after 120 min',
      fix: null,
      item: null,
      assumptions: [],
      cites: ['thomassen-2004', 'wem-pan-diameter', 'leigh-smith-2004'],
    });
    expect(finding.cautions).toEqual([
      'A stove in a small tent bound 21.5% of the blood of those in it within 120 min. Cook outside, with air on all sides.',
      'Headache, dullness or sickness: out into the air at once, stove off.',
    ]);
    expect(finding.evidence).toHaveLength(1);
  });

  test('a wide base in winter costs', () => {
    const pan = wide({ diameterMm: stated(240), baseDiameterMm: stated(220) });
    const finding = plainly(findingOf(air, factsOf({ season: 'winter' }, [POT, pan, STOVE])));
    // 220 mm gave more carbon monoxide than 165 mm: Wilderness & Environmental Medicine 15 (2004).
    expect(finding).toMatchObject({
      grade: 'costs-you',
      message: 'Over a base of 220 mm a stove makes more carbon monoxide: in a test 220 mm gave more than 165 mm.',
      margin: '220 of 220 mm',
      fix: 'A pot or pan less than 220 mm across the base.',
      item: 1,
    });
    expect(finding.cautions).toHaveLength(2);
    expect(finding.evidence).toHaveLength(2);
  });

  test('the base counts before the rim, and the widest of all', () => {
    const narrowBase = wide({ diameterMm: stated(240), baseDiameterMm: stated(219) });
    expect(findingOf(air, factsOf({ season: 'winter' }, [POT, narrowBase, STOVE])).grade).toBe('holds-up');
    const rimOnly = wide({ diameterMm: stated(230) });
    expect(findingOf(air, factsOf({ season: 'winter' }, [rimOnly, POT, STOVE])).margin).toMatch(/^230 of 220/);
    const facts = factsOf({ season: 'winter' }, [wide({ diameterMm: stated(250) }), rimOnly, STOVE]);
    expect(findingOf(air, facts)).toMatchObject({ item: 0 });
    expect(findingOf(air, factsOf({ season: 'winter' }, [item('pan'), STOVE])).grade).toBe('holds-up');
    expect(findingOf(air, factsOf({ season: 'winter' }, [STOVE])).grade).toBe('holds-up');
  });

  test.each<[string, Partial<Trip>]>([
    ['winter', { season: 'winter', waterFrom: 'liquid', lowC: 0 }],
    ['snow', { waterFrom: 'snow', lowC: 5 }],
    ['snow that is possible', { waterFrom: 'either', lowC: 5 }],
    ['−5 °C', { lowC: -5, waterFrom: 'liquid' }],
  ])('%s is cause enough', (_, trip) => {
    expect(findingOf(air, factsOf(trip, [POT, STOVE]))).toMatchObject({ grade: 'holds-up', assumptions: [] });
  });

  test('a cause that is only assumed is told', () => {
    const winter = {
      grounds: 'assumed',
      value: 'winter',
      because: 'the month',
      replaceWith: 'set the season',
    } as const;
    const { assumptions } = findingOf(air, factsOf({}, [POT, STOVE], { season: winter }));
    expect(assumptions.map(({ what }) => what)).toEqual([
      'the season',
      'where the water comes from',
      'the lowest temperature',
    ]);
    expect(findingOf(air, factsOf({ lowC: -8 }, [POT, STOVE], { season: winter })).assumptions).toEqual([]);
  });

  test.each([
    ['it is summer', factsOf({ season: 'summer' }, [wide({ diameterMm: stated(300) }), STOVE])],
    ['nothing is said', factsOf({}, [POT, STOVE])],
    ['it stays over −5 °C', factsOf({ lowC: -4.9, waterFrom: 'liquid' }, [POT, STOVE])],
    ['there is no stove', factsOf({ season: 'winter' }, [POT])],
    ['one pot was typed', factsOfPot({ diameter: 250 }, { season: 'winter' }, { type: 'gas' })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(air, facts)).toEqual([]);
  });
});
