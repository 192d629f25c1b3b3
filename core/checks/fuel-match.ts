import { defineCheck, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import type { FuelType } from '../model/item.js';
import type { Fuel, Stove } from '../model/kit.js';
import type { GroundedTrip } from '../model/trip.js';

/** Do stove and fuel belong together? */
export const fuelMatch = defineCheck({
  id: 'fuel-match',
  title: 'Stove and fuel',
  asks: 'Does each stove burn a fuel that is carried, and each fuel have a stove?',
  costs: 'Nothing burns.',
  needs: ['stoves', 'fuels', 'trip'],
  cites: [],
  limits: 'It goes by kind: threads and valves of canisters differ, and a multi-fuel stove may need another jet.',
  options: {},
  messages: {
    match: 'The stove burns what is carried: {burns}.',
    'other-fuel': 'The stove burns {burns}; the list carries {carried}.',
    'no-fuel': 'There is a stove, and nothing on the list for it to burn.',
    'no-stove': 'Fuel is carried ({carried}), and no stove on the list burns it.',
    'idle-stove': 'Nothing on the list burns in the stove on {burns}.',
    'idle-fuel': 'No stove on the list burns the {carried}.',
    margin: '{burns}',
    'margin-other': '{carried} for a stove on {burns}',
    'margin-none': 'no fuel named',
    'margin-no-stove': 'no stove',
    'fix-fuel': 'Carry {burns} for this stove, or the stove for this fuel.',
    'fix-stove': 'A stove for {carried}. Or add the line of the stove, if it is carried.',
    'fix-idle-stove': 'Carry {burns} for it, or leave it at home.',
    'fix-idle-fuel': 'A stove for it, or leave it at home.',
    question: 'What does the stove burn, and how much of it is carried?',
    absent: 'no fuel',
    gas: 'canister gas',
    alcohol: 'alcohol',
    wood: 'wood',
    'liquid-fuel': 'liquid fuel',
    'solid-fuel': 'solid fuel',
  },
  judge({ stoves, fuels, trip }): Verdict[] {
    const types = stoves.map(({ type }) => valueOf(type)).map((type) => (type === 'integrated' ? 'gas' : type));
    const [stove] = stoves;
    if (stove === undefined) return withoutStove(fuels, trip);
    // Wood is found on the way; a stove of no known kind burns what there is.
    if (types.includes('wood')) return [];
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
    const known = !types.includes(undefined) && !carried.includes(undefined);
    if (burnt !== undefined) {
      const idle = known ? [...idleStoves(stoves, carried), ...idleFuels(fuels, types)] : [];
      if (idle.length > 0) return idle;
      return [{ grade: 'holds-up', message: 'match', margin: 'margin', figures: { burns: burnt }, evidence }];
    }
    // What is not known may match.
    if (burns === undefined || !known) return [];
    const figures = { burns, carried: carried[0] ?? '' };
    return [
      { grade: 'falls-short', message: 'other-fuel', margin: 'margin-other', figures, evidence, fix: 'fix-fuel' },
    ];
  },
});

/** Fuel and nothing that burns it; at a fire that is said, wood alone is no such fuel. */
function withoutStove(fuels: readonly Fuel[], trip: GroundedTrip): Verdict[] {
  const idle = fuels.find(({ type }) => valueOf(type) !== 'wood');
  const saysFire = trip.cookAt.grounds === 'stated' && trip.cookAt.value === 'fire';
  if (idle === undefined) return [];
  const carried = valueOf(idle.type);
  if (carried === undefined) return [];
  return [
    {
      grade: saysFire ? 'costs-you' : 'falls-short',
      message: 'no-stove',
      margin: 'margin-no-stove',
      figures: { carried },
      evidence: [idle.evidence, { message: 'margin-no-stove', found: 'absent' }],
      fix: 'fix-stove',
    },
  ];
}

/** Stoves that nothing on the list feeds, beside one that burns what is carried. */
function idleStoves(stoves: readonly Stove[], carried: readonly (FuelType | undefined)[]): Verdict[] {
  return stoves.flatMap(({ type, evidence }): Verdict[] => {
    const kind = valueOf(type);
    const burns = kind === 'integrated' ? 'gas' : kind;
    return burns === undefined || carried.includes(burns)
      ? []
      : [
          {
            grade: 'costs-you',
            message: 'idle-stove',
            margin: 'margin-none',
            figures: { burns },
            evidence: [evidence],
            fix: 'fix-idle-stove',
          },
        ];
  });
}

/** Fuel that no stove burns, beside some that one does; wood feeds a fire too. */
function idleFuels(fuels: readonly Fuel[], burnt: readonly (FuelType | undefined)[]): Verdict[] {
  return fuels.flatMap(({ type, evidence }): Verdict[] => {
    const carried = valueOf(type);
    return carried === undefined || carried === 'wood' || burnt.includes(carried)
      ? []
      : [
          {
            grade: 'costs-you',
            message: 'idle-fuel',
            margin: 'margin-no-stove',
            figures: { carried },
            evidence: [evidence],
            fix: 'fix-idle-fuel',
          },
        ];
  });
}
