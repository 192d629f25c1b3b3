import type { Measure } from '../../reading/quantities/measures.js';
import type { Phrase } from '../phrases/phrases.js';
import { SIGN, WORD, type Tokens } from '../tokens/tokens.js';

const PARTS = ',;/|•+&()[]{}:=!?–→><';

/** Of each token, how strongly it is parted from the one before: 0 not, 1 a comma or the like, 2 a sentence or a cell. */
export function breaksOf(
  text: string,
  tokens: Tokens,
  phrases: readonly Phrase[],
  figures: readonly Measure[],
): Uint8Array {
  const breaks = new Uint8Array(tokens.n + 1);
  for (let at = 1; at < tokens.n; at++)
    if (tokens.gap[at] === 2 || tokens.cell[at] !== tokens.cell[at - 1]) breaks[at] = 2;
  const inside = new Uint8Array(tokens.n);
  const ends = new Uint8Array(tokens.n);
  for (const { first, last } of figures) {
    inside.fill(1, first + 1, last + 1);
    ends[last] = 1;
  }
  const mark = (at: number, strength: number) => {
    if (at < tokens.n && breaks[at]! < strength) breaks[at] = strength;
  };
  for (let at = 0; at < tokens.n; at++) {
    if (tokens.kind[at] !== SIGN || inside[at] === 1) continue;
    const sign = tokens.fold(at);
    const spaced = at + 1 < tokens.n && tokens.gap[at + 1]! > 0;
    if (sign === '.') {
      if (at + 1 < tokens.n && (spaced || tokens.fold(at + 1) === '.') && endsSentence(text, tokens, at, ends))
        mark(at + 1, 2);
    } else if (PARTS.includes(sign)) {
      mark(at, 1);
      mark(at + 1, '!?;'.includes(sign) && spaced ? 2 : 1);
    } else if (sign === '-' && tokens.gap[at]! > 0 && spaced) mark(at + 1, 1);
  }
  for (const { role, first } of phrases)
    if ((role === 'and' || role === 'with' || role === 'or') && inside[first] === 0) mark(first, 1);
  return breaks;
}

/** Short forms that a full stop follows in the middle of a sentence. */
const SHORT_FORMS: ReadonlySet<string> = new Set(
  'incl inkl approx alum diam pers capac zzgl evtl excl stainl zus dia haut wys'.split(' '),
);
/** Letters from which a word ends a sentence even before a small letter. */
const SHORTEST_LAST_WORD = 4;
/** From here on scripts have no capitals and no spaces. */
const UNSPACED = 0x2e80;

/** A full stop ends a sentence; not after a short form, nor, before a small letter, after a word that may be one. */
function endsSentence(text: string, tokens: Tokens, at: number, ends: Uint8Array): boolean {
  const before = tokens.fold(at - 1);
  const word = tokens.isWord(at - 1);
  const next = at + 1;
  if (tokens.fold(next) === '.') return true;
  if (word && before.length <= 2 && before.charCodeAt(0) < UNSPACED && ends[at - 1] === 0) return false;
  if (tokens.kind[next] !== WORD) return tokens.kind[next] === SIGN || !SHORT_FORMS.has(before);
  const first = text.charAt(tokens.start[next]!);
  return (
    first !== first.toLowerCase() ||
    first.charCodeAt(0) >= UNSPACED ||
    (word && before.length >= SHORTEST_LAST_WORD && !SHORT_FORMS.has(before))
  );
}
