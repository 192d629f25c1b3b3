import { defineCheck, figure, type Verdict } from '../model/check.js';
import { valueOf } from '../model/given.js';
import type { Vessel } from '../model/kit.js';

/** How people call a pot made of a drink can. */
const CAN_WORDS =
  /(?<!\p{L})(?:(?:beer|soda|drinks?|cola|pop)[ -]?cans?|(?:bier|getränke|cola)?dosen?|canettes?|latas? de (?:cerveza|refresco))(?!\p{L})/iu;

/** Is the pot sturdy enough to be packed and lifted? */
export const sturdiness = defineCheck({
  id: 'sturdiness',
  title: 'Sturdiness',
  asks: 'Is the pot a drink can, or as thin as one?',
  costs: 'It dents in the pack and splits at the rim or a seam.',
  needs: ['pots'],
  cites: ['cp-can-pot'],
  limits: 'Told by the words, the shape or the mass; the walls are not measured.',
  options: {
    /** Drink cans, mm: width, and the heights of 500, 330 and 355 mL. Within `nearMm`, at `mostG` or less (common practice, no source). */
    can: { widthMm: 66, heightsMm: [168, 115, 122], nearMm: 5, mostG: 25 },
    /** Thinner than cookware, g a mL; a larger pot weighs less for what it holds, so up to `upToMl` only (common practice, no source). */
    thin: { gPerMl: 0.04, upToMl: 2000 },
  },
  messages: {
    'can-words': 'A drink can for a pot dents and splits.',
    'can-shape': '{width#} × {height} at {mass} is a drink can: it dents and splits.',
    thin: '{mass} for {capacity} is as thin as a drink can: it dents and splits.',
    'margin-can': 'a drink can',
    'margin-thin': '{ratio#} of {least}',
    'fix-can': 'A pot made for cooking.',
    'fix-thin': 'A pot of this size that weighs {heavier} or more.',
    massLine: 'mass',
    capacityLine: 'to the brim',
    ratioLine: 'mass for what it holds',
  },
  judge({ pots }, { can, thin }): Verdict[] {
    return pots.flatMap((pot): Verdict[] => {
      const about = { grade: 'costs-you', evidence: [pot.evidence], item: pot.item } as const;
      if (CAN_WORDS.test(`${pot.name} ${pot.evidence.quote}`))
        return [{ ...about, message: 'can-words', margin: 'margin-can', figures: {}, fix: 'fix-can' }];
      const { massG, capacityMl } = pot;
      if (massG.grounds === 'missing') return [];
      const mass = figure(massG.value, 'g', 0);
      const size = canSize(pot, can);
      if (size !== null && massG.value <= can.mostG) {
        const figures = { width: figure(size.width, 'mm', 0), height: figure(size.height, 'mm', 0), mass };
        return [{ ...about, message: 'can-shape', margin: 'margin-can', figures, fix: 'fix-can' }];
      }
      if (capacityMl.grounds === 'missing' || capacityMl.value > thin.upToMl) return [];
      const capacity = figure(capacityMl.value, 'mL', 0);
      const ratio = figure(massG.value / capacityMl.value, 'g/mL', 3);
      if (massG.value >= thin.gPerMl * capacityMl.value) return [];
      return [
        {
          ...about,
          message: 'thin',
          margin: 'margin-thin',
          figures: {
            mass,
            capacity,
            ratio,
            least: figure(thin.gPerMl, 'g/mL', 2),
            heavier: figure(Math.ceil(thin.gPerMl * capacityMl.value), 'g'),
          },
          sum: [
            { sign: '', figure: mass, label: 'massLine', grounds: massG.grounds },
            { sign: '÷', figure: capacity, label: 'capacityLine', grounds: capacityMl.grounds },
            { sign: '=', figure: ratio, label: 'ratioLine', grounds: 'worked-out' },
          ],
          fix: 'fix-thin',
        },
      ];
    });
  },
});

/** Width and height of the pot where they are those of a drink can. */
function canSize(pot: Vessel, can: (typeof sturdiness)['options']['can']): { width: number; height: number } | null {
  const width = valueOf(pot.diameterMm);
  const height = valueOf(pot.heightMm);
  if (width === undefined || height === undefined) return null;
  const near = (value: number, of: number) => Math.abs(value - of) <= can.nearMm;
  return near(width, can.widthMm) && can.heightsMm.some((of) => near(height, of)) ? { width, height } : null;
}
