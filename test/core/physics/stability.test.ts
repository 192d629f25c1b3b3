import { describe, expect, it } from 'vitest';
import {
  hungMetacentricMm,
  liquidCentroid,
  spillAngleDeg,
  supportRadiusMm,
  tipAngleDeg,
  virtualRiseMm,
} from '../../../core/physics/stability.js';
import { refuses } from './refuse.js';

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

describe('liquidCentroid', () => {
  it('upright is the middle', () => expect(liquidCentroid(70, 100, 0)).toEqual({ xMm: 0, zMm: 50 }));

  it('of the half-covered base is that of a hoof: x = 3πr/16, z = 3πr tan a/32', () => {
    // The water line runs through the axis when πr²h = (2/3) r³ tan a.
    const radius = 60;
    const tilt = 70;
    const fill = ((2 / 3) * radius * tan(tilt)) / Math.PI;
    const { xMm, zMm } = liquidCentroid(radius, fill, tilt);
    expect(xMm).toBeCloseTo((3 * Math.PI * radius) / 16, 6);
    expect(zMm).toBeCloseTo((3 * Math.PI * radius * tan(tilt)) / 32, 6);
  });

  // Worked out apart from this code, by quadrature over the wetted part of the base.
  it.each([
    [60, 20, 40, 28.333358, 19.680088],
    [60, 20, 30, 23.315049, 16.180883],
    [50, 5, 60, 37.815895, 14.602396],
    [80, 30, 25, 24.487322, 20.630935],
  ])('r = %d, h = %d, tilt %d°', (radius, fill, tilt, x, z) => {
    const { xMm, zMm } = liquidCentroid(radius, fill, tilt);
    expect(xMm).toBeCloseTo(x, 5);
    expect(zMm).toBeCloseTo(z, 5);
  });

  refuses('a radius', (r) => liquidCentroid(r, 100, 10), { least: 1, most: 1000, unit: ' mm', says: 'The radius' });
  refuses('a fill', (h) => liquidCentroid(70, h, 10), {
    least: 0.01,
    most: 2000,
    unit: ' mm',
    says: 'The fill height',
  });
  refuses('a tilt', (a) => liquidCentroid(70, 100, a), { least: 0, most: 89, unit: '°', says: 'The tilt' });
});

describe('virtualRiseMm', () => {
  it('is r²/(4h): 12.25 mm for r = 70, h = 100', () => expect(virtualRiseMm(70, 100)).toBe(12.25));
  it('puts the centre lowest at h = r/√2, and there at r/√2', () => {
    const centre = (h: number): number => h / 2 + virtualRiseMm(70, h);
    const best = 70 / Math.SQRT2;
    expect(centre(best)).toBeCloseTo(best, 9);
    expect(centre(best - 1)).toBeGreaterThan(centre(best));
    expect(centre(best + 1)).toBeGreaterThan(centre(best));
  });
  refuses('a radius', (r) => virtualRiseMm(r, 100), { least: 1, most: 1000, unit: ' mm', says: 'The radius' });
  refuses('a fill', (h) => virtualRiseMm(70, h), { least: 0.01, most: 2000, unit: ' mm', says: 'The fill height' });
});

describe('supportRadiusMm', () => {
  it('two supports hold along one line only', () => expect(supportRadiusMm(60, 2)).toBe(0));
  it('three hold half the circle', () => expect(supportRadiusMm(60, 3)).toBeCloseTo(30, 9));
  it('many hold nearly all of it', () => expect(supportRadiusMm(60, 12)).toBeGreaterThan(57));
  it('come whole', () =>
    expect(() => supportRadiusMm(60, 3.5)).toThrow(new RangeError('The number of supports is 3.5: they come whole.')));
  refuses('a circle', (r) => supportRadiusMm(r, 3), {
    least: 0,
    most: 1000,
    unit: ' mm',
    says: 'The circle of the supports',
  });
  it('are 2 to 12', () => {
    expect(() => supportRadiusMm(60, 1)).toThrow('The number of supports is 1: outside 2 to 12.');
    expect(() => supportRadiusMm(60, 13)).toThrow('The number of supports is 13: outside 2 to 12.');
    expect(() => supportRadiusMm(60, 12)).not.toThrow();
  });
});

describe('tipAngleDeg', () => {
  const water = { radiusMm: 70, fillMm: 100, edgeMm: 40 };

  it('is where the centre stands over the edge', () => {
    const tip = tipAngleDeg(water);
    const { xMm, zMm } = liquidCentroid(70, 100, tip);
    expect(xMm + zMm * tan(tip)).toBeCloseTo(40, 9);
  });

  it('counts the pot by its mass: pot as heavy as the water, centre where the water’s is', () => {
    const waterKg = Math.PI * 70 ** 2 * 100 * 1e-9 * 998.207;
    const tip = tipAngleDeg({ ...water, potMassKg: waterKg, potCentreMm: 60 });
    const { xMm, zMm } = liquidCentroid(70, 100, tip);
    expect(xMm / 2 + ((zMm + 60) / 2) * tan(tip)).toBeCloseTo(40, 4);
  });

  it('takes the pot’s own centre at half the fill where it is not given', () => {
    expect(tipAngleDeg({ ...water, potMassKg: 0.2 })).toBe(tipAngleDeg({ ...water, potMassKg: 0.2, potCentreMm: 50 }));
  });

  it('without water is the pot alone: atan(edge/(centre + stand))', () => {
    expect(tipAngleDeg({ ...water, fillMm: 0, potMassKg: 0.2, potCentreMm: 50, standMm: 30 })).toBeCloseTo(
      (Math.atan(40 / 80) * 180) / Math.PI,
      9,
    );
  });

  it('a film of water under a hundredth of a millimetre counts as none', () => {
    const pot = { ...water, potMassKg: 0.2, potCentreMm: 50 };
    expect(tipAngleDeg({ ...pot, fillMm: 0.005 })).toBe(tipAngleDeg({ ...pot, fillMm: 0 }));
  });

  it('is 0 where the edge is under the axis, and 89 where it never tips', () => {
    expect(tipAngleDeg({ ...water, edgeMm: 0 })).toBeCloseTo(0, 9);
    expect(tipAngleDeg({ radiusMm: 20, fillMm: 0, edgeMm: 1000, potMassKg: 1, potCentreMm: 10 })).toBe(89);
  });

  it('refuses a pot of nothing', () => {
    expect(() => tipAngleDeg({ ...water, fillMm: 0 })).toThrow(
      new RangeError('The pot and the water weigh 0 kg: nothing is there to tip.'),
    );
  });

  refuses('a radius', (radiusMm) => tipAngleDeg({ ...water, radiusMm }), {
    least: 1,
    most: 1000,
    unit: ' mm',
    says: 'The radius',
  });
  refuses('a fill', (fillMm) => tipAngleDeg({ ...water, fillMm, potMassKg: 1 }), {
    least: 0,
    most: 2000,
    unit: ' mm',
    says: 'The fill height',
  });
  refuses('an edge', (edgeMm) => tipAngleDeg({ ...water, edgeMm }), {
    least: 0,
    most: 1000,
    unit: ' mm',
    says: 'The tipping edge',
  });
  refuses('a stand', (standMm) => tipAngleDeg({ ...water, standMm }), {
    least: 0,
    most: 2000,
    unit: ' mm',
    says: 'The stand',
  });
  refuses('a mass', (potMassKg) => tipAngleDeg({ ...water, potMassKg }), {
    least: 0,
    most: 100,
    unit: ' kg',
    says: 'The mass of the pot',
  });
  refuses('a centre', (potCentreMm) => tipAngleDeg({ ...water, potCentreMm }), {
    least: 0,
    most: 2000,
    unit: ' mm',
    says: 'The centre of the pot',
  });
});

describe('spillAngleDeg', () => {
  const pot = { rimMm: 140, heightMm: 120, fillMm: 100 };

  it('is atan((H − h)/r) from half full up', () => {
    expect(spillAngleDeg(pot)).toBeCloseTo((Math.atan(20 / 70) * 180) / Math.PI, 9);
    expect(spillAngleDeg({ ...pot, fillMm: 60 })).toBeCloseTo((Math.atan(60 / 70) * 180) / Math.PI, 9);
  });

  it('is 0 brim-full and 90 empty', () => {
    expect(spillAngleDeg({ ...pot, fillMm: 120 })).toBe(0);
    expect(spillAngleDeg({ ...pot, fillMm: 0 })).toBe(90);
  });

  it('of the pot whose water line runs from rim to middle of the base: fill 2H/(3π), atan(H/r)', () => {
    expect(spillAngleDeg({ ...pot, fillMm: (2 * 120) / (3 * Math.PI) })).toBeCloseTo(
      (Math.atan(120 / 70) * 180) / Math.PI,
      6,
    );
  });

  // Worked out apart from this code, by quadrature.
  it.each([
    [140, 120, 40, 50.560413],
    [140, 120, 12, 71.205176],
    [180, 60, 20, 25.3036],
    [95, 142, 50, 63.765689],
  ])('of less than half a pot: Ø %d × %d mm, %d mm deep', (rimMm, heightMm, fillMm, degrees) => {
    expect(spillAngleDeg({ rimMm, heightMm, fillMm })).toBeCloseTo(degrees, 5);
  });

  refuses('a rim', (rimMm) => spillAngleDeg({ ...pot, rimMm }), {
    least: 2,
    most: 2000,
    unit: ' mm',
    says: 'The rim diameter',
  });
  refuses('a height', (heightMm) => spillAngleDeg({ ...pot, heightMm, fillMm: 0 }), {
    least: 1,
    most: 2000,
    unit: ' mm',
    says: 'The height',
  });
  refuses('a fill', (fillMm) => spillAngleDeg({ ...pot, fillMm }), {
    least: 0,
    most: 120,
    unit: ' mm',
    says: 'The fill height',
  });
});

describe('hungMetacentricMm', () => {
  const pot = { earMm: 120, fillMm: 100, radiusMm: 70 };

  it('of water alone is (e − h/2) − r²/(4h)', () => expect(hungMetacentricMm(pot)).toBeCloseTo(120 - 50 - 12.25, 9));

  it('counts the pot by its mass', () => {
    const waterKg = Math.PI * 70 ** 2 * 100 * 1e-9 * 998.207;
    expect(hungMetacentricMm({ ...pot, potMassKg: waterKg, potCentreMm: 40 })).toBeCloseTo((57.75 + 80) / 2, 3);
    expect(hungMetacentricMm({ ...pot, potMassKg: waterKg })).toBeCloseTo((57.75 + 70) / 2, 3);
  });

  it('is below 0 where a wide pot hangs from low ears', () =>
    expect(hungMetacentricMm({ earMm: 50, fillMm: 40, radiusMm: 100 })).toBeLessThan(0));

  refuses('ears', (earMm) => hungMetacentricMm({ ...pot, earMm }), {
    least: 0,
    most: 3000,
    unit: ' mm',
    says: 'The height of the ears',
  });
  refuses('a fill', (fillMm) => hungMetacentricMm({ ...pot, fillMm }), {
    least: 0.01,
    most: 2000,
    unit: ' mm',
    says: 'The fill height',
  });
  refuses('a radius', (radiusMm) => hungMetacentricMm({ ...pot, radiusMm }), {
    least: 1,
    most: 1000,
    unit: ' mm',
    says: 'The radius',
  });
  refuses('a mass', (potMassKg) => hungMetacentricMm({ ...pot, potMassKg }), {
    least: 0,
    most: 100,
    unit: ' kg',
    says: 'The mass of the pot',
  });
  refuses('a centre', (potCentreMm) => hungMetacentricMm({ ...pot, potCentreMm }), {
    least: 0,
    most: 2000,
    unit: ' mm',
    says: 'The centre of the pot',
  });
});
