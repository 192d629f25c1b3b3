/** Tables and grids: their rows, which of them are heads, and the cells that are wanted. */
import { hasWords } from './line.js';
import type { Span } from './span.js';

interface TableRow {
  /** null: the room of a cell of a row above, or of one that is not wanted. */
  readonly cells: readonly (Element | null)[];
  readonly heads: boolean;
}

interface TableParts {
  readonly caption: Element | null;
  readonly rows: readonly TableRow[];
  /** Some rows were not wanted. */
  readonly cut: boolean;
  readonly partial: boolean;
}

const GRID = '[role="table"], [role="grid"], [role="treegrid"]';
const CELL = '[role="cell"], [role="gridcell"], [role="columnheader"], [role="rowheader"]';
/** From so many rows on, a first column of 1, 2, 3 and so on numbers them. */
const NUMBERED = 3;

/** The rows of an element that is a table; undefined where it is none, and where the span stays within one cell. */
export function partsOfTable(
  element: Element,
  style: CSSStyleDeclaration,
  span: Span | undefined,
  wanted?: ReadonlySet<Element>,
): TableParts | undefined {
  const all = rowsOf(element, style);
  if (!all || all.length === 0) return undefined;
  const isWanted = wantedIn(all, span, wanted);
  const isHead = headsOf(all);
  const skip = numbering(all);
  const held: number[] = [];
  const rows: TableRow[] = [];
  let cut = false;
  for (const [at, own] of all.entries()) {
    const cells: (Element | null)[] = [];
    const take = (cell: Element | null, across: number) => {
      for (let more = 0; more < across; more += 1) cells.push(more === 0 ? cell : null);
    };
    const leaveRoom = () => {
      while ((held[cells.length] ?? 0) > 0) {
        held[cells.length]! -= 1;
        cells.push(null);
      }
    };
    let any = false;
    for (const cell of own) {
      leaveRoom();
      const { colSpan = 1, rowSpan = 1 } = cell as Partial<HTMLTableCellElement>;
      for (let more = 0; more < Math.min(colSpan, 40); more += 1)
        if (rowSpan > 1) held[cells.length + more] = rowSpan - 1;
      const takes = isHead(at) || isWanted(cell, at);
      any ||= isWanted(cell, at);
      take(takes ? cell : null, Math.min(colSpan, 40));
    }
    leaveRoom();
    if (!any) cut = true;
    if (any || isHead(at)) rows.push({ cells: skip ? cells.slice(1) : cells, heads: isHead(at) && !any });
  }
  const told = Number(element.getAttribute('aria-rowcount') ?? 0);
  // Of some rows, the heads come along, not the caption.
  const caption = element instanceof HTMLTableElement && !cut ? element.caption : null;
  return { caption, rows, cut, partial: told > all.length };
}

/** Rows as lists of their own cells. */
function rowsOf(element: Element, style: CSSStyleDeclaration): Element[][] | undefined {
  if (element instanceof HTMLTableElement && style.display.includes('table')) {
    return Array.from(element.rows, (row) => [...row.cells]);
  }
  if (element.matches(GRID)) {
    const rows = [...element.querySelectorAll('[role="row"]')].filter(
      (row) => row.parentElement?.closest(GRID) === element,
    );
    return byIndex(rows, 'aria-rowindex').map((row) => byIndex([...row.querySelectorAll(CELL)], 'aria-colindex'));
  }
  if (style.display !== 'table' && style.display !== 'inline-table') return undefined;
  const groups = [...element.children].flatMap((child) =>
    /^table-(row|header|footer)-group$/.test(getComputedStyle(child).display) ? [...child.children] : [child],
  );
  const rows = groups.filter((row) => getComputedStyle(row).display === 'table-row');
  return rows.length === 0 ? undefined : rows.map((row) => [...row.children]);
}

/** In the order that they say they have; else as they stand. */
function byIndex(elements: Element[], attribute: string): Element[] {
  return elements
    .map((element, at) => ({ element, index: Number(element.getAttribute(attribute) ?? at) }))
    .sort((a, b) => a.index - b.index)
    .map(({ element }) => element);
}

function wantedIn(
  rows: readonly (readonly Element[])[],
  span: Span | undefined,
  wanted: ReadonlySet<Element> | undefined,
): (cell: Element, row: number) => boolean {
  if (wanted) return (cell) => wanted.has(cell);
  if (!span) return () => true;
  const placeOf = (node: Node, otherwise: readonly [number, number]): readonly [number, number] => {
    for (const [at, cells] of rows.entries()) {
      const cell = cells.findIndex((each) => each.contains(node));
      if (cell >= 0) return [at, cell];
      const parent = cells[0]?.parentElement;
      if (parent && parent === node) return [at, otherwise[0] === 0 ? 0 : cells.length - 1];
    }
    return otherwise;
  };
  const first = placeOf(span.first, [0, 0]);
  const last = placeOf(span.last, [rows.length - 1, Infinity]);
  const order = new Map(
    rows.flatMap((cells, at) =>
      at === first[0] || at === last[0] ? cells.map((cell, place) => [cell, place] as const) : [],
    ),
  );
  return (cell, row) => {
    if (row < first[0] || row > last[0]) return false;
    const place = order.get(cell) ?? 0;
    return (row > first[0] || place >= first[1]) && (row < last[0] || place <= last[1]);
  };
}

/** Rows of heads alone at the beginning; without any, a first row that holds no figure above rows that do. */
function headsOf(rows: readonly (readonly Element[])[]): (row: number) => boolean {
  const isHead = (cell: Element) => cell.localName === 'th' || cell.getAttribute('role') === 'columnheader';
  const heads = new Set<number>();
  for (const [at, cells] of rows.entries()) {
    if (cells.length < 2) continue;
    if (!cells.every(isHead) && cells[0]!.closest('thead') === null) break;
    heads.add(at);
    if (at > 2) break;
  }
  const [first = [], second = [], third = []] = rows;
  if (
    heads.size === 0 &&
    first.length > 1 &&
    [second, third].every((cells) => cells.some((cell) => /\d/.test(cell.textContent))) &&
    first.every((cell) => !/\d/.test(cell.textContent))
  )
    heads.add(0);
  return (row) => heads.has(row);
}

/** Whether the first column numbers the rows. */
function numbering(rows: readonly (readonly Element[])[]): boolean {
  const numbers = rows.map(([first]) => (first?.textContent.trim() || first?.getAttribute('data-line-number')) ?? '');
  const from = /^\d+$/.test(numbers[0] ?? '') ? 0 : 1;
  if (from === 1 && hasWords(numbers[0]?.replace(/^(no\.?|nr\.?|nº|n°|#)$/i, '') ?? '')) return false;
  const counted = numbers.slice(from);
  return (
    counted.length >= NUMBERED &&
    rows.every((cells) => cells.length > 1) &&
    counted.every((number, at) => number === String(at + Number(counted[0] ?? 1))) &&
    /^[01]$/.test(counted[0] ?? '')
  );
}
