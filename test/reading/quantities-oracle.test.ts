import { createRequire } from 'node:module';
import { convert } from 'convert';
import fc from 'fast-check';
import { extractMeasurements } from 'parse-ingredient';
import { describe, expect, it } from 'vitest';
import { parseMeasure } from '../../core/index.js';

/**
 * Numbers and units as people write them, against three general-purpose libraries: `convert` 8.0.2 for the size of each unit,
 * parse-ingredient 3.0.0 (`extractMeasurements`) for what number and unit an English text holds, and recognizers-text 1.3.1
 * (`recognizeDimension`) for those of a text with decimal commas. Where one of them is known to differ, the case stands in
 * `DISAGREEMENTS` with its reason.
 */
const { Culture, recognizeDimension } = createRequire(import.meta.url)(
  '@microsoft/recognizers-text-number-with-unit',
) as Recognisers;

interface Recognisers {
  readonly Culture: Readonly<Record<string, string>>;
  readonly recognizeDimension: (
    text: string,
    culture: string,
  ) => readonly { readonly resolution: { readonly value: string; readonly unit: string } | null }[];
}

type Dimension = 'volume' | 'mass' | 'length';

interface UnitCase {
  readonly dimension: Dimension;
  /** As `convert` names it. */
  readonly name: Parameters<typeof convert>[1];
  readonly locale: 'en-US' | 'en-GB';
  /** As people write it. */
  readonly written: readonly string[];
}

const BASE = { volume: 'ml', mass: 'g', length: 'mm' } as const;

const unit = (dimension: Dimension, name: string, written: string, locale: 'en-US' | 'en-GB' = 'en-US'): UnitCase => ({
  dimension,
  name: name as UnitCase['name'],
  locale,
  written: written.split(', '),
});

const UNITS = [
  unit('volume', 'milliliter', 'ml, mL, ML, milliliters'),
  unit('volume', 'deciliter', 'dl'),
  unit('volume', 'liter', 'l, L, liter, liters'),
  unit('volume', 'US fluid ounce', 'fl oz, fluid ounces'),
  unit('volume', 'cup', 'cup, cups'),
  unit('volume', 'pint', 'pt, pint, pints'),
  unit('volume', 'quart', 'qt, qts, quart, quarts'),
  unit('volume', 'gallon', 'gal, gallons'),
  unit('mass', 'gram', 'g, gram, grams'),
  unit('mass', 'kilogram', 'kg, kilograms'),
  unit('mass', 'ounce', 'oz, ounce, ounces'),
  unit('mass', 'pound', 'lb, lbs, pound, pounds'),
  unit('length', 'millimeter', 'mm, millimeters'),
  unit('length', 'centimeter', 'cm, centimeters'),
  unit('length', 'inch', 'in, inch, inches, "'),
  unit('length', 'foot', 'ft, foot, feet'),
];

/** Only `convert` knows these. */
const IMPERIAL = [
  unit('volume', 'imperial fluid ounce', 'fl oz', 'en-GB'),
  unit('volume', 'imperial pint', 'pt, pint, pints', 'en-GB'),
  unit('volume', 'imperial quart', 'qt, quarts', 'en-GB'),
  unit('volume', 'imperial gallon', 'gal, gallons', 'en-GB'),
];

/** Only `convert` knows these: the units of metric kitchens. */
const KITCHEN = [
  unit('volume', 'centiliter', 'cl, centiliters'),
  unit('mass', 'hectogram', 'hg'),
  unit('mass', 'decagram', 'dkg'),
];

/** A number and how it is written: no three places after the point, which could part thousands. */
const NUMBERS = fc.oneof(
  fc.integer({ min: 1, max: 2500 }).map((value) => ({ value, text: String(value) })),
  fc.integer({ min: 1, max: 9999 }).map((n) => ({ value: n / 100, text: (n / 100).toFixed(2) })),
  fc.integer({ min: 1, max: 999 }).map((n) => ({ value: n / 10, text: (n / 10).toFixed(1) })),
  fc
    .record({
      whole: fc.integer({ min: 0, max: 12 }),
      part: fc.constantFrom([1, 2], [1, 3], [2, 3], [1, 4], [3, 4], [5, 8]),
    })
    .map(({ whole, part: [top = 1, bottom = 2] }) => ({
      value: whole + top / bottom,
      text: `${whole === 0 ? '' : `${whole} `}${top}/${bottom}`,
    })),
  fc
    .record({
      whole: fc.integer({ min: 0, max: 12 }),
      part: fc.constantFrom(['½', 0.5], ['¼', 0.25], ['¾', 0.75], ['⅜', 0.375]),
    })
    .map(({ whole, part }) => ({ value: whole + Number(part[1]), text: `${whole === 0 ? '' : whole}${part[0]}` })),
);

const quantities = (units: readonly UnitCase[]) =>
  fc.record({
    unit: fc
      .constantFrom(...units)
      .chain((one) => fc.record({ of: fc.constant(one), written: fc.constantFrom(...one.written) })),
    number: NUMBERS,
  });

/** Binary rounding on both sides, and our twelve digits. */
const near = (value: number, other: number) => Math.abs(value - other) <= 1e-9 * Math.abs(other);

const textOf = (number: string, written: string) => (written === '"' ? `${number}"` : `${number} ${written}`);

describe('the size of a unit is that of convert', () => {
  it.each([...UNITS, ...IMPERIAL, ...KITCHEN])('$name ($locale)', ({ dimension, name, locale, written }) => {
    for (const word of written)
      expect(parseMeasure(textOf('7', word), dimension, locale)?.value, word).toBeCloseTo(
        convert(7, name).to(BASE[dimension] as never) as unknown as number,
        6,
      );
  });

  it('for any number in any unit', () => {
    fc.assert(
      fc.property(quantities([...UNITS, ...IMPERIAL, ...KITCHEN]), ({ unit: { of, written }, number }) => {
        const read = parseMeasure(textOf(number.text, written), of.dimension, of.locale);
        const truth = convert(number.value, of.name).to(BASE[of.dimension] as never) as unknown as number;
        expect(near(read?.value ?? NaN, truth), `${textOf(number.text, written)}: ${read?.value} for ${truth}`).toBe(
          true,
        );
      }),
      { numRuns: 2000 },
    );
  });
});

/** What parse-ingredient makes of a text that holds one quantity, in mL, g or mm. */
function referenceOf(text: string, dimension: Dimension): { value: number; most?: number } | undefined {
  const [found, ...more] = extractMeasurements(text);
  if (found === undefined || more.length > 0 || found.quantity === null) return undefined;
  const id = found.unitOfMeasureID === 'fluid ounce' ? 'US fluid ounce' : found.unitOfMeasureID;
  const size = (value: number) =>
    convert(value, id as UnitCase['name']).to(BASE[dimension] as never) as unknown as number;
  const value = size(found.quantity);
  return found.quantity2 === null ? { value } : { value, most: size(found.quantity2) };
}

/** parse-ingredient rounds to three places unless told not to, and its thirds with it. */
const alike = (a: number | undefined, b: number | undefined) =>
  a !== undefined && b !== undefined && Math.abs(a - b) <= 0.002 * Math.abs(b);

/** Texts on which the two differ, what each says, and why ours stands. */
const DISAGREEMENTS: readonly {
  readonly text: string;
  readonly dimension: Dimension;
  readonly locale?: string;
  readonly ours: number;
  readonly theirs: number | undefined;
  readonly because: string;
}[] = [
  { text: '450ml', dimension: 'volume', ours: 450, theirs: undefined, because: 'It wants a space before the unit.' },
  { text: '2 litres', dimension: 'volume', ours: 2000, theirs: undefined, because: 'It knows the US spelling only.' },
  { text: '75 cl', dimension: 'volume', ours: 750, theirs: undefined, because: 'It has no centilitre.' },
  { text: '9"', dimension: 'length', ours: 228.6, theirs: undefined, because: 'It has no sign for the inch.' },
  {
    text: '1.350 g',
    dimension: 'mass',
    locale: 'de',
    ours: 1350,
    theirs: 1.35,
    because: 'A point parts thousands before three digits of grams.',
  },
  {
    text: '1,5 l',
    dimension: 'volume',
    locale: 'fr',
    ours: 1500,
    theirs: 15_000,
    because: 'It takes the comma for a mark of thousands unless told the language.',
  },
  {
    text: '2 lb 8 oz',
    dimension: 'mass',
    ours: 1133.980925,
    theirs: undefined,
    because: 'It reads two quantities; pounds take the ounces after them.',
  },
];

const unknownToIt = new Set(DISAGREEMENTS.flatMap(({ text }) => (text === '9"' ? ['"'] : [])));

describe('the number and unit of a text are those of extractMeasurements', () => {
  const written = UNITS.map((one) => ({ ...one, written: one.written.filter((word) => !unknownToIt.has(word)) }));

  it('for any number in any unit', () => {
    fc.assert(
      fc.property(quantities(written), ({ unit: { of, written: word }, number }) => {
        const text = textOf(number.text, word);
        const reference = referenceOf(text, of.dimension);
        const read = parseMeasure(text, of.dimension, of.locale);
        expect(alike(read?.value, reference?.value), `${text}: ${read?.value}, they ${reference?.value}`).toBe(true);
      }),
      { numRuns: 2000 },
    );
  });

  it('for ranges', () => {
    const ranges = fc.record({
      unit: fc
        .constantFrom(...written)
        .chain((one) => fc.record({ of: fc.constant(one), word: fc.constantFrom(...one.written) })),
      least: fc.integer({ min: 1, max: 400 }),
      more: fc.integer({ min: 1, max: 100 }),
      joint: fc.constantFrom('-', '–', ' to ', ' - '),
    });
    fc.assert(
      fc.property(ranges, ({ unit: { of, word }, least, more, joint }) => {
        fc.pre(more <= least);
        const text = `${least}${joint}${least + more} ${word}`;
        const reference = referenceOf(text, of.dimension);
        const read = parseMeasure(text, of.dimension, of.locale);
        expect(
          alike(read?.value, reference?.value) && alike(read?.most, reference?.most),
          `${text}: ${JSON.stringify([read, reference])}`,
        ).toBe(true);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(DISAGREEMENTS)('but for $text: $because', ({ text, dimension, locale, ours, theirs }) => {
    expect(parseMeasure(text, dimension, locale)?.value).toBeCloseTo(ours, 6);
    const reference = referenceOf(text, dimension)?.value;
    if (theirs === undefined) expect(reference).toBeUndefined();
    else expect(reference).toBeCloseTo(theirs, 6);
  });
});

/** Units as other languages name them, with the recogniser's name for each. */
const ABROAD: readonly {
  readonly culture: string;
  readonly locale: string;
  readonly units: readonly (readonly [written: string, theirs: string, dimension: Dimension, name: UnitCase['name']])[];
}[] = [
  {
    culture: 'German',
    locale: 'de',
    units: [
      ['Liter', 'Liter', 'volume', 'liter'],
      ['l', 'Liter', 'volume', 'liter'],
      ['cm', 'Centimeter', 'length', 'centimeter'],
    ],
  },
  {
    culture: 'French',
    locale: 'fr',
    units: [
      ['litres', 'Litre', 'volume', 'liter'],
      ['cl', 'Centilitre', 'volume', 'centiliter'],
      ['grammes', 'Gram', 'mass', 'gram'],
      ['kg', 'Kilogramme', 'mass', 'kilogram'],
      ['centimètres', 'Centimètres', 'length', 'centimeter'],
    ],
  },
  {
    culture: 'Spanish',
    locale: 'es',
    units: [
      ['litros', 'Litro', 'volume', 'liter'],
      ['l', 'Litro', 'volume', 'liter'],
      ['gramos', 'Gramo', 'mass', 'gram'],
      ['cm', 'Centímetro', 'length', 'centimeter'],
    ],
  },
  {
    culture: 'Portuguese',
    locale: 'pt',
    units: [
      ['litros', 'Litro', 'volume', 'liter'],
      ['ml', 'Mililitro', 'volume', 'milliliter'],
      ['gramas', 'Grama', 'mass', 'gram'],
    ],
  },
  { culture: 'Dutch', locale: 'nl', units: [['liter', 'Liter', 'volume', 'liter']] },
];

describe('with a decimal comma the number and unit are those of recognizeDimension', () => {
  it.each(ABROAD)('in $culture', ({ culture, locale, units }) => {
    const tenths = fc.integer({ min: 1, max: 999 }).map((n) => n / 10);
    fc.assert(
      fc.property(fc.constantFrom(...units), tenths, ([written, theirs, dimension, name], value) => {
        const text = `${value.toFixed(1).replace('.', ',')} ${written}`;
        const [found] = recognizeDimension(text, Culture[culture]!);
        expect(found?.resolution?.unit, text).toBe(theirs);
        const theirValue = Number(found?.resolution?.value.replace(',', '.'));
        const truth = convert(theirValue, name).to(BASE[dimension] as never) as unknown as number;
        const read = parseMeasure(text, dimension, locale)?.value;
        expect(near(read ?? NaN, truth), `${text}: ${read} for ${truth}`).toBe(true);
      }),
      { numRuns: 25 },
    );
  });
});
