import { describe, expect, it } from 'vitest';
import { lift } from '../../../core/checks/lift.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const of = (pot: object) => findingOf(lift, factsOfPot({ capacity: 1000, ...pot }));
const gripper = item('other-cook', { role: 'gripper', line: 1 });

describe('lifting', () => {
  it('hurts with neither handle nor gripper', () => {
    const finding = of({ handles: false, bail: false });
    expect(finding).toMatchObject({
      grade: 'can-hurt',
      key: 'nothing',
      margin: 'no grip',
      fix: 'A gripper, or a pot with a bail or handles.',
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

  // EN 12983-1:2000+A1:2004, clause 6: two handles over 3.75 L or over 5 kg filled. 10 kg: common practice, no source.
  it.each([
    [{ capacity: 3700, handles: 1, mass: 500 }, 'holds-up', 'lifts', '3.7 of 3.75 L, lifted full'],
    [{ capacity: 3800, handles: 1, mass: 500 }, 'can-hurt', 'too-much', '3.8 of 3.75 L, lifted full'],
    [{ capacity: 3700, handles: 1, mass: 1301 }, 'can-hurt', 'too-much', '5 of 5 kg, lifted full'],
    [{ capacity: 3700, handles: 1, mass: 1299 }, 'holds-up', 'lifts', '5 of 5 kg, lifted full'],
    [{ capacity: 3800, handles: 2, mass: 500 }, 'holds-up', 'lifts', '4.3 of 10 kg, lifted full'],
    [{ capacity: 3800, bail: true, mass: 500 }, 'costs-you', 'bail-two', '3.8 of 3.75 L, lifted full'],
    [{ capacity: 3800, bail: true, handles: 1, mass: 500 }, 'costs-you', 'bail-two', '3.8 of 3.75 L, lifted full'],
    [{ capacity: 8000, bail: true, handles: 2, mass: 1000 }, 'holds-up', 'lifts', '9 of 10 kg, lifted full'],
    [{ capacity: 9000, handles: 2, mass: 1001 }, 'costs-you', 'too-heavy', '10 of 10 kg, lifted full'],
    [{ capacity: 12000, bail: true, mass: 2000 }, 'can-hurt', 'too-heavy', '14 of 10 kg, lifted full'],
  ] as const)('%j: %s', (pot, grade, key, margin) => {
    const finding = plainly(of(pot));
    expect(finding).toMatchObject({ grade, key, margin });
    expect(finding.cautions).toHaveLength(grade === 'holds-up' ? 0 : 1);
  });

  // The fix keeps both limits: 3.75 L, and 5 kg with the pot.
  it.each([
    [{ capacity: 5000, mass: 800, handles: 1 }, 3750],
    [{ capacity: 4000, mass: 1600, handles: 1 }, 3400],
    [{ capacity: 12000, mass: 2000, handles: 2 }, 8000],
  ])('%j: fill it to %d mL at most', (pot, most) => {
    const fix = plainly(of(pot)).fix!;
    expect(fix).toMatch(new RegExp(`fill it to ${most} mL at most`));
    expect(of({ ...pot, capacity: most }).grade).toBe('holds-up');
  });

  it('has no fill to offer where the empty pot is too much', () => {
    expect(of({ capacity: 5700, mass: 5200, handles: 1 }).fix).toBe('Ladle it out where it stands.');
    expect(of({ capacity: 4000, mass: 5200, handles: 1 }).fix).toBe('A pot with a handle on either side.');
  });

  it('never takes a pot as weightless: 1 g and more a mL in iron (common practice, no source)', () => {
    const iron = of({ capacity: 5700, material: 'iron', handles: 2 });
    expect(iron).toMatchObject({ grade: 'costs-you', key: 'too-heavy' });
    expect(iron.assumptions.map(({ what }) => what)).toEqual(['what the pot weighs']);
    expect(iron.sum[0]).toMatchObject({ grounds: 'assumed' });
    expect(of({ capacity: 5700, material: 'aluminium', handles: 2 }).grade).toBe('holds-up');
    expect(of({ capacity: 5700, mass: 900, handles: 2 }).assumptions).toEqual([]);
  });

  it('holds 2 L or 2.5 kg in a gripper (common practice, no source)', () => {
    const held = (capacity: number, massG: number) =>
      findingOf(lift, factsOf({}, [item('pot', { capacitiesMl: [stated(capacity)], massG: stated(massG) }), gripper]));
    expect(held(1800, 200)).toMatchObject({ grade: 'holds-up', message: 'It is lifted by a gripper.' });
    expect(held(1800, 200).evidence).toHaveLength(2);
    expect(held(2000, 501)).toMatchObject({ grade: 'costs-you', key: 'too-much' });
    expect(held(2100, 200)).toMatchObject({ grade: 'costs-you', key: 'too-much' });
    expect(held(3800, 200)).toMatchObject({ grade: 'can-hurt', key: 'too-much' });
    const big = item('pot', { capacitiesMl: [stated(8000)], massG: stated(1200), bail: stated(true) });
    expect(findingOf(lift, factsOf({}, [big, gripper]))).toMatchObject({ grade: 'costs-you', key: 'bail-two' });
  });

  it('looks at every pot, and names each that is wrong; of those that are not known, one', () => {
    const pot = (line: number, capacity: number, handles?: boolean) =>
      item('pot', {
        line,
        capacitiesMl: [stated(capacity)],
        ...(handles === undefined ? {} : { handles: stated(handles) }),
      });
    const keys = (...pots: Parameters<typeof factsOf>[1]) => findingsOf(lift, factsOf({}, pots)).map(({ key }) => key);
    expect(keys(pot(1, 2000, true), pot(2, 1800, false))).toEqual(['nothing']);
    expect(keys(pot(1, 1800, false), pot(2, 2000, false))).toEqual(['nothing', 'nothing']);
    expect(keys(pot(1, 2000, true), pot(2, 1800, true))).toEqual(['lifts']);
    expect(keys(pot(1, 2000), pot(2, 1800), pot(3, 1500, false))).toEqual(['nothing', 'unknown']);
  });

  it('is silent on a pot locked to its burner and without a pot', () => {
    expect(
      findingsOf(lift, factsOfPot({ capacity: 800, handles: false, bail: false }, {}, { type: 'integrated' })),
    ).toEqual([]);
    expect(findingsOf(lift, factsOf({}, [gripper]))).toEqual([]);
  });
});
