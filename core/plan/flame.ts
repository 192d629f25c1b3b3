import type { HeatSource } from '../data/stoves.js';
import { valueOf } from '../model/given.js';
import type { FuelType } from '../model/item.js';
import type { Kit, Vessel } from '../model/kit.js';
import type { Assumption, Range } from '../model/finding.js';
import { phrase } from '../model/phrase.js';
import type { SourceId } from '../model/source.js';
import type { GroundedTrip } from '../model/trip.js';
import { burnerFor } from '../physics/burner.js';
import { fuelHeatingValueJPerKg } from '../physics/fuel.js';
import type { Flame, PotSurfaces } from '../physics/heating.js';
import { surfaceM2, wetWallM2 } from '../physics/vessel.js';

/** What burns under the pot, and what of it is assumed. */
export interface Heat extends Flame {
  readonly fuel: FuelType;
  readonly cites: readonly SourceId[];
  readonly assumptions: readonly Assumption[];
}

const GUESS: HeatSource = 'gas';

/** The open fire, or the first stove; one of unknown kind burns what fuel is carried. Undefined where nothing tells its kind, null where there is neither. */
function toldSource(kit: Kit, trip: GroundedTrip): HeatSource | undefined | null {
  const stove = kit.stoves[0];
  if (valueOf(trip.cookAt) === 'fire') return 'fire';
  if (stove === undefined) return null;
  return valueOf(stove.type) ?? kit.fuels.map((fuel) => valueOf(fuel.type)).find((type) => type);
}

/** What burns under the pot; null where they cook at no fire and no stove. */
export function burns(kit: Kit, trip: GroundedTrip): FuelType | null {
  const told = toldSource(kit, trip);
  return told === null ? null : burnerFor(told ?? GUESS).fuel;
}

/** The flame under a pot; gas is assumed where nothing tells what the stove burns. */
export function heatUnder(kit: Kit, trip: GroundedTrip, pot: Vessel): Heat | null {
  const told = toldSource(kit, trip);
  if (told === null) return null;
  const { fuel, powerW, efficiency, cites } = burnerFor(told ?? GUESS, baseOf(pot));
  const stove = told === 'fire' ? undefined : kit.stoves[0];
  const stated = stove && valueOf(stove.powerW);
  const mix = kit.fuels.map((can) => valueOf(can.mix)).find((name) => name);
  return {
    fuel,
    powerW: stated === undefined ? powerW : same(stated),
    efficiency,
    lowerHeatingValueJPerKg: fuelHeatingValueJPerKg(fuel, mix),
    wind: valueOf(trip.wind) ?? 'breeze',
    cites,
    assumptions: [
      ...(told !== undefined
        ? []
        : [
            assumption(
              phrase`a gas stove`,
              phrase`the list does not say what the stove burns`,
              phrase`name the kind of stove`,
            ),
          ]),
      ...(stated === undefined
        ? [
            assumption(
              phrase`the power of the flame`,
              phrase`no power is given: the range of its kind is taken`,
              phrase`give the watts`,
            ),
          ]
        : []),
    ],
  };
}

function assumption(what: string, because: string, replaceWith: string): Assumption {
  return { what, because, replaceWith };
}

export function same(value: number): Range {
  return { low: value, likely: value, high: value };
}

/** mm, inside what the burner rows admit; undefined where nothing is said. */
function baseOf(pot: Vessel): number | undefined {
  const base = valueOf(pot.baseDiameterMm) ?? valueOf(pot.diameterMm);
  return base === undefined || base < 20 || base > 1000 ? undefined : base;
}

/** The surfaces of a fill; a pot without dimensions is taken as wide as it is tall. */
export function surfacesOf(pot: Vessel, capacityMl: number, fillMl: number): PotSurfaces {
  const cube = Math.cbrt((4000 * capacityMl) / Math.PI);
  const rimMm = valueOf(pot.diameterMm) ?? cube;
  // Stated sizes may contradict each other; the label check says so, and the surfaces stay those of a vessel.
  const heightMm = Math.min(2000, Math.max(1, valueOf(pot.heightMm) ?? (4000 * capacityMl) / (Math.PI * rimMm ** 2)));
  const shape = { kind: 'round', rimMm, baseMm: rimMm, heightMm } as const;
  const fillMm = Math.min(heightMm, (heightMm * fillMl) / capacityMl);
  return { surfaceM2: surfaceM2(shape, fillMm), wallM2: wetWallM2(shape, fillMm), lid: valueOf(pot.lid) ?? false };
}
