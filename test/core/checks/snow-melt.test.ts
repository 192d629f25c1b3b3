import { describe, expect, it } from 'vitest';
import { snowMelt } from '../../../core/checks/snow-melt.js';
import type { Trip } from '../../../core/model/trip.js';
import type { Item } from '../../../core/model/item.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const gas = item('stove', { stoveType: stated('gas') });
const pot = (mL: number, given: Partial<Item> = {}) =>
  item('pot', { capacitiesMl: [stated(mL)], lid: stated(true), ...given });
const of = (people: number, mL: number, trip: Partial<Trip> = {}) =>
  findingOf(snowMelt, factsOf({ people, waterFrom: 'snow', lowC: -5, ...trip }, [pot(mL), gas]));

describe('a pot to melt snow in, common practice, no source', () => {
  it.each([
    // About 2 L for one, 3 L for two, half a litre more for each further person, up to 5 L.
    [1, 1800, 'holds-up', '2\u00a0L'],
    [1, 1799, 'costs-you', '2\u00a0L'],
    [1, 1300, 'costs-you', '2\u00a0L'],
    [1, 1299, 'falls-short', '2\u00a0L'],
    [2, 2700, 'holds-up', '3\u00a0L'],
    [2, 2699, 'costs-you', '3\u00a0L'],
    [2, 1949, 'falls-short', '3\u00a0L'],
    [3, 3150, 'holds-up', '3.5\u00a0L'],
    [3, 3149, 'costs-you', '3.5\u00a0L'],
    [8, 4500, 'holds-up', '5\u00a0L'],
    [8, 4499, 'costs-you', '5\u00a0L'],
  ] as const)('%d people, %d mL: %s', (people, mL, grade, wanted) => {
    const finding = of(people, mL);
    expect(finding.grade).toBe(grade);
    expect(finding.margin).toMatch(new RegExp(`of ${wanted.replace('.', '\\.')}$`));
  });

  it('two or three packed loads of a 1 L pot make 1 L', () => {
    // 1 ÷ 0.35–0.50, the density of hand-packed snow.
    const loads = of(2, 1000).figures['loads'] as { value: { low: number; high: number } };
    // For 2.5 to 6 L a head.
    expect(loads.value.low / 5).toBeGreaterThanOrEqual(2);
    expect(loads.value.high / 12).toBeLessThanOrEqual(3);
  });

  it('shows the price, the cure and the caution', () => {
    const finding = of(2, 1300);
    expect(finding).toMatchObject({
      grade: 'falls-short',
      message: 'A 1.3\u00a0L pot means 8–27 loads of snow a day.',
      margin: '1.3\u00a0L of 3\u00a0L',
      fix: 'A lidded metal pot of 2.7\u00a0L or more: 4–13 loads.',
      cautions: ['A dry pot of snow scorches. Start with water in it, feed snow so that it stays slush, lid on.'],
      item: 0,
    });
    // 5–12 L a day ÷ 1.3 L ÷ 0.35–0.50.
    expect(finding.sum.slice(0, 4).map(({ sign, text }) => [sign, text])).toEqual([
      ['', '5–12\u00a0L'],
      ['÷', '1.3\u00a0L'],
      ['÷', '0.35–0.5'],
      ['=', '8–27'],
    ]);
    expect(finding.sum.map(({ label }) => label)).toContain('over the stove a day');
    expect(finding.sum[2]?.cites).toEqual(['cp-snow-loads']);
    expect(of(2, 2200).fix).toMatch(/^A lidded metal pot of 2\.7\u00a0L or more: /);
  });

  it('takes the snow that is chosen', () => {
    const fresh = of(2, 3000, { snow: 'new' });
    // New snow is 50–70 kg/m³: Cuffey and Paterson, The Physics of Glaciers, Table 2.1. 5–12 ÷ 3 ÷ 0.05–0.07 is 24–80.
    expect(fresh.message).toBe('A 3\u00a0L pot melts the water of 2 people: 24–80 loads a day.');
    expect(fresh.sum[2]).toMatchObject({
      text: '0.05–0.07',
      cites: ['cuffey-paterson'],
      label: 'water in new snow, by volume',
      grounds: 'published',
    });
    expect(fresh.cautions).toHaveLength(1);
    expect(fresh.fix).toBeNull();
  });

  it('says "if" where snow is only possible, and what it assumes', () => {
    expect(of(2, 1300, { waterFrom: 'either' }).message).toBe(
      'If snow is the water, a 1.3\u00a0L pot means 8–27 loads a day.',
    );
    expect(of(1, 2000, { waterFrom: 'either' }).message).toMatch(
      /^If snow is the water, a 2\u00a0L pot melts the water of one person: 3–9 loads a day\.$/,
    );
    const either = { people: 1, waterFrom: 'either' } as const;
    expect(findingOf(snowMelt, factsOfPot({ capacity: 1300 }, either)).key).toBe('no-price-if');
    expect(findingOf(snowMelt, factsOfPot({ capacity: 1800 }, either)).message).toBe(
      'If snow is the water, a 1.8\u00a0L pot is large enough for one person.',
    );
    expect(findingOf(snowMelt, factsOfPot({}, either)).message).toMatch(/^If snow is the water, nobody can tell/);
    expect(findingOf(snowMelt, factsOf(either, [gas])).message).toBe(
      'If snow is the water, there is no pot to melt it in: none of metal.',
    );
    const winter = findingOf(snowMelt, factsOf({ season: 'winter' }, [pot(1300), gas]));
    expect(winter.assumptions.map(({ what }) => what)).toEqual([
      'where the water comes from',
      'the number of people',
      'the snow',
    ]);
  });

  it('melts in metal that has a lid before larger metal that has none, where both are enough', () => {
    const open = pot(3000, { lid: stated(false) });
    expect(findingOf(snowMelt, factsOf({ people: 1, waterFrom: 'snow' }, [open, pot(1800), gas])).margin).toBe(
      '1.8\u00a0L of 2\u00a0L',
    );
  });

  it('judges people who each carry a pot by their own', () => {
    const own = pot(1800, { perPerson: true });
    const finding = findingOf(
      snowMelt,
      factsOf({ people: 3, waterFrom: 'snow', wind: 'calm' }, [own, { ...gas, perPerson: true }]),
    );
    expect(finding).toMatchObject({
      grade: 'holds-up',
      // 2.5–6 L ÷ 1.8 L ÷ 0.35–0.50.
      message: 'A 1.8\u00a0L pot melts the water of one person: 3–10 loads a day.',
      margin: '1.8\u00a0L of 2\u00a0L',
    });
    const alone = findingOf(snowMelt, factsOf({ people: 1, waterFrom: 'snow', wind: 'calm' }, [pot(1800), gas]));
    expect(finding.sum.map(({ text }) => text)).toEqual(alone.sum.map(({ text }) => text));
    expect(finding.sum[0]).toMatchObject({ text: '2.5–6\u00a0L', label: 'a day, 2.5–6\u00a0L for one person' });
  });

  it('counts a load as one load', () => {
    const big = of(1, 18_000);
    expect(big.message).toBe('A 18\u00a0L pot melts the water of one person: 1 load a day.');
  });

  it('has no price without a stove', () => {
    expect(
      findingOf(snowMelt, factsOfPot({ capacity: 1300, lid: true }, { people: 1, waterFrom: 'snow' })),
    ).toMatchObject({
      grade: 'costs-you',
      key: 'no-price',
      message: 'A 1.3\u00a0L pot is small to melt the water of one person.',
      fix: 'Add a lidded metal pot of 2\u00a0L.',
      sum: [],
    });
    expect(
      findingOf(snowMelt, factsOfPot({ capacity: 2000, lid: true }, { people: 1, waterFrom: 'snow' })),
    ).toMatchObject({ grade: 'holds-up', key: 'no-price-good' });
  });
});

describe('without a melt pot', () => {
  it('falls short, or asks for the size of the pot there is', () => {
    const tub = pot(2000, { material: stated('plastic') });
    expect(findingOf(snowMelt, factsOf({ people: 2, waterFrom: 'snow' }, [tub, gas]))).toMatchObject({
      grade: 'falls-short',
      key: 'no-pot',
      margin: 'no melt pot',
      fix: 'Add a lidded metal pot of 3\u00a0L.',
    });
    expect(findingOf(snowMelt, factsOf({ waterFrom: 'snow' }, [gas])).evidence).toEqual([
      { quote: 'no metal pot', found: 'absent' },
    ]);
    expect(findingOf(snowMelt, factsOf({ waterFrom: 'snow' }, [item('pot'), gas]))).toMatchObject({
      grade: 'cant-tell',
      key: 'size-missing',
      question: { item: 0, field: 'capacityMl', text: '“pot”: how much does it hold?' },
    });
  });

  it('asks for a size where the pot without one may be the larger, and not where it cannot matter', () => {
    const mug = item('mug', { capacitiesMl: [stated(450)], lid: stated(true) });
    const snow = { people: 1, waterFrom: 'snow' } as const;
    expect(findingOf(snowMelt, factsOf(snow, [mug, item('pot'), gas]))).toMatchObject({
      grade: 'cant-tell',
      message: 'Without its size, nobody can tell whether it melts enough snow.',
      margin: 'size not given',
      item: 1,
    });
    expect(findingOf(snowMelt, factsOf(snow, [pot(2000), item('pot'), gas])).grade).toBe('holds-up');
    const tub = item('pot', { material: stated('plastic') });
    expect(findingOf(snowMelt, factsOf(snow, [tub, gas])).grade).toBe('falls-short');
    expect(findingOf(snowMelt, factsOf(snow, [mug, tub, gas]))).toMatchObject({ grade: 'falls-short', item: 0 });
    expect(findingOf(snowMelt, factsOfPot({}, snow)).question).not.toHaveProperty('item');
  });

  it('falls short with one typed pot that is not of metal, by that pot', () => {
    const facts = factsOfPot({ material: 'plastic', capacity: 900 }, { people: 1, waterFrom: 'snow' });
    expect(findingOf(snowMelt, facts)).toMatchObject({
      grade: 'falls-short',
      message: 'No pot to melt snow in: none of metal.',
      evidence: [{ found: 'typed' }],
    });
  });

  it('is silent where water runs, and on a list that cooks nothing', () => {
    expect(findingsOf(snowMelt, factsOf({ waterFrom: 'liquid' }, [pot(500), gas]))).toEqual([]);
    expect(findingsOf(snowMelt, factsOf({}, [pot(500), gas]))).toEqual([]);
    expect(findingsOf(snowMelt, factsOf({ waterFrom: 'snow' }, [item('bowl')]))).toEqual([]);
    expect(findingsOf(snowMelt, factsOfPot({ capacity: 900 }, { waterFrom: 'liquid' }))).toEqual([]);
  });
});
