import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Stove } from '../model/kit.js';
import { plannedFill, type Fill } from '../plan/fill.js';
import { spillAngleDeg, supportRadiusMm, tipAngleDeg } from '../physics/stability.js';

/** How far may the filled pot lean on its stove before it goes over? */
export const standing = defineCheck({
  id: 'standing',
  title: 'Standing',
  asks: 'How far may stove and filled pot lean before they tip?',
  costs: 'The meal goes over, and scalds who sits by it.',
  needs: ['pots', 'stoves', 'trip', 'plan'],
  cites: ['cp-tip-angle', 'sni-two-burner', 'truncated-cylinder'],
  limits:
    'Firm, even ground and slow leaning; a nudge, a spoon or soft ground tips it sooner. The stove itself is taken as weightless.',
  options: {
    /** Tipping angles, °: a 10° slope is a stove standard's test (`sni-two-burner`); 15° is common practice (`cp-tip-angle`). */
    hurtsUnder: 10,
    costsUnder: 15,
    /** Legs of a stove whose number is not given. */
    legs: 3,
  },
  messages: {
    'tips-first': 'It goes over at {tip}, before it spills.',
    'spills-first': 'It spills at {spill} and goes over at {tip}.',
    steady: 'It leans {tip} before it goes over.',
    margin: '{tip} of {least}, before it tips',
    'fix-feet': 'Feet {feet} across, or fill it less.',
    'fix-arms': 'A stove with arms {feet} across, or fill it less.',
    caution: 'Boiling water burns in a second. Cook on the ground, sit to one side of the pot, keep feet clear.',
    edgeLine: 'from the middle to the edge it goes over',
    centreLine: 'height of the filled pot’s weight, about',
    tipLine: 'leans before it tips, its water running to the low side',
    spillLine: 'leans before it spills',
  },
  judge({ pots, stoves, trip, plan }, options): Verdict[] {
    const stove = stoves[0];
    const pot = pots[0];
    const fill = pot === undefined ? null : plannedFill(pot, plan, trip);
    if (stove === undefined || pot === undefined || fill === null) return [];
    const mass = valueOf(pot.massG);
    const tipOver = (edge: Edge) =>
      tipAngleDeg({
        radiusMm: fill.shape.rimMm / 2,
        fillMm: fill.mm,
        edgeMm: edge.mm,
        standMm: edge.standMm,
        ...(mass === undefined ? {} : { potMassKg: mass / 1000, potCentreMm: fill.shape.heightMm / 2 }),
      });
    const edges = edgesOf(stove, fill, pot.lockedToBurner, options.legs);
    const [worst] = edges.map((edge) => ({ edge, tip: tipOver(edge) })).sort((a, b) => a.tip - b.tip);
    if (worst === undefined) return [];
    const { edge, tip } = worst;
    const spill = spillAngleDeg({ rimMm: fill.shape.rimMm, heightMm: fill.shape.heightMm, fillMm: fill.mm });
    const enough = steps().find((mm) => tipOver({ ...edge, mm: (mm / 2) * edge.share }) >= options.costsUnder);
    const figures: Figures = {
      tip: figure(tip, '°', 0),
      spill: figure(spill, '°', 0),
      least: figure(options.costsUnder, '°'),
      feet: figure(enough ?? 0, 'mm', 0),
    };
    const sum: SumLine[] = [
      { sign: '', figure: figure(edge.mm, 'mm', 0), label: 'edgeLine', grounds: 'worked-out' },
      { sign: '', figure: figure(edge.standMm + fill.mm / 2, 'mm', 0), label: 'centreLine', grounds: 'worked-out' },
      {
        sign: '=',
        figure: figure(tip, '°', 0),
        label: 'tipLine',
        grounds: 'worked-out',
        cites: ['truncated-cylinder'],
      },
      { sign: '', figure: figure(spill, '°', 0), label: 'spillLine', grounds: 'worked-out' },
    ];
    const about = { margin: 'margin', figures, sum, evidence: [pot.evidence, stove.evidence], item: pot.item };
    if (tip >= options.costsUnder) return [{ ...about, grade: 'holds-up', message: 'steady' }];
    const message = spill < tip ? 'spills-first' : 'tips-first';
    const fix = enough === undefined ? {} : { fix: edge.at === 'feet' ? 'fix-feet' : 'fix-arms' };
    return [
      { ...about, grade: tip < options.hurtsUnder ? 'can-hurt' : 'costs-you', message, ...fix, cautions: ['caution'] },
    ];
  },
});

/** An edge that a pot may go over: its distance from the axis, and how high above it the pot's base stands. */
interface Edge {
  readonly at: 'arms' | 'feet';
  readonly mm: number;
  readonly standMm: number;
  /** Distance to the edge as a share of the circle's radius. */
  readonly share: number;
}

/** The arms under the pot, as far as its base reaches, and the stove's own foot. */
function edgesOf(stove: Stove, fill: Fill, locked: boolean, legs: number): Edge[] {
  const arms = valueOf(stove.armCount) ?? legs;
  const span = valueOf(stove.armSpanMm);
  const foot = valueOf(stove.footMm);
  const share = arms === 2 ? 0 : supportRadiusMm(1, arms);
  const edges: Edge[] = [];
  if (span !== undefined && !locked) {
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

/** Widths to try, mm. */
function steps(): number[] {
  return Array.from({ length: 100 }, (_, i) => 20 + i * 10);
}
