import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { scaldSeconds } from '../physics/handling.js';
import { assumed } from '../plan/assumed.js';

/** Is much boiling water handled among young people? */
export const openWater = defineCheck({
  id: 'open-water',
  title: 'Boiling water',
  asks: 'Is much boiling water lifted or stood among young people?',
  costs: 'A spill burns at once, and boiling water stays hot enough to burn for long.',
  needs: ['vessels', 'hints', 'trip', 'plan'],
  cites: ['moritz-henriques', 'cp-first-aid-burn'],
  limits: 'The times are for adult skin; a child’s burns sooner. It speaks only of lists for young people.',
  options: {
    /** From so much in one pot, mL: what a spill soaks clothing with (common practice, no source). */
    fromMl: 1000,
    /** Water that has cooled to this still burns in seconds, °C (`moritz-henriques`). */
    cooledC: 60,
  },
  messages: {
    scalds:
      'Young people around {water} of boiling water: it burns in {fast} or less, and cooled to {cooled} still in {slow}.',
    margin: '{water} at {boil}',
    fix: 'A ladle and a pot that stays put. Or fills under {limit}.',
    handle: 'Cups stand on the ground to be filled. Feet stay clear, and one person alone handles the pot.',
    'first-aid':
      'A burn: cool running water, wet clothing off, cover it; blisters on face, hands or feet need a doctor.',
    brimLine: 'to the brim',
    ceilingLine: 'the share that is filled',
    waterLine: 'of boiling water',
  },
  judge({ vessels, hints, trip, plan }, { fromMl, cooledC }): Verdict[] {
    const largest = plan.meal?.vessels[0];
    const pot = largest === undefined ? undefined : vessels[largest];
    const young = hints.youthGroup !== undefined && valueOf(hints.youthGroup) === true;
    if (!young || pot === undefined || pot.capacityMl.grounds === 'missing') return [];
    const waterMl = pot.capacityMl.value * plan.ceiling;
    if (waterMl < fromMl) return [];
    const water = figure(waterMl / 1000, 'L', 1);
    return [
      {
        grade: 'costs-you',
        message: 'scalds',
        margin: 'margin',
        figures: {
          water,
          boil: figure(plan.boilC, '°C', 0),
          fast: seconds(plan.boilC),
          cooled: figure(cooledC, '°C'),
          slow: seconds(cooledC),
          limit: figure(fromMl / 1000, 'L'),
        },
        sum: [
          {
            sign: '',
            figure: figure(pot.capacityMl.value / 1000, 'L', 1),
            label: 'brimLine',
            grounds: pot.capacityMl.grounds,
          },
          {
            sign: '×',
            figure: figure(plan.ceiling, '', 2),
            label: 'ceilingLine',
            grounds: 'common-practice',
            cites: ['cp-fill-ceiling'],
          },
          { sign: '=', figure: water, label: 'waterLine', grounds: 'worked-out' },
        ],
        evidence: [pot.evidence],
        fix: 'fix',
        cautions: ['handle', 'first-aid'],
        assumptions: assumed([
          [phrase`how they cook`, trip.mealStyle],
          [phrase`what the pot holds`, pot.capacityMl],
        ]),
        item: pot.item,
      },
    ];
  },
});

/** How soon water of this temperature burns; both that are asked for are over the 44 °C that burn no one. */
function seconds(waterC: number): ReturnType<typeof figure> {
  return figure(scaldSeconds(waterC)!, 's', 0);
}
