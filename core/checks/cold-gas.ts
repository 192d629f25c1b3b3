import { GAS_MIX_SHARES } from '../data/fuels.js';
import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, Range, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { GasMix } from '../model/item.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';
import { eachEnd } from '../plan/tasks.js';
import { canisterPressurePa, staysLiquidBelowC } from '../physics/fuel.js';

/** What is judged where the canister does not say what it holds: the ends of what is sold. */
const UNKNOWN: readonly GasMix[] = ['butane', 'winter'];

/** Does the gas leave the canister in the cold? */
export const coldGas = defineCheck({
  id: 'cold-gas',
  title: 'Gas in the cold',
  asks: 'Does the gas still leave the canister on the coldest night?',
  costs: 'No flame when it is cold.',
  needs: ['onePot', 'stoves', 'fuels', 'trip', 'plan'],
  cites: ['vdi-heat-atlas', 'mcgarry-1983', 'iso-2533', 'cp-upright-cold', 'cp-canister-chill', 'cp-gas-mixes'],
  limits:
    'The canister is taken some degrees colder than the air; warmed in a jacket or a bowl of water it does better. The label’s own shares are better than the mix assumed.',
  options: {
    /** Warmest low at which it speaks, °C: above it every mix sold gives gas. */
    speaksFromC: 5,
    /** The same where the low is only assumed from the season, °C: no alarm over a guess. */
    speaksFromAssumedC: -5,
    /** Colder than the air by this as it runs, °C (`cp-canister-chill`). */
    chillC: 5,
    /** Pressure over the air's from which a burner runs well, as a share (`cp-upright-cold`: isobutane mixes fade at some −7 °C). */
    runs: 1.2,
  },
  messages: {
    runs: 'The gas still leaves the canister at {low}.',
    fades: 'At {low} the gas barely leaves the canister, and less as it empties.',
    stays: '{gas} stays liquid below {liquid} at {altitude}; at {canister} none comes out.',
    'stays-any': 'At {low} no gas comes out of any canister sold: it stays liquid.',
    'hose-fades': 'At {low} it needs the canister turned over, on a stove made for that.',
    'mix-missing': 'At {low} it hangs on the mix: butane stays liquid, a winter mix burns.',
    margin: '{vapour#} of {air}, to leave the canister',
    'fix-mix': 'A canister of isobutane and propane: {better} at {low}. Or keep it warm.',
    'fix-liquid': 'A stove on a hose that takes liquid gas, or a petrol stove.',
    'caution-warm': 'A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.',
    butane: 'Plain butane',
    isobutane: 'An isobutane mix',
    winter: 'A winter mix',
    propane: 'Propane',
    question: 'What does the canister hold: butane, isobutane mix, winter mix?',
    vapourLine: 'pressure of the gas at {canister}, the canister colder than the air as it runs',
    airLine: 'the air at this altitude',
    overLine: 'over the air',
  },
  judge({ onePot, stoves, fuels, trip, plan }, options): Verdict[] {
    const low = valueOf(trip.lowC);
    const can = fuels.find(({ type }) => valueOf(type) === 'gas');
    const from = trip.lowC.grounds === 'assumed' ? options.speaksFromAssumedC : options.speaksFromC;
    if (onePot || can === undefined || low === undefined || low > from) return [];
    const canisterC = low - options.chillC;
    const pressures = (mix: GasMix) => {
      const { full, nearlyEmpty } = canisterPressurePa(GAS_MIX_SHARES[mix], Math.max(170, canisterC + 273.15));
      return { full: full / 1000, nearlyEmpty: nearlyEmpty / 1000 };
    };
    const mix = valueOf(can.mix);
    const air = plan.airPressureKpa;
    const state = (name: GasMix) => {
      const { full, nearlyEmpty } = pressures(name);
      if (full <= air) return 'stays';
      return nearlyEmpty <= air || full < air * options.runs ? 'fades' : 'runs';
    };
    const onHose = stoves.some(({ form }) => valueOf(form) === 'remote');
    const states = mix === undefined ? UNKNOWN.map(state) : [state(mix)];
    const judged = mix ?? 'butane';
    const shown: Record<keyof Range, GasMix> = mix
      ? { low: mix, likely: mix, high: mix }
      : { low: 'butane', likely: 'isobutane', high: 'winter' };
    const full = eachEnd((end) => pressures(shown[end]).full);
    const over = eachEnd((end) => full[end] - air);
    const figures: Figures = {
      low: figure(low, '°C', 0),
      canister: figure(canisterC, '°C', 0),
      vapour: figure(full, 'kPa', 0),
      air: figure(air, 'kPa', 0),
      gas: judged,
      liquid: figure(staysLiquidBelowC(GAS_MIX_SHARES[judged], air * 1000), '°C', 0),
      altitude: figure(valueOf(trip.altitudeM) ?? 0, 'm', 0),
      better: figure(pressures('winter').full, 'kPa', 0),
    };
    const sum: SumLine[] = [
      {
        sign: '',
        figure: figure(full, 'kPa', 0),
        label: 'vapourLine',
        grounds: 'published',
        cites: ['vdi-heat-atlas', 'mcgarry-1983'],
      },
      { sign: '−', figure: figure(air, 'kPa', 0), label: 'airLine', grounds: 'published', cites: ['iso-2533'] },
      { sign: '=', figure: figure(over, 'kPa', 0), label: 'overLine', grounds: 'worked-out' },
    ];
    const evidence = [can.evidence];
    const about = {
      margin: 'margin',
      figures,
      sum,
      evidence,
      assumptions: assumed([
        [phrase`the lowest temperature`, trip.lowC],
        [phrase`the altitude`, trip.altitudeM],
        [phrase`the gas mix`, can.mix],
      ]),
    };
    if (new Set(states).size > 1) {
      const question = {
        ...(can.item === null ? {} : { item: can.item }),
        field: 'gasMix',
        message: 'question',
      } as const;
      return [{ ...about, grade: 'cant-tell', message: 'mix-missing', question }];
    }
    const [only] = states;
    if (only === 'runs') return [{ ...about, grade: 'holds-up', message: 'runs' }];
    const cautions = ['caution-warm'];
    const mixHelps = judged !== 'winter' && state('winter') === 'runs';
    if (onHose)
      return [
        { ...about, grade: 'costs-you', message: 'hose-fades', cautions, ...(mixHelps ? { fix: 'fix-mix' } : {}) },
      ];
    return [
      {
        ...about,
        grade: only === 'stays' ? 'falls-short' : 'costs-you',
        message: mix === undefined && only === 'stays' ? 'stays-any' : (only ?? 'fades'),
        cautions,
        fix: mixHelps ? 'fix-mix' : 'fix-liquid',
      },
    ];
  },
});
