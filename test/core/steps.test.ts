import { describe, expect, it } from 'vitest';
import { checkList, checkListInSteps, finish, readList } from '../../core/index.js';
import { practiceLists } from '../practice/predict.mjs';

const texts = practiceLists().map(({ text }) => text);

function stepsOf(text: string): number {
  const steps = checkListInSteps(text);
  let n = 0;
  while (steps.next().done !== true) n++;
  return n;
}

describe('a list judged in steps', () => {
  it('is judged as at once, whatever else is read and judged between them', () => {
    for (const [i, text] of texts.entries()) {
      const other = texts[(i + 7) % texts.length]!;
      const steps = checkListInSteps(text, { people: 2 });
      const beside = checkListInSteps(other);
      let step = steps.next();
      for (let n = 0; step.done !== true; n++) {
        if (n % 5 === 0) readList(other);
        if (n % 3 === 0) beside.next();
        step = steps.next();
      }
      expect(step.value).toEqual(checkList(text, { people: 2 }));
    }
  });

  it('takes more of them the longer it is', () => {
    const line = 'Pot 1.3 L, 140 g\n';
    const [short, long] = [stepsOf(line.repeat(10)), stepsOf(line.repeat(10_000))];
    expect(long).toBeGreaterThan(short + 10_000 / 64);
  });

  it('refuses what is no text at its first step', () => {
    expect(() => finish(checkListInSteps(7 as unknown as string))).toThrow(TypeError);
  });
});
