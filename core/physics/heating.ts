import { WIND_FACTORS } from '../data/stoves.js';
import type { Range } from '../model/finding.js';
import type { Wind } from '../model/trip.js';
import { solveRising } from './numeric.js';
import { assertWithin } from './range.js';
import { drySurfaceLossWPerM2, evaporationLossWPerM2, openSurfaceLossWPerM2 } from './surface-loss.js';
import { enthalpyJPerKg, latentHeatVaporisationJPerKg } from './water.js';

/** A flame under a pot. */
export interface Flame {
  /** Heat of the burning fuel, W, 1 to 100 000, on the lower heating value. */
  readonly powerW: Range;
  /** Share of it that ends up in a lidded pot in still air, above 0, to 1. */
  readonly efficiency: Range;
  /** Lower heating value of the fuel, J/kg, 1 to 60 million. */
  readonly lowerHeatingValueJPerKg: number;
  readonly wind: Wind;
}

/** The pot's surfaces that lose heat. */
export interface PotSurfaces {
  /** Free surface of the water, m², 0 to 5. */
  readonly surfaceM2: number;
  /** Wall in touch with the water, m², 0 to 10. */
  readonly wallM2: number;
  readonly lid: boolean;
}

export interface HeatingInput extends Flame, PotSurfaces {
  /** Water in the pot, kg, 0 to 1000. */
  readonly massKg: number;
  /** °C, 0 to 105. */
  readonly fromC: number;
  /** °C, `fromC` to 105. */
  readonly toC: number;
}

/** The water gets there: what it takes. Or the flame is too weak: where it stalls. */
export type Heating =
  | {
      readonly reaches: true;
      /** What the water takes up, kJ; the same however it is heated. */
      readonly waterKj: number;
      /** What the pot loses to the air on the way, kJ. */
      readonly lostKj: Range;
      /** What the flame has to put into the pot, kJ: both together. */
      readonly energyKj: Range;
      readonly minutes: Range;
      /** Fuel, g. */
      readonly grams: Range;
      /** Where the weakest flame of the range stalls, °C; null where it gets there too. */
      readonly weakestStallsC: number | null;
    }
  | { readonly reaches: false; readonly stallsC: number };

/** How many times the likely time a flame may take and still count. */
const PATIENCE = 3;

/** Steps of temperature in one heating. */
const STEPS = 60;

/**
 * Heats water: an energy balance over time. Into the pot goes power × efficiency ÷ wind; out goes the loss of the surface and
 * the wall at each temperature (`surface-loss`); the rest warms the water, time = ∫ dH/(P η − loss).
 * A lid keeps evaporation in: the surface then loses what a dry one does. Wind multiplies the fuel (`cp-wind-factor`) and the
 * loss of the surface. The efficiencies are of lidded pots, so a little of the wall's loss is counted twice: some 3 % on gas.
 *
 * low: strongest flame, best efficiency, least wind factor. high: the other way round; where that flame stalls or takes over three
 * times as long as the likely one, the weakest flame between the two that does not: nobody waits longer.
 * @throws RangeError outside the limits named at each field.
 */
export function heat(input: HeatingInput): Heating {
  assertHeating(input);
  const { massKg, fromC, toC, efficiency, powerW } = input;
  const wind = WIND_FACTORS[input.wind];
  const lossW = (tC: number): number => potLossW(input, tC);
  const finalLossW = lossW(toC);

  const share = divided(efficiency, wind.fuel);
  const flame = (end: keyof Range): Fire => ({ watts: powerW[end], share: share[end] });
  const [weak, usual, strong] = [flame('low'), flame('likely'), flame('high')];
  if (intoPotW(usual) <= finalLossW) return { reaches: false, stallsC: stallsAt(lossW, intoPotW(usual), toC) };

  const way = wayOf(massKg, fromC, toC, lossW);
  const { waterJ } = way;
  const run = (fire: Fire): Run => warm(way, fire);
  const likely = run(usual);
  const patient = (fire: Fire): boolean =>
    intoPotW(fire) > finalLossW && run(fire).seconds <= PATIENCE * likely.seconds;
  const quick = run(strong);
  const slow = run(patient(weak) ? weak : weakestBetween(weak, usual, patient));
  const each = (value: (run: Run) => number): Range => ({
    low: value(quick),
    likely: value(likely),
    high: value(slow),
  });
  return {
    reaches: true,
    waterKj: waterJ / 1000,
    lostKj: each(({ lostJ }) => lostJ / 1000),
    energyKj: each(({ lostJ }) => (waterJ + lostJ) / 1000),
    minutes: each(({ seconds }) => seconds / 60),
    grams: each(({ lostJ, fire }) => (1000 * (waterJ + lostJ)) / (fire.share * input.lowerHeatingValueJPerKg)),
    weakestStallsC: intoPotW(weak) <= finalLossW ? stallsAt(lossW, intoPotW(weak), toC) : null,
  };
}

/** One flame out of the range: its power and the share of it that the pot gets, wind counted. */
interface Fire {
  readonly watts: number;
  readonly share: number;
}

interface Run {
  readonly fire: Fire;
  readonly seconds: number;
  readonly lostJ: number;
}

function intoPotW({ watts, share }: Fire): number {
  return watts * share;
}

/** The flame nearest to the weak one, on the way to the strong one, that still passes; the strong one does. */
function weakestBetween(weak: Fire, strong: Fire, passes: (fire: Fire) => boolean): Fire {
  const at = (part: number): Fire => ({
    watts: weak.watts + part * (strong.watts - weak.watts),
    share: weak.share + part * (strong.share - weak.share),
  });
  let [fails, holds] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const middle = (fails + holds) / 2;
    if (passes(at(middle))) holds = middle;
    else fails = middle;
  }
  return at(holds);
}

export interface HoldingInput extends Flame, PotSurfaces {
  /** °C, 0 to 105. */
  readonly atC: number;
  /** 0 to 1440. */
  readonly minutes: number;
}

/**
 * Keeps water hot: the flame turned down to what the pot loses. A real burner does not turn down that far on every pot, so this
 * is the least. Steam leaves an open pot by the evaporation of `surface-loss`; under a lid none is counted.
 * @throws RangeError outside the limits named at each field.
 */
export function hold(input: HoldingInput): {
  readonly energyKj: number;
  readonly grams: Range;
  readonly steamKg: number;
} {
  assertFlame(input);
  assertSurfaces(input);
  assertWithin('The time', input.minutes, 0, 1440, ' min');
  const wind = WIND_FACTORS[input.wind];
  const seconds = input.minutes * 60;
  const energyJ = potLossW(input, input.atC) * seconds;
  const steamW = input.lid ? 0 : input.surfaceM2 * wind.surface * evaporationLossWPerM2(input.atC);
  return {
    energyKj: energyJ / 1000,
    grams: fuelGrams(
      { low: energyJ, likely: energyJ, high: energyJ },
      divided(input.efficiency, wind.fuel),
      input.lowerHeatingValueJPerKg,
    ),
    steamKg: (steamW * seconds) / latentHeatVaporisationJPerKg(input.atC),
  };
}

/** W that a pot of water at a temperature loses to the air. @param tC 0 to 105 °C. */
export function potLossW(pot: PotSurfaces & { readonly wind: Wind }, tC: number): number {
  const dry = drySurfaceLossWPerM2(tC);
  const surface = pot.lid ? dry : openSurfaceLossWPerM2(tC);
  return pot.surfaceM2 * WIND_FACTORS[pot.wind].surface * surface + pot.wallM2 * dry;
}

/** Fuel for heat into the pot, g: least energy at the best share, most at the worst. */
export function fuelGrams(energyJ: Range, share: Range, lowerHeatingValueJPerKg: number): Range {
  const grams = (joules: number, part: number): number => (1000 * joules) / (part * lowerHeatingValueJPerKg);
  return {
    low: grams(energyJ.low, share.high),
    likely: grams(energyJ.likely, share.likely),
    high: grams(energyJ.high, share.low),
  };
}

/** A share with the wind on it: the worst of one by the worst of the other. */
export function divided(share: Range, by: Range): Range {
  return { low: share.low / by.high, likely: share.likely / by.likely, high: share.high / by.low };
}

/** Refuses a flame that is none. */
export function assertFlame(flame: Flame): void {
  assertRange('The power', flame.powerW, 1, 100_000, ' W');
  assertRange('The efficiency', flame.efficiency, 0.001, 1, '');
  assertWithin('The lower heating value', flame.lowerHeatingValueJPerKg, 1e6, 60e6, ' J/kg');
}

function assertRange(what: string, range: Range, least: number, most: number, unit: string): void {
  assertWithin(`${what} (low)`, range.low, least, most, unit);
  assertWithin(`${what} (likely)`, range.likely, range.low, most, unit);
  assertWithin(`${what} (high)`, range.high, range.likely, most, unit);
}

function assertSurfaces(pot: PotSurfaces): void {
  assertWithin('The surface', pot.surfaceM2, 0, 5, ' m²');
  assertWithin('The wall', pot.wallM2, 0, 10, ' m²');
}

function assertHeating(input: HeatingInput): void {
  assertFlame(input);
  assertSurfaces(input);
  assertWithin('The water', input.massKg, 0, 1000, ' kg');
  assertWithin('The end of heating', input.toC, 0, 105, ' °C');
  assertWithin('The start of heating', input.fromC, 0, input.toC, ' °C');
}

/** The way from one temperature to another in steps, the same for every flame. */
interface Way {
  readonly steps: readonly { readonly gainedJ: number; readonly startLossW: number; readonly endLossW: number }[];
  /** What the water takes up on all of it. */
  readonly waterJ: number;
}

function wayOf(massKg: number, fromC: number, toC: number, lossW: (tC: number) => number): Way {
  const steps: Way['steps'][number][] = [];
  let [startJ, startLossW] = [massKg * enthalpyJPerKg(fromC), lossW(fromC)];
  const beginJ = startJ;
  for (let i = 1; i <= STEPS; i++) {
    const endC = i === STEPS ? toC : fromC + ((toC - fromC) * i) / STEPS;
    const [endJ, endLossW] = [massKg * enthalpyJPerKg(endC), lossW(endC)];
    steps.push({ gainedJ: endJ - startJ, startLossW, endLossW });
    [startJ, startLossW] = [endJ, endLossW];
  }
  return { steps, waterJ: startJ - beginJ };
}

/** Time and loss on the way, with a flame stronger than the loss at its end; within a step the loss rises evenly. */
function warm({ steps, waterJ }: Way, fire: Fire): Run {
  const inW = intoPotW(fire);
  let seconds = 0;
  for (const { gainedJ, startLossW, endLossW } of steps)
    seconds += gainedJ / logarithmicMean(inW - startLossW, inW - endLossW);
  return { fire, seconds, lostJ: inW * seconds - waterJ };
}

/** What a rate that falls evenly from a to b amounts to: (a − b)/ln(a/b). The time grows without end as b goes to 0. */
function logarithmicMean(a: number, b: number): number {
  return a - b < 1e-6 * a ? (a + b) / 2 : (a - b) / Math.log(a / b);
}

function stallsAt(lossW: (tC: number) => number, intoPotW: number, toC: number): number {
  return solveRising(lossW, intoPotW, 0, toC);
}
