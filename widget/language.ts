import { WORDS, type Words } from './messages/en.js';
import { ON_DEMAND } from './spoken-on-demand.js';

/** The languages that the words of the interface are in. */
export const LANGUAGES: readonly string[] = ['en', ...Object.keys(ON_DEMAND)];

/** Words by the tag they are for; English in place of those that did not come, which are not asked for again. */
const known = new Map<string, Words>([['en', WORDS]]);

function languageIn(tag: string): string {
  return tag.split('-')[0]!.toLowerCase();
}

/** The tag to word an element in: the one asked for, or the nearest `lang` of the page; English where that is not spoken here. */
export function languageOf(element: Element, asked: string | null): string {
  const isSpoken = (tag: string | null): tag is string => tag !== null && LANGUAGES.includes(languageIn(tag));
  return [asked, nearestLang(element)].find(isSpoken) ?? 'en';
}

/** The words for a tag: those of its language, with numbers as in its region. English ones until `learnWords` has them. */
export function wordsFor(tag: string): Words {
  const words = known.get(tag);
  if (words !== undefined) return words;
  const spoken = known.get(languageIn(tag)) ?? WORDS;
  const [locale = spoken.locale] = Intl.NumberFormat.supportedLocalesOf([tag]);
  // A region of a language that did not come writes its numbers in English too.
  const ofRegion = languageIn(locale) === languageIn(spoken.locale) ? { ...spoken, locale } : spoken;
  if (known.has(languageIn(tag))) known.set(tag, ofRegion);
  return ofRegion;
}

/** Loads the words for a tag; undefined where they are there. It never rejects: an element whose words do not come speaks English, and says so once. */
export function learnWords(tag: string): Promise<void> | undefined {
  const language = languageIn(tag);
  const load = known.has(language) ? undefined : ON_DEMAND[language];
  return load?.().then(
    (words) => void known.set(language, words),
    () => {
      if (known.has(language)) return;
      known.set(language, WORDS);
      // eslint-disable-next-line no-console -- a file that is missing is told where the writer looks
      console.warn(`Brimwise speaks English here: its words of "${language}" did not come.`);
    },
  );
}

/** The language of the page around an element; in a shadow root that around its host. */
export function nearestLang(element: Element): string {
  const lang = element.closest('[lang]')?.getAttribute('lang');
  if (lang) return lang;
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? nearestLang(root.host) : '';
}
