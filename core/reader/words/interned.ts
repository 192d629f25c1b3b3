import type { Dictionary, Opening } from '../../reading/text/lexicon.js';
import { addTo, maskOf, MASK_WORDS, type RoleMask } from './roles.js';

/** Slots of the hash table; a power of two, more than twice the words kept. */
const SLOTS = 1 << 16;
const MOST_WORDS = 24_000;

/** Words met so far in some languages, each with its number: what is known of a word is looked up once. 0 is no word. */
export class Interned {
  readonly dictionary: Dictionary;
  /** Of each word: how it is spelt, folded. */
  readonly spelling: string[] = [''];
  /** Of each word: the phrases and compounds that it opens. */
  readonly opening: (Opening | null)[] = [null];
  private readonly slots = new Int32Array(SLOTS);
  private masks: RoleMask = new Int32Array(1024);

  constructor(dictionary: Dictionary) {
    this.dictionary = dictionary;
  }

  /** Forgets everything before a text if there is too much of it: never in the middle of one. */
  trim(): void {
    if (this.spelling.length < MOST_WORDS) return;
    this.slots.fill(0);
    this.spelling.length = this.opening.length = 1;
  }

  /** The number of the word that folded codes spell. */
  of(codes: Uint16Array, start: number, end: number): number {
    let hash = 0;
    for (let i = start; i < end; i++) hash = Math.imul(hash ^ codes[i]!, 0x01000193);
    let slot = (hash ^ (hash >>> 15)) & (SLOTS - 1);
    for (;;) {
      const word = this.slots[slot]!;
      if (word === 0) break;
      if (this.spells(word, codes, start, end)) return word;
      slot = (slot + 1) & (SLOTS - 1);
    }
    const word = this.add(String.fromCharCode(...codes.subarray(start, end)));
    // A text of more different words than fit still ends: those beyond are not found again.
    if (word < SLOTS / 2) this.slots[slot] = word;
    return word;
  }

  /** Adds what a word may say to a mask. */
  addMask(word: number, mask: RoleMask): void {
    const at = word * MASK_WORDS;
    for (let i = 0; i < MASK_WORDS; i++) mask[i]! |= this.masks[at + i]!;
  }

  private spells(word: number, codes: Uint16Array, start: number, end: number): boolean {
    const known = this.spelling[word]!;
    if (known.length !== end - start) return false;
    for (let i = start; i < end; i++) if (known.charCodeAt(i - start) !== codes[i]) return false;
    return true;
  }

  private add(spelling: string): number {
    const word = this.spelling.length;
    this.spelling.push(spelling);
    const opening = this.dictionary.opening(spelling);
    this.opening.push(opening);
    const mask = maskOf([]);
    for (const { senses } of opening?.phrases ?? []) for (const { role } of senses) addTo(mask, role);
    for (const { role } of opening?.parts ?? []) addTo(mask, role);
    const at = word * MASK_WORDS;
    if (at + MASK_WORDS > this.masks.length) {
      const more = new Int32Array(this.masks.length * 2);
      more.set(this.masks);
      this.masks = more;
    }
    this.masks.set(mask, at);
    return word;
  }
}
