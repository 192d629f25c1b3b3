import { describe, expect, it } from 'vitest';
import { stoveFit } from '../../../core/checks/stove-fit.js';
import type { StoveInput } from '../../../core/model/pot.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const on = (base: number, stove: StoveInput) =>
  findingOf(stoveFit, factsOfPot({ diameter: base, height: 100 }, {}, stove));

describe('an open flame, common practice, no source', () => {
  it.each([
    // The burner is at least a third narrower than the pot, at best half.
    [90, 60, 'holds-up', 'fits'],
    [120, 60, 'holds-up', 'fits'],
    [120.1, 60, 'costs-you', 'too-wide'],
    [89.9, 60, 'costs-you', 'flame-narrow'],
    [72, 60, 'costs-you', 'flame-narrow'],
    [71.9, 60, 'falls-short', 'flame-out'],
  ] as const)('%d mm over a burner of %d mm: %s', (base, burnerDiameter, grade, key) => {
    for (const type of ['alcohol', 'wood', 'solid-fuel'] as const)
      expect(on(base, { type, burnerDiameter })).toMatchObject({ grade, key });
  });

  it('gives both cures as figures', () => {
    const finding = on(80, { type: 'alcohol', burnerDiameter: 60 });
    expect(finding.fix).toBe('A pot of 90–120\u00a0mm across, or a burner of 40–53\u00a0mm.');
    expect(finding.margin).toBe('1.33 of 1.5–2 burners');
    expect(finding.sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '80\u00a0mm'],
      ['÷', '60\u00a0mm'],
      ['=', '1.33'],
    ]);
    expect(on(100, { type: 'wood', burnerDiameter: 60 }).fix).toBeNull();
  });

  it('goes by the base, not the rim', () => {
    expect(
      findingOf(stoveFit, factsOfPot({ diameter: 140, baseDiameter: 100 }, {}, { type: 'wood', burnerDiameter: 60 }))
        .margin,
    ).toBe('1.67 of 1.5–2 burners');
  });

  it('answers with the burners it suits where none is given', () => {
    expect(on(80, { type: 'wood' })).toMatchObject({
      grade: 'cant-tell',
      message: 'No burner width is given: this pot suits a burner of 40–53\u00a0mm.',
      question: { field: 'burnerMm' },
    });
    const list = factsOf({}, [item('pot', { diameterMm: stated(80) }), item('stove', { stoveType: stated('wood') })]);
    expect(findingOf(stoveFit, list).question).toMatchObject({ item: 1 });
  });
});

describe('a burner with arms, common practice, no source', () => {
  it.each([
    [{ type: 'gas', burnerDiameter: 40 }, 60, 'holds-up', 'fits'],
    [{ type: 'gas', burnerDiameter: 40 }, 59, 'costs-you', 'flame-narrow'],
    [{ type: 'gas', burnerDiameter: 40, armInner: 60 }, 75, 'holds-up', 'fits'],
    [{ type: 'gas', burnerDiameter: 40, armInner: 60 }, 74, 'can-hurt', 'arms-small'],
    [{ type: 'gas', burnerDiameter: 40, armSpan: 100 }, 160, 'holds-up', 'fits'],
    [{ type: 'gas', burnerDiameter: 40, armSpan: 100 }, 161, 'costs-you', 'arms-wide'],
    [{ type: 'gas', form: 'upright', burnerDiameter: 40 }, 200, 'holds-up', 'fits'],
    [{ type: 'gas', form: 'upright', burnerDiameter: 40 }, 201, 'can-hurt', 'upright-wide'],
    [{ type: 'gas', form: 'remote', burnerDiameter: 40 }, 260, 'holds-up', 'fits'],
    [{ type: 'liquid-fuel', burnerDiameter: 60 }, 79, 'costs-you', 'flame-narrow'],
    [{ type: 'gas' }, 120, 'cant-tell', 'burner-missing'],
    [{ burnerDiameter: 40 }, 120, 'holds-up', 'fits'],
  ] as const)('%j under %d mm: %s', (stove, base, grade, key) => {
    expect(on(base, stove)).toMatchObject({ grade, key });
  });

  it('gives the cure and the caution', () => {
    expect(on(230, { type: 'gas', form: 'upright' })).toMatchObject({
      fix: 'A pot 200\u00a0mm across or less, or a stove on a hose.',
      cautions: [expect.stringContaining('let it cool')],
    });
    const small = on(70, { type: 'gas', burnerDiameter: 40, armInner: 60, armSpan: 140 });
    expect(small).toMatchObject({
      fix: 'A pot 75\u00a0mm across or more, or a grate over the arms.',
      cautions: [expect.stringContaining('Boiling water')],
      margin: '70 of 75–224\u00a0mm',
    });
    expect(small.sum.map(({ text }) => text)).toEqual(['70\u00a0mm', '60\u00a0mm', '75\u00a0mm', '224\u00a0mm']);
    expect(on(50, { type: 'gas', burnerDiameter: 40 }).fix).toBe(
      'A pot 60\u00a0mm across or more, or a burner of 30\u00a0mm or less.',
    );
    expect(on(200, { type: 'gas', armSpan: 100 })).toMatchObject({
      fix: 'A pot 160\u00a0mm across or less, or a stove with wider arms.',
      margin: '200 of 160\u00a0mm',
    });
  });
});

describe('where it cannot judge', () => {
  it('asks for the width only where the stove has one', () => {
    expect(findingOf(stoveFit, factsOf({}, [item('pot'), item('stove', { burnerMm: stated(50) })]))).toMatchObject({
      grade: 'cant-tell',
      key: 'base-missing',
      question: { item: 0, field: 'diameterMm' },
    });
    expect(findingsOf(stoveFit, factsOf({}, [item('pot'), item('stove')]))).toEqual([]);
  });

  it('is silent without a stove, without a pot, and on a pot locked to its burner', () => {
    expect(findingsOf(stoveFit, factsOfPot({ diameter: 100 }))).toEqual([]);
    expect(findingsOf(stoveFit, factsOf({}, [item('stove')]))).toEqual([]);
    expect(findingsOf(stoveFit, factsOfPot({ diameter: 100 }, {}, { type: 'integrated', burnerDiameter: 60 }))).toEqual(
      [],
    );
  });
});
