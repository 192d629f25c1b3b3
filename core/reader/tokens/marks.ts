import { NUMBER, SIGN, WORD, type Tokens } from './tokens.js';

/** Furthest that the end of a link or of a strike is looked for, in tokens. */
const REACH = 200;

const MARKS: ReadonlySet<string> = new Set(['~', '!', '[', ']', '`', '^', '*', '_', '@', 'http', 'https', 'www']);

/** Takes addresses, pictures, footnote marks, emphasis and the numbers of a list out of the tokens from `from` on; tells what is struck through. */
export function dropMarks(text: string, tokens: Tokens, from: number): void {
  if (!hasMarks(tokens, from)) return;
  const marks = new Marks(text, tokens, from);
  const numbered = marks.listNumbers();
  let to = from;
  let strike = false;
  let gap = 0;
  for (let at = from; at < tokens.n; at++) {
    const end = numbered.has(at) ? at + 2 : marks.endOfMark(at);
    if (marks.isStrike(at)) strike = !strike && marks.struckAhead(at + 2);
    if (end > at) {
      gap = Math.max(gap, numbered.has(at) ? 2 : tokens.gap[at]!);
      at = end - 1;
      continue;
    }
    tokens.move(at, to, Math.max(gap, tokens.gap[at]!));
    tokens.struck[to] = strike ? 1 : 0;
    to++;
    gap = 0;
  }
  tokens.n = to;
}

/** What a mark, an address or the number of a list begins with: most cells have none, and stay as they are. */
function hasMarks(tokens: Tokens, from: number): boolean {
  for (let at = from; at < tokens.n; at++) {
    if (tokens.kind[at] !== NUMBER) {
      if (MARKS.has(tokens.fold(at))) return true;
    } else if (tokens.fold(at + 1) === '.' || tokens.fold(at + 1) === ')') return true;
  }
  return false;
}

/** Looks at the marks of one cell: its tokens from `from` on, before any is dropped. */
class Marks {
  private readonly text: string;
  private readonly tokens: Tokens;
  private readonly from: number;

  constructor(text: string, tokens: Tokens, from: number) {
    this.text = text;
    this.tokens = tokens;
    this.from = from;
  }

  /** The token after the mark that begins at `at`; `at` itself where none does. */
  endOfMark(at: number): number {
    const { tokens } = this;
    const fold = tokens.fold(at);
    if (this.isStrike(at)) return at + 2;
    const glued = this.glued(at);
    if (fold === '!' && glued === '[') return this.afterTarget(at + 1);
    if (fold === ']' && glued === '(' && this.isTarget(at + 1)) return this.closing(at + 1);
    if (fold === '[') return Math.max(at + 1, this.afterNote(at));
    if (fold === ']' || fold === '`' || (fold === '^' && tokens.gap[at] === 0)) return at + 1;
    if (this.isEmphasis(at, fold, glued)) return at + 1;
    const address = (fold === 'http' || fold === 'https' || fold === 'www') && (glued === ':' || glued === '.');
    return address || (tokens.kind[at] === WORD && this.isAddress(at)) ? this.endOfGlued(at) : at;
  }

  /** Doubled tildes strike through what stands between them. */
  isStrike(at: number): boolean {
    return this.tokens.fold(at) === '~' && this.glued(at) === '~';
  }

  struckAhead(from: number): boolean {
    for (let i = from; i + 1 < this.tokens.n && i < from + REACH; i++)
      if (this.tokens.fold(i) === '~' && this.tokens.fold(i + 1) === '~') return true;
    return false;
  }

  /** "1. pack 2. blanket 3. tarp" on one line: where its numbers stand, if they go up by one and are two or more. */
  listNumbers(): ReadonlySet<number> {
    const { tokens } = this;
    const found = new Set<number>();
    let last = 0;
    for (let at = this.from; at + 2 < tokens.n; at++) {
      const number = tokens.number[at];
      const point = tokens.fold(at + 1);
      if (number?.whole !== true || (point !== '.' && point !== ')')) continue;
      if (tokens.gap[at + 1] !== 0 || tokens.gap[at + 2] === 0) continue;
      if (number.value !== last + 1 && !(found.size === 0 && number.value === 2)) continue;
      last = number.value;
      found.add(at);
    }
    return found.size > 1 ? found : new Set();
  }

  /** The token right after, where nothing parts them. */
  private glued(at: number): string {
    return at + 1 < this.tokens.n && this.tokens.gap[at + 1] === 0 ? this.tokens.fold(at + 1) : '';
  }

  private isEmphasis(at: number, fold: string, glued: string): boolean {
    const { tokens } = this;
    if (fold !== '*' && fold !== '_') return false;
    const last = at + 1 >= tokens.n;
    const times = at > this.from && tokens.kind[at - 1] === NUMBER && !last && tokens.kind[at + 1] === NUMBER;
    if (times) return false;
    return fold === '*' || glued === '_' || tokens.gap[at]! > 0 || at === this.from || last || tokens.gap[at + 1]! > 0;
  }

  /** "name@example.org", "my.name@…": words tied by points up to an @ and a word. */
  private isAddress(at: number): boolean {
    const { tokens } = this;
    for (let i = at + 1; i < tokens.n && i < at + 12; i++) {
      if (tokens.gap[i]! > 0) return false;
      if (tokens.fold(i) === '@') return tokens.isWord(i + 1) && tokens.gap[i + 1] === 0;
      if (tokens.kind[i] === SIGN && !'.-_+'.includes(tokens.fold(i))) return false;
    }
    return false;
  }

  private endOfGlued(at: number): number {
    let end = at + 1;
    while (end < this.tokens.n && this.tokens.gap[end] === 0) end++;
    return end;
  }

  /** "[text](target)": after a target no blank stands inside, or it looks like an address. */
  private isTarget(open: number): boolean {
    const end = this.closing(open);
    const inner = this.text.slice(this.tokens.end[open], this.tokens.start[end - 1]);
    return inner.startsWith('#') || inner.includes('/') || inner.includes('.');
  }

  private closing(open: number): number {
    let depth = 0;
    for (let i = open; i < this.tokens.n && i < open + REACH; i++) {
      if (this.tokens.fold(i) === '(') depth++;
      if (this.tokens.fold(i) === ')' && --depth === 0) return i + 1;
    }
    return open + 1;
  }

  private afterTarget(open: number): number {
    for (let i = open; i < this.tokens.n && i < open + REACH; i++)
      if (this.tokens.fold(i) === ']') return this.tokens.fold(i + 1) === '(' ? this.closing(i + 1) : i + 1;
    return open + 1;
  }

  /** The token after "[^a]", "[2/3]", a footnote mark or the tally of a list; 0 where the bracket opens none. */
  private afterNote(open: number): number {
    const { tokens } = this;
    let told = false;
    for (let i = open + 1; i < tokens.n && i < open + 5; i++) {
      if (tokens.fold(i) === ']') return told ? i + 1 : 0;
      if (tokens.isWord(i) && tokens.fold(open + 1) !== '^') return 0;
      if (tokens.fold(i) === '^' || tokens.kind[i] === NUMBER) told = true;
    }
    return 0;
  }
}
