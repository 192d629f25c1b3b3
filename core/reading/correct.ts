import { MISSING, type Given } from '../model/given.js';
import {
  CORRECTABLE,
  FUEL_TYPES,
  GAS_MIXES,
  ITEM_KINDS,
  MATERIALS,
  STOVE_FORMS,
  STOVE_TYPES,
  type CorrectableField,
  type Item,
} from '../model/item.js';
import { phrase } from '../model/phrase.js';
import type { Correction, Line, Passing, Reading } from '../model/reading.js';
import type { InputProblem } from '../model/report.js';
import { parseMeasure } from './quantities/index.js';

export interface Corrected {
  readonly reading: Reading;
  /** Corrections that could not be used, each with its reason. */
  readonly problems: readonly InputProblem[];
}

type Field = Exclude<CorrectableField, 'kind' | 'carried' | 'capacityMl'>;
type Rule =
  { readonly dimension: 'volume' | 'length' | 'mass' } | { readonly among: readonly string[] } | 'count' | 'yes-no';

const RULES: Readonly<Record<Field, Rule>> = {
  quantity: 'count',
  massG: { dimension: 'mass' },
  diameterMm: { dimension: 'length' },
  baseDiameterMm: { dimension: 'length' },
  heightMm: { dimension: 'length' },
  sizeMm: { dimension: 'length' },
  burnerMm: { dimension: 'length' },
  supportsMm: { dimension: 'length' },
  material: { among: MATERIALS },
  bail: 'yes-no',
  lid: 'yes-no',
  handles: 'yes-no',
  stoveType: { among: STOVE_TYPES },
  stoveForm: { among: STOVE_FORMS },
  fuelType: { among: FUEL_TYPES },
  gasMix: { among: GAS_MIXES },
  fuelMassG: { dimension: 'mass' },
  fuelVolumeMl: { dimension: 'volume' },
};

/** Puts right what a person corrected. Each correction finds its line by the line's own words, so edits elsewhere do not disturb it. */
export function applyCorrections(text: string, reading: Reading, corrections: readonly Correction[]): Corrected {
  const items = [...reading.items];
  const counted = new Set<Passing>();
  const problems: InputProblem[] = [];
  for (const [i, correction] of corrections.entries()) {
    const message = apply(text, reading, items, counted, correction);
    if (message !== undefined) problems.push({ field: `correction.${i}`, value: String(correction.value), message });
  }
  const added = new Set(items.map((item) => item.line));
  const lines = reading.lines.map((line): Line =>
    added.has(line.number) && line.use !== 'used' ? { number: line.number, span: line.span, use: 'used' } : line,
  );
  const passing = reading.passing.filter((thing) => !counted.has(thing));
  return { reading: { ...reading, items, passing, lines }, problems };
}

/** Changes the items in place; gives what is wrong with a correction that cannot be used. */
function apply(
  text: string,
  reading: Reading,
  items: Item[],
  counted: Set<Passing>,
  correction: Correction,
): string | undefined {
  const line = reading.lines.filter(({ span }) => text.slice(...span) === correction.quote)[correction.occurrence];
  if (line === undefined) return phrase`The line it belongs to is not in the text any more.`;
  const { field } = correction;
  if (field === 'passing') return count(reading, items, counted, line.number, correction);
  if (!CORRECTABLE.includes(field)) return phrase`"${correction.field}" is nothing that can be corrected.`;
  const own = items.flatMap((item, at) => (item.line === line.number ? [at] : []));
  const at = own[correction.item];
  if (at === undefined) {
    if (correction.field !== 'kind' || correction.item !== own.length)
      return phrase`The line holds no such item; give its kind first.`;
    const kind = ITEM_KINDS.find((known) => known === correction.value);
    if (kind === undefined) return notAmong(ITEM_KINDS);
    const after = items.findLastIndex((item) => item.line <= line.number);
    items.splice(after + 1, 0, newItem(kind, line));
    return undefined;
  }
  const item = items[at];
  if (item === undefined) return phrase`The line holds no such item.`;
  const changed = change(item, { ...correction, field });
  if (typeof changed === 'string') return changed;
  items[at] = changed;
  return undefined;
}

/** Counts a thing that the line names in passing: it stands behind the items of its line. */
function count(
  { passing }: Reading,
  items: Item[],
  counted: Set<Passing>,
  line: number,
  { item, value }: Correction,
): string | undefined {
  const thing = passing.filter((one) => one.line === line)[item];
  if (thing === undefined) return phrase`The line names no such thing in passing.`;
  if (value !== true) return phrase`Yes or no.`;
  if (counted.has(thing)) return undefined;
  counted.add(thing);
  const own: Item & { because?: string } = { ...thing };
  delete own.because;
  items.splice(items.findLastIndex((one) => one.line <= line) + 1, 0, own);
  return undefined;
}

function change(
  item: Item,
  { field, value, vessel = 0 }: Correction & { readonly field: CorrectableField },
): Item | string {
  if (field === 'kind') {
    const kind = ITEM_KINDS.find((known) => known === value);
    if (kind === undefined) return notAmong(ITEM_KINDS);
    const changed = { ...item, kind };
    delete changed.kindBecause;
    return changed;
  }
  if (field === 'carried') {
    if (typeof value !== 'boolean') return phrase`Yes or no.`;
    if (!value) return { ...item, carried: false, notCarriedBecause: phrase`the person says so` };
    const changed = { ...item, carried: true };
    delete changed.notCarriedBecause;
    return changed;
  }
  if (field === 'capacityMl') {
    const given = value === null ? MISSING : measure(value, 'volume');
    if (typeof given === 'string') return given;
    if (!Number.isInteger(vessel) || vessel < 0 || vessel > item.capacitiesMl.length)
      return phrase`The set has no such vessel.`;
    const capacitiesMl = [...item.capacitiesMl];
    if (given.grounds === 'missing') capacitiesMl.splice(vessel, 1);
    else capacitiesMl[vessel] = given;
    return { ...item, capacitiesMl };
  }
  if (value === null) return { ...item, [field]: MISSING };
  const given = typed(value, RULES[field]);
  return typeof given === 'string' ? given : { ...item, [field]: given };
}

function typed(value: string | number | boolean, rule: Rule): Given<unknown> | string {
  if (rule === 'yes-no') return typeof value === 'boolean' ? stated(value) : phrase`Yes or no.`;
  if (rule === 'count') {
    const count = typeof value === 'string' ? Number(value.trim() || NaN) : value;
    return typeof count === 'number' && Number.isInteger(count) && count >= 0 && count <= 1000
      ? stated(count)
      : phrase`A whole number from 0 to 1000.`;
  }
  if ('among' in rule)
    return typeof value === 'string' && rule.among.includes(value) ? stated(value) : notAmong(rule.among);
  return measure(value, rule.dimension);
}

function measure(value: string | number | boolean, dimension: 'volume' | 'length' | 'mass'): Given<number> | string {
  const parsed =
    typeof value === 'number' ? { value } : typeof value === 'string' ? parseMeasure(value, dimension) : null;
  const example = { volume: '900 ml', length: '13 cm', mass: '110 g' }[dimension];
  if (parsed === null || !Number.isFinite(parsed.value)) return phrase`No figure with a unit, such as ${example}.`;
  if (parsed.value <= 0) return phrase`More than nothing.`;
  const most = 'most' in parsed ? parsed.most : undefined;
  return most === undefined ? stated(parsed.value) : { grounds: 'stated', value: parsed.value, most, typed: true };
}

function stated<T>(value: T): Given<T> {
  return { grounds: 'stated', value, typed: true };
}

function notAmong(words: readonly string[]): string {
  return phrase`One of: ${words.join(', ')}.`;
}

function newItem(kind: Item['kind'], line: Line): Item {
  return {
    kind,
    line: line.number,
    span: line.span,
    carried: true,
    quantity: { grounds: 'stated', value: 1, typed: true },
    perPerson: false,
    capacitiesMl: [],
    massG: MISSING,
    diameterMm: MISSING,
    baseDiameterMm: MISSING,
    heightMm: MISSING,
    boxMm: MISSING,
    sizeMm: MISSING,
    burnerMm: MISSING,
    supportsMm: MISSING,
    material: MISSING,
    bail: MISSING,
    lid: MISSING,
    handles: MISSING,
    stoveType: MISSING,
    stoveForm: MISSING,
    fuelType: MISSING,
    gasMix: MISSING,
    gasShares: MISSING,
    fuelMassG: MISSING,
    fuelVolumeMl: MISSING,
  };
}
