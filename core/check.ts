import { CHECKS } from './checks/index.js';
import { stoveFit, suitedWidths } from './checks/stove-fit.js';
import type { Check, Facts, Need, Verdict } from './model/check.js';
import type { Caution, Finding } from './model/finding.js';
import { valueOf } from './model/given.js';
import type { Kit } from './model/kit.js';
import type { Reading } from './model/reading.js';
import type { InputProblem, Report } from './model/report.js';
import type { GroundedTrip } from './model/trip.js';
import { planDay } from './plan/index.js';
import { PLAN_MESSAGES } from './plan/messages.js';
import { drawnVessels, kitchenFigures, potFigures, stoveFigures, stovesInOrder } from './plan/drawing.js';
import type { Wording } from './report/format.js';
import type { Steps } from './steps.js';
import { tell } from './report/format.js';
import { headline } from './report/headline.js';
import { REPORT_MESSAGES } from './report/messages.js';
import {
  countGrades,
  countLines,
  gatherAssumptions,
  gatherSources,
  inLanguage,
  orderFindings,
  wordDay,
  wordPlaces,
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

/** Plans the day, lets every check judge what it asks for, each a step, and words the report. */
export function* conduct({ reading, trip, kit, problems, wording }: Case): Steps<Report> {
  const plan = planDay({ kit, trip, hints: reading.trip });
  const facts: Facts = { ...kit, trip, hints: reading.trip, plan };
  const faults: InputProblem[] = [];
  const found: (Finding | Caution)[] = [];
  for (const check of kitIsEmpty(kit) ? [] : CHECKS) {
    yield;
    found.push(...judged(check, facts, wording, faults));
  }
  const findings = orderFindings(found.filter(isGraded));
  const cautions = found.filter((one) => !isGraded(one));
  const days = trip.days.grounds === 'stated' ? trip.days.value : null;
  const pots = drawnVessels(kit, plan);
  const stoves = stovesInOrder(kit, plan);
  const places = wordPlaces(plan, kit, { pots, stoves }, PLAN_MESSAGES, wording);
  const day = wordDay(plan, PLAN_MESSAGES, { people: valueOf(trip.people) ?? 1, days }, wording);
  return {
    version: 2,
    trip: inLanguage(trip, wording),
    reading: tellNotes(inLanguage(reading, wording), wording),
    findings,
    cautions,
    summary: {
      headline: headline(findings, { people: valueOf(trip.people) ?? 1, days }, wording),
      counts: countGrades(findings),
      lines: countLines(reading.lines, wording),
    },
    assumptions: gatherAssumptions([...findings, ...cautions]),
    sources: gatherSources([...findings, ...cautions], day, wording),
    problems: [...problems, ...faults].map((problem) => ({ ...problem, message: tell(problem.message, wording) })),
    day,
    pots: pots.map((pot) => potFigures(pot, stoves[0], plan, findings)),
    stoves: stoves.map((stove) => stoveFigures(stove, suitedWidths(stove, stoveFit.options))),
    kitchens: kitchenFigures(kit, plan, pots),
    places,
    units: wording.units,
  };
}

function isGraded(found: Finding | Caution): found is Finding {
  return 'grade' in found;
}

function tellNotes(reading: Reading, wording: Wording): Reading {
  return { ...reading, notes: reading.notes.map((note) => tell(note, wording)) };
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
function judged(check: Check, facts: Facts, wording: Wording, faults: InputProblem[]): (Finding | Caution)[] {
  try {
    return check.judge(asked(check.needs, facts), check.options).map((verdict) => wordVerdict(check, verdict, wording));
  } catch (fault) {
    faults.push({
      field: `check.${check.id}`,
      value: check.id,
      message: fault instanceof Error ? fault.message : String(fault),
    });
    const verdict: Verdict = {
      grade: 'cant-tell',
      message: 'fault',
      margin: 'fault-margin',
      figures: {},
      evidence: [{ quote: tell(check.title, wording), found: 'absent' }],
    };
    return [wordVerdict({ ...check, messages: REPORT_MESSAGES, cites: [] }, verdict, wording)];
  }
}

/** Only what the check says it needs, so that what it says stays true. */
function asked(needs: readonly Need[], facts: Facts): Facts {
  return Object.fromEntries(needs.map((need) => [need, facts[need]])) as unknown as Facts;
}
