import { describe, expect, it } from 'vitest';
import { HEAT_SOURCES, type HeatSource } from '../../../core/data/stoves.js';
import { SOURCES } from '../../../core/data/sources/index.js';
import { burnerFor } from '../../../core/physics/burner.js';
import { refuses } from './refuse.js';

const ALL = Object.keys(HEAT_SOURCES) as HeatSource[];

describe('burnerFor', () => {
  refuses('a base', (baseMm) => burnerFor('gas', baseMm), {
    least: 20,
    most: 1000,
    unit: ' mm',
    says: 'The base of the pot',
  });

  it.each([
    [79.9, 'slim'],
    [80, 'narrow'],
    [159.9, 'narrow'],
    [160, 'wide'],
  ] as const)('a base of %d mm is %s', (baseMm, width) => {
    expect(burnerFor('gas', baseMm)).toEqual({
      fuel: 'gas',
      powerW: HEAT_SOURCES.gas.powerW,
      efficiency: HEAT_SOURCES.gas.efficiency[width],
      cites: HEAT_SOURCES.gas.cites,
    });
  });

  it('spans every width where the base is not known, a narrow pot as the likely one', () => {
    expect(burnerFor('gas')).toEqual({
      fuel: 'gas',
      powerW: { low: 1500, likely: 2200, high: 3000 },
      efficiency: { low: 0.29, likely: 0.45, high: 0.62 },
      cites: ['gonzalez-2010', 'enargas-2020', 'kadam-shete'],
    });
  });

  it.each(ALL)('%s cites entries of the bibliography', (source) => {
    const { cites } = burnerFor(source);
    expect(cites.length).toBeGreaterThan(0);
    for (const id of cites) expect(SOURCES.map((entry) => entry.id)).toContain(id);
  });

  it('names the fuel: an integrated stove burns gas, a fire wood', () => {
    expect(ALL.map((source) => burnerFor(source).fuel)).toEqual([
      'gas',
      'gas',
      'liquid-fuel',
      'alcohol',
      'solid-fuel',
      'wood',
      'wood',
    ]);
  });
});
