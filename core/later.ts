/** The words of other languages than English, loaded from beside a module when a text or its page wants them. */
import { ON_DEMAND } from './data/words/on-demand.js';
import { isUnderstood } from './reading/languages.js';
import { languageTags, learn } from './reading/text/lexicon.js';

/** Languages whose words did not come: they are not asked for again. */
const gaveUp = new Set<string>();

/** Norwegian pages say which of its two written forms they are in. */
const NORWEGIAN = ['nb', 'nn'];

/** The last text that was looked at and understood. */
let understood = '';
/** What differs from it in less than this share of itself is being typed, and is not looked at again. */
const TYPED_SHARE = 1 / 50;

/**
 * The languages to learn before a text is read: that of its page, and where the text is in none that is known, every other.
 * @param locale BCP 47 tag of the page
 */
export function languagesMissing(text: string, locale = 'en'): string[] {
  const missing = Object.keys(ON_DEMAND).filter((tag) => !gaveUp.has(tag) && !languageTags().includes(tag));
  if (missing.length === 0 || text === '') return [];
  const base = locale.toLowerCase().split('-')[0] ?? '';
  const page = NORWEGIAN.includes(base) ? 'no' : base;
  if (missing.includes(page)) return [page];
  if (differing(text, understood) <= text.length * TYPED_SHARE) return [];
  if (!isUnderstood(text)) return missing;
  understood = text;
  return [];
}

/** How many characters of the longer text stand between what both begin and what both end with. */
function differing(a: string, b: string): number {
  const shorter = Math.min(a.length, b.length);
  let head = 0;
  while (head < shorter && a.charCodeAt(head) === b.charCodeAt(head)) head++;
  let tail = 0;
  while (tail < shorter - head && a.charCodeAt(a.length - 1 - tail) === b.charCodeAt(b.length - 1 - tail)) tail++;
  return Math.max(a.length, b.length) - head - tail;
}

/** Loads the words of languages and learns them. Never rejects: returns those whose words could not be loaded. */
export async function learnLanguages(tags: readonly string[]): Promise<string[]> {
  const failed: string[] = [];
  const load = async (tag: string) => {
    try {
      const words = await ON_DEMAND[tag]?.();
      if (words !== undefined) learn([words]);
    } catch {
      gaveUp.add(tag);
      failed.push(tag);
    }
  };
  await Promise.all(tags.map(load));
  return failed;
}
