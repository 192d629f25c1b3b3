import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';

/** Does an alcohol stove meet cold or snow? */
export const coldSpirit = defineCheck({
  id: 'cold-spirit',
  title: 'Alcohol in the cold',
  asks: 'Does an alcohol stove have to work in the cold, or melt snow?',
  costs: 'Long waits and much fuel; it lights badly when it is cold.',
  needs: ['onePot', 'stoves', 'trip', 'plan'],
  cites: ['cp-spirit-cold'],
  limits:
    'Practitioners disagree: some never take it into snow, others melt with it slowly. Screens and pre-warming change much.',
  options: {
    /** Coldest at which nothing is said, °C: common practice (`cp-spirit-cold`). */
    coldC: -5,
  },
  messages: {
    cold: 'An alcohol stove at {low} lights slowly and heats slowly.',
    snow: 'Melting snow on alcohol is slow and takes much fuel; it is not impossible.',
    'snow-if': 'If snow is the water, alcohol melts it slowly and with much fuel; it is not impossible.',
    'snow-figure-if': 'If snow is the water, alcohol melts it in {minutes} and {grams} a day: slow, not impossible.',
    'snow-figure': 'Melting snow on alcohol takes {minutes} and {grams} a day; it is slow, not impossible.',
    margin: '{low}, alcohol',
    'margin-snow': 'snow on alcohol',
    'fix-warm': 'Carry the bottle warm and screen the burner. Or a gas or petrol stove made for the cold.',
  },
  judge({ onePot, stoves, trip, plan }, options): Verdict[] {
    const stove = stoves[0];
    const low = valueOf(trip.lowC) ?? 0;
    const snow =
      valueOf(trip.waterFrom) === 'snow' ||
      (valueOf(trip.waterFrom) === 'either' && trip.waterFrom.grounds === 'stated');
    if (onePot || stove === undefined || valueOf(stove.type) !== 'alcohol' || (!snow && low > options.coldC)) return [];
    const maybe = valueOf(trip.waterFrom) === 'either' ? '-if' : '';
    const melt = plan.tasks.find((task) => task.id === 'melt');
    return [
      {
        grade: 'costs-you',
        message: snow ? `${melt === undefined ? 'snow' : 'snow-figure'}${maybe}` : 'cold',
        margin: snow ? 'margin-snow' : 'margin',
        figures: {
          low: figure(low, '°C', 0),
          ...(melt === undefined ? {} : { minutes: figure(melt.minutes, 'min', 0), grams: figure(melt.grams, 'g', 0) }),
        },
        evidence: [stove.evidence],
        fix: 'fix-warm',
        assumptions: assumed([[phrase`the lowest temperature`, trip.lowC]]),
      },
    ];
  },
});
