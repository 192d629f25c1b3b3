import { CHECKS } from './checks/index.js';
import type { Check, Facts, Need, Verdict } from './model/check.js';
import type { Finding } from './model/finding.js';
import { valueOf } from './model/given.js';
import type { Kit } from './model/kit.js';
import type { Reading } from './model/reading.js';
import type { InputProblem, Report } from './model/report.js';
import type { GroundedTrip } from './model/trip.js';
import { planDay } from './plan/index.js';
import { PLAN_MESSAGES } from './plan/messages.js';
import { potFigures, stoveFigures } from './plan/drawing.js';
import type { Wording } from './report/format.js';
import {
  countGrades,
  countLines,
  gatherAssumptions,
  gatherSources,
  headline,
  orderFindings,
  wordDay,
  wordVerdict,
} from './report/word.js';

/** What the conductor needs: a reading, the trip with its grounds, and the kit put together from them. */
export interface Case {
  readonly reading: Reading;
  readonly trip: GroundedTrip;
  readonly kit: Kit;
  readonly problems: readonly InputProblem[];
  readonly wording: Wording;
}

/** Plans the day, lets every check judge what it asks for, and words the report. */
export function conduct({ reading, trip, kit, problems, wording }: Case): Report {
  const plan = planDay({ kit, trip });
  const facts: Facts = { ...kit, trip, hints: reading.trip, plan };
  const faults: InputProblem[] = [];
  const findings = orderFindings(
    kitIsEmpty(kit) ? [] : CHECKS.flatMap((check) => judged(check, facts, wording, faults)),
  );
  const days = trip.days.grounds === 'stated' ? trip.days.value : null;
  const day = wordDay(plan, PLAN_MESSAGES, days, wording);
  return {
    version: 1,
    trip,
    reading,
    findings,
    summary: {
      headline: headline(findings, valueOf(trip.people) ?? 1, days),
      counts: countGrades(findings),
      lines: countLines(reading.lines),
    },
    assumptions: gatherAssumptions(findings),
    sources: gatherSources(findings, day),
    problems: [...problems, ...faults],
    day,
    pots: kit.pots.map((pot) => potFigures(pot, plan, trip, findings)),
    stove: kit.stoves[0] === undefined ? null : stoveFigures(kit.stoves[0]),
    units: wording.units,
  };
}

function kitIsEmpty(kit: Kit): boolean {
  return (
    kit.vessels.length +
      kit.stoves.length +
      kit.fuels.length +
      kit.gear.length +
      kit.eatWare.length +
      kit.waterCarriers.length ===
    0
  );
}

/** A fault in one check becomes that check's own "Can't tell"; the rest go on. */
function judged(check: Check, facts: Facts, wording: Wording, faults: InputProblem[]): Finding[] {
  try {
    return check.judge(asked(check.needs, facts), check.options).map((verdict) => wordVerdict(check, verdict, wording));
  } catch (fault) {
    faults.push({
      field: `check.${check.id}`,
      value: check.id,
      message: fault instanceof Error ? fault.message : String(fault),
    });
    const messages = { fault: 'This check failed on this kit; the others went on.', margin: 'no answer' };
    const verdict: Verdict = {
      grade: 'cant-tell',
      message: 'fault',
      margin: 'margin',
      figures: {},
      evidence: [{ quote: check.title, found: 'absent' }],
    };
    return [wordVerdict({ ...check, messages, cites: [] }, verdict, wording)];
  }
}

/** Only what the check says it needs, so that what it says stays true. */
function asked(needs: readonly Need[], facts: Facts): Facts {
  return Object.fromEntries(needs.map((need) => [need, facts[need]])) as unknown as Facts;
}
