import type { Range, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import { TASKS, type FuelNeed, type Meal, type Place, type Task, type TaskId, type Use } from '../model/plan.js';
import type { SourceId } from '../model/source.js';
import type { GroundedTrip } from '../model/trip.js';
import { HEAT_SOURCES } from '../data/stoves.js';
import type { Party } from './count.js';
import { eachEnd, mostOf, sumOf, times } from './ranges.js';

/** One use on one place, with how many places do the same. */
interface Placed {
  readonly use: Use;
  readonly place: Place;
}

/** All uses of a day by what they are for, each with how its litres and grams come out. */
export function tasksOf(
  places: readonly Place[],
  fuels: readonly FuelNeed[],
  kit: Kit,
  trip: GroundedTrip,
  party: Party,
  meal: Meal | null,
): Task[] {
  const placed = places.flatMap((place) => place.uses.map((use): Placed => ({ use, place })));
  return TASKS.flatMap((id) => {
    const own = placed.filter(({ use }) => use.task === id);
    return own.length === 0 ? [] : [taskOf(id, own, fuels, kit, trip, party, meal)];
  });
}

function taskOf(
  id: TaskId,
  placed: readonly Placed[],
  fuels: readonly FuelNeed[],
  kit: Kit,
  trip: GroundedTrip,
  party: Party,
  meal: Meal | null,
): Task {
  const worth = ({ burns }: Place) => fuels.find((fuel) => fuel.burns === burns)?.worth ?? 1;
  const all = (of: (one: Placed) => Range) => sumOf(placed.map((one) => times(of(one), one.place.alike)));
  const litres = all(({ use }) => use.litres);
  const energyKj = all(({ use }) => use.heated!.energyKj);
  const grams = all(({ use, place }) => times(use.heated!.grams, worth(place)));
  const byPlace = (of: (use: Use) => Range) =>
    [...new Set(placed.map(({ place }) => place))].map((place) =>
      sumOf(placed.filter((one) => one.place === place).map(({ use }) => of(use))),
    );
  const meals = valueOf(trip.hotMealsPerDay) ?? 1;
  return {
    id,
    litres,
    rounds:
      id === 'melt'
        ? mostOf(placed.map(({ use }) => use.turns))
        : id === 'meal' && meal !== null
          ? eachEnd((end) => Math.ceil(meals * meal.turns[end] - 1e-9))
          : mostOf(byPlace((use) => use.turns)),
    energyKj,
    minutes: mostOf(byPlace((use) => use.heated!.minutes)),
    grams,
    sum: [
      line('', party.people, 'people', 'people'),
      ...(id === 'meal' && meals !== 1 ? [line('×', meals, '', 'meals')] : []),
      each(id, litres, party.people * (id === 'meal' ? meals : 1)),
      { sign: '=', figure: { value: litres, unit: 'L' }, label: 'water', grounds: 'worked-out' },
      ...fuelLines(energyKj, grams, citesOf(placed, kit)),
    ],
  };
}

/** What of the task one person has. */
function each(id: TaskId, litres: Range, heads: number): SumLine {
  const melt = id === 'melt';
  return {
    sign: '×',
    figure: { value: whole(times(litres, (melt ? 1 : 1000) / heads)), unit: melt ? 'L' : 'mL' },
    label: `${id}-each`,
    grounds: 'common-practice',
    cites: [melt ? 'cp-snow-water-day' : id === 'meal' ? 'cp-meal-portion' : 'cp-hot-drink'],
  };
}

/** One value where the ends are the same. */
function whole(range: Range): Range | number {
  return range.low === range.high ? range.low : range;
}

function citesOf(placed: readonly Placed[], kit: Kit): SourceId[] {
  const sources = placed.map(({ place }) =>
    place.stove === null ? 'fire' : (valueOf(kit.stoves[place.stove]!.type) ?? place.burns!),
  );
  return [...new Set(sources.flatMap((source) => HEAT_SOURCES[source].cites))];
}

function line(sign: SumLine['sign'], value: number, unit: 'people' | '', label: string): SumLine {
  return { sign, figure: { value, unit }, label, grounds: 'stated' };
}

/** Heat ÷ what of the fuel's heat reaches the pot = grams. */
function fuelLines(energyKj: Range, grams: Range, cites: readonly SourceId[]): SumLine[] {
  const useful = eachEnd((end) => energyKj[end] / grams[end]);
  return [
    { sign: '', figure: { value: energyKj, unit: 'kJ' }, label: 'heat', grounds: 'worked-out', cites: ['iapws-95'] },
    {
      sign: '÷',
      figure: {
        value: {
          low: Math.min(useful.low, useful.likely, useful.high),
          likely: useful.likely,
          high: Math.max(useful.low, useful.likely, useful.high),
        },
        unit: 'kJ',
      },
      label: 'useful',
      grounds: 'published',
      cites: [...cites, 'cp-wind-factor'],
    },
    { sign: '=', figure: { value: grams, unit: 'g' }, label: 'fuel', grounds: 'worked-out' },
  ];
}
