import { valueOf } from '../model/given.js';
import type { Stove, Vessel } from '../model/kit.js';
import { supportRadiusMm, tipAngleDeg } from '../physics/stability.js';
import type { Fill } from './fill.js';

/** Legs and arms of a stove whose number is not given. */
const LEGS = 3;

/** An edge that a pot may go over. */
export interface Edge {
  readonly at: 'arms' | 'feet';
  /** Distance from the axis. */
  readonly mm: number;
  /** How high above it the pot's base stands. */
  readonly standMm: number;
  /** Distance to the edge as a share of the circle's radius. */
  readonly share: number;
}

/** Distance of the line between two neighbouring legs or arms from the axis, as a share of their circle's radius. */
export function supportShare(stove: Stove): number {
  const arms = valueOf(stove.armCount) ?? LEGS;
  return arms === 2 ? 0 : supportRadiusMm(1, arms);
}

/** The arms under the pot, as far as its base reaches, and the stove's own foot. */
function edgesOf(pot: Vessel, stove: Stove, fill: Fill): Edge[] {
  const span = valueOf(stove.armSpanMm);
  const foot = valueOf(stove.footMm);
  const share = supportShare(stove);
  const edges: Edge[] = [];
  if (span !== undefined && !pot.lockedToBurner) {
    edges.push({ at: 'arms', mm: Math.min(span / 2, fill.shape.baseMm / 2) * share, standMm: 0, share });
  }
  if (foot !== undefined) {
    // A canister is round; legs leave the line between two of them.
    const round = valueOf(stove.form) === 'upright';
    edges.push({
      at: 'feet',
      mm: (foot / 2) * (round ? 1 : share),
      standMm: valueOf(stove.heightMm) ?? 0,
      share: round ? 1 : share,
    });
  }
  return edges;
}

/** How far the filled pot leans before it goes over an edge, °. */
export function tipOverDeg(pot: Vessel, fill: Fill, edge: Edge): number {
  const mass = valueOf(pot.massG);
  return tipAngleDeg({
    radiusMm: fill.shape.rimMm / 2,
    fillMm: fill.mm,
    edgeMm: edge.mm,
    standMm: edge.standMm,
    ...(mass === undefined ? {} : { potMassKg: mass / 1000, potCentreMm: fill.shape.heightMm / 2 }),
  });
}

/** The edge it goes over first; undefined where neither arms nor feet are known. */
export function worstEdge(
  pot: Vessel,
  stove: Stove,
  fill: Fill,
): { readonly edge: Edge; readonly tipDeg: number } | undefined {
  return edgesOf(pot, stove, fill)
    .map((edge) => ({ edge, tipDeg: tipOverDeg(pot, fill, edge) }))
    .sort((a, b) => a.tipDeg - b.tipDeg)[0];
}
