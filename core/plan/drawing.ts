import type { Figure, Finding } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit, Stove, Vessel } from '../model/kit.js';
import type { DayPlan } from '../model/plan.js';
import type { KitchenFigures, PotFigures, StoveFigures } from '../model/report.js';
import { fillHeightMm, volumeMl } from '../physics/vessel.js';
import { supportShare, worstEdge } from './edge.js';
import { plannedFill, type Fill } from './fill.js';

/** A pot as a drawing needs it, on the stove it stands on: mm, mL and degrees; null where nothing is known. */
export function potFigures(
  pot: Vessel,
  stove: Stove | undefined,
  plan: DayPlan,
  findings: readonly Finding[],
): PotFigures {
  const rim = valueOf(pot.diameterMm);
  const height = valueOf(pot.heightMm);
  const base = valueOf(pot.baseDiameterMm) ?? rim;
  const fill = plannedFill(pot, plan);
  const edge = stove === undefined || fill === null ? undefined : worstEdge(pot, stove, fill)?.edge;
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
    needMm: needMm(fill, pot, plan),
    edge: edge === undefined ? null : { mm: edge.mm, upMm: edge.at === 'arms' ? standOf(stove) : 0 },
  };
}

function standOf(stove: Stove | undefined): number {
  return (stove && valueOf(stove.heightMm)) ?? 0;
}

/** At most the brim: what does not fit stands there. */
function needMm(fill: Fill | null, pot: Vessel, { leastMl, fullMl }: DayPlan): PotFigures['needMm'] {
  const capacity = valueOf(pot.capacityMl);
  if (fill === null || capacity === undefined) return null;
  const at = (ml: number) => fillHeightMm(fill.shape, Math.min(1, ml / capacity) * volumeMl(fill.shape));
  return [at(leastMl), at(fullMl)];
}

function degrees(figure: Figure | string | undefined): number | null {
  return typeof figure === 'object' && typeof figure.value === 'number' ? figure.value : null;
}

/** A stove as a drawing needs it; `suitsMm` are the bases that its open flame suits. */
export function stoveFigures(stove: Stove, suitsMm: StoveFigures['suitsMm']): StoveFigures {
  return {
    item: stove.item,
    name: stove.name,
    type: valueOf(stove.type) ?? null,
    form: valueOf(stove.form) ?? null,
    burnerMm: valueOf(stove.burnerMm) ?? null,
    armSpanMm: valueOf(stove.armSpanMm) ?? null,
    armCount: valueOf(stove.armCount) ?? null,
    heightMm: valueOf(stove.heightMm) ?? null,
    footMm: valueOf(stove.footMm) ?? null,
    supportShare: supportShare(stove),
    suitsMm,
  };
}

/** The pots cooked in, and after them what else the day uses. */
export function drawnVessels(kit: Kit, plan: DayPlan): readonly Vessel[] {
  const used = plan.places.flatMap(({ uses }) => uses.map(({ vessel }) => kit.vessels[vessel]!));
  return [...new Set([...kit.pots, ...used])];
}

/** The stoves, the one that heats most first. */
export function stovesInOrder(kit: Kit, plan: DayPlan): readonly Stove[] {
  const used = plan.places.flatMap(({ stove }) => (stove === null ? [] : [kit.stoves[stove]!]));
  return [...new Set([...used, ...kit.stoves])];
}

/** Who eats out of which of the pots drawn. */
export function kitchenFigures(kit: Kit, { meal }: DayPlan, pots: readonly Vessel[]): KitchenFigures[] {
  if (meal === null) return [];
  const { people, alike, vessels, roomMl, servings, turns } = meal;
  return [{ people, alike, pots: vessels.map((index) => pots.indexOf(kit.vessels[index]!)), roomMl, servings, turns }];
}
