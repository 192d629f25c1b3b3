/** The part that reads and judges is loaded from beside the module, once there is something to judge: a post whose reader never asks does not pay for it. */
import { html, nothing, svg } from 'lit';

type Judging = typeof import('./judge.js').JUDGING;

/** What a draft needs: all of it for a list; for one pot the part that reads no list, half as large. */
type Part = 'list' | 'pot';

let judging: Judging | null = null;
/** Whether what is there reads lists. */
let reads = false;
const coming: Partial<Record<Part, Promise<void>>> = {};
let told = false;

/** That part, for a draft with this entrance; null until `loadJudge` has it. */
export function judgeAtHand(part: Part = 'pot'): Judging | null {
  return part === 'list' && !reads ? null : judging;
}

/** Loads it. Never rejects: where it does not come, the writer's console says so once, and the next call tries again. */
export function loadJudge(part: Part): Promise<void> {
  const wanted = coming.list === undefined ? part : 'list';
  return (coming[wanted] ??= (wanted === 'list' ? import('./judge.js') : import('./judge-pot.js')).then(
    ({ JUDGING }) => {
      if (reads) return;
      JUDGING.takeTags({ html, nothing, svg });
      judging = JUDGING;
      reads = wanted === 'list';
    },
    (fault: unknown) => {
      delete coming[wanted];
      if (told) return;
      told = true;
      // eslint-disable-next-line no-console -- a file that is missing is told where the writer looks
      console.warn(`Brimwise judges nothing: judge.js did not come from beside the module. ${String(fault)}`);
    },
  ));
}
