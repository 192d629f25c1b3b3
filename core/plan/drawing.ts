import type { Figure, Finding } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Stove, Vessel } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import type { PotFigures, StoveFigures } from '../model/report.js';
import type { GroundedTrip } from '../model/trip.js';
import { plannedFill } from './fill.js';

/** A pot as a drawing needs it: mm, mL and degrees; null where nothing is known. */
export function potFigures(pot: Vessel, plan: DayPlan, trip: GroundedTrip, findings: readonly Finding[]): PotFigures {
  const rim = valueOf(pot.diameterMm);
  const height = valueOf(pot.heightMm);
  const base = valueOf(pot.baseDiameterMm) ?? rim;
  const fill = plannedFill(pot, plan, trip);
  const angle = (name: 'tip' | 'spill') =>
    findings
      .filter((finding) => finding.item === pot.item)
      .map((finding) => degrees(finding.figures[name]))
      .find((value) => value !== null) ?? null;
  return {
    item: pot.item,
    name: pot.name,
    capacityMl: valueOf(pot.capacityMl) ?? null,
    rimMm: rim ?? null,
    baseMm: base ?? null,
    heightMm: height ?? null,
    earMm: valueOf(pot.earHeightMm) ?? null,
    fillMm: fill?.mm ?? null,
    fillMl: fill?.ml ?? null,
    bail: valueOf(pot.bail) ?? null,
    lid: valueOf(pot.lid) ?? null,
    tipDeg: angle('tip'),
    spillDeg: angle('spill'),
    needMl: [plan.leastMl, plan.fullMl],
  };
}

function degrees(figure: Figure | string | undefined): number | null {
  return typeof figure === 'object' && typeof figure.value === 'number' ? figure.value : null;
}

export function stoveFigures(stove: Stove): StoveFigures {
  return {
    type: valueOf(stove.type) ?? null,
    form: valueOf(stove.form) ?? null,
    burnerMm: valueOf(stove.burnerMm) ?? null,
    armSpanMm: valueOf(stove.armSpanMm) ?? null,
    armCount: valueOf(stove.armCount) ?? null,
    heightMm: valueOf(stove.heightMm) ?? null,
    footMm: valueOf(stove.footMm) ?? null,
  };
}
