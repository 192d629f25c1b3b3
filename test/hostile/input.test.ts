import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkList, checkPot, readList } from '../../core/index.js';
import { reportSchema } from '../../core/schema.js';

const chapter =
  `It was the winter of the long frost, and the miller's daughter had not yet come down. “The pot calls the kettle black,” said
old Harn, and laughed until the tankard shook. Nobody answered. Two of the men looked at the fire, the third at his boots, for it was
known from Varn to Pell that the bridge would not hold, and that 40 pounds had been paid to the mason 3 years before. She read the
letter again. It spoke of 1 house, of 2 sons and of a debt; it did not speak of her.\n\n`.repeat(40);

const texts: readonly (readonly [string, string])[] = [
  ['nothing', ''],
  ['blanks', ' \n\t\n  '],
  ['a chapter of a novel', chapter],
  ['5 MB of digits', '7'.repeat(5_000_000)],
  ['1 MB of fractions', '1/'.repeat(500_000)],
  ['1 MB of spaces', ' '.repeat(1_000_000)],
  ['1 MB of brackets', '('.repeat(1_000_000)],
  ['1 MB of table cells', '|'.repeat(1_000_000)],
  ['1 MB of quotes', '"'.repeat(1_000_000)],
  ['1 MB of tags', '<td>'.repeat(250_000)],
  ['NUL', 'pot\u0000 1 L\u0000'],
  ['lone surrogates', '\ud800 pot 1 L \udfff'],
  ['figures beyond any number', `pot ${'9'.repeat(400)} ml, stove 1e999 g, 0 mm, -5 L`],
];

describe('whatever is pasted', () => {
  it.each(texts)('%s is read, checked and reported', (_, text) => {
    const report = checkList(text);
    reportSchema.parse(JSON.parse(JSON.stringify(report)));
    expect(report.summary.headline).not.toBe('');
    for (const { span } of report.reading.items) expect(text.slice(...span).length).toBe(span[1] - span[0]);
  });

  it.each(texts.slice(0, 4))('%s holds no cook kit', (_, text) => {
    expect(readList(text).items).toEqual([]);
    expect(checkList(text).findings).toEqual([]);
  });

  it('any string gives a report', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 400 }), (text) => {
        reportSchema.parse(checkList(text));
      }),
      { numRuns: 300 },
    );
  });
});

describe('whatever is typed', () => {
  it.each([
    [{ diameter: 0, height: 100 }, 'pot.diameter', '0\u00a0mm is less than any pot.'],
    [{ diameter: '40 m', height: 100 }, 'pot.diameter', '40000\u00a0mm is more than any pot; 400?'],
    [{ diameter: 8 }, 'pot.diameter', '8\u00a0mm is less than any pot; 80?'],
    [
      { capacity: 'plenty' },
      'pot.capacity',
      '“plenty” is not understood; write a figure and its unit, such as 600\u00a0mL.',
    ],
    [{ capacity: -700 }, 'pot.capacity', '−700\u00a0mL is less than any pot.'],
    [
      { height: Number.POSITIVE_INFINITY },
      'pot.height',
      '“Infinity” is not understood; write a figure and its unit, such as 80\u00a0mm.',
    ],
  ])('%j gets a sentence and a report', (pot, field, message) => {
    const report = checkPot(pot);
    expect(report.problems).toEqual([expect.objectContaining({ field, message })]);
    reportSchema.parse(report);
  });

  it('negative people get a sentence', () => {
    const report = checkPot({ capacity: 700 }, { people: -2 });
    expect(report.problems).toEqual([expect.objectContaining({ field: 'trip.people', value: '-2' })]);
    expect(report.trip.people).toMatchObject({ grounds: 'assumed', value: 1 });
  });

  it.each([
    [() => checkList(undefined as never), /The list is a string/],
    [() => readList(42 as never), /The list is a string/],
    [() => checkPot(null as never), /The pot is an object/],
    [() => checkPot({}, 'two' as never), /The trip is an object/],
    [() => checkPot({}, {}, 7 as never), /The stove is an object/],
    [() => checkList('', {}, {} as never), /The corrections are an array/],
    [() => checkList('', {}, [], { units: 'cubits' as never }), /The units are one of/],
  ])('misuse is refused at once with what to pass: %s', (misuse, sentence) => {
    expect(misuse).toThrow(TypeError);
    expect(misuse).toThrow(sentence);
  });

  it('no trip and pot that the schema admits make a figure that is no number', () => {
    const some = fc.double({ noNaN: true, min: 1, max: 9000 });
    const pot = fc.record(
      { capacity: some, diameter: some, height: some, mass: some, bail: fc.boolean(), lid: fc.boolean() },
      { requiredKeys: [] },
    );
    const stove = fc.record(
      {
        type: fc.constantFrom('gas', 'alcohol', 'wood', 'integrated'),
        burnerDiameter: some,
        armSpan: some,
        height: some,
        armCount: fc.integer({ min: 2, max: 6 }),
      } as const,
      { requiredKeys: [] },
    );
    const trip = fc.record(
      {
        people: fc.integer({ min: 1, max: 40 }),
        days: fc.integer({ min: 1, max: 60 }),
        lowC: fc.integer({ min: -60, max: 50 }),
        altitudeM: fc.integer({ min: -430, max: 9000 }),
        waterFrom: fc.constantFrom('liquid', 'snow', 'either'),
        mealStyle: fc.constantFrom('boil-only', 'simmer', 'scratch'),
      } as const,
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(pot, trip, stove, (p, t, s) => {
        const report = checkPot(p, t, s);
        // JSON has no NaN and no Infinity: they would come back as null where the schema asks for a number.
        reportSchema.parse(JSON.parse(JSON.stringify(report)));
        expect(report.problems.filter((problem) => problem.field.startsWith('check.'))).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });
});
