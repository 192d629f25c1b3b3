import type { Dictionary, Phrase, Role, Sense } from './lexicon.js';
import { isThing } from './lexicon.js';
import type { Token } from './tokens.js';

/** A word or phrase of the vocabulary at its place: tokens `first` to `last`, both included. */
export interface Term extends Sense {
  readonly first: number;
  readonly last: number;
}

const LONGEST_PHRASE = 6;

/** Every term in the tokens. Of each role the longest at a place wins and no two overlap; nouns of things share one layer. */
export function findTerms(tokens: readonly Token[], dictionary: Dictionary): Term[] {
  const terms: Term[] = [];
  const reach = new Map<string, number>();
  for (let first = 0; first < tokens.length; first++) {
    const token = tokens[first];
    if (token === undefined || token.type === 'number') continue;
    const opening = dictionary.opening(token.fold);
    if (opening === null) continue;
    const by = new Map<string, readonly Sense[]>();
    const take = (senses: readonly Sense[], last: number) => {
      for (const sense of senses) {
        const layer = isThing(sense.role) ? 'thing' : sense.role;
        if (first <= (reach.get(layer) ?? -1) && by.get(layer) === undefined) continue;
        if (by.has(layer) && (by.get(layer) !== senses || isThing(sense.role))) continue;
        terms.push({ ...sense, first, last });
        by.set(layer, senses);
        reach.set(layer, Math.max(last, reach.get(layer) ?? -1));
      }
    };
    for (const phrase of opening.phrases) {
      const last = matches(phrase, tokens, first);
      if (last >= first) take(phrase.senses, last);
    }
    take(opening.parts, first);
  }
  return terms;
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

/** The terms of one role. */
export function ofRole(terms: readonly Term[], role: Role): Term[] {
  return terms.filter((term) => term.role === role);
}
