/** The languages that the words of the interface are in. */
export const LANGUAGES: readonly string[] = ['en'];

/** The tag to word an element in: the one asked for, or the nearest `lang` of the page; English where that is not spoken here. */
export function languageOf(element: Element, asked: string | null): string {
  const tag = asked ?? nearestLang(element);
  return LANGUAGES.includes(tag.split('-')[0]!.toLowerCase()) ? tag : LANGUAGES[0]!;
}

/** The language of the page around an element; in a shadow root that around its host. */
export function nearestLang(element: Element): string {
  const lang = element.closest('[lang]')?.getAttribute('lang');
  if (lang) return lang;
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? nearestLang(root.host) : '';
}
