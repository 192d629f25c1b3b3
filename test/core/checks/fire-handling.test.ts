import { describe, expect, it } from 'vitest';
import { fireHandling } from '../../../core/checks/fire-handling.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const atFire = (pot: object) => findingOf(fireHandling, factsOfPot({ capacity: 1000, ...pot }, { cookAt: 'fire' }));
const wood = item('stove', { stoveType: stated('wood') });
const pot = (bail?: boolean) => item('pot', bail === undefined ? {} : { bail: stated(bail) });

describe('at a fire, common practice, no source', () => {
  it('falls short without a bail, holds up with one, asks where nothing is said', () => {
    expect(atFire({ bail: false })).toMatchObject({
      grade: 'falls-short',
      key: 'no-bail-fire',
      fix: expect.stringContaining('A pot with a bail'),
    });
    expect(atFire({ bail: true })).toMatchObject({ grade: 'holds-up', key: 'hangs', fix: null });
    expect(atFire({})).toMatchObject({ grade: 'cant-tell', key: 'unknown', question: { field: 'bail' } });
  });

  it('costs a lift for each feeding of a wood stove', () => {
    const finding = findingOf(fireHandling, factsOf({}, [pot(false), wood]));
    expect(finding).toMatchObject({ grade: 'costs-you', key: 'no-bail-wood' });
    expect(finding.evidence).toHaveLength(2);
    expect(findingOf(fireHandling, factsOf({}, [pot(true), wood])).grade).toBe('holds-up');
    expect(findingOf(fireHandling, factsOf({}, [pot(), wood])).question).toMatchObject({ item: 0 });
  });

  it('says when fires are forbidden', () => {
    const hints = { firesAllowed: stated(false) };
    expect(findingOf(fireHandling, factsOf({ cookAt: 'fire' }, [pot(true)], hints))).toMatchObject({
      grade: 'falls-short',
      key: 'no-fires',
      fix: expect.stringContaining('local rules'),
    });
    expect(findingOf(fireHandling, factsOf({ cookAt: 'fire' }, [pot(true)], { firesAllowed: stated(true) })).key).toBe(
      'hangs',
    );
  });

  it('is silent on a gas stove, on a fire that is only assumed, and without a pot', () => {
    expect(findingsOf(fireHandling, factsOf({}, [pot(false), item('stove', { stoveType: stated('gas') })]))).toEqual(
      [],
    );
    expect(findingsOf(fireHandling, factsOf({}, [pot(false)]))).toEqual([]);
    expect(findingsOf(fireHandling, factsOf({ cookAt: 'fire' }, []))).toEqual([]);
  });
});
