import type { Role } from '../../reading/text/lexicon.js';

/** 32 bits each. Roles are placed by their names; two that share a bit cost a look, and no more. */
export const MASK_WORDS = 4;

/** A set of roles, a bit each: most rules are passed over by one look at it. */
export type RoleMask = Int32Array;

export function maskOf(roles: Iterable<Role>): RoleMask {
  const mask = new Int32Array(MASK_WORDS);
  for (const role of roles) addTo(mask, role);
  return mask;
}

export function addTo(mask: RoleMask, role: Role): void {
  let hash = 0;
  for (let at = 0; at < role.length; at++) hash = Math.imul(hash ^ role.charCodeAt(at), 0x01000193);
  const bit = ((hash ^ (hash >>> 13)) >>> 0) % (32 * MASK_WORDS);
  mask[bit >> 5]! |= 1 << (bit & 31);
}

/** Whether two masks share a role. */
export function meet(a: RoleMask, b: RoleMask): boolean {
  for (let i = 0; i < MASK_WORDS; i++) if ((a[i]! & b[i]!) !== 0) return true;
  return false;
}
