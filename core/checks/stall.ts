import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';
import { usesOf } from '../plan/uses.js';

/** Is the flame strong enough to bring its pot to the boil? */
export const stall = defineCheck({
  id: 'stall',
  title: 'Strength of the flame',
  asks: 'Does the flame bring the pot to the boil, with the lid and the wind that there are?',
  costs: 'The water gets hot and never boils.',
  needs: ['vessels', 'stoves', 'trip', 'plan'],
  cites: ['engineering-toolbox-tanks', 'cp-wind-factor', 'cp-burner-power'],
  limits: 'By the likely power of its kind of stove: a strong flame of that kind may boil where a likely one does not.',
  options: {},
  messages: {
    lid: '{wind} the open pot stops at {stalls}: with a lid it boils, and a day takes {grams} of fuel.',
    calm: '{wind} the pot stops at {stalls}: out of the wind it boils, and a day takes {grams} of fuel.',
    'lid-calm': '{wind} the pot stops at {stalls}: with a lid and out of the wind it boils, for {grams} of fuel a day.',
    never: '{wind} the pot stops at {stalls}, with a lid and out of the wind too: there is no day to work out.',
    margin: '{stalls} of {boil}',
    'fix-lid': 'A lid of any kind: foil or a plate will do.',
    'fix-calm': 'A place out of the wind, or the screen that the stove’s maker allows.',
    'fix-lid-calm': 'A lid, and a place out of the wind.',
    'fix-never': 'A stronger stove, or a smaller pot with a lid.',
    calmAir: 'In still air',
    breeze: 'In a breeze',
    windy: 'In wind',
  },
  judge({ vessels, stoves, trip, plan }): Verdict[] {
    const stalls = usesOf(plan).flatMap(({ use, stove }) =>
      use.stall === null ? [] : [{ ...use, stall: use.stall, stove }],
    );
    // One pot on one flame is told once, whatever it heats.
    const told = stalls.filter(
      (one, i) => stalls.findIndex(({ vessel, stove }) => vessel === one.vessel && stove === one.stove) === i,
    );
    return told.map(({ vessel, stove, stall: { atC, cure } }): Verdict => {
      const pot = vessels[vessel]!;
      const wind = valueOf(trip.wind) ?? 'breeze';
      return {
        grade: cure === null ? 'falls-short' : 'costs-you',
        message: cure ?? 'never',
        margin: 'margin',
        figures: {
          wind: wind === 'calm' ? 'calmAir' : wind,
          stalls: figure(Math.floor(atC), '°C', 0),
          boil: figure(plan.boilC, '°C', 0),
          grams: figure(plan.perDay?.grams.likely ?? 0, 'g', 0),
        },
        evidence: [pot.evidence, ...(stove === null ? [] : [stoves[stove]!.evidence])],
        fix: `fix-${cure ?? 'never'}`,
        assumptions: assumed([[phrase`the wind`, trip.wind]]),
        item: pot.item,
      };
    });
  },
});
