import { describe, expect, test } from 'vitest';
import { material } from '../../../core/checks/material.js';
import type { Material } from '../../../core/model/item.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

const potOf = (made: Material) => item('pot', { capacitiesMl: [stated(1000)], material: stated(made) });
const STOVE = item('stove', { stoveType: stated('gas') });

describe('material', () => {
  test.each([
    ['simmer', 'titanium, to simmer'],
    ['scratch', 'titanium, to cook from scratch'],
  ] as const)('titanium scorches when they %s', (mealStyle, margin) => {
    expect(findingOf(material, factsOf({ mealStyle }, [potOf('titanium'), STOVE]))).toMatchObject({
      grade: 'costs-you',
      message: 'Bare titanium has hot spots: what simmers or fries in it scorches.',
      margin,
      fix: 'A pot of steel, enamel or aluminium. Or boil-only in this one.',
      cautions: [],
      assumptions: [],
      cites: ['cp-titanium-scorch'],
      item: 0,
      evidence: [{ line: 1, found: 'in-list' }],
    });
  });

  test('a meal style read from the text counts', () => {
    const facts = factsOf({}, [potOf('titanium'), STOVE], { mealStyle: stated('simmer') });
    expect(findingOf(material, facts).grade).toBe('costs-you');
  });

  test.each(['snow', 'either'] as const)('titanium scorches where the water is %s', (waterFrom) => {
    expect(findingOf(material, factsOf({ waterFrom, mealStyle: 'boil-only' }, [potOf('titanium')]))).toMatchObject({
      grade: 'costs-you',
      message: 'Bare titanium has hot spots: dry snow in it scorches and tastes of it.',
      margin: 'titanium, to melt snow',
      fix: 'A pot of steel, enamel or aluminium.',
      cautions: ['A pot of dry snow scorches on any stove. Start with water in it, feed the snow, stir.'],
      assumptions: [],
    });
  });

  test('snow assumed from the winter is told as an assumption', () => {
    expect(findingOf(material, factsOf({ season: 'winter' }, [potOf('titanium')])).assumptions).toEqual([
      {
        what: 'where the water comes from',
        because: 'in winter snow may be the only water',
        replaceWith: 'say where the water comes from: liquid, snow or either',
      },
    ]);
  });

  test('with both, the meal is told and the snow cautioned', () => {
    const finding = findingOf(material, factsOf({ mealStyle: 'simmer', season: 'winter' }, [potOf('titanium')]));
    expect(finding).toMatchObject({ key: 'scorches', margin: 'titanium, to simmer', assumptions: [] });
    expect(finding.cautions).toHaveLength(1);
  });

  test('titanium holds up where they are known to boil only, and is not spoken of by default', () => {
    expect(findingOf(material, factsOf({ mealStyle: 'boil-only' }, [potOf('titanium'), STOVE]))).toMatchObject({
      grade: 'holds-up',
      message: 'The pot of titanium takes this cooking.',
    });
    expect(findingsOf(material, factsOf({}, [potOf('titanium'), STOVE]))).toEqual([]);
  });

  test('aluminium at a fire costs, where the fire is known', () => {
    expect(findingOf(material, factsOf({ cookAt: 'fire' }, [potOf('aluminium')]))).toMatchObject({
      grade: 'costs-you',
      message: 'Aluminium over a fire: empty, it can melt through.',
      margin: 'aluminium, at a fire',
      fix: 'A pot of steel or enamel.',
      cautions: ['An empty pot over a fire heats in moments. Fill it first, then hang it.'],
      cites: ['cp-aluminium-fire'],
      item: 0,
    });
    // Without a stove a fire is assumed, which is no cause to speak.
    expect(findingOf(material, factsOf({}, [potOf('aluminium')])).grade).toBe('holds-up');
    expect(findingOf(material, factsOf({ cookAt: 'stove' }, [potOf('aluminium'), STOVE])).grade).toBe('holds-up');
    expect(findingOf(material, factsOf({ cookAt: 'fire' }, [potOf('steel')])).grade).toBe('holds-up');
    expect(findingOf(material, factsOf({ cookAt: 'fire', mealStyle: 'boil-only' }, [potOf('titanium')])).grade).toBe(
      'holds-up',
    );
  });

  test.each(['plastic', 'wood'] as const)('a pot of %s does not cook', (made) => {
    expect(findingOf(material, factsOf({}, [potOf(made), STOVE]))).toMatchObject({
      grade: 'falls-short',
      message: `A pot of ${made} over a flame melts or burns.`,
      margin: made,
      fix: 'A pot of steel, enamel or aluminium.',
      cites: ['cp-plastic-pot'],
    });
  });

  test.each(['steel', 'iron', 'enamel', 'aluminium'] as const)('%s holds up whatever they cook', (made) => {
    expect(
      findingOf(material, factsOf({ mealStyle: 'scratch', waterFrom: 'snow' }, [potOf(made), STOVE])),
    ).toMatchObject({ grade: 'holds-up', message: `The pot of ${made} takes this cooking.`, margin: made, fix: null });
  });

  test.each([
    ['nothing is said', item('pot', { capacitiesMl: [stated(1000)] })],
    ['only “metal” is said', potOf('metal')],
  ])('where %s of the material, the question settles it', (_, pot) => {
    for (const mealStyle of ['simmer', 'scratch'] as const) {
      const finding = findingOf(material, factsOf({ mealStyle }, [pot, STOVE]));
      expect(finding).toMatchObject({
        grade: 'cant-tell',
        margin: 'material not given',
        cites: ['cp-titanium-scorch'],
      });
      expect(finding.message).toBe('What the pot is made of is not said: bare titanium scorches, other metals seldom.');
      expect(finding.question).toEqual({
        item: 0,
        field: 'material',
        message: 'question',
        text: 'What is it made of?',
      });
    }
    expect(findingsOf(material, factsOf({}, [pot, STOVE]))).toEqual([]);
    expect(findingsOf(material, factsOf({ mealStyle: 'boil-only' }, [pot, STOVE]))).toEqual([]);
  });

  test('a typed pot is judged and asked about without an item', () => {
    expect(
      findingOf(material, factsOfPot({ capacity: 700, material: 'titanium' }, { mealStyle: 'simmer' })),
    ).toMatchObject({ grade: 'costs-you', item: null });
    expect(findingOf(material, factsOfPot({ capacity: 700 }, { mealStyle: 'simmer' })).question).toEqual({
      field: 'material',
      message: 'question',
      text: 'What is it made of?',
    });
  });

  test('the largest pot is judged, or the first where no size is known', () => {
    const small = item('pot', { capacitiesMl: [stated(500)], material: stated('titanium') });
    expect(findingOf(material, factsOf({ mealStyle: 'simmer' }, [small, potOf('steel')])).item).toBe(1);
    const unsized = item('pot', { material: stated('titanium') });
    expect(findingOf(material, factsOf({ mealStyle: 'simmer' }, [unsized])).grade).toBe('costs-you');
  });

  test('is silent without a pot', () => {
    expect(findingsOf(material, factsOf({ mealStyle: 'simmer' }, [STOVE]))).toEqual([]);
  });
});
