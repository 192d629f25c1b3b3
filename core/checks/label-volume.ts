import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { volumeMl, type VesselShape } from '../physics/vessel.js';
import type { Vessel } from '../model/kit.js';

/** Do stated capacity and stated dimensions agree? */
export const labelVolume = defineCheck({
  id: 'label-volume',
  title: 'Stated capacity',
  asks: 'Can a pot of these dimensions hold what is stated?',
  costs: 'Everything else is worked out from the wrong figure.',
  needs: ['vessels'],
  cites: ['cp-label-tolerance'],
  limits: 'Outside dimensions are taken as a frustum or a box; rounded edges and thick walls hold less.',
  options: {
    /** Outside volume against stated capacity: within this share they agree (`cp-label-tolerance`). */
    agrees: 0.2,
    /** Beyond this share one of them is asked for. */
    asks: 0.3,
  },
  messages: {
    agrees: 'Stated capacity and dimensions agree.',
    loosely: 'Stated capacity and dimensions agree loosely; a rounded or lipped pot may be so.',
    large: '{outside} outside is much for a pot that states {stated}. Which is right?',
    impossible: '{stated} cannot fit in {size}. Which is right?',
    margin: '{stated} stated, {outside} outside',
    question: '“{name}”: how much does it hold, filled to the brim?',
    outsideLine: 'outside volume, {size}',
    statedLine: 'stated',
    shareLine: 'outside to stated',
  },
  judge({ vessels }, options): Verdict[] {
    return vessels.flatMap((vessel): Verdict[] => {
      const stated = valueOf(vessel.statedCapacityMl);
      const shape = outsideOf(vessel);
      if (stated === undefined || shape === null) return [];
      const outside = volumeMl(shape);
      const share = outside / stated;
      const figures = {
        stated: figure(stated, 'mL', 0),
        outside: figure(outside, 'mL', 0),
        size: sizeOf(shape),
        name: vessel.name,
      };
      const sum: SumLine[] = [
        { sign: '', figure: figure(outside, 'mL', 0), label: 'outsideLine', grounds: 'worked-out' },
        { sign: '÷', figure: figure(stated, 'mL', 0), label: 'statedLine', grounds: 'stated' },
        {
          sign: '=',
          figure: figure(share, '', 2),
          label: 'shareLine',
          grounds: 'worked-out',
          cites: ['cp-label-tolerance'],
        },
      ];
      const about = { margin: 'margin', figures, sum, evidence: [vessel.evidence], item: vessel.item };
      const question = {
        ...(vessel.item === null ? {} : { item: vessel.item }),
        field: 'capacityMl',
        message: 'question',
      } as const;
      if (share < 1 - options.agrees) return [{ ...about, grade: 'cant-tell', message: 'impossible', question }];
      if (share <= 1 + options.agrees) return [{ ...about, grade: 'holds-up', message: 'agrees' }];
      if (share <= 1 + options.asks) return [{ ...about, grade: 'holds-up', message: 'loosely' }];
      return [{ ...about, grade: 'cant-tell', message: 'large', question }];
    });
  },
});

function outsideOf(vessel: Vessel): VesselShape | null {
  const heightMm = valueOf(vessel.heightMm);
  const rimMm = valueOf(vessel.diameterMm);
  const box = valueOf(vessel.boxMm);
  if (heightMm === undefined) return null;
  if (box !== undefined) return { kind: 'box', lengthMm: box[0], widthMm: box[1], heightMm };
  return rimMm === undefined
    ? null
    : { kind: 'round', rimMm, baseMm: valueOf(vessel.baseDiameterMm) ?? rimMm, heightMm };
}

function sizeOf(shape: VesselShape): string {
  const sides = shape.kind === 'box' ? [shape.lengthMm, shape.widthMm, shape.heightMm] : [shape.rimMm, shape.heightMm];
  return `${sides.map(Math.round).join(' × ')}\u00a0mm`;
}
