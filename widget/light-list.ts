import { textOfHtml } from './pasted.js';

/** What stands in an element as a list; the rest, such as a paragraph, is said to those who have no script. */
const LISTS = 'table, ul, ol, dl, pre';

/** The kit list that the page has put into an element, or that an element is: its tables, lists and preformatted texts; or text set directly in it. */
export function lightList(element: Element): string {
  const lists = element.matches(LISTS)
    ? [element]
    : [...element.querySelectorAll(LISTS)].filter((list) => !element.contains(list.parentElement!.closest(LISTS)));
  if (lists.length > 0) return lists.map((list) => textOfHtml(list.outerHTML)).join('\n');
  const own = [...element.childNodes].filter((node) => node.nodeType === Node.TEXT_NODE);
  return own
    .map((node) => node.nodeValue ?? '')
    .join('')
    .split('\n')
    .map((line) => line.trim())
    .join('\n')
    .trim();
}
