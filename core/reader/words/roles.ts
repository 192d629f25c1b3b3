import type { Role } from '../../reading/text/lexicon.js';

/** Every role that a word can have, in the order of their bits. */
const ROLES = [
  ...['kind', 'container', 'pronoun', 'notKit', 'tails', 'heads', 'asides', 'fits', 'otherUse', 'food', 'water'],
  ...['materials', 'stoveTypes', 'stoveForms', 'saucepans', 'jackets', 'fuelTypes', 'tablets', 'gasMixes', 'roles'],
  ...['bail', 'hung', 'handles', 'lidded', 'number', 'article', 'determiners', 'pieces', 'parts', 'flames'],
  ...['countLabels', 'pair', 'packOf', 'set', 'each', 'together', 'perPerson', 'shared', 'perGroup', 'no', 'yes'],
  ...['missing', 'with', 'and', 'or', 'to', 'if', 'about', 'away', 'optional', 'gross', 'net', 'empty', 'holds'],
  ...['weighs', 'dimension', 'rate', 'column', 'section', 'totals', 'unit', 'us', 'imperial', 'imperialSigns'],
  ...['people', 'anyone', 'peopleBefore', 'party', 'self', 'companion', 'day', 'night', 'week', 'notDays', 'span'],
  ...['season', 'month', 'monthMark', 'weekday', 'meltsSnow', 'snow', 'noSnow', 'minus', 'lows', 'cold', 'rated'],
  ...['altitude', 'fireAllowed', 'fireForbidden', 'cookOnFire', 'wind', 'youth', 'scratch', 'simmer', 'boilOnly'],
] as readonly string[] as readonly Role[];

/** 32 roles a word of the mask. */
export const MASK_WORDS = Math.ceil(ROLES.length / 32);

const BIT = new Map(ROLES.map((role, bit) => [role, bit]));

/** A set of roles, one bit each: most rules are passed over by one look at it. */
export type RoleMask = Int32Array;

export function maskOf(roles: Iterable<Role>): RoleMask {
  const mask = new Int32Array(MASK_WORDS);
  for (const role of roles) addTo(mask, role);
  return mask;
}

export function addTo(mask: RoleMask, role: Role): void {
  const bit = BIT.get(role);
  if (bit !== undefined) mask[bit >> 5]! |= 1 << (bit & 31);
}

/** Whether two masks share a role. */
export function meet(a: RoleMask, b: RoleMask): boolean {
  for (let i = 0; i < MASK_WORDS; i++) if ((a[i]! & b[i]!) !== 0) return true;
  return false;
}
