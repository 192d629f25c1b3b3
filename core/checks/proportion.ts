import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Vessel } from '../model/kit.js';

/** Stoves whose flame spreads under the pot; the others keep it narrow. */
const SPREAD = new Set(['wood', 'alcohol', 'solid-fuel']);

/** Is the pot well shaped for its handle and the heat under it? */
export const proportion = defineCheck({
  id: 'proportion',
  title: 'Shape',
  asks: 'Does the width to height suit the handle and the heat under it?',
  costs: 'Heat goes past the wall, or the pot slops.',
  needs: ['pots', 'stoves', 'trip'],
  cites: ['cp-bail-shape', 'cp-stove-shape', 'gonzalez-2010', 'kadam-shete'],
  limits:
    'No law of efficiency against shape has been published that is trusted here; the bands are common practice. A pot locked to its burner is not judged.',
  options: {
    /** Width to height on a bail or at a fire, best 2 : 3 (`cp-bail-shape`). Over `slops` the hang check speaks. */
    bail: { fails: 0.45, least: 0.55, most: 0.8, slops: 1.1, best: 2 / 3 },
    /** On a stove with no bail (`cp-stove-shape`). */
    stove: { fails: 0.5, least: 0.8, most: 2.2 },
  },
  messages: {
    'bail-good': 'Close to 2 : 3, the best compromise on a bail.',
    'bail-narrow': 'Narrower than a pot on a bail is at its best: slow to take heat.',
    'bail-wide': 'Wider than 2 : 3 on a bail: it takes heat well and slops sooner.',
    'bail-can': 'Tall and narrow: much of the heat goes past it into the air.',
    'stove-good': 'Wide enough for its flame and not so wide that it cools.',
    'narrow-lidded': 'Narrow, and right for a narrow burner with the lid on.',
    'narrow-spread': 'Narrow over a flame that spreads: heat goes up the wall.',
    'narrow-open': 'Narrow and open: it heats slowly and loses heat from the top.',
    'stove-can': 'Tall and narrow: much of the heat goes past it into the air.',
    pan: 'Pan-shaped: it slops when moved and cools quickly.',
    'size-missing': 'Without width and height, its shape cannot be judged.',
    'stove-missing': 'Narrow; whether that costs heat hangs on the stove.',
    margin: '{ratio} as wide as tall',
    'margin-missing': 'size not given',
    'fix-width': 'At this height a pot {width} across.',
    'fix-lower': 'At this width a pot {lower} tall or more.',
    'ask-size': '“{name}”: how wide and how tall is it, outside?',
    'ask-stove': 'What does the stove burn?',
    widthLine: 'width at the rim',
    heightLine: 'height',
    ratioLine: 'as wide as tall',
    wallLine: 'wall for each base area, 4 × height ÷ width: the share of the pot that only hot air touches',
  },
  judge({ pots, stoves, trip }, options): Verdict[] {
    const round = pots.filter((pot) => !pot.lockedToBurner && pot.boxMm.grounds === 'missing');
    const sized = round.filter((pot) => pot.diameterMm.grounds !== 'missing' && pot.heightMm.grounds !== 'missing');
    // One question is enough where no pot has its size.
    return (sized.length > 0 ? sized : round.slice(0, 1)).flatMap((pot): Verdict[] => {
      const width = valueOf(pot.diameterMm);
      const height = valueOf(pot.heightMm);
      const about = { evidence: [pot.evidence], item: pot.item };
      if (width === undefined || height === undefined) {
        const question = {
          ...(pot.item === null ? {} : { item: pot.item }),
          field: 'diameterMm',
          message: 'ask-size',
        } as const;
        return [
          {
            ...about,
            grade: 'cant-tell',
            message: 'size-missing',
            margin: 'margin-missing',
            figures: { name: pot.name },
            question,
          },
        ];
      }
      const ratio = width / height;
      const hung = valueOf(pot.bail) === true || valueOf(trip.cookAt) === 'fire';
      const stove = stoves.map(({ type }) => valueOf(type)).find((type) => type !== undefined);
      const said = hung ? onBail(ratio, options.bail) : onStove(ratio, options.stove, stove, pot);
      if (said === null) return [];
      const good = hung ? options.bail.best : options.stove.least;
      const figures: Figures = {
        ratio: figure(ratio, '', 2),
        width: figure(
          {
            low: height * (hung ? options.bail.least : good),
            likely: height * good,
            high: height * (hung ? options.bail.most : options.stove.most),
          },
          'mm',
          0,
        ),
        lower: figure(width / options.stove.most, 'mm', 0),
      };
      const sum: SumLine[] = [
        {
          sign: '',
          figure: figure(width, 'mm', 0),
          label: 'widthLine',
          grounds: pot.diameterMm.grounds === 'missing' ? 'assumed' : pot.diameterMm.grounds,
        },
        {
          sign: '÷',
          figure: figure(height, 'mm', 0),
          label: 'heightLine',
          grounds: pot.heightMm.grounds === 'missing' ? 'assumed' : pot.heightMm.grounds,
        },
        { sign: '=', figure: figure(ratio, '', 2), label: 'ratioLine', grounds: 'worked-out' },
        {
          sign: '',
          figure: figure((4 * height) / width, '', 1),
          label: 'wallLine',
          grounds: 'worked-out',
          cites: ['gonzalez-2010', 'kadam-shete'],
        },
      ];
      const fix =
        said.grade === 'holds-up' || said.grade === 'cant-tell'
          ? {}
          : { fix: said.message === 'pan' ? 'fix-lower' : 'fix-width' };
      const question =
        said.grade === 'cant-tell' && stoves[0]?.item != null
          ? { question: { item: stoves[0].item, field: 'stoveType', message: 'ask-stove' } as const }
          : {};
      return [{ ...about, ...said, margin: 'margin', figures, sum, ...fix, ...question }];
    });
  },
});

/** Widths to heights that hold up: hung or at a fire, or on a stove that burns something, with a lid or none. */
export function suitedShapes(
  { bail, stove }: (typeof proportion)['options'],
  on: { readonly hung: boolean; readonly burns: string | undefined; readonly lid: boolean },
): { readonly least: number; readonly best: number | null; readonly most: number } {
  if (on.hung) return { least: bail.least, best: bail.best, most: bail.most };
  const narrow = on.lid && on.burns !== undefined && !SPREAD.has(on.burns);
  return { least: narrow ? stove.fails : stove.least, best: null, most: stove.most };
}

type Said = Pick<Verdict, 'grade' | 'message'>;

function onBail(ratio: number, limits: { fails: number; least: number; most: number; slops: number }): Said | null {
  if (ratio < limits.fails) return { grade: 'falls-short', message: 'bail-can' };
  if (ratio < limits.least) return { grade: 'costs-you', message: 'bail-narrow' };
  if (ratio <= limits.most) return { grade: 'holds-up', message: 'bail-good' };
  return ratio <= limits.slops ? { grade: 'costs-you', message: 'bail-wide' } : null;
}

function onStove(
  ratio: number,
  limits: { fails: number; least: number; most: number },
  stove: string | undefined,
  pot: Vessel,
): Said {
  if (ratio < limits.fails) return { grade: 'falls-short', message: 'stove-can' };
  if (ratio > limits.most) return { grade: 'costs-you', message: 'pan' };
  if (ratio >= limits.least) return { grade: 'holds-up', message: 'stove-good' };
  if (stove === undefined) return { grade: 'cant-tell', message: 'stove-missing' };
  if (SPREAD.has(stove)) return { grade: 'costs-you', message: 'narrow-spread' };
  return valueOf(pot.lid) === true
    ? { grade: 'holds-up', message: 'narrow-lidded' }
    : { grade: 'costs-you', message: 'narrow-open' };
}
