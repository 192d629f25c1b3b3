import { describe, expect, test } from 'vitest';
import { boilWater } from '../../../core/checks/boil-water.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const POT = item('pot', { capacitiesMl: [stated(1000)] });
const STOVE = item('stove', { stoveType: stated('gas') });

describe('boil-water', () => {
  test('shows the boiling point and one minute at sea level', () => {
    const finding = plainly(findingOf(boilWater, factsOf({ altitudeM: 0 }, [POT, STOVE])));
    // Water boils at 100 °C under one standard atmosphere: 99.97 °C by the steam tables (IAPWS-IF97).
    expect(finding.message).toBe('Water boils at 100 °C here: a rolling boil of 1 min before it is drunk.');
    expect(finding).toMatchObject({ grade: 'holds-up', margin: '1 min at a rolling boil', item: null });
    expect(finding.cautions).toEqual([
      'The longer of two published rules is used; by the other, reaching a rolling boil is enough at any altitude.',
    ]);
    expect(finding.evidence).toMatchObject([{ line: 1, found: 'in-list' }]);
    expect(finding.cites).toEqual(expect.arrayContaining(['cdc-boil', 'who-boil']));
  });

  // Rolling boil of 1 minute, 3 minutes above 2000 m: US Centers for Disease Control and Prevention.
  test.each([
    [2000, '1 min'],
    [2001, '3 min'],
    [4000, '3 min'],
  ])('at %i m the boil lasts %s', (altitudeM, minutes) => {
    expect(plainly(findingOf(boilWater, factsOf({ altitudeM }, [POT, STOVE]))).margin).toBe(
      `${minutes} at a rolling boil`,
    );
  });

  test('the sum goes from the altitude to the boiling point', () => {
    const { sum, message } = plainly(findingOf(boilWater, factsOf({ altitudeM: 3000 }, [POT, STOVE])));
    expect(sum.map((line) => `${line.sign} ${line.text} ${line.label} ${line.grounds}`)).toEqual([
      ' 3000 m where they cook stated',
      '= 90 °C boiling point there worked-out',
    ]);
    expect(sum[1]?.cites).toEqual(['iso-2533', 'iapws-if97']);
    expect(message).toContain('boils at 90 °C');
  });

  test('an altitude read from the text counts', () => {
    const facts = factsOf({}, [POT, STOVE], { altitudeM: stated(2500) });
    expect(plainly(findingOf(boilWater, facts)).margin).toBe('3 min at a rolling boil');
  });

  test('snow that may be the water leaves streams in play', () => {
    expect(findingsOf(boilWater, factsOf({ altitudeM: 100, waterFrom: 'either' }, [POT, STOVE]))).toHaveLength(1);
  });

  test.each([
    ['the altitude is assumed', factsOf({}, [POT, STOVE])],
    ['the water is snow', factsOf({ altitudeM: 100, waterFrom: 'snow' }, [POT, STOVE])],
    ['there is nothing to boil it in', factsOf({ altitudeM: 100 }, [STOVE])],
    ['one pot was typed', factsOfPot({ capacity: 1000 }, { altitudeM: 100 })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(boilWater, facts)).toEqual([]);
  });
});
