import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures } from '../model/finding.js';

/** Is there one hot meal a person a day? */
export const hotMeal = defineCheck({
  id: 'hot-meal',
  title: 'A hot meal a day',
  asks: 'Does each person get one hot meal a day?',
  costs: 'Cold food alone wears people down.',
  needs: ['onePot', 'vessels', 'stoves', 'trip', 'plan'],
  cites: ['cp-meal-portion', 'cp-ration', 'natick-2001', 'ar-40-25'],
  limits: 'It counts meals and not what is in them. Where a stove has no pot, the room for the meal is judged instead.',
  options: {
    /** One hot meal a person a day (`cp-ration`). */
    leastADay: 1,
    /** A short ration: some 1500 kcal a day for up to ten days (`cp-ration`; `natick-2001`, `ar-40-25`). */
    ration: { kcal: 1500, days: 10 },
  },
  messages: {
    enough: 'A hot meal of {portion} a person each day.',
    few: 'Less than one hot meal a day: some {kcal} a day is bearable for {days#} days at most, and only with one.',
    none: 'Nothing to heat a meal in: some {kcal} a day is bearable for {days#} days at most, and only with a hot meal.',
    margin: '{meals#} of {least#} hot meals a day',
    'margin-none': 'no pot',
    typed: 'hot meals a day: {meals#}',
    fix: 'One hot meal of {portion} a person a day.',
    'fix-pot': 'A pot and a stove, for one hot meal of {portion} a person a day.',
    mealsLine: 'hot meals a day',
    portionLine: 'one meal, from the least to a full portion',
    dayLine: 'hot food a person a day',
  },
  judge({ onePot, vessels, stoves, trip, plan }, { leastADay, ration }): Verdict[] {
    if (onePot) return [];
    const each = { low: plan.leastMl, likely: (plan.leastMl + plan.fullMl) / 2, high: plan.fullMl };
    const portion = figure(each, 'mL', 0);
    const figures: Figures = {
      portion,
      kcal: figure(ration.kcal, 'kcal'),
      days: figure(ration.days, 'days'),
      least: figure(leastADay, ''),
    };
    const meals = trip.hotMealsPerDay;
    if (meals.grounds === 'stated' && meals.value < leastADay) {
      return [
        {
          grade: 'costs-you',
          message: 'few',
          margin: 'margin',
          figures: { ...figures, meals: figure(meals.value, '') },
          evidence: [{ message: 'typed', found: 'typed' }],
          fix: 'fix',
        },
      ];
    }
    if (vessels.length === 0) {
      const told = trip.people.grounds !== 'assumed' || trip.days.grounds !== 'assumed';
      if (!told || stoves.length > 0) return [];
      return [
        {
          grade: 'costs-you',
          message: 'none',
          margin: 'margin-none',
          figures,
          evidence: [{ message: 'margin-none', found: 'absent' }],
          fix: 'fix-pot',
        },
      ];
    }
    if (meals.grounds !== 'stated') return [];
    const day = { low: each.low * meals.value, likely: each.likely * meals.value, high: each.high * meals.value };
    return [
      {
        grade: 'holds-up',
        message: 'enough',
        margin: 'margin',
        figures: { ...figures, meals: figure(meals.value, '') },
        sum: [
          { sign: '', figure: figure(meals.value, ''), label: 'mealsLine', grounds: 'stated' },
          {
            sign: '×',
            figure: portion,
            label: 'portionLine',
            grounds: 'common-practice',
            cites: ['cp-meal-portion'],
          },
          { sign: '=', figure: figure(day, 'mL', 0), label: 'dayLine', grounds: 'worked-out' },
        ],
        evidence: [vessels[0]!.evidence],
      },
    ];
  },
});
