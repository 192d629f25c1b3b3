import type { AwayReason, SectionMeaning } from '../data/words/words.js';
import { AWAY } from './items/away.js';
import { valueOf } from '../model/given.js';
import type { Item, ItemKind } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import type { Line, LineUse, Passing } from '../model/reading.js';
import { LONGEST_LINE } from './formats/lines.js';
import type { Row, SourceLine } from './formats/rows.js';
import { draftOf, isMissing, measuresOf, spanOf, stated, type Draft } from './items/draft.js';
import { findTerms } from './text/terms.js';
import { tokenise, type Token } from './text/tokens.js';
import { applyFigures, besideOf, besideRow, figuresOf, type ColumnFigures } from './items/columns.js';
import { alternativeOf, furtherOf } from './items/alternatives.js';
import { shareTraits } from './items/traits.js';
import { unnamedPot, unnamedStove } from './items/unnamed.js';
import type { Context } from './items/context.js';
import { draftsOf, fill } from './items/index.js';
import { isListed } from './items/listed.js';
import { shareCount, shareMass } from './items/shared.js';
import { sharePerson } from './items/quantity.js';
import type { Order } from './items/size.js';
import { termsOf, type Stretch } from './items/stretch.js';
import type { Thing } from './items/things.js';
import type { MassUnits } from './usual-units.js';
import { isBold, isHeading, isTotal, namesItself, NOTHING_LENT, Sections, type Lent } from './sections.js';
import { unread } from './unread.js';
import { Dictionary, type Role } from './text/lexicon.js';
import { countGroups, gather, readTrip, type Gathered } from './trip/index.js';

/** How a row stands in its text. */
type Form = 'bulleted' | 'plain' | 'prose' | 'list';

/** The heading that a row brings itself. */
type Label = Pick<Context, 'section' | 'away'>;

const NOTHING: Context = {
  ...NOTHING_LENT,
  headFirst: false,
  bulleted: false,
  plainLists: false,
  prose: false,
  cooks: false,
};

/** Fills in what the first leaves open from the second; gives whether anything came of it. */
function addTo(draft: Draft, more: Draft): boolean {
  let added = false;
  const fields = [
    'massG',
    'diameterMm',
    'baseDiameterMm',
    'heightMm',
    'boxMm',
    'sizeMm',
    'burnerMm',
    'supportsMm',
    'material',
    'bail',
    'lid',
    'handles',
    'stoveType',
    'stoveForm',
    'fuelType',
    'gasMix',
    'gasShares',
    'fuelMassG',
    'fuelVolumeMl',
  ] as const;
  for (const field of fields) {
    if (!isMissing(draft[field]) || isMissing(more[field])) continue;
    Object.assign(draft, { [field]: more[field] });
    added = true;
  }
  if (draft.capacitiesMl.length === 0 && more.capacitiesMl.length > 0) {
    draft.capacitiesMl = more.capacitiesMl;
    added = true;
  }
  if (more.massBasis !== undefined && draft.massBasis === undefined) draft.massBasis = more.massBasis;
  if (more.quantity.grounds === 'stated') {
    draft.quantity = more.quantity;
    added = true;
  }
  return added;
}

/** Whether nothing but its name is known of a thing. */
function saysNothing({ massG, capacitiesMl, diameterMm, fuelMassG, quantity, carried, perPerson }: Draft): boolean {
  const counted = quantity.grounds === 'stated' && quantity.value > 1;
  return (
    [massG, diameterMm, fuelMassG].every(isMissing) && capacitiesMl.length === 0 && !counted && carried && !perPerson
  );
}

/** Whether one of the things listed is the thing that prose names: it is of its kind, burns the same, and has its sizes. */
function isToldAgain(item: Draft, listed: readonly Draft[]): boolean {
  const like = listed.filter(({ kind }) => kind === item.kind);
  if (like.length === 0 || !item.carried) return false;
  const counted = like.reduce((sum, { quantity }) => sum + (valueOf(quantity) ?? 1), 0);
  if ((valueOf(item.quantity) ?? 1) > counted) return false;
  const burns = valueOf(item.stoveType) ?? valueOf(item.fuelType);
  const alike = like.some((other) => {
    const own = valueOf(other.stoveType) ?? valueOf(other.fuelType);
    return burns === undefined || own === undefined || own === burns;
  });
  if (!alike) return false;
  return sizesOf(item).every((own) => like.some((other) => sizesOf(other).includes(own)));
}

function sizesOf({ capacitiesMl, diameterMm, heightMm, burnerMm, supportsMm }: Draft): number[] {
  return [...capacitiesMl, diameterMm, heightMm, burnerMm, supportsMm]
    .map(valueOf)
    .filter((size) => size !== undefined);
}

/** Tokens of a heading that a row brings itself, before its colon. */
const LONGEST_LABEL = 3;

const JACKETS: ReadonlySet<Role> = new Set(['jackets']);

/** Fewer items than this are no list. */
const LEAST_LIST = 2;

/** What a line that tells more of a thing begins with. */
const LABELS: ReadonlySet<Role> = new Set(['weighs', 'holds', 'countLabels', 'dimension']);
const FIELDS: ReadonlySet<string> = new Set(['mass', 'each', 'quantity', 'capacity', 'size', 'material']);

/** The heads of columns that tell a sort in a word. */
const SORTS: ReadonlySet<string> = new Set(['category', 'item']);

/** "Cook set" and "Kitchen kit" head what belongs to them. */
const SETS: ReadonlySet<Role> = new Set(['set']);
/** Words of a heading that names a thing, and does not only speak of it. */
const LONGEST_HEADING_OF_A_THING = 4;
/** More than this that prose names is no kit. */
const MOST_NAMED = 40;

const PASSING: ReadonlySet<ItemKind> = new Set(['pot', 'stove', 'fuel', 'lid', 'windscreen', 'kettle', 'pan']);

export class Reader {
  readonly items: Draft[] = [];
  /** Of each item: the row that it stands in. */
  readonly rows: Row[] = [];
  /** The things that running prose names, beside what the text lists. */
  private readonly inProse = new Set<Draft>();
  readonly trip: Gathered;
  private readonly sections = new Sections();
  protected readonly order: Order = { heightFirst: false };
  private readonly uses = new Map<number, { use: LineUse; because?: string }>();
  private readonly text: string;
  private readonly source: readonly SourceLine[];
  private readonly dictionary: Dictionary;
  private readonly massUnits: MassUnits;

  private readonly plain: boolean;
  private readonly shared: Readonly<Record<Form, { lent?: Lent; context: Context }>> = {
    bulleted: { context: NOTHING },
    plain: { context: NOTHING },
    prose: { context: NOTHING },
    list: { context: NOTHING },
  };
  private lastLine = 0;
  /** The line of the row at hand, and of the one before it that is not blank. */
  private line = 0;
  private lineBefore = 0;
  /** What prose names and does not list. */
  readonly named: Draft[] = [];
  private readonly sayings = new Set<string>();
  /** Of each kind, the first thing that the text names in passing. */
  private readonly passing = new Map<ItemKind, { draft: Draft; stretch: Stretch; context: Context }>();

  constructor(
    text: string,
    source: readonly SourceLine[],
    dictionary: Dictionary,
    massUnits: MassUnits,
    plain: boolean,
    degrees: Gathered['degrees'],
  ) {
    this.trip = gather(degrees);
    this.plain = plain;
    this.text = text;
    this.source = source;
    this.dictionary = dictionary;
    this.massUnits = massUnits;
  }

  read(stretch: Stretch, rows: readonly Row[], index: number): void {
    const { row } = stretch;
    if (row.type === 'rule') return;
    this.lineBefore = this.line;
    this.line = row.line;
    if (row.type === 'columns') {
      // "Kitchen, Qty, Weight (g)": the head of its things names the section.
      if (stretch.terms.some((term) => term.role === 'section' && term.first === 0)) this.sections.openTable(stretch);
      this.mark(row, 'not-cook-kit', phrase`the heads of columns`);
      return;
    }
    if (isTotal(stretch)) {
      this.mark(row, 'not-cook-kit', phrase`a total`);
      return;
    }
    if (this.isHead(stretch, rows, index)) {
      const plain = row.type !== 'heading';
      if (this.mayBeThing(stretch, nextOf(rows, index))) this.keepPassing(stretch);
      this.sections.open(stretch, plain ? 10 + Math.min(row.level, 40) : row.level, plain);
      const told = readTrip(stretch, [], this.trip);
      this.mark(row, told ? 'used' : 'not-cook-kit', told ? undefined : phrase`a heading`);
      if (termsOf(stretch, 'totals').length > 0) return;
      if (stretch.measures.length === 0 && !stretch.tokens.some(isDash)) return;
    } else this.sections.pass(row.bullet, row.level);
    this.readThings(stretch);
  }

  /** A list that tells of its things in prose may name one without a figure: it counts where no other of its kind is named. */
  close(): void {
    countGroups(this.trip);
    this.dropToldAgain();
    if (this.items.length < LEAST_LIST) return;
    for (const { draft, stretch, context } of this.passing.values()) {
      if (this.items.some((item) => item.kind === draft.kind)) continue;
      this.fillIn(stretch, [draft], [], context);
      const after = this.items.findLastIndex((item) => item.line <= draft.line) + 1;
      this.items.splice(after, 0, draft);
      this.rows.splice(after, 0, stretch.row);
    }
  }

  /** What the text lists and its prose tells of again is one thing, unless the prose counts more or gives another size. */
  private dropToldAgain(): void {
    const listed = this.items.filter((item) => !this.inProse.has(item) && item.carried);
    for (let at = this.items.length - 1; at >= 0; at--) {
      const item = this.items[at]!;
      if (!this.inProse.has(item) || !isToldAgain(item, listed)) continue;
      this.items.splice(at, 1);
      this.rows.splice(at, 1);
    }
  }

  /** "Mug" over a list may be the mug; "Cook set:" and "Pots and pans" are not things, "Stove" is one at most among plain lines. */
  private mayBeThing(stretch: Stretch, next: Row | undefined): boolean {
    const { row, tokens, words } = stretch;
    if (row.bullet) return true;
    if (namesItself(stretch)) return next?.bullet === false && (tokens.length === 1 || !stretch.tells(SETS));
    const section = termsOf(stretch, 'section').some(({ first }) => first === 0);
    return !section && !stretch.tells(SETS) && tokens.at(-1)?.fold !== ':' && words <= LONGEST_HEADING_OF_A_THING;
  }

  /** "Stove" or "Kök" on a line of its own heads the kitchen, or is the stove, "- Mugs" heads the mugs, or is they: that only where the list names no other. */
  private keepPassing(stretch: Stretch): void {
    const context = this.contextOf(stretch);
    this.pass(draftsOf(stretch, { ...context, plainLists: true }).drafts, stretch, context);
  }

  private pass(drafts: readonly Draft[], stretch: Stretch, context: Context): void {
    for (const draft of drafts)
      if (!this.passing.has(draft.kind)) this.passing.set(draft.kind, { draft, stretch, context });
  }

  /** Keeps the first of each kind and size that prose names: a book names a pot on every page. */
  private name(draft: Draft, stretch: Stretch, context: Context): void {
    const sizes = measuresOf(stretch, draft).flatMap(({ unit, values }) => (unit.dimension === 'volume' ? values : []));
    const key = `${draft.kind} ${sizes.join(' ')}`;
    if (this.sayings.has(key) || this.sayings.size >= MOST_NAMED) return;
    fill(stretch, draft, [], context, this.order);
    if (!draft.carried) return;
    this.sayings.add(key);
    this.named.push(draft);
  }

  private readThings(stretch: Stretch): void {
    const { row } = stretch;
    const context = this.contextOf(stretch);
    const { drafts, parts, passing, named } = draftsOf(stretch, context);
    this.pass(
      passing.filter(({ kind }) => PASSING.has(kind)),
      stretch,
      context,
    );
    for (const draft of named) this.name(draft, stretch, context);
    const found = drafts.length === 0 ? this.sorted(stretch) : undefined;
    const unnamed =
      found ??
      (drafts.every((draft) => draft.kind === 'lid') ? unnamedPot(stretch, context) : undefined) ??
      (drafts.length === 0 ? unnamedStove(stretch, context) : undefined);
    if (unnamed !== undefined) drafts.splice(0, drafts.length, unnamed);
    if (drafts.length > 0) this.fillIn(stretch, drafts, parts, context);
    for (const draft of [...drafts]) {
      const other = alternativeOf(stretch, draft);
      drafts.splice(drafts.indexOf(draft) + 1, 0, ...(other === undefined ? furtherOf(stretch, draft) : [other]));
    }
    if (drafts.some((draft) => draft.kind === context.kind)) this.sections.told();
    if (this.isMore(stretch, drafts)) {
      this.mark(row, 'used');
      return;
    }
    if (drafts.length === 1 && this.isLabelOf(row, drafts[0]!)) {
      this.items.pop();
      this.rows.pop();
    }
    const listed = isListed(stretch, context);
    for (const draft of drafts) {
      if (!listed) this.inProse.add(draft);
      this.items.push(draft);
      this.rows.push(row);
      this.lastLine = row.line;
    }
    const told = readTrip(stretch, drafts, this.trip);
    if (drafts.length > 0 || told) this.mark(row, 'used');
    else {
      const { use, because } = unread(stretch, context.section);
      this.mark(row, use, because);
    }
  }

  /** Reads all that a row tells of its things. The next reader does this its own way. */
  protected fillIn(stretch: Stretch, drafts: readonly Draft[], parts: readonly Thing[], context: Context): void {
    for (const [own, figures] of this.columnsOf(stretch, drafts, context)) applyFigures(own, figures);
    for (const draft of drafts) fill(stretch, draft, parts, context, this.order);
    shareCount(stretch, drafts);
    sharePerson(stretch, drafts);
    shareTraits(stretch, drafts);
    if (stretch.row.cells.length === 1) shareMass(stretch, drafts);
  }

  /** What the columns of figures say, of each thing those of its own of the tables side by side. */
  protected columnsOf(
    { row, cellOf }: Stretch,
    drafts: readonly Draft[],
    context: Context,
  ): (readonly [own: readonly Draft[], figures: ColumnFigures])[] {
    if (row.cells.length < 2) return [];
    const units = context.massUnit === undefined ? this.massUnits : { usual: context.massUnit };
    const besides = new Map<number, Draft[]>();
    for (const draft of drafts) {
      const start = besideOf(row, cellOf[Math.max(0, draft.noun[0])] ?? 0);
      besides.set(start, [...(besides.get(start) ?? []), draft]);
    }
    return [...besides].map(
      ([start, own]) => [own, figuresOf(this.text, besideRow(row, start), this.dictionary, units)] as const,
    );
  }

  /** What holds for a row: what the headings lend, and what it says itself. Rows under the same headings share it. */
  private contextOf(stretch: Stretch): Context {
    const lent = this.sections.lend();
    const { bullet } = stretch.row;
    const form = bullet ? 'bulleted' : (stretch.row.form ?? 'plain');
    const jacket = stretch.tells(JACKETS) && this.isAmongCookKit(stretch.row);
    const label = jacket ? undefined : this.label(stretch);
    if (jacket || label !== undefined) return this.contextFor(lent, form, label, jacket);
    const shared = this.shared[form];
    if (shared.lent !== lent) {
      shared.lent = lent;
      shared.context = this.contextFor(lent, form);
    }
    return shared.context;
  }

  /** Right below the stove, the fuel or the pot. */
  private isAmongCookKit(row: Row): boolean {
    const kind = this.items.at(-1)?.kind;
    return row.line - this.lastLine === 1 && (kind === 'stove' || kind === 'fuel' || kind === 'pot');
  }

  private contextFor(lent: Lent, form: Form, label?: Label, cooks = false): Context {
    const section = label?.section ?? lent.section;
    return {
      section,
      kind: lent.kind,
      kinds: lent.kinds,
      kindSpan: lent.kindSpan,
      massUnit: lent.massUnit ?? this.massUnits.said,
      away: label?.away ?? lent.away,
      stoveType: lent.stoveType,
      fuelType: lent.fuelType,
      perPerson: lent.perPerson,
      perGroup: lent.perGroup,
      headFirst: this.dictionary.languages[0]?.headFirst ?? false,
      bulleted: form === 'bulleted',
      plainLists: form === 'list' || (this.plain && form === 'plain'),
      prose: form === 'prose',
      cooks: cooks || section === 'cook' || section === 'fuel',
    };
  }

  /** "Water: 2 × 1 L bottles": a row can bring its own heading. What the column of owners says of its whereabouts counts too. */
  private label(stretch: Stretch): Label | undefined {
    let colon = 1;
    while (colon <= LONGEST_LABEL && stretch.tokens[colon]?.fold !== ':') colon++;
    const section =
      colon <= LONGEST_LABEL
        ? stretch.terms.find((term) => term.role === 'section' && term.first === 0 && term.last === colon - 1)
        : undefined;
    const owner = stretch.row.cells.find((cell) => cell.column?.meaning === 'owner');
    const away =
      owner === undefined
        ? undefined
        : findTerms(tokenise(this.text, owner.start, owner.end, true), this.dictionary).find(
            (term) => term.role === 'away',
          );
    if (section === undefined && away === undefined) return undefined;
    return {
      section: section?.value as SectionMeaning | undefined,
      away: away === undefined ? undefined : AWAY[away.value as AwayReason],
    };
  }

  /** A row without a known name, whose column of sorts tells what it is. */
  private sorted(stretch: Stretch): Draft | undefined {
    const { row } = stretch;
    const sort = row.cells.find((cell) => cell.column?.meaning === 'category');
    if (
      sort !== undefined &&
      sort.end > sort.start &&
      stretch.tokens.length > 0 &&
      !stretch.terms.some((term) => term.role === 'notKit' || term.role === 'tails')
    ) {
      const terms = findTerms(tokenise(this.text, sort.start, sort.end, true), this.dictionary);
      const kind = terms.find((term) => term.role === 'kind' && term.first === 0);
      const end = stretch.tokens.findIndex((_token, i) => stretch.cellOf[i] !== stretch.cellOf[0]);
      if (kind !== undefined) {
        const draft = draftOf(
          kind.value as ItemKind,
          row.line,
          spanOf(stretch, 0, (end < 0 ? stretch.tokens.length : end) - 1),
          undefined,
          0,
          stretch.tokens.length,
          [-1, -1],
        );
        draft.kindBecause = phrase`its column of sorts says so`;
        return draft;
      }
    }
    return undefined;
  }

  /** A row that only adds to the thing of the row before, as YAML does: figures, "lid: yes"; or names it better, "what: white gas". */
  private isMore(stretch: Stretch, drafts: readonly Draft[]): boolean {
    const { row } = stretch;
    const last = this.items.at(-1);
    if (last === undefined || stretch.tokens.length > 12) return false;
    const labelled = this.isField(stretch);
    const under = this.isUnder(stretch) || this.isFigure(stretch);
    if (!labelled && !under) return false;
    const own = drafts[0];
    const field = own !== undefined && drafts.length === 1 && stretch.tokens[1]?.fold === ':';
    const part = field && own.kind === 'lid' && own.noun[0] === 0 && stretch.tokens.length === 3;
    const again = under && field && own.kind === last.kind && own.noun[0] > 1;
    const aside = labelled && drafts.every((draft) => !draft.carried);
    if (drafts.length > 0 && !part && !again && !aside) return false;
    this.lastLine = row.line;
    if (again) {
      addTo(own, last);
      this.items[this.items.length - 1] = own;
      return true;
    }
    const more = draftOf(last.kind, last.line, last.span, undefined, 0, stretch.tokens.length, [-1, -1]);
    this.fillIn(stretch, [more], [], { ...NOTHING, bulleted: true });
    if (part) more.lid = stated(own.carried, own.span);
    return addTo(last, more);
  }

  /** "- Stove", and deeper below it "- gas burner, 85 g": the first only says of what sort the second is. */
  private isLabelOf(row: Row, draft: Draft): boolean {
    const last = this.items.at(-1);
    const before = this.rows.at(-1);
    return (
      last?.kind === draft.kind &&
      before?.bullet === true &&
      row.bullet &&
      row.level > before.level &&
      row.line - this.lastLine === 1 &&
      before.cells.length === 1 &&
      saysNothing(last)
    );
  }

  /** Deeper than the row of the last thing, right below it, and with no bullet of its own. */
  private isUnder({ row }: Stretch): boolean {
    const before = this.rows.at(-1);
    return (
      before !== undefined &&
      !row.bullet &&
      row.cells.length === 1 &&
      row.type !== 'heading' &&
      row.line - this.lastLine === 1 &&
      row.level > before.level
    );
  }

  /** "Weight: 165 g", "- Anzahl: 2", "Weight: 118 g (without lid 92 g)": a label and what it says, right below the thing that it tells of. */
  private isField({ row, tokens, terms, measures }: Stretch): boolean {
    const label = terms.find(({ first }) => first === 0 && tokens[0]?.type === 'word');
    if (label === undefined || row.cells.length > 1 || row.line - this.lastLine > 1) return false;
    const named = terms.some(
      ({ role, value, first, last }) =>
        first === 0 &&
        last === label.last &&
        (LABELS.has(role) || FIELDS.has(value as string) || (measures.length === 0 && SORTS.has(value as string))),
    );
    const mark = tokens[label.last + 1];
    const at = label.last + (mark !== undefined && ':|'.includes(mark.fold) && mark.fold !== '' ? 2 : 1);
    const told = at > label.last + 1 || mark?.gap === 2;
    const end = (measures.find(({ first }) => first === at || first === at + 1)?.last ?? at) + 1;
    return named && told && at < tokens.length && (tokens[end]?.type ?? 'sign') === 'sign';
  }

  /** "162 g" on a line of its own, at most one blank line below: copied from a page that stacks its cells. */
  private isFigure({ row, tokens, measures }: Stretch): boolean {
    const [measure] = measures;
    return (
      measure !== undefined &&
      measure.first === 0 &&
      measure.last === tokens.length - 1 &&
      measure.unit.dimension !== 'other' &&
      !row.bullet &&
      row.cells.length === 1 &&
      this.lineBefore === this.lastLine &&
      row.line - this.lastLine <= 2
    );
  }

  private isHead(stretch: Stretch, rows: readonly Row[], index: number): boolean {
    const next = nextOf(rows, index);
    const nextKind = next === undefined ? undefined : next.bullet ? 'bullet' : 'plain';
    const before = rows[index - 1];
    if (stretch.row.cells.length > 1) return this.isTableHead(stretch);
    if (stretch.tokens[1]?.fold === ':' && stretch.tokens.length > 2 && this.isUnder(stretch)) return false;
    const titled = index === 1 || before?.type === 'rule' || before?.type === 'heading';
    if (this.items.length === 0 && nextKind === 'plain' && titled && namesItself(stretch)) return true;
    return isHeading(stretch, {
      next: nextKind,
      nextLevel: next?.level ?? 0,
      nextText: this.text.slice(next?.cells[0]?.start, next?.cells[0]?.end ?? 0),
      parted: before === undefined || before.type === 'rule',
    });
  }

  /** A row of a table whose first words are a section's name, with at most a sum beside it. */
  private isTableHead(stretch: Stretch): boolean {
    const filled = stretch.row.cells.filter(
      (cell) =>
        cell.end > cell.start && !/^[-–—\s*]*$/.test(this.text.slice(cell.start, Math.min(cell.end, cell.start + 20))),
    );
    const quantity = filled.some((cell) => cell.column?.meaning === 'quantity' || cell.column?.meaning === 'each');
    const words = new Set(stretch.cellOf);
    if (quantity || words.size !== 1 || filled.length > 2) return false;
    const first = stretch.tokens.findIndex((token) => token.type === 'word');
    const bold =
      stretch.text.slice(stretch.row.cells[0]?.start ?? 0, stretch.row.cells.at(-1)?.end ?? 0).includes('**') ||
      isBold(stretch);
    const section = stretch.terms.some((term) => term.role === 'section' && term.first === first);
    return (
      bold ||
      (section &&
        stretch.row.cells.length > filled.length &&
        !stretch.terms.some(
          (term) => term.role === 'kind' && term.many !== true && term.first === first && filled.length > 1,
        ))
    );
  }

  private mark(row: Row, use: LineUse, because?: string): void {
    for (let line = row.line; line <= (row.lastLine ?? row.line); line++)
      if (this.uses.get(line)?.use !== 'used') this.uses.set(line, because === undefined ? { use } : { use, because });
  }

  lines(items: readonly Item[], passing: readonly Passing[]): Line[] {
    const used = new Set(items.map((item) => item.line));
    const named = new Set(passing.map((item) => item.line));
    return this.source.map(({ number, start, end }) => {
      const span = [start, end] as const;
      if (isBlank(this.text, start, end)) return { number, span, use: 'blank' };
      if (end - start > LONGEST_LINE)
        return {
          number,
          span,
          use: 'not-understood',
          because: phrase`only its first ${LONGEST_LINE.toLocaleString('en').replace(',', ' ')} characters were read`,
        };
      const told = this.uses.get(number);
      const known = used.has(number)
        ? ({ use: 'used' } as const)
        : named.has(number)
          ? ({ use: 'not-cook-kit', because: phrase`cook kit is named in passing` } as const)
          : told?.use === 'used' && items.length === 0 && passing.length > 0
            ? ({ use: 'not-cook-kit', because: phrase`cook kit is only mentioned` } as const)
            : told;
      return { number, span, ...(known ?? { use: 'not-cook-kit', because: phrase`nothing here names cook kit` }) };
    });
  }
}

/** A dash between words; the hyphen of "3-season" is none. */
function isDash(token: Token, at: number, tokens: readonly Token[]): boolean {
  return token.fold === '–' || (token.fold === '-' && (token.gap > 0 || (tokens[at + 1]?.gap ?? 1) > 0));
}

/** The next row that is not blank, at most one blank line below. */
function nextOf(rows: readonly Row[], index: number): Row | undefined {
  const next = rows.slice(index + 1, index + 3).find((row) => row.type !== 'rule');
  return next === undefined || next.line > (rows[index]?.line ?? 0) + 2 ? undefined : next;
}

function isBlank(text: string, start: number, end: number): boolean {
  for (let at = start; at < end && at < start + LONGEST_LINE; at++)
    if (text.charCodeAt(at) > 32 && text.charCodeAt(at) !== 160 && text.charCodeAt(at) !== 0x3000) return false;
  return true;
}
