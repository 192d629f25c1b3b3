import { expect } from 'vitest';
import { kitFromPot, kitFromReading } from '../../../core/kit/index.js';
import { groundTrip } from '../../../core/kit/trip.js';
import { readPot, readStove } from '../../../core/input/pot.js';
import type { Check, Facts, Verdict } from '../../../core/model/check.js';
import type { Item } from '../../../core/model/item.js';
import type { PotInput, StoveInput } from '../../../core/model/pot.js';
import type { Trip, TripHints } from '../../../core/model/trip.js';
import { planDay } from '../../../core/plan/index.js';
import { wordVerdict } from '../../../core/report/word.js';
import type { Caution, Finding, Grade } from '../../../core/model/finding.js';
import { readingOf } from '../kit/item.js';

/** A finding, or a caution, whose grade is null. */
export type Told = Omit<Finding, 'grade'> & { readonly grade: Grade | null };

/** The facts of a list of items on a trip. */
export function factsOf(trip: Partial<Trip>, items: readonly Item[], hints: TripHints = {}): Facts {
  const winter = trip.season === 'winter' || (trip.waterFrom !== undefined && trip.waterFrom !== 'liquid');
  const { kit } = kitFromReading('pot', readingOf(...items), winter);
  const grounded = groundTrip(trip, hints, kit.stoves.length > 0);
  return { ...kit, trip: grounded, hints, plan: planDay({ kit, trip: grounded }) };
}

/** The facts of one typed pot. */
export function factsOfPot(pot: PotInput, trip: Partial<Trip> = {}, stove?: StoveInput): Facts {
  const kit = kitFromPot(readPot(pot).pot, stove && readStove(stove).stove);
  const grounded = groundTrip(trip, {}, true);
  return { ...kit, trip: grounded, hints: {}, plan: planDay({ kit, trip: grounded }) };
}

/**
 * What a check says of the facts, in words. Wording fails on a missing message or figure, and every verdict has evidence,
 * so both are held wherever a check is tested.
 */
export function findingsOf(check: Check, facts: Facts): Told[] {
  const asked = Object.fromEntries(check.needs.map((need) => [need, facts[need]])) as unknown as Facts;
  return check.judge(asked, check.options).map((verdict: Verdict) => {
    expect(verdict.evidence.length).toBeGreaterThan(0);
    const worded: Finding | Caution = wordVerdict(check, verdict, { units: 'metric', locale: 'en' });
    const finding: Told = 'grade' in worded ? worded : { ...worded, grade: null, fix: null, question: null };
    const words = [
      finding.message,
      finding.margin,
      finding.fix ?? '',
      ...finding.cautions,
      finding.question?.text ?? '',
    ];
    expect(words.join(' ')).not.toMatch(/[{}]|\bsafe\b|undefined|NaN|Infinity/i);
    return finding;
  });
}

/** The one finding of a check. */
export function findingOf(check: Check, facts: Facts): Told {
  const findings = findingsOf(check, facts);
  expect(findings).toHaveLength(1);
  return findings[0]!;
}

/** A finding with plain spaces, so that tests can be typed: units follow a no-break space. */
export function plainly(finding: Told): Told {
  return JSON.parse(JSON.stringify(finding).replaceAll('\u00a0', ' ')) as Told;
}
