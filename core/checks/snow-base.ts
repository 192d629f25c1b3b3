import { defineCheck, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';

/** Does the stove stand on something, on snow? */
export const snowBase = defineCheck({
  id: 'snow-base',
  title: 'Under the stove',
  asks: 'Is there something to stand the stove on, on snow?',
  costs: 'The stove melts in and tips, and the water is gone.',
  needs: ['onePot', 'stoves', 'gear', 'trip'],
  cites: ['cp-snow-base'],
  limits: 'A lid, a shovel or a flat stone serves too, and is not counted: the lid is needed on the pot.',
  options: {},
  messages: {
    none: 'Nothing on the list goes under the stove: on snow it melts in and tips.',
    board: 'The stove has something to stand on, on snow.',
    'margin-none': 'no board',
    'margin-board': 'a board',
    fix: 'A board under the stove. Or a spare lid or a shovel blade.',
    caution: 'A stove that tips spills boiling water. Tread the snow hard and level before it is lit.',
  },
  judge({ onePot, stoves, gear, trip }): Verdict[] {
    const { season, waterFrom } = trip;
    const [stove] = stoves;
    const winter = valueOf(season) === 'winter';
    const snow = waterFrom.grounds !== 'assumed' && valueOf(waterFrom) !== 'liquid';
    if (onePot || stove === undefined || !(winter || snow)) return [];
    const assumptions = snow ? [] : assumed([[phrase`the season`, season]]);
    const board = gear.find(({ role }) => role === 'board');
    if (board !== undefined) {
      return [
        {
          grade: 'holds-up',
          message: 'board',
          margin: 'margin-board',
          figures: {},
          evidence: [board.evidence],
          assumptions,
        },
      ];
    }
    return [
      {
        grade: 'costs-you',
        message: 'none',
        margin: 'margin-none',
        figures: {},
        evidence: [{ message: 'margin-none', found: 'absent' }, stove.evidence],
        fix: 'fix',
        cautions: ['caution'],
        assumptions,
      },
    ];
  },
});
