import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { liquidFuelG } from '../physics/fuel.js';
import { assumed } from '../plan/assumed.js';

/** Can an alcohol burner be filled again without a flash? */
export const spiritRefill = defineCheck({
  id: 'spirit-refill',
  title: 'Filling the burner',
  asks: 'Is alcohol poured from a large bottle, or by young people?',
  costs: 'Alcohol poured into a flame that nobody sees flashes back into the bottle.',
  needs: ['stoves', 'fuels', 'hints'],
  cites: ['cp-spirit-refill', 'cp-first-aid-burn'],
  limits: 'It speaks of alcohol alone. Many groups for young people forbid such burners; their rules come first.',
  options: {
    /** A bulk bottle holds so much, mL: one of a litre, three quarters full (common practice, no source). */
    bulkMl: 750,
    /** A bottle to fill from holds at most so much, mL (`cp-spirit-refill`; the figure is common practice, no source). */
    smallMl: 250,
  },
  messages: {
    'young-bulk': 'Young people fill a burner from {bottle} of alcohol: poured into an unseen flame it flashes back.',
    bulk: 'The burner is filled from {bottle} of alcohol: poured into an unseen flame it flashes back.',
    young: 'Young people fill an alcohol burner: poured into an unseen flame it flashes back.',
    'margin-bulk': '{bottle} in one bottle',
    'margin-young': 'alcohol, young people',
    'fix-bulk': 'A bottle of {small} or less to fill from.',
    'fix-young': 'A burner for gas. Or a leader fills it, cold, from {small} or less.',
    cold: 'The flame is not seen by day. Feel that the burner is cold, then fill it from a small bottle, well away from any flame.',
    'first-aid': 'A burn: cool running water, wet clothing off, cover it.',
  },
  judge({ stoves, fuels, hints }, { bulkMl, smallMl }): Verdict[] {
    const burner = stoves.find(({ type }) => valueOf(type) === 'alcohol');
    const bottles = fuels.filter(({ type }) => valueOf(type) === 'alcohol');
    const about = burner ?? bottles[0];
    if (about === undefined) return [];
    const young = hints.youthGroup !== undefined && valueOf(hints.youthGroup) === true;
    const bulk = bottles.find((bottle) => (valueOf(bottle.netG) ?? 0) >= liquidFuelG('alcohol', bulkMl));
    const small = bottles.some((bottle) => (valueOf(bottle.netG) ?? Infinity) <= liquidFuelG('alcohol', smallMl));
    const poured = small ? undefined : bulk;
    if (!young && poured === undefined) return [];
    const figures = { small: figure(smallMl, 'mL') };
    const common = { evidence: [(poured ?? about).evidence], cautions: ['cold', 'first-aid'] };
    if (poured === undefined) {
      return [{ ...common, grade: 'costs-you', message: 'young', margin: 'margin-young', figures, fix: 'fix-young' }];
    }
    return [
      {
        ...common,
        grade: young ? 'can-hurt' : 'costs-you',
        message: young ? 'young-bulk' : 'bulk',
        margin: 'margin-bulk',
        figures: { ...figures, bottle: figure(valueOf(poured.netG)! / liquidFuelG('alcohol', 1), 'mL', 0) },
        fix: 'fix-bulk',
        assumptions: assumed([[phrase`how much alcohol the bottle holds`, poured.netG]]),
      },
    ];
  },
});
