import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures } from '../model/finding.js';
import { valueOf, type Given } from '../model/given.js';
import type { Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import type { GroundedTrip } from '../model/trip.js';
import { assumed } from '../plan/assumed.js';

/** Do they mean to cook inside, or does the weather drive them in? */
export const air = defineCheck({
  id: 'air',
  title: 'Air to cook in',
  asks: 'Do they mean to cook inside, does the weather drive them in, and how wide a pan stands over the flame?',
  costs: 'A stove in a tent fills it with carbon monoxide, which nobody smells.',
  needs: ['onePot', 'vessels', 'stoves', 'trip', 'hints'],
  cites: ['betten-2013', 'keyes-2001', 'thurman-2023', 'leigh-smith-2004', 'who-air'],
  limits: 'It cannot know where they cook. No kit rules this danger out, so it never holds up.',
  options: {
    /** A pan of 220 mm gave more carbon monoxide than one of 165 mm (`wem-pan-diameter`). */
    pan: { wideMm: 220, narrowMm: 165 },
    /** So cold, with or without rain, people cook in the tent, °C (common practice, no source). */
    coldC: 5,
    /** Carbon monoxide beside a stove at work, ppm: from a snow cave (`keyes-2001`) to a shut tent (`betten-2013`). */
    inside: { low: 17, likely: 103, high: 211 },
    /** 100 mg/m³ for a quarter of an hour is the guideline (`who-air`): 87 ppm at 1.145 mg/m³ each. */
    guideline: { ppm: 87, minutes: 15 },
  },
  messages: {
    inside: 'The list speaks of cooking inside: a stove fills a tent, a porch, a hut or a van with carbon monoxide.',
    outside: 'Cook outside: a stove in a tent, a porch, a hut or a van fills it with carbon monoxide.',
    wide: 'A pan {base} wide makes a stove give off more carbon monoxide: in a test {wide} gave more than {narrow}.',
    margin: '{inside#} of {guideline}, carbon monoxide',
    'margin-wide': '{base#} of {wide}',
    'fix-inside': 'Cook outside, under a tarp that is open on all sides where it rains.',
    'fix-pan': 'A pot or pan less than {wide} across the base.',
    measured:
      'Stoves in tents and snow caves gave {inside} of carbon monoxide in tests; a guideline for {minutes} is {guideline}. It has no smell, and a flap or a door that is open does not rule it out.',
    signs:
      'If anyone has a headache or feels dull or sick: everybody out into the air at once, stove off, and get help.',
  },
  judge({ onePot, vessels, stoves, trip, hints }, { pan, coldC, inside, guideline }): Verdict[] {
    const [stove] = stoves;
    const { cooksInside } = hints;
    const said = cooksInside !== undefined && valueOf(cooksInside) === true;
    const causes = driving(trip, coldC);
    if (onePot || stove === undefined || !(said || causes.length > 0)) return [];
    const figures: Figures = {
      inside: figure(inside, 'ppm', 0),
      guideline: figure(guideline.ppm, 'ppm'),
      minutes: figure(guideline.minutes, 'min'),
      wide: figure(pan.wideMm, 'mm'),
      narrow: figure(pan.narrowMm, 'mm'),
    };
    const cautions = ['measured', 'signs'];
    const about = {
      // One cause that is known is enough; the others then decide nothing.
      assumptions: said || causes.some(([, given]) => given.grounds !== 'assumed') ? [] : assumed(causes),
      evidence: [stove.evidence],
      margin: 'margin',
      figures,
      cautions,
    };
    const widest = vessels.reduce<Vessel | undefined>(
      (most, vessel) => (baseMm(vessel) > baseMm(most) ? vessel : most),
      undefined,
    );
    const wide: Verdict = {
      ...about,
      grade: 'costs-you',
      message: 'wide',
      margin: 'margin-wide',
      figures: { ...figures, base: figure(baseMm(widest), 'mm', 0) },
      evidence: [...(widest ? [widest.evidence] : []), stove.evidence],
      fix: 'fix-pan',
      cites: ['wem-pan-diameter'],
      item: widest?.item ?? null,
    };
    return [
      said
        ? { ...about, grade: 'can-hurt', message: 'inside', fix: 'fix-inside' }
        : { ...about, grade: null, message: 'outside' },
      ...(baseMm(widest) < pan.wideMm ? [] : [{ ...wide, cautions: [] }]),
    ];
  },
});

/** What of the trip drives people inside to cook. */
function driving(trip: GroundedTrip, coldC: number): readonly (readonly [string, Given<unknown>])[] {
  const { season, waterFrom, lowC } = trip;
  const cold = (valueOf(lowC) ?? Infinity) <= coldC;
  return [
    ...(['winter', 'autumn', 'spring'].includes(valueOf(season) ?? '') ? [[phrase`the season`, season] as const] : []),
    ...(valueOf(waterFrom) === 'liquid' ? [] : [[phrase`where the water comes from`, waterFrom] as const]),
    // A night assumed from the season is no cause of its own.
    ...(cold && lowC.grounds !== 'assumed' ? [[phrase`the lowest temperature`, lowC] as const] : []),
  ];
}

/** Width over the flame, mm; 0 where it is not known. */
function baseMm(vessel: Vessel | undefined): number {
  return vessel === undefined ? 0 : (valueOf(vessel.baseDiameterMm) ?? valueOf(vessel.diameterMm) ?? 0);
}
