import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';

/** Do the bottles and bladders carry a day's and a night's water? */
export const waterStore = defineCheck({
  id: 'water-store',
  title: 'Water carried',
  asks: 'Is there room for the water of a day and a night?',
  costs: 'More walks to the water, or a dry night.',
  needs: ['onePot', 'vessels', 'stoves', 'waterCarriers', 'trip'],
  cites: ['cp-water-carried', 'efsa-water-2010', 'iom-water-2004'],
  limits:
    'How far the water is decides what must be carried; the list seldom says. In heat and on snow people need more.',
  options: {
    /** Room a person, mL (`cp-water-carried`); EFSA and IOM give 2.0–3.7 L of all water a day. */
    least: 2000,
    full: 3000,
    /** Share of the least from which it is no complaint: water on the way fills the bottles again (common practice). */
    refilled: 0.5,
  },
  messages: {
    enough: 'Room for {have} of water.',
    refilled: 'Room for {have} of water, filled again on the way.',
    little: 'Room for {have} of water: water has to be near.',
    none: 'Nothing on the list carries water.',
    unknown: 'Nothing says how much water the {count} {count:piece holds|pieces hold}.',
    margin: '{have} of {need}',
    'margin-none': 'no bottle',
    'margin-unknown': 'size not given',
    'fix-more': 'Room for {more} more.',
    'fix-add': 'Add bottles or a bladder for {need}.',
    question: '“{name}”: how much does it hold?',
    absent: 'no bottle, no bladder',
    allLine: 'carried in all',
    peopleLine: 'people',
    eachLine: 'a day and a night, each',
    needLine: 'room wanted',
  },
  judge({ onePot, vessels, stoves, waterCarriers, trip }, options): Verdict[] {
    if (onePot || (waterCarriers.length === 0 && (vessels.length === 0 || stoves.length === 0))) return [];
    const people = valueOf(trip.people) ?? 1;
    const low = (options.least * people) / 1000;
    const high = (options.full * people) / 1000;
    const range = { low, likely: (low + high) / 2, high };
    const each = { low: low / people, likely: range.likely / people, high: high / people };
    const need = figure(range, 'L', 1);
    const assumptions = assumed([[phrase`the number of people`, trip.people]]);
    const about = { assumptions, cites: ['cp-water-carried'] };
    if (waterCarriers.length === 0) {
      const evidence = [{ message: 'absent', found: 'absent' } as const];
      return [
        {
          ...about,
          grade: 'costs-you',
          message: 'none',
          margin: 'margin-none',
          figures: { need },
          evidence,
          fix: 'fix-add',
        },
      ];
    }
    const held = waterCarriers.map((piece) => {
      const each = valueOf(piece.capacityMl);
      const count = (valueOf(piece.quantity) ?? 1) * (piece.perPerson ? people : 1);
      return each === undefined ? undefined : (each * count) / 1000;
    });
    const known = held.reduce<number>((sum, litres) => sum + (litres ?? 0), 0);
    const unknown = waterCarriers.filter((_, i) => held[i] === undefined);
    const [first] = unknown;
    const evidence = waterCarriers.map((piece) => piece.evidence);
    const have = figure(known, 'L', 1);
    if (known < low && first !== undefined) {
      const question = {
        ...(first.item === null ? {} : { item: first.item }),
        field: 'capacityMl',
        message: 'question',
      } as const;
      const figures = { count: figure(unknown.length, ''), name: first.name };
      return [
        { ...about, grade: 'cant-tell', message: 'unknown', margin: 'margin-unknown', figures, evidence, question },
      ];
    }
    const sum: SumLine[] = [
      { sign: '', figure: have, label: 'allLine', grounds: 'worked-out' },
      { sign: '', figure: figure(people, ''), label: 'peopleLine', grounds: 'stated' },
      {
        sign: '×',
        figure: figure(each, 'L', 1),
        label: 'eachLine',
        grounds: 'common-practice',
        cites: ['cp-water-carried', 'efsa-water-2010', 'iom-water-2004'],
      },
      { sign: '=', figure: need, label: 'needLine', grounds: 'worked-out' },
    ];
    const figures = { have, need, more: figure(Math.max(0, low - known), 'L', 1) };
    return known < low * options.refilled - 1e-9
      ? [{ ...about, grade: 'costs-you', message: 'little', margin: 'margin', figures, sum, evidence, fix: 'fix-more' }]
      : [
          {
            ...about,
            grade: 'holds-up',
            message: known < low - 1e-9 ? 'refilled' : 'enough',
            margin: 'margin',
            figures,
            sum,
            evidence,
          },
        ];
  },
});
