import { judgeAtHand } from '../judging.js';
import { around } from './around.css.js';
import { layout } from './layout.css.js';
import { page } from './page.css.js';
import { tokens } from './tokens.css.js';

const sheets = new WeakMap<Document, Map<string, CSSStyleSheet>>();

/** Puts the style sheets on a shadow root, in the order of the cascade; what a report looks like comes with the part that judges. */
export function dress(root: ShadowRoot): void {
  const view = root.ownerDocument.defaultView;
  if (view === null) return;
  const { findings = '', drawing = '', letter = '' } = judgeAtHand()?.styles ?? {};
  const texts = [tokens, page, findings, around, drawing, letter, layout].filter((text) => text !== '');
  root.adoptedStyleSheets = texts.map((text) => sheetOf(view, text));
}

/** Style sheets belong to a document, and are shared by all elements in it. */
function sheetOf(view: Window & typeof globalThis, text: string): CSSStyleSheet {
  const known = sheets.get(view.document) ?? new Map<string, CSSStyleSheet>();
  sheets.set(view.document, known);
  let sheet = known.get(text);
  if (sheet === undefined) {
    sheet = new view.CSSStyleSheet();
    sheet.replaceSync(text);
    known.set(text, sheet);
  }
  return sheet;
}
