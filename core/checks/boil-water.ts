import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';

/** How long must water boil here before it is drunk? */
export const boilWater = defineCheck({
  id: 'boil-water',
  title: 'Boiling drinking water',
  asks: 'At what temperature does water boil where they cook, and how long is it boiled to be drunk?',
  costs: 'Water from a stream carries germs.',
  needs: ['onePot', 'pots', 'trip', 'plan'],
  cites: ['cdc-boil', 'who-boil', 'iso-2533', 'iapws-if97'],
  limits:
    'For the pressure of a standard day; a real one moves the boiling point by up to 1 °C. Boiling kills germs and takes out no poison.',
  options: {
    /** A rolling boil of 1 min, of 3 min above 2000 m (`cdc-boil`). Reaching it is enough by `who-boil`. */
    minutes: { low: 1, high: 3, aboveM: 2000 },
  },
  messages: {
    boils: 'Water boils at {boil} here: a rolling boil of {minutes} before it is drunk.',
    margin: '{minutes} at a rolling boil',
    who: 'The longer of two published rules is used; by the other, reaching a rolling boil is enough at any altitude.',
    altitudeLine: 'where they cook',
    boilLine: 'boiling point there',
  },
  judge({ onePot, pots, trip, plan }, { minutes }): Verdict[] {
    const altitude = trip.altitudeM;
    const cooking = pots[0];
    if (onePot || cooking === undefined || valueOf(trip.waterFrom) === 'snow') return [];
    if (altitude.grounds === 'missing' || altitude.grounds === 'assumed') return [];
    const boil = figure(plan.boilC, '°C', 0);
    return [
      {
        grade: 'holds-up',
        message: 'boils',
        margin: 'margin',
        figures: { boil, minutes: figure(altitude.value > minutes.aboveM ? minutes.high : minutes.low, 'min') },
        sum: [
          { sign: '', figure: figure(altitude.value, 'm', 0), label: 'altitudeLine', grounds: altitude.grounds },
          {
            sign: '=',
            figure: boil,
            label: 'boilLine',
            grounds: 'worked-out',
            cites: ['iso-2533', 'iapws-if97'],
          },
        ],
        evidence: [cooking.evidence],
        cautions: ['who'],
      },
    ];
  },
});
