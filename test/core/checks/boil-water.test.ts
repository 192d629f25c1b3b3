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
    expect(finding.message).toMatch(/^Water boils at 100 °C here\./);
    expect(finding).toMatchObject({ grade: null, margin: '1 min at a rolling boil', item: null });
    // The leaflet of the US Environmental Protection Agency: 3 minutes above 5,000 ft; the CDC and its own guidance: above 2 km.
    expect(finding.cautions[0]).toMatch(/3 min above 1524 m\. Others say 3 min above 2000 m/);
    expect(finding.evidence).toMatchObject([{ line: 1, found: 'in-list' }]);
    expect(finding.cites).toEqual(expect.arrayContaining(['cdc-boil', 'who-boil']));
  });

  // Rolling boil of 1 minute, 3 minutes above 5,000 ft (1524 m): leaflet of the US Environmental Protection Agency.
  test.each([
    [1524, '1 min'],
    [1525, '3 min'],
    [2000, '3 min'],
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
