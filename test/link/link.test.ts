import fc from 'fast-check';
import { deflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { EMPTY_DRAFT, type Draft } from '../../widget/draft.js';
import { carriedBy, stateOf } from '../../widget/link.js';

const fields = fc.dictionary(
  fc.string({ minLength: 1 }).filter((name) => name !== '__proto__'),
  fc.oneof(fc.string(), fc.integer(), fc.boolean()),
);
const drafts: fc.Arbitrary<Draft> = fc.record({
  entrance: fc.constantFrom('list', 'pot'),
  text: fc.string({ unit: 'binary', maxLength: 2000 }),
  corrections: fc.array(
    fc.record({
      quote: fc.string({ unit: 'binary' }),
      occurrence: fc.nat(),
      item: fc.nat(),
      field: fc.constantFrom('kind', 'massG', 'material'),
      value: fc.oneof(fc.string(), fc.boolean(), fc.constant(null)),
    }),
    { maxLength: 5 },
  ),
  trip: fields,
  pot: fields,
  stove: fields,
  letter: fields,
  units: fc.constantFrom(null, 'metric', 'us', 'imperial'),
});

const packed = (value: unknown) => `1.${deflateSync(JSON.stringify(value)).toString('base64url')}`;

describe('a link with state', () => {
  it('brings back any question as it was', async () => {
    await fc.assert(
      fc.asyncProperty(drafts, async (draft) => {
        expect(await carriedBy(await stateOf(draft))).toEqual({ draft });
      }),
    );
  });

  it('brings back a text with half a sign, and a long one', async () => {
    for (const text of ['pot \ud83d', '\0', 'pot 1 l\n'.repeat(20_000)]) {
      expect(await carriedBy(await stateOf({ ...EMPTY_DRAFT, text }))).toEqual({ draft: { ...EMPTY_DRAFT, text } });
    }
  });

  it('is made of letters that no mail program breaks, and far shorter than a list', async () => {
    const text = 'Humblefern Duo pot 1.3 L, aluminium, 210 g\nZorvik Stub gas stove, 89 g\n'.repeat(20);
    const state = await stateOf({ ...EMPTY_DRAFT, text });
    expect(state).toMatch(/^1\.[\w-]+$/);
    expect(state.length).toBeLessThan(text.length / 4);
  });

  it('says so of any link that is cut short or has a letter changed, and never takes it for another question', async () => {
    const state = await stateOf({ ...EMPTY_DRAFT, text: 'Pot 1.3 L\nGas stove\nGas 230 g' });
    for (let at = 0; at < state.length; at++) {
      const cut = await carriedBy(state.slice(0, at));
      expect('problem' in cut, `cut at ${at}`).toBe(true);
      const changed = state.slice(0, at) + (state[at] === 'A' ? 'B' : 'A') + state.slice(at + 1);
      const carried = await carriedBy(changed);
      // The last letter may carry bits that no byte takes.
      if ('draft' in carried) expect(carried.draft.text, `changed at ${at}`).toBe('Pot 1.3 L\nGas stove\nGas 230 g');
    }
  });

  it('says so of one that a later version made', async () => {
    expect(await carriedBy('2.AbC')).toEqual({ problem: expect.stringContaining('later version') as string });
    expect(await carriedBy('17.AbC.def')).toEqual({ problem: expect.stringContaining('later version') as string });
  });

  it('takes nothing that is no question', async () => {
    const wrong = [
      null,
      [],
      'pot',
      { ...EMPTY_DRAFT, text: 1 },
      { ...EMPTY_DRAFT, entrance: 'door' },
      { ...EMPTY_DRAFT, units: 'stones' },
      { ...EMPTY_DRAFT, trip: { people: {} } },
      { ...EMPTY_DRAFT, pot: [] },
      { ...EMPTY_DRAFT, corrections: [{ quote: 'pot', occurrence: -1, item: 0, field: 'kind', value: 'pot' }] },
      { ...EMPTY_DRAFT, corrections: [{ quote: 'pot', occurrence: 0, item: 0, field: 'kind', value: {} }] },
    ];
    for (const value of wrong) expect(await carriedBy(packed(value)), JSON.stringify(value)).toHaveProperty('problem');
    expect(await carriedBy(packed({ text: 'pot 1 l', more: 1 }))).toEqual({
      draft: { ...EMPTY_DRAFT, text: 'pot 1 l' },
    });
  });

  it('unpacks no more than a person types', async () => {
    expect(await carriedBy(packed({ text: 'a'.repeat(50_000_000) }))).toHaveProperty('problem');
  });

  it('never fails, on any string', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.oneof(
          fc.string(),
          fc.string().map((text) => `1.${text}`),
        ),
        async (state) => {
          expect(await carriedBy(state)).toHaveProperty('problem');
        },
      ),
    );
  });
});
