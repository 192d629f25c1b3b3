import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';

/** How long must water boil here before it is drunk? */
export const boilWater = defineCheck({
  id: 'boil-water',
  title: 'Boiling drinking water',
  asks: 'At what temperature does water boil where they cook, and how long is it boiled to be drunk?',
  costs: 'Water from a stream carries germs.',
  needs: ['onePot', 'pots', 'trip', 'plan'],
  cites: ['epa-leaflet', 'epa-wsg-11', 'cdc-boil', 'who-boil', 'iso-2533', 'iapws-if97'],
  limits:
    'For the pressure of a standard day; a real one moves the boiling point by up to 1 °C. Boiling kills germs and takes out no poison, so it never holds up.',
  options: {
    /**
     * A rolling boil of 1 min, of 3 min above 5,000 ft (`epa-leaflet`); above 2 km by `epa-wsg-11` and `cdc-boil`.
     * The lower of the two heights is the longer boil. Reaching a rolling boil is enough by `who-boil`.
     */
    minutes: { low: 1, high: 3, aboveM: 1524, elsewhereM: 2000 },
  },
  messages: {
    boils: 'Water boils at {boil} here. Keep it at a rolling boil for {minutes} before anyone drinks it.',
    margin: '{minutes} at a rolling boil',
    longest:
      'Of three published rules the longest is used: {high} above {above}. Others say {high} above {elsewhere}, or that reaching a rolling boil is enough at any altitude.',
    germs: 'Boiling kills germs. It takes out no poison, fuel or salt: leave water that may hold those.',
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
        grade: null,
        message: 'boils',
        margin: 'margin',
        figures: {
          boil,
          minutes: figure(altitude.value > minutes.aboveM ? minutes.high : minutes.low, 'min'),
          above: figure(minutes.aboveM, 'm'),
          elsewhere: figure(minutes.elsewhereM, 'm'),
          high: figure(minutes.high, 'min'),
        },
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
        cautions: ['longest', 'germs'],
      },
    ];
  },
});
