import type { ItemKind } from '../../model/item.js';
import type { Thing } from '../things/thing.js';
import type { Scene } from './scene.js';

const VESSELS: ReadonlySet<ItemKind> = new Set(['pot', 'mug', 'kettle', 'pan', 'bowl', 'bottle', 'bladder']);

export const isVessel = (kind: ItemKind): boolean => VESSELS.has(kind);

/** Fuel that is poured. */
export function isLiquid({ fuel }: Thing): boolean {
  return fuel === 'alcohol' || fuel === 'liquid-fuel';
}

/** Whether the name of a fuel is of its bottle or can rather than of what is in it. */
export function namesContainer({ row }: Scene, thing: Thing): boolean {
  const { first, last, noun } = thing;
  if (row.within('container', first, last) !== undefined) return true;
  const bottle = row.of('kind').some((phrase) => {
    const holds = phrase.value === 'bottle' || phrase.value === 'bladder';
    return holds && phrase.first >= first && phrase.last <= last;
  });
  if (bottle) return true;
  if (noun === undefined || noun.role === 'fuelTypes') return false;
  if (noun.role !== 'kind' || noun.value !== 'fuel') return true;
  const generic = row.of('section').find((phrase) => phrase.value === 'fuel' && phrase.last === last);
  if (generic !== undefined && (last - first < 2 || row.ends('fuelTypes', generic.first - 1) !== undefined))
    return false;
  return row.opens('fuelTypes', first)?.last !== last;
}
