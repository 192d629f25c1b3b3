import { solveRising } from './numeric.js';
import { assertWithin } from './range.js';
import { densityKgPerM3 } from './water.js';

/** Depth, mm, under which a film of water is none. */
const LEAST_FILL_MM = 0.01;

const rad = (degrees: number): number => (degrees * Math.PI) / 180;
const deg = (radians: number): number => (radians * 180) / Math.PI;

/**
 * Centroid of the liquid in a tilted cylinder, in the pot's own frame: x from the axis towards the low side, z above the base, mm.
 * Surface clear of the base: x = r² tan a/(4h), z = h/2 + r² tan² a/(8h); where part of the base falls dry, the wedge left on the
 * low side. Exact; the pot is taken as tall enough not to spill.
 * Geometry of the obliquely truncated cylinder.
 * @param radiusMm 1 to 1000. @param fillMm depth when upright, 0.01 to 2000. @param tiltDeg 0 to 89.
 */
export function liquidCentroid(
  radiusMm: number,
  fillMm: number,
  tiltDeg: number,
): { readonly xMm: number; readonly zMm: number } {
  assertWithin('The radius', radiusMm, 1, 1000, ' mm');
  assertWithin('The fill height', fillMm, LEAST_FILL_MM, 2000, ' mm');
  assertWithin('The tilt', tiltDeg, 0, 89, '°');
  const slope = Math.tan(rad(tiltDeg));
  const rise = virtualRiseMm(radiusMm, fillMm);
  if (slope * radiusMm <= fillMm) return { xMm: rise * slope, zMm: fillMm / 2 + (rise * slope ** 2) / 2 };
  // V = r³ tan a × wedge = π r² h.
  const wet = solveRising((phi) => wedgeMoments(phi).volume, (Math.PI * fillMm) / (radiusMm * slope), 0, Math.PI);
  const { volume, x, z } = wedgeMoments(wet);
  return { xMm: (radiusMm * x) / volume, zMm: (radiusMm * slope * z) / volume };
}

interface Moments {
  readonly volume: number;
  readonly x: number;
  readonly z: number;
}

/**
 * Volume and moments of the wedge under the plane z = x − cos φ over the part x > cos φ of the unit circle,
 * from the integrals of 2√(1 − x²) times 1, x and x².
 */
function wedgeMoments(phi: number): Moments {
  const x0 = Math.cos(phi);
  const s0 = phi - Math.sin(phi) * Math.cos(phi);
  const s1 = (2 / 3) * Math.sin(phi) ** 3;
  const s2 = phi / 4 - Math.sin(4 * phi) / 16;
  return { volume: s1 - x0 * s0, x: s2 - x0 * s1, z: (s2 - 2 * x0 * s1 + x0 ** 2 * s0) / 2 };
}

/**
 * How much a free round surface raises the centre of a liquid that can run, mm: I/V = r²/(4h), whatever the liquid weighs.
 * Ship Stability for Masters and Mates, "free surface". @param radiusMm 1 to 1000. @param fillMm 0.01 to 2000.
 */
export function virtualRiseMm(radiusMm: number, fillMm: number): number {
  assertWithin('The radius', radiusMm, 1, 1000, ' mm');
  assertWithin('The fill height', fillMm, LEAST_FILL_MM, 2000, ' mm');
  return radiusMm ** 2 / (4 * fillMm);
}

/**
 * How far from the axis a pot tips, mm: over the line between two neighbours of n supports on a circle, R cos(π/n).
 * Two supports hold along one line only: nothing sideways.
 * @param circleRadiusMm 0 to 1000. @param supports 2 to 12, whole.
 */
export function supportRadiusMm(circleRadiusMm: number, supports: number): number {
  assertWithin('The circle of the supports', circleRadiusMm, 0, 1000, ' mm');
  assertWithin('The number of supports', supports, 2, 12);
  if (!Number.isInteger(supports)) throw new RangeError(`The number of supports is ${supports}: they come whole.`);
  return supports === 2 ? 0 : circleRadiusMm * Math.cos(Math.PI / supports);
}

export interface TipInput {
  /** Inside radius at the waterline, mm, 1 to 1000. */
  readonly radiusMm: number;
  /** Depth of the water, mm, 0 to 2000; under 0.01 it is none. */
  readonly fillMm: number;
  /** From the axis to the edge it tips over, mm, 0 to 1000. */
  readonly edgeMm: number;
  /** Height of the pot's base above that edge, mm, 0 to 2000; 0 where left out. */
  readonly standMm?: number;
  /** The pot itself, kg, 0 to 100; 0 where left out. */
  readonly potMassKg?: number;
  /** Centre of the pot itself above its base, mm, 0 to 2000; half the fill height where left out. */
  readonly potCentreMm?: number;
}

/**
 * Tilt at which a standing pot tips over, °: where the centre of pot and water stands over the edge,
 * x + (z + stand) tan a = edge. The water runs to the low side as it tilts (`liquidCentroid`) and stays in the pot:
 * where `spillAngleDeg` is less, it spills first. A tapered pot is taken as a cylinder.
 * @returns 0 to 89; 89 where it does not tip before.
 */
export function tipAngleDeg(input: TipInput): number {
  const { radiusMm, fillMm, edgeMm, standMm = 0, potMassKg = 0, potCentreMm = fillMm / 2 } = input;
  assertWithin('The radius', radiusMm, 1, 1000, ' mm');
  assertWithin('The fill height', fillMm, 0, 2000, ' mm');
  assertWithin('The tipping edge', edgeMm, 0, 1000, ' mm');
  assertWithin('The stand', standMm, 0, 2000, ' mm');
  assertWithin('The mass of the pot', potMassKg, 0, 100, ' kg');
  assertWithin('The centre of the pot', potCentreMm, 0, 2000, ' mm');
  const wet = fillMm >= LEAST_FILL_MM;
  const waterKg = wet ? waterMassKg(radiusMm, fillMm) : 0;
  const totalKg = waterKg + potMassKg;
  if (totalKg === 0) throw new RangeError('The pot and the water weigh 0 kg: nothing is there to tip.');
  const centreOver = (tiltDeg: number): number => {
    const water = wet ? liquidCentroid(radiusMm, fillMm, tiltDeg) : { xMm: 0, zMm: 0 };
    const x = (waterKg * water.xMm) / totalKg;
    const z = (waterKg * water.zMm + potMassKg * potCentreMm) / totalKg;
    return x + (z + standMm) * Math.tan(rad(tiltDeg));
  };
  return solveRising(centreOver, edgeMm, 0, 89);
}

/**
 * Tilt at which the water reaches the rim of a round pot, °: atan((H − h)/r) while the base stays covered; of less than half a
 * pot, the wedge of the same volume that touches the rim. A tapered pot is taken as a cylinder.
 * @param rimMm diameter, 2 to 2000. @param heightMm 1 to 2000. @param fillMm 0 to the height.
 * @returns 0 to 90; 90 for an empty pot.
 */
export function spillAngleDeg(pot: {
  readonly rimMm: number;
  readonly heightMm: number;
  readonly fillMm: number;
}): number {
  const { rimMm, heightMm, fillMm } = pot;
  assertWithin('The rim diameter', rimMm, 2, 2000, ' mm');
  assertWithin('The height', heightMm, 1, 2000, ' mm');
  assertWithin('The fill height', fillMm, 0, heightMm, ' mm');
  const radiusMm = rimMm / 2;
  if (2 * fillMm >= heightMm) return deg(Math.atan((heightMm - fillMm) / radiusMm));
  if (fillMm === 0) return 90;
  const filledShare = (phi: number): number => wedgeMoments(phi).volume / (Math.PI * (1 - Math.cos(phi)));
  const wet = solveRising(filledShare, fillMm / heightMm, 0, Math.PI);
  return deg(Math.atan(heightMm / (radiusMm * (1 - Math.cos(wet)))));
}

export interface HungInput {
  /** Height of the bail's ears above the base, mm, 0 to 3000. */
  readonly earMm: number;
  /** Depth of the water, mm, 0.01 to 2000. */
  readonly fillMm: number;
  /** Inside radius at the waterline, mm, 1 to 1000. */
  readonly radiusMm: number;
  /** The pot itself, kg, 0 to 100; 0 where left out. */
  readonly potMassKg?: number;
  /** Centre of the pot itself above its base, mm, 0 to 2000; half the fill height where left out. */
  readonly potCentreMm?: number;
}

/**
 * How far below the bail's ears the pot's weight acts when it swings a little, mm: (e − h/2) − r²/(4h) for the water, its free
 * surface counted; e − centre for the pot; together by mass. At 0 or less it turns over.
 * Ship Stability for Masters and Mates, "free surface", with the axis in the ears.
 */
export function hungMetacentricMm(input: HungInput): number {
  const { earMm, fillMm, radiusMm, potMassKg = 0, potCentreMm = fillMm / 2 } = input;
  assertWithin('The height of the ears', earMm, 0, 3000, ' mm');
  const waterMm = earMm - fillMm / 2 - virtualRiseMm(radiusMm, fillMm);
  assertWithin('The mass of the pot', potMassKg, 0, 100, ' kg');
  assertWithin('The centre of the pot', potCentreMm, 0, 2000, ' mm');
  const waterKg = waterMassKg(radiusMm, fillMm);
  return (waterKg * waterMm + potMassKg * (earMm - potCentreMm)) / (waterKg + potMassKg);
}

/** Water of 20 °C in a cylinder, kg. */
function waterMassKg(radiusMm: number, fillMm: number): number {
  return Math.PI * radiusMm ** 2 * fillMm * 1e-9 * densityKgPerM3(20);
}
