import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures } from '../model/finding.js';
import { valueOf, type Given } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import type { GroundedTrip } from '../model/trip.js';
import { assumed } from '../plan/assumed.js';

/** Does the weather tempt them to cook in the tent? */
export const air = defineCheck({
  id: 'air',
  title: 'Air to cook in',
  asks: 'Does cold or snow tempt them to cook in the tent, and how wide a pan stands over the flame?',
  costs: 'A stove in a tent fills it with carbon monoxide, which nobody smells.',
  needs: ['onePot', 'vessels', 'stoves', 'trip'],
  cites: ['thomassen-2004', 'wem-pan-diameter', 'leigh-smith-2004'],
  limits: 'It cannot know where they cook. It speaks of winter, snow and hard frost, when tents are shut.',
  options: {
    /** A pan of 220 mm gave more carbon monoxide than one of 165 mm (`wem-pan-diameter`). */
    pan: { wideMm: 220, narrowMm: 165 },
    /** As cold as this people cook in the tent, °C (common practice, no source). */
    coldC: -5,
    /** Of the blood bound by carbon monoxide after a stove burned in a small tent (`thomassen-2004`). */
    tent: { share: 21.5, minutes: 120 },
  },
  messages: {
    outside: 'Cook outside the tent; a stove in it fills it with carbon monoxide.',
    wide: 'Over a base of {base} a stove makes more carbon monoxide: in a test {wide} gave more than {narrow}.',
    margin: '{share} after {minutes}',
    'margin-wide': '{base#} of {wide}',
    fix: 'A pot or pan less than {wide} across the base.',
    tent: 'A stove in a small tent bound {share} of the blood of those in it within {minutes}. Cook outside, with air on all sides.',
    signs: 'Headache, dullness or sickness: out into the air at once, stove off.',
  },
  judge({ onePot, vessels, stoves, trip }, { pan, coldC, tent }): Verdict[] {
    const [stove] = stoves;
    const causes = tempting(trip, coldC);
    if (onePot || stove === undefined || causes.length === 0) return [];
    const figures: Figures = {
      share: figure(tent.share, '%', 1),
      minutes: figure(tent.minutes, 'min'),
      wide: figure(pan.wideMm, 'mm'),
      narrow: figure(pan.narrowMm, 'mm'),
    };
    const about = {
      cautions: ['tent', 'signs'],
      // One cause that is known is enough; the others then decide nothing.
      assumptions: causes.some(([, given]) => given.grounds !== 'assumed') ? [] : assumed(causes),
    };
    const widest = vessels.reduce<Vessel | undefined>(
      (most, vessel) => (baseMm(vessel) > baseMm(most) ? vessel : most),
      undefined,
    );
    if (baseMm(widest) < pan.wideMm) {
      return [
        { ...about, grade: 'holds-up', message: 'outside', margin: 'margin', figures, evidence: [stove.evidence] },
      ];
    }
    return [
      {
        ...about,
        grade: 'costs-you',
        message: 'wide',
        margin: 'margin-wide',
        figures: { ...figures, base: figure(baseMm(widest), 'mm', 0) },
        evidence: [widest!.evidence, stove.evidence],
        fix: 'fix',
        item: widest!.item,
      },
    ];
  },
});

/** What of the trip makes people cook in the tent. */
function tempting(trip: GroundedTrip, coldC: number): readonly (readonly [string, Given<unknown>])[] {
  const { season, waterFrom, lowC } = trip;
  return [
    ...(valueOf(season) === 'winter' ? [[phrase`the season`, season] as const] : []),
    ...(valueOf(waterFrom) === 'liquid' ? [] : [[phrase`where the water comes from`, waterFrom] as const]),
    ...((valueOf(lowC) ?? Infinity) <= coldC ? [[phrase`the lowest temperature`, lowC] as const] : []),
  ];
}

/** Width over the flame, mm; 0 where it is not known. */
function baseMm(vessel: Vessel | undefined): number {
  return vessel === undefined ? 0 : (valueOf(vessel.baseDiameterMm) ?? valueOf(vessel.diameterMm) ?? 0);
}
