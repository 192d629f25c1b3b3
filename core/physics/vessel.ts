import { solveRising } from './numeric.js';
import { assertWithin } from './range.js';

/** A round vessel whose wall is straight and may flare, with a rounded edge between base and wall; or a rectangular tin. */
export type VesselShape =
  | {
      readonly kind: 'round';
      /** Diameter at the rim, mm. */
      readonly rimMm: number;
      /** Diameter at the base, measured where wall and base would meet, mm. */
      readonly baseMm: number;
      readonly heightMm: number;
      /** Radius of the rounded edge of the base, mm; 0 where left out. */
      readonly edgeRadiusMm?: number;
    }
  | { readonly kind: 'box'; readonly lengthMm: number; readonly widthMm: number; readonly heightMm: number };

/**
 * Volume to the rim, mL. Frustum πH(R₁² + R₁R₂ + R₂²)/3, less what the rounded edge takes; box l × w × h.
 * Outside measures give outside volume. Elementary solid geometry.
 */
export function volumeMl(shape: VesselShape): number {
  return filledMl(shape, shape.heightMm);
}

/** Volume up to a height above the base, mL. @param fillMm 0 to the height of the vessel. */
export function filledMl(shape: VesselShape, fillMm: number): number {
  assertVessel(shape);
  assertWithin('The fill height', fillMm, 0, shape.heightMm, ' mm');
  if (shape.kind === 'box') return (shape.lengthMm * shape.widthMm * fillMm) / 1000;
  const edge = edgeOf(shape);
  const inEdge = Math.min(fillMm, edge.topMm);
  const onWall = frustum(wallRadius(shape, inEdge), wallRadius(shape, fillMm), fillMm - inEdge);
  return (edgeVolume(edge, inEdge) + onWall) / 1000;
}

/**
 * Height at which a volume stands, mm; the inverse of `filledMl`.
 * @param ml 0 to the volume of the vessel; RangeError beyond.
 */
export function fillHeightMm(shape: VesselShape, ml: number): number {
  const brimMl = volumeMl(shape);
  // Brim-full but for the last digits of somebody's arithmetic is full.
  if (Math.abs(ml - brimMl) <= 1e-12 * brimMl) return shape.heightMm;
  assertWithin('The volume', ml, 0, brimMl, ' mL');
  return ml === 0 ? 0 : solveRising((fillMm) => filledMl(shape, fillMm), ml, 0, shape.heightMm);
}

/** Free surface at a fill height, m². */
export function surfaceM2(shape: VesselShape, fillMm: number): number {
  assertVessel(shape);
  assertWithin('The fill height', fillMm, 0, shape.heightMm, ' mm');
  if (shape.kind === 'box') return (shape.lengthMm * shape.widthMm) / 1e6;
  const edge = edgeOf(shape);
  const radius = fillMm < edge.topMm ? edgeRadiusAt(edge, fillMm) : wallRadius(shape, fillMm);
  return (Math.PI * radius ** 2) / 1e6;
}

/** Wall in touch with the water, rounded edge included and flat base not, m². For a cylinder π d h. */
export function wetWallM2(shape: VesselShape, fillMm: number): number {
  assertVessel(shape);
  assertWithin('The fill height', fillMm, 0, shape.heightMm, ' mm');
  if (shape.kind === 'box') return (2 * (shape.lengthMm + shape.widthMm) * fillMm) / 1e6;
  const edge = edgeOf(shape);
  const inEdge = Math.min(fillMm, edge.topMm);
  const [r1, r2] = [wallRadius(shape, inEdge), wallRadius(shape, fillMm)];
  const cone = Math.PI * (r1 + r2) * Math.hypot(r2 - r1, fillMm - inEdge);
  return (edgeArea(edge, inEdge) + cone) / 1e6;
}

type Round = Extract<VesselShape, { kind: 'round' }>;

function assertVessel(shape: VesselShape): void {
  assertWithin('The height', shape.heightMm, 1, 2000, ' mm');
  if (shape.kind === 'box') {
    assertWithin('The length', shape.lengthMm, 1, 2000, ' mm');
    assertWithin('The width', shape.widthMm, 1, 2000, ' mm');
    return;
  }
  assertWithin('The rim diameter', shape.rimMm, 1, 2000, ' mm');
  assertWithin('The base diameter', shape.baseMm, 1, 2000, ' mm');
  const edge = edgeOf(shape);
  assertWithin('The rounded edge', edge.radiusMm, 0, shape.heightMm / 2, ' mm');
  assertWithin('The flat of the base left by the rounded edge', edge.flatMm, 0, 1000, ' mm');
}

function wallRadius(shape: Round, heightMm: number): number {
  return (shape.baseMm + ((shape.rimMm - shape.baseMm) * heightMm) / shape.heightMm) / 2;
}

/** mm³. */
function frustum(r1: number, r2: number, heightMm: number): number {
  return (Math.PI * heightMm * (r1 ** 2 + r1 * r2 + r2 ** 2)) / 3;
}

/** The rounded edge: an arc that leaves the flat of the base and joins the wall, both without a corner. */
interface Edge {
  readonly radiusMm: number;
  /** Radius of the flat of the base: the arc's centre stands above its rim. */
  readonly flatMm: number;
  /** Height at which the arc joins the wall. */
  readonly topMm: number;
}

function edgeOf(shape: Round): Edge {
  const radiusMm = shape.edgeRadiusMm ?? 0;
  const slope = Math.atan((shape.rimMm - shape.baseMm) / (2 * shape.heightMm));
  return {
    radiusMm,
    flatMm: shape.baseMm / 2 + radiusMm * (Math.tan(slope) - 1 / Math.cos(slope)),
    topMm: radiusMm * (1 - Math.sin(slope)),
  };
}

function edgeRadiusAt(edge: Edge, heightMm: number): number {
  return edge.flatMm + Math.sqrt(heightMm * (2 * edge.radiusMm - heightMm));
}

/** π ∫ r² dz along the arc up to a height, mm³. */
function edgeVolume({ radiusMm, flatMm }: Edge, heightMm: number): number {
  if (heightMm === 0) return 0;
  const down = radiusMm - heightMm;
  const segment = radiusMm ** 2 * Math.acos(down / radiusMm) - down * Math.sqrt(radiusMm ** 2 - down ** 2);
  return Math.PI * (flatMm ** 2 * heightMm + flatMm * segment + heightMm ** 2 * (radiusMm - heightMm / 3));
}

/** 2π ∫ r ds along the arc up to a height, mm². */
function edgeArea({ radiusMm, flatMm }: Edge, heightMm: number): number {
  if (heightMm === 0) return 0;
  return 2 * Math.PI * radiusMm * (flatMm * Math.acos(1 - heightMm / radiusMm) + heightMm);
}
