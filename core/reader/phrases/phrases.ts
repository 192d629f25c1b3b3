import type { Opening, Phrase as Entry, Sense } from '../../reading/text/lexicon.js';
import { MOST_LAYERS } from '../../reading/text/lexicon.js';
import type { Term } from '../../reading/text/terms.js';
import { NUMBER, type Tokens } from '../tokens/tokens.js';

/** A word or phrase of the vocabulary at its place: tokens `first` to `last`, both included. */
export type Phrase = Term;

const LONGEST = 24;

/** Finds the phrases of a row. Of each layer the longest at a place wins, and no two overlap. */
export class Phrases {
  /** Of each layer: the last token that a phrase of it covers; the token that one last began at, and with which senses. */
  private readonly reach = new Int32Array(MOST_LAYERS);
  private readonly heldAt = new Int32Array(MOST_LAYERS);
  private readonly holder: (readonly Sense[] | undefined)[] = new Array<undefined>(MOST_LAYERS).fill(undefined);

  in(tokens: Tokens): Phrase[] {
    const found: Phrase[] = [];
    this.reach.fill(-1);
    this.heldAt.fill(-1);
    for (let first = 0; first < tokens.n; first++) {
      if (tokens.kind[first] === NUMBER) continue;
      const opening = tokens.words.opening[tokens.word[first]!];
      if (opening !== null && opening !== undefined) this.open(opening, first, tokens, found);
    }
    return found;
  }

  private open({ phrases, parts }: Opening, first: number, tokens: Tokens, found: Phrase[]): void {
    for (const entry of phrases) {
      const last = entry.words.length === 1 ? first : endOf(entry, tokens, first);
      if (last < first) continue;
      if (last > first && last + 1 < tokens.n && tokens.kind[last + 1] === NUMBER && isContent(entry)) continue;
      this.take(entry.senses, first, last, found);
    }
    if (parts.length > 0) this.take(parts, first, first, found);
  }

  private take(senses: readonly Sense[], first: number, last: number, found: Phrase[]): void {
    for (const sense of senses) {
      const { role, value, many, layer } = sense;
      const taken =
        this.heldAt[layer] === first ? this.holder[layer] !== senses || layer === 0 : first <= this.reach[layer]!;
      if (taken) continue;
      found.push({ role, value, many, layer, first, last });
      this.heldAt[layer] = first;
      this.holder[layer] = senses;
      if (last > this.reach[layer]!) this.reach[layer] = last;
    }
  }
}

const OF: readonly string[] = ['of', 'de', 'di'];

/** "cups of" goes before what is in them; before a number they are cups of a size: "cups of 400 ml". */
function isContent({ words, senses }: Entry): boolean {
  return OF.includes(words.at(-1) ?? '') && senses.every((sense) => sense.role === 'notKit');
}

/** The last token of the phrase at `first`, hyphens passed over; −1 where it does not stand there. */
function endOf({ words }: Entry, tokens: Tokens, first: number): number {
  let at = first;
  for (let i = 1; i < words.length && i < LONGEST; i++) {
    at++;
    const hyphen = tokens.fold(at);
    if (hyphen === '-' || hyphen === '_') at++;
    if (at >= tokens.n || tokens.fold(at) !== words[i] || tokens.gap[at] === 2) return -1;
  }
  return at;
}
