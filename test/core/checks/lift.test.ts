import { describe, expect, it } from 'vitest';
import { lift } from '../../../core/checks/lift.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const of = (pot: object) => findingOf(lift, factsOfPot({ capacity: 1000, ...pot }));
const gripper = item('other-cook', { role: 'gripper', line: 1 });

describe('lifting', () => {
  it('hurts with neither handle nor gripper', () => {
    const finding = of({ handles: false, bail: false });
    expect(finding).toMatchObject({
      grade: 'can-hurt',
      key: 'nothing',
      margin: '0 of 1 grips',
      fix: 'Add a pot gripper, or a pot with a bail or handles.',
      cautions: [expect.stringContaining('Boiling water')],
    });
    expect(of({ handles: 0 }).grade).toBe('can-hurt');
  });

  it('does not guess where nothing is said', () => {
    expect(of({})).toMatchObject({
      grade: 'cant-tell',
      key: 'unknown',
      question: { field: 'handles', text: '“pot”: has it a handle, a bail or a gripper?' },
    });
    expect(of({ bail: false }).grade).toBe('cant-tell');
    expect(findingOf(lift, factsOf({}, [item('pot')])).question).toMatchObject({ item: 0 });
  });

  it('does not ask of a cup', () => {
    expect(findingsOf(lift, factsOfPot({ capacity: 449 }))).toEqual([]);
    expect(findingsOf(lift, factsOfPot({ capacity: 450 }))).toHaveLength(1);
    expect(findingsOf(lift, factsOfPot({ capacity: 449, handles: 0 }))).toHaveLength(1);
  });

  // EN 12983-1:2000+A1:2004, clause 6: two handles over 3.75 L or over 5 kg filled.
  it.each([
    [{ capacity: 3700, handles: 1 }, 'holds-up', '1 of 1 grips'],
    [{ capacity: 3800, handles: 1 }, 'can-hurt', '1 of 2 grips'],
    [{ capacity: 3700, handles: 1, mass: 1301 }, 'can-hurt', '1 of 2 grips'],
    [{ capacity: 3700, handles: 1, mass: 1299 }, 'holds-up', '1 of 1 grips'],
    [{ capacity: 3800, handles: 2 }, 'holds-up', '2 of 2 grips'],
    [{ capacity: 3800, bail: true }, 'can-hurt', '1 of 2 grips'],
    [{ capacity: 3800, bail: true, handles: 1 }, 'holds-up', '2 of 2 grips'],
  ] as const)('%j: %s', (pot, grade, margin) => {
    expect(of(pot)).toMatchObject({ grade, margin });
  });

  it('names weight and cure of one handle', () => {
    expect(of({ capacity: 5000, mass: 800, handles: 1 })).toMatchObject({
      message: 'Full it is 5.8\u00a0kg on one handle.',
      fix: 'Add a gripper for the other hand, or fill it to 3750\u00a0mL at most.',
      cautions: [expect.stringContaining('Boiling water')],
    });
    expect(of({ capacity: 5000, handles: 1 }).sum.map(({ text }) => text)).toEqual(['5\u00a0kg', '3750\u00a0mL']);
  });

  it('counts the gripper of a list, and quotes it', () => {
    const big = item('pot', { capacitiesMl: [stated(8000)], bail: stated(true) });
    expect(findingOf(lift, factsOf({}, [big])).grade).toBe('can-hurt');
    const held = findingOf(lift, factsOf({}, [big, gripper]));
    expect(held).toMatchObject({ grade: 'holds-up', message: 'Something to lift it with: a bail, a gripper.' });
    expect(held.evidence).toHaveLength(2);
    expect(findingOf(lift, factsOf({}, [item('pot', { capacitiesMl: [stated(1000)] }), gripper])).message).toBe(
      'Something to lift it with: a gripper.',
    );
    expect(findingOf(lift, factsOf({}, [item('pot', { handles: stated(true) })])).message).toBe(
      'Something to lift it with: handles.',
    );
  });

  it('is silent on a pot locked to its burner and without a pot', () => {
    expect(
      findingsOf(lift, factsOfPot({ capacity: 800, handles: false, bail: false }, {}, { type: 'integrated' })),
    ).toEqual([]);
    expect(findingsOf(lift, factsOf({}, [gripper]))).toEqual([]);
  });
});
