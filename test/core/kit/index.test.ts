import { describe, expect, it } from 'vitest';
import { readPot, readStove } from '../../../core/input/pot.js';
import { kitFromPot, kitFromReading } from '../../../core/kit/index.js';
import { MISSING } from '../../../core/model/given.js';
import type { Item } from '../../../core/model/item.js';
import { item, readingOf, stated } from './item.js';

const kitOf = (items: Item[], winter = false) => kitFromReading('pot', readingOf(...items), winter).kit;

describe('a kit from a reading', () => {
  it('leaves at home what is not carried', () => {
    const kit = kitOf([
      item('pot', { carried: false, capacitiesMl: [stated(1000)] }),
      item('mug', { capacitiesMl: [stated(400)] }),
    ]);
    expect(kit.pots.map((pot) => pot.kind)).toEqual(['mug']);
    expect(kit.eatWare).toHaveLength(1);
  });

  it('takes the alternative of the season', () => {
    const items = [
      item('pot', { onlyIn: 'summer', capacitiesMl: [stated(1000)] }),
      item('pot', { onlyIn: 'winter', capacitiesMl: [stated(2000)] }),
    ];
    expect(kitOf(items).pots.map((pot) => pot.capacityMl)).toEqual([stated(1000)]);
    expect(kitOf(items, true).pots.map((pot) => pot.capacityMl)).toEqual([stated(2000)]);
  });

  it('parts a nested set into its vessels, largest first, none with the mass of the set', () => {
    const set = item('pot', {
      capacitiesMl: [stated(900), stated(1300)],
      massG: stated(260),
      quantity: stated(2),
      heightMm: stated(90),
    });
    const kit = kitOf([set]);
    expect(
      kit.vessels.map(({ capacityMl, quantity, massG, heightMm }) => [capacityMl, quantity, massG, heightMm]),
    ).toEqual([
      [stated(1300), stated(1), MISSING, MISSING],
      [stated(900), stated(1), MISSING, MISSING],
    ]);
  });

  it('reads the count of three sets of two as three of each', () => {
    const kit = kitOf([item('pot', { capacitiesMl: [stated(900), stated(1300)], quantity: stated(3) })]);
    expect(kit.vessels.map((vessel) => vessel.quantity)).toEqual([stated(3), stated(3)]);
  });

  it('works a missing capacity out from the outside', () => {
    // π/4 × 13² × 9 cm = 1194.6 mL, elementary geometry.
    const [pot] = kitOf([item('pot', { diameterMm: stated(130), heightMm: stated(90) })]).pots;
    expect(pot?.capacityMl).toMatchObject({
      grounds: 'worked-out',
      value: expect.closeTo(1194.6, 1),
      from: 'Ø 130 × 90 mm outside',
    });
    expect(pot?.statedCapacityMl).toEqual(MISSING);
    const [tin] = kitOf([item('pot', { boxMm: stated([170, 130] as const), heightMm: stated(60) })]).pots;
    expect(tin?.capacityMl).toMatchObject({ value: expect.closeTo(1326, 9) });
    const [tapered] = kitOf([
      item('pot', { diameterMm: stated(130), baseDiameterMm: stated(100), heightMm: stated(90) }),
    ]).pots;
    expect(tapered?.capacityMl).toMatchObject({
      value: expect.closeTo((Math.PI * 9 * (13 ** 2 + 13 * 10 + 10 ** 2)) / 12, 6),
      from: 'Ø 130 to 100 × 90 mm outside',
    });
  });

  it('covers a pot with a lid from elsewhere on the list, or with a pan wide enough, but not with one too small', () => {
    const pot = item('pot', { diameterMm: stated(120) });
    const lidOf = (...others: Item[]) => kitOf([pot, ...others]).pots[0]?.lid;
    expect(lidOf()).toEqual(MISSING);
    expect(lidOf(item('lid', { line: 1 }))).toMatchObject({ grounds: 'worked-out', value: true });
    expect(lidOf(item('lid', { diameterMm: stated(110) }))).toEqual(MISSING);
    expect(lidOf(item('pan', { diameterMm: stated(120) }))).toMatchObject({ value: true });
    expect(lidOf(item('pan', { diameterMm: stated(119) }))).toEqual(MISSING);
    expect(kitOf([{ ...pot, lid: stated(false) }, item('lid')]).pots[0]?.lid).toEqual(stated(false));
  });

  it('shares a mass only where the line says how', () => {
    const massOf = (given: Partial<Item>) =>
      kitOf([item('pot', { quantity: stated(2), massG: stated(200), ...given })]).vessels[0]?.massG;
    expect(massOf({ massBasis: 'each' })).toEqual(stated(200));
    expect(massOf({ massBasis: 'line' })).toMatchObject({ grounds: 'worked-out', value: 100 });
    expect(massOf({})).toEqual(MISSING);
    expect(massOf({ quantity: stated(1) })).toEqual(stated(200));
  });

  it('cooks in the largest mug where there is no pot, but not in a plastic one', () => {
    const mug = (mL: number, material: 'plastic' | 'titanium') =>
      item('mug', { capacitiesMl: [stated(mL)], material: stated(material) });
    expect(kitOf([mug(600, 'plastic'), mug(450, 'titanium')]).pots.map((pot) => pot.capacityMl)).toEqual([stated(450)]);
    expect(kitOf([mug(600, 'plastic')]).pots).toEqual([]);
    expect(kitOf([item('pan', { capacitiesMl: [stated(900)] })]).pots).toEqual([]);
  });

  it('locks the pot of an integrated stove to its burner', () => {
    const stove = item('stove', { stoveType: stated('integrated'), capacitiesMl: [stated(800)] });
    expect(kitOf([stove]).pots).toMatchObject([{ kind: 'pot', lockedToBurner: true, capacityMl: stated(800) }]);
    expect(kitOf([item('stove', { stoveType: stated('gas'), capacitiesMl: [stated(800)] })]).pots).toEqual([]);
    expect(kitOf([item('pot', { line: 2 }), stove]).pots.map((pot) => pot.lockedToBurner)).toContain(false);
  });

  it('leaves out a figure that no pot can have, and tells', () => {
    const { kit, problems } = kitFromReading(
      'pot',
      readingOf(item('pot', { capacitiesMl: [stated(1e9)], diameterMm: stated(8) })),
      false,
    );
    expect(kit.pots[0]?.capacityMl).toEqual(MISSING);
    expect(problems.map((problem) => [problem.field, problem.message])).toEqual([
      ['line.1', '8\u00a0mm is less than any pot; 80?'],
      ['line.1', '1000000000\u00a0mL is more than any pot.'],
    ]);
  });
});

describe('fuel', () => {
  const fuelOf = (given: Partial<Item>, ...others: Item[]) => kitOf([item('fuel', given), ...others]).fuels[0];

  it('is net by its name, else by the gross mass of the canister', () => {
    expect(fuelOf({ fuelType: stated('gas'), fuelMassG: stated(230), massG: stated(370) })?.netG).toEqual(stated(230));
    expect(fuelOf({ fuelType: stated('gas'), massG: stated(370) })?.netG).toMatchObject({
      grounds: 'worked-out',
      value: 230,
      cites: ['cp-canister-gross'],
    });
    expect(fuelOf({ fuelType: stated('gas'), massG: stated(300) })?.netG).toEqual(MISSING);
    expect(fuelOf({ fuelType: stated('gas') })?.netG).toEqual(MISSING);
  });

  it('is weighed by its volume, and a bottle is taken as three quarters full', () => {
    // GREET naphtha 725 kg/m³; ethanol 789.3 kg/m³ at 20 °C (CRC Handbook).
    expect(fuelOf({ fuelType: stated('liquid-fuel'), fuelVolumeMl: stated(1000) })?.netG).toMatchObject({
      grounds: 'worked-out',
      value: expect.closeTo(725, 0),
    });
    expect(fuelOf({ fuelType: stated('alcohol'), fuelVolumeMl: stated(100) })?.netG).toMatchObject({
      value: expect.closeTo(78.9, 1),
    });
    expect(fuelOf({ fuelType: stated('liquid-fuel'), capacitiesMl: [stated(600)] })?.netG).toMatchObject({
      grounds: 'assumed',
      value: expect.closeTo(326, 0),
    });
    expect(fuelOf({ fuelType: stated('solid-fuel'), massG: stated(84) })?.netG).toEqual(stated(84));
  });

  it('without a name is what the one stove burns', () => {
    const gas = item('stove', { stoveType: stated('integrated') });
    expect(fuelOf({}, gas)?.type).toMatchObject({ grounds: 'worked-out', value: 'gas' });
    expect(fuelOf({}, gas, item('stove', { stoveType: stated('wood') }))?.type).toEqual(MISSING);
    expect(fuelOf({})?.type).toEqual(MISSING);
  });
});

describe('a kit of one typed pot', () => {
  it('knows the pot and its stove and nothing else', () => {
    const { pot } = readPot({
      capacity: 600,
      diameter: 80,
      height: 125,
      bail: true,
      handles: true,
      quantity: 2,
      name: 'my pot',
    });
    const { stove } = readStove({ type: 'alcohol', burnerDiameter: 60, armCount: 3, armSpan: 100, height: 70 });
    const kit = kitFromPot(pot, stove);
    expect(kit.onePot).toBe(true);
    expect(kit.pots).toMatchObject([
      {
        name: 'my pot',
        bail: { value: true },
        handles: { value: 2 },
        quantity: { value: 2 },
        lid: MISSING,
        lockedToBurner: false,
      },
    ]);
    expect(kit.stoves).toMatchObject([
      {
        type: { value: 'alcohol' },
        burnerMm: { value: 60 },
        armCount: { value: 3 },
        armSpanMm: { value: 100 },
        heightMm: { value: 70 },
      },
    ]);
    expect(kitFromPot(pot, undefined).stoves).toEqual([]);
  });
});
