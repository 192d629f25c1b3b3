/** The whole of a page: what it is for, and its parts, each under its heading. */
import { hasWords, printed, type Line, type Zone } from './line.js';
import { linesOf } from './walk.js';

/** A part of a page, as text. */
export interface PagePart {
  /** The nearest heading before it; '' where there is none. */
  readonly heading: string;
  readonly text: string;
  readonly zone: Zone;
}

export interface PageSeen {
  /** All that the page is for. */
  readonly text: string;
  readonly parts: readonly PagePart[];
  /** What the page shows of a table or grid is not all of it. */
  readonly partial: boolean;
}

/** A page may have more than anyone would choose among, and longer than anyone would read. */
const MOST_PARTS = 200;
const LONGEST = 1_000_000;

/** The page, in one document; its frames are read each by itself. Nothing in it is changed. */
export function pageSeen(): PageSeen {
  const hasMain = document.querySelectorAll('main, [role="main"]').length === 1;
  const { lines, partial } = linesOf(document.body, {}, hasMain ? 'beside' : 'main');
  const main = lines.filter(({ zone }) => zone === 'main');
  return {
    text: printed(main.length > 0 ? main : lines).slice(0, LONGEST),
    parts: partsOf(lines),
    partial,
  };
}

/** Runs of lines that list something, and the prose between them; first those of what the page is for. */
function partsOf(lines: readonly Line[]): PagePart[] {
  const runs: { heading: string; zone: Zone; isList: boolean; lines: Line[] }[] = [];
  let heading = '';
  for (const [at, line] of lines.entries()) {
    if (line.kind === 'heading') {
      heading = line.cells.join(' ').slice(0, 200);
      continue;
    }
    const isList =
      line.kind !== 'text' ||
      (lines[at + 1]?.kind === 'text' && !lines[at + 1]!.gap) ||
      (!line.gap && lines[at - 1]?.kind === 'text');
    const run = runs.at(-1);
    if (
      run &&
      run.heading === heading &&
      run.zone === line.zone &&
      run.isList === isList &&
      lines[at - 1]?.kind !== 'heading' &&
      (!line.gap || !isList)
    )
      run.lines.push(line);
    else runs.push({ heading, zone: line.zone, isList, lines: [line] });
  }
  const order: readonly Zone[] = ['main', 'beside', 'comments'];
  return order
    .flatMap((zone) => runs.filter((run) => run.zone === zone))
    .map((run) => ({ heading: run.heading, text: printed(run.lines).trim(), zone: run.zone }))
    .filter(({ text }) => hasWords(text))
    .slice(0, MOST_PARTS);
}
