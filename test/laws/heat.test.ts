import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Range } from '../../core/model/finding.js';
import { WIND_FACTORS } from '../../core/data/stoves.js';
import { burnerFor } from '../../core/physics/burner.js';
import { fuelHeatingValueJPerKg } from '../../core/physics/fuel.js';
import { heat, hold, potLossW, type Heating, type HeatingInput } from '../../core/physics/heating.js';
import { meltSnow, type MeltingInput } from '../../core/physics/snow.js';
import { drySurfaceLossWPerM2, openSurfaceLossWPerM2 } from '../../core/physics/surface-loss.js';
import { enthalpyJPerKg, heatCapacityJPerKgK, meltingHeatJPerKg } from '../../core/physics/water.js';
import { heatings, number, ranges, sources, winds } from './arbitraries.js';

type Reached = Extract<Heating, { reaches: true }>;

const ENDS = ['low', 'likely', 'high'] as const;
/** As large as `least`, but for the last digits of the arithmetic. */
const atLeast = (value: number, least: number): void =>
  expect(value).toBeGreaterThanOrEqual(least - 1e-9 * Math.abs(least) - 1e-9);
/** The same to nine figures, or both next to nothing. */
const same = (value: number, other: number): void =>
  expect(Math.abs(value - other)).toBeLessThanOrEqual(1e-9 * Math.abs(other) + 1e-12);
const ordered = (range: Range): void => {
  for (const end of ENDS) expect(Number.isFinite(range[end])).toBe(true);
  atLeast(range.low, 0);
  atLeast(range.likely, range.low);
  atLeast(range.high, range.likely);
};

/** Runs the law on heatings that get there; a stall must name a temperature on the way. */
function whereReached(law: (input: HeatingInput, heating: Reached) => void): void {
  let reached = 0;
  fc.assert(
    fc.property(heatings, (input) => {
      const heating = heat(input);
      if (heating.reaches) {
        reached++;
        law(input, heating);
      } else expect(heating.stallsC).toBeLessThanOrEqual(input.toC);
    }),
    { numRuns: 300 },
  );
  expect(reached).toBeGreaterThan(60);
}

describe('heat', () => {
  it('is conserved to 1e-9: what goes into the pot is in the water or lost', () => {
    whereReached((_, { energyKj, waterKj, lostKj }) => {
      for (const end of ENDS) same(waterKj + lostKj[end], energyKj[end]);
    });
  });

  it('is conserved from the fuel on: grams × heating value × share is what goes into the pot', () => {
    whereReached((input, { energyKj, grams, minutes }) => {
      const { fuel } = WIND_FACTORS[input.wind];
      const share = input.efficiency.likely / fuel.likely;
      const fromFuelKj = (grams.likely * input.lowerHeatingValueJPerKg * share) / 1e6;
      const fromFlameKj = (input.powerW.likely * share * minutes.likely * 60) / 1000;
      same(fromFuelKj, energyKj.likely);
      same(fromFlameKj, energyKj.likely);
    });
  });

  it('keeps low ≤ likely ≤ high, finite and not below zero', () => {
    whereReached((_, { energyKj, lostKj, minutes, grams }) => [energyKj, lostKj, minutes, grams].forEach(ordered));
  });

  it('takes nothing for no water, and for water that is hot enough', () => {
    whereReached((input) => {
      for (const nothing of [{ massKg: 0 }, { fromC: input.toC }]) {
        const heating = heat({ ...input, ...nothing }) as Reached;
        expect(heating).toMatchObject({ reaches: true, waterKj: 0 });
        for (const range of [heating.energyKj, heating.minutes, heating.grams])
          expect(range).toEqual({ low: 0, likely: 0, high: 0 });
      }
    });
  });

  it('takes nothing but the water’s own heat where nothing is lost', () => {
    whereReached((input) => {
      const heating = heat({ ...input, surfaceM2: 0, wallM2: 0 }) as Reached;
      expect(heating.waterKj).toBeCloseTo(
        (input.massKg * (enthalpyJPerKg(input.toC) - enthalpyJPerKg(input.fromC))) / 1000,
        6,
      );
      for (const end of ENDS) expect(heating.lostKj[end]).toBeCloseTo(0, 6);
    });
  });

  it('takes the time that small steps of a second’s order add up to', () => {
    fc.assert(
      fc.property(heatings, (input) => {
        const heating = heat(input);
        if (!heating.reaches || input.massKg < 0.01 || input.toC - input.fromC < 1) return;
        const flameW = (input.powerW.likely * input.efficiency.likely) / WIND_FACTORS[input.wind].fuel.likely;
        // A flame that barely wins takes steps without end.
        if (flameW < 1.3 * potLossW(input, input.toC)) return;
        const step = (heating.minutes.likely * 60) / 2000;
        let [tC, seconds] = [input.fromC, 0];
        while (tC < input.toC && seconds < 2 * 2000 * step) {
          tC += ((flameW - potLossW(input, tC)) * step) / (input.massKg * heatCapacityJPerKgK(tC));
          seconds += step;
        }
        expect(seconds / 60 / heating.minutes.likely).toBeCloseTo(1, 2);
      }),
    );
  });

  const dearer = (input: HeatingInput, cheap: Reached, change: Partial<HeatingInput>): void => {
    const dear = heat({ ...input, ...change });
    if (!dear.reaches) return;
    for (const end of ENDS) {
      atLeast(dear.energyKj[end], cheap.energyKj[end]);
      atLeast(dear.minutes[end], cheap.minutes[end]);
      atLeast(dear.grams[end], cheap.grams[end]);
    }
  };

  it('costs no less from a wider surface, a larger wall, without a lid, for more water and from colder', () => {
    whereReached((input, cheap) => {
      dearer(input, cheap, { surfaceM2: input.surfaceM2 * 1.2 });
      dearer(input, cheap, { wallM2: input.wallM2 * 1.2 });
      dearer(input, cheap, { lid: false });
      dearer(input, cheap, { massKg: input.massKg * 1.1 });
    });
  });

  it('costs no less likely in more wind and from colder water', () => {
    whereReached((input, cheap) => {
      for (const change of [{ wind: 'windy' }, { fromC: input.fromC * 0.9 }] as const) {
        const dear = heat({ ...input, ...change });
        if (dear.reaches) atLeast(dear.grams.likely, cheap.grams.likely);
      }
    });
  });

  it('a stall is where the loss eats the flame', () => {
    let stalls = 0;
    fc.assert(
      fc.property(heatings, ranges(50, 150), (hot, powerW) => {
        const input = { ...hot, powerW, surfaceM2: hot.surfaceM2 + 0.02 };
        const heating = heat(input);
        if (heating.reaches) return;
        stalls++;
        const flameW = (input.powerW.likely * input.efficiency.likely) / WIND_FACTORS[input.wind].fuel.likely;
        expect(potLossW(input, heating.stallsC)).toBeCloseTo(flameW, 3);
      }),
      { numRuns: 300 },
    );
    expect(stalls).toBeGreaterThan(10);
  });
});

describe('holding', () => {
  const holdings = fc.record({ minutes: number(0, 600), atC: number(0, 102) });

  it('gives back what the pot loses, in order, and steam only from an open pot', () => {
    fc.assert(
      fc.property(heatings, holdings, (input, { minutes, atC }) => {
        const { energyKj, grams, steamKg } = hold({ ...input, minutes, atC });
        expect(energyKj).toBeCloseTo((potLossW(input, atC) * minutes * 60) / 1000, 6);
        ordered(grams);
        expect(steamKg).toBeGreaterThanOrEqual(0);
        if (input.lid) expect(steamKg).toBe(0);
      }),
    );
  });
});

describe('the loss of a surface', () => {
  it('rises with the temperature, and an open one loses no less than a dry one', () => {
    fc.assert(
      fc.property(number(0, 105), number(0, 105), (a, b) => {
        const [cold, hot] = [Math.min(a, b), Math.max(a, b)];
        expect(openSurfaceLossWPerM2(hot)).toBeGreaterThanOrEqual(openSurfaceLossWPerM2(cold));
        expect(drySurfaceLossWPerM2(hot)).toBeGreaterThanOrEqual(drySurfaceLossWPerM2(cold));
        expect(openSurfaceLossWPerM2(a)).toBeGreaterThanOrEqual(drySurfaceLossWPerM2(a));
      }),
    );
  });
});

describe('melting', () => {
  const meltings: fc.Arbitrary<MeltingInput> = fc.record({
    litres: number(0, 100),
    roomMl: number(200, 20_000),
    starterMl: number(10, 150),
    snowKgPerM3: ranges(40, 600),
    snowC: number(-60, 0),
    powerW: ranges(50, 20_000),
    efficiency: ranges(0.01, 1),
    lowerHeatingValueJPerKg: number(10e6, 50e6),
    wind: winds,
  });

  it('keeps low ≤ likely ≤ high, finite and not below zero', () => {
    fc.assert(
      fc.property(meltings, (input) => {
        const { loads, energyKj, minutes, grams } = meltSnow(input);
        [loads, energyKj, minutes, grams].forEach(ordered);
      }),
    );
  });

  it('takes the heat of the snow, and the fuel that gives it', () => {
    fc.assert(
      fc.property(meltings, (input) => {
        const { energyKj, grams, minutes } = meltSnow(input);
        const snowKj = (input.litres * 0.99984 * meltingHeatJPerKg(input.snowC)) / 1000;
        expect(Math.abs(energyKj.likely - snowKj)).toBeLessThanOrEqual(1e-5 * snowKj + 1e-12);
        const share = input.efficiency.likely / WIND_FACTORS[input.wind].fuel.likely;
        const fuelKj = (grams.likely * input.lowerHeatingValueJPerKg * share) / 1e6;
        same(fuelKj, energyKj.likely);
        const flameKj = (input.powerW.likely * share * minutes.likely * 60) / 1000;
        same(flameKj, energyKj.likely);
      }),
    );
  });

  it('takes more loads of lighter snow, of a smaller pot, and of more starter', () => {
    fc.assert(
      fc.property(meltings, (input) => {
        const { loads } = meltSnow(input);
        const lighter = {
          low: input.snowKgPerM3.low * 0.9,
          likely: input.snowKgPerM3.likely * 0.9,
          high: input.snowKgPerM3.high * 0.9,
        };
        for (const change of [
          { snowKgPerM3: lighter },
          { roomMl: input.roomMl * 0.99 },
          { starterMl: input.starterMl * 1.1 },
        ])
          for (const end of ENDS) atLeast(meltSnow({ ...input, ...change }).loads[end], loads[end]);
      }),
    );
  });

  it('takes nothing for no water', () => {
    fc.assert(
      fc.property(meltings, (input) => {
        const none = { low: 0, likely: 0, high: 0 };
        expect(meltSnow({ ...input, litres: 0 })).toEqual({ loads: none, energyKj: none, minutes: none, grams: none });
      }),
    );
  });
});

describe('every stove', () => {
  it('has ordered ranges that heat admits, and a wider base never does worse', () => {
    fc.assert(
      fc.property(sources, number(20, 1000), number(20, 1000), (source, a, b) => {
        const [slim, wide] = [burnerFor(source, Math.min(a, b)), burnerFor(source, Math.max(a, b))];
        ordered(slim.powerW);
        ordered(slim.efficiency);
        for (const end of ENDS) expect(wide.efficiency[end]).toBeGreaterThanOrEqual(slim.efficiency[end]);
        const unknown = burnerFor(source).efficiency;
        ordered(unknown);
        expect(unknown.low).toBeLessThanOrEqual(slim.efficiency.low);
        expect(unknown.high).toBeGreaterThanOrEqual(wide.efficiency.high);
        expect(fuelHeatingValueJPerKg(slim.fuel)).toBeGreaterThan(10e6);
      }),
    );
  });
});
