import type { Role } from '../../reading/text/lexicon.js';
import { maskOf, type RoleMask } from '../words/roles.js';
import type { Claim } from './claim.js';
import type { Scene } from './scene.js';

/** A text and what is told of it, in the words of `tell`. */
export type Example = readonly [text: string, told: string];

/** One way in which a row tells something of its things. */
export interface Rule {
  readonly id: string;
  /** A row without any of these is passed over; all rows where it is left out. */
  readonly needs?: RoleMask;
  readonly find: (scene: Scene) => readonly Claim[];
  /** Told so because of this rule: without it the first is told otherwise. */
  readonly examples: readonly Example[];
  /** What looks alike and must not be taken for it. */
  readonly not: readonly Example[];
}

interface Written extends Omit<Rule, 'needs'> {
  readonly needs?: readonly Role[];
}

export function rule({ needs, ...written }: Written): Rule {
  return needs === undefined ? written : { ...written, needs: maskOf(needs) };
}
