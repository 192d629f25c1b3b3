import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import { burnerFor } from '../physics/burner.js';
import { fuelHeatingValueJPerKg } from '../physics/fuel.js';
import { openSurfaceLossWPerM2 } from '../physics/surface-loss.js';
import { surfaceM2 } from '../physics/vessel.js';

/** Is there a lid, and what does its absence cost? */
export const lid = defineCheck({
  id: 'lid',
  title: 'Lid',
  asks: 'Does something cover the pot?',
  costs: 'Heat leaves from the top, and an open pot spills at once.',
  needs: ['onePot', 'pots', 'stoves', 'trip'],
  cites: ['cp-lid', 'engineering-toolbox-tanks', 'enargas-2020', 'cimini-2019'],
  limits: 'The loss is of still air; wind more than doubles it. A pot locked to its burner is not judged.',
  options: {
    /** Near the boil, °C: a row of the published table lies beside it. */
    nearBoilC: 95,
  },
  messages: {
    covered: 'It has a lid.',
    none: 'No lid: an open pot gives away heat and spills at once.',
    'none-figure': 'No lid: near the boil the open top gives away {watts}, {grams} of fuel an hour.',
    'none-snow': 'No lid to melt snow under: the heat goes into the cold.',
    unknown: 'Nothing says whether it has a lid.',
    margin: 'lid',
    'margin-none': 'no lid',
    'fix-lid': 'A lid of any kind: foil or a plate will do.',
    question: '“{name}”: has it a lid?',
    lossLine: 'lost by open water at 95 °C in still air',
    areaLine: 'open top',
    wattsLine: 'given away',
    savingLine: 'saved by a lid: 6 % over a whole pasta cook, 30 % on hobs; the loss above is used',
  },
  judge({ onePot, pots, stoves, trip }, options): Verdict[] {
    const pot = pots[0];
    if (pot === undefined || pot.lockedToBurner) return [];
    const about = { evidence: [pot.evidence], item: pot.item };
    const has = valueOf(pot.lid);
    if (has === true) return [{ ...about, grade: 'holds-up', message: 'covered', margin: 'margin', figures: {} }];
    if (has === undefined && onePot) {
      const question = { field: 'lid', message: 'question' } as const;
      return [
        {
          ...about,
          grade: 'cant-tell',
          message: 'unknown',
          margin: 'margin-none',
          figures: { name: pot.name },
          question,
        },
      ];
    }
    const evidence =
      has === undefined ? [pot.evidence, { message: 'margin-none', found: 'absent' } as const] : [pot.evidence];
    const snow = valueOf(trip.waterFrom) === 'snow';
    const width = valueOf(pot.diameterMm);
    const height = valueOf(pot.heightMm);
    if (width === undefined) {
      return [
        {
          ...about,
          evidence,
          grade: snow ? 'falls-short' : 'costs-you',
          message: snow ? 'none-snow' : 'none',
          margin: 'margin-none',
          figures: {},
          fix: 'fix-lid',
        },
      ];
    }
    const area = surfaceM2({ kind: 'round', rimMm: width, baseMm: width, heightMm: height ?? width }, height ?? width);
    const loss = openSurfaceLossWPerM2(options.nearBoilC);
    const stove = stoves.map(({ type }) => valueOf(type)).find((type) => type !== undefined) ?? 'gas';
    const { fuel, efficiency } = burnerFor(stove, width);
    const grams = ((loss * area * 3600) / (fuelHeatingValueJPerKg(fuel) * efficiency.likely)) * 1000;
    const figures: Figures = { watts: figure(loss * area, 'W', 0), grams: figure(grams, 'g', 0) };
    const sum: SumLine[] = [
      {
        sign: '',
        figure: figure(loss / 1000, 'kW/m²', 1),
        label: 'lossLine',
        grounds: 'published',
        cites: ['engineering-toolbox-tanks'],
      },
      { sign: '×', figure: figure(area * 10_000, 'cm²', 0), label: 'areaLine', grounds: 'worked-out' },
      { sign: '=', figure: figure(loss * area, 'W', 0), label: 'wattsLine', grounds: 'worked-out' },
      {
        sign: '',
        figure: figure({ low: 6, likely: 30, high: 30 }, '%', 0),
        label: 'savingLine',
        grounds: 'published',
        cites: ['cimini-2019', 'enargas-2020'],
      },
    ];
    return [
      {
        ...about,
        evidence,
        grade: snow ? 'falls-short' : 'costs-you',
        message: snow ? 'none-snow' : 'none-figure',
        margin: 'margin-none',
        figures,
        sum,
        fix: 'fix-lid',
      },
    ];
  },
});
