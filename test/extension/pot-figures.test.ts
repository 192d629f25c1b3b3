import { describe, expect, it } from 'vitest';
import { potFigures } from '../../extension/pot-figures.js';

/** What a product page says, and the fields that come of it. */
const PAGES: readonly [name: string, text: string, pot: object, stove?: object][] = [
  [
    'a table of figures that never names the pot',
    'Capacity\t1.3 L\nDiameter\t140 mm\nHeight\t90 mm\nWeight\t210 g\nMaterial\tTitanium',
    { capacity: '1.3 L', diameter: '140 mm', height: '90 mm', mass: '210 g', material: 'titanium' },
  ],
  [
    'lines with colons, a diameter by height, bail and lid',
    'Capacity: 1300 ml\nDimensions: Ø 14 × 9 cm\nWeight: 7.4 oz\nMaterial: hard-anodised aluminium\nBail handle, lid included',
    {
      capacity: '1300 ml',
      diameter: '140',
      height: '9 cm',
      mass: '7.4 oz',
      material: 'aluminium',
      bail: true,
      lid: true,
    },
  ],
  [
    'a label on one line and its figure on the next',
    'Specs\nVolume\n1.8 L\nHeight\n127 mm\nMaterial\nAluminum',
    { capacity: '1.8 L', height: '127 mm', material: 'aluminium' },
  ],
  [
    'a sentence',
    'A titanium pot holding 750 ml. It measures 95 mm across by 110 mm tall and weighs 103 g with its lid.',
    { capacity: '750 ml', diameter: '95 mm', height: '110 mm', mass: '103 g', material: 'titanium', lid: true },
  ],
  [
    'another language, with a decimal comma',
    'Volumen 1,3 l\nDurchmesser 140 mm\nHöhe 90 mm\nGewicht 210 g\nMaterial Edelstahl\nDeckel ja',
    { capacity: '1,3 l', diameter: '140 mm', height: '90 mm', mass: '210 g', material: 'steel', lid: true },
  ],
];

describe('the figures of one pot', () => {
  it.each(PAGES)('are found in %s', (_, text, pot) => {
    expect(potFigures(text)?.pot).toEqual(pot);
  });

  it('are a guess, and said to be one, where the page does not tell width from height', () => {
    const figures = potFigures('Volume 1.8 L\nDimensions 7.25 x 5 in');
    expect(figures?.pot).toHaveProperty('height');
    expect(figures?.guesses).toHaveLength(1);
  });

  it('are none where there is none', () => {
    expect(potFigures('Free delivery over 50\nIn stock\nRead 14 reviews')).toBeUndefined();
    expect(potFigures('')).toBeUndefined();
  });
});
