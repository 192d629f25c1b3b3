import { GAS_MIX_SHARES } from '../data/fuels.js';
import { valueOf } from '../model/given.js';
import type { GasShares } from '../model/item.js';
import type { Fuel } from '../model/kit.js';

/** What a canister holds, by mass: the label's own shares, else those of its mix, else an isobutane mix. */
export function gasSharesOf(can: Pick<Fuel, 'mix' | 'shares'> | undefined): GasShares {
  const shares = can && valueOf(can.shares);
  return shares ?? GAS_MIX_SHARES[(can && valueOf(can.mix)) ?? 'isobutane'];
}
