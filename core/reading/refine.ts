import type { Item } from '../model/item.js';
import { itemOf, type Draft } from './items/draft.js';
import type { Stretch } from './items/stretch.js';

/** What only the whole list tells. */
export function refine(drafts: readonly Draft[], _stretches: readonly Stretch[]): Item[] {
  return drafts.map(itemOf);
}
