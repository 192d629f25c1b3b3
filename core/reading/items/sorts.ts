import type { ItemKind } from '../../model/item.js';
import type { Term } from '../text/terms.js';

/** Of each kind, the kinds whose name right before it may say what sort it is: gas stove, pot lid, mug pot. */
const SORTED_BY: Readonly<Record<ItemKind, readonly ItemKind[]>> = {
  stove: ['stove', 'fuel', 'bottle'],
  fuel: ['fuel', 'stove', 'bottle', 'bladder'],
  windscreen: ['windscreen', 'stove', 'fuel', 'pot', 'other-cook'],
  pot: ['pot', 'mug', 'kettle', 'pan', 'bowl', 'other-cook', 'bottle'],
  mug: ['mug', 'pot', 'kettle', 'bowl', 'bottle', 'lid', 'other-cook'],
  kettle: ['kettle', 'pot', 'mug', 'other-cook'],
  pan: ['pan', 'pot', 'lid', 'bowl', 'other-cook'],
  bowl: ['bowl', 'pot', 'mug', 'lid', 'other-cook'],
  lid: ['lid', 'pot', 'mug', 'kettle', 'pan', 'bowl', 'bottle', 'bladder', 'stove', 'fuel'],
  bottle: ['bottle', 'bladder', 'mug', 'fuel', 'stove', 'lid'],
  bladder: ['bladder', 'bottle'],
  utensil: ['utensil'],
  'other-cook': [
    'other-cook',
    'pot',
    'mug',
    'kettle',
    'pan',
    'bowl',
    'lid',
    'stove',
    'fuel',
    'windscreen',
    'bottle',
    'bladder',
  ],
};

const VESSELS: readonly ItemKind[] = ['pot', 'mug', 'kettle', 'pan', 'bowl'];

const kindOf = (term: Term): ItemKind => (term.role === 'kind' ? (term.value as ItemKind) : 'fuel');

/**
 * Whether a noun right before another only says what sort the other is: "gas canister", "mug pot". In "stove pot" or "mugs pot" it is a
 * thing of its own, and so is a vessel in a row of names, "pot mug spoon".
 */
export function saysWhatSort(term: Term, next: Term, inRow: boolean): boolean {
  if (term.role === 'container' || next.role === 'container') return true;
  const kind = kindOf(next);
  const own = kindOf(term);
  if (inRow && VESSELS.includes(own) && VESSELS.includes(kind)) return false;
  return SORTED_BY[kind].includes(own) && (term.many !== true || own === kind || own === 'fuel');
}
