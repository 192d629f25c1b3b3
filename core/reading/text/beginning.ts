import type { Cell, SourceLine } from '../formats/rows.js';
import { parted, tokenise, type Token } from './tokens.js';

/** As much of a text, in characters, as tells its languages and its units; the line that it ends in is read whole. */
export const SAMPLE = 12_000;

/** The beginning of a text, read line by line: what tells its languages and units, and what its cells are cut from, so that nothing is read twice. */
export class Beginning {
  /** Of each line that was read: its tokens, in order. */
  readonly read: readonly (readonly Token[])[];
  private readonly text: string;
  private readonly lines: readonly SourceLine[];

  /** @param lines  each as far as it is to be read */
  constructor(text: string, lines: readonly SourceLine[]) {
    this.text = text;
    this.lines = lines;
    const read: Token[][] = [];
    for (const { start, end } of lines) {
      if (start >= SAMPLE) break;
      read.push(tokenise(text, start, end, true));
    }
    this.read = read;
  }

  /** The tokens of a cell that begins in a line (1-based): cut out of those of the line where that is the same, else read. */
  of(number: number, cell: Cell): readonly Token[] {
    const tokens = this.read[number - 1];
    const line = this.lines[number - 1];
    const inside = line !== undefined && cell.start >= line.start && cell.end <= line.end;
    const own = tokens !== undefined && inside ? cut(this.text, tokens, cell) : undefined;
    return own ?? tokenise(this.text, cell.start, cell.end, true);
  }
}

const POINT = 46;

/** The tokens of a cell; undefined where they would be others if it were read alone. */
function cut(text: string, tokens: readonly Token[], { start, end }: Cell): readonly Token[] | undefined {
  let from = 0;
  while (from < tokens.length && (tokens[from]?.start ?? end) < start) from++;
  const first = tokens[from];
  // Behind a picture or a tag there is a gap that the line has and the cell has not; a point at its head opens a number.
  if (first?.start !== start || text.charCodeAt(start) === POINT) return undefined;
  let to = from + 1;
  while (to < tokens.length && (tokens[to]?.start ?? end) < end) to++;
  if ((tokens[to - 1]?.end ?? 0) > end) return undefined;
  if (to - from === tokens.length && first.gap === 0) return tokens;
  const own = tokens.slice(from, to);
  if (first.gap > 0) own[0] = parted(first, 0);
  return own;
}
