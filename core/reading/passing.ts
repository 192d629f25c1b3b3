import { valueOf } from '../model/given.js';
import type { Item } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import type { Passing } from '../model/reading.js';

/**
 * Of what a text names without listing it, what is worth asking about: one of each kind, size and material, and none that
 * the list holds already. A thing without a size is the one that has it.
 */
export function passingOf(items: readonly Item[], named: readonly Item[]): Passing[] {
  const held = items.filter(({ carried }) => carried);
  const kept: Item[] = [];
  const inOrder = named.filter(({ carried }) => carried).sort((a, b) => a.span[0] - b.span[0]);
  // What has a size goes before what may be the same without.
  for (const item of [...inOrder.filter(hasSize), ...inOrder.filter((one) => !hasSize(one))])
    if (![...held, ...kept].some((other) => isSame(item, other))) kept.push(item);
  return kept
    .sort((a, b) => a.span[0] - b.span[0])
    .map((item) => ({ ...item, because: phrase`a sentence names it, and does not say whether it goes along` }));
}

function hasSize({ capacitiesMl }: Item): boolean {
  return capacitiesMl.length > 0;
}

/** Whether one says nothing that the other does not. */
function isSame(item: Item, other: Item): boolean {
  if (item.kind !== other.kind) return false;
  const own = sizesOf(item);
  return own.every((size) => sizesOf(other).includes(size)) || (own.length === 0 && !hasSize(item));
}

function sizesOf({ capacitiesMl }: Item): number[] {
  return capacitiesMl.map((capacity) => Math.round(valueOf(capacity) ?? 0));
}
