/** Goes through a part of a page as it is laid out, and gives the lines that are seen. */
import {
  finished,
  hasName,
  hasWords,
  inOne,
  isOneThing,
  sideBySide,
  STRUCK,
  STRUCK_END,
  WEAK,
  WEAK_END,
  type Line,
  type Zone,
} from './line.js';
import { childrenIn, within, type Span } from './span.js';
import { partsOfTable } from './table.js';
import { isUnseen, zoneOf } from './unseen.js';

/** Of a part that is read whole. */
export interface Wanted {
  readonly span?: Span | undefined;
  /** Zones that are left out; where a part begins in one itself, it is read all the same. */
  readonly without?: readonly Zone[];
  /** Of a table, the cells alone that are wanted, with their columns. */
  readonly cells?: ReadonlySet<Element>;
}

export interface Seen {
  readonly lines: readonly Line[];
  /** A table or grid shows fewer rows than it says that it has. */
  readonly partial: boolean;
  /** The heads of a table came along with some of its rows. */
  readonly headed: boolean;
}

const FIELDS = ['text', 'search', 'number', 'date', 'time', 'textarea'];
const BUTTON = 'button, [role="button"], input[type="button"], input[type="submit"], summary [role="img"]';
const UNITS_WITH_POWER = /(^|[\s\d.,])(cm|mm|m|dm|in|ft|km)$/;

/** The lines of a part of the page. `zone` is the one that it begins in. */
export function linesOf(node: Node, wanted: Wanted = {}, zone: Zone = 'main'): Seen {
  let lines: Line[] = [];
  let written = '';
  /** Between the marks of struck text. */
  let struck = 0;
  let lists = 0;
  let gap = false;
  let begins: { readonly kind: 'item' | 'heading'; readonly depth: number } | undefined;
  let box = '';
  let partial = false;
  let headed = false;
  const told = new Set<Element>();

  visit(node, wanted.span);
  endLine();
  return { lines, partial, headed };

  function visit(at: Node, span: Span | undefined): void {
    if (at instanceof Text) addText(at, span);
    else if (at instanceof Element) visitElement(at, span);
    else visitAll(at, span);
  }

  function visitAll(parent: Node, span: Span | undefined): void {
    for (const child of childrenIn(parent, span)) visit(child, within(child, span));
  }

  function visitElement(element: Element, span: Span | undefined): void {
    const style = getComputedStyle(element);
    if (isUnseen(element, style)) return;
    const own = span ? undefined : zoneOf(element);
    if (own && element !== node && wanted.without?.includes(own)) return;
    const before = zone;
    if (element.matches('main, [role="main"]')) zone = 'main';
    else if (own && zone !== 'comments') zone = own;
    const through = style.textDecorationLine.includes('line-through');
    if (through) strike(1);
    place(element, style, span);
    if (through) strike(-1);
    if (zone !== before) {
      endLine();
      zone = before;
    }
  }

  /** By how it is laid out. */
  function place(element: Element, style: CSSStyleDeclaration, span: Span | undefined): void {
    const { display } = style;
    const name = element.localName;
    if (name === 'br') return endLine();
    if (name === 'hr') {
      endLine();
      gap = true;
      return;
    }
    if (name === 'sup' || style.verticalAlign === 'super') return addNote(element, span);
    if (
      element instanceof HTMLInputElement ||
      element instanceof HTMLTextAreaElement ||
      element instanceof HTMLSelectElement
    )
      return addField(element, span);
    if (element instanceof HTMLImageElement) return addWeak(element.alt);
    if (element.getAttribute('role') === 'img') return addWeak(element.getAttribute('aria-label') ?? '');
    if (name === 'svg' || name === 'math') return;
    if (element.matches(BUTTON)) return addWeak(inOne(captured(element, span)));
    const isInline = /^(inline|ruby|contents)/.test(display);
    const apart = isInline && display !== 'inline' && display !== 'contents';
    if (isInline && !display.includes('flex') && !display.includes('grid') && !display.includes('table')) {
      if (apart || isSpaced(style, true)) addSpace();
      addContent(element, span);
      if (apart || isSpaced(style, false)) addSpace();
      return;
    }
    if (!isInline) endLine();
    else addSpace();
    const room = isInline ? 0 : Number.parseFloat(style.marginTop) + Number.parseFloat(style.paddingTop);
    if (room >= 8) gap = true;
    const outside = box;
    box = `${name}.${element.getAttribute('class') ?? ''}`;
    placeBlock(element, style, span);
    box = outside;
    if (!isInline) endLine();
    else addSpace();
    if (!isInline && Number.parseFloat(style.marginBottom) >= 8) gap = true;
  }

  function placeBlock(element: Element, style: CSSStyleDeclaration, span: Span | undefined): void {
    const name = element.localName;
    const role = element.getAttribute('role');
    const table = partsOfTable(element, style, span, wanted.cells);
    if (table) {
      if (table.caption) visit(table.caption, within(table.caption, span));
      for (const { cells, heads } of table.rows) {
        const boxes = cells.map((cell) => (cell === null ? [] : captured(cell, within(cell, span))));
        if (boxes.every((inside) => inside.length === 0)) continue;
        if (heads) headed ||= table.cut;
        const added = sideBySide(boxes, base());
        if (cells.length === 1)
          push(
            boxes[0]!.map((line): Line =>
              line.kind === 'text' && table.rows.length > 1 ? { ...line, kind: 'item', depth: lists } : line,
            ),
          );
        else push(added);
      }
      partial ||= table.partial;
      return;
    }
    const level = headingLevel(element, role);
    if (level > 0) {
      endLine();
      begins = { kind: 'heading', depth: level };
      addContent(element, span);
      endLine();
      begins = undefined;
      return;
    }
    if (name === 'dl') return addPairs(element, span);
    if (style.display.includes('flex') || style.display.includes('grid') || isPlaced(element)) {
      if (addBoxes(element, style, span)) return;
    }
    const isList = /^(ul|ol|menu)$/.test(name) || role === 'list' || role === 'listbox' || role === 'tree';
    if (isList) lists += 1;
    if (
      style.display === 'list-item' ||
      name === 'li' ||
      role === 'listitem' ||
      role === 'option' ||
      role === 'treeitem'
    )
      addItem(element, span);
    else if (isCard(element)) addCard(element, span);
    else addContent(element, span);
    endLine();
    if (isList) lists -= 1;
  }

  /** What an element shows: its shadow tree, what is slotted into it, or its children. */
  function addContent(element: Element, span: Span | undefined): void {
    const shadow = span ? null : shadowOf(element);
    if (shadow) visitAll(shadow, undefined);
    else if (element instanceof HTMLSlotElement && element.assignedNodes().length > 0) {
      for (const child of element.assignedNodes()) visit(child, undefined);
    } else if (element instanceof HTMLDetailsElement && !element.open) {
      for (const child of childrenIn(element, span))
        if (child === summaryOf(element)) visit(child, within(child, span));
    } else visitAll(element, span);
  }

  function addItem(element: Element, span: Span | undefined): void {
    const outside = lists;
    lists = Math.max(1, lists);
    const depth = lists - 1;
    begins = { kind: 'item', depth };
    const from = lines.length;
    addContent(element, span);
    endLine();
    begins = undefined;
    lists = outside;
    // Its own lines, up to a list within it.
    let to = from;
    while (to < lines.length && (to === from || (lines[to]!.kind !== 'item' && lines[to]!.kind !== 'heading'))) to += 1;
    const own = lines.slice(from, to);
    if (own.length === 0) return;
    const first = own[0]!;
    const rest = own.slice(1);
    if (first.kind === 'heading' && rest.length > 0 && lines.slice(from + 1).some(({ kind }) => kind === 'item'))
      return;
    const joined: Line[] = isOneThing(own.map((line) => ({ ...line, kind: 'text' })))
      ? [{ ...first, kind: 'item', depth, cells: [inOne(own)] }]
      : own.map((line, at): Line =>
          at === 0
            ? { ...line, kind: 'item', depth }
            : { ...line, kind: line.kind === 'row' ? 'row' : 'item', depth: depth + 1 },
        );
    lines.splice(from, own.length, ...joined);
  }

  /** A card says one thing in several lines, each of another kind. */
  function addCard(element: Element, span: Span | undefined): void {
    const from = lines.length;
    addContent(element, span);
    endLine();
    const own = lines.slice(from);
    const kinds = new Set(own.map((line) => line.box));
    const isCut =
      own.length < 2 ||
      kinds.size < own.length ||
      !isOneThing(own) ||
      own.some((line, at) => at > 0 && line.kind === 'heading');
    if (isCut || !own.slice(1).some(({ cells }) => /\d/.test(cells.join()))) return;
    lines.splice(from, own.length, { ...own[0]!, kind: 'item', depth: lists, cells: [inOne(own)] });
  }

  /** Terms and what is said of each. */
  function addPairs(list: Element, span: Span | undefined): void {
    const children = childrenIn(list, span).flatMap((child) =>
      child instanceof Element && child.localName === 'div' ? childrenIn(child, within(child, span)) : [child],
    );
    let term = '';
    let said: Line[] = [];
    const flush = () => {
      const label = term === '' || /[:?]$/.test(term) ? term : `${term}:`;
      if (said.length === 0 && term !== '') push([{ ...base(), kind: 'text', cells: [term] }]);
      else if (
        said.length === 1 ||
        (said.length > 1 && isOneThing(said) && !said.every((line) => hasName(line.cells.join())))
      ) {
        push([{ ...base(), kind: 'item', depth: lists, cells: [`${label} ${inOne(said)}`.trim()] }]);
      } else if (said.length > 1) {
        if (term !== '') push([{ ...base(), kind: 'text', cells: [label] }]);
        push(said.map((line): Line => (line.kind === 'text' ? { ...line, kind: 'item', depth: lists } : line)));
      }
      term = '';
      said = [];
    };
    for (const child of children) {
      if (!(child instanceof Element)) continue;
      if (child.localName === 'dd') said.push(...captured(child, within(child, span)));
      else {
        const text = inOne(captured(child, within(child, span)));
        if (said.length > 0 || child.localName !== 'dt') flush();
        term = term === '' ? text : `${term}, ${text}`;
      }
    }
    flush();
  }

  /** Boxes that stand side by side make one line; false where the element has nothing to place. */
  function addBoxes(element: Element, style: CSSStyleDeclaration, span: Span | undefined): boolean {
    if (!span && shadowOf(element)) return false;
    const children = flattened(childrenIn(element, span)).filter(
      (child) => child instanceof Element || (child instanceof Text && hasWords(child.data)),
    );
    if (children.length < 2) return false;
    const places = children.map((child) => ({ child, rect: rectOf(child) }));
    const rows: { top: number; bottom: number; boxes: typeof places }[] = [];
    for (const place of places) {
      const { top, bottom, height } = place.rect;
      const row = rows.findLast(
        (other) =>
          Math.min(bottom, other.bottom) - Math.max(top, other.top) > Math.min(height, other.bottom - other.top) / 2,
      );
      if (row && height > 0) {
        row.boxes.push(place);
        row.top = Math.min(row.top, top);
        row.bottom = Math.max(row.bottom, bottom);
      } else rows.push({ top, bottom, boxes: [place] });
    }
    rows.sort((a, b) => a.top - b.top);
    const across = style.direction === 'rtl' ? -1 : 1;
    for (const { boxes } of rows) boxes.sort((a, b) => across * (a.rect.left - b.rect.left));
    if (rows.every(({ boxes }) => boxes.length === 1)) {
      for (const { boxes } of rows) for (const { child } of boxes) visit(child, within(child, span));
      return true;
    }
    const isTiled = areTiles(children);
    for (const { boxes } of rows) {
      const inside = boxes.map(({ child }) => captured(child, within(child, span)));
      const filled = inside.filter((own) => own.length > 0);
      if (
        isTiled ||
        filled.some((own) => !isOneThing(own)) ||
        filled.some((own) => own.some(({ kind, zone }) => kind === 'heading' || zone !== filled[0]![0]!.zone))
      )
        push(inside.flat());
      else if (filled.length === 1) push(filled[0]!);
      else push(sideBySide(inside, base()));
    }
    return true;
  }

  /** The lines of a part, apart from those around it. */
  function captured(part: Node, span: Span | undefined): Line[] {
    const outside = { lines, written, begins, lists, gap };
    lines = [];
    written = '';
    begins = undefined;
    gap = false;
    if (struck > 0) written = STRUCK;
    if (part instanceof Element && part.matches(BUTTON)) visitAll(part, span);
    else visit(part, span);
    endLine();
    const inside = lines;
    ({ lines, written, begins, lists, gap } = outside);
    return inside;
  }

  function base(): Omit<Line, 'kind' | 'cells'> {
    const line = { depth: 0, gap, zone, box };
    gap = false;
    return line;
  }

  /** Adds whole lines. */
  function push(more: readonly Line[]): void {
    endLine();
    for (const line of more) {
      lines.push(gap ? { ...line, gap } : line);
      gap = false;
    }
  }

  function endLine(): void {
    if (written === '') return;
    const text = finished(written);
    written = struck > 0 ? STRUCK : '';
    if (text === '' || !hasSigns(text)) return;
    const kind = begins?.kind ?? 'text';
    lines.push({ ...base(), kind, cells: [kind === 'text' ? text : text.trimStart()], depth: begins?.depth ?? 0 });
    begins = undefined;
  }

  function strike(change: 1 | -1): void {
    struck += change;
    if (change > 0 && struck === 1) written += STRUCK;
    if (change < 0 && struck === 0) written += STRUCK_END;
  }

  function addText(text: Text, span: Span | undefined): void {
    const style = text.parentElement && getComputedStyle(text.parentElement);
    if (style && style.visibility !== 'visible') return;
    if (style && isNumbering(text, style)) return;
    const data = text.data
      .slice(text === span?.first ? span.from : 0, text === span?.last ? span.to : undefined)
      .replace(/[\uE000-\uF8FF\u00AD]/g, '');
    if (/^(pre|break)/.test(style?.whiteSpace ?? '')) {
      const [first = '', ...rest] = data.split('\n');
      written += first;
      for (const next of rest) {
        endLine();
        written += next;
      }
    } else append(data.replace(/[ \t\r\n\f]+/g, ' '));
  }

  function append(text: string): void {
    const end = written.replace(/[\uE000-\uE003]+$/, '').at(-1) ?? ' ';
    written += end === ' ' || end === '\t' ? text.replace(/^ /, '') : text;
  }

  function addSpace(): void {
    if (written !== '') append(' ');
  }

  function addWeak(text: string): void {
    if (hasWords(text)) append(` ${WEAK}${text.trim()}${WEAK_END} `);
  }

  /** A note's mark is no figure: "210" and a raised "1" are not 2101. Powers, fractions and the ends of ordinals stay. */
  function addNote(element: Element, span: Span | undefined): void {
    const text = element.textContent.trim();
    const before = written.trimEnd();
    if (/^[23]$/.test(text) && UNITS_WITH_POWER.test(before)) append(text === '2' ? '²' : '³');
    else if (/^\d+$/.test(text) && /^\s*[/⁄]/.test(textAfter(element))) append(/\d$/.test(before) ? ` ${text}` : text);
    else if (/^[\d\s,;*†‡§#[\]()]+$/.test(text) || /^\[?[a-z]\]?$/i.test(text)) return;
    else visitAll(element, span);
  }

  function addField(field: HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement, span: Span | undefined): void {
    if (told.has(field)) return;
    if (!span) told.add(field);
    if (field instanceof HTMLSelectElement)
      append(` ${Array.from(field.selectedOptions, ({ text }) => text).join(' ')} `);
    else if (field instanceof HTMLInputElement && field.type === 'checkbox') {
      if (finished(written) === '') append(field.checked ? '[x] ' : '[ ] ');
    } else if (field.type === 'button' || field.type === 'submit') addWeak(field.value);
    else if (FIELDS.includes(field.type)) {
      const [first = '', ...rest] = field.value.split('\n');
      append(` ${first}`);
      for (const next of rest) {
        endLine();
        append(next);
      }
      append(' ');
    }
  }
}

function hasSigns(text: string): boolean {
  return /[^\s~\-–—_*·•|]/.test(text) || /^-{3,}$/.test(text.trim());
}

function headingLevel(element: Element, role: string | null): number {
  const own = /^h([1-6])$/.exec(element.localName)?.[1];
  if (own !== undefined) return Number(own);
  if (element.localName === 'caption' || element.localName === 'legend' || element.localName === 'summary') return 4;
  return role === 'heading' ? Number(element.getAttribute('aria-level') ?? 3) : 0;
}

/** Room of its own at one side keeps an inline box apart from its neighbour. */
function isSpaced(style: CSSStyleDeclaration, before: boolean): boolean {
  const sides = before
    ? [style.marginInlineStart, style.paddingInlineStart]
    : [style.marginInlineEnd, style.paddingInlineEnd];
  return sides.reduce((sum, side) => sum + (Number.parseFloat(side) || 0), 0) > 2;
}

/** Of a closed details all that is seen. */
function summaryOf(element: HTMLDetailsElement): Element | undefined {
  return [...element.children].find(({ localName }) => localName === 'summary');
}

function textAfter(element: Element): string {
  return element.nextSibling?.textContent ?? '';
}

/** Numbers of lines that cannot be selected are not part of the text. */
function isNumbering(text: Text, style: CSSStyleDeclaration): boolean {
  return style.userSelect === 'none' && /^[\d\s]+$/.test(text.data);
}

/** Whether children of a block are placed by figures. */
function isPlaced(element: Element): boolean {
  let placed = 0;
  for (const child of element.children) {
    if (placed > 1 || element.children.length > 400) break;
    const { position, float } = getComputedStyle(child);
    if (position === 'absolute' || float !== 'none') placed += 1;
  }
  return placed > 1 || (placed === 1 && element.children.length === 2);
}

/** Whether an element stands among others of its kind. */
function isCard(element: Element): boolean {
  const name = element.getAttribute('class') ?? '';
  if (element.childElementCount === 0 || (name === '' && element.localName !== 'article')) return false;
  const isLike = (other: Element | null) =>
    other?.localName === element.localName && (other.getAttribute('class') ?? '').split(' ')[0] === name.split(' ')[0];
  return isLike(element.nextElementSibling) || isLike(element.previousElementSibling);
}

/** Boxes of one kind that each name something are things of their own, and no cells of a row. */
function areTiles(children: readonly Node[]): boolean {
  const [first] = children;
  if (
    children.length < 3 ||
    !children.every(
      (child) =>
        child instanceof Element &&
        first instanceof Element &&
        child.localName === first.localName &&
        child.className === first.className,
    )
  )
    return children.every((child) => child instanceof Element && child.localName === 'li');
  return children.every((child) => hasName((child as Element).textContent));
}

function flattened(nodes: readonly Node[]): Node[] {
  return nodes.flatMap((node) =>
    node instanceof Element && getComputedStyle(node).display === 'contents' ? flattened([...node.childNodes]) : [node],
  );
}

function rectOf(node: Node): DOMRect {
  if (node instanceof Element) return node.getBoundingClientRect();
  const range = node.ownerDocument!.createRange();
  range.selectNode(node);
  return range.getBoundingClientRect();
}

interface Opener {
  readonly dom?: { openOrClosedShadowRoot?(element: Element): ShadowRoot | null };
}

/** The shadow root, also a closed one where the browser lets an extension see it. */
export function shadowOf(element: Element): ShadowRoot | null {
  if (element.shadowRoot) return element.shadowRoot;
  if (!element.localName.includes('-') && !/^(div|span|section|article|main|p|h[1-6]|body)$/.test(element.localName))
    return null;
  const { openOrClosedShadowRoot } = element as { openOrClosedShadowRoot?: ShadowRoot | null };
  if (openOrClosedShadowRoot) return openOrClosedShadowRoot;
  const { chrome } = globalThis as { chrome?: Opener };
  return element instanceof HTMLElement ? (chrome?.dom?.openOrClosedShadowRoot?.(element) ?? null) : null;
}
