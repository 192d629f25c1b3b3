import { describe, expect, it } from 'vitest';
import { checkList, readList, type Correction } from '../../../core/index.js';
import { told } from '../../reading/told.js';

/** The kinds that a text's items have, and those of what it names in passing. */
function kinds(text: string): { carried: string[]; passing: string[] } {
  const { items, passing } = readList(text);
  return {
    carried: items.filter(({ carried }) => carried).map(({ kind }) => kind),
    passing: passing.map(({ kind }) => kind),
  };
}

/** A line further down, with enough in it to be prose. */
const STORY = `We were four friends on the Tarn lakes and it rained every single day. In the evenings we sat around a gas stove and talked about everything. My mug was the old enamel one. I had a 900 ml pot with a lid for myself, and it was plenty. We were glad of the kettle then.`;

describe('things named in passing', () => {
  it.each([
    [STORY, { carried: ['pot'], passing: ['stove', 'mug', 'kettle'] }],
    [
      'Wir waren zu viert unterwegs. Abends saßen wir um den Gaskocher und redeten. Meine Tasse war die alte aus Emaille. Für mich hatte ich einen Topf mit 900 ml dabei, das reichte gut. Da waren wir froh um den Wasserkessel.',
      { carried: ['pot'], passing: ['stove', 'mug', 'kettle'] },
    ],
    [
      'Nous étions quatre amis et il a plu tous les jours. Le soir nous étions assis autour du réchaud à gaz, et quelqu’un avait toujours une casserole dessus. Ma tasse était la vieille en émail. Nous étions contents de la bouilloire ce soir-là.',
      { carried: [], passing: ['stove', 'pot', 'mug', 'kettle'] },
    ],
    [
      'Éramos cuatro amigos y llovió todos los días. Por la noche nos sentábamos alrededor del hornillo de gas y alguien siempre tenía una olla encima. Mi taza era la vieja de esmalte. Nos alegramos entonces de la tetera.',
      { carried: [], passing: ['stove', 'pot', 'mug', 'kettle'] },
    ],
    [
      'Vi var fyra vänner och det regnade varje dag. På kvällarna satt vi runt gasköket och pratade länge om livet, och någon hade alltid en kastrull på det.',
      { carried: [], passing: ['stove', 'pot'] },
    ],
  ])('in prose: %s', (text, told) => {
    expect(kinds(text)).toEqual(told);
  });

  it('tells where each stands, and why it is not counted', () => {
    const text = `Notes of a trip\n\n${STORY}`;
    const { passing, lines } = readList(text);
    expect(passing.map(({ line, span }) => [line, text.slice(...span)])).toEqual([
      [3, 'gas stove'],
      [3, 'mug'],
      [3, 'kettle'],
    ]);
    expect(new Set(passing.map(({ because }) => because))).toEqual(
      new Set(['a sentence names it, and does not say whether it goes along']),
    );
    expect(lines[2]?.use).toBe('used');
  });

  it('throws no story away whole, and counts nothing of it', () => {
    const novel = `${'The snow fell on the village and the old man went out to sweep the path before his daughter came. '.repeat(10)}The kettle sang beside him.`;
    const { items, passing, trip, lines } = readList(novel);
    expect(items).toEqual([]);
    expect(passing.map(({ kind }) => kind)).toEqual(['kettle']);
    expect(trip).toEqual({});
    expect(lines[0]).toMatchObject({ use: 'not-cook-kit', because: 'cook kit is named in passing' });
  });

  it.each([
    // The list holds it, or the same is told again.
    '- gas stove, 85 g\n- pot 1 L\n\nThe gas stove has never let me down in all these years, whatever the weather did.',
    // What is not there, or belongs to something else.
    'We had no stove with us in the whole of that week and lived on cold food, and nobody complained of it.',
    'The bag for the stove has a hole in it, and it had one when I bought it in the sale some years before.',
    // No prose.
    '- tent\n- down jacket',
    '',
  ])('nothing in passing: %j', (text) => {
    expect(readList(text).passing).toEqual([]);
  });

  it('asks once for each kind and size, however long the text is', () => {
    const text = `${STORY}\n\n`.repeat(200);
    expect(readList(text).passing.length).toBe(3);
  });
});

describe('counting what is named in passing', () => {
  const line = { quote: STORY, occurrence: 0, field: 'passing' } as const;
  const count = (...corrections: Correction[]) => checkList(STORY, {}, corrections).reading;
  const first: Correction = { ...line, item: 0, value: true };
  const third: Correction = { ...line, item: 2, value: true };

  it('moves it behind the items of its line', () => {
    const { items, passing } = count(first);
    expect(items.map(told)).toEqual([
      { kind: 'pot', ml: [900], lid: true },
      { kind: 'stove', stove: 'gas' },
    ]);
    expect(passing.map(({ kind }) => kind)).toEqual(['mug', 'kettle']);
  });

  it('goes by the place among those read, whatever was counted before', () => {
    const carried = (...corrections: Correction[]) => count(...corrections).items.map(({ kind }) => kind);
    expect(carried(third, first)).toEqual(['pot', 'kettle', 'stove']);
    expect(carried(third)).toEqual(['pot', 'kettle']);
    expect(carried(third, third)).toEqual(['pot', 'kettle']);
    expect(count(first, third, { ...line, item: 1, value: true }).passing).toEqual([]);
  });

  it('lets what was counted be corrected like any other', () => {
    const grams: Correction = { quote: STORY, occurrence: 0, item: 1, field: 'massG', value: '85 g' };
    expect(count(first, grams).items.map(told)[1]).toEqual({ kind: 'stove', g: 85, stove: 'gas' });
  });

  it.each([
    [{ ...first, item: 9 }, 'The line names no such thing in passing.'],
    [{ ...first, value: 'maybe' }, 'Yes or no.'],
    [{ ...first, quote: 'elsewhere' }, 'The line it belongs to is not in the text any more.'],
  ])('refuses %j', (correction, message) => {
    const report = checkList(STORY, {}, [correction]);
    expect(report.problems.map((problem) => problem.message)).toContain(message);
    expect(report.reading.passing.length).toBe(3);
  });
});

describe('what nobody could tell', () => {
  it.each([
    '## Kitchen\n- pot 1 L\n- the Wexby thing from Tilda',
    '## Kitchen\n- pot 1 L\n- zorbo 400 g',
    '## Küche\n- Topf 1 l\n- Zorbo 400 g',
    '## Cuisine\n- popote 1 l\n- zorbo 400 g',
    '## Cocina\n- olla 1 l\n- zorbo 400 g',
  ])('is not understood: %j', (text) => {
    expect(readList(text).lines.at(-1)?.use).toBe('not-understood');
  });

  it.each([
    '## Clothes\n- zorbo 400 g',
    '- pot 1 L\n- zorbo 400 g',
    '## Kitchen\n- pot 1 L\n- 2 kg of potatoes',
    '## Kitchen\n- pot 1 L\n- tin opener',
    '## Kitchen\n- pot 1 L\n\nAll of it fits into one bag that my sister made for me in the winter.',
  ])('is about something else: %j', (text) => {
    expect(readList(text).lines.at(-1)?.use).toBe('not-cook-kit');
  });
});
