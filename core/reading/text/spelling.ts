/** Words seen before, each in the slot of its hash: most words of a list come again, and need no new string. */
const SLOTS = 1 << 14;
const seen = new Array<string | undefined>(SLOTS).fill(undefined);

/** The string of the codes from `start` to `end`. */
export function spelling(codes: Uint16Array, start: number, end: number): string {
  let hash = 0;
  for (let i = start; i < end; i++) hash = Math.imul(hash ^ (codes[i] ?? 0), 0x01000193);
  const slot = (hash ^ (hash >>> 15)) & (SLOTS - 1);
  const known = seen[slot];
  if (known !== undefined && spells(known, codes, start, end)) return known;
  const word = String.fromCharCode(...codes.subarray(start, end));
  seen[slot] = word;
  return word;
}

function spells(word: string, codes: Uint16Array, start: number, end: number): boolean {
  if (word.length !== end - start) return false;
  for (let i = start; i < end; i++) if (word.charCodeAt(i - start) !== codes[i]) return false;
  return true;
}
