import type { Messages } from '../model/check.js';

/** Titles of tasks, labels of their sums, and the sentences of the totals. */
export const PLAN_MESSAGES: Messages = {
  melt: 'Snow to water',
  meal: 'Hot meal',
  drinks: 'Hot drinks',
  treat: 'Water boiled to drink',
  people: 'people',
  meals: 'hot meals a day',
  'melt-each': 'water a person a day, from snow',
  'meal-each': 'a meal, least to full portion',
  'drinks-each': 'a hot drink',
  water: 'water a day',
  heat: 'heat into the pot',
  useful: 'heat of a gram of fuel that reaches the pot',
  fuel: 'fuel a day',
  round: 'round',
  rounds: 'rounds',
  loads: 'loads',
  'per-day': 'A day takes {litres} of water, {minutes} and {grams} of fuel.',
  'per-trip': '{days#} {days:day|days} take {grams} of fuel.',
  'per-trip-carried': '{days#} {days:day|days} take {grams} of fuel; {carried} are carried.',
};
