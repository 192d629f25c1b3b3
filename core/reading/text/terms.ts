import type { Dictionary, Opening, Phrase, Sense } from './lexicon.js';
import { MOST_LAYERS } from './lexicon.js';
import type { Token } from './tokens.js';

/** A word or phrase of the vocabulary at its place: tokens `first` to `last`, both included. */
export interface Term extends Sense {
  readonly first: number;
  readonly last: number;
}

const LONGEST_PHRASE = 24;

/** Of each layer: the last token that a term of it covers; the token that a term of it last began at, and with which senses. One text is read at a time. */
const reach = new Int32Array(MOST_LAYERS);
const heldAt = new Int32Array(MOST_LAYERS);
const holder = new Array<readonly Sense[] | undefined>(MOST_LAYERS).fill(undefined);

/** Every term in the tokens, or those that begin with the words asked for. Of each layer the longest at a place wins and no two overlap. */
export function findTerms(
  tokens: readonly Token[],
  dictionary: Dictionary,
  asked?: (opening: Opening) => boolean,
): Term[] {
  const terms: Term[] = [];
  reach.fill(-1);
  heldAt.fill(-1);
  for (let first = 0; first < tokens.length; first++) {
    const token = tokens[first];
    if (token === undefined || token.type === 'number') continue;
    const opening = dictionary.opening(token.fold);
    if (opening === null || asked?.(opening) === false) continue;
    for (const phrase of opening.phrases) {
      const last = phrase.words.length === 1 ? first : matches(phrase, tokens, first);
      if (last >= first && !(last > first && tokens[last + 1]?.type === 'number' && isContent(phrase)))
        take(phrase.senses, first, last, terms);
    }
    if (opening.parts.length > 0) take(opening.parts, first, first, terms);
  }
  return terms;
}

const OF: readonly string[] = ['of', 'de', 'di'];

/** "cups of" goes before what is in them; before a number they are cups of a size: "cups of 400 ml". */
function isContent(phrase: Phrase): boolean {
  return OF.includes(phrase.words.at(-1) ?? '') && phrase.senses.every((sense) => sense.role === 'notKit');
}

function take(senses: readonly Sense[], first: number, last: number, terms: Term[]): void {
  for (const sense of senses) {
    const { role, value, many, layer } = sense;
    if (heldAt[layer] === first ? holder[layer] !== senses || layer === 0 : first <= (reach[layer] ?? -1)) continue;
    terms.push({ role, value, many, layer, first, last });
    heldAt[layer] = first;
    holder[layer] = senses;
    if (last > (reach[layer] ?? -1)) reach[layer] = last;
  }
}

/** The last token of the phrase at `first`, hyphens passed over; −1 where it does not stand there. */
function matches(phrase: Phrase, tokens: readonly Token[], first: number): number {
  let at = first;
  for (let i = 1; i < phrase.words.length && i < LONGEST_PHRASE; i++) {
    at++;
    let token = tokens[at];
    if (token?.fold === '-' || token?.fold === '_') token = tokens[++at];
    if (token === undefined || token.fold !== phrase.words[i] || token.gap === 2) return -1;
  }
  return at;
}
