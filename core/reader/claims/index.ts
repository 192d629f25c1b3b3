import { capacity, capacityWithoutUnit } from './capacity.js';
import { gasMix } from './gas.js';
import {
  canWithoutUnit,
  gasInCan,
  gasWithoutUnit,
  mass,
  massesInOrder,
  massesOfSet,
  massOfAll,
  massWithoutUnit,
} from './mass.js';
import { countInName, lentPerPerson, perGroup, perPerson } from './people.js';
import { bracketed, countAfter, countBefore, countFromName, countOfBoth, packs, parts } from './quantity.js';
import type { Rule } from './rule.js';
import { sizes, sizesWithoutUnit } from './sizes.js';
import { fittings, lentTypes, roles, traits } from './traits.js';

/** Every rule by which a row tells something of its things; their order makes no difference. */
export const RULES: readonly Rule[] = [
  mass,
  massesOfSet,
  massesInOrder,
  massOfAll,
  massWithoutUnit,
  capacity,
  capacityWithoutUnit,
  gasInCan,
  gasWithoutUnit,
  canWithoutUnit,
  gasMix,
  countInName,
  parts,
  bracketed,
  packs,
  countBefore,
  countAfter,
  countFromName,
  countOfBoth,
  perPerson,
  lentPerPerson,
  perGroup,
  sizes,
  sizesWithoutUnit,
  traits,
  lentTypes,
  fittings,
  roles,
];
