import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Piece, Vessel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import { TWO_HANDLES } from '../data/hazards.js';
import { assumed } from '../plan/assumed.js';
import { massOf } from '../plan/mass.js';
import { needsTwoHandles } from '../physics/handling.js';

/** Is there something to lift the full pots with, and is what they weigh within it? */
export const lift = defineCheck({
  id: 'lift',
  title: 'Lifting',
  asks: 'What lifts each full pot off the heat, and is it made for that much?',
  costs: 'Hands and feet get scalded.',
  needs: ['pots', 'gear'],
  cites: ['cp-lift', 'cp-gripper', 'en-12983-1'],
  limits: 'It counts handles and does not know how they are fixed. EN 12983-1 is for household cookware.',
  options: {
    /** A pot under this, mL, is a cup that is lifted by its rim with a glove; nothing is asked. */
    asksFromMl: 450,
    /** A gripper clamps on a rim: it holds so much and no more (`cp-gripper`). */
    gripper: { ml: 2000, kg: 2.5 },
    /** One handle, or a bail in one hand (`en-12983-1`). */
    oneHand: { ml: TWO_HANDLES.aboveCapacityMl, kg: TWO_HANDLES.aboveFilledKg },
    /** Full and boiling, from here nobody lifts it: it is ladled out where it stands (`cp-gripper`). */
    nobody: { kg: 10 },
  },
  messages: {
    lifts: 'It is lifted by {grips}.',
    nothing: 'Nothing on it or beside it lifts the full pot.',
    'too-much': 'Full it is {filled}, too much for {grips}.',
    'bail-two': 'Full it is {filled} on a bail: two people lift it, on a stick.',
    'too-heavy': 'Full it is {filled}: too heavy for anyone to lift while it boils.',
    unknown: 'Nothing says how it is lifted when full.',
    margin: '{filled#} of {limit}, lifted full',
    'margin-litres': '{holds#} of {limitL}, lifted full',
    'margin-nothing': 'no grip',
    'margin-unknown': 'no handle named',
    'fix-gripper': 'A gripper, or a pot with a bail or handles.',
    'fix-two': 'A pot with a handle on either side. Or fill it to {least} at most.',
    'fix-handles': 'A pot with a handle on either side.',
    'fix-ladle': 'Ladle it out where it stands. Or fill it to {least} at most.',
    'fix-ladle-only': 'Ladle it out where it stands.',
    question: '“{name}”: has it a handle, a bail or a gripper?',
    caution: 'Boiling water burns in a second. Set cups on the ground to pour, and keep feet clear.',
    bail: 'a bail',
    handle: 'one handle',
    handles: 'two handles',
    gripper: 'a gripper',
    filledLine: 'water to the brim, and the pot',
    limitLine: 'the most that {grips} may lift',
    litresLine: 'the most that {grips} may hold',
  },
  judge({ pots, gear }, options): Verdict[] {
    const gripper = gear.find((piece) => piece.role === 'gripper');
    const told = pots.filter((pot) => !pot.lockedToBurner).flatMap((pot): Verdict[] => judgePot(pot, gripper, options));
    const wrong = told.filter(({ grade }) => grade !== 'holds-up' && grade !== 'cant-tell');
    const open = told.filter(({ grade }) => grade === 'cant-tell').slice(0, 1);
    return wrong.length + open.length > 0 ? [...wrong, ...open] : told.slice(0, 1);
  },
});

type Options = (typeof lift)['options'];

function judgePot(pot: Vessel, gripper: Piece | undefined, options: Options): Verdict[] {
  const capacity = valueOf(pot.capacityMl);
  const handles = valueOf(pot.handles) ?? 0;
  const bail = valueOf(pot.bail) === true;
  const evidence = [pot.evidence, ...(gripper === undefined ? [] : [gripper.evidence])];
  const about = { evidence, item: pot.item };
  if (handles === 0 && !bail && gripper === undefined) {
    if (valueOf(pot.handles) !== undefined) {
      return [
        {
          ...about,
          grade: 'can-hurt',
          message: 'nothing',
          margin: 'margin-nothing',
          figures: {},
          fix: 'fix-gripper',
          cautions: ['caution'],
        },
      ];
    }
    if (capacity !== undefined && capacity < options.asksFromMl) return [];
    const question = {
      ...(pot.item === null ? {} : { item: pot.item }),
      field: 'handles',
      message: 'question',
    } as const;
    const figures = { name: pot.name };
    return [{ ...about, grade: 'cant-tell', message: 'unknown', margin: 'margin-unknown', figures, question }];
  }
  const grips = handles > 1 ? 'handles' : bail ? 'bail' : handles === 1 ? 'handle' : 'gripper';
  const mass = massOf(pot);
  const ml = capacity ?? 0;
  const filledKg = (ml + (valueOf(mass) ?? 0)) / 1000;
  const most =
    grips === 'handles' ? { ml: Infinity, ...options.nobody } : grips === 'gripper' ? options.gripper : options.oneHand;
  const leastMl = Math.floor(Math.min(most.ml, 1000 * most.kg - (valueOf(mass) ?? 0)) / 50) * 50;
  const byLitres = ml / most.ml > filledKg / most.kg;
  const figures: Figures = {
    grips,
    filled: figure(filledKg, 'kg', 1),
    limit: figure(most.kg, 'kg'),
    holds: figure(ml / 1000, 'L', 1),
    ...(most.ml === Infinity ? {} : { limitL: figure(most.ml / 1000, 'L', 2) }),
    least: figure(leastMl, 'mL', 0),
  };
  const sum: SumLine[] = [
    {
      sign: '',
      figure: figure(filledKg, 'kg', 1),
      label: 'filledLine',
      grounds: mass.grounds === 'assumed' ? 'assumed' : 'worked-out',
    },
    {
      sign: '',
      figure: figure(most.kg, 'kg'),
      label: 'limitLine',
      ...(most === options.oneHand
        ? { grounds: 'published', cites: ['en-12983-1'] }
        : { grounds: 'common-practice', cites: ['cp-gripper'] }),
    },
  ];
  const worded = {
    ...about,
    margin: byLitres ? 'margin-litres' : 'margin',
    figures,
    sum,
    assumptions: assumed([[phrase`what the pot weighs`, mass]]),
  };
  const cautions = ['caution'];
  if (ml <= most.ml && filledKg <= most.kg) return [{ ...worded, grade: 'holds-up', message: 'lifts' }];
  if (filledKg > options.nobody.kg) {
    const nobody = { ...worded, margin: 'margin', message: 'too-heavy', cautions } as const;
    const tenKg = { ...figures, limit: figure(options.nobody.kg, 'kg') };
    const fix = leastMl > 0 ? 'fix-ladle' : 'fix-ladle-only';
    return [{ ...nobody, figures: tenKg, grade: grips === 'handles' ? 'costs-you' : 'can-hurt', fix }];
  }
  const fix = leastMl > 0 ? 'fix-two' : 'fix-handles';
  if (grips === 'bail') return [{ ...worded, grade: 'costs-you', message: 'bail-two', fix, cautions }];
  // A gripper that is a little small slips; far beyond it the pot falls.
  const near = grips === 'gripper' && !needsTwoHandles(ml, filledKg);
  return [{ ...worded, grade: near ? 'costs-you' : 'can-hurt', message: 'too-much', fix, cautions }];
}
