/**
 * What the doors share, with no language learnt yet. `readList` understands a text, `checkList` judges a kit list, `checkPot` one pot; everything else is private.
 * The same input gives the same report.
 */
import { conduct } from './check.js';
import { CHECKS } from './checks/index.js';
import { inOneTable, sideBySide, type Comparison, type Many } from './compare.js';
import { readTrip } from './input/trip.js';
import { kitFromReading } from './kit/index.js';
import { groundTrip } from './kit/trip.js';
import { valueOf } from './model/given.js';
import type { Item } from './model/item.js';
import type { Correction, Reading } from './model/reading.js';
import type { Report } from './model/report.js';
import type { GroundedTrip, Trip } from './model/trip.js';
import type { PotInput, StoveInput } from './model/pot.js';
import { checkPot, wordingOf, type CheckOptions } from './pot.js';
import { applyCorrections } from './reading/correct.js';
import { readInSteps, readList as read } from './reading/read.js';
import { finish, type Steps } from './steps.js';

/**
 * What was understood from a text, whatever it is: it never throws on any string.
 * `locale` (BCP 47) settles US and imperial units where the text does not.
 * @throws TypeError if `text` is not a string.
 */
export function readList(text: string, options: { locale?: string } = {}): Reading {
  assertText(text);
  return read(text, options);
}

/**
 * A second opinion on a kit list. What the list itself says of the trip fills in what `trip` leaves out.
 * A value that cannot be used is left out and told in `problems`.
 * @throws TypeError if an argument is of the wrong kind.
 */
export function checkList(
  text: string,
  trip?: Partial<Trip>,
  corrections: readonly Correction[] = [],
  options: CheckOptions = {},
): Report {
  return finish(checkListInSteps(text, trip, corrections, options));
}

/** The same as `checkList`, in steps: for a page that has other things to do as well. */
export function* checkListInSteps(
  text: string,
  trip?: Partial<Trip>,
  corrections: readonly Correction[] = [],
  options: CheckOptions = {},
): Steps<Report> {
  assertText(text);
  if (!Array.isArray(corrections)) throw new TypeError('The corrections are an array; pass [] for none.');
  const wording = wordingOf(options);
  const asked = readTrip(trip);
  const corrected = applyCorrections(text, yield* readInSteps(text, { locale: wording.locale }), corrections);
  const { reading } = corrected;
  yield;
  const hasStove = reading.items.some(tellsOfStove);
  const grounded = groundTrip(asked.trip, reading.trip, hasStove, readTrip(options.usual).trip);
  const { kit, problems } = kitFromReading(text, reading, isWinter(grounded));
  yield;
  return yield* conduct({
    reading,
    trip: grounded,
    kit,
    problems: [...asked.problems, ...corrected.problems, ...problems],
    wording: { ...wording, units: options.units ?? reading.units },
  });
}

function assertText(text: unknown): asserts text is string {
  if (typeof text !== 'string') throw new TypeError('The list is a string; pass "" for none.');
}

/** A stove, or fuel that burns in nothing else. */
function tellsOfStove({ kind, carried, fuelType }: Item): boolean {
  return carried && (kind === 'stove' || (kind === 'fuel' && (valueOf(fuelType) ?? 'wood') !== 'wood'));
}

/** The season the trip is in, for alternatives such as "1 L, 2 L if winter". */
function isWinter(trip: GroundedTrip): boolean {
  return (
    valueOf(trip.season) === 'winter' || (trip.season.grounds === 'missing' && valueOf(trip.waterFrom) !== 'liquid')
  );
}

/** A kit list, or one pot with its stove, under a name; with what differs from the trip of all, for "what if". */
export interface Candidate {
  readonly name: string;
  readonly list?: string;
  readonly corrections?: readonly Correction[];
  readonly pot?: PotInput;
  readonly stove?: StoveInput;
  readonly trip?: Partial<Trip>;
}

/**
 * Pots or kits side by side, each judged for the trip. The same candidate twice, once with another `trip`, tells what that would change.
 * @throws TypeError if there is none, or one is neither a list nor a pot.
 */
export function compare(
  candidates: readonly Candidate[],
  trip: Partial<Trip> = {},
  options: CheckOptions = {},
): Comparison {
  if (!isArray(candidates) || candidates.length === 0)
    throw new TypeError('The candidates are an array of one or more.');
  const judged = candidates.map((candidate) => ({
    name: candidate.name,
    report: finish(judgeInSteps(candidate, trip, options)),
  }));
  return sideBySide(
    judged,
    CHECKS.map(({ id }) => id),
  );
}

/**
 * Many lists in one table, each judged for the trip.
 * @throws TypeError if `lists` is no array of candidates.
 */
export function checkMany(lists: readonly Candidate[], trip: Partial<Trip> = {}, options: CheckOptions = {}): Many {
  return finish(checkManyInSteps(lists, trip, options));
}

/** The same as `checkMany`, in steps. */
export function* checkManyInSteps(
  lists: readonly Candidate[],
  trip: Partial<Trip> = {},
  options: CheckOptions = {},
): Steps<Many> {
  if (!isArray(lists)) throw new TypeError('The lists are an array; pass [] for none.');
  const judged: { name: string; report: Report }[] = [];
  for (const candidate of lists) {
    judged.push({ name: candidate.name, report: yield* judgeInSteps(candidate, trip, options) });
    yield;
  }
  return inOneTable(
    judged,
    CHECKS.map(({ id }) => id),
  );
}

/** Without narrowing: a caller without types may pass anything. */
function isArray(value: unknown): boolean {
  return Array.isArray(value);
}

function* judgeInSteps(candidate: Candidate, trip: Partial<Trip>, options: CheckOptions): Steps<Report> {
  const { list, corrections = [], pot, stove } = candidate;
  const own = { ...trip, ...candidate.trip };
  if (list !== undefined) return yield* checkListInSteps(list, own, corrections, options);
  if (pot !== undefined) return checkPot(pot, own, stove, options);
  throw new TypeError('A candidate has a list or a pot.');
}

export type { ComparedCell, ComparedRow, Comparison, Many, ManyRow } from './compare.js';
export type { Steps } from './steps.js';
export { CHECKS } from './checks/index.js';
export * from './typed-door.js';
