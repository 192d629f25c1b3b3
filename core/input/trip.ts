import { phrase } from '../model/phrase.js';
import { MEAL_STYLES, SEASONS, SNOWS, WATER_FROM, WINDS, type Trip } from '../model/trip.js';
import type { InputProblem } from '../model/report.js';
import { outOfLimits, show, type Limits } from './limits.js';

/** What a trip may be. Altitudes as for the standard atmosphere of the physics, 0 to 9000 m; the Dead Sea counts as 0. */
const FIGURES: Readonly<Record<'people' | 'days' | 'lowC' | 'altitudeM' | 'hotMealsPerDay', Limits>> = {
  people: { least: 1, most: 500, usual: [1, 60], unit: '', than: phrase`a kit can be judged for` },
  days: { least: 0.5, most: 366, usual: [1, 60], unit: 'days', than: phrase`a trip can be planned for` },
  lowC: { least: -60, most: 50, usual: [-40, 35], unit: '°C', than: phrase`anyone cooks out in` },
  altitudeM: { least: -430, most: 9000, usual: [1, 6000], unit: 'm', than: phrase`anyone cooks at` },
  hotMealsPerDay: { least: 0, most: 6, usual: [1, 3], unit: '', than: phrase`anyone cooks in a day` },
};

const CHOICES: Readonly<Record<string, readonly unknown[]>> = {
  mealStyle: MEAL_STYLES,
  drinkFromPot: [true, false],
  waterFrom: WATER_FROM,
  snow: SNOWS,
  cookAt: ['stove', 'fire'],
  wind: WINDS,
  season: SEASONS,
};

/**
 * The trip as the person set it, with what cannot be used left out and told. A trip that is not an object is the caller's misuse: TypeError.
 */
export function readTrip(input: unknown): { trip: Partial<Trip>; problems: InputProblem[] } {
  if (input === undefined) return { trip: {}, problems: [] };
  if (typeof input !== 'object' || input === null || Array.isArray(input))
    throw new TypeError('The trip is an object such as { people: 2, days: 3 }; leave it out where nothing is known.');
  const given = input as Record<string, unknown>;
  const trip: Record<string, unknown> = {};
  const problems: InputProblem[] = [];
  for (const [name, limits] of Object.entries(FIGURES)) {
    const value = given[name];
    if (value === undefined || value === null) continue;
    const number = typeof value === 'number' ? value : Number.NaN;
    const problem = Number.isFinite(number)
      ? name === 'people' && !Number.isInteger(number) && number > 0
        ? { field: 'trip.people', value: String(number), message: phrase`People come whole: ${Math.ceil(number)}?` }
        : outOfLimits(`trip.${name}`, String(number), number, limits)
      : {
          field: `trip.${name}`,
          value: show(value),
          message: phrase`“${show(value)}” is not a number; write it in figures.`,
        };
    if (problem) problems.push(problem);
    else trip[name] = number;
  }
  for (const [name, choices] of Object.entries(CHOICES)) {
    const value = given[name];
    if (value === undefined || value === null) continue;
    if (choices.includes(value)) trip[name] = value;
    else
      problems.push({
        field: `trip.${name}`,
        value: show(value),
        message: phrase`“${show(value)}” is not one of ${choices.join(', ')}.`,
      });
  }
  return { trip, problems };
}
