/** The part that reads and judges is loaded from beside the module, once there is something to judge: a post whose reader never asks does not pay for it. */
import { html, nothing, svg } from 'lit';

type Judging = typeof import('./judge.js').JUDGING;

let judging: Judging | null = null;
let coming: Promise<void> | null = null;
let told = false;

/** That part; null until `loadJudge` has it. */
export function judgeAtHand(): Judging | null {
  return judging;
}

/** Loads it. Never rejects: where it does not come, the writer's console says so once, and the next call tries again. */
export function loadJudge(): Promise<void> {
  coming ??= import('./judge.js').then(
    ({ JUDGING }) => {
      JUDGING.takeTags({ html, nothing, svg });
      judging = JUDGING;
    },
    (fault: unknown) => {
      coming = null;
      if (told) return;
      told = true;
      // eslint-disable-next-line no-console -- a file that is missing is told where the writer looks
      console.warn(`Brimwise judges nothing: judge.js did not come from beside the module. ${String(fault)}`);
    },
  );
  return coming;
}
