import { describe, expect, it } from 'vitest';
import {
  fillHeightMm,
  filledMl,
  surfaceM2,
  volumeMl,
  wetWallM2,
  type VesselShape,
} from '../../../core/physics/vessel.js';
import { refuses } from './refuse.js';

type Round = Extract<VesselShape, { kind: 'round' }>;
const cylinder: Round = { kind: 'round', rimMm: 100, baseMm: 100, heightMm: 120 };
const bowl: Round = { kind: 'round', rimMm: 140, baseMm: 100, heightMm: 80 };
const rounded: Round = { ...cylinder, edgeRadiusMm: 15 };
const tin: VesselShape = { kind: 'box', lengthMm: 160, widthMm: 100, heightMm: 60 };

describe('a cylinder', () => {
  it('holds πr²h', () => expect(volumeMl(cylinder)).toBeCloseTo((Math.PI * 2500 * 120) / 1000, 9));
  it('has a surface of πr² at any height', () => {
    for (const fill of [0, 60, 120]) expect(surfaceM2(cylinder, fill) * 1e6).toBeCloseTo(Math.PI * 2500, 6);
  });
  it('has a wet wall of πdh', () => expect(wetWallM2(cylinder, 60) * 1e6).toBeCloseTo(Math.PI * 100 * 60, 6));
  it('is half full at half its height', () =>
    expect(fillHeightMm(cylinder, volumeMl(cylinder) / 2)).toBeCloseTo(60, 9));
});

describe('a flared pot', () => {
  it('holds πH(R₁² + R₁R₂ + R₂²)/3', () =>
    expect(volumeMl(bowl)).toBeCloseTo((Math.PI * 80 * (2500 + 50 * 70 + 4900)) / 3000, 9));
  it('has its base’s surface at the base and its rim’s at the rim', () => {
    expect(surfaceM2(bowl, 0) * 1e6).toBeCloseTo(Math.PI * 2500, 6);
    expect(surfaceM2(bowl, 80) * 1e6).toBeCloseTo(Math.PI * 4900, 6);
    expect(surfaceM2(bowl, 40) * 1e6).toBeCloseTo(Math.PI * 3600, 6);
  });
  it('has the wall of a cone: π(r₁ + r₂) × slant', () =>
    expect(wetWallM2(bowl, 80) * 1e6).toBeCloseTo(Math.PI * 120 * Math.hypot(20, 80), 6));
  it('half full stands over half its height', () => {
    expect(fillHeightMm(bowl, volumeMl(bowl) / 2)).toBeGreaterThan(40);
    expect(filledMl(bowl, 40)).toBeCloseTo((Math.PI * 40 * (2500 + 50 * 60 + 3600)) / 3000, 9);
  });
  it('narrowing holds as much as flaring upside down', () =>
    expect(volumeMl({ ...bowl, rimMm: 100, baseMm: 140 })).toBeCloseTo(volumeMl(bowl), 9));
});

describe('a rounded base', () => {
  // Quarter circle of radius c on a flat of radius x: V = π(x²c + πxc²/2 + 2c³/3), wall 2πc(πx/2 + c).
  const [flat, edge] = [35, 15];
  const edgeMm3 = Math.PI * (flat ** 2 * edge + (Math.PI * flat * edge ** 2) / 2 + (2 * edge ** 3) / 3);

  it('takes away what a quarter ring leaves out', () => {
    expect(filledMl(rounded, edge)).toBeCloseTo(edgeMm3 / 1000, 9);
    expect(volumeMl(rounded)).toBeCloseTo((edgeMm3 + Math.PI * 2500 * 105) / 1000, 9);
  });
  it('has the wall of the ring and of the cylinder over it', () => {
    const ring = 2 * Math.PI * edge * ((Math.PI * flat) / 2 + edge);
    expect(wetWallM2(rounded, edge) * 1e6).toBeCloseTo(ring, 6);
    expect(wetWallM2(rounded, 120) * 1e6).toBeCloseTo(ring + Math.PI * 100 * 105, 6);
  });
  it('has the flat for its surface at the base, the full circle from the edge up', () => {
    expect(surfaceM2(rounded, 0) * 1e6).toBeCloseTo(Math.PI * flat ** 2, 6);
    expect(surfaceM2(rounded, 5) * 1e6).toBeCloseTo(Math.PI * (flat + Math.sqrt(5 * 25)) ** 2, 6);
    expect(surfaceM2(rounded, edge) * 1e6).toBeCloseTo(Math.PI * 2500, 6);
  });
  it('joins a flared wall without a step', () => {
    const flared: Round = { ...bowl, edgeRadiusMm: 20 };
    const top = 20 * (1 - Math.sin(Math.atan(20 / 80)));
    expect(surfaceM2(flared, top - 1e-9)).toBeCloseTo(surfaceM2(flared, top + 1e-9), 9);
    expect(surfaceM2(flared, top) * 1e6).toBeCloseTo(Math.PI * (50 + top / 4) ** 2, 3);
  });
  it('may be a half ball: edge as wide as the base and as high as half the pot', () => {
    const ball: Round = { kind: 'round', rimMm: 100, baseMm: 100, heightMm: 100, edgeRadiusMm: 50 };
    expect(filledMl(ball, 50)).toBeCloseTo((2 * Math.PI * 50 ** 3) / 3000, 9);
    expect(surfaceM2(ball, 0)).toBe(0);
  });
});

describe('a rounded base on a slanting wall', () => {
  // Worked out apart from this code, by summing slices: mL and mm² up to a height.
  it.each([
    [140, 100, 80, 20, 80, 899.102, 33628.34],
    [140, 100, 80, 20, 8, 52.5264, 5012.04],
    [90, 130, 110, 25, 110, 984.7541, 41173.26],
    [90, 130, 110, 25, 20, 180.9512, 10680.09],
  ])(
    'rim %d, base %d, height %d, edge %d, filled to %d mm',
    (rimMm, baseMm, heightMm, edgeRadiusMm, fillMm, ml, mm2) => {
      const shape: Round = { kind: 'round', rimMm, baseMm, heightMm, edgeRadiusMm };
      expect(filledMl(shape, fillMm)).toBeCloseTo(ml, 3);
      expect(wetWallM2(shape, fillMm) * 1e6).toBeCloseTo(mm2, 1);
    },
  );
});

describe('a tin', () => {
  it('holds l × w × h', () => expect(volumeMl(tin)).toBe(960));
  it('has l × w for a surface and its four sides for a wall', () => {
    expect(surfaceM2(tin, 30)).toBeCloseTo(0.016, 12);
    expect(wetWallM2(tin, 30)).toBeCloseTo((2 * 260 * 30) / 1e6, 12);
  });
  it('stands at volume over surface', () => expect(fillHeightMm(tin, 480)).toBeCloseTo(30, 9));
});

describe('an empty vessel', () => {
  it.each([cylinder, rounded, bowl, tin])('stands at 0 %#', (shape) => {
    expect(fillHeightMm(shape, 0)).toBe(0);
    expect(wetWallM2(shape, 0)).toBe(0);
  });
});

describe('a brim-full vessel', () => {
  it.each([cylinder, rounded, bowl, tin])('stands at its height, a last digit more or less %#', (shape) => {
    const brim = volumeMl(shape);
    for (const ml of [brim * (1 - 4e-16), brim, brim * (1 + 4e-16)])
      expect(fillHeightMm(shape, ml)).toBe(shape.heightMm);
    expect(fillHeightMm(shape, brim * 0.999)).toBeLessThan(shape.heightMm);
    expect(() => fillHeightMm(shape, brim * (1 + 1e-9))).toThrow(RangeError);
  });
});

describe('what is no vessel', () => {
  refuses('a rim', (rimMm) => volumeMl({ ...cylinder, rimMm }), {
    least: 1,
    most: 2000,
    unit: ' mm',
    says: 'The rim diameter',
  });
  refuses('a base', (baseMm) => volumeMl({ ...cylinder, baseMm }), {
    least: 1,
    most: 2000,
    unit: ' mm',
    says: 'The base diameter',
  });
  refuses('a height', (heightMm) => volumeMl({ ...cylinder, heightMm }), {
    least: 1,
    most: 2000,
    unit: ' mm',
    says: 'The height',
  });
  refuses('an edge', (edgeRadiusMm) => volumeMl({ ...cylinder, heightMm: 60, edgeRadiusMm }), {
    least: 0,
    most: 30,
    unit: ' mm',
    says: 'The rounded edge',
  });
  refuses('a length', (lengthMm) => volumeMl({ ...tin, lengthMm }), {
    least: 1,
    most: 2000,
    unit: ' mm',
    says: 'The length',
  });
  refuses('a width', (widthMm) => volumeMl({ ...tin, widthMm }), {
    least: 1,
    most: 2000,
    unit: ' mm',
    says: 'The width',
  });
  for (const call of [filledMl, surfaceM2, wetWallM2])
    refuses(`${call.name}: a fill height`, (fillMm) => call(cylinder, fillMm), {
      least: 0,
      most: 120,
      unit: ' mm',
      says: 'The fill height',
    });
  refuses('a volume', (ml) => fillHeightMm(tin, ml), { least: 0, most: 960, unit: ' mL', says: 'The volume' });

  it('an edge too large for the base is refused', () => {
    expect(() => volumeMl({ ...cylinder, edgeRadiusMm: 51 })).toThrow(
      /^The flat of the base left by the rounded edge is -1 mm: outside 0 to 1000 mm\.$/,
    );
  });
  it('surface and wall refuse it as well', () => {
    for (const call of [surfaceM2, wetWallM2])
      expect(() => call({ ...cylinder, rimMm: 0 }, 10)).toThrow(/rim diameter is 0 mm/);
  });
});
