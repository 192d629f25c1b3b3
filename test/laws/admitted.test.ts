import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GAS_MIX_SHARES } from '../../core/data/fuels.js';
import { SNOW_KG_PER_M3 } from '../../core/data/snow.js';
import { GAS_MIXES } from '../../core/model/item.js';
import { SNOWS } from '../../core/model/trip.js';
import { boilingPointC, pressurePa } from '../../core/physics/air.js';
import { burnerFor } from '../../core/physics/burner.js';
import { canisterPressurePa, fuelHeatingValueJPerKg } from '../../core/physics/fuel.js';
import { heat, hold } from '../../core/physics/heating.js';
import { meltSnow } from '../../core/physics/snow.js';
import { hungMetacentricMm, spillAngleDeg, supportRadiusMm, tipAngleDeg } from '../../core/physics/stability.js';
import { fillHeightMm, surfaceM2, volumeMl, wetWallM2, type VesselShape } from '../../core/physics/vessel.js';
import { number, sources, winds } from './arbitraries.js';

/** The widest pot, stove and trip that typed values let in: `core/input`. */
const pots: fc.Arbitrary<VesselShape> = fc.oneof(
  fc.record({
    kind: fc.constant('round' as const),
    rimMm: number(30, 1000),
    baseMm: number(20, 1000),
    heightMm: number(15, 1000),
  }),
  fc.record({
    kind: fc.constant('box' as const),
    lengthMm: number(30, 1000),
    widthMm: number(30, 1000),
    heightMm: number(15, 1000),
  }),
);
const fills = number(0.05, 1);
const trips = fc.record({
  lowC: number(-60, 50),
  altitudeM: number(-430, 9000),
  snow: fc.constantFrom(...SNOWS),
  wind: winds,
  lid: fc.boolean(),
  people: fc.integer({ min: 1, max: 500 }),
});

/** Every number in it is one, nested or not. */
function expectNumbers(value: unknown): void {
  if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  else if (typeof value === 'object' && value !== null) Object.values(value).forEach(expectNumbers);
}

describe('whatever is admitted', () => {
  it('boils, holds or stalls in numbers', () => {
    fc.assert(
      fc.property(pots, fills, trips, sources, number(50, 50_000), (pot, part, trip, source, watts) => {
        const ml = part * volumeMl(pot);
        const fillMm = fillHeightMm(pot, ml);
        const burner = burnerFor(source, pot.kind === 'round' ? pot.baseMm : Math.min(pot.lengthMm, pot.widthMm));
        const flame = {
          ...burner,
          powerW: { low: watts, likely: watts, high: watts },
          lowerHeatingValueJPerKg: fuelHeatingValueJPerKg(burner.fuel),
          surfaceM2: surfaceM2(pot, fillMm),
          wallM2: wetWallM2(pot, fillMm),
          lid: trip.lid,
          wind: trip.wind,
        };
        const boilC = boilingPointC(trip.altitudeM);
        expectNumbers(
          heat({ ...flame, massKg: ml / 1000, fromC: Math.max(0, Math.min(trip.lowC, boilC)), toC: boilC }),
        );
        expectNumbers(hold({ ...flame, atC: boilC, minutes: 30 }));
      }),
      { numRuns: 200 },
    );
  });

  it('melts in numbers', () => {
    fc.assert(
      fc.property(pots, trips, sources, (pot, trip, source) => {
        const roomMl = 0.9 * volumeMl(pot);
        fc.pre(roomMl >= 3);
        const burner = burnerFor(source);
        expectNumbers(
          meltSnow({
            ...burner,
            lowerHeatingValueJPerKg: fuelHeatingValueJPerKg(burner.fuel),
            litres: 5 * trip.people,
            roomMl,
            starterMl: Math.max(1, 0.15 * roomMl),
            snowKgPerM3: SNOW_KG_PER_M3[trip.snow],
            snowC: Math.min(trip.lowC, 0),
            wind: trip.wind,
          }),
        );
      }),
    );
  });

  it('stands, spills and hangs in numbers', () => {
    const stoves = fc.record({
      span: number(20, 1500),
      arms: fc.integer({ min: 2, max: 12 }),
      standMm: number(0, 2000),
      potMassKg: number(0.005, 50),
      earMm: number(10, 1200),
    });
    fc.assert(
      fc.property(pots, fills, stoves, (pot, part, stove) => {
        fc.pre(pot.kind === 'round');
        if (pot.kind !== 'round') return;
        const fillMm = part * pot.heightMm;
        const radiusMm = pot.rimMm / 2;
        expectNumbers([
          tipAngleDeg({
            radiusMm,
            fillMm,
            edgeMm: supportRadiusMm(stove.span / 2, stove.arms),
            standMm: stove.standMm,
            potMassKg: stove.potMassKg,
            potCentreMm: pot.heightMm / 2,
          }),
          spillAngleDeg({ rimMm: pot.rimMm, heightMm: pot.heightMm, fillMm }),
          hungMetacentricMm({ earMm: stove.earMm, fillMm, radiusMm, potMassKg: stove.potMassKg }),
        ]);
      }),
    );
  });

  it('presses in numbers, from the coldest canister to the hottest', () => {
    fc.assert(
      fc.property(fc.constantFrom(...GAS_MIXES), number(-70, 60), number(-430, 9000), (mix, canisterC, altitudeM) => {
        expectNumbers([canisterPressurePa(GAS_MIX_SHARES[mix], canisterC + 273.15, 0.1), pressurePa(altitudeM)]);
      }),
    );
  });
});
