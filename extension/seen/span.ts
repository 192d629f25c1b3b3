/** A stretch of a page, by the first and the last node in it. */
export interface Span {
  readonly first: Node;
  readonly last: Node;
  /** Of the first node, where that is text. */
  readonly from: number;
  /** Of the last node, where that is text. */
  readonly to: number;
}

/** The stretch that a range covers; undefined where it holds no node. */
export function spanOf(range: StaticRange): Span | undefined {
  const { startContainer, startOffset, endContainer, endOffset } = range;
  const first =
    startContainer instanceof CharacterData
      ? startContainer
      : (startContainer.childNodes[startOffset] ?? after(startContainer));
  const last =
    endContainer instanceof CharacterData
      ? endContainer
      : endOffset > 0
        ? endContainer.childNodes[endOffset - 1]
        : before(endContainer);
  if (!first || !last) return undefined;
  const order = first.compareDocumentPosition(last);
  if (order & Node.DOCUMENT_POSITION_PRECEDING && !(order & Node.DOCUMENT_POSITION_CONTAINS)) return undefined;
  return {
    first,
    last,
    from: first === startContainer ? startOffset : 0,
    to: last === endContainer ? endOffset : Infinity,
  };
}

/** The next node that is not within this one. */
function after(node: Node): Node | null {
  for (let at: Node | null = node; at; at = at.parentNode) if (at.nextSibling) return at.nextSibling;
  return null;
}

/** The last node that ends before this one begins. */
function before(node: Node): Node | null {
  for (let at: Node | null = node; at; at = at.parentNode) if (at.previousSibling) return at.previousSibling;
  return null;
}

/** What of a span is within a node: `undefined` where the span covers the node. */
export function within(node: Node, span: Span | undefined): Span | undefined {
  if (!span) return undefined;
  const begins = node.contains(span.first) && (node !== span.first || node instanceof CharacterData);
  const ends = node.contains(span.last) && (node !== span.last || node instanceof CharacterData);
  return begins || ends ? span : undefined;
}

/** The children of a node that are in the span, all where there is none. */
export function childrenIn(node: Node, span: Span | undefined): Node[] {
  if (!span) return [...node.childNodes];
  const start = node !== span.first && node.contains(span.first) ? childWith(node, span.first) : node.firstChild;
  const end = node !== span.last && node.contains(span.last) ? childWith(node, span.last) : node.lastChild;
  const children: Node[] = [];
  for (let child: Node | null = start; child; child = child.nextSibling) {
    children.push(child);
    if (child === end) break;
  }
  return children;
}

function childWith(node: Node, descendant: Node): Node {
  let at = descendant;
  while (at.parentNode !== node) at = at.parentNode!;
  return at;
}
