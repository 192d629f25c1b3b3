import fc from 'fast-check';
import type { Range } from '../../core/model/finding.js';
import { HEAT_SOURCES, type HeatSource } from '../../core/data/stoves.js';
import { WINDS } from '../../core/model/trip.js';
import type { HeatingInput } from '../../core/physics/heating.js';
import type { VesselShape } from '../../core/physics/vessel.js';

export const number = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });

/** Pots from a thimble to a cauldron, flared or narrowed, with an edge that fits. */
export const roundVessels: fc.Arbitrary<VesselShape> = fc
  .record({ rimMm: number(30, 1000), baseMm: number(30, 1000), heightMm: number(15, 1000), edge: number(0, 0.3) })
  .map(({ rimMm, baseMm, heightMm, edge }) => ({
    kind: 'round',
    rimMm,
    baseMm,
    heightMm,
    edgeRadiusMm: edge * Math.min(heightMm, baseMm / 2, rimMm / 2, heightMm ** 2 / (Math.abs(rimMm - baseMm) + 1)),
  }));

export const boxes: fc.Arbitrary<VesselShape> = fc.record({
  kind: fc.constant('box'),
  lengthMm: number(30, 1000),
  widthMm: number(30, 1000),
  heightMm: number(15, 1000),
});

export const vessels = fc.oneof(roundVessels, boxes);

export const sources = fc.constantFrom(...(Object.keys(HEAT_SOURCES) as HeatSource[]));
export const winds = fc.constantFrom(...WINDS);

export const ranges = (min: number, max: number): fc.Arbitrary<Range> =>
  fc.tuple(number(min, max), number(min, max), number(min, max)).map((three) => {
    const [low, likely, high] = [...three].sort((a, b) => a - b);
    return { low: low!, likely: likely!, high: high! };
  });

/** Whatever `heat` admits, within what a camp may hold. */
export const heatings: fc.Arbitrary<HeatingInput> = fc
  .record({
    massKg: number(0, 100),
    temperatures: fc.tuple(number(0, 102), number(0, 102)),
    powerW: ranges(50, 50_000),
    efficiency: ranges(0.01, 1),
    lowerHeatingValueJPerKg: number(10e6, 50e6),
    surfaceM2: number(0, 0.8),
    wallM2: number(0, 3.2),
    lid: fc.boolean(),
    wind: winds,
  })
  .map(({ temperatures: [a, b], ...rest }) => ({ ...rest, fromC: Math.min(a, b), toC: Math.max(a, b) }));
