import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  hungMetacentricMm,
  liquidCentroid,
  spillAngleDeg,
  supportRadiusMm,
  tipAngleDeg,
} from '../../core/physics/stability.js';
import { fillHeightMm, filledMl, surfaceM2, volumeMl, wetWallM2, type VesselShape } from '../../core/physics/vessel.js';
import { number, roundVessels, vessels } from './arbitraries.js';

describe('vessels', () => {
  it('volume to height and back', () => {
    fc.assert(
      fc.property(vessels, number(0, 1), (shape, part) => {
        const ml = part * volumeMl(shape);
        expect(Math.abs(filledMl(shape, fillHeightMm(shape, ml)) - ml)).toBeLessThanOrEqual(1e-9 * volumeMl(shape));
      }),
    );
  });

  it('height to volume and back', () => {
    fc.assert(
      fc.property(vessels, number(0.01, 1), (shape, part) => {
        const fillMm = part * shape.heightMm;
        expect(fillHeightMm(shape, filledMl(shape, fillMm))).toBeCloseTo(fillMm, 6);
      }),
    );
  });

  it('a slice of water is its surface times its thickness', () => {
    fc.assert(
      fc.property(vessels, number(0.001, 0.999), (shape, part) => {
        const fillMm = part * shape.heightMm;
        const thin = Math.min(fillMm, shape.heightMm - fillMm) * 1e-3;
        const slice = filledMl(shape, fillMm + thin / 2) - filledMl(shape, fillMm - thin / 2);
        expect(slice / (surfaceM2(shape, fillMm) * 1000 * thin)).toBeCloseTo(1, 3);
      }),
    );
  });

  it('a slice of wall is no less than round the water times its thickness', () => {
    fc.assert(
      fc.property(vessels, number(0.01, 0.99), (shape, part) => {
        const fillMm = part * shape.heightMm;
        const thin = Math.min(fillMm, shape.heightMm - fillMm) * 1e-3;
        const slice = wetWallM2(shape, fillMm + thin / 2) - wetWallM2(shape, fillMm - thin / 2);
        const round =
          shape.kind === 'box'
            ? 2 * (shape.lengthMm + shape.widthMm)
            : 2 * Math.sqrt(Math.PI * surfaceM2(shape, fillMm) * 1e6);
        expect(slice * 1e6).toBeGreaterThanOrEqual(round * thin * (1 - 1e-3));
      }),
    );
  });

  it('nothing in it stands at nothing', () => {
    fc.assert(
      fc.property(vessels, (shape) => {
        expect(filledMl(shape, 0)).toBe(0);
        expect(fillHeightMm(shape, 0)).toBe(0);
        expect(wetWallM2(shape, 0)).toBe(0);
      }),
    );
  });

  it('a rounded edge only takes away', () => {
    fc.assert(
      fc.property(roundVessels, (shape) => {
        const sharp = { ...shape, edgeRadiusMm: 0 } as VesselShape;
        expect(volumeMl(shape)).toBeLessThanOrEqual(volumeMl(sharp) * (1 + 1e-12));
      }),
    );
  });
});

describe('water in a tilted pot', () => {
  const radii = number(20, 500);
  const fills = number(1, 500);

  /** The centroid by summing a thousand strips, apart from the closed form. */
  function byStrips(radius: number, fill: number, tiltDeg: number): { x: number; z: number } {
    const slope = Math.tan((tiltDeg * Math.PI) / 180);
    const strips = Array.from({ length: 4000 }, (_, i) => radius * Math.cos(((i + 0.5) * Math.PI) / 4000));
    const width = (x: number): number => 2 * (radius ** 2 - x ** 2);
    const moments = (level: number): { v: number; x: number; z: number } => {
      let [v, mx, mz] = [0, 0, 0];
      for (const x of strips) {
        const depth = Math.max(0, level + slope * x);
        v += width(x) * depth;
        mx += width(x) * depth * x;
        mz += (width(x) * depth ** 2) / 2;
      }
      return { v, x: mx, z: mz };
    };
    const all = strips.reduce((sum, x) => sum + width(x), 0) * fill;
    let [low, high] = [-radius * slope, fill + radius * slope];
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2;
      if (moments(middle).v < all) low = middle;
      else high = middle;
    }
    const { v, x, z } = moments(low);
    return { x: x / v, z: z / v };
  }

  it('has the centroid that strips add up to, base covered or dry', () => {
    fc.assert(
      fc.property(radii, fills, number(0, 75), (radius, fill, tilt) => {
        const { xMm, zMm } = liquidCentroid(radius, fill, tilt);
        const strips = byStrips(radius, fill, tilt);
        expect(Math.abs(xMm - strips.x)).toBeLessThanOrEqual(1e-3 * radius);
        expect(Math.abs(zMm - strips.z)).toBeLessThanOrEqual(1e-3 * (strips.z + radius));
      }),
      { numRuns: 60 },
    );
  });

  it('runs to the low side and up the wall, without a jump where the base falls dry', () => {
    fc.assert(
      fc.property(radii, fills, number(0, 88), (radius, fill, tilt) => {
        const [here, further] = [liquidCentroid(radius, fill, tilt), liquidCentroid(radius, fill, tilt + 0.001)];
        expect(further.xMm).toBeGreaterThanOrEqual(here.xMm - 1e-9 * radius);
        expect(further.zMm).toBeGreaterThanOrEqual(here.zMm - 1e-9 * radius);
        expect(here.xMm).toBeLessThan(radius);
        const dryAt = (Math.atan(fill / radius) * 180) / Math.PI;
        if (dryAt > 89) return;
        const [before, after] = [
          liquidCentroid(radius, fill, dryAt * (1 - 1e-9)),
          liquidCentroid(radius, fill, dryAt * (1 + 1e-9)),
        ];
        expect(after.xMm).toBeCloseTo(before.xMm, 3);
        expect(after.zMm).toBeCloseTo(before.zMm, 3);
      }),
    );
  });

  it('spills at less the fuller it is, from upright when full to lying when empty', () => {
    fc.assert(
      fc.property(number(40, 500), number(30, 500), number(0, 1), number(0, 1), (rimMm, heightMm, a, b) => {
        const at = (part: number): number => spillAngleDeg({ rimMm, heightMm, fillMm: part * heightMm });
        expect(at(Math.max(a, b))).toBeLessThanOrEqual(at(Math.min(a, b)) + 1e-9);
        expect(at(1)).toBe(0);
        expect(at(0)).toBe(90);
        expect(at(0.5 - 1e-9)).toBeCloseTo(at(0.5), 4);
      }),
    );
  });

  it('touches the rim at the spill angle: the centroid’s own volume says so', () => {
    fc.assert(
      fc.property(number(40, 300), number(30, 300), number(0.05, 0.95), (rimMm, heightMm, part) => {
        const radius = rimMm / 2;
        const slope = Math.tan((spillAngleDeg({ rimMm, heightMm, fillMm: part * heightMm }) * Math.PI) / 180);
        // Depth at x under a surface through the rim, summed over strips, is the volume that was filled in.
        let [volume, area] = [0, 0];
        for (let i = 0; i < 4000; i++) {
          const x = radius * Math.cos(((i + 0.5) * Math.PI) / 4000);
          const width = radius ** 2 - x ** 2;
          area += width;
          volume += width * Math.max(0, heightMm - slope * (radius - x));
        }
        expect(volume / area / heightMm).toBeCloseTo(part, 3);
      }),
    );
  });
});

describe('standing and hanging', () => {
  const pots = fc.record({
    radiusMm: number(20, 300),
    fillMm: number(5, 400),
    edgeMm: number(1, 300),
    standMm: number(0, 300),
    potMassKg: number(0, 5),
    potCentreMm: number(0, 300),
  });

  it('tips later on a wider edge and sooner on a higher stand', () => {
    fc.assert(
      fc.property(pots, (pot) => {
        const tip = tipAngleDeg(pot);
        expect(tip).toBeGreaterThan(0);
        expect(tip).toBeLessThanOrEqual(89);
        expect(tipAngleDeg({ ...pot, edgeMm: pot.edgeMm * 1.1 })).toBeGreaterThanOrEqual(tip);
        expect(tipAngleDeg({ ...pot, standMm: pot.standMm + 10 })).toBeLessThanOrEqual(tip);
      }),
    );
  });

  it('running water tips no later than the same water frozen', () => {
    fc.assert(
      fc.property(pots, ({ radiusMm, fillMm, edgeMm, standMm }) => {
        const frozen = tipAngleDeg({ radiusMm, fillMm: 0, edgeMm, standMm, potMassKg: 1, potCentreMm: fillMm / 2 });
        expect(tipAngleDeg({ radiusMm, fillMm, edgeMm, standMm })).toBeLessThanOrEqual(frozen + 1e-9);
      }),
    );
  });

  it('is over the edge at the tip angle: the centroid says so', () => {
    fc.assert(
      fc.property(pots, ({ radiusMm, fillMm, edgeMm, standMm }) => {
        const tip = tipAngleDeg({ radiusMm, fillMm, edgeMm, standMm });
        if (tip >= 89) return;
        const { xMm, zMm } = liquidCentroid(radiusMm, fillMm, tip);
        expect(xMm + (zMm + standMm) * Math.tan((tip * Math.PI) / 180)).toBeCloseTo(edgeMm, 6);
      }),
    );
  });

  it('more supports on the same circle hold wider, and never wider than the circle', () => {
    fc.assert(
      fc.property(number(0, 500), fc.integer({ min: 2, max: 11 }), (circle, n) => {
        expect(supportRadiusMm(circle, n + 1)).toBeGreaterThanOrEqual(supportRadiusMm(circle, n));
        expect(supportRadiusMm(circle, n + 1)).toBeLessThanOrEqual(circle);
      }),
    );
  });

  it('hangs steadier from higher ears, and a wider pot less', () => {
    fc.assert(
      fc.property(pots, number(0, 500), ({ radiusMm, fillMm, potMassKg, potCentreMm }, earMm) => {
        const at = (change: object): number =>
          hungMetacentricMm({ earMm, fillMm, radiusMm, potMassKg, potCentreMm, ...change });
        expect(at({ earMm: earMm + 10 })).toBeCloseTo(at({}) + 10, 6);
        expect(at({ radiusMm: radiusMm * 1.1, potMassKg: 0 })).toBeLessThan(at({ potMassKg: 0 }));
      }),
    );
  });
});
