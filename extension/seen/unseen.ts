/** What of a page nobody sees, and what stands beside what the page is for. */
import type { Zone } from './line.js';

/** Narrower or lower than this, in px, a box that cuts off what does not fit shows nothing. */
const LEAST_BOX = 2;

/** Whether nobody sees an element, its ancestors aside. What is only off the screen until one scrolls is seen. */
export function isUnseen(element: Element, style: CSSStyleDeclaration): boolean {
  if (style.display === 'none') return true;
  if (style.display === 'contents') return false;
  if (style.opacity === '0' || style.fontSize === '0px' || style.contentVisibility === 'hidden') return true;
  if (style.clipPath !== 'none' && /^(inset\((50|[6-9]\d|100)%|circle\(0)/.test(style.clipPath)) return true;
  if (isTransparent(style)) return true;
  const apart = style.position === 'absolute' || style.position === 'fixed';
  if (apart && /^rect\((0|1)px,? (0|1)px,? (0|1)px,? (0|1)px\)$/.test(style.clip)) return true;
  if (style.transform !== 'none' && /^matrix\(0, 0, 0, 0/.test(style.transform)) return true;
  if (style.textIndent.startsWith('-') && Number.parseFloat(style.textIndent) < -900) return true;
  const cutsOff = style.overflowX !== 'visible' && style.display !== 'inline';
  if (!cutsOff && !apart) return false;
  const { width, height, right, bottom } = element.getBoundingClientRect();
  if (cutsOff && (width < LEAST_BOX || height < LEAST_BOX)) return true;
  const view = element.ownerDocument.defaultView!;
  return apart && (right + view.scrollX <= 0 || bottom + view.scrollY <= 0) && width > 0;
}

function isTransparent({ color, backgroundClip }: CSSStyleDeclaration): boolean {
  return color.startsWith('rgba') && /, 0\)$/.test(color) && backgroundClip !== 'text';
}

const BESIDE =
  'nav, aside, footer, [role="navigation"], [role="complementary"], [role="contentinfo"], [role="search"], [role="banner"], [role="menu"], [role="menubar"], [role="alertdialog"], header:has(nav)';
const COMMENTS = /(^|[\s_-])(comments?|disqus|respond|replies)([\s_-]|$)/i;
const NOTICES =
  /(^|[\s_-])(cookies?|consent|sidebar|breadcrumbs?|pagination|related|newsletter|share|sharing|skip)([\s_-]|$)/i;

/** The zone that begins with an element; undefined where it goes on. */
export function zoneOf(element: Element): Exclude<Zone, 'main'> | undefined {
  const names = `${element.id} ${element.getAttribute('class') ?? ''}`;
  if (COMMENTS.test(names) && !/^(body|html|main|article|p|span|a|td|th|tr|li)$/.test(element.localName))
    return 'comments';
  if (element.matches(BESIDE)) return 'beside';
  return NOTICES.test(names) && /^(div|section|ul|ol|form|dialog)$/.test(element.localName) ? 'beside' : undefined;
}
