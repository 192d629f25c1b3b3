import { describe, expect, it } from 'vitest';
import { lid } from '../../../core/checks/lid.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf } from './facts.js';

describe('a lid', () => {
  it('holds up where there is one, on the pot or elsewhere on the list', () => {
    expect(findingOf(lid, factsOfPot({ capacity: 1000, lid: true }))).toMatchObject({
      grade: 'holds-up',
      key: 'covered',
    });
    expect(findingOf(lid, factsOf({}, [item('pot'), item('lid')])).grade).toBe('holds-up');
  });

  it('costs heat, with the figure, and falls short for snow', () => {
    // Engineering ToolBox, open tanks: 9.46 kW/m² at 93.3 °C, 11.36 at 98.9 °C; 14 cm across are 154 cm², so 146 to 175 W.
    const finding = findingOf(
      lid,
      factsOfPot({ capacity: 1000, diameter: 140, height: 70, lid: false }, {}, { type: 'gas' }),
    );
    expect(finding).toMatchObject({
      grade: 'costs-you',
      key: 'none-figure',
      fix: 'A lid of any kind: foil or a plate will do.',
    });
    const { value } = finding.figures['watts'] as { value: number };
    expect(value).toBeGreaterThan(146);
    expect(value).toBeLessThan(175);
    expect(finding.message).toBe(
      `No lid: near the boil the open top gives away ${Math.round(value)}\u00a0W, ${Math.round((finding.figures['grams'] as { value: number }).value)}\u00a0g of fuel an hour.`,
    );
    expect(finding.sum.map(({ sign, text }) => [sign, text])).toEqual([
      ['', '10\u00a0kW/m²'],
      ['×', '154\u00a0cm²'],
      ['=', `${Math.round(value)}\u00a0W`],
      ['', '6–30%'],
    ]);
    expect(findingOf(lid, factsOfPot({ diameter: 140, height: 70, lid: false }, { waterFrom: 'snow' }))).toMatchObject({
      grade: 'falls-short',
      key: 'none-snow',
    });
    expect(findingOf(lid, factsOfPot({ lid: false }, { waterFrom: 'snow' })).grade).toBe('falls-short');
    expect(findingOf(lid, factsOfPot({ lid: false }, { waterFrom: 'either' })).grade).toBe('costs-you');
  });

  it('weighs the loss in the fuel of the stove', () => {
    const grams = (type: 'gas' | 'alcohol') =>
      (
        findingOf(lid, factsOfPot({ diameter: 140, height: 70, lid: false }, {}, { type })).figures['grams'] as {
          value: number;
        }
      ).value;
    // 160 W for an hour are 576 kJ: at 45.6 MJ/kg (CRC Handbook, isobutane) and half of it used, some 25 g; ethanol has 26.8 MJ/kg.
    expect(grams('gas')).toBeGreaterThan(18);
    expect(grams('gas')).toBeLessThan(32);
    expect(grams('alcohol')).toBeGreaterThan(grams('gas') * 1.4);
  });

  it('gives no figure where the width is not known', () => {
    expect(findingOf(lid, factsOfPot({ capacity: 1000, lid: false }))).toMatchObject({ key: 'none', sum: [] });
  });

  it('is missing from a list that names none, and asked of a typed pot', () => {
    const listed = findingOf(lid, factsOf({}, [item('pot', { capacitiesMl: [stated(1000)] })]));
    expect(listed).toMatchObject({ grade: 'costs-you', key: 'none' });
    expect(listed.evidence).toContainEqual({ quote: 'no lid', found: 'absent' });
    expect(findingOf(lid, factsOfPot({ capacity: 1000 }))).toMatchObject({
      grade: 'cant-tell',
      question: { field: 'lid', text: '“pot”: has it a lid?' },
    });
  });

  it('is silent without a pot and on one locked to its burner', () => {
    expect(findingsOf(lid, factsOf({}, [item('stove')]))).toEqual([]);
    expect(findingsOf(lid, factsOfPot({ capacity: 800 }, {}, { type: 'integrated' }))).toEqual([]);
  });
});
