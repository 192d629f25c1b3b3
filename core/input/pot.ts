import { MISSING, type Given } from '../model/given.js';
import { MATERIALS, STOVE_FORMS, STOVE_TYPES } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import type { PotInput, StoveInput } from '../model/pot.js';
import type { InputProblem } from '../model/report.js';
import { parseMeasure } from '../reading/quantities/index.js';
import { outOfLimits, POT_LIMITS, show, STOVE_LIMITS, type Limits } from './limits.js';

type Dimension = 'volume' | 'length' | 'mass';

const DIMENSION: Readonly<Record<string, Dimension>> = { capacity: 'volume', mass: 'mass' };

const ARMS: Limits = { least: 2, most: 12, usual: [3, 6], unit: '', than: phrase`any stove has` };
const QUANTITY: Limits = { least: 1, most: 500, usual: [1, 20], unit: '', than: phrase`a kit has` };
const POWER: Limits = { least: 50, most: 50_000, usual: [300, 10_000], unit: 'W', than: phrase`any camp stove gives` };

/** A typed pot or stove with the grounds of its values. Lengths in mm, volumes in mL, masses in g, power in W. */
export type GivenPot = { readonly [K in keyof typeof POT_LIMITS]: Given<number> } & {
  readonly name: string;
  readonly material: Given<(typeof MATERIALS)[number]>;
  readonly lid: Given<boolean>;
  readonly bail: Given<boolean>;
  readonly handles: Given<number>;
  readonly quantity: Given<number>;
};
export type GivenStove = { readonly [K in keyof typeof STOVE_LIMITS]: Given<number> } & {
  readonly name: string;
  readonly type: Given<(typeof STOVE_TYPES)[number]>;
  readonly form: Given<(typeof STOVE_FORMS)[number]>;
  readonly armCount: Given<number>;
  readonly powerW: Given<number>;
};

/** Whether a value is a word, a yes or no, or a count that the field takes. */
type Takes<T> = (value: unknown) => value is T;

const oneOf =
  <T>(choices: readonly T[]): Takes<T> =>
  (value): value is T =>
    (choices as readonly unknown[]).includes(value);
const YES_OR_NO = oneOf([true, false]);

const POT_WORDS = {
  material: oneOf(MATERIALS),
  lid: YES_OR_NO,
  bail: YES_OR_NO,
  handles: (value: unknown): value is boolean | number => typeof value === 'boolean' || Number.isFinite(value),
};
const STOVE_WORDS = { type: oneOf(STOVE_TYPES), form: oneOf(STOVE_FORMS) };

/** Reads a typed pot; what cannot be used is left out and told. Anything but an object is the caller's misuse: TypeError. */
export function readPot(
  input: PotInput,
  locale?: string,
  unnamed = 'pot',
): { pot: GivenPot; problems: InputProblem[] } {
  assertObject(input, 'pot', '{ capacity: "750 ml", diameter: 95 }');
  const problems: InputProblem[] = [];
  const words = readWords(POT_WORDS, input, 'pot', problems);
  const handles = words.handles;
  return {
    pot: {
      ...measures(POT_LIMITS, input, 'pot', problems, locale),
      name: typeof input.name === 'string' && input.name.trim() !== '' ? input.name.trim().slice(0, 120) : unnamed,
      material: typed(words.material),
      lid: typed(words.lid),
      bail: typed(words.bail),
      handles: typed(typeof handles === 'boolean' ? (handles ? 2 : 0) : handles),
      quantity: count(input.quantity, 'pot.quantity', QUANTITY, problems),
    },
    problems,
  };
}

/** Reads a typed stove, as `readPot` does a pot. */
export function readStove(
  input: StoveInput,
  locale?: string,
  name = 'the stove',
): { stove: GivenStove; problems: InputProblem[] } {
  assertObject(input, 'stove', '{ type: "gas", burnerDiameter: 40 }');
  const problems: InputProblem[] = [];
  const words = readWords(STOVE_WORDS, input, 'stove', problems);
  return {
    stove: {
      name,
      ...measures(STOVE_LIMITS, input, 'stove', problems, locale),
      type: typed(words.type),
      form: typed(words.form),
      armCount: count(input.armCount, 'stove.armCount', ARMS, problems),
      powerW: count(input.powerW, 'stove.powerW', POWER, problems),
    },
    problems,
  };
}

function assertObject(input: unknown, name: string, example: string): void {
  if (typeof input !== 'object' || input === null || Array.isArray(input))
    throw new TypeError(`The ${name} is an object such as ${example}.`);
}

function typed<T>(value: T | undefined): Given<T> {
  return value === undefined ? MISSING : { grounds: 'stated', value, typed: true };
}

/** The words one by one, so that one wrong word costs only itself. */
function readWords<F extends Readonly<Record<string, Takes<unknown>>>>(
  fields: F,
  input: object,
  name: string,
  problems: InputProblem[],
): { [K in keyof F]?: F[K] extends Takes<infer T> ? T : never } {
  const read: Record<string, unknown> = {};
  for (const [field, takes] of Object.entries(fields)) {
    const value = (input as Record<string, unknown>)[field];
    if (value === undefined || value === null) continue;
    if (takes(value)) read[field] = value;
    else
      problems.push({
        field: `${name}.${field}`,
        value: show(value),
        message: phrase`“${show(value)}” is not a ${field} known here; leave it out.`,
      });
  }
  return read as { [K in keyof F]?: F[K] extends Takes<infer T> ? T : never };
}

function measures<T extends Record<string, Limits>>(
  fields: T,
  input: object,
  name: string,
  problems: InputProblem[],
  locale: string | undefined,
): { [K in keyof T]: Given<number> } {
  const read: Record<string, Given<number>> = {};
  for (const [field, limits] of Object.entries(fields)) {
    read[field] = measure(
      (input as Record<string, unknown>)[field],
      `${name}.${field}`,
      DIMENSION[field] ?? 'length',
      limits,
      problems,
      locale,
    );
  }
  return read as { [K in keyof T]: Given<number> };
}

function measure(
  input: unknown,
  field: string,
  dimension: Dimension,
  limits: Limits,
  problems: InputProblem[],
  locale: string | undefined,
): Given<number> {
  if (input === undefined || input === null || (typeof input === 'string' && input.trim() === '')) return MISSING;
  const shown = show(input);
  const parsed =
    typeof input === 'number'
      ? { value: input }
      : typeof input === 'string'
        ? parseMeasure(input, dimension, locale)
        : null;
  if (parsed === null || !Number.isFinite(parsed.value)) {
    problems.push({
      field,
      value: shown,
      message: phrase`“${shown}” is not understood; write a figure and its unit, such as ${limits.usual[0] * 2}\u00a0${limits.unit}.`,
    });
    return MISSING;
  }
  const problem = outOfLimits(field, shown, parsed.value, limits);
  if (problem) {
    problems.push(problem);
    return MISSING;
  }
  const most = 'most' in parsed ? parsed.most : undefined;
  return { grounds: 'stated', value: parsed.value, typed: true, ...(most === undefined ? {} : { most }) };
}

function count(input: unknown, field: string, limits: Limits, problems: InputProblem[]): Given<number> {
  if (input === undefined || input === null) return MISSING;
  if (typeof input !== 'number' || !Number.isFinite(input)) {
    problems.push({
      field,
      value: show(input),
      message: phrase`“${show(input)}” is not a number; write it in figures.`,
    });
    return MISSING;
  }
  const problem = outOfLimits(field, String(input), input, limits);
  if (problem) {
    problems.push(problem);
    return MISSING;
  }
  return { grounds: 'stated', value: input, typed: true };
}
