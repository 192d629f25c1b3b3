import { describe, expect, test } from 'vitest';
import { air } from '../../../core/checks/air.js';
import type { Trip } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const STOVE = item('stove', { stoveType: stated('gas') });
const POT = item('pot', { capacitiesMl: [stated(1000)], diameterMm: stated(130) });
const wide = (given: Parameters<typeof item>[1]) => item('pan', given);

describe('air', () => {
  test('never holds up: in winter it is a caution without a grade', () => {
    const finding = plainly(findingOf(air, factsOf({ season: 'winter' }, [POT, STOVE])));
    expect(finding).toMatchObject({ grade: null, key: 'outside', fix: null, item: null, assumptions: [] });
    // Mean peaks in tents of 60.5 to 210.6 ppm (Betten and others 2013), 17 ppm in snow caves (Keyes and others 2001);
    // 100 mg/m³ for 15 min is the WHO guideline for Europe (2000): 87 ppm.
    expect(finding.margin).toBe('17–211 of 87 ppm, carbon monoxide');
    expect(finding.cautions.join(' ')).toMatch(/17–211 ppm .* 15 min is 87 ppm.*out into the air at once/);
    expect(finding.evidence).toHaveLength(1);
    expect(finding.cites).toContain('betten-2013');
  });

  test('cooking inside, where the list speaks of it, can hurt in any season', () => {
    for (const trip of [{ season: 'winter' }, { season: 'summer' }, {}] as const) {
      const finding = findingOf(air, factsOf(trip, [POT, STOVE], { cooksInside: stated(true) }));
      expect(finding).toMatchObject({ grade: 'can-hurt', key: 'inside', assumptions: [] });
      expect(finding.fix).toMatch(/^Cook outside/);
      expect(finding.cautions).toHaveLength(2);
    }
    expect(findingsOf(air, factsOf({}, [POT, STOVE], { cooksInside: stated(false) }))).toEqual([]);
  });

  test('a wide base costs besides', () => {
    const pan = wide({ diameterMm: stated(240), baseDiameterMm: stated(220) });
    const findings = findingsOf(air, factsOf({ season: 'winter' }, [POT, pan, STOVE])).map(plainly);
    // 220 mm gave more carbon monoxide than 165 mm: Wilderness & Environmental Medicine 15 (2004).
    expect(findings.map(({ key }) => key)).toEqual(['outside', 'wide']);
    expect(findings[1]).toMatchObject({
      grade: 'costs-you',
      margin: '220 of 220 mm',
      fix: 'A pot or pan less than 220 mm across the base.',
      item: 1,
      cites: ['wem-pan-diameter'],
    });
    expect(findings[1]!.evidence).toHaveLength(2);
  });

  test('the base counts before the rim, and the widest of all', () => {
    const keys = (...items: Parameters<typeof factsOf>[1]) =>
      findingsOf(air, factsOf({ season: 'winter' }, items)).map(({ key }) => key);
    const narrowBase = wide({ diameterMm: stated(240), baseDiameterMm: stated(219) });
    expect(keys(POT, narrowBase, STOVE)).toEqual(['outside']);
    const rimOnly = wide({ diameterMm: stated(230) });
    expect(findingsOf(air, factsOf({ season: 'winter' }, [rimOnly, POT, STOVE]))[1]!.margin).toMatch(/^230 of 220/);
    const facts = factsOf({ season: 'winter' }, [wide({ diameterMm: stated(250) }), rimOnly, STOVE]);
    expect(findingsOf(air, facts)[1]).toMatchObject({ item: 0 });
    expect(keys(item('pan'), STOVE)).toEqual(['outside']);
    expect(keys(STOVE)).toEqual(['outside']);
  });

  test.each<[string, Partial<Trip>]>([
    ['winter', { season: 'winter', waterFrom: 'liquid', lowC: 8 }],
    ['autumn', { season: 'autumn', waterFrom: 'liquid', lowC: 8 }],
    ['spring', { season: 'spring', waterFrom: 'liquid', lowC: 8 }],
    ['snow', { waterFrom: 'snow', lowC: 8 }],
    ['snow that is possible', { waterFrom: 'either', lowC: 8 }],
    ['5 °C', { lowC: 5, waterFrom: 'liquid' }],
  ])('%s is cause enough', (_, trip) => {
    expect(findingOf(air, factsOf(trip, [POT, STOVE]))).toMatchObject({ grade: null, assumptions: [] });
  });

  test('a cause that is only assumed is told', () => {
    const winter = {
      grounds: 'assumed',
      value: 'winter',
      because: 'the month',
      replaceWith: 'set the season',
    } as const;
    const { assumptions } = findingOf(air, factsOf({}, [POT, STOVE], { season: winter }));
    expect(assumptions.map(({ what }) => what)).toEqual(['the season', 'where the water comes from']);
    expect(findingOf(air, factsOf({ lowC: -8 }, [POT, STOVE], { season: winter })).assumptions).toEqual([]);
  });

  test.each([
    ['it is summer', factsOf({ season: 'summer' }, [wide({ diameterMm: stated(300) }), STOVE])],
    ['nothing is said', factsOf({}, [POT, STOVE])],
    ['it stays over 5 °C', factsOf({ lowC: 5.1, waterFrom: 'liquid' }, [POT, STOVE])],
    ['there is no stove', factsOf({ season: 'winter' }, [POT], { cooksInside: stated(true) })],
    ['one pot was typed', factsOfPot({ diameter: 250 }, { season: 'winter' }, { type: 'gas' })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(air, facts)).toEqual([]);
  });
});
