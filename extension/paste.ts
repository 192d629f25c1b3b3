/** What is pasted from a page is read as the page is: with its bullets, its columns, and what is struck through. */
import { render } from 'lit';
import { unsafeHTML } from 'lit/directives/unsafe-html.js';
import { printed } from './seen/line.js';
import { linesOf } from './seen/walk.js';

/** Without one of these, the plain text of the clipboard says as much. */
const STRUCTURE = /<(li|td|th|dt|h[1-6]|s|del|strike|sup)[\s>]|line-through|display:\s*(inline-)?(flex|grid)/i;
/** What is left out of a copy: it shows nothing, or would fetch something. */
const LEFT_OUT =
  'script, style, link, meta, base, iframe, object, embed, video, audio, source, noscript, template, title';
const ATTRIBUTES = [
  'class',
  'colspan',
  'rowspan',
  'role',
  'aria-level',
  'aria-label',
  'type',
  'checked',
  'value',
  'start',
];
/** Larger ones are pasted as plain text. */
const LONGEST = 5_000_000;

/** Reads each paste into a text area of the element; one that holds no page goes its usual way. */
export function readPastes(element: HTMLElement): void {
  // Before the element's own reader of pastes, which knows their text alone.
  const read = (event: ClipboardEvent) => {
    const [field] = event.composedPath();
    const html = event.clipboardData?.getData('text/html') ?? '';
    if (!(field instanceof HTMLTextAreaElement) || !STRUCTURE.test(html) || html.length > LONGEST) return;
    const text = textOfHtml(html);
    if (text === '') return;
    event.preventDefault();
    event.stopPropagation();
    // As if typed: the browser's own Undo takes it back.
    document.execCommand('insertText', false, text);
  };
  element.addEventListener('paste', read, { capture: true });
}

/** The text of a piece of a page, laid out where nobody sees it and removed at once. */
function textOfHtml(html: string): string {
  // Nothing is loaded or run in a document that no window shows.
  const inert = document.implementation.createHTMLDocument();
  render(unsafeHTML(html), inert.body, { creationScope: inert });
  for (const element of inert.querySelectorAll(LEFT_OUT)) element.remove();
  const host = document.createElement('div');
  Object.assign(host.style, {
    position: 'fixed',
    inset: '0',
    inlineSize: '1000px',
    opacity: '0',
    pointerEvents: 'none',
    overflow: 'hidden',
  });
  host.ariaHidden = 'true';
  const shadow = host.attachShadow({ mode: 'open' });
  for (const child of inert.body.childNodes) {
    const copied = copyOf(child);
    if (copied) shadow.append(copied);
  }
  document.body.append(host);
  try {
    return printed(linesOf(shadow).lines);
  } finally {
    host.remove();
  }
}

/** A copy with what is laid out by, and nothing that loads or runs. */
function copyOf(node: Node): Node | undefined {
  if (node.nodeType === Node.TEXT_NODE) return document.createTextNode(node.nodeValue ?? '');
  if (node.nodeType !== Node.ELEMENT_NODE) return undefined;
  const element = node as HTMLElement;
  // An image keeps its words, and never its address.
  const copy = document.createElement(element.localName.includes('-') ? 'div' : element.localName);
  for (const name of ATTRIBUTES) {
    const value = element.getAttribute(name);
    if (value !== null) copy.setAttribute(name, value);
  }
  if (copy instanceof HTMLImageElement) copy.alt = element.getAttribute('alt') ?? '';
  const style = (element.getAttribute('style') ?? '').replace(/url\([^)]*\)/gi, 'none');
  if (style !== '') copy.style.cssText = style;
  for (const child of element.childNodes) {
    const copied = copyOf(child);
    if (copied) copy.append(copied);
  }
  return copy;
}
