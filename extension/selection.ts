/** A part of a page, as text. */
export interface PagePart {
  /** The nearest heading before it, or the caption of a table; '' where there is none, and for a selection. */
  readonly heading: string;
  /** One line for each block, list item, table row and line break, a tab between the cells of a row. */
  readonly text: string;
}

/**
 * What is selected in the page, or each of its lists and tables. Nothing in the page is changed.
 *
 * It runs in the page, in a world of its own, and is sent there as source: it stands alone, with no import and nothing from outside its braces.
 */
export function readPage(wanted: 'selection' | 'lists'): PagePart[] {
  /** A page may have more than anyone would choose among, and longer than anyone would read. */
  const MOST_PARTS = 200;
  const LONGEST = 100_000;
  const LISTS = 'ul, ol, dl, table, pre, p:has(br)';
  const HEADINGS = 'h1, h2, h3, h4, h5, h6, [role="heading"]';

  let lines: string[] = [];
  let line = '';
  let cells = 0;

  if (wanted === 'lists') return lists();
  const text = selected();
  return text === '' ? [] : [{ heading: '', text }];

  function selected(): string {
    const field = focused();
    if (field instanceof HTMLTextAreaElement || (field instanceof HTMLInputElement && isReadable(field))) {
      const { value, selectionStart, selectionEnd } = field;
      if (selectionStart !== selectionEnd) return value.slice(selectionStart ?? 0, selectionEnd ?? 0);
    }
    for (const range of ranges()) visit(range.commonAncestorContainer, range);
    return taken();
  }

  function lists(): PagePart[] {
    const parts: PagePart[] = [];
    let heading = '';
    for (const element of document.querySelectorAll(`${HEADINGS}, ${LISTS}`)) {
      if (parts.length === MOST_PARTS) break;
      if (element.parentElement?.closest(LISTS)) continue;
      const isList = element.matches(LISTS);
      visit(element);
      const text = taken();
      if (!isList) heading = text.replaceAll('\n', ' ') || heading;
      else if (text !== '') {
        const caption = element instanceof HTMLTableElement ? element.caption?.textContent.trim() : undefined;
        parts.push({ heading: (caption || heading).slice(0, 200), text: text.slice(0, LONGEST) });
      }
    }
    return parts;
  }

  /** The lines so far, taken away. */
  function taken(): string {
    endLine();
    const all = lines.join('\n');
    lines = [];
    return all;
  }

  /** The focused element, looked for through open shadow roots. */
  function focused(): Element | null {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    return active;
  }

  function ranges(): Range[] {
    const selection = document.getSelection();
    if (!selection) return [];
    const plain = Array.from({ length: selection.rangeCount }, (_, index) => selection.getRangeAt(index));
    if (plain.some((range) => !range.collapsed) || !('getComposedRanges' in selection)) return plain;
    // A selection inside a shadow root looks collapsed from outside.
    const shadowRoots = Array.from(document.querySelectorAll('*'), (element) => element.shadowRoot).filter(
      (root) => root !== null,
    );
    return selection
      .getComposedRanges({ shadowRoots })
      .map(({ startContainer, startOffset, endContainer, endOffset }) => {
        const range = document.createRange();
        range.setStart(startContainer, startOffset);
        range.setEnd(endContainer, endOffset);
        return range;
      });
  }

  /** Adds what of the node is in the range; all of it where there is none. */
  function visit(node: Node, range?: Range): void {
    if (range && !range.intersectsNode(node)) return;
    if (node instanceof Text) addText(node, range);
    else if (node instanceof Element) visitElement(node, range);
    else for (const child of node.childNodes) visit(child, range);
  }

  function visitElement(element: Element, range?: Range): void {
    const { display } = getComputedStyle(element);
    if (display === 'none') return;
    const isCell = display === 'table-cell';
    const isBlock = !isCell && !display.startsWith('inline') && display !== 'contents' && !display.startsWith('ruby');
    if (isBlock || element.localName === 'br') endLine();
    if (isCell) {
      const before = element.previousElementSibling;
      if (before && (!range || range.intersectsNode(before)))
        line = `${line.endsWith(' ') ? line.slice(0, -1) : line}\t`;
      cells += 1;
    }
    if (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement) {
      if (isReadable(element)) line += element.value.replaceAll('\n', ' ');
    } else if (element instanceof HTMLSelectElement) {
      line += Array.from(element.selectedOptions, (option) => option.text).join(' ');
    } else if (element.shadowRoot) {
      for (const child of element.shadowRoot.childNodes) visit(child);
    } else if (element instanceof HTMLSlotElement && element.assignedNodes().length > 0) {
      for (const child of element.assignedNodes()) visit(child);
    } else {
      for (const child of element.childNodes) visit(child, range);
    }
    if (isCell) cells -= 1;
    if (isBlock) endLine();
  }

  function addText(node: Text, range?: Range): void {
    const style = node.parentElement && getComputedStyle(node.parentElement);
    if (style && style.visibility !== 'visible') return;
    const from = range?.startContainer === node ? range.startOffset : 0;
    const to = range?.endContainer === node ? range.endOffset : node.length;
    const [first = '', ...rest] = /^(pre|break)/.test(style?.whiteSpace ?? '')
      ? node.data.slice(from, to).split('\n')
      : [node.data.slice(from, to).replace(/[ \t\r\n\f]+/g, ' ')];
    append(first);
    for (const next of rest) {
      endLine();
      append(next);
    }
  }

  function append(text: string): void {
    line += ' \t'.includes(line.at(-1) ?? ' ') ? text.trimStart() : text;
  }

  /** Ends the line; within a cell a line break is a space, for the row is the line. */
  function endLine(): void {
    if (cells > 0) append(' ');
    else {
      if (line.trim() !== '') lines.push(line.trimEnd());
      line = '';
    }
  }

  function isReadable(input: HTMLInputElement | HTMLTextAreaElement): boolean {
    return ['text', 'search', 'number', 'textarea'].includes(input.type);
  }
}
