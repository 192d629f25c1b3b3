import { GAS_MIX_SHARES } from '../data/fuels.js';
import { ZERO_CELSIUS_K } from '../data/constants.js';
import { defineCheck, figure, type Verdict } from '../model/check.js';
import type { Figures, SumLine } from '../model/finding.js';
import { valueOf } from '../model/given.js';
import type { GasMix, GasShares } from '../model/item.js';
import type { Fuel } from '../model/kit.js';
import { phrase } from '../model/phrase.js';
import { assumed } from '../plan/assumed.js';
import { canisterPressurePa, shareBeforePa, staysLiquidBelowC } from '../physics/fuel.js';

/** What is judged where the canister does not say what it holds: the ends of what is sold. */
const UNKNOWN: readonly GasMix[] = ['butane', 'winter'];

/** How gas leaves a canister: at once and to the end, at first and then fading, or not at all. Best first. */
const STATES = ['runs', 'fades', 'stays'] as const;
type State = (typeof STATES)[number];

/** Does the gas leave the canister in the cold? */
export const coldGas = defineCheck({
  id: 'cold-gas',
  title: 'Gas in the cold',
  asks: 'Does the gas still leave each canister on the coldest night, full and nearly empty?',
  costs: 'No flame when it is cold.',
  needs: ['onePot', 'stoves', 'fuels', 'trip', 'hints', 'plan'],
  cites: [
    'vdi-heat-atlas',
    'mcgarry-1983',
    'rayleigh-1902',
    'iso-2533',
    'cp-upright-cold',
    'cp-canister-chill',
    'cp-gas-mixes',
  ],
  limits:
    'The canister is taken some degrees colder than the air; warmed in a jacket or a bowl of water it does better. Right way up, the lighter gas boils off first and the pressure falls as it empties. The label’s own shares are better than the mix assumed.',
  options: {
    /** Warmest low at which it speaks, °C: above it every mix sold gives gas. */
    speaksFromC: 5,
    /** The same where the low is only assumed from the season, °C: no alarm over a guess. */
    speaksFromAssumedC: -5,
    /** Colder than the air by this as it runs, °C (`cp-canister-chill`). */
    chillC: 5,
    /** Pressure over the air's from which a burner runs well, as a share (`cp-upright-cold`: isobutane mixes fade at some −7 °C). */
    runs: 1.2,
    /** A canister counts as used up with this share of its gas left (common practice, no source). */
    left: 0.1,
  },
  messages: {
    runs: 'At {low} the gas leaves the canister until it is nearly empty.',
    'runs-turned': 'At {low} the canister gives liquid gas, turned over as the list says.',
    fades: 'At {low} the gas leaves the canister at first; it fades when {used} is used.',
    'barely-leaves': 'At {low} the gas barely leaves the canister.',
    some: 'At {low} one canister still gives gas and another, {gas}, gives none or fades sooner.',
    stays: '{gas} stays liquid below {liquid} at {altitude}; at {canister} none comes out.',
    'stays-any': 'At {low} no canister gas vaporises.',
    'hose-fades': 'At {low} the canister has to be turned upside down, on a stove made for that.',
    'mix-missing': 'At {low} it depends on the mix: butane stays liquid, a winter mix burns.',
    margin: '{pressure#} of {wanted}, from nearly empty to full',
    'fix-mix': 'A canister of isobutane and propane: {better} at {low}. Or keep it warm.',
    'fix-liquid': 'A stove on a hose that takes liquid gas, or a petrol stove.',
    question: 'What does the canister hold: butane, isobutane mix, winter mix?',
    'caution-warm': 'A canister warmed over a flame can burst. Warm it in a jacket, or in water a hand can stand.',
    butane: 'Plain butane',
    isobutane: 'An isobutane mix',
    winter: 'A winter mix',
    propane: 'Propane',
    mix: 'This mix',
    vapourLine: 'pressure in the canister at {canister}, from nearly empty to full; in use it is colder than the air',
    airLine: 'the air at this altitude',
    runsLine: 'over the air, to run well',
    wantedLine: 'wanted',
  },
  judge({ onePot, stoves, fuels, trip, hints, plan }, options): Verdict[] {
    const cans = fuels.filter(({ type }) => valueOf(type) === 'gas');
    const low = valueOf(trip.lowC);
    const from = trip.lowC.grounds === 'assumed' ? options.speaksFromAssumedC : options.speaksFromC;
    if (onePot || cans.length === 0 || low === undefined || low > from) return [];
    const canisterC = low - options.chillC;
    const tK = Math.max(170, canisterC + ZERO_CELSIUS_K);
    const air = plan.airPressureKpa;
    const wanted = air * options.runs;
    const onHose = stoves.some(({ form }) => valueOf(form) === 'remote');
    const turned = onHose && hints.canisterTurned !== undefined && valueOf(hints.canisterTurned) === true;
    // Turned over it gives liquid of the mix it holds, so nothing boils off first.
    const pressures = (shares: GasShares) => {
      const full = canisterPressurePa(shares, tK, 1) / 1000;
      return { full, end: turned ? full : canisterPressurePa(shares, tK, options.left) / 1000 };
    };
    const stateOf = (shares: GasShares): State => {
      const { full, end } = pressures(shares);
      if (full <= air) return 'stays';
      return end >= wanted ? 'runs' : 'fades';
    };
    const told = cans.map((can) => {
      const mixes = labelled(can);
      return { can, mixes, states: [...new Set(mixes.map(stateOf))] };
    });
    const worst = (states: readonly State[]) =>
      states.reduce((a, b) => (STATES.indexOf(b) > STATES.indexOf(a) ? b : a));
    const rank = ({ states }: (typeof told)[number]) => STATES.indexOf(worst(states));
    const byState = [...told].sort((a, b) => rank(a) - rank(b));
    const [best, last] = [byState[0]!, byState.at(-1)!];
    const open = told.find(({ states }) => states.length > 1);
    // One canister that runs carries the kit; else what is not known decides.
    const judged = best.states.length === 1 && best.states[0] === 'runs' ? best : (open ?? best);
    const ends = judged.mixes.map(pressures);
    const shares = judged.mixes[0]!;
    const pressure = {
      low: Math.min(...ends.map(({ end }) => end)),
      likely: ends.reduce((sum, { full, end }) => sum + (full + end) / 2, 0) / ends.length,
      high: Math.max(...ends.map(({ full }) => full)),
    };
    const used = shareBeforePa(shares, tK, 1000 * wanted);
    const figures: Figures = {
      low: figure(low, '°C', 0),
      canister: figure(canisterC, '°C', 0),
      pressure: figure(pressure, 'kPa', 0),
      air: figure(air, 'kPa', 0),
      wanted: figure(wanted, 'kPa', 0),
      used: figure(Math.floor(20 * used) * 5, '%', 0),
      gas: nameOf(judged === best && told.length > 1 ? last.can : judged.can),
      liquid: figure(staysLiquidBelowC(shares, air * 1000), '°C', 0),
      altitude: figure(valueOf(trip.altitudeM) ?? 0, 'm', 0),
      better: figure(pressures(GAS_MIX_SHARES.winter).full, 'kPa', 0),
    };
    const sum: SumLine[] = [
      {
        sign: '',
        figure: figure(pressure, 'kPa', 0),
        label: 'vapourLine',
        grounds: 'published',
        cites: ['vdi-heat-atlas', 'mcgarry-1983', 'rayleigh-1902'],
      },
      { sign: '', figure: figure(air, 'kPa', 0), label: 'airLine', grounds: 'published', cites: ['iso-2533'] },
      {
        sign: '×',
        figure: figure(options.runs, '', 1),
        label: 'runsLine',
        grounds: 'common-practice',
        cites: ['cp-upright-cold'],
      },
      { sign: '=', figure: figure(wanted, 'kPa', 0), label: 'wantedLine', grounds: 'worked-out' },
    ];
    const about = {
      margin: 'margin',
      figures,
      sum,
      evidence: cans.map(({ evidence }) => evidence),
      assumptions: assumed([
        [phrase`the lowest temperature`, trip.lowC],
        [phrase`the altitude`, trip.altitudeM],
        ...(judged.can.shares.grounds === 'missing' ? [[phrase`the gas mix`, judged.can.mix] as const] : []),
      ]),
    };
    if (judged.states.length > 1) {
      const { item } = judged.can;
      const question = { ...(item === null ? {} : { item }), field: 'gasMix', message: 'question' } as const;
      return [{ ...about, grade: 'cant-tell', message: 'mix-missing', question, cautions: ['caution-warm'] }];
    }
    const [state] = judged.states;
    const all = told.every(({ states }) => states.length === 1 && states[0] === state);
    const cautions = ['caution-warm'];
    if (state === 'runs')
      return all
        ? [{ ...about, grade: 'holds-up', message: turned ? 'runs-turned' : 'runs', cautions }]
        : [{ ...about, grade: 'costs-you', message: 'some', cautions, fix: 'fix-mix' }];
    const mixHelps = stateOf(GAS_MIX_SHARES.winter) === 'runs' && nameOf(judged.can) !== 'winter';
    const fix = mixHelps ? 'fix-mix' : 'fix-liquid';
    if (!all) return [{ ...about, grade: 'costs-you', message: 'some', cautions, fix }];
    if (onHose && !turned)
      return [
        { ...about, grade: 'costs-you', message: 'hose-fades', cautions, ...(mixHelps ? { fix: 'fix-mix' } : {}) },
      ];
    if (state === 'stays') {
      const message = judged.mixes.length > 1 ? 'stays-any' : 'stays';
      return [{ ...about, grade: 'falls-short', message, cautions, fix }];
    }
    return [{ ...about, grade: 'costs-you', message: used < 0.05 ? 'barely-leaves' : 'fades', cautions, fix }];
  },
});

/** What a canister may hold: the label's shares, its mix, or both ends of what is sold. */
function labelled({ shares, mix }: Fuel): readonly GasShares[] {
  const label = valueOf(shares);
  if (label !== undefined) return [label];
  const named = valueOf(mix);
  return named === undefined ? UNKNOWN.map((name) => GAS_MIX_SHARES[name]) : [GAS_MIX_SHARES[named]];
}

/** How a canister is named in a sentence. */
function nameOf({ shares, mix }: Fuel): GasMix | 'mix' {
  return shares.grounds === 'missing' ? (valueOf(mix) ?? 'mix') : 'mix';
}
