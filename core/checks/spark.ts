import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';

/** Is there something to light it with? */
export const spark = defineCheck({
  id: 'spark',
  title: 'Something to light it',
  asks: 'Does the list name a lighter or matches?',
  costs: 'No flame, no hot meal and no melted snow.',
  needs: ['onePot', 'pots', 'stoves', 'fuels', 'gear', 'trip'],
  cites: ['cp-two-lighters'],
  limits: 'A stove with its own igniter still needs a second means: igniters fail when wet or high up.',
  options: {},
  messages: {
    lights: 'Something to light the stove with: {what}.',
    none: 'Nothing on the list lights the flame.',
    margin: '{have} of {need} means',
    'fix-add': 'Add a lighter, and matches kept dry apart from it.',
    lighter: 'a lighter',
    matches: 'matches',
    both: 'a lighter and matches',
  },
  judge({ onePot, pots, stoves, fuels, gear, trip }): Verdict[] {
    const atFire = trip.cookAt.grounds === 'stated' && valueOf(trip.cookAt) === 'fire';
    const flame = stoves[0] ?? fuels[0] ?? (atFire ? pots[0] : undefined);
    if (onePot || flame === undefined) return [];
    const lighters = gear.filter((piece) => piece.role === 'lighter');
    const matches = gear.filter((piece) => piece.role === 'matches');
    const means = [...lighters, ...matches];
    const figures = { have: figure(means.length, ''), need: figure(1, '') };
    if (means.length === 0) {
      const evidence = [flame.evidence, { quote: 'no lighter, no matches', found: 'absent' } as const];
      return [{ grade: 'costs-you', message: 'none', margin: 'margin', figures, evidence, fix: 'fix-add' }];
    }
    const what = lighters.length === 0 ? 'matches' : matches.length === 0 ? 'lighter' : 'both';
    const evidence = means.map((piece) => piece.evidence);
    return [{ grade: 'holds-up', message: 'lights', margin: 'margin', figures: { ...figures, what }, evidence }];
  },
});
