import { defineCheck, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';

/** Can the pot be set by a fire and taken away from it? */
export const fireHandling = defineCheck({
  id: 'fire-handling',
  title: 'At the fire',
  asks: 'Can the pot be hung over a fire, hooked off it, and lifted to feed a wood stove?',
  costs: 'The pot cannot be hung, and hands go into the heat.',
  needs: ['pots', 'stoves', 'trip', 'hints'],
  cites: ['cp-fire-bail'],
  limits: 'A grate on legs or flat stones serve instead of a bail; local fire rules come first.',
  options: {},
  messages: {
    hangs: 'The bail hangs it over the fire and hooks it off.',
    'no-bail-fire': 'No bail: nothing to hang it by or to hook it off the fire.',
    'no-bail-wood': 'No bail: the pot comes off by hand each time the stove is fed.',
    unknown: 'Nothing says whether it has a bail.',
    'no-fires': 'Fires are said to be forbidden where this kit cooks on one.',
    margin: 'bail',
    'margin-none': 'no bail',
    'margin-unknown': 'bail not named',
    'margin-forbidden': 'no fires',
    'fix-bail': 'A pot with a bail, or a wire through two holes under the rim.',
    'fix-stove': 'A gas or spirit stove, where local rules allow it.',
    question: '“{name}”: has it a bail, a handle that swings over the top?',
  },
  judge({ pots, stoves, trip, hints }): Verdict[] {
    const stated = trip.cookAt.grounds === 'stated' && trip.cookAt.value === 'fire';
    const wood = stoves.find((stove) => valueOf(stove.type) === 'wood');
    const pot = pots[0];
    if (pot === undefined || (!stated && wood === undefined)) return [];
    const evidence = wood === undefined ? [pot.evidence] : [pot.evidence, wood.evidence];
    const about = { figures: { name: pot.name }, evidence, item: pot.item };
    if (hints.firesAllowed && valueOf(hints.firesAllowed) === false) {
      return [{ ...about, grade: 'falls-short', message: 'no-fires', margin: 'margin-forbidden', fix: 'fix-stove' }];
    }
    const bail = valueOf(pot.bail);
    if (bail === true) return [{ ...about, grade: 'holds-up', message: 'hangs', margin: 'margin' }];
    if (bail === undefined) {
      const question = {
        ...(pot.item === null ? {} : { item: pot.item }),
        field: 'bail',
        message: 'question',
      } as const;
      return [{ ...about, grade: 'cant-tell', message: 'unknown', margin: 'margin-unknown', question }];
    }
    return stated
      ? [{ ...about, grade: 'falls-short', message: 'no-bail-fire', margin: 'margin-none', fix: 'fix-bail' }]
      : [{ ...about, grade: 'costs-you', message: 'no-bail-wood', margin: 'margin-none', fix: 'fix-bail' }];
  },
});
