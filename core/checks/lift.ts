import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import { TWO_HANDLES } from '../data/hazards.js';
import { needsTwoHandles } from '../physics/handling.js';

/** Is there something to lift the full pot with? */
export const lift = defineCheck({
  id: 'lift',
  title: 'Lifting',
  asks: 'What lifts the full pot off the heat?',
  costs: 'Hands and feet get scalded.',
  needs: ['pots', 'gear'],
  cites: ['cp-lift', 'en-12983-1'],
  limits: 'It counts handles and does not know how they are fixed. EN 12983-1 is for household cookware.',
  options: {
    /** A pot under this, mL, is a cup that is lifted by its rim with a glove; nothing is asked. */
    asksFromMl: 450,
  },
  messages: {
    'can-lift': 'Something to lift it with: {grips}.',
    nothing: 'Nothing on it or beside it lifts the full pot.',
    'one-handle': 'Full it is {filled} on one handle.',
    unknown: 'Nothing says how it is lifted when full.',
    margin: '{have} of {need} grips',
    'margin-unknown': 'no handle named',
    'fix-gripper': 'Add a pot gripper, or a pot with a bail or handles.',
    'fix-second': 'Add a gripper for the other hand, or fill it to {least} at most.',
    question: '“{name}”: has it a handle, a bail or a gripper?',
    caution: 'Boiling water burns in a second. Set cups on the ground to pour, and keep feet clear.',
    bail: 'a bail',
    handles: 'handles',
    gripper: 'a gripper',
    'bail-handles': 'a bail, handles',
    'bail-gripper': 'a bail, a gripper',
    'handles-gripper': 'handles, a gripper',
    'bail-handles-gripper': 'a bail, handles, a gripper',
    filledLine: 'pot and water to the brim',
    limitLine: 'above this, or above 5 kg, two handles',
  },
  judge({ pots, gear }, options): Verdict[] {
    const gripper = gear.find((piece) => piece.role === 'gripper');
    return pots
      .filter((pot) => !pot.lockedToBurner)
      .slice(0, 1)
      .flatMap((pot): Verdict[] => {
        const capacity = valueOf(pot.capacityMl);
        const handles = valueOf(pot.handles);
        const bail = valueOf(pot.bail);
        const grips = (bail ? 1 : 0) + (handles ?? 0) + (gripper ? 1 : 0);
        const evidence = gripper ? [pot.evidence, gripper.evidence] : [pot.evidence];
        const about = { evidence, item: pot.item };
        if (grips === 0 && handles === undefined) {
          if (capacity !== undefined && capacity < options.asksFromMl) return [];
          const question = {
            ...(pot.item === null ? {} : { item: pot.item }),
            field: 'handles',
            message: 'question',
          } as const;
          const figures = { name: pot.name };
          return [{ ...about, grade: 'cant-tell', message: 'unknown', margin: 'margin-unknown', figures, question }];
        }
        if (grips === 0) {
          const figures = { have: figure(0, ''), need: figure(1, '') };
          return [
            {
              ...about,
              grade: 'can-hurt',
              message: 'nothing',
              margin: 'margin',
              figures,
              fix: 'fix-gripper',
              cautions: ['caution'],
            },
          ];
        }
        const filledKg = ((capacity ?? 0) + (valueOf(pot.massG) ?? 0)) / 1000;
        const two = capacity !== undefined && needsTwoHandles(capacity, filledKg);
        const figures = {
          have: figure(grips, ''),
          need: figure(two ? 2 : 1, ''),
          filled: figure(filledKg, 'kg', 1),
          least: figure(TWO_HANDLES.aboveCapacityMl, 'mL', 0),
          grips: [bail ? 'bail' : '', handles ? 'handles' : '', gripper ? 'gripper' : '']
            .filter((grip) => grip !== '')
            .join('-'),
        };
        const sum = [
          { sign: '', figure: figure(filledKg, 'kg', 1), label: 'filledLine', grounds: 'worked-out' },
          {
            sign: '',
            figure: figure(TWO_HANDLES.aboveCapacityMl, 'mL', 0),
            label: 'limitLine',
            grounds: 'published',
            cites: ['en-12983-1'],
          },
        ] as const;
        return two && grips < 2
          ? [
              {
                ...about,
                grade: 'can-hurt',
                message: 'one-handle',
                margin: 'margin',
                figures,
                sum,
                fix: 'fix-second',
                cautions: ['caution'],
              },
            ]
          : [{ ...about, grade: 'holds-up', message: 'can-lift', margin: 'margin', figures }];
      });
  },
});
