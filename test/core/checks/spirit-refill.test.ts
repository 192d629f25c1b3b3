import { describe, expect, test } from 'vitest';
import { spiritRefill } from '../../../core/checks/spirit-refill.js';
import type { TripHints } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const YOUNG: TripHints = { youthGroup: stated(true) };
const BURNER = item('stove', { stoveType: stated('alcohol') });
const GAS = item('stove', { stoveType: stated('gas') });
const alcohol = (ml: number) => item('fuel', { fuelType: stated('alcohol'), fuelVolumeMl: stated(ml) });
const CAUTIONS = [
  'The flame is not seen by day. Feel that the burner is cold, then fill it from a small bottle, well away from any flame.',
  'A burn: cool running water, wet clothing off, cover it.',
];

describe('spirit-refill', () => {
  test('young people and a bulk bottle can hurt', () => {
    expect(plainly(findingOf(spiritRefill, factsOf({}, [BURNER, alcohol(1000)], YOUNG)))).toMatchObject({
      grade: 'can-hurt',
      message: 'Young people fill a burner from 1000 mL of alcohol: poured into an unseen flame it flashes back.',
      margin: '1000 mL in one bottle',
      fix: 'A bottle of 250 mL or less to fill from.',
      cautions: CAUTIONS,
      assumptions: [],
      cites: ['cp-spirit-refill', 'cp-first-aid-burn'],
    });
  });

  test('a bulk bottle alone costs', () => {
    expect(plainly(findingOf(spiritRefill, factsOf({}, [BURNER, alcohol(1000)])))).toMatchObject({
      grade: 'costs-you',
      message: 'The burner is filled from 1000 mL of alcohol: poured into an unseen flame it flashes back.',
      margin: '1000 mL in one bottle',
      fix: 'A bottle of 250 mL or less to fill from.',
      cautions: CAUTIONS,
    });
  });

  test('young people alone cost', () => {
    expect(plainly(findingOf(spiritRefill, factsOf({}, [GAS, BURNER, alcohol(300)], YOUNG)))).toMatchObject({
      grade: 'costs-you',
      message: 'Young people fill an alcohol burner: poured into an unseen flame it flashes back.',
      margin: 'alcohol, young people',
      fix: 'A burner for gas. Or a leader fills it, cold, from 250 mL or less.',
      cautions: CAUTIONS,
    });
  });

  test('a bottle is bulk from 750 mL', () => {
    expect(findingOf(spiritRefill, factsOf({}, [BURNER, alcohol(750)])).key).toBe('bulk');
    expect(findingsOf(spiritRefill, factsOf({}, [BURNER, alcohol(749.9)]))).toEqual([]);
  });

  test('a bottle of a litre is taken as three quarters full, and that is told', () => {
    const litre = item('fuel', { fuelType: stated('alcohol'), capacitiesMl: [stated(1000)] });
    const finding = plainly(findingOf(spiritRefill, factsOf({}, [BURNER, litre])));
    expect(finding).toMatchObject({ key: 'bulk', margin: '750 mL in one bottle' });
    expect(finding.assumptions).toEqual([
      {
        what: 'how much alcohol the bottle holds',
        because: 'a bottle of 1000 mL is filled to about three quarters',
        replaceWith: 'write how much fuel is in it',
      },
    ]);
  });

  test('a small bottle to fill from takes the bulk out of the way', () => {
    expect(findingsOf(spiritRefill, factsOf({}, [BURNER, alcohol(1000), alcohol(250)]))).toEqual([]);
    expect(findingOf(spiritRefill, factsOf({}, [BURNER, alcohol(1000), alcohol(250)], YOUNG)).grade).toBe('costs-you');
    expect(findingOf(spiritRefill, factsOf({}, [BURNER, alcohol(1000), alcohol(250.1)])).key).toBe('bulk');
  });

  test('the bulk bottle is found among others, and is what is shown', () => {
    const facts = factsOf({}, [BURNER, alcohol(400), alcohol(900)]);
    const line3 = { ...alcohol(900), line: 1, span: [1, 3] as const };
    expect(plainly(findingOf(spiritRefill, facts)).margin).toBe('900 mL in one bottle');
    expect(findingOf(spiritRefill, factsOf({}, [BURNER, line3])).evidence).toMatchObject([{ span: [1, 3] }]);
  });

  test('a burner without alcohol on the list is one to be filled', () => {
    expect(findingOf(spiritRefill, factsOf({}, [GAS, BURNER], YOUNG)).key).toBe('young');
    expect(findingsOf(spiritRefill, factsOf({}, [GAS], YOUNG))).toEqual([]);
  });

  test('alcohol without a burner on the list is filled from all the same', () => {
    expect(findingOf(spiritRefill, factsOf({}, [alcohol(1000)])).key).toBe('bulk');
    expect(findingOf(spiritRefill, factsOf({}, [alcohol(100)], YOUNG)).key).toBe('young');
  });

  test('alcohol of which nobody says how much is no bulk', () => {
    const some = item('fuel', { fuelType: stated('alcohol') });
    expect(findingsOf(spiritRefill, factsOf({}, [BURNER, some]))).toEqual([]);
    expect(findingOf(spiritRefill, factsOf({}, [BURNER, some, alcohol(1000)])).key).toBe('bulk');
  });

  test.each([
    [
      'there is no alcohol',
      factsOf({}, [GAS, item('fuel', { fuelType: stated('liquid-fuel'), fuelVolumeMl: stated(2000) })], YOUNG),
    ],
    ['nobody young and no bulk is there', factsOf({}, [BURNER, alcohol(300)])],
    ['the text says there is nobody young', factsOf({}, [BURNER], { youthGroup: stated(false) })],
    ['one pot was typed', factsOfPot({ capacity: 1000 }, {}, { type: 'alcohol' })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(spiritRefill, facts)).toEqual([]);
  });
});
