import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';
import { plannedFill } from '../plan/fill.js';
import { hungMetacentricMm, spillAngleDeg } from '../physics/stability.js';

/** How does the filled pot hang from its bail? */
export const hang = defineCheck({
  id: 'hang',
  title: 'Hanging',
  asks: 'How far may the filled pot swing on its bail before it spills, and does it hang upright?',
  costs: 'Hot water slops onto hands, feet and fire.',
  needs: ['pots', 'trip', 'plan'],
  cites: ['cp-hang-spill', 'derrett', 'truncated-cylinder'],
  limits:
    'The pot swings slowly and as one with its water; a jerk spills sooner. A tapered pot is taken as a cylinder.',
  options: {
    /** Spill angles, ° (`cp-hang-spill`). */
    hurtsUnder: 6,
    costsUnder: 12,
  },
  messages: {
    steady: 'It may lean {spill} on its bail before it spills.',
    slops: 'It spills at {spill} on its bail: it slops when touched.',
    brimful: 'It spills at {spill} on its bail: nobody carries that without slopping.',
    turns: 'Its weight hangs above the ears of the bail: it turns over.',
    margin: '{spill} to the spill',
    'margin-turns': '{metacentric} below the ears',
    'fix-less': 'Fill it to {lessFill} at most: {costsUnder} to the spill.',
    'fix-ears': 'Ears nearer the rim, or less water in it.',
    caution: 'Boiling water burns in a second. Lift it off with a stick through the bail, low, and away from legs.',
    fillLine: 'from the fill line to the rim',
    radiusLine: 'half the width',
    spillLine: 'leans before it spills, the arc of that slope',
    centreLine: 'ears above the middle of the water',
    surfaceLine: 'the free surface, r² ÷ 4h',
    hangsLine: 'weight acts below the ears',
  },
  judge({ pots, trip, plan }, options): Verdict[] {
    return pots.flatMap((pot): Verdict[] => {
      const fill = valueOf(pot.bail) === true ? plannedFill(pot, plan) : null;
      if (fill === null) return [];
      const { rimMm, heightMm } = fill.shape;
      const ears = valueOf(pot.earHeightMm) ?? heightMm;
      const radiusMm = rimMm / 2;
      const spillAt = (fillMm: number) => spillAngleDeg({ rimMm, heightMm, fillMm });
      const spill = spillAt(fill.mm);
      const mass = valueOf(pot.massG);
      const metacentric = hungMetacentricMm({
        earMm: ears,
        fillMm: fill.mm,
        radiusMm,
        ...(mass === undefined ? {} : { potMassKg: mass / 1000, potCentreMm: heightMm / 2 }),
      });
      const lessMm = Math.max(0, heightMm - Math.tan((options.costsUnder * Math.PI) / 180) * radiusMm);
      const figures: Figures = {
        spill: figure(spill, '°', 0),
        metacentric: figure(metacentric, 'mm', 0),
        lessFill: figure(Math.floor((fill.ml * lessMm) / fill.mm / 10) * 10, 'mL', 0),
        costsUnder: figure(options.costsUnder, '°'),
      };
      const turns = metacentric <= 0;
      const sum: SumLine[] = turns
        ? [
            { sign: '', figure: figure(ears - fill.mm / 2, 'mm', 0), label: 'centreLine', grounds: 'worked-out' },
            {
              sign: '−',
              figure: figure(radiusMm ** 2 / (4 * fill.mm), 'mm', 0),
              label: 'surfaceLine',
              grounds: 'published',
              cites: ['derrett'],
            },
            { sign: '=', figure: figure(metacentric, 'mm', 0), label: 'hangsLine', grounds: 'worked-out' },
          ]
        : [
            { sign: '', figure: figure(heightMm - fill.mm, 'mm', 0), label: 'fillLine', grounds: 'worked-out' },
            { sign: '÷', figure: figure(radiusMm, 'mm', 0), label: 'radiusLine', grounds: 'worked-out' },
            {
              sign: '=',
              figure: figure(spill, '°', 0),
              label: 'spillLine',
              grounds: 'worked-out',
              cites: ['truncated-cylinder'],
            },
          ];
      const about = {
        figures,
        sum,
        evidence: [pot.evidence],
        item: pot.item,
        assumptions: assumed([
          [phrase`the number of people`, trip.people],
          [phrase`how they cook`, trip.mealStyle],
        ]),
      };
      if (turns)
        return [
          {
            ...about,
            grade: 'can-hurt',
            message: 'turns',
            margin: 'margin-turns',
            fix: 'fix-ears',
            cautions: ['caution'],
          },
        ];
      if (spill >= options.costsUnder) return [{ ...about, grade: 'holds-up', message: 'steady', margin: 'margin' }];
      return spill < options.hurtsUnder
        ? [
            {
              ...about,
              grade: 'can-hurt',
              message: 'brimful',
              margin: 'margin',
              fix: 'fix-less',
              cautions: ['caution'],
            },
          ]
        : [{ ...about, grade: 'costs-you', message: 'slops', margin: 'margin', fix: 'fix-less' }];
    });
  },
});
