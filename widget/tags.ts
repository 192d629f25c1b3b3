import type * as Lit from 'lit';

/**
 * The tags of templates for the parts that are loaded later: they take those of the elements and bring no copy of their own.
 * Parts import them from here; `takeTags` is called once, by the element that loads them.
 */
export let html: typeof Lit.html;
export let svg: typeof Lit.svg;
export let nothing: typeof Lit.nothing;

export function takeTags(tags: Pick<typeof Lit, 'html' | 'svg' | 'nothing'>): void {
  ({ html, svg, nothing } = tags);
}
