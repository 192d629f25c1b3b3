import { defineCheck, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';

/** Do stove and fuel belong together? */
export const fuelMatch = defineCheck({
  id: 'fuel-match',
  title: 'Stove and fuel',
  asks: 'Does the stove burn the fuel that is carried?',
  costs: 'Nothing burns.',
  needs: ['stoves', 'fuels'],
  cites: [],
  limits: 'It goes by kind: threads and valves of canisters differ, and a multi-fuel stove may need another jet.',
  options: {},
  messages: {
    match: 'The stove burns what is carried: {burns}.',
    'other-fuel': 'The stove burns {burns}; the list carries {carried}.',
    'no-fuel': 'There is a stove, and nothing on the list for it to burn.',
    margin: '{burns}',
    'margin-other': '{carried} for a stove on {burns}',
    'margin-none': 'no fuel named',
    'fix-fuel': 'Carry {burns} for this stove, or the stove for this fuel.',
    question: 'What does the stove burn, and how much of it is carried?',
    absent: 'no fuel',
    gas: 'canister gas',
    alcohol: 'alcohol',
    wood: 'wood',
    'liquid-fuel': 'liquid fuel',
    'solid-fuel': 'solid fuel',
  },
  judge({ stoves, fuels }): Verdict[] {
    const types = stoves.map(({ type }) => valueOf(type)).map((type) => (type === 'integrated' ? 'gas' : type));
    const [stove] = stoves;
    // Wood is found on the way; a stove of no known kind burns what there is.
    if (stove === undefined || types.includes('wood')) return [];
    if (fuels.length === 0) {
      const evidence = [stove.evidence, { message: 'absent', found: 'absent' } as const];
      const question = { field: 'kind', kind: 'fuel', message: 'question' } as const;
      return stove.item === null
        ? []
        : [{ grade: 'cant-tell', message: 'no-fuel', margin: 'margin-none', figures: {}, evidence, question }];
    }
    const carried = fuels.map(({ type }) => valueOf(type));
    const [burns] = types;
    const evidence = [stove.evidence, ...fuels.map((fuel) => fuel.evidence)];
    const burnt = carried.find((fuel) => fuel !== undefined && types.includes(fuel));
    if (burnt !== undefined)
      return [{ grade: 'holds-up', message: 'match', margin: 'margin', figures: { burns: burnt }, evidence }];
    // What is not known may match.
    if (burns === undefined || types.includes(undefined) || carried.includes(undefined)) return [];
    const figures = { burns, carried: carried[0] ?? '' };
    return [
      { grade: 'falls-short', message: 'other-fuel', margin: 'margin-other', figures, evidence, fix: 'fix-fuel' },
    ];
  },
});
