import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { tipOverDeg, worstEdge } from '../plan/edge.js';
import { plannedFill } from '../plan/fill.js';
import { spillAngleDeg } from '../physics/stability.js';

/** How far may the filled pot lean on its stove before it goes over? */
export const standing = defineCheck({
  id: 'standing',
  title: 'Standing',
  asks: 'How far may stove and filled pot lean before they tip?',
  costs: 'The meal goes over, and scalds who sits by it.',
  needs: ['pots', 'stoves', 'plan'],
  cites: ['cp-tip-angle', 'sni-two-burner', 'truncated-cylinder'],
  limits:
    'Firm, even ground and slow leaning; a nudge, a spoon or soft ground tips it sooner. The stove itself is taken as weightless.',
  options: {
    /** Tipping angles, °: a 10° slope is a stove standard's test (`sni-two-burner`); 15° is common practice (`cp-tip-angle`). */
    hurtsUnder: 10,
    costsUnder: 15,
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
  judge({ pots, stoves, plan }, options): Verdict[] {
    const stove = stoves[0];
    const pot = pots[0];
    const fill = pot === undefined ? null : plannedFill(pot, plan);
    if (stove === undefined || pot === undefined || fill === null) return [];
    const worst = worstEdge(pot, stove, fill);
    if (worst === undefined) return [];
    const { edge, tipDeg: tip } = worst;
    const spill = spillAngleDeg({ rimMm: fill.shape.rimMm, heightMm: fill.shape.heightMm, fillMm: fill.mm });
    const enough = steps().find(
      (mm) => tipOverDeg(pot, fill, { ...edge, mm: (mm / 2) * edge.share }) >= options.costsUnder,
    );
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

/** Widths to try, mm. */
function steps(): number[] {
  return Array.from({ length: 100 }, (_, i) => 20 + i * 10);
}
