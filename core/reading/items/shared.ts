import { isMissing, spanOf, stated, type Draft } from './draft.js';
import { inParentheses, spanBreaks } from './clauses.js';
import { MOST_ADJECTIVES } from './listed.js';
import { termsOf, type Stretch } from './stretch.js';

/** "Pot + lid 101 g + 65 g": as many masses as things, in their order. */
function spreadMasses(stretch: Stretch, drafts: readonly Draft[]): boolean {
  const last = drafts.at(-1);
  if (last === undefined || drafts.length < 2 || drafts.slice(0, -1).some((draft) => !isMissing(draft.massG)))
    return false;
  const masses = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'mass' && measure.first > last.noun[1],
  );
  const joined = masses.every(
    (measure, i) =>
      i === 0 || (stretch.tokens[measure.first - 1]?.fold === '+' && masses[i - 1]?.last === measure.first - 2),
  );
  if (masses.length !== drafts.length || !joined) return false;
  for (const [i, draft] of drafts.entries()) {
    const measure = masses[i];
    if (measure !== undefined)
      draft.massG = stated(measure.values[0] ?? 0, spanOf(stretch, measure.first, measure.last));
  }
  return true;
}

/** "4x bowl+cup": a count before two things joined without a space is of both. */
export function shareCount(stretch: Stretch, drafts: readonly Draft[]): void {
  for (const [i, draft] of drafts.entries()) {
    const before = drafts[i - 1];
    const joint = draft.noun[0] - 1;
    if (before?.quantity.grounds !== 'stated' || before.quantity.value < 2 || before.noun[1] !== joint - 1) continue;
    const glued = stretch.tokens[joint]?.gap === 0 && stretch.tokens[draft.noun[0]]?.gap === 0;
    const sign = stretch.tokens[joint]?.fold ?? '';
    if (glued && '+&'.includes(sign) && before.quantity.span !== undefined && !counted(draft))
      draft.quantity = stated(before.quantity.value, before.quantity.span);
  }
}

function counted(draft: Draft): boolean {
  return draft.quantity.grounds === 'stated' && draft.quantity.value > 1;
}

/** The mass at the end of a row that is of all its things: after the bracket or colon that names the parts of a set, or "with" the others. */
function isMassOfAll(stretch: Stretch, first: Draft, last: Draft): boolean {
  if (last.massG.grounds !== 'stated' || last.massG.span === undefined) return false;
  if (last.massBasis === 'line') return true;
  const [start] = last.massG.span;
  const measure = stretch.measures.find((one) => stretch.tokens[one.first]?.start === start);
  if (measure === undefined) return false;
  const withs = termsOf(stretch, 'with');
  if (withs.some((term) => term.first === measure.last + 1)) return true;
  const together = withs.some(
    (term) => term.first > first.noun[1] && term.last < last.noun[0] && last.noun[0] - term.last <= MOST_ADJECTIVES + 1,
  );
  if (together && measure.first > last.noun[1] && !inParentheses(stretch, last.noun[1], measure.first)) return true;
  const set = termsOf(stretch, 'set').find(
    (term) => term.last <= first.noun[0] && '(:'.includes(stretch.tokens[term.last + 1]?.fold ?? ' '),
  );
  if (set === undefined) return false;
  const between = stretch.tokens.slice(last.noun[1] + 1, measure.first);
  if (stretch.tokens[set.last + 1]?.fold === ':')
    return between.length === 1 && spanBreaks(stretch, last.noun[1] + 1, measure.first);
  return between.some((token) => token.fold === ')');
}

/** "Storm cooker (2 pots, no kettle) 720 g": a mass after a bracket is of the thing before it, not of the last one inside. */
function ownerOfBracket(stretch: Stretch, drafts: readonly Draft[], last: Draft): Draft | undefined {
  if (last.massG.grounds !== 'stated' || last.massG.span === undefined || last.noun[0] < 0) return undefined;
  const [start] = last.massG.span;
  const owner = drafts.findLast((draft) => draft !== last && inParentheses(stretch, draft.noun[1] + 1, last.noun[0]));
  const mass = stretch.measures.find((measure) => stretch.tokens[measure.first]?.start === start);
  if (owner === undefined || mass === undefined || !isMissing(owner.massG)) return undefined;
  return mass.first > last.noun[1] && !inParentheses(stretch, owner.noun[1] + 1, mass.first) ? owner : undefined;
}

/** "pot, pan, gripper, 412 g the lot": a mass of all together stands with the first. */
export function shareMass(stretch: Stretch, drafts: readonly Draft[]): void {
  if (spreadMasses(stretch, drafts)) return;
  const [first] = drafts;
  const last = drafts.at(-1);
  if (first === undefined || last === undefined || first === last) return;
  const owner = ownerOfBracket(stretch, drafts, last);
  if (owner !== undefined) {
    owner.massG = last.massG;
    last.massG = { grounds: 'missing' };
    return;
  }
  if (first.kind === last.kind) return;
  if (first.massG.grounds !== 'missing' || !isMassOfAll(stretch, first, last)) return;
  if (last.quantity.grounds === 'stated' && last.quantity.value > 1) return;
  first.massG = last.massG;
  first.massBasis = 'line';
  last.massG = { grounds: 'missing' };
  delete last.massBasis;
}
