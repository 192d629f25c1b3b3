import type { NumberText } from '../../reading/text/numbers.js';
import type { Gap, Token } from '../../reading/text/tokens.js';
import type { Interned } from '../words/interned.js';
import { MASK_WORDS, type RoleMask } from '../words/roles.js';

export const WORD = 1;
export const NUMBER = 2;
export const SIGN = 3;
const TYPES = ['sign', 'word', 'number', 'sign'] as const;

/** The tokens of one row in typed arrays, filled anew for each row: words as numbers, no object a token. */
export class Tokens {
  readonly words: Interned;
  n = 0;
  /** WORD, NUMBER or SIGN. */
  kind = new Uint8Array(256);
  start = new Int32Array(256);
  end = new Int32Array(256);
  /** The word or sign as a number of `words`; 0 for a number. */
  word = new Int32Array(256);
  /** What stands before it: nothing, a space, a wide gap. */
  gap = new Uint8Array(256);
  /** The index of its cell in the row. */
  cell = new Uint16Array(256);
  /** 1 where it is struck through. */
  struck = new Uint8Array(256);
  /** Numbers as written; undefined for words and signs. */
  number: (NumberText | undefined)[] = [];
  /** What any of the words may say. */
  readonly mask: RoleMask = new Int32Array(MASK_WORDS);

  constructor(words: Interned) {
    this.words = words;
  }

  clear(): void {
    this.n = 0;
    this.mask.fill(0);
  }

  push(kind: number, start: number, end: number, word: number, gap: number, number: NumberText | undefined): void {
    if (this.n === this.kind.length) this.grow();
    const at = this.n++;
    this.kind[at] = kind;
    this.start[at] = start;
    this.end[at] = end;
    this.word[at] = word;
    this.gap[at] = gap;
    this.cell[at] = 0;
    this.struck[at] = 0;
    this.number[at] = number;
  }

  /** Moves a token to an earlier place, over one that is dropped. */
  move(from: number, to: number, gap: number): void {
    this.kind[to] = this.kind[from]!;
    this.start[to] = this.start[from]!;
    this.end[to] = this.end[from]!;
    this.word[to] = this.word[from]!;
    this.gap[to] = gap;
    this.number[to] = this.number[from];
  }

  /** A word or sign as folded; empty for a number and outside. */
  fold(at: number): string {
    return at >= 0 && at < this.n ? this.words.spelling[this.word[at]!]! : '';
  }

  isWord(at: number): boolean {
    return at >= 0 && at < this.n && this.kind[at] === WORD;
  }

  /** Takes in what the words may say, once nothing is dropped any more. */
  see(): void {
    for (let at = 0; at < this.n; at++) if (this.kind[at] !== NUMBER) this.words.addMask(this.word[at]!, this.mask);
  }

  /** The same as objects, for what still asks for them. */
  objects(): Token[] {
    const tokens: Token[] = [];
    for (let at = 0; at < this.n; at++)
      tokens.push({
        type: TYPES[this.kind[at]!]!,
        start: this.start[at]!,
        end: this.end[at]!,
        fold: this.fold(at),
        gap: this.gap[at]! as Gap,
        number: this.number[at],
      });
    return tokens;
  }

  private grow(): void {
    const more = <T extends Uint8Array | Uint16Array | Int32Array>(old: T, made: T): T => {
      made.set(old);
      return made;
    };
    const size = this.kind.length * 2;
    this.kind = more(this.kind, new Uint8Array(size));
    this.start = more(this.start, new Int32Array(size));
    this.end = more(this.end, new Int32Array(size));
    this.word = more(this.word, new Int32Array(size));
    this.gap = more(this.gap, new Uint8Array(size));
    this.cell = more(this.cell, new Uint16Array(size));
    this.struck = more(this.struck, new Uint8Array(size));
  }
}
