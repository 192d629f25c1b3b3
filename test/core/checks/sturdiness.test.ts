import { describe, expect, test } from 'vitest';
import { sturdiness } from '../../../core/checks/sturdiness.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const sized = (diameter: number, height: number, mass: number) => factsOfPot({ diameter, height, mass });

describe('sturdiness', () => {
  test.each([
    'beer can pot',
    'Soda-can mug',
    'drink can',
    'drinks can',
    'Bierdose',
    'Dose',
    'canette',
    'lata de cerveza',
  ])('“%s” is a drink can by its words', (name) => {
    expect(findingOf(sturdiness, factsOfPot({ name, capacity: 500 }))).toMatchObject({
      grade: 'costs-you',
      message: 'A drink can for a pot dents and splits.',
      margin: 'a drink can',
      fix: 'A pot made for cooking.',
      evidence: [{ quote: name, found: 'typed' }],
      cites: ['cp-can-pot'],
      item: null,
    });
  });

  test.each(['canteen cup', 'can pot', 'Dosenöffner', 'scandose', 'soda', 'cannery'])(
    '“%s” is no drink can',
    (name) => {
      expect(findingsOf(sturdiness, factsOfPot({ name, capacity: 500 }))).toEqual([]);
    },
  );

  test('a drink can is known by its shape and mass', () => {
    expect(plainly(findingOf(sturdiness, sized(66, 168, 20)))).toMatchObject({
      grade: 'costs-you',
      key: 'can-shape',
      message: '66 × 168 mm at 20 g is a drink can: it dents and splits.',
      margin: 'a drink can',
      fix: 'A pot made for cooking.',
    });
  });

  test.each([
    [61, 168],
    [71, 168],
    [66, 163],
    [66, 173],
    [66, 110],
    [66, 120],
    [66, 117],
    [66, 127],
  ])('%i × %i mm at 25 g is within 5 mm of one', (diameter, height) => {
    expect(findingOf(sturdiness, sized(diameter, height, 25)).key).toBe('can-shape');
  });

  test.each([
    [60.9, 115, 25],
    [71.1, 115, 25],
    [66, 109.9, 25],
    [66, 127.1, 25],
    [66, 115, 25.1],
  ])('%d × %d mm at %d g is not', (diameter, height, mass) => {
    expect(findingsOf(sturdiness, sized(diameter, height, mass))).toEqual([]);
  });

  test('162 and 174 mm are no height of a can; the mass still tells', () => {
    expect(findingOf(sturdiness, sized(66, 162.9, 20)).key).toBe('thin');
    expect(findingOf(sturdiness, sized(66, 173.1, 20)).key).toBe('thin');
  });

  test('the mass for what it holds tells of a thin one', () => {
    const finding = plainly(findingOf(sturdiness, factsOfPot({ capacity: 750, mass: 29 })));
    // By hand: 29 ÷ 750 = 0.0387 g/mL; 0.04 × 750 = 30 g.
    expect(finding).toMatchObject({
      grade: 'costs-you',
      key: 'thin',
      message: '29 g for 750 mL is as thin as a drink can: it dents and splits.',
      margin: '0.039 of 0.04 g/mL',
      fix: 'A pot of this size that weighs 30 g or more.',
    });
    expect(finding.sum.map(({ sign, text, label, grounds }) => [sign, text, label, grounds])).toEqual([
      ['', '29 g', 'mass', 'stated'],
      ['÷', '750 mL', 'to the brim', 'stated'],
      ['=', '0.039 g/mL', 'mass for what it holds', 'worked-out'],
    ]);
    expect(findingsOf(sturdiness, factsOfPot({ capacity: 750, mass: 30 }))).toEqual([]);
  });

  test('over two litres the mass does not tell', () => {
    expect(findingOf(sturdiness, factsOfPot({ capacity: 2000, mass: 79 })).fix).toContain('80');
    expect(findingsOf(sturdiness, factsOfPot({ capacity: 2001, mass: 79 }))).toEqual([]);
  });

  test('each pot of a list is judged by itself', () => {
    const thin = item('pot', { capacitiesMl: [stated(500)], massG: stated(15) });
    const stout = item('pot', { capacitiesMl: [stated(1000)], massG: stated(150) });
    expect(findingsOf(sturdiness, factsOf({}, [stout, thin])).map((finding) => finding.item)).toEqual([1]);
  });

  test.each([
    ['its mass is not known', { capacity: 500, diameter: 66, height: 168 }],
    ['only its mass is known', { mass: 20 }],
    ['its height is not known', { diameter: 66, mass: 20 }],
  ])('is silent where %s', (_, pot) => {
    expect(findingsOf(sturdiness, factsOfPot(pot))).toEqual([]);
  });
});
