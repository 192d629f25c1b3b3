import type { Figure, Finding } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Stove, Vessel } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import type { PotFigures, StoveFigures } from '../model/report.js';
import { fillHeightMm } from '../physics/vessel.js';

/** A pot as a drawing needs it: mm, mL and degrees; null where nothing is known. */
export function potFigures(pot: Vessel, plan: DayPlan, findings: readonly Finding[]): PotFigures {
  const capacity = valueOf(pot.capacityMl);
  const rim = valueOf(pot.diameterMm);
  const height = valueOf(pot.heightMm);
  const base = valueOf(pot.baseDiameterMm) ?? rim;
  const fill = capacity === undefined ? undefined : Math.min(capacity * plan.ceiling, plan.fullMl);
  const angle = (name: 'tip' | 'spill') =>
    findings
      .filter((finding) => finding.item === pot.item)
      .map((finding) => degrees(finding.figures[name]))
      .find((value) => value !== null) ?? null;
  return {
    item: pot.item,
    name: pot.name,
    capacityMl: capacity ?? null,
    rimMm: rim ?? null,
    baseMm: base ?? null,
    heightMm: height ?? null,
    earMm: valueOf(pot.earHeightMm) ?? null,
    fillMm:
      rim === undefined || height === undefined || base === undefined || fill === undefined
        ? null
        : fillLine(rim, base, height, fill),
    fillMl: fill ?? null,
    bail: valueOf(pot.bail) ?? null,
    lid: valueOf(pot.lid) ?? null,
    tipDeg: angle('tip'),
    spillDeg: angle('spill'),
    needMl: [plan.leastMl, plan.fullMl],
  };
}

/** Stated capacity and outside dimensions disagree a little; the line never stands over the rim. */
function fillLine(rimMm: number, baseMm: number, heightMm: number, fillMl: number): number {
  const shape = { kind: 'round', rimMm, baseMm, heightMm } as const;
  try {
    return Math.min(heightMm, fillHeightMm(shape, fillMl));
  } catch (error) {
    if (error instanceof RangeError) return heightMm;
    throw error;
  }
}

function degrees(figure: Figure | string | undefined): number | null {
  return typeof figure === 'object' && typeof figure.value === 'number' ? figure.value : null;
}

export function stoveFigures(stove: Stove): StoveFigures {
  return {
    type: valueOf(stove.type) ?? null,
    burnerMm: valueOf(stove.burnerMm) ?? null,
    armSpanMm: valueOf(stove.armSpanMm) ?? null,
    armCount: valueOf(stove.armCount) ?? null,
    heightMm: valueOf(stove.heightMm) ?? null,
    footMm: valueOf(stove.footMm) ?? null,
  };
}
