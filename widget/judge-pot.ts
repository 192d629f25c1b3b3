/** The part of the widget that judges one typed pot: what `judge.ts` has, without what reads lists. It comes by `judging.ts`, and only there. */
import { languagesMissing, learnLanguages, remark } from '../core/typed.js';
import type { JUDGING as WHOLE } from './judge.js';
import { judgeTyped, OF_ONE_POT } from './judge-fields.js';

export const JUDGING: typeof WHOLE = {
  ...OF_ONE_POT,
  judge: judgeTyped,
  // One pot takes no time worth resting in.
  judgeBetweenStrokes: (_outdated, ...asked) => Promise.resolve(judgeTyped(...asked)),
  languagesMissing,
  learnLanguages,
  remark,
};
