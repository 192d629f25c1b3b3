/** A second opinion on one typed pot, and what pot to look for: the doors that read no list share it, so that no page loads the reader for one pot. */
import { conduct } from './check.js';
import { readPot, readStove } from './input/pot.js';
import { readTrip } from './input/trip.js';
import { kitFromPot } from './kit/index.js';
import { groundTrip } from './kit/trip.js';
import { lookFor as wanted, type LookFor } from './look-for.js';
import type { Kit } from './model/kit.js';
import { UNIT_SYSTEMS, type UnitSystem } from './model/measure.js';
import { phrase } from './model/phrase.js';
import type { PotInput, StoveInput } from './model/pot.js';
import type { Reading } from './model/reading.js';
import type { InputProblem, Report } from './model/report.js';
import type { Trip } from './model/trip.js';
import { tell, type Wording } from './report/format.js';
import { ENGLISH, type Language } from './report/language.js';
import { finish } from './steps.js';

export interface WordingOptions {
  /** Language of the words; English where left out. */
  readonly language?: Language;
  /** Units to word the report in; those the list is written in where left out. */
  readonly units?: UnitSystem;
  /** BCP 47 tag for the numbers; "en" where left out. */
  readonly locale?: string;
}

export interface CheckOptions extends WordingOptions {
  /** What to assume of a trip, instead of the usual defaults, where neither the caller nor the list says it. What cannot be used is left out. */
  readonly usual?: Partial<Trip>;
}

/** What is read of no text. */
export const NOTHING_READ: Reading = {
  items: [],
  lines: [{ number: 1, span: [0, 0], use: 'blank' }],
  trip: {},
  languages: [],
  units: 'metric',
  notes: [],
  passing: [],
};

/**
 * A second opinion on one typed pot, and on its match with a stove where one is given. What is missing costs only the checks that need it.
 * @throws TypeError if an argument is of the wrong kind.
 */
export function checkPot(pot: PotInput, trip?: Partial<Trip>, stove?: StoveInput, options: CheckOptions = {}): Report {
  const wording = wordingOf(options);
  const asked = readTrip(trip);
  const { kit, problems } = typedKit(pot, stove, wording);
  return finish(
    conduct({
      reading: NOTHING_READ,
      trip: groundTrip(asked.trip, {}, true, readTrip(options.usual).trip),
      kit,
      problems: [...asked.problems, ...problems],
      wording,
    }),
  );
}

/**
 * What pot to look for on a trip, with a stove where one is given; and where a pot is, the nearest to it that suits. What cannot be used is
 * left out. Null for a stove that has its pot already.
 * @throws TypeError if an argument is of the wrong kind.
 */
export function lookFor(
  pot: PotInput,
  trip?: Partial<Trip>,
  stove?: StoveInput,
  options: CheckOptions = {},
): LookFor | null {
  const wording = wordingOf(options);
  const typed = typedKit(pot, stove, wording);
  const kit = Object.keys(pot).length === 0 ? { ...typed.kit, vessels: [], pots: [] } : typed.kit;
  return wanted(kit, groundTrip(readTrip(trip).trip, {}, true, readTrip(options.usual).trip), wording);
}

function typedKit(
  pot: PotInput,
  stove: StoveInput | undefined,
  wording: Wording,
): { kit: Kit; problems: InputProblem[] } {
  const typedPot = readPot(pot, wording.locale, tell(phrase`pot`, wording));
  const typedStove =
    stove === undefined ? undefined : readStove(stove, wording.locale, tell(phrase`the stove`, wording));
  return {
    kit: kitFromPot(typedPot.pot, typedStove?.stove),
    problems: [...typedPot.problems, ...(typedStove?.problems ?? [])],
  };
}

/** @throws TypeError for units that there are none of */
export function wordingOf({ units = 'metric', locale = 'en', language = ENGLISH }: WordingOptions): Wording {
  if (!UNIT_SYSTEMS.includes(units)) throw new TypeError(`The units are one of ${UNIT_SYSTEMS.join(', ')}.`);
  return { units, language, locale: Intl.NumberFormat.supportedLocalesOf([locale])[0] ?? 'en' };
}
