import { findMeasures, type Bare, type Measure, type MeasureContext } from '../quantities/measures.js';
import type { Cell, Row } from '../formats/rows.js';
import type { Dictionary, Role } from '../text/lexicon.js';
import { findTerms, type Term } from '../text/terms.js';
import type { Beginning } from '../text/beginning.js';
import { parted, type Token } from '../text/tokens.js';

/** What a stretch is made of. */
interface Parts {
  readonly text: string;
  readonly row: Row;
  readonly tokens: readonly Token[];
  /** Of each token: the index of its cell. */
  readonly cellOf: readonly number[];
  /** Of each token: struck through. */
  readonly struck: readonly boolean[];
  readonly terms: readonly Term[];
  readonly measures: readonly Measure[];
  readonly bare: readonly Bare[];
}
export type Break = 0 | 1 | 2;

/** One row, read into tokens, terms and quantities: what all readers of items look at. Most rows name nothing, and need no more. */
export class Stretch implements Parts {
  readonly text: string;
  readonly row: Row;
  readonly tokens: readonly Token[];
  readonly cellOf: readonly number[];
  readonly struck: readonly boolean[];
  readonly terms: readonly Term[];
  readonly measures: readonly Measure[];
  readonly bare: readonly Bare[];
  private roles: ReadonlyMap<Role, readonly Term[]> | undefined;
  private parted: readonly Break[] | undefined;
  private wordCount = -1;

  constructor({ text, row, tokens, cellOf, struck, terms, measures, bare }: Parts) {
    this.text = text;
    this.row = row;
    this.tokens = tokens;
    this.cellOf = cellOf;
    this.struck = struck;
    this.terms = terms;
    this.measures = measures;
    this.bare = bare;
  }

  /** Whether a term has one of the roles. */
  tells(roles: ReadonlySet<Role>): boolean {
    return this.terms.some((term) => roles.has(term.role));
  }

  /** How many of the tokens are words. */
  get words(): number {
    if (this.wordCount < 0) {
      this.wordCount = 0;
      for (const token of this.tokens) if (token.type === 'word') this.wordCount++;
    }
    return this.wordCount;
  }

  /** The terms again, by role. */
  get byRole(): ReadonlyMap<Role, readonly Term[]> {
    return (this.roles ??= rolesOf(this.terms));
  }

  /** Of each token: how strongly it is parted from the one before: 0 not, 1 a comma or the like, 2 a sentence or a cell. */
  get breaks(): readonly Break[] {
    return (this.parted ??= breaksOf(this));
  }
}

/** Reads some cells of a row, in order, as one stretch. */
export function stretchOf(
  text: string,
  beginning: Beginning,
  row: Row,
  cells: readonly Cell[],
  dictionary: Dictionary,
  context: MeasureContext,
): Stretch {
  const { tokens, cellOf, struck } = tokensOf(text, beginning, row, cells);
  const terms = findTerms(tokens, dictionary);
  const { measures, bare } = findMeasures(tokens, terms, context);
  // "~~120 g~~ 95 g": what is struck through is said no more.
  const partly = struck.includes(true) && struck.includes(false);
  return new Stretch({
    text,
    row,
    tokens,
    cellOf,
    struck,
    terms,
    measures: partly ? measures.filter(({ first }) => struck[first] !== true) : measures,
    bare: partly ? bare.filter(({ at }) => struck[at] !== true) : bare,
  });
}

function tokensOf(
  text: string,
  beginning: Beginning,
  row: Row,
  cells: readonly Cell[],
): Pick<Parts, 'tokens' | 'cellOf' | 'struck'> {
  const all: Token[] = [];
  const cellOf: number[] = [];
  const struck: boolean[] = [];
  for (const cell of cells) {
    const index = row.cells.indexOf(cell);
    const marked = withoutMarks(text, beginning.of(row.line, cell));
    for (let i = 0; i < marked.tokens.length; i++) {
      const token = marked.tokens[i];
      if (token === undefined) continue;
      all.push(i === 0 && all.length > 0 ? parted(token, 2) : token);
      cellOf.push(index);
      struck.push(marked.struck[i] ?? false);
    }
  }
  return { tokens: all, cellOf, struck };
}

const NONE: readonly Term[] = [];

export function termsOf(stretch: Stretch, role: Role): readonly Term[] {
  return stretch.byRole.get(role) ?? NONE;
}

function rolesOf(terms: readonly Term[]): ReadonlyMap<Role, readonly Term[]> {
  const roles = new Map<Role, Term[]>();
  for (const term of terms) {
    const same = roles.get(term.role);
    if (same === undefined) roles.set(term.role, [term]);
    else same.push(term);
  }
  return roles;
}

/** Takes out addresses, pictures, footnote marks and emphasis; tells what is struck through. */
function withoutMarks(
  text: string,
  tokens: readonly Token[],
): { tokens: readonly Token[]; struck: readonly boolean[] } {
  if (!tokens.some(mayBeMark)) return { tokens, struck: [] };
  const numbered = listNumbers(tokens);
  const kept: Token[] = [];
  const struck: boolean[] = [];
  let strike = false;
  let gap: Token['gap'] = 0;
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token === undefined) continue;
    const next = tokens[i + 1];
    const glued = next?.gap === 0 ? next.fold : '';
    const skipTo = (end: number) => {
      i = end - 1;
      gap = Math.max(gap, token.gap) as Token['gap'];
    };
    if (numbered.has(i)) {
      i++;
      gap = 2;
      continue;
    }
    if (token.fold === '~' && glued === '~') {
      strike = !strike && struckAhead(tokens, i + 2);
      skipTo(i + 2);
      continue;
    }
    if (token.fold === '!' && glued === '[') {
      skipTo(afterTarget(tokens, i + 1));
      continue;
    }
    if (token.fold === ']' && glued === '(' && isTarget(text, tokens, i + 1)) {
      skipTo(closing(tokens, i + 1));
      continue;
    }
    if (token.fold === '[' || token.fold === ']' || token.fold === '`' || (token.fold === '^' && token.gap === 0)) {
      if (token.fold === '[') {
        const end = isNote(tokens, i);
        if (end > i) {
          skipTo(end);
          continue;
        }
      }
      gap = Math.max(gap, token.gap) as Token['gap'];
      continue;
    }
    if (
      (token.fold === '*' || token.fold === '_') &&
      !(tokens[i - 1]?.type === 'number' && next?.type === 'number') &&
      (token.fold === '*' || glued === '_' || token.gap > 0 || i === 0 || next === undefined || next.gap > 0)
    ) {
      gap = Math.max(gap, token.gap) as Token['gap'];
      continue;
    }
    if ((token.fold === 'http' || token.fold === 'https' || token.fold === 'www') && (glued === ':' || glued === '.')) {
      let end = i + 1;
      while (end < tokens.length && tokens[end]?.gap === 0) end++;
      skipTo(end);
      continue;
    }
    if (token.type === 'word' && isAddress(tokens, i)) {
      let end = i + 1;
      while (end < tokens.length && tokens[end]?.gap === 0) end++;
      skipTo(end);
      continue;
    }
    kept.push(gap > token.gap ? parted(token, gap) : token);
    struck.push(strike);
    gap = 0;
  }
  return { tokens: kept, struck };
}

/** "name@example.org", "my.name@…": words tied by points up to an @ and a word. */
function isAddress(tokens: readonly Token[], at: number): boolean {
  for (let i = at + 1; i < tokens.length && i < at + 12; i++) {
    const token = tokens[i];
    if (token === undefined || token.gap > 0) return false;
    if (token.fold === '@') return tokens[i + 1]?.type === 'word' && tokens[i + 1]?.gap === 0;
    if (token.type === 'sign' && !'.-_+'.includes(token.fold)) return false;
  }
  return false;
}

const MARKS = new Set(['~', '!', '[', ']', '`', '^', '*', '_', '@', 'http', 'https', 'www']);

/** What a mark, an address or the number of a list begins with: most cells have none, and stay as they are. */
function mayBeMark(token: Token, i: number, tokens: readonly Token[]): boolean {
  if (token.type !== 'number') return MARKS.has(token.fold);
  const point = tokens[i + 1]?.fold;
  return point === '.' || point === ')';
}

/** "1. pack 2. blanket 3. tarp" on one line: where its numbers stand, if they go up by one and are three or more. */
function listNumbers(tokens: readonly Token[]): ReadonlySet<number> {
  const found = new Set<number>();
  let last = 0;
  for (const [i, token] of tokens.entries()) {
    const point = tokens[i + 1];
    if (
      token.number?.whole !== true ||
      (point?.fold !== '.' && point?.fold !== ')') ||
      point.gap > 0 ||
      (tokens[i + 2]?.gap ?? 0) === 0
    )
      continue;
    const { value } = token.number;
    if (value !== last + 1 && !(found.size === 0 && value === 2)) continue;
    last = value;
    found.add(i);
  }
  return found.size > 1 ? found : new Set();
}

function struckAhead(tokens: readonly Token[], from: number): boolean {
  for (let i = from; i + 1 < tokens.length && i < from + 200; i++)
    if (tokens[i]?.fold === '~' && tokens[i + 1]?.fold === '~') return true;
  return false;
}

/** "[text](target)": after a target no blank stands inside, or it looks like an address. */
function isTarget(text: string, tokens: readonly Token[], open: number): boolean {
  const end = closing(tokens, open);
  const inner = text.slice(tokens[open]?.end ?? 0, tokens[end - 1]?.start ?? 0);
  return inner.startsWith('#') || inner.includes('/') || inner.includes('.');
}

function closing(tokens: readonly Token[], open: number): number {
  let depth = 0;
  for (let i = open; i < tokens.length && i < open + 200; i++) {
    if (tokens[i]?.fold === '(') depth++;
    if (tokens[i]?.fold === ')' && --depth === 0) return i + 1;
  }
  return open + 1;
}

function afterTarget(tokens: readonly Token[], open: number): number {
  for (let i = open; i < tokens.length && i < open + 200; i++)
    if (tokens[i]?.fold === ']') return tokens[i + 1]?.fold === '(' ? closing(tokens, i + 1) : i + 1;
  return open + 1;
}

/** "[^a]", "[2/3]": a footnote mark or the tally of a list. */
function isNote(tokens: readonly Token[], open: number): number {
  for (let i = open + 1; i < tokens.length && i < open + 5; i++) {
    if (tokens[i]?.fold === ']')
      return tokens.slice(open + 1, i).some((token) => token.fold === '^' || token.type === 'number') ? i + 1 : open;
    if (tokens[i]?.type === 'word' && tokens[open + 1]?.fold !== '^') return open;
  }
  return open;
}

const PARTS = ',;/|•+&()[]{}:=!?–→><';

function breaksOf({ text, tokens, terms, measures, cellOf }: Parts): Break[] {
  const breaks: Break[] = tokens.map((token, i) => (i > 0 && (token.gap === 2 || cellOf[i] !== cellOf[i - 1]) ? 2 : 0));
  const inside = new Set<number>();
  for (const measure of measures) for (let i = measure.first + 1; i <= measure.last; i++) inside.add(i);
  const units = new Set(measures.map((measure) => measure.last));
  const mark = (i: number, strength: Break) => {
    if (i < breaks.length) breaks[i] = Math.max(breaks[i] ?? 0, strength) as Break;
  };
  for (let i = 0; i < tokens.length; i++) {
    const token = tokens[i];
    if (token?.type !== 'sign' || inside.has(i)) continue;
    const next = tokens[i + 1];
    if (token.fold === '.') {
      if (next !== undefined && (next.gap > 0 || next.fold === '.') && endsSentence(text, tokens, i, units))
        mark(i + 1, 2);
    } else if (PARTS.includes(token.fold)) {
      mark(i, 1);
      mark(i + 1, (token.fold === '!' || token.fold === '?' || token.fold === ';') && (next?.gap ?? 0) > 0 ? 2 : 1);
    } else if (token.fold === '-' && token.gap > 0 && (next?.gap ?? 0) > 0) mark(i + 1, 1);
  }
  for (const term of terms)
    if ((term.role === 'and' || term.role === 'with' || term.role === 'or') && !inside.has(term.first))
      mark(term.first, 1);
  return breaks;
}

/** Short forms that a full stop follows in the middle of a sentence. */
const SHORT_FORMS = new Set([
  'incl',
  'inkl',
  'approx',
  'alum',
  'diam',
  'pers',
  'capac',
  'zzgl',
  'evtl',
  'excl',
  'stainl',
  'zus',
  'dia',
  'haut',
  'wys',
]);
const SHORTEST_LAST_WORD = 4;

/** A full stop ends a sentence; not after a short form, nor, before a small letter, after a word that may be one. */
function endsSentence(text: string, tokens: readonly Token[], at: number, units: ReadonlySet<number>): boolean {
  const before = tokens[at - 1];
  const next = tokens[at + 1];
  if (next === undefined) return true;
  if (next.fold === '.') return true;
  const short = before?.type === 'word' && before.fold.length <= 2 && before.fold.charCodeAt(0) < 0x2e80;
  if (short && !units.has(at - 1)) return false;
  if (next.type === 'number' && SHORT_FORMS.has(before?.fold ?? '')) return false;
  const first = text.charAt(next.start);
  return (
    next.type === 'number' ||
    first !== first.toLowerCase() ||
    first.charCodeAt(0) >= 0x2e80 ||
    next.type === 'sign' ||
    (before?.type === 'word' && before.fold.length >= SHORTEST_LAST_WORD && !SHORT_FORMS.has(before.fold))
  );
}
