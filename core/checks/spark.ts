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
    second: 'One thing to light the stove with, {what}: in the snow a second means, kept apart from it, is usual.',
    margin: '{have#} on the list',
    'margin-none': 'none on the list',
    'fix-add': 'Add a lighter, and matches kept dry apart from it.',
    absent: 'no lighter, no matches',
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
    const have = means.reduce((sum, piece) => sum + (valueOf(piece.quantity) ?? 1), 0);
    if (means.length === 0) {
      const evidence = [flame.evidence, { message: 'absent', found: 'absent' } as const];
      return [{ grade: 'costs-you', message: 'none', margin: 'margin-none', figures: {}, evidence, fix: 'fix-add' }];
    }
    const what = lighters.length === 0 ? 'matches' : matches.length === 0 ? 'lighter' : 'both';
    const evidence = means.map((piece) => piece.evidence);
    const inSnow = valueOf(trip.season) === 'winter' || valueOf(trip.waterFrom) === 'snow';
    const message = inSnow && have === 1 ? 'second' : 'lights';
    return [{ grade: 'holds-up', message, margin: 'margin', figures: { have: figure(have, ''), what }, evidence }];
  },
});
