/** Lines of a page as they are seen, and the text that is made of them. */

/** Where on the page a line stands: in what the page is for, beside it (menus, side columns, head and foot), or in what readers wrote below. */
export type Zone = 'main' | 'beside' | 'comments';

export interface Line {
  readonly kind: 'text' | 'item' | 'heading' | 'row';
  /** One, or one for each column of a row. */
  readonly cells: readonly string[];
  /** How many lists it stands in besides its own; of a heading, its level. */
  readonly depth: number;
  /** Room above it. */
  readonly gap: boolean;
  readonly zone: Zone;
  /** The kind of box that it filled, to tell parts of a card from things of a list. */
  readonly box: string;
}

/** Marks within a line that is being written. Pages use these code points for pictures in fonts at most, and those are left out. */
export const STRUCK = '\uE000';
export const STRUCK_END = '\uE001';
/** Text that counts only where no other stands beside it: what a picture is said to show, what a button says. */
export const WEAK = '\uE002';
export const WEAK_END = '\uE003';

/** A line as written, its marks put into words: "~~struck~~". */
export function finished(written: string): string {
  let line = written;
  if (line.includes(WEAK)) {
    const strong = line.replace(/\uE002[^\uE003]*\uE003/g, ' ');
    line = hasWords(strong) ? strong : line.replace(/[\uE002\uE003]/g, '');
  }
  if (line.includes(STRUCK)) {
    line = line
      .replace(/\uE001([ \t]*)\uE000/g, '$1')
      .replace(/\uE000([^\uE001]*)\uE001?/g, (_, struck: string) =>
        hasWords(struck) ? struck.replace(/^(\s*)(.*?)(\s*)$/s, '$1~~$2~~$3') : struck,
      );
  }
  return line.trim() === '' ? '' : line.trimEnd();
}

export function hasWords(text: string): boolean {
  return /[\p{L}\p{N}]/u.test(text);
}

/** A word, and not only figures with their units. */
export function hasName(text: string): boolean {
  return /\p{L}{3}/u.test(text);
}

function hasFigure(text: string): boolean {
  return /\d/.test(text);
}

const textOf = ({ cells }: Line): string => cells.filter((cell) => cell !== '').join(' ');
const lengthOf = (lines: readonly Line[]): number => lines.reduce((sum, line) => sum + textOf(line).length, 0);

/** What stands in one cell or one card is one thing up to here: lines, characters. */
const MOST_LINES = 6;
const MOST_LENGTH = 200;

/** Two or more lines that each name something with its figures are things of their own. */
export function areThings(lines: readonly Line[]): boolean {
  if (lines.some(({ kind }) => kind === 'row' || kind === 'item')) return true;
  return lines.filter((line) => hasName(textOf(line)) && hasFigure(textOf(line))).length >= 2;
}

/** Whether some lines are parts of one thing, as the lines of a card are. */
export function isOneThing(lines: readonly Line[]): boolean {
  return lines.length <= MOST_LINES && lengthOf(lines) <= MOST_LENGTH && !areThings(lines);
}

/** The lines in one: "Pot, 1.3 L"; what goes on in mid-sentence needs no comma. */
export function inOne(lines: readonly Line[]): string {
  return lines
    .map(textOf)
    .reduce(
      (all, text) =>
        all === ''
          ? text
          : `${all}${/^[(/&+–]|^(with|and|und|mit|et|avec|y|con)\b/.test(text) || /[,;:(/–]$/.test(all) ? ' ' : ', '}${text}`,
      '',
    );
}

/**
 * Lines of boxes that stand side by side. Where each holds one line, or parts of one thing, they are one row; where columns run in step, as many
 * rows; else what stands in one line comes first, and below it the others, each on lines of their own.
 */
export function sideBySide(boxes: readonly (readonly Line[])[], base: Omit<Line, 'kind' | 'cells'>): Line[] {
  const filled = boxes.filter((lines) => lines.length > 0);
  if (filled.length === 0) return [];
  const row = (cells: readonly string[]): Line => ({ ...base, kind: 'row', cells });
  const tall = filled.filter((lines) => lines.length > 1);
  if (tall.length === 0 || filled.every((lines) => lines.length === 1 || isOneThing(lines))) {
    if (tall.length < 2 || !inStep(tall)) return [row(boxes.map(inOne))];
  }
  if (tall.length > 1 && inStep(tall)) {
    return tall[0]!.map((_, at) =>
      row(boxes.map((lines) => (lines.length > 1 ? textOf(lines[at]!) : at === 0 ? inOne(lines) : ''))),
    );
  }
  const one = boxes.filter((lines) => lines.length === 1 || (lines.length > 1 && isOneThing(lines)));
  const many = boxes.filter((lines) => !one.includes(lines));
  const head = one.map(inOne).filter((text) => text !== '');
  return [
    ...(head.length === 0 ? [] : [head.length === 1 ? { ...base, kind: 'text' as const, cells: head } : row(head)]),
    ...many.flat().map((line): Line => ({ ...line, kind: line.kind === 'text' ? 'item' : line.kind, gap: false })),
  ];
}

/** As many lines in each, one below the other, and at least one of the boxes holds only figures: names here, masses there. */
function inStep(tall: readonly (readonly Line[])[]): boolean {
  const [first] = tall;
  return (
    tall.every((lines) => lines.length === first!.length) &&
    tall.some((lines) => lines.every((line) => hasFigure(textOf(line)) && !hasName(textOf(line))))
  );
}

/** The lines as a text that a person can read and go on writing: bullets with their indent, headings marked, a tab between the cells of a row. */
export function printed(lines: readonly Line[]): string {
  let text = '';
  for (const { kind, cells, depth, gap } of lines) {
    if (text !== '') text += gap ? '\n\n' : '\n';
    if (kind === 'heading') text += `${'#'.repeat(depth)} `;
    if (kind === 'item') text += `${'  '.repeat(depth)}- `;
    text += cells.join('\t').trimEnd();
  }
  return text;
}
