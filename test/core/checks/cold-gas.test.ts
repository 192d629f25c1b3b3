import { describe, expect, it } from 'vitest';
import { coldGas } from '../../../core/checks/cold-gas.js';
import type { Range } from '../../../core/model/finding.js';
import type { GasMix, GasShares, StoveForm } from '../../../core/model/item.js';
import type { Trip } from '../../../core/model/trip.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const labelled = (gasShares: GasShares) => item('fuel', { fuelType: stated('gas'), gasShares: stated(gasShares) });
const can = (mix?: GasMix) => item('fuel', { fuelType: stated('gas'), ...(mix ? { gasMix: stated(mix) } : {}) });
const stove = (form?: StoveForm) =>
  item('stove', { stoveType: stated('gas'), ...(form ? { stoveForm: stated(form) } : {}) });
const of = (lowC: number, mix?: GasMix, trip: Partial<Trip> = {}, form: StoveForm = 'upright') =>
  findingOf(coldGas, factsOf({ lowC, altitudeM: 0, ...trip }, [stove(form), can(mix)]));

describe('gas in the cold', () => {
  it('butane stays liquid where its pressure is under the air’s', () => {
    // VDI Heat Atlas: n-butane has 69.5 kPa at −10 °C and 103 kPa at 0 °C; the standard atmosphere has 101.3 kPa at sea level.
    const cold = plainly(of(-5, 'butane'));
    expect(cold).toMatchObject({
      grade: 'falls-short',
      key: 'stays',
      message: 'Plain butane stays liquid below −1 °C at 0 m; at −10 °C none comes out.',
      margin: '70 of 122 kPa, from nearly empty to full',
      cautions: ['A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.'],
    });
    expect(cold.sum.map(({ sign, text, grounds }) => [sign, text, grounds])).toEqual([
      ['', '70 kPa', 'published'],
      ['', '101 kPa', 'published'],
      ['×', '1.2', 'common-practice'],
      ['=', '122 kPa', 'worked-out'],
    ]);
    expect(of(5, 'butane')).toMatchObject({ grade: 'costs-you', key: 'barely-leaves' });
    expect(plainly(of(-5, 'butane', { altitudeM: 900 })).message).toMatch(/ at 900 m; at −10/);
  });

  it('altitude helps: the air presses less', () => {
    // Standard atmosphere: 54.0 kPa at 5000 m.
    expect(of(-5, 'butane', { altitudeM: 5000 }).grade).toBe('holds-up');
  });

  it('an isobutane mix fades at about −7 °C on an upright canister (common practice, no source)', () => {
    expect(of(0, 'isobutane').grade).toBe('holds-up');
    expect(plainly(of(-7, 'isobutane'))).toMatchObject({
      grade: 'costs-you',
      key: 'fades',
      message: expect.stringMatching(/^At −7 °C the gas leaves the canister at first; it fades when \d+% is used\.$/),
      fix: expect.stringContaining('stove on a hose'),
    });
  });

  // A fifth over the air's pressure, full and nearly empty: the grades either side of it.
  it.each([
    // VDI Heat Atlas: n-butane has 103 kPa at 0 °C and 149 kPa at 10 °C; the air 101.3, 89.9, 79.5, 70.1 kPa at 0, 1000, 2000, 3000 m.
    [5, 0, 'costs-you'],
    [5, 1000, 'costs-you'],
    [5, 2000, 'holds-up'],
    [5, 3000, 'holds-up'],
  ] as const)('butane on a night of %d °C at %d m: %s', (low, altitudeM, grade) => {
    expect(of(low, 'butane', { altitudeM }).grade).toBe(grade);
  });

  // Raoult with the vapour pressures of the VDI Heat Atlas, 30 % propane by mass being 36 % of the molecules.
  it.each([
    // At −30 °C: 0.36 × 168 + 0.64 × 28 = 79 kPa, under the air's 101.
    [-25, 'falls-short', 'stays'],
    // At −11 °C: 0.36 × 334 + 0.64 × 67 = 163 kPa full, and nearly plain butane at the end.
    [-6, 'costs-you', 'fades'],
  ] as const)('seven parts of butane with three of propane at %d °C: %s', (lowC, grade, key) => {
    const label = labelled({ butane: 0.7, propane: 0.3 });
    expect(findingOf(coldGas, factsOf({ lowC, altitudeM: 0 }, [stove('upright'), label]))).toMatchObject({
      grade,
      key,
    });
  });

  it('the label outranks the name, and is no assumption', () => {
    const can = item('fuel', {
      fuelType: stated('gas'),
      gasShares: stated({ propane: 1 }),
      gasMix: { grounds: 'assumed', value: 'butane', because: 'a guess', replaceWith: 'write it' },
    });
    const finding = findingOf(coldGas, factsOf({ lowC: -20, altitudeM: 0 }, [stove('upright'), can]));
    expect(finding).toMatchObject({ grade: 'holds-up', assumptions: [] });
  });

  it('propane runs at any cold met here', () => {
    expect(of(-30, 'propane').grade).toBe('holds-up');
  });

  it('judges each canister, whatever their order', () => {
    const told = (lowC: number, ...mixes: GasMix[]) =>
      findingOf(coldGas, factsOf({ lowC, altitudeM: 0 }, [stove('upright'), ...mixes.map((mix) => can(mix))]));
    for (const mixes of [
      ['butane', 'winter'],
      ['winter', 'butane'],
    ] as const) {
      expect(told(-8, ...mixes)).toMatchObject({ grade: 'costs-you', key: 'some' });
      expect(plainly(told(0, ...mixes)).message).toBe(
        'At 0 °C one canister still gives gas and another, Plain butane, gives none or fades sooner.',
      );
      expect(told(-40, ...mixes)).toMatchObject({ grade: 'falls-short', key: 'stays' });
      expect(told(-8, ...mixes).evidence).toHaveLength(2);
    }
    expect(told(0, 'winter', 'winter').grade).toBe('holds-up');
  });

  it('a canister turned over gives liquid of its mix to the end, on a hose', () => {
    const told = (form: StoveForm) =>
      findingOf(
        coldGas,
        factsOf({ lowC: -14, altitudeM: 0 }, [stove(form), can('winter')], { canisterTurned: stated(true) }),
      );
    expect(told('remote')).toMatchObject({ grade: 'holds-up', key: 'runs-turned' });
    expect(told('upright')).toMatchObject({ grade: 'costs-you' });
  });

  it('on a hose costs you, where the canister can be turned over', () => {
    expect(of(-5, 'butane', {}, 'remote')).toMatchObject({ grade: 'costs-you', key: 'hose-fades' });
    expect(of(-25, 'butane', {}, 'remote')).toMatchObject({ key: 'hose-fades', fix: null });
    const mild = of(0, 'butane', {}, 'remote');
    expect(mild.fix).toMatch(/^A canister of isobutane and propane: /);
    expect(mild.cautions).toHaveLength(1);
    expect(of(0, 'winter', {}, 'remote')).toMatchObject({ key: 'runs', fix: null });
  });

  it('names the mix that would do, or another stove', () => {
    expect(plainly(of(0, 'butane')).fix).toMatch(
      /^A canister of isobutane and propane: \d+ kPa at 0 °C\. Or keep it warm\.$/,
    );
    expect(of(-25, 'butane').fix).toBe('A stove on a hose that takes liquid gas, or a petrol stove.');
    expect(of(-25, 'winter').fix).toMatch(/^A stove on a hose/);
  });

  it('asks for the mix where it decides, and not where it does not', () => {
    expect(of(0)).toMatchObject({ grade: 'cant-tell', key: 'mix-missing', question: { item: 1, field: 'gasMix' } });
    expect(of(-5, undefined, { altitudeM: 6000 }).grade).toBe('holds-up');
    expect(of(-45)).toMatchObject({ grade: 'falls-short', key: 'stays-any' });
    // From butane, nearly empty, to a winter mix, full.
    const ends = (['butane', 'winter'] as const).map((mix) => of(-5, mix).figures['pressure']);
    expect(of(-5).figures['pressure']).toMatchObject({
      value: { low: (ends[0] as { value: Range }).value.low, high: (ends[1] as { value: Range }).value.high },
    });
    // One canister that runs carries the kit, whatever is in the other.
    const both = findingOf(coldGas, factsOf({ lowC: 0, altitudeM: 0 }, [stove('upright'), can(), can('winter')]));
    expect(both).toMatchObject({ grade: 'costs-you', key: 'some' });
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
