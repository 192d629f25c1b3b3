import { describe, expect, it } from 'vitest';
import { stall } from '../../../core/checks/stall.js';
import { checkList } from '../../../core/index.js';
import { item, stated } from '../kit/item.js';
import { factsOf, factsOfPot, findingOf, findingsOf, plainly } from './facts.js';

const pot = (litres: number, lid: boolean) =>
  item('pot', { capacitiesMl: [stated(litres * 1000)], material: stated('steel'), lid: stated(lid) });
const tablets = [
  item('stove', { stoveType: stated('solid-fuel') }),
  item('fuel', { fuelType: stated('solid-fuel'), fuelMassG: stated(56) }),
];
const gas = [
  item('stove', { stoveType: stated('gas') }),
  item('fuel', { fuelType: stated('gas'), fuelMassG: stated(230) }),
];
const trip = { people: 1, days: 2, mealStyle: 'boil-only' } as const;

describe('a flame too weak for its pot; wind factor and power of burners: common practice, no source', () => {
  it('costs you where a lid or a place out of the wind mends it, with the temperature and the price', () => {
    const finding = plainly(findingOf(stall, factsOf(trip, [pot(0.6, false), ...tablets])));
    expect(finding.grade).toBe('costs-you');
    expect(finding.message).toMatch(/^In a breeze the (open )?pot stops at \d\d °C: .*it boils, .*\d+ g of fuel/);
    expect(finding.margin).toMatch(/^\d\d °C of 100 °C$/);
    expect(finding.fix).toMatch(/lid|wind/);
  });

  it('names still air and wind by what is chosen', () => {
    const windy = findingsOf(stall, factsOf({ ...trip, wind: 'windy' }, [pot(0.9, false), ...tablets]));
    expect(windy.map(({ message }) => message.slice(0, 7))).toEqual(['In wind']);
  });

  it('falls short where neither would do', () => {
    const windy = { ...trip, wind: 'windy' } as const;
    const facts = factsOfPot({ capacity: '2 l', diameter: 200, height: 70 }, windy, {
      type: 'solid-fuel',
      powerW: 100,
    });
    const [finding] = findingsOf(stall, facts);
    expect(finding).toMatchObject({ grade: 'falls-short', key: 'never' });
  });

  it('tells of one pot on one flame once, whatever it heats', () => {
    expect(findingsOf(stall, factsOf(trip, [pot(0.6, false), ...tablets]))).toHaveLength(1);
  });

  it('is silent where the flame is strong enough, and where nothing burns', () => {
    expect(findingsOf(stall, factsOf(trip, [pot(0.6, true), ...gas]))).toEqual([]);
    expect(findingsOf(stall, factsOf(trip, [pot(0.6, false)]))).toEqual([]);
  });

  it('leaves no day blank: the fuel is judged by the cure', () => {
    const { day, findings } = checkList('pot 0.6 L steel, no lid\nsolid fuel stove\n4 fuel tablets 14 g', {
      ...trip,
      days: 7,
    });
    expect(day?.perDay).toBeTruthy();
    expect(findings.find(({ check }) => check === 'fuel-amount')?.grade).toBe('falls-short');
  });
});
