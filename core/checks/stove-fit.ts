import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Stove } from '../model/kit.js';

/** Burners whose flame is as wide as they are; the others have arms that hold the pot over a jet. */
const OPEN_FLAME = new Set(['wood', 'alcohol', 'solid-fuel']);

/** Does the pot match the stove? */
export const stoveFit = defineCheck({
  id: 'stove-fit',
  title: 'Fit on the stove',
  asks: 'Does the base of the pot suit the burner and what it stands on?',
  costs: 'Flame goes up the wall, or the pot slides off.',
  needs: ['pots', 'stoves'],
  cites: ['cp-burner-ratio', 'cp-flame-inside', 'cp-arms', 'cp-upright-base'],
  limits: 'It knows widths and not how a burner throws its flame. A pot locked to its burner is not judged.',
  options: {
    /** Base to open flame: the burner is at least a third narrower, at best half (`cp-burner-ratio`). */
    open: { fails: 1.2, least: 1.5, most: 2 },
    /** A gas flame spreads to this inside the base, mm a side (`cp-flame-inside`). */
    insideMm: 10,
    /** Base over the gap between the arms by this, mm; and at most so many times their span (`cp-arms`). */
    overGapMm: 15,
    spanFactor: 1.6,
    /** On an upright canister stove a base over this sends heat back, mm (`cp-upright-base`). */
    uprightBaseMm: 200,
  },
  messages: {
    fits: 'The base suits the burner.',
    'flame-narrow': 'Flame goes up the wall: heat is lost and the handles get hot.',
    'flame-out': 'The flame is nearly as wide as the pot: most of it goes past.',
    'too-wide': 'The pot is wider than this burner heats evenly.',
    'arms-small': 'The base barely spans the gap between the arms: it can drop or slide.',
    'arms-wide': 'The base reaches far over the arms: it stands loosely.',
    'upright-wide': 'A base this wide sends heat down onto an upright canister, which can burst.',
    'burner-missing': 'No burner width is given: this pot suits a burner of {burners}.',
    'base-missing': 'Without its width, nobody can tell whether the pot suits the burner.',
    margin: '{ratio#} of {band} burners',
    'margin-gas': '{base#} of {band}',
    'margin-missing': 'width not given',
    'fix-ratio': 'A pot of {pots} across, or a burner of {burners}.',
    'fix-gas': 'A pot {atLeast} across or more, or a burner of {gasBurner} or less.',
    'fix-arms': 'A pot {atLeast} across or more, or a grate over the arms.',
    'fix-span': 'A pot {atMost} across or less, or a stove with wider arms.',
    'fix-upright': 'A pot {atMost} across or less, or a stove on a hose.',
    'caution-canister': 'If the canister feels warm, turn the stove off and let it cool.',
    'caution-slide': 'Boiling water burns in a second. Keep feet and hands clear of a pot that stands badly.',
    'ask-burner': 'How wide is the burner or its fire-pot?',
    'ask-base': '“{name}”: how wide is it at the base?',
    baseLine: 'base of the pot',
    burnerLine: 'burner',
    ratioLine: 'burners wide',
    flameLine: 'burner and 10 mm a side',
    gapLine: 'gap between the arms and 15 mm',
    spanLine: '1.6 times the span of the arms',
  },
  judge({ pots, stoves }, options): Verdict[] {
    const stove = stoves[0];
    const pot = pots.find((vessel) => !vessel.lockedToBurner);
    if (stove === undefined || pot === undefined) return [];
    const base = valueOf(pot.baseDiameterMm) ?? valueOf(pot.diameterMm);
    const about = { evidence: [pot.evidence, stove.evidence], item: pot.item };
    if (base === undefined) {
      const known = [stove.burnerMm, stove.armInnerMm, stove.armSpanMm].some((given) => given.grounds !== 'missing');
      const question = {
        ...(pot.item === null ? {} : { item: pot.item }),
        field: 'diameterMm',
        message: 'ask-base',
      } as const;
      return known
        ? [
            {
              ...about,
              grade: 'cant-tell',
              message: 'base-missing',
              margin: 'margin-missing',
              figures: { name: pot.name },
              question,
            },
          ]
        : [];
    }
    const said = isOpenFlame(stove) ? openFlame(base, stove, options) : onArms(base, stove, options);
    return [{ ...about, ...said }];
  },
});

type Options = (typeof stoveFit)['options'];
type Said = Pick<Verdict, 'grade' | 'message' | 'margin' | 'figures' | 'sum' | 'fix' | 'cautions' | 'question'>;

function openFlame(base: number, stove: Stove, { open }: Options): Said {
  const flame = valueOf(stove.burnerMm);
  const burners = figure({ low: base / open.most, likely: base / 1.75, high: base / open.least }, 'mm', 0);
  if (flame === undefined) return burnerMissing(stove, burners);
  const ratio = base / flame;
  const figures: Figures = {
    ratio: figure(ratio, '', 2),
    band: figure({ low: open.least, likely: 1.75, high: open.most }, '', 1),
    burners,
    pots: figure({ low: flame * open.least, likely: flame * 1.75, high: flame * open.most }, 'mm', 0),
  };
  const sum: SumLine[] = [
    { sign: '', figure: figure(base, 'mm', 0), label: 'baseLine', grounds: 'stated' },
    { sign: '÷', figure: figure(flame, 'mm', 0), label: 'burnerLine', grounds: 'stated' },
    { sign: '=', figure: figure(ratio, '', 2), label: 'ratioLine', grounds: 'worked-out' },
  ];
  const said = { margin: 'margin', figures, sum };
  if (ratio >= open.least && ratio <= open.most) return { ...said, grade: 'holds-up', message: 'fits' };
  if (ratio > open.most) return { ...said, grade: 'costs-you', message: 'too-wide', fix: 'fix-ratio' };
  return ratio >= open.fails
    ? { ...said, grade: 'costs-you', message: 'flame-narrow', fix: 'fix-ratio' }
    : { ...said, grade: 'falls-short', message: 'flame-out', fix: 'fix-ratio' };
}

/** Bases that suit a stove, mm across, as far as its widths are known: from 0 where none sets a least, to Infinity where none sets a most. */
export function suitedBases(
  stove: Pick<Stove, 'type' | 'form' | 'burnerMm' | 'armInnerMm' | 'armSpanMm'>,
  options: Options,
): { readonly least: number; readonly most: number } {
  const flame = valueOf(stove.burnerMm);
  if (isOpenFlame(stove))
    return flame === undefined
      ? { least: 0, most: Infinity }
      : { least: flame * options.open.least, most: flame * options.open.most };
  const gap = valueOf(stove.armInnerMm);
  const span = valueOf(stove.armSpanMm);
  return {
    least: Math.max(
      flame === undefined ? 0 : flame + 2 * options.insideMm,
      gap === undefined ? 0 : gap + options.overGapMm,
    ),
    most: Math.min(
      span === undefined ? Infinity : span * options.spanFactor,
      valueOf(stove.form) === 'upright' ? options.uprightBaseMm : Infinity,
    ),
  };
}

/** The widths of base that an open flame suits; null for other stoves, and where its width is not known. */
export function suitedWidths(stove: Stove, options: Options): readonly [least: number, most: number] | null {
  if (!isOpenFlame(stove) || stove.burnerMm.grounds === 'missing') return null;
  const { least, most } = suitedBases(stove, options);
  return [least, most];
}

function isOpenFlame({ type }: Pick<Stove, 'type'>): boolean {
  const burns = valueOf(type);
  return burns !== undefined && OPEN_FLAME.has(burns);
}

function onArms(base: number, stove: Stove, options: Options): Said {
  const flame = valueOf(stove.burnerMm);
  const gap = valueOf(stove.armInnerMm);
  const span = valueOf(stove.armSpanMm);
  const upright = valueOf(stove.form) === 'upright';
  const { least, most } = suitedBases(stove, options);
  const line = (sign: SumLine['sign'], value: number, label: string): SumLine => ({
    sign,
    figure: figure(value, 'mm', 0),
    label,
    grounds: label === 'baseLine' ? 'stated' : 'worked-out',
  });
  const figures: Figures = {
    base: figure(base, 'mm', 0),
    band: figure(band(least, most), 'mm', 0),
    atLeast: figure(least, 'mm', 0),
    ...(most === Infinity ? {} : { atMost: figure(most, 'mm', 0) }),
    gasBurner: figure(Math.max(0, base - 2 * options.insideMm), 'mm', 0),
  };
  const sum = [
    line('', base, 'baseLine'),
    ...(flame === undefined ? [] : [line('', flame + 2 * options.insideMm, 'flameLine')]),
    ...(gap === undefined ? [] : [line('', gap + options.overGapMm, 'gapLine')]),
    ...(span === undefined ? [] : [line('', span * options.spanFactor, 'spanLine')]),
  ];
  const said = { margin: 'margin-gas', figures, sum };
  if (upright && base > options.uprightBaseMm)
    return { ...said, grade: 'can-hurt', message: 'upright-wide', fix: 'fix-upright', cautions: ['caution-canister'] };
  if (gap !== undefined && base < gap + options.overGapMm)
    return { ...said, grade: 'can-hurt', message: 'arms-small', fix: 'fix-arms', cautions: ['caution-slide'] };
  if (flame !== undefined && base < flame + 2 * options.insideMm)
    return { ...said, grade: 'costs-you', message: 'flame-narrow', fix: 'fix-gas' };
  if (base > most) return { ...said, grade: 'costs-you', message: 'arms-wide', fix: 'fix-span' };
  if (flame === undefined)
    return burnerMissing(stove, figure({ low: base / 2, likely: base / 1.75, high: base / 1.5 }, 'mm', 0));
  return { ...said, grade: 'holds-up', message: 'fits' };
}

/** The burners that the pot suits are the answer, where the burner is not known. */
function burnerMissing(stove: Stove, burners: ReturnType<typeof figure>): Said {
  const question = {
    ...(stove.item === null ? {} : { item: stove.item }),
    field: 'burnerMm',
    message: 'ask-burner',
  } as const;
  return { grade: 'cant-tell', message: 'burner-missing', margin: 'margin-missing', figures: { burners }, question };
}

/** From the least to the most that suits; the one end that is known where only one is. */
function band(least: number, most: number): number | { low: number; likely: number; high: number } {
  if (most === Infinity) return least;
  return least === 0 ? most : { low: Math.min(least, most), likely: (least + most) / 2, high: most };
}
