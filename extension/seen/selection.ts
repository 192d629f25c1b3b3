/** What is selected in a page, in its fields and shadow trees too. */
import { printed, type Line } from './line.js';
import { spanOf } from './span.js';
import { linesOf, shadowOf, type Seen, type Wanted } from './walk.js';

/** A selection as text. */
export interface Selected {
  readonly text: string;
  /** The heads of a table came along with some of its rows. */
  readonly headed: boolean;
  /** What the page shows of a table or grid is not all of it. */
  readonly partial: boolean;
}

/** What is selected; undefined where nothing is. Nothing in the page is changed. */
export function selected(): Selected | undefined {
  const text = inField();
  if (text !== undefined) return { text, headed: false, partial: false };
  const seen = partsSelected().map(({ root, wanted }) => {
    // A selection of the whole page is meant for what the page is for.
    const main = linesOf(root, { ...wanted, without: ['beside', 'comments'] }, zoneAt(root));
    const kept = main.lines.filter(({ zone }) => zone === 'main');
    if (kept.length > 0) return { ...main, lines: kept };
    return main.lines.length > 0 ? main : linesOf(root, wanted);
  });
  const lines = seen.flatMap(({ lines }) => lines as Line[]);
  if (lines.length === 0) return undefined;
  const any = (of: (part: Seen) => boolean) => seen.some(of);
  return { text: printed(lines), headed: any(({ headed }) => headed), partial: any(({ partial }) => partial) };
}

/** Beside the main part, where what is selected holds one. */
function zoneAt(root: Node): 'main' | 'beside' {
  const { length } =
    root instanceof Element || root instanceof Document ? root.querySelectorAll('main, [role="main"]') : [];
  return length === 1 ? 'beside' : 'main';
}

function inField(): string | undefined {
  let active = document.activeElement;
  while (active && shadowOf(active)?.activeElement) active = shadowOf(active)!.activeElement;
  if (!(active instanceof HTMLTextAreaElement || active instanceof HTMLInputElement)) return undefined;
  if (!['text', 'search', 'number', 'textarea'].includes(active.type)) return undefined;
  const { value, selectionStart, selectionEnd } = active;
  return selectionStart === selectionEnd ? undefined : value.slice(selectionStart ?? 0, selectionEnd ?? 0);
}

interface Part {
  readonly root: Node;
  readonly wanted: Wanted;
}

function partsSelected(): Part[] {
  const ranges = rangesSelected();
  const cells = ranges.map(cellOf);
  const [first] = cells;
  // Cells that are picked one by one come as so many ranges.
  if (first && cells.length > 1 && cells.every((cell) => cell?.closest('table') === first.closest('table'))) {
    return [{ root: first.closest('table')!, wanted: { cells: new Set(cells as Element[]) } }];
  }
  return ranges.flatMap((range): Part[] => {
    const span = spanOf(range);
    if (!span) return [];
    const common = commonOf(span.first, span.last);
    // A part of a table brings its columns.
    const around = (common instanceof Element ? common : common.parentElement)?.closest(
      'td, th, table, [role="gridcell"], [role="cell"], [role="table"], [role="grid"], [role="treegrid"]',
    );
    const root = around?.matches('table, [role="table"], [role="grid"], [role="treegrid"]') ? around : common;
    return [{ root, wanted: { span } }];
  });
}

function cellOf({ startContainer, startOffset, endContainer, endOffset }: StaticRange): Element | undefined {
  const node = startContainer.childNodes[startOffset];
  const isOne = startContainer === endContainer && endOffset === startOffset + 1;
  return isOne && node instanceof Element && /^t[dh]$/.test(node.localName) ? node : undefined;
}

function commonOf(a: Node, b: Node): Node {
  let common: Node = a;
  while (!common.contains(b)) common = common.parentNode!;
  return common;
}

function rangesSelected(): StaticRange[] {
  const selection = document.getSelection();
  if (!selection) return [];
  const plain = Array.from({ length: selection.rangeCount }, (_, index) => selection.getRangeAt(index)).filter(
    ({ collapsed }) => !collapsed,
  );
  if (plain.length > 0 || !('getComposedRanges' in selection)) return plain;
  // A selection inside a shadow root looks collapsed from outside.
  const shadowRoots = Array.from(document.querySelectorAll('*'), shadowOf).filter((root) => root !== null);
  return selection.getComposedRanges({ shadowRoots }).filter(({ collapsed }) => !collapsed);
}
