import type { FuelType, ItemKind } from '../../model/item.js';
import type { Phrase } from '../phrases/phrases.js';

/** A noun of a row that stands for a thing. */
export interface Thing {
  /** Its place among the things of the row. */
  readonly id: number;
  readonly kind: ItemKind;
  /** The tokens of its name, with what only says of what sort it is; −1 where a heading names it. */
  readonly first: number;
  readonly last: number;
  /** Whether its name is of one, of many, or does not tell. */
  readonly many: boolean | undefined;
  /** The noun itself; undefined where the row has none for it. */
  readonly noun: Phrase | undefined;
  /** Why its kind is a guess, where it is one. */
  readonly because: string | undefined;
  /** A lid that is told of as part of it, and whether it is denied. */
  readonly lid: { readonly phrase: Phrase; readonly denied: boolean } | undefined;
  /** Of a fuel, what it is, as far as its words tell. */
  readonly fuel: FuelType | undefined;
}
