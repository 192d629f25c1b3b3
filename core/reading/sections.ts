import type { AwayReason, SectionMeaning, UnitName } from '../data/words/words.js';
import type { FuelType, ItemKind, StoveType } from '../model/item.js';
import { unitIn } from './formats/columns.js';
import { AWAY } from './items/away.js';
import type { Context } from './items/context.js';
import { termsOf, type Stretch } from './items/stretch.js';
import type { Role } from './text/lexicon.js';
import type { Term } from './text/terms.js';
import { unitByName, unitBySymbol, type Unit } from './quantities/units.js';
import { mentionsOf } from './trip/groups.js';

/** Longest line that can be a heading, in words. */
const LONGEST = 14;

/** The level of a section that the head of a table names: below all marked headings. */
const TABLE = 9;

interface Level extends Lent {
  readonly level: number;
  /** A plain line, no marked heading: it ends with its list. */
  readonly plain: boolean;
  listed: boolean;
}

/** What headings lend to the rows below them. */
export type Lent = Pick<
  Context,
  'section' | 'kind' | 'kinds' | 'kindSpan' | 'massUnit' | 'away' | 'stoveType' | 'fuelType' | 'perPerson' | 'perGroup'
>;

export const NOTHING_LENT: Lent = {
  section: undefined,
  kind: undefined,
  kinds: undefined,
  kindSpan: undefined,
  massUnit: undefined,
  away: undefined,
  stoveType: undefined,
  fuelType: undefined,
  perPerson: false,
  perGroup: undefined,
};

/** Follows the headings of a text, and says what they lend to a row. */
export class Sections {
  private stack: Level[] = [];
  /** What is lent, until the stack changes. */
  private lent: Lent | undefined;

  /** Takes a heading. */
  open(stretch: Stretch, level: number, plain: boolean): void {
    while (this.stack.length > 0 && (this.stack.at(-1)?.level ?? 0) >= level) this.stack.pop();
    this.stack.push(levelOf(stretch, level, plain));
    this.lent = undefined;
  }

  /** Takes the head of a table that names its section. */
  openTable(stretch: Stretch): void {
    const section = termsOf(stretch, 'section').find((term) => term.first === 0);
    this.stack = this.stack.filter((level) => level.level < TABLE);
    this.stack.push({
      ...NOTHING_LENT,
      level: TABLE,
      plain: false,
      listed: false,
      perPerson: false,
      section: section?.value as SectionMeaning,
    });
    this.lent = undefined;
  }

  /** Takes note of a row that is no heading: a list under a plain heading ends with the next paragraph. */
  pass(bullet: boolean, level: number): void {
    const top = this.stack.at(-1);
    if (top === undefined || !top.plain) return;
    if (bullet && level >= top.level - 10) top.listed = true;
    else if (top.listed) {
      this.stack.pop();
      this.lent = undefined;
    }
  }

  /** The thing that the heading names has been told of; of several there may be more. */
  told(): void {
    const top = this.stack.at(-1);
    if (top?.kind === undefined || top.kinds === true) return;
    this.stack[this.stack.length - 1] = { ...top, kind: undefined, kindSpan: undefined };
    this.lent = undefined;
  }

  /** What the headings lend. The nearest that says something wins. */
  lend(): Lent {
    return (this.lent ??= this.lentNow());
  }

  private lentNow(): Lent {
    const top = this.stack.at(-1);
    const nearest = <K extends keyof Lent>(key: K) => this.stack.findLast((level) => level[key] !== undefined)?.[key];
    return {
      section: nearest('section'),
      kind: top?.kind,
      kinds: top?.kind === undefined ? undefined : top.kinds,
      kindSpan: top?.kindSpan,
      massUnit: nearest('massUnit'),
      away: nearest('away'),
      stoveType: nearest('stoveType'),
      fuelType: nearest('fuelType'),
      perPerson: this.stack.some((level) => level.perPerson),
      perGroup: nearest('perGroup'),
    };
  }
}

function levelOf(stretch: Stretch, level: number, plain: boolean): Level {
  const { terms, tokens } = stretch;
  const first = tokens.findIndex((token) => token.type === 'word');
  const word = (term: { readonly first: number }) => term.first === first || tokens.length <= 3;
  const sections = terms.filter((term) => term.role === 'section');
  const own = sections.filter(word).sort((a, b) => b.last - b.first - (a.last - a.first) || a.first - b.first)[0];
  const beside = isUnitHead(stretch) ? sections.find((term) => term.value === 'cook') : undefined;
  const section = beside ?? own;
  const short = tokens.at(-1)?.fold === ':' || tokens.length <= 6 || !plain;
  const away = short ? terms.find((term) => term.role === 'away' && !isLink(stretch, term)) : undefined;
  const things = terms.filter((term) => term.role === 'kind');
  const named = stretch.words <= 4;
  const kind = named && things.length === 1 ? things[0] : undefined;
  const stove = terms.find((term) => term.role === 'stoveTypes');
  const fuel = terms.find((term) => term.role === 'fuelTypes');
  const person = terms.some(
    (term) =>
      term.role === 'perPerson' && (term.last > term.first || (tokens[term.first]?.fold.length ?? 0) > LONGEST_MARK),
  );
  const unit: Unit | undefined = tokens.some((token) => token.type === 'number') ? undefined : unitIn(tokens, terms);
  const massUnit = unit?.dimension === 'mass' || unit?.dimension === 'ounce' ? unit : unitAfterNumbers(stretch);
  return {
    level,
    plain,
    listed: false,
    perPerson: person,
    perGroup: mentionsOf(stretch).find(({ clear }) => clear)?.people,
    section: section?.value as SectionMeaning | undefined,
    away: away === undefined ? undefined : AWAY[away.value as AwayReason],
    kind: kind?.value as ItemKind | undefined,
    kinds: kind?.many === true ? true : undefined,
    kindSpan: kind === undefined ? undefined : [tokens[kind.first]?.start ?? 0, tokens[kind.last]?.end ?? 0],
    stoveType: stove?.value as StoveType | undefined,
    fuelType: fuel?.value as FuelType | undefined,
    massUnit,
  };
}

/** "Skip to content": copied along from the head of a page. */
function isLink(stretch: Stretch, away: Term): boolean {
  return termsOf(stretch, 'to').some((to) => to.first === away.last + 1);
}

function isMassUnit(unit: Unit): boolean {
  return unit.dimension === 'mass' || unit.dimension === 'ounce';
}

/** "…, ounces from the kitchen scale": a unit word that belongs to no number. */
function unitAfterNumbers(stretch: Stretch): Unit | undefined {
  const word = termsOf(stretch, 'unit').find(
    (term) =>
      isMassUnit(unitByName(term.value as UnitName)) &&
      !stretch.measures.some((measure) => measure.first < term.first && measure.last >= term.first),
  );
  if (word === undefined) return undefined;
  const unit = unitByName(word.value as UnitName);
  return unit.dimension === 'mass' || unit.dimension === 'ounce' ? unit : undefined;
}

export interface HeadingContext {
  /** The next row that is not blank. */
  readonly next: 'bullet' | 'plain' | undefined;
  readonly nextLevel: number;
  /** What it says. */
  readonly nextText: string;
  /** A blank line stands before. */
  readonly parted: boolean;
}

/** Whether a row that no mark makes a heading is one. */
export function isHeading(stretch: Stretch, around: HeadingContext): boolean {
  const { row, tokens } = stretch;
  if (row.type === 'heading') return true;
  const { words } = stretch;
  if (words === 0 || words > LONGEST || stretch.row.cells.length > 1) return false;
  if (around.next === undefined) return false;
  const weighed = stretch.measures.some(
    (measure) => measure.unit.dimension !== 'other' && measure.unit.dimension !== 'temperature',
  );
  const colon = tokens.at(-1)?.fold === ':';
  if (row.bullet)
    return (colon || namesSeveral(stretch)) && !weighed && around.next === 'bullet' && around.nextLevel > row.level;
  const first = tokens.findIndex((token) => token.type === 'word');
  const named = words - summing(stretch);
  const section = stretch.terms.some(
    (term) => term.role === 'section' && term.first === first && term.last - term.first + 1 >= named - 1,
  );
  const told = stretch.terms.some(
    (term) =>
      (term.role === 'section' && term.first <= first + 1) ||
      term.role === 'away' ||
      (term.role === 'perPerson' && term.last > term.first),
  );
  if (weighed && !(section || (told && colon))) return false;
  if (colon) return true;
  if (around.next === 'plain' && around.nextLevel <= row.level && !isBold(stretch) && isOneOfItsList(stretch, around))
    return false;
  if (isUnitHead(stretch) || saysWhoOnly(stretch)) return true;
  const capitals = isCapitals(stretch);
  // What stands deeper than the list below it ends what is above: "tags: [cooking]".
  if (around.next === 'bullet' && around.nextLevel < row.level) return false;
  if (
    around.next === 'bullet' &&
    (told || words <= 6) &&
    !stretch.tokens.some((token) => token.type === 'number' && !around.parted)
  )
    return true;
  if (!around.parted) return section && (capitals || isBold(stretch));
  return (
    section ||
    (capitals && words <= 5) ||
    (told && words <= 4) ||
    (around.next === 'plain' && words <= 3 && tokens.length <= 4 && tokens.every((token) => token.type === 'word'))
  );
}

/**
 * "gas stove" on the first line, "upright burner" below a blank one: what names a thing and stands among its like is of the list.
 * "Stove" and "Pots and pans" name a section too, and capitals over small letters head what follows.
 */
function isOneOfItsList(stretch: Stretch, { nextText }: HeadingContext): boolean {
  const { terms, tokens } = stretch;
  const first = tokens.findIndex((token) => token.type === 'word');
  const last = tokens.findLastIndex((token) => token.type === 'word');
  const section = terms.some((term) => term.role === 'section' && term.first <= first && term.last >= last);
  const like =
    nextText.length <= LONGEST_SIBLING && !nextText.endsWith('.') && (!isCapitals(stretch) || isUpper(nextText));
  return !section && like && stretch.tells(THINGS);
}

/** Characters of a line that is of a list rather than a paragraph below its heading. */
const LONGEST_SIBLING = 80;

const THINGS: ReadonlySet<Role> = new Set(['kind', 'fuelTypes']);

/** "Mugs", and deeper below it the mugs. */
function namesSeveral({ terms, tokens }: Stretch): boolean {
  return terms.some(
    ({ role, many, first, last }) => role === 'kind' && many === true && first === 0 && last === tokens.length - 1,
  );
}

/** "Stove", "Kök": a line that is the name of a section and of a thing at once, and no more. */
export function namesItself({ row, terms, tokens }: Stretch): boolean {
  const whole = (term: Term) => term.first === 0 && term.last === tokens.length - 1;
  return (
    row.type !== 'heading' &&
    !row.bullet &&
    terms.some((term) => term.role === 'section' && whole(term)) &&
    terms.some((term) => term.role === 'kind' && term.many !== true && whole(term))
  );
}

/** Words that only sum up: "(Cook kit) 11.2 oz total". */
function summing(stretch: Stretch): number {
  return stretch.tokens.filter(
    (token, at) =>
      token.type === 'word' &&
      (stretch.measures.some((measure) => measure.first <= at && measure.last >= at) ||
        termsOf(stretch, 'totals').some((term) => term.first <= at && term.last >= at)),
  ).length;
}

/** "Personal kit", "Coletivo", "Group gear (Paul has the van)": who brings what follows, and nothing else. */
function saysWhoOnly({ tokens, terms }: Stretch): boolean {
  const bracket = tokens.findIndex(({ fold }) => fold === '(');
  const end = bracket < 0 ? tokens.length : bracket;
  const who = terms.find((term) => (term.role === 'perPerson' || term.role === 'shared') && term.first === 0);
  return who !== undefined && who.last === end - 1 && (end > 1 || (tokens[0]?.fold.length ?? 0) > LONGEST_MARK);
}

/** "Each" and "pp" on a line of their own are cells of a row that was stacked. */
const LONGEST_MARK = 6;

/** "Kitchen oz", "Bike g Kitchen g": heads of columns that ran together; they end in the unit of the figures below. */
function isUnitHead({ tokens, words }: Stretch): boolean {
  const unit = unitBySymbol(tokens.at(-1)?.fold ?? '');
  return unit !== undefined && isMassUnit(unit) && words > 1 && !tokens.some((token) => token.type === 'number');
}

const BOLD = /(?:\*\*|__|\[b\]|<b>|<strong>)$/i;
/** The longest of these marks. */
const LONGEST_BOLD = 8;

/** Set in bold from its first word. */
export function isBold({ text, tokens: [first] }: Stretch): boolean {
  return first !== undefined && BOLD.test(text.slice(Math.max(0, first.start - LONGEST_BOLD), first.start));
}

function isCapitals(stretch: Stretch): boolean {
  const first = stretch.tokens[0];
  const last = stretch.tokens.at(-1);
  if (first === undefined || last === undefined) return false;
  return isUpper(stretch.text.slice(first.start, last.end));
}

function isUpper(text: string): boolean {
  return text === text.toUpperCase() && text !== text.toLowerCase();
}

const TOTALS: ReadonlySet<Role> = new Set(['totals']);

/** A row that sums up: "TOTAL 4479 g", "Adds up to 20.5 oz", a section's own sum. */
export function isTotal(stretch: Stretch): boolean {
  if (!stretch.tells(TOTALS)) return false;
  const first = stretch.tokens.findIndex((token) => token.type === 'word');
  const summed = termsOf(stretch, 'totals').some(
    (term) =>
      !stretch.row.bullet &&
      stretch.row.cells.length === 1 &&
      stretch.measures.length === 1 &&
      stretch.measures.some(
        (measure) => measure.first > term.last && measure.first <= term.last + 2 && measure.unit.dimension === 'mass',
      ),
  );
  if (summed) return true;
  const total = termsOf(stretch, 'totals').find((term) => term.first <= first + 1);
  if (total === undefined) return false;
  const things = stretch.terms.filter((term) => term.role === 'kind' && term.first > total.last);
  return total.first === first
    ? things.length === 0 || total.last + 1 >= things[0]!.first
    : things.length === 0 && stretch.terms.some((term) => term.role === 'section' && term.first === first);
}
