import { Stretch } from '../../reading/items/stretch.js';
import type { Row as Source } from '../../reading/formats/rows.js';
import { findMeasures, type Bare, type Measure, type MeasureContext } from '../../reading/quantities/measures.js';
import type { Role } from '../../reading/text/lexicon.js';
import type { Span } from '../../model/span.js';
import type { Phrase, Phrases } from '../phrases/phrases.js';
import { dropMarks } from '../tokens/marks.js';
import { scan } from '../tokens/scan.js';
import type { Tokens } from '../tokens/tokens.js';
import { breaksOf } from './breaks.js';
import { meet, type RoleMask } from '../words/roles.js';

/** A number with its unit at its tokens, or several that share one. */
export type Figure = Measure;

/** Tokens from, to (after the last). */
export interface Part {
  readonly from: number;
  readonly to: number;
}

const NONE: readonly Phrase[] = [];

/** One row of a text, read into tokens, phrases and figures: what every rule looks at. It holds until the next row is read. */
export class Row {
  readonly text: string;
  readonly source: Source;
  readonly tokens: Tokens;
  readonly phrases: readonly Phrase[];
  readonly figures: readonly Figure[];
  /** Numbers without a unit. */
  readonly bare: readonly Bare[];
  private byRole: Map<Role, Phrase[]> | undefined;
  private breaks: Uint8Array | undefined;
  private asStretch: Stretch | undefined;

  constructor(
    text: string,
    source: Source,
    tokens: Tokens,
    phrases: readonly Phrase[],
    figures: readonly Figure[],
    bare: readonly Bare[],
  ) {
    this.text = text;
    this.source = source;
    this.tokens = tokens;
    this.phrases = phrases;
    this.figures = figures;
    this.bare = bare;
  }

  /** Whether a word of it may have one of the roles. */
  may(roles: RoleMask): boolean {
    return meet(this.tokens.mask, roles);
  }

  /** Its phrases of a role, in order. */
  of(role: Role): readonly Phrase[] {
    if (this.byRole === undefined) {
      this.byRole = new Map();
      for (const phrase of this.phrases) {
        const same = this.byRole.get(phrase.role);
        if (same === undefined) this.byRole.set(phrase.role, [phrase]);
        else same.push(phrase);
      }
    }
    return this.byRole.get(role) ?? NONE;
  }

  /** How strongly a token is parted from the one before: 0 not, 1 a comma or the like, 2 a sentence or a cell. */
  breakAt(at: number): number {
    this.breaks ??= breaksOf(this.text, this.tokens, this.phrases, this.figures);
    return this.breaks[at] ?? 0;
  }

  /** The strongest break from one token to another, the break before each counted. */
  breakIn(from: number, to: number): number {
    let most = 0;
    for (let at = from; at <= to; at++) most = Math.max(most, this.breakAt(at));
    return most;
  }

  /** The tokens around some, up to the nearest break of at least a strength on either side: `to` is after the last. */
  part(first: number, last: number, strength: number): Part {
    let from = Math.max(first, 0);
    while (from > 0 && this.breakAt(from) < strength) from--;
    let to = Math.max(last, 0) + 1;
    while (to < this.tokens.n && this.breakAt(to) < strength) to++;
    return { from, to };
  }

  /** The sentence or cell that some tokens stand in. */
  clause(first: number, last = first): Part {
    return this.part(first, last, 2);
  }

  /** What stands between the nearest breaks of any strength on either side. */
  segment(first: number, last = first): Part {
    return this.part(first, last, 1);
  }

  /** The phrase of a role that begins at a token. */
  opens(role: Role, at: number): Phrase | undefined {
    return this.of(role).find((phrase) => phrase.first === at);
  }

  /** The phrase of a role that ends at a token. */
  ends(role: Role, at: number): Phrase | undefined {
    return this.of(role).find((phrase) => phrase.last === at);
  }

  /** The phrase of a role that covers a token. */
  covers(role: Role, at: number): Phrase | undefined {
    return this.of(role).find((phrase) => phrase.first <= at && phrase.last >= at);
  }

  /** The first phrase of a role within some tokens, both included. */
  within(role: Role, first: number, last: number): Phrase | undefined {
    return this.of(role).find((phrase) => phrase.first >= first && phrase.last <= last);
  }

  /** A phrase of the role at most `reach` tokens before or after some, in the same sentence. */
  beside(role: Role, first: number, last: number, reach: number): Phrase | undefined {
    return this.of(role).find((phrase) =>
      phrase.last < first
        ? first - phrase.last - 1 <= reach && this.breakIn(phrase.last + 1, first) < 2
        : phrase.first > last && phrase.first - last - 1 <= reach && this.breakIn(last + 1, phrase.first) < 2,
    );
  }

  /** Whether a bracket that opens after one token is still open before another. */
  inBrackets(from: number, to: number): boolean {
    let depth = 0;
    for (let at = from; at < to; at++) {
      const fold = this.tokens.fold(at);
      if (fold === '(') depth++;
      else if (fold === ')') depth--;
    }
    return depth > 0;
  }

  /** Whether a token is one of these signs or words. */
  is(at: number, ...folds: readonly string[]): boolean {
    return at >= 0 && at < this.tokens.n && folds.includes(this.tokens.fold(at));
  }

  span(first: number, last: number): Span {
    return [this.tokens.start[Math.max(first, 0)] ?? 0, this.tokens.end[Math.max(last, 0)] ?? 0];
  }

  /** The row as today's reader sees it, for what has not moved over. */
  get stretch(): Stretch {
    return (this.asStretch ??= new Stretch({
      text: this.text,
      row: this.source,
      tokens: this.tokens.objects(),
      cellOf: Array.from(this.tokens.cell.subarray(0, this.tokens.n)),
      struck: Array.from(this.tokens.struck.subarray(0, this.tokens.n), (one) => one === 1),
      terms: this.phrases,
      measures: this.figures,
      bare: this.bare,
    }));
  }
}

/** Reads some cells of a row, in order. */
export function rowOf(
  text: string,
  source: Source,
  cells: Source['cells'],
  tokens: Tokens,
  phrases: Phrases,
  context: MeasureContext,
): Row {
  tokens.clear();
  for (const cell of cells) {
    const from = tokens.n;
    scan(text, cell.start, cell.end, tokens);
    dropMarks(text, tokens, from);
    if (from > 0 && tokens.n > from) tokens.gap[from] = 2;
    tokens.cell.fill(source.cells.indexOf(cell), from, tokens.n);
  }
  tokens.see();
  const found = phrases.in(tokens);
  const { measures, bare } = findMeasures(tokens.objects(), found, context);
  // "~~120 g~~ 95 g": what is struck through is said no more.
  const struck = tokens.struck.subarray(0, tokens.n);
  const partly = struck.includes(1) && struck.includes(0);
  return new Row(
    text,
    source,
    tokens,
    found,
    partly ? measures.filter(({ first }) => struck[first] === 0) : measures,
    partly ? bare.filter(({ at }) => struck[at] === 0) : bare,
  );
}
