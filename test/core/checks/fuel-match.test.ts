import { describe, expect, it } from 'vitest';
import { fuelMatch } from '../../../core/checks/fuel-match.js';
import type { FuelType, StoveType } from '../../../core/model/item.js';
import { readStove } from '../../../core/input/pot.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const stove = (type?: StoveType) => item('stove', type ? { stoveType: stated(type) } : {});
const fuel = (type: FuelType) => item('fuel', { fuelType: stated(type) });

describe('stove and fuel', () => {
  it.each([
    ['gas', 'gas', 'canister gas'],
    ['integrated', 'gas', 'canister gas'],
    ['alcohol', 'alcohol', 'alcohol'],
    ['liquid-fuel', 'liquid-fuel', 'liquid fuel'],
    ['solid-fuel', 'solid-fuel', 'solid fuel'],
  ] as const)('a stove on %s burns %s', (type, burnt, words) => {
    const finding = findingOf(fuelMatch, factsOf({}, [stove(type), fuel(burnt)]));
    expect(finding).toMatchObject({
      grade: 'holds-up',
      message: `The stove burns what is carried: ${words}.`,
      margin: words,
    });
    expect(finding.evidence).toHaveLength(2);
  });

  it('of two kinds fall short', () => {
    expect(findingOf(fuelMatch, factsOf({}, [stove('gas'), fuel('alcohol')]))).toMatchObject({
      grade: 'falls-short',
      message: 'The stove burns canister gas; the list carries alcohol.',
      margin: 'alcohol for a stove on canister gas',
      fix: 'Carry canister gas for this stove, or the stove for this fuel.',
    });
  });

  it('names what is burnt, and takes nothing unknown for a mismatch', () => {
    expect(findingOf(fuelMatch, factsOf({}, [stove('gas'), stove(), fuel('gas')])).margin).toBe('canister gas');
    expect(findingsOf(fuelMatch, factsOf({}, [stove('gas'), stove(), fuel('alcohol')]))).toEqual([]);
    const unnamed = item('fuel');
    expect(findingsOf(fuelMatch, factsOf({}, [stove('gas'), stove('alcohol'), unnamed]))).toEqual([]);
    expect(findingOf(fuelMatch, factsOf({}, [stove('gas'), stove('alcohol'), unnamed, fuel('gas')])).grade).toBe(
      'holds-up',
    );
  });

  it('tells what lies idle beside a stove that burns, in any order', () => {
    const told = (...items: Parameters<typeof factsOf>[1]) =>
      findingsOf(fuelMatch, factsOf({}, items)).map(({ grade, message }) => `${grade} ${message}`);
    const idleStove = ['costs-you Nothing on the list burns in the stove on canister gas.'];
    expect(told(stove('gas'), stove('alcohol'), fuel('alcohol'))).toEqual(idleStove);
    expect(told(fuel('alcohol'), stove('alcohol'), stove('integrated'))).toEqual(idleStove);
    const idleFuel = ['costs-you No stove on the list burns the alcohol.'];
    expect(told(stove('gas'), fuel('alcohol'), fuel('gas'))).toEqual(idleFuel);
    expect(told(stove('gas'), fuel('gas'), fuel('alcohol'))).toEqual(idleFuel);
    expect(told(stove('gas'), fuel('gas'), fuel('wood'))).toEqual([expect.stringMatching(/^holds-up/)]);
    expect(told(stove('gas'), stove('alcohol'), fuel('gas'), fuel('alcohol'))).toEqual([
      expect.stringMatching(/^holds-up/),
    ]);
  });

  it('fuel without a stove falls short; where a fire is said it costs', () => {
    const finding = findingOf(fuelMatch, factsOf({}, [item('pot'), fuel('wood'), fuel('gas')]));
    expect(finding).toMatchObject({
      grade: 'falls-short',
      key: 'no-stove',
      message: 'Fuel is carried (canister gas), and no stove on the list burns it.',
    });
    expect(findingOf(fuelMatch, factsOf({ cookAt: 'fire' }, [fuel('gas')])).grade).toBe('costs-you');
    expect(findingsOf(fuelMatch, factsOf({}, [fuel('wood')]))).toEqual([]);
    expect(findingsOf(fuelMatch, factsOf({}, [item('fuel')]))).toEqual([]);
  });

  it('asks where no fuel is named', () => {
    expect(findingOf(fuelMatch, factsOf({}, [stove('gas')]))).toMatchObject({
      grade: 'cant-tell',
      key: 'no-fuel',
      margin: 'no fuel named',
      question: { field: 'kind', kind: 'fuel', text: 'What does the stove burn, and how much of it is carried?' },
    });
  });

  it('is silent for wood, for a stove of unknown kind, without a stove, and on a typed pot', () => {
    expect(findingsOf(fuelMatch, factsOf({}, [stove('wood')]))).toEqual([]);
    expect(findingsOf(fuelMatch, factsOf({}, [stove(), fuel('gas')]))).toEqual([]);
    expect(readStove({ type: 'gas' }).stove.type).toMatchObject({ value: 'gas' });
    expect(findingsOf(fuelMatch, factsOfPot({ capacity: 700 }, {}, { type: 'gas' }))).toEqual([]);
  });
});
