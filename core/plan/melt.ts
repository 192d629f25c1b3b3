import type { Range } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Kit } from '../model/kit.js';
import type { Melt } from '../model/plan.js';
import type { Party } from './count.js';
import { meltJob, type Circumstances, type Job } from './jobs.js';
import { assign, put, type Lane } from './lanes.js';
import { brimOf, groupsOf, isMetal } from './pots.js';
import { times } from './ranges.js';

/** Water melted for a person to drink and cook with, L a day (`cp-snow-water-day`). */
const MELT_L: Range = { low: 2.5, likely: 3.5, high: 6 };

/** The pot wanted to melt snow in; options of the check of the melting. */
export const MELT_POT = {
  /** mL: for one, for two, for each further person, and at most (`cp-winter-pot`). */
  one: 2000,
  two: 3000,
  further: 500,
  most: 5000,
  /** Shares of the wanted pot from which it holds up, and costs you. */
  holds: 0.9,
  costs: 0.65,
} as const;

/** A way to melt snow, and where it puts the pots. */
export interface MeltPlan {
  readonly melt: Melt;
  readonly assigned: readonly (readonly Job[])[];
}

/** Volume wanted to melt the water of people, mL. */
export function meltPotWantedMl(people: number): number {
  const { one, two, further, most } = MELT_POT;
  return people === 1 ? one : Math.min(most, two + further * (people - 2));
}

/**
 * The best way to melt a day's water: the share of the wanted volume, as far as it counts, then lids, then minutes, then pots. People are parted over the
 * pots by their volume, one pot a heat place. Null where no metal vessel has a capacity.
 */
export function planMelt(party: Party, lanes: readonly Lane[], about: Circumstances): MeltPlan | null {
  const { kit } = about;
  const roomy = sized(kit, (index) => kit.vessels[index]!.kind !== 'mug');
  const mugs = sized(kit, (index) => kit.vessels[index]!.kind === 'mug');
  const lidFirst = [...roomy].sort((a, b) => Number(hasLid(kit, b)) - Number(hasLid(kit, a)));
  // Nobody melts in a mug who has a pot.
  const orders = roomy.length > 0 ? [lidFirst, roomy] : [mugs];
  const plans = orders
    .flatMap((order) => [
      ...groupsOf(kit, order, party),
      ...order
        .filter((index) => kit.vessels[index]!.perPerson)
        .slice(0, 1)
        .map((index) => ({ people: 1, alike: party.people, vessels: [index] })),
    ])
    .flatMap(({ people, alike, vessels }) => {
      const places = Math.max(1, Math.floor(lanes.length / alike));
      return vessels.slice(0, places).map((_, i): MeltPlan => {
        const used = vessels.slice(0, i + 1);
        const brimMl = brimOf(kit, used);
        const jobs = used.flatMap((vessel) => {
          const litres = times(MELT_L, (people * brimOf(kit, [vessel])) / brimMl);
          return Array<Job>(alike).fill(meltJob(vessel, litres, about));
        });
        const melt = { people, alike, vessels: used, brimMl, wantedMl: meltPotWantedMl(people), eachL: MELT_L };
        return { melt, assigned: assign(jobs, lanes) };
      });
    });
  const rank = ({ melt, assigned }: MeltPlan) =>
    [
      -Math.min(MELT_POT.holds, melt.brimMl / melt.wantedMl),
      melt.vessels.filter((index) => !hasLid(kit, index)).length / melt.vessels.length,
      Math.max(...put(lanes, assigned).map(({ busy }) => Math.round(busy.likely))),
      melt.vessels.length,
    ] as const;
  return (
    plans
      .map((plan) => ({ plan, rank: rank(plan) }))
      .reduce<{ plan: MeltPlan; rank: readonly number[] } | null>(
        (best, one) => (best === null || isBefore(one.rank, best.rank) ? one : best),
        null,
      )?.plan ?? null
  );
}

function isBefore(a: readonly number[], b: readonly number[]): boolean {
  const at = a.findIndex((value, i) => value !== b[i]);
  return at >= 0 && a[at]! < b[at]!;
}

function sized(kit: Kit, of: (index: number) => boolean): number[] {
  return kit.vessels.flatMap((vessel, index) =>
    isMetal(vessel) && vessel.capacityMl.grounds !== 'missing' && of(index) ? [index] : [],
  );
}

function hasLid(kit: Kit, index: number): boolean {
  return valueOf(kit.vessels[index]!.lid) === true;
}
