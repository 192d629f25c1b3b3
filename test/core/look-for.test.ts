import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkPot,
  lookFor as asked,
  suitedHeights,
  type PotInput,
  type StoveInput,
  type Trip,
} from '../../core/index.js';

/** What to look for, where there is something. */
function lookFor(...input: Parameters<typeof asked>) {
  const look = asked(...input);
  if (look === null) throw new Error('There is nothing to look for.');
  return look;
}

const trips = fc.record({
  people: fc.integer({ min: 1, max: 8 }),
  mealStyle: fc.constantFrom('boil-only', 'simmer', 'scratch'),
  cookAt: fc.constantFrom('stove', 'fire'),
}) as fc.Arbitrary<Partial<Trip>>;
const stoves = fc.record(
  {
    type: fc.constantFrom('gas', 'alcohol', 'wood', 'liquid'),
    form: fc.constantFrom('upright', 'remote'),
    burnerDiameter: fc.integer({ min: 30, max: 110 }),
    armInner: fc.integer({ min: 15, max: 60 }),
    armSpan: fc.integer({ min: 70, max: 180 }),
  },
  { requiredKeys: ['type', 'burnerDiameter'] },
) as fc.Arbitrary<StoveInput>;
const pots = fc.record(
  {
    diameter: fc.integer({ min: 60, max: 300 }),
    height: fc.integer({ min: 40, max: 300 }),
    bail: fc.boolean(),
    lid: fc.boolean(),
  },
  { requiredKeys: ['diameter', 'height'] },
) as fc.Arbitrary<PotInput>;

/** The grades of the checks that the picture draws together. */
function gradesOf(pot: PotInput, trip: Partial<Trip>, stove: StoveInput) {
  const { findings } = checkPot(pot, trip, stove);
  const of = (id: string) => findings.find(({ check }) => check === id);
  return { room: of('meal-room')?.grade, shape: of('proportion')?.grade, fit: of('stove-fit')?.grade };
}

describe('what to look for', () => {
  it('is near to a pot: a size and shape that room, shape and fit all let pass', () => {
    let named = 0;
    fc.assert(
      fc.property(pots, trips, stoves, (pot, trip, stove) => {
        const { nearest } = lookFor(pot, trip, stove);
        if (nearest === null) return;
        named++;
        const grades = gradesOf({ ...pot, diameter: nearest.widthMm, height: nearest.heightMm }, trip, stove);
        expect(grades.room).not.toBe('falls-short');
        expect(grades).toMatchObject({ shape: 'holds-up', fit: 'holds-up' });
      }),
      { numRuns: 400, seed: 5 },
    );
    expect(named).toBeGreaterThan(100);
  });

  it('is the pot itself where shape and fit hold up and least portions fit', () => {
    const seen = { suits: 0, not: 0 };
    fc.assert(
      fc.property(pots, trips, stoves, (pot, trip, stove) => {
        const { words, leastMl } = lookFor(pot, trip, stove);
        const { shape, fit } = gradesOf(pot, trip, stove);
        const holds = (Math.PI * Number(pot.diameter) ** 2 * Number(pot.height)) / 4000 >= leastMl;
        const suits = words.sentences.includes('This pot is one of them.');
        expect(suits).toBe(shape === 'holds-up' && fit === 'holds-up' && holds);
        seen[suits ? 'suits' : 'not']++;
      }),
      { numRuns: 1500, seed: 7 },
    );
    expect(seen.suits).toBeGreaterThan(30);
    expect(seen.not).toBeGreaterThan(300);
  });

  // By hand from the figures of common practice: 473 ÷ 0.67 and 591 ÷ 0.67 mL; 1.5 and 2 times 60 mm; 0.55 to 0.8 on a bail.
  it('says so for one who simmers over a spirit burner of 60 mm', () => {
    const look = lookFor(
      { diameter: 80, height: 125, capacity: 600, bail: true },
      { people: 1, mealStyle: 'simmer' },
      { type: 'alcohol', burnerDiameter: 60 },
    );
    expect(look.leastMl).toBeCloseTo(706, 0);
    expect(look.fullMl).toBeCloseTo(882, 0);
    expect(look.boilOnlyMl).toBeCloseTo(473 / 0.9, 6);
    expect(look.widthMm).toEqual({ least: 90, most: 120 });
    expect(look.ratio).toEqual({ least: 0.55, best: 2 / 3, most: 0.8 });
    expect(look.nearest).toEqual({ widthMm: 90, heightMm: 130 });
    expect(look.words.nearest).toBe('90\u00a0mm across and 130\u00a0mm tall would do: 820\u00a0mL.');
    expect(look.words.sentences).toEqual([
      'For one person, when it simmers: 710\u00a0mL or more to the brim; 890\u00a0mL for full portions.',
      'On a bail or at a fire 2 : 3 is best, and 0.55–0.8 as wide as tall holds up.',
      'This stove suits 90–120\u00a0mm across.',
    ]);
  });

  it('says what it can with no pot and no stove, and nothing near', () => {
    const look = lookFor({}, { people: 3, mealStyle: 'boil-only' });
    expect(look).toMatchObject({ pot: null, nearest: null, boilOnlyMl: null, widthMm: { least: null, most: null } });
    expect(look.words.nearest).toBeNull();
    expect(look.words.sentences.at(-1)).toBe('With the width of the burner, the widths that suit it are marked too.');
    expect(look.leastMl).toBeCloseTo((3 * 473) / 0.9, 6);
  });

  it('says so where no pot is all of it', () => {
    const look = lookFor({ diameter: 200, height: 200 }, { people: 12 }, { type: 'alcohol', burnerDiameter: 40 });
    expect(look.nearest).toBeNull();
    expect(look.words.sentences.at(-1)).toBe('No pot is all of that on this stove. Another stove, or two pots.');
  });

  it('shares the meal among several pots, and words it in the units asked for', () => {
    const one = lookFor({ diameter: 140, height: 100 }, { people: 5 });
    const two = lookFor({ diameter: 140, height: 100, quantity: 2 }, { people: 5 });
    expect(two.leastMl).toBeCloseTo(one.leastMl / 2, 6);
    const us = lookFor({}, {}, { type: 'gas', burnerDiameter: 45 }, { units: 'us' });
    expect(us.words.axes).toEqual({ width: 'width across, in', height: 'height, in' });
    expect(us.words.sentences.join(' ')).not.toMatch(/\bmm\b|\bmL\b/);
  });

  it('gives the bases that the drawing marks under the pot', () => {
    fc.assert(
      fc.property(fc.integer({ min: 20, max: 200 }), (burner) => {
        const { widthMm } = lookFor({}, { people: 1 }, { type: 'alcohol', burnerDiameter: burner });
        const { stoves } = checkPot({}, { people: 1 }, { type: 'alcohol', burnerDiameter: burner });
        expect([widthMm.least, widthMm.most]).toEqual(stoves[0]?.suitsMm);
      }),
      { seed: 3 },
    );
  });

  it('is nothing where the stove has its pot', () => {
    expect(asked({}, { people: 2 }, { type: 'integrated' })).toBeNull();
  });

  it('draws heights that hold what they say', () => {
    const [low, high] = suitedHeights(100, { leastMl: 1000, ratio: { least: 0.5, best: null, most: 2 } });
    expect((Math.PI * 100 ** 2 * low) / 4000).toBeCloseTo(1000, 9);
    expect(high).toBe(200);
    expect(suitedHeights(300, { leastMl: 1000, ratio: { least: 0.5, best: null, most: 2 } })[0]).toBe(150);
  });
});
