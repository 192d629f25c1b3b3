/** The part of the widget that reads and judges: all of the core, and so by far the most of what is loaded. It comes by `judging.ts`, and only there. */
import {
  checkListInSteps,
  finish,
  languagesMissing,
  learnLanguages,
  readList,
  remark,
  type Steps,
} from '../core/english.js';
import { isAsked, type Draft, type Fields, type Judged } from './draft.js';
import { judgeTyped, OF_ONE_POT, optionsOf, tripOf, type Speech } from './judge-fields.js';

/**
 * The second opinion on a draft; null where nothing is typed yet. `locale` (BCP 47) settles US and imperial units where the list does not;
 * `usual` is what to assume of the trip.
 */
export function judge(draft: Draft, speech?: Speech, usual?: Fields): Judged | null {
  return finish(judgeInSteps(draft, speech, usual));
}

/** Milliseconds of work after which strokes and frames have their turn: half a frame. */
const WORK_MS = 8;

/** The same, without holding the page up. Gives up, with undefined, once it is `outdated`. */
export async function judgeBetweenStrokes(
  outdated: () => boolean,
  ...asked: Parameters<typeof judge>
): Promise<Judged | null | undefined> {
  const steps = judgeInSteps(...asked);
  let step;
  do {
    const until = performance.now() + WORK_MS;
    do step = steps.next();
    while (step.done !== true && performance.now() < until);
    await nextTask();
    if (outdated()) return undefined;
  } while (step.done !== true);
  return step.value;
}

/** A timer would be held back where the page is not in sight. */
function nextTask(): Promise<unknown> {
  const { port1, port2 } = new MessageChannel();
  return new Promise((resolve) => {
    port1.onmessage = (event) => {
      port1.close();
      resolve(event);
    };
    port2.postMessage(null);
  });
}

function* judgeInSteps(draft: Draft, speech: Speech = {}, usual: Fields = {}): Steps<Judged | null> {
  const options = optionsOf(draft, speech, usual);
  if (draft.entrance === 'pot') return judgeTyped(draft, speech, usual);
  if (!isAsked(draft)) return null;
  const report = yield* checkListInSteps(draft.text, tripOf(draft.trip), draft.corrections, options);
  return { draft, report, asRead: draft.corrections.length === 0 ? report.reading : readList(draft.text, options) };
}

/** All that the elements need of this part. */
export const JUDGING = { ...OF_ONE_POT, judge, judgeBetweenStrokes, languagesMissing, learnLanguages, remark };
