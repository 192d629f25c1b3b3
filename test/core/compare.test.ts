import { describe, expect, it } from 'vitest';
import { comparisonSchema, manySchema } from '../../core/schema.js';
import { checkList, checkMany, checkManyInSteps, checkPot, compare, type Candidate } from '../../core/index.js';

const TRIP = { people: 2, days: 3 } as const;
const SMALL: Candidate = { name: 'A', pot: { capacity: '0.95 L', diameter: 120, height: 90, lid: true } };
const LARGE: Candidate = { name: 'B', pot: { capacity: '1.8 L', diameter: 170, height: 85, lid: true } };
const KIT: Candidate = { name: 'C', list: 'pot 1.5 L, lid\ngas stove\ngas canister 230 g\n2 bottles 1 L' };

describe('candidates side by side', () => {
  it('have in each cell what their own report finds worst of that check', () => {
    const { rows, candidates } = compare([SMALL, KIT], TRIP);
    const reports = [checkPot(SMALL.pot!, TRIP), checkList(KIT.list!, TRIP)];
    expect(rows.length).toBeGreaterThan(5);
    for (const { check, cells } of rows)
      reports.forEach(({ findings }, i) => {
        const worst = findings.find((finding) => finding.check === check);
        expect(cells[i]?.margin, check).toBe(worst?.margin);
        expect(cells[i]?.grade, check).toBe(worst?.grade);
      });
    expect(candidates.map(({ headline }) => headline)).toEqual(reports.map(({ summary }) => summary.headline));
  });

  it('tell the pot that is too small from the one that is not, and fold what is alike', () => {
    const { rows } = compare([SMALL, LARGE], TRIP);
    const room = rows.find(({ check }) => check === 'meal-room')!;
    expect(room.alike).toBe(false);
    expect(room.cells[0]!.grade).not.toBe('holds-up');
    expect(room.cells[1]!.grade).toBe('holds-up');
    expect(rows.find(({ check }) => check === 'lid')).toMatchObject({ alike: true });
  });

  it('are alike with themselves, and change places with their cells', () => {
    expect(compare([SMALL, { ...SMALL, name: 'again' }], TRIP).rows.every(({ alike }) => alike)).toBe(true);
    const [one, other] = [compare([SMALL, LARGE], TRIP), compare([LARGE, SMALL], TRIP)];
    expect(other.rows.map(({ check, cells }) => ({ check, cells: cells.toReversed() }))).toEqual(
      one.rows.map(({ check, cells }) => ({ check, cells })),
    );
  });

  it('tell what another trip would change of one kit', () => {
    const { rows } = compare([LARGE, { ...LARGE, name: 'for six', trip: { people: 6 } }], TRIP);
    const changed = rows.filter(({ alike }) => !alike).map(({ check }) => check);
    expect(changed).toContain('meal-room');
    expect(changed).not.toContain('lid');
  });

  it('are plain JSON, and a candidate that is nothing is refused', () => {
    const told = compare([SMALL, KIT], TRIP);
    expect(comparisonSchema.parse(JSON.parse(JSON.stringify(told)))).toEqual(told);
    expect(comparisonSchema.safeParse({ ...told, winner: 'A' }).success).toBe(false);
    expect(() => compare([])).toThrow(TypeError);
    expect(() => compare([{ name: 'nothing' }])).toThrow(/a list or a pot/);
  });
});

describe('many lists in one table', () => {
  const lists: readonly Candidate[] = [
    KIT,
    { name: 'D', list: 'pot 0.6 L\ngas stove\ngas canister 100 g' },
    { name: 'E', list: 'pot 0.7 L\nspirit burner\nalcohol 110 mL' },
    { name: 'F', list: 'nothing of that kind' },
  ];

  it('have one row each, in their order, as each alone would be judged', () => {
    const told = checkMany(lists, { people: 1 });
    expect(manySchema.parse(JSON.parse(JSON.stringify(told)))).toEqual(told);
    const { rows } = told;
    expect(rows.map(({ name }) => name)).toEqual(['C', 'D', 'E', 'F']);
    rows.forEach(({ headline, counts }, i) => {
      const { summary } = checkList(lists[i]!.list!, { people: 1 });
      expect([headline, counts]).toEqual([summary.headline, summary.counts]);
    });
    expect(rows[3]!.worst).toBeNull();
  });

  it('say what is missing from more than half, and by whom', () => {
    const { missing } = checkMany(lists.slice(0, 3), { people: 1 });
    expect(missing.find(({ check }) => check === 'spark')?.who).toEqual(['C', 'D', 'E']);
    for (const { who } of missing) expect(who.length).toBeGreaterThan(1.5);
    expect(missing.map(({ who }) => who.length)).toEqual(missing.map(({ who }) => who.length).sort((a, b) => b - a));
  });

  it('are judged in steps, each list in several; none gives an empty table', () => {
    const steps = checkManyInSteps(lists, { people: 1 });
    let count = 0;
    let step = steps.next();
    for (; step.done !== true; step = steps.next()) count++;
    expect(count).toBeGreaterThan(lists.length * 3);
    expect(step.value).toEqual(checkMany(lists, { people: 1 }));
    expect(checkMany([])).toEqual({ version: 1, rows: [], missing: [] });
  });
});
