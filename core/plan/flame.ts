import type { HeatSource } from '../data/stoves.js';
import { valueOf } from '../model/given.js';
import type { FuelType, GasMix } from '../model/item.js';
import type { Fuel, Kit, Stove, Vessel } from '../model/kit.js';
import type { Assumption } from '../model/finding.js';
import { phrase } from '../model/phrase.js';
import type { SourceId } from '../model/source.js';
import type { GroundedTrip, Wind } from '../model/trip.js';
import { burnerFor } from '../physics/burner.js';
import { fuelHeatingValueJPerKg } from '../physics/fuel.js';
import type { Flame, PotSurfaces } from '../physics/heating.js';
import { surfaceM2, wetWallM2 } from '../physics/vessel.js';
import { countOf, type Party } from './count.js';
import { fuelsFor } from './fuel.js';
import { same } from './ranges.js';

/** What burns under the pot, and what of it is assumed. */
export interface Heat extends Flame {
  readonly fuel: FuelType;
  readonly cites: readonly SourceId[];
}

/** A flame that pots can stand over. */
export interface Burner {
  /** Index in `kit.stoves`; null for an open fire. */
  readonly stove: number | null;
  readonly source: HeatSource;
  readonly burns: FuelType;
  /** Pots that it heats at once, over all stoves of its line. */
  readonly places: number;
  readonly assumptions: readonly Assumption[];
}

const GUESS: HeatSource = 'gas';
/** Pots that stand or hang over one fire at once; common practice, no source. */
const FIRE_PLACES = 3;

/**
 * The flames that there are, the main one first: the one with most heat in its fuel, whatever its line. A fire that is told comes alone. A stove
 * has a flame where its fuel is carried; where no stove has, each is taken as one with its fuel, and the check of the fuel says so.
 */
export function burnersOf(kit: Kit, trip: GroundedTrip, party: Party): readonly Burner[] {
  const { stoves, fuels } = kit;
  if (valueOf(trip.cookAt) === 'fire') {
    // A fire that is only supposed, for want of a stove, counts for no more than the stove would.
    const places = trip.cookAt.grounds === 'assumed' ? 1 : FIRE_PLACES;
    return [{ stove: null, source: 'fire', burns: 'wood', places, assumptions: [powerGuess()] }];
  }
  const all = stoves.map((stove, index) => ({ ...burnerOf(stove, index, kit, party), stove: index }));
  const fuelled = all.filter(({ burns }) => burns === 'wood' || fuelsFor(fuels, burns).length > 0);
  const lit = fuelled.length === 0 ? all : fuelled;
  return lit
    .map((burner) => ({ burner, heat: heatCarried(fuels, burner.burns, party), watts: wattsOf(burner, kit) }))
    .sort((a, b) => b.heat - a.heat || b.watts - a.watts || a.burner.stove - b.burner.stove)
    .map(({ burner }) => burner);
}

/** Watts that reach a pot, likely. */
function wattsOf({ stove, source }: Burner, { stoves }: Kit): number {
  const { powerW, efficiency } = burnerFor(source);
  return ((stove === null ? undefined : valueOf(stoves[stove]!.powerW)) ?? powerW.likely) * efficiency.likely;
}

function burnerOf(stove: Stove, index: number, kit: Kit, party: Party): Burner {
  const told = valueOf(stove.type) ?? fuelOfUnknown(kit, party);
  const source = told ?? GUESS;
  return {
    stove: index,
    source,
    burns: burnerFor(source).fuel,
    places: stove.places * countOf(stove, party),
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
      ...(stove.powerW.grounds === 'missing' ? [powerGuess()] : []),
    ],
  };
}

/** What a stove of unknown kind burns: a fuel that no other stove does, that with most heat. */
function fuelOfUnknown({ stoves, fuels }: Kit, party: Party): FuelType | undefined {
  const known = new Set(stoves.flatMap(({ type }) => (type.grounds === 'missing' ? [] : [burnerFor(type.value).fuel])));
  const types = [...new Set(fuels.flatMap(({ type }) => (type.grounds === 'missing' ? [] : [type.value])))];
  const idle = types.filter((type) => !known.has(type));
  return (idle.length > 0 ? idle : types)
    .map((type) => ({ type, heat: heatCarried(fuels, type, party) }))
    .sort((a, b) => b.heat - a.heat)[0]?.type;
}

function powerGuess(): Assumption {
  return assumption(
    phrase`the power of the flame`,
    phrase`no power is given: the range of its kind is taken`,
    phrase`give the watts`,
  );
}

/** J in the fuel carried for a flame. Wood, which is found on the way, comes last; an amount that is not known counts as a full can. */
function heatCarried(fuels: readonly Fuel[], burns: FuelType, party: Party): number {
  if (burns === 'wood') return 0;
  const grams = fuelsFor(fuels, burns).reduce(
    (sum, fuel) => sum + (valueOf(fuel.netG) ?? 200) * countOf(fuel, party),
    0,
  );
  return Math.max(grams, 1e-6) * fuelHeatingValueJPerKg(burns, mixOf(fuels));
}

/** The flame under a pot. */
export function heatUnder(burner: Burner, pot: Vessel, kit: Kit, wind: Wind): Heat {
  const { fuel, powerW, efficiency, cites } = burnerFor(burner.source, baseOf(pot));
  const stove = burner.stove === null ? undefined : kit.stoves[burner.stove];
  const stated = stove && valueOf(stove.powerW);
  return {
    fuel,
    powerW: stated === undefined ? powerW : same(stated),
    efficiency,
    lowerHeatingValueJPerKg: fuelHeatingValueJPerKg(fuel, mixOf(kit.fuels)),
    wind,
    cites,
  };
}

/** The mix of the gas, where all that name one name the same. */
export function mixOf(fuels: readonly Fuel[]): GasMix | undefined {
  const mixes = [...new Set(fuels.flatMap(({ mix }) => (mix.grounds === 'missing' ? [] : [mix.value])))];
  return mixes.length === 1 ? mixes[0] : undefined;
}

function assumption(what: string, because: string, replaceWith: string): Assumption {
  return { what, because, replaceWith };
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
