import type { SectionMeaning } from '../../data/words/words.js';
import type { Given } from '../../model/given.js';
import type { FuelType, ItemKind, StoveType } from '../../model/item.js';
import type { Unit } from '../quantities/units.js';

/** What the rows before lend to a row. All fields are always there: objects of one shape are read fastest. */
export interface Context {
  readonly section: SectionMeaning | undefined;
  /** The thing that the heading names: what follows tells of it. */
  readonly kind: ItemKind | undefined;
  /** The heading names several: each row that gives a size is one. */
  readonly kinds: true | undefined;
  /** The words of that heading. */
  readonly kindSpan: readonly [number, number] | undefined;
  /** Unit of the figures that show none. */
  readonly massUnit: Unit | undefined;
  readonly perPerson: boolean;
  /** For each group that cooks on its own: how many are in one, missing where the heading leaves it open. */
  readonly perGroup: Given<number> | undefined;
  /** Why nothing of this section is in the kit. */
  readonly away: string | undefined;
  readonly stoveType: StoveType | undefined;
  readonly fuelType: FuelType | undefined;
  /** Languages that put the main noun first ("bouteille d'alcool"). */
  readonly headFirst: boolean;
  /** The row has a bullet or stands in a table. */
  readonly bulleted: boolean;
  /** Lines without a bullet are lines of the list too, not prose around it. */
  readonly plainLists: boolean;
  /** The row is a line of a wrapped paragraph. */
  readonly prose: boolean;
  /** Anything in the text is about cooking. */
  readonly cooks: boolean;
}
