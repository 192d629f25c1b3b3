import { describe, expect, test } from 'vitest';
import { canisterHeat } from '../../../core/checks/canister-heat.js';
import { readList } from '../../../core/index.js';
import { kitFromReading } from '../../../core/kit/index.js';
import type { Facts } from '../../../core/model/check.js';
import { MISSING } from '../../../core/model/given.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const UPRIGHT = item('stove', { stoveType: stated('gas'), stoveForm: stated('upright') });
const REMOTE = item('stove', { stoveType: stated('gas'), stoveForm: stated('remote') });
const GAS = item('stove', { stoveType: stated('gas') });
const SCREEN = item('windscreen');

/** Facts whose vessels carry their own names: the names of items that stand for themselves are all alike. */
function named(name: string): Facts {
  const facts = factsOf({}, [UPRIGHT, item('pan')]);
  return { ...facts, vessels: facts.vessels.map((vessel) => ({ ...vessel, name })) };
}

describe('canister-heat', () => {
  test('a windscreen round an upright canister can hurt', () => {
    const finding = plainly(findingOf(canisterHeat, factsOf({}, [UPRIGHT, SCREEN])));
    expect(finding).toMatchObject({
      grade: 'can-hurt',
      key: 'windscreen',
      margin: '× 2.2 pressure, 20 to 50 °C',
      cites: ['cp-windscreen', 'cp-upright-base', 'en-417', 'vdi-heat-atlas'],
      question: null,
    });
    // What a list names is a windscreen: how it stands, nobody knows. No advice to screen an upright canister.
    expect(finding.message).toMatch(/^If the windscreen closes/);
    expect(finding.fix).toMatch(/^A stove on a hose.*unless its maker’s instructions allow it\.$/);
    // EN 417:2012, scope: contents of at most 13.2 bar at 50 °C.
    expect(finding.cautions).toEqual([expect.stringMatching(/feels warm, turn the stove off.*at 50 °C/)]);
    expect(finding.evidence).toHaveLength(2);
  });

  test('the sum shows how the pressure of the gas carried climbs', () => {
    const butane = item('fuel', { fuelType: stated('gas'), gasMix: stated('butane') });
    const { sum } = plainly(findingOf(canisterHeat, factsOf({}, [UPRIGHT, SCREEN, butane])));
    expect(sum.map(({ sign, label, grounds }) => [sign, label, grounds])).toEqual([
      ['', 'pressure of the gas carried at 50 °C', 'published'],
      ['÷', 'the same at 20 °C', 'published'],
      ['=', 'times the pressure', 'worked-out'],
    ]);
    // n-Butane: 208 kPa at 20 °C (VDI Heat Atlas, part D3) and 3.9 bar over the air at 50 °C, which is rounded to half a tenth of a bar.
    expect(sum[0]?.figure.value).toSatisfy((kPa: number) => Math.abs(kPa - (390 + 101)) < 6);
    expect(sum[1]?.figure.value).toSatisfy((kPa: number) => Math.abs(kPa / 208 - 1) < 0.01);
    expect(sum[2]?.text).toBe('2.4');
    expect(sum[0]?.cites).toEqual(['vdi-heat-atlas']);
    const propane = item('fuel', { fuelType: stated('gas'), gasShares: stated({ propane: 1 }) });
    expect(findingOf(canisterHeat, factsOf({}, [UPRIGHT, SCREEN, propane])).sum[2]?.text).toBe('2.1');
  });

  test('an integrated stove that is upright is a canister stove too', () => {
    const integrated = item('stove', { stoveType: stated('integrated'), stoveForm: stated('upright') });
    expect(findingOf(canisterHeat, factsOf({}, [integrated, SCREEN])).grade).toBe('can-hurt');
  });

  test.each(['gas', 'integrated'] as const)('a %s stove of unknown form raises the question', (type) => {
    const stove = item('stove', { stoveType: stated(type) });
    const finding = plainly(findingOf(canisterHeat, factsOf({}, [SCREEN, stove])));
    expect(finding).toMatchObject({
      grade: 'cant-tell',
      key: 'form-missing',
      margin: '× 2.2 pressure, 20 to 50 °C',
      fix: null,
      question: {
        item: 1,
        field: 'stoveForm',
        text: 'Does the stove screw onto the canister, or stand beside it on a hose?',
      },
    });
    expect(finding.cautions).toHaveLength(1);
    expect(finding.evidence).toHaveLength(2);
  });

  test('an upright stove is found among others', () => {
    expect(findingOf(canisterHeat, factsOf({}, [GAS, REMOTE, UPRIGHT, SCREEN])).grade).toBe('can-hurt');
    expect(findingOf(canisterHeat, factsOf({}, [REMOTE, GAS, SCREEN])).question?.item).toBe(1);
  });

  test('a pan over 200 mm throws heat back', () => {
    const pan = (width: number) => item('pan', { diameterMm: stated(width) });
    expect(plainly(findingOf(canisterHeat, factsOf({}, [UPRIGHT, pan(201)])))).toMatchObject({
      grade: 'can-hurt',
      key: 'pan',
      fix: 'A pan of 200 mm or less. Or a stove on a hose.',
      margin: '× 2.2 pressure, 20 to 50 °C',
    });
    expect(findingsOf(canisterHeat, factsOf({}, [UPRIGHT, pan(200)]))).toEqual([]);
    const narrowBase = item('pan', { diameterMm: stated(240), baseDiameterMm: stated(180) });
    expect(findingsOf(canisterHeat, factsOf({}, [UPRIGHT, narrowBase]))).toEqual([]);
    expect(findingsOf(canisterHeat, factsOf({}, [GAS, pan(240)]))).toEqual([]);
  });

  test('a wide pot is judged by its fit on the stove', () => {
    const pot = item('pot', { diameterMm: stated(260) });
    expect(findingsOf(canisterHeat, factsOf({}, [UPRIGHT, pot]))).toEqual([]);
  });

  test.each(['griddle', 'Plancha', 'hot plate', 'hotplates', 'foil pan'])('a “%s” does at any width', (name) => {
    expect(findingOf(canisterHeat, named(name)).key).toBe('pan');
  });

  test.each(['frying pan', 'pan', 'shot plate'])('a “%s” does not by its name', (name) => {
    expect(findingsOf(canisterHeat, named(name))).toEqual([]);
  });

  test('a griddle is known from the words of a list', () => {
    const text = 'griddle';
    const { kit } = kitFromReading(text, readList(text), false);
    const facts = { ...factsOf({}, [UPRIGHT]), vessels: kit.vessels };
    expect(findingOf(canisterHeat, facts).evidence[0]?.quote).toBe('griddle');
  });

  test('both are told', () => {
    const pan = item('pan', { diameterMm: stated(240) });
    const keys = findingsOf(canisterHeat, factsOf({}, [UPRIGHT, SCREEN, pan])).map(({ key }) => key);
    expect(keys).toEqual(['windscreen', 'pan']);
  });

  test.each([
    ['the canister stands beside the stove', factsOf({}, [REMOTE, SCREEN, item('pan', { diameterMm: stated(260) })])],
    ['there is no windscreen', factsOf({}, [GAS])],
    ['nothing is round or over it', factsOf({}, [UPRIGHT, item('pot', { diameterMm: stated(130) })])],
    ['the stove burns no gas', factsOf({}, [item('stove', { stoveType: stated('alcohol') }), SCREEN])],
    ['the fuel is not known', factsOf({}, [item('stove', { stoveType: MISSING }), SCREEN])],
    ['one pot was typed', factsOfPot({ diameter: 130 }, {}, { type: 'gas', form: 'upright' })],
  ])('is silent where %s', (_, facts) => {
    expect(findingsOf(canisterHeat, facts)).toEqual([]);
  });
});
