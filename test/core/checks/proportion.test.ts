import { describe, expect, it } from 'vitest';
import { proportion } from '../../../core/checks/proportion.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const hung = (width: number, height: number) =>
  findingsOf(proportion, factsOfPot({ diameter: width, height, bail: true }))[0];
const standing = (
  width: number,
  height: number,
  type?: 'gas' | 'alcohol' | 'wood' | 'solid-fuel' | 'liquid-fuel',
  lid?: boolean,
) =>
  findingOf(
    proportion,
    factsOfPot({ diameter: width, height, bail: false, ...(lid === undefined ? {} : { lid }) }, {}, type && { type }),
  );

describe('on a bail, common practice, no source', () => {
  it.each([
    // Two thirds as wide as tall is the best compromise.
    [100, 150, 'holds-up', 'bail-good'],
    [80, 100, 'holds-up', 'bail-good'],
    [81, 100, 'costs-you', 'bail-wide'],
    [110, 100, 'costs-you', 'bail-wide'],
    [55, 100, 'holds-up', 'bail-good'],
    [54, 100, 'costs-you', 'bail-narrow'],
    [45, 100, 'costs-you', 'bail-narrow'],
    [44.9, 100, 'falls-short', 'bail-can'],
    // A drink can, 66 × 168 mm.
    [66, 168, 'falls-short', 'bail-can'],
  ] as const)('%d × %d mm: %s', (width, height, grade, key) => {
    expect(hung(width, height)).toMatchObject({ grade, key });
  });

  it('over 1.10 leaves the word to hanging', () => {
    expect(hung(111, 100)).toBeUndefined();
  });

  it('goes by the bail rule at a fire too', () => {
    expect(findingOf(proportion, factsOfPot({ diameter: 100, height: 150 }, { cookAt: 'fire' })).key).toBe('bail-good');
  });

  it('shows the arithmetic and a width that suits', () => {
    const finding = hung(90, 200)!;
    expect(finding.margin).toBe('0.45 as wide as tall');
    expect(finding.fix).toBe('At this height a pot 110–160\u00a0mm across.');
    expect(finding.sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '90\u00a0mm'],
      ['÷', '200\u00a0mm'],
      ['=', '0.45'],
      ['', '8.9'],
    ]);
  });
});

describe('on a stove, common practice, no source', () => {
  it.each([
    [80, 100, undefined, undefined, 'holds-up', 'stove-good'],
    [220, 100, undefined, undefined, 'holds-up', 'stove-good'],
    [221, 100, undefined, undefined, 'costs-you', 'pan'],
    [79, 100, 'alcohol', true, 'costs-you', 'narrow-spread'],
    [79, 100, 'wood', true, 'costs-you', 'narrow-spread'],
    [79, 100, 'solid-fuel', true, 'costs-you', 'narrow-spread'],
    [79, 100, 'gas', true, 'holds-up', 'narrow-lidded'],
    [79, 100, 'liquid-fuel', true, 'holds-up', 'narrow-lidded'],
    [79, 100, 'gas', false, 'costs-you', 'narrow-open'],
    [79, 100, 'gas', undefined, 'costs-you', 'narrow-open'],
    [79, 100, undefined, true, 'cant-tell', 'stove-missing'],
    [50, 100, 'alcohol', true, 'costs-you', 'narrow-spread'],
    [49.9, 100, 'gas', true, 'falls-short', 'stove-can'],
    [66, 168, 'alcohol', undefined, 'falls-short', 'stove-can'],
  ] as const)('%d × %d mm on %s, lid %s: %s', (width, height, type, lid, grade, key) => {
    expect(standing(width, height, type, lid)).toMatchObject({ grade, key });
  });

  it('names the cure', () => {
    expect(standing(230, 100).fix).toBe('At this width a pot 105\u00a0mm tall or more.');
    expect(standing(79, 100, 'alcohol').fix).toBe('At this height a pot 80–220\u00a0mm across.');
    expect(standing(90, 100).fix).toBeNull();
    expect(standing(79, 100).fix).toBeNull();
  });

  it('asks for the stove of a list', () => {
    const narrow = item('pot', { diameterMm: stated(79), heightMm: stated(100) });
    expect(findingOf(proportion, factsOf({}, [narrow, item('stove')])).question).toMatchObject({
      item: 1,
      field: 'stoveType',
      text: 'What does the stove burn?',
    });
  });
});

describe('where it cannot judge', () => {
  it('asks for the size', () => {
    expect(findingOf(proportion, factsOf({}, [item('pot', { diameterMm: stated(90) })]))).toMatchObject({
      grade: 'cant-tell',
      key: 'size-missing',
      question: { item: 0, field: 'diameterMm' },
    });
    expect(findingOf(proportion, factsOf({}, [item('pot', { heightMm: stated(90) })])).grade).toBe('cant-tell');
  });

  it('is silent on a tin, on a pot locked to its burner, and without a pot', () => {
    expect(
      findingsOf(proportion, factsOf({}, [item('pot', { boxMm: stated([170, 130] as const), heightMm: stated(60) })])),
    ).toEqual([]);
    expect(findingsOf(proportion, factsOfPot({ diameter: 66, height: 168 }, {}, { type: 'integrated' }))).toEqual([]);
    expect(findingsOf(proportion, factsOf({}, [item('bowl')]))).toEqual([]);
  });
});
