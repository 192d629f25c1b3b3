import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Piece, Vessel } from '../model/kit.js';

/** Has each person something to eat from? */
export const eatWare = defineCheck({
  id: 'eat-ware',
  title: 'Something to eat from',
  asks: 'Is there a bowl, a mug or a pot of their own for each person?',
  costs: 'People eat in turns, and the food cools.',
  needs: ['onePot', 'eatWare', 'vessels', 'trip'],
  cites: ['cp-eat-ware'],
  limits: 'It counts pieces and not what they hold. People who eat from bags need none, and are not judged.',
  options: {
    /** Of several people this many eat from a pot that they share (`cp-eat-ware`). */
    fromSharedPot: 1,
  },
  messages: {
    enough: 'Something to eat from for {people#} {people:person|people}.',
    fewer: 'Something to eat from for {have#} of {people#}: the rest wait their turn.',
    uncounted: 'How many pieces “{name}” are is not said: {have#} of {people#} are sure to have something to eat from.',
    margin: '{have#} of {people#}',
    fix: '{more#} more {more:bowl or mug|bowls or mugs}.',
    question: 'How many {name} are there?',
    wareLine: 'bowls and mugs',
    potLine: 'eat from the pot',
    ownLine: 'pots of their own',
    haveLine: 'have something to eat from',
  },
  judge({ onePot, eatWare: ware, vessels, trip }, { fromSharedPot }): Verdict[] {
    const pots = vessels.filter(({ kind }) => kind === 'pot' || kind === 'pan');
    const pieces = [...ware, ...pots];
    const people = valueOf(trip.people) ?? 1;
    if (onePot || pieces.length === 0 || trip.people.grounds === 'assumed') return [];

    const bowls = ware.reduce((sum, piece) => sum + countOf(piece, people), 0);
    const own = pots.some((pot) => countOf(pot, people) >= people);
    const fromPot = pots.length === 0 ? 0 : own ? people : fromSharedPot;
    const have = bowls + fromPot;
    const enough = have >= people;
    // Whose food comes in bags can eat from them.
    if (!enough && trip.mealStyle.grounds !== 'assumed' && valueOf(trip.mealStyle) === 'boil-only') return [];

    const line = (sign: SumLine['sign'], count: number, label: string, grounds: SumLine['grounds']): SumLine => ({
      sign,
      figure: figure(count, ''),
      label,
      grounds,
    });
    const sum = [
      line('', bowls, 'wareLine', 'stated'),
      line('+', fromPot, own ? 'ownLine' : 'potLine', own ? 'stated' : 'assumed'),
      line('=', have, 'haveLine', 'worked-out'),
    ];
    const figures: Figures = {
      have: figure(Math.min(have, people), 'people'),
      people: figure(people, 'people'),
      more: figure(people - have, ''),
    };
    const about = { margin: 'margin', figures, sum, evidence: pieces.map(({ evidence }) => evidence) };
    if (enough) return [{ ...about, grade: 'holds-up', message: 'enough' }];
    const uncounted = ware.find(({ quantity }) => quantity.grounds === 'missing');
    if (uncounted === undefined) return [{ ...about, grade: 'costs-you', message: 'fewer', fix: 'fix' }];
    const item = uncounted.item === null ? {} : { item: uncounted.item };
    return [
      {
        ...about,
        grade: 'cant-tell',
        message: 'uncounted',
        figures: { ...figures, name: uncounted.name },
        question: { ...item, field: 'quantity', message: 'question' },
      },
    ];
  },
});

/** Pieces for all; at least one where the list does not count them. */
function countOf({ quantity, perPerson }: Pick<Piece | Vessel, 'quantity' | 'perPerson'>, people: number): number {
  return (valueOf(quantity) ?? 1) * (perPerson ? people : 1);
}
