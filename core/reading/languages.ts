import { unitBySymbol } from './quantities/units.js';
import { known, type Lexicons } from './text/lexicon.js';
import { SAMPLE } from './text/beginning.js';
import { tokenise, type Token } from './text/tokens.js';

/**
 * Of the words of a text in a known language at least this share is known: over a third in every practice list, with its own language
 * learnt; a quarter at most without.
 */
const UNDERSTOOD_SHARE = 0.3;

/** Shorter ones are units and marks of size, or in every language; of other scripts than Latin every sign counts. */
const WORD = /\p{L}{3}|(?!\p{Script=Latin})\p{L}/u;

/** Whether a text is in a language learnt: enough of its words are known. A text without words is. */
export function isUnderstood(text: string): boolean {
  let words = 0;
  let understood = 0;
  const lexicons = known();
  for (const { type, fold } of tokenise(text, 0, Math.min(text.length, SAMPLE), true)) {
    if (type !== 'word' || !WORD.test(fold) || unitBySymbol(fold) !== undefined) continue;
    words++;
    if (lexicons.tellingOf(fold).languages.length > 0) understood++;
  }
  return understood >= words * UNDERSTOOD_SHARE;
}

/** Kana and kanji are Japanese, the only language here with either, whatever word they stand in; each tells less than a word. */
const JAPANESE_SCORE = 0.2;
const KANA = 0x3040;
const LAST_KANJI = 0x9fff;

/** A language with less than this share of the best one's score is not spoken here. */
const LEAST_SHARE = 0.3;

/** With less than this it is read, but not said to be spoken. */
const CLEAR_SHARE = 0.6;
const MOST_SPOKEN = 2;

/** The languages of a text by the lines of its beginning, the likeliest first; English, whose words travel, always last. */
export function languagesIn(
  sample: readonly (readonly Token[])[],
  locale: string | undefined,
  lexicons: Lexicons = known(),
): { spoken: string[]; read: string[] } {
  const tags = lexicons.tags();
  const sums = new Float64Array(tags.length);
  const japanese = tags.indexOf('ja');
  for (const line of sample)
    for (const { type, fold } of line) {
      if (type !== 'word') continue;
      const { languages, score } = lexicons.tellingOf(fold);
      for (const language of languages) sums[language]! += score;
      const first = fold.charCodeAt(0);
      if (first >= KANA && first <= LAST_KANJI && japanese >= 0) sums[japanese]! += JAPANESE_SCORE;
    }
  const scores = new Map(tags.map((tag, i) => [tag, sums[i] ?? 0]));
  const base = locale?.split('-')[0];
  const ranked = [...scores].sort((a, b) => b[1] - a[1] || Number(b[0] === base) - Number(a[0] === base));
  const best = ranked[0]?.[1] ?? 0;
  const spoken = ranked.filter(([, score]) => score > 0 && score >= best * LEAST_SHARE).map(([tag]) => tag);
  const first = spoken.length > 0 ? spoken : [base !== undefined && scores.has(base) ? base : 'en'];
  const clearly = ranked.filter(([, score]) => score > 0 && score >= best * CLEAR_SHARE).map(([tag]) => tag);
  return {
    spoken: clearly.slice(0, MOST_SPOKEN),
    read: [...first.filter((tag) => tag !== 'en' || first[0] === 'en'), ...(first[0] === 'en' ? [] : ['en'])],
  };
}
