import { UNITS } from '../../reading/quantities/units.js';
import type { Figure, Row } from '../rows/row.js';
import type { Thing } from '../things/thing.js';
import type { Scene } from './scene.js';
import { isLiquid, isVessel, namesContainer } from './vessels.js';

/** Whether ounces are of volume: before the noun of a vessel, or too many to be its mass. Ounces are of mass everywhere else. */
export function ouncesAreVolume(scene: Scene, thing: Thing, ounces: Figure): boolean {
  const { row } = scene;
  const { kind } = thing;
  const flask = kind === 'fuel' && thing.fuel === undefined && namesContainer(scene, thing);
  if (kind === 'pan' || !(isVessel(kind) || isLiquid(thing) || flask || kind === 'other-cook')) return false;
  const others = scene.ownFigures(thing, (figure) => figure !== ounces);
  const weighed = others.some(({ unit }) => unit.dimension === 'mass');
  const volume = others.find(({ unit }) => unit.dimension === 'volume');
  if (volume !== undefined) return isSizeAgain(volume, ounces) || (flask && weighed && ounces.last === thing.first - 1);
  if (row.beside('weighs', ounces.first, ounces.last, 1) !== undefined) return false;
  const value = ounces.values[0] ?? 0;
  const before = ounces.last < thing.first;
  if (isMassAgain(row, ounces, others, before || (value >= 8 && Number.isInteger(value)))) return false;
  if (before) return kind === 'fuel' || Number.isInteger(value) || !isScaled(row, ounces, value);
  const rivals = others.filter(({ unit }) => unit.dimension === 'ounce');
  if (rivals.length > 0) return ounces === roomier([...rivals, ounces].sort((a, b) => a.first - b.first));
  return weighed || scene.isWeighed(thing) || isMany(row, thing, ounces, value);
}

/** "1 L / 32 oz": round figures of the same size differ by less than this. */
const ROUNDED = 0.08;

function isSizeAgain(volume: Figure, ounces: Figure): boolean {
  const ml = (ounces.values[0] ?? 0) * UNITS.floz.factor;
  return volume.values.some((value) => Math.abs(value - ml) <= ROUNDED * ml);
}

/** "170 g / 6 oz": the same mass twice, in two units; ounces that may as well be a volume must stand right beside the grams. */
function isMassAgain(row: Row, ounces: Figure, others: readonly Figure[], beside: boolean): boolean {
  const grams = (ounces.values[0] ?? 0) * UNITS.oz.factor;
  return others.some((other) => {
    if (other.unit.dimension !== 'mass' || Math.abs((other.values[0] ?? 0) - grams) > 0.04 * grams) return false;
    const [from, to] = ounces.first < other.first ? [ounces.last, other.first] : [other.last, ounces.first];
    return !beside || (to === from + 2 && row.is(from + 1, '/', '(', '='));
  });
}

/** Ounces: no vessel of a size with tenths is smaller. */
const LEAST_TENTHS = 8;

/** "2.1 oz mug", "10.5 oz - mug": tenths of few ounces, or before a dash, come off a scale. */
function isScaled(row: Row, { last }: Figure, value: number): boolean {
  return value < LEAST_TENTHS || (row.is(last + 1, '-', '–') && row.tokens.gap[last + 1]! > 0);
}

/** Of a vessel's two figures in ounces the one that it holds: the larger, unless they are close; then the first. */
function roomier([first, second]: readonly Figure[]): Figure | undefined {
  const value = (figure: Figure | undefined) => figure?.values[0] ?? 0;
  return value(second) >= 2 * value(first) ? second : first;
}

/** Whole ounces, too many for the mass of such a thing. What a dash or a colon sets apart is a mass more often. */
function isMany(row: Row, thing: Thing, ounces: Figure, value: number): boolean {
  if (!Number.isInteger(value)) return false;
  const set = row.is(ounces.first - 1, '-', '–', ':', '.') || row.tokens.gap[ounces.first]! > 1;
  if (set && (value < 16 || thing.kind === 'kettle')) return false;
  const cooks = thing.kind === 'pot' || thing.kind === 'kettle';
  const least = cooks ? 16 : thing.kind === 'fuel' ? 1 : 8;
  return value >= least || (ounces.first === thing.last + 1 && value >= 8 && !cooks);
}
