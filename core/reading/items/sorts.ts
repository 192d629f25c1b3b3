import type { ItemKind } from '../../model/item.js';
import type { Term } from '../text/terms.js';

const VESSELS: readonly ItemKind[] = ['pot', 'mug', 'kettle', 'pan', 'bowl'];
const STORES: readonly ItemKind[] = ['bottle', 'bladder'];
const FIRE: readonly ItemKind[] = ['stove', 'fuel'];

const kindOf = (term: Term): ItemKind => (term.role === 'kind' ? (term.value as ItemKind) : 'fuel');

/** Whether the name of one kind right before that of another may say what sort it is: gas stove, pot lid, coffee press mug. */
function mayQualify(own: ItemKind, kind: ItemKind): boolean {
  const among = (...groups: (readonly ItemKind[])[]) => groups.some((group) => group.includes(own));
  if (own === kind) return true;
  if (kind === 'utensil') return false;
  if (kind === 'other-cook') return own !== 'utensil';
  if (kind === 'lid') return among(VESSELS, STORES, FIRE);
  if (kind === 'windscreen') return among(FIRE, ['pot', 'other-cook']);
  if (VESSELS.includes(kind)) return among(VESSELS, ['bottle', 'lid', 'other-cook']);
  return among(STORES, FIRE);
}

/**
 * Whether a noun right before another only says what sort the other is: "gas canister", "mug pot". In "stove pot" or "mugs pot" it is a
 * thing of its own, and so is a vessel in a row of names, "pot mug spoon".
 */
export function saysWhatSort(term: Term, next: Term, inRow: boolean): boolean {
  if (term.role === 'container' || next.role === 'container') return true;
  const kind = kindOf(next);
  const own = kindOf(term);
  if (inRow && VESSELS.includes(own) && VESSELS.includes(kind)) return false;
  return mayQualify(own, kind) && (term.many !== true || own === kind || own === 'fuel');
}
