import type { Given } from '../../model/given.js';
import type { Item } from '../../model/item.js';

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

/** What can be claimed of a thing. */
export type Told = Mutable<
  Pick<
    Item,
    | 'kind'
    | 'quantity'
    | 'perPerson'
    | 'massG'
    | 'diameterMm'
    | 'baseDiameterMm'
    | 'heightMm'
    | 'boxMm'
    | 'sizeMm'
    | 'burnerMm'
    | 'supportsMm'
    | 'material'
    | 'bail'
    | 'lid'
    | 'handles'
    | 'stoveType'
    | 'stoveForm'
    | 'fuelType'
    | 'gasMix'
    | 'gasShares'
    | 'fuelMassG'
    | 'fuelVolumeMl'
  >
> & {
  capacitiesMl: Given<number>[];
  /** How many are in each of the groups that cook on their own. */
  perGroup: Given<number>;
  role: NonNullable<Item['role']>;
};
export type Field = keyof Told;

/** What a rule takes from some tokens to be said of a thing. */
export interface Claim<F extends Field = Field> {
  /** The thing, by its place in the row. */
  readonly of: number;
  readonly field: F;
  readonly given: Told[F];
  /** The figures, numbers or words it rests on, first and last token of each: a token serves one claim. None where any number of claims may rest on it. */
  readonly tokens: readonly Place[];
  /** How far from the name of the thing, in tokens. */
  readonly distance: number;
  readonly rule: string;
  /** The stronger wins; of equals the nearer, then the first of the text. */
  readonly strength: number;
  /** Of a mass: whether it is of one piece or of the row, where the text tells. */
  readonly basis?: 'each' | 'line' | undefined;
}

/** First and last token. */
export type Place = readonly [first: number, last: number];
