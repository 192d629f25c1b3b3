import { describe, expect, it } from 'vitest';
import { coldGas } from '../../../core/checks/cold-gas.js';
import type { GasMix, StoveForm } from '../../../core/model/item.js';
import type { Range } from '../../../core/model/finding.js';
import type { Trip } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const AIR = 101.325;
const can = (mix?: GasMix) => item('fuel', { fuelType: stated('gas'), ...(mix ? { gasMix: stated(mix) } : {}) });
const stove = (form?: StoveForm) =>
  item('stove', { stoveType: stated('gas'), ...(form ? { stoveForm: stated(form) } : {}) });
const of = (lowC: number, mix?: GasMix, trip: Partial<Trip> = {}, form: StoveForm = 'upright') =>
  findingOf(coldGas, factsOf({ lowC, altitudeM: 0, ...trip }, [stove(form), can(mix)]));

describe('gas in the cold', () => {
  it('butane stays liquid where its pressure is under the air’s', () => {
    // VDI Heat Atlas: n-butane has 69.5 kPa at −10 °C and 103 kPa at 0 °C; the standard atmosphere has 101.3 kPa at sea level.
    const cold = of(-5, 'butane');
    expect(cold).toMatchObject({
      grade: 'falls-short',
      key: 'stays',
      message: 'Plain butane stays liquid below −1\u00a0°C at 0\u00a0m; at −10\u00a0°C none comes out.',
      margin: '70 of 101\u00a0kPa, to leave the canister',
      cautions: ['A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.'],
    });
    expect((cold.figures['vapour'] as { value: { likely: number } }).value.likely).toBeCloseTo(69.5, 0);
    expect((cold.figures['air'] as { value: number }).value).toBeCloseTo(101.3, 1);
    expect(cold.sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '70\u00a0kPa'],
      ['−', '101\u00a0kPa'],
      ['=', '−32\u00a0kPa'],
    ]);
    expect(cold.sum.map(({ label, grounds, cites }) => [label, grounds, cites])).toEqual([
      [
        'pressure of the gas at −10\u00a0°C, the canister colder than the air as it runs',
        'published',
        ['vdi-heat-atlas', 'mcgarry-1983'],
      ],
      ['the air at this altitude', 'published', ['iso-2533']],
      ['over the air', 'worked-out', []],
    ]);
    expect(of(5, 'butane')).toMatchObject({ grade: 'costs-you', key: 'fades' });
    expect(of(-5, 'butane', { altitudeM: 900 }).message).toMatch(/ at 900\u00a0m; at −10/);
  });

  it('altitude helps: the air presses less', () => {
    // Standard atmosphere: 54.0 kPa at 5000 m.
    expect(of(-5, 'butane', { altitudeM: 5000 }).grade).toBe('holds-up');
  });

  it('an isobutane mix fades at about −7 °C on an upright canister (common practice, no source)', () => {
    expect(of(0, 'isobutane').grade).toBe('holds-up');
    expect(of(-7, 'isobutane')).toMatchObject({
      grade: 'costs-you',
      key: 'fades',
      fix: expect.stringContaining('stove on a hose'),
    });
  });

  // A fifth over the air's pressure, and more than the air's when nearly empty: the grades either side of it.
  it.each([
    // VDI Heat Atlas: n-butane has 103 kPa at 0 °C and 149 kPa at 10 °C; the air 101.3, 89.9, 79.5, 70.1 kPa at 0, 1000, 2000, 3000 m.
    [5, 0, 'costs-you'],
    [5, 1000, 'costs-you'],
    [5, 2000, 'holds-up'],
    [5, 3000, 'holds-up'],
  ] as const)('butane on a night of %d °C at %d m: %s', (low, altitudeM, grade) => {
    expect(of(low, 'butane', { altitudeM }).grade).toBe(grade);
  });

  it('an isobutane mix runs full and not nearly empty', () => {
    // Isobutane alone has 100 kPa at about −12 °C (its boiling point, CRC Handbook: −11.7 °C), the mix with propane more.
    const finding = of(-8, 'isobutane');
    expect((finding.figures['vapour'] as { value: Range }).value.likely).toBeGreaterThan(1.2 * AIR);
    expect(finding).toMatchObject({
      grade: 'costs-you',
      message: 'At −8\u00a0°C the gas barely leaves the canister, and less as it empties.',
    });
  });

  it('propane runs at any cold met here', () => {
    expect(of(-30, 'propane').grade).toBe('holds-up');
  });

  it('on a hose costs you, where the canister can be turned over', () => {
    expect(of(-5, 'butane', {}, 'remote')).toMatchObject({ grade: 'costs-you', key: 'hose-fades' });
    expect(of(-25, 'butane', {}, 'remote')).toMatchObject({ key: 'hose-fades', fix: null });
    const mild = of(0, 'butane', {}, 'remote');
    expect(mild.message).toBe('At 0\u00a0°C it needs the canister turned over, on a stove made for that.');
    expect(mild.fix).toMatch(/^A canister of isobutane and propane: /);
    expect(mild.cautions).toHaveLength(1);
    expect(of(0, 'winter', {}, 'remote')).toMatchObject({ key: 'runs', cautions: [], fix: null });
  });

  it('names the mix that would do, or another stove', () => {
    expect(of(0, 'butane').fix).toMatch(
      /^A canister of isobutane and propane: \d+\u00a0kPa at 0\u00a0°C\. Or keep it warm\.$/,
    );
    expect(of(-25, 'butane').fix).toBe('A stove on a hose that takes liquid gas, or a petrol stove.');
    expect(of(-25, 'winter').fix).toMatch(/^A stove on a hose/);
  });

  it('asks for the mix where it decides, and not where it does not', () => {
    expect(of(0)).toMatchObject({ grade: 'cant-tell', key: 'mix-missing', question: { item: 1, field: 'gasMix' } });
    expect(of(-5, undefined, { altitudeM: 6000 }).grade).toBe('holds-up');
    expect(of(-45)).toMatchObject({
      grade: 'falls-short',
      message: 'At −45\u00a0°C no gas comes out of any canister sold: it stays liquid.',
    });
    const open = of(-5);
    expect(open.message).toBe('At −5\u00a0°C it hangs on the mix: butane stays liquid, a winter mix burns.');
    // The range from butane to a winter mix, and what is over the air.
    const { low, likely, high } = (open.figures['vapour'] as { value: Range }).value;
    expect([low, likely, high]).toEqual(
      (['butane', 'isobutane', 'winter'] as const).map(
        (mix) => (of(-5, mix).figures['vapour'] as { value: Range }).value.likely,
      ),
    );
    expect(open.sum[2]?.figure.value).toEqual({ low: low - AIR, likely: likely - AIR, high: high - AIR });
  });

  it('speaks from 5 °C down, of gas only, and not of a typed pot', () => {
    expect(findingsOf(coldGas, factsOf({ lowC: 5.1 }, [stove(), can('butane')]))).toEqual([]);
    expect(findingsOf(coldGas, factsOf({ lowC: 5 }, [stove(), can('butane')]))).toHaveLength(1);
    expect(findingsOf(coldGas, factsOf({ lowC: -20 }, [item('fuel', { fuelType: stated('alcohol') })]))).toEqual([]);
    expect(findingsOf(coldGas, factsOf({ lowC: -20 }, [stove()]))).toEqual([]);
    expect(findingsOf(coldGas, factsOfPot({ capacity: 700 }, { lowC: -20 }, { type: 'gas' }))).toEqual([]);
  });

  it('raises no alarm over a low that is only assumed, but for winter', () => {
    expect(findingsOf(coldGas, factsOf({ season: 'autumn' }, [stove(), can('butane')]))).toEqual([]);
    expect(findingsOf(coldGas, factsOf({ season: 'winter' }, [stove(), can('butane')]))).toHaveLength(1);
  });

  it('says what it assumes', () => {
    expect(
      findingOf(coldGas, factsOf({ season: 'winter' }, [stove(), can('winter')])).assumptions.map(({ what }) => what),
    ).toEqual(['the lowest temperature', 'the altitude']);
  });
});
