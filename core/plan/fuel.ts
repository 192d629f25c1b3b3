import { valueOf } from '../model/given.js';
import type { FuelType } from '../model/item.js';
import type { Fuel } from '../model/kit.js';
import { countOf, type Party } from './count.js';

/** The fuels that this flame burns; one of unknown kind is taken for its. */
export function fuelsFor(fuels: readonly Fuel[], burns: FuelType): readonly Fuel[] {
  return fuels.filter(({ type }) => (valueOf(type) ?? burns) === burns);
}

/** Net fuel carried for a flame, g; null where none is, where some of it is not known, and for wood, which is found on the way. */
export function carriedGrams(fuels: readonly Fuel[], burns: FuelType, party: Party): number | null {
  if (burns === 'wood') return null;
  const own = fuelsFor(fuels, burns);
  if (own.length === 0) return null;
  return own.reduce<number | null>((sum, fuel) => {
    const net = valueOf(fuel.netG);
    return sum === null || net === undefined ? null : sum + net * countOf(fuel, party);
  }, 0);
}
