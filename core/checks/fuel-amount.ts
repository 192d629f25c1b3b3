import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, Range, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';
import { fuelsFor } from '../plan/fuel.js';

/** Is enough fuel carried for the trip? */
export const fuelAmount = defineCheck({
  id: 'fuel-amount',
  title: 'Fuel carried',
  asks: 'Does the fuel last the trip, with a quarter to spare?',
  costs: 'Cold food, or no water from snow.',
  needs: ['fuels', 'trip', 'plan'],
  cites: ['cp-fuel-margin', 'cp-fuel-per-litre', 'cp-wind-factor'],
  limits:
    'Wind and habits change fuel more than anything on a list; a first trip with a stove is the best measure of it.',
  options: {
    /** Spare over the likely need (`cp-fuel-margin`). */
    spare: 1.25,
  },
  messages: {
    enough: 'The fuel lasts {days#} {days:day|days} with a quarter to spare.',
    tight: 'The fuel covers the likely need for {days#} {days:day|days} and leaves little over.',
    short: 'The fuel runs short of {days#} {days:day|days}.',
    'snow-decides': 'It covers {days#} {days:day|days} from streams and not from snow.',
    'days-missing': 'It lasts {lasts#} {lasts:day|days}; nothing says how long the trip is.',
    'amount-missing': 'Nothing says how much fuel is carried; {days#} {days:day takes|days take} about {need}.',
    margin: '{carried} of {need}',
    'margin-missing': 'amount not given',
    'fix-more': 'Carry {more} more, about {wanted} in all.',
    'ask-days': 'How many days is the trip?',
    'ask-amount': '“{name}”: how much fuel is in it?',
    'ask-water': 'Will the water come from streams, or from snow?',
    dayLine: 'fuel a day, {low} to {high}',
    daysLine: 'days',
    needLine: 'likely need',
    spareLine: 'a quarter to spare',
    wantedLine: 'wanted',
    carriedLine: 'carried, net',
  },
  judge({ fuels, trip, plan }, options): Verdict[] {
    const { perDay, tripGrams, carriedGrams } = plan;
    // Wood is found on the way; a typed pot has no fuel.
    const own = plan.burns === null || plan.burns === 'wood' ? [] : fuelsFor(fuels, plan.burns);
    if (own.length === 0 || perDay === null || tripGrams === null) return [];
    const evidence = own.map((can) => can.evidence);
    const days = valueOf(trip.days) ?? 1;
    const daysFigure = figure(days, 'days');
    if (carriedGrams === null) {
      const unknown = own.find((can) => can.netG.grounds === 'missing');
      if (unknown === undefined) return [];
      const question = {
        ...(unknown.item === null ? {} : { item: unknown.item }),
        field: 'fuelMassG',
        message: 'ask-amount',
      } as const;
      const figures = { name: unknown.name, days: daysFigure, need: figure(tripGrams, 'g', 0) };
      return [{ grade: 'cant-tell', message: 'amount-missing', margin: 'margin-missing', figures, evidence, question }];
    }
    const carried = figure(carriedGrams, 'g', 0);
    if (trip.days.grounds === 'assumed') {
      const lasts = {
        low: Math.floor(carriedGrams / perDay.grams.high),
        likely: carriedGrams / perDay.grams.likely,
        // A day without any snow to melt may take no fuel at all.
        high: Math.floor(carriedGrams / (perDay.grams.low || perDay.grams.likely)),
      };
      const figures = {
        carried,
        need: figure(perDay.grams, 'g', 0),
        lasts: figure({ ...lasts, likely: Math.min(lasts.high, Math.max(lasts.low, lasts.likely)) }, 'days', 0),
      };
      return [
        {
          grade: 'cant-tell',
          message: 'days-missing',
          margin: 'margin',
          figures,
          evidence,
          question: { field: 'trip.days', message: 'ask-days' },
        },
      ];
    }
    const melt = plan.tasks.find((task) => task.id === 'melt');
    const either = valueOf(trip.waterFrom) === 'either' && melt !== undefined;
    const boil = plan.tasks.filter((task) => task !== melt).reduce((sum, task) => sum + task.grams.likely, 0) * days;
    const all = boil + (melt?.grams.likely ?? 0) * days;
    const answer = (likelyG: number) =>
      carriedGrams >= likelyG * options.spare ? 'enough' : carriedGrams >= likelyG ? 'tight' : 'short';
    const [dry, snow] = either ? [answer(boil), answer(all)] : [answer(all), answer(all)];
    const settles = either && dry !== 'short' && snow === 'short';
    const likelyG = either && dry === 'short' ? boil : all;
    const wanted = Math.ceil((likelyG * options.spare) / 10) * 10;
    const range: Range = { low: tripGrams.low, likely: tripGrams.likely, high: tripGrams.high };
    const figures: Figures = {
      carried,
      days: daysFigure,
      need: figure(range, 'g', 0),
      more: figure(Math.max(0, wanted - carriedGrams), 'g', 0),
      wanted: figure(wanted, 'g', 0),
      low: figure(perDay.grams.low, 'g', 0),
      high: figure(perDay.grams.high, 'g', 0),
    };
    const sum: SumLine[] = [
      {
        sign: '',
        figure: figure(likelyG / days, 'g', 0),
        label: 'dayLine',
        grounds: 'worked-out',
        cites: ['cp-wind-factor'],
      },
      { sign: '×', figure: figure(days, ''), label: 'daysLine', grounds: 'stated' },
      { sign: '=', figure: figure(likelyG, 'g', 0), label: 'needLine', grounds: 'worked-out' },
      {
        sign: '×',
        figure: figure(options.spare, '', 2),
        label: 'spareLine',
        grounds: 'common-practice',
        cites: ['cp-fuel-margin'],
      },
      { sign: '=', figure: figure(likelyG * options.spare, 'g', 0), label: 'wantedLine', grounds: 'worked-out' },
      { sign: '', figure: carried, label: 'carriedLine', grounds: 'worked-out' },
    ];
    const assumptions = [
      ...assumed([
        [phrase`the number of people`, trip.people],
        [phrase`how they cook`, trip.mealStyle],
        [phrase`the wind`, trip.wind],
        ...(either ? [[phrase`where the water comes from`, trip.waterFrom] as const] : []),
      ]),
      ...plan.assumptions,
    ];
    const about = { margin: 'margin', figures, sum, evidence, assumptions };
    if (settles)
      return [
        {
          ...about,
          grade: 'cant-tell',
          message: 'snow-decides',
          question: { field: 'trip.waterFrom', message: 'ask-water' },
        },
      ];
    if (snow === 'enough') return [{ ...about, grade: 'holds-up', message: 'enough' }];
    return [{ ...about, grade: snow === 'tight' ? 'costs-you' : 'falls-short', message: snow, fix: 'fix-more' }];
  },
});
