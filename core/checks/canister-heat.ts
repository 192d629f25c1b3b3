import { ZERO_CELSIUS_K } from '../data/constants.js';
import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { Stove, Thing, Vessel } from '../model/kit.js';
import { gasSharesOf } from '../plan/gas.js';
import { mixturePressurePa } from '../physics/fuel.js';

/** What reaches far over the burner and throws its heat down. */
const GRIDDLE = /(?<!\p{L})(?:griddles?|planchas?|hot ?plates?|foil pans?)(?!\p{L})/iu;

/** Does anything send heat back to an upright canister? */
export const canisterHeat = defineCheck({
  id: 'canister-heat',
  title: 'Heat on the canister',
  asks: 'Does a windscreen, a griddle or a wide pan send heat back to a canister under the burner?',
  costs: 'A canister that overheats can burst.',
  needs: ['stoves', 'windscreens', 'vessels', 'fuels'],
  cites: ['cp-windscreen', 'cp-upright-base', 'en-417', 'vdi-heat-atlas'],
  limits:
    'Rare, and severe. It knows what is carried and not how it is set up. Where several stoves are carried, the screen may be another’s.',
  options: {
    /** A pan over this sends heat back, mm (`cp-upright-base`). */
    wideMm: 200,
    /** The gas between these shows how pressure climbs, °C: a mild day, and what a canister is made to stand (`en-417`). */
    coolC: 20,
    warmC: 50,
  },
  messages: {
    windscreen: 'If the windscreen closes round the canister, it traps heat and the canister can burst.',
    pan: 'A griddle or pan this wide sends heat down onto an upright canister, which can burst.',
    'form-missing': 'A windscreen that closes round a canister under the burner traps heat.',
    margin: '× {ratio#} pressure, {cool#} to {warm}',
    'fix-windscreen':
      'A stove on a hose, with the screen between burner and canister. On this one no screen, unless its maker’s instructions allow it.',
    'fix-pan': 'A pan of {wide} or less. Or a stove on a hose.',
    caution:
      'If the canister feels warm, turn the stove off and let it cool. Canisters are made for the pressure at {warm}, and for no more.',
    question: 'Does the stove screw onto the canister, or stand beside it on a hose?',
    warmLine: 'pressure of the gas carried at {warm}',
    coolLine: 'the same at {cool}',
    ratioLine: 'times the pressure',
  },
  judge({ stoves, windscreens, vessels, fuels }, { wideMm, coolC, warmC }): Verdict[] {
    const gas = stoves.filter(({ type }) => valueOf(type) === 'gas' || valueOf(type) === 'integrated');
    const upright = gas.find(({ form }) => valueOf(form) === 'upright');
    const unknown = gas.find(({ form }) => form.grounds === 'missing');
    const [screen] = windscreens;
    const shares = gasSharesOf(fuels.find(({ type }) => (valueOf(type) ?? 'gas') === 'gas'));
    const warm = mixturePressurePa(shares, warmC + ZERO_CELSIUS_K) / 1000;
    const cool = mixturePressurePa(shares, coolC + ZERO_CELSIUS_K) / 1000;
    const ratio = figure(warm / cool, '', 1);
    const figures: Figures = {
      ratio,
      cool: figure(coolC, '°C'),
      warm: figure(warmC, '°C'),
      wide: figure(wideMm, 'mm'),
    };
    const published = { grounds: 'published', cites: ['vdi-heat-atlas'] } as const;
    const sum: readonly SumLine[] = [
      { sign: '', figure: figure(warm, 'kPa', 0), label: 'warmLine', ...published },
      { sign: '÷', figure: figure(cool, 'kPa', 0), label: 'coolLine', ...published },
      { sign: '=', figure: ratio, label: 'ratioLine', grounds: 'worked-out' },
    ];
    const about = { margin: 'margin', figures, sum, cautions: ['caution'] };
    const hurts = (message: string, thing: Thing, stove: Stove): Verdict => ({
      ...about,
      grade: 'can-hurt',
      message,
      evidence: [thing.evidence, stove.evidence],
      fix: `fix-${message}`,
    });

    if (upright !== undefined) {
      const pan = vessels.find((vessel) => throwsHeatBack(vessel, wideMm));
      return [
        ...(screen === undefined ? [] : [hurts('windscreen', screen, upright)]),
        ...(pan === undefined ? [] : [hurts('pan', pan, upright)]),
      ];
    }
    if (unknown === undefined || screen === undefined) return [];
    const item = unknown.item === null ? {} : { item: unknown.item };
    return [
      {
        ...about,
        grade: 'cant-tell',
        message: 'form-missing',
        evidence: [screen.evidence, unknown.evidence],
        question: { ...item, field: 'stoveForm', message: 'question' },
      },
    ];
  },
});

/** A griddle, or a pan wider than the burner below is made for; the width of pots is judged with their fit on the stove. */
function throwsHeatBack({ kind, name, evidence, diameterMm, baseDiameterMm }: Vessel, wideMm: number): boolean {
  if (kind !== 'pan') return false;
  const width = valueOf(baseDiameterMm) ?? valueOf(diameterMm) ?? 0;
  return width > wideMm || GRIDDLE.test(`${name} ${evidence.quote}`);
}
