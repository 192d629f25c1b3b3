import type { Reading } from '../model/reading.js';
import { termsOf, type Stretch } from './items/stretch.js';
import type { UnitName } from '../data/words/words.js';
import { isDashed, type MeasureContext } from './quantities/measures.js';
import { unitByName, UNITS, type Unit } from './quantities/units.js';
import type { Dictionary, Opening, Role } from './text/lexicon.js';
import type { Token } from './text/tokens.js';
import { findTerms } from './text/terms.js';

const IMPERIAL_LOCALES = ['en-GB', 'en-IE'];
const METRIC_WORDS = new Set('ml l g kg cm mm dl cl litre litres liter liters gramm gr cc lt lts'.split(' '));
const CUSTOMARY_WORDS = new Set(
  'oz lb lbs qt fl in " pint pints quart quarts ounces gal cup cups inches pt'.split(' '),
);

/** So many rows that open with a count, a dash and a word make it the way of the list. */
const LEAST_DASHES = 3;

const tellsSystem = (opening: Opening) => opening.tellsSystem;

/** The units that a text is mostly written in by the lines of its beginning, and whether anything tells US from imperial pints. */
export function systemOf(
  sample: readonly (readonly Token[])[],
  dictionary: Dictionary,
  locale: string | undefined,
): { system: Reading['units']; measures: Pick<MeasureContext, 'system' | 'pints' | 'systemKnown' | 'dashed'> } {
  let signs = false;
  let said = false;
  let metric = 0;
  let customary = 0;
  let dashes = 0;
  for (const line of sample) {
    if (line[2]?.type === 'word' && isDashed(line)) dashes++;
    for (const { role } of findTerms(line, dictionary, tellsSystem)) {
      if (role === 'imperialSigns') signs = true;
      else if (role === 'imperial') said = true;
    }
    let quoted = false;
    for (let i = 0; i + 1 < line.length; i++) {
      if (line[i]!.fold === '"') quoted = !quoted && line[i - 1]?.type !== 'number';
      if (line[i]!.type !== 'number' || (quoted && line[i + 1]!.fold === '"')) continue;
      const unit = line[i + 1]!.fold;
      if (METRIC_WORDS.has(unit)) metric++;
      if (CUSTOMARY_WORDS.has(unit)) customary++;
    }
  }
  const british = locale !== undefined && IMPERIAL_LOCALES.includes(locale);
  const system = said || british ? 'imperial' : 'us';
  const pints = system === 'imperial' || signs ? 'imperial' : 'us';
  const measures = {
    system,
    pints,
    systemKnown: said || locale !== undefined,
    dashed: dashes >= LEAST_DASHES,
  } as const;
  return { system: customary > metric ? system : 'metric', measures };
}

/** Units of masses that show none. */
export interface MassUnits {
  /** Of every figure, where a line says so. */
  readonly said?: Unit;
  /** Of columns whose heads name none. */
  readonly usual?: Unit;
  /** Of such columns where nothing in the text tells: by how large their figures are. */
  readonly guessed?: Unit;
}

export function massUnitsOf(stretches: readonly Stretch[]): MassUnits {
  const said = saidMassUnit(stretches);
  const usual = said ?? usualMassUnit(stretches);
  if (usual === undefined) return areGrams(stretches) ? { guessed: UNITS.g } : {};
  return { ...(said === undefined ? {} : { said }), usual };
}

const MASSES: readonly string[] = ['each', 'total', 'mass'];
/** Fewer figures tell nothing. */
const LEAST_FIGURES = 3;
/** In ounces so much would be 3 kg, in kilograms a hundred. */
const LEAST_GRAMS = 100;

/** Whole figures of which one is far too large for ounces. */
function areGrams(stretches: readonly Stretch[]): boolean {
  const figures = stretches.flatMap(({ text, row }) =>
    row.cells
      .filter(({ column, start, end }) => end > start && column !== undefined && MASSES.includes(column.meaning))
      .map(({ start, end }) => Number(text.slice(start, Math.min(end, start + LONGEST_FIGURE)).trim())),
  );
  const own = figures.filter((figure) => !Number.isNaN(figure));
  return own.length >= LEAST_FIGURES && own.every(Number.isInteger) && Math.max(...own) >= LEAST_GRAMS;
}

const LONGEST_FIGURE = 10;

/** "All figures in grams": the unit of every figure that shows none, where a line without a number says so. */
function saidMassUnit(stretches: readonly Stretch[]): Unit | undefined {
  for (const stretch of stretches) {
    if (stretch.row.bullet || !stretch.tells(UNIT) || stretch.tokens.some((token) => token.type === 'number')) continue;
    for (const term of termsOf(stretch, 'unit')) {
      const unit = unitByName(term.value as UnitName);
      if (isMass(unit) && termsOf(stretch, 'asides').some((word) => word.last === term.first - 1)) return unit;
    }
  }
  return undefined;
}

const UNIT: ReadonlySet<Role> = new Set(['unit']);

/** The unit of masses in columns whose heads name none: as a sentence of the text says ("all in grams"), else that of most masses. */
function usualMassUnit(stretches: readonly Stretch[]): Unit | undefined {
  const counts = new Map<Unit, number>();
  for (const stretch of stretches) {
    const said =
      stretch.row.bullet || stretch.row.type === 'columns'
        ? undefined
        : stretch.terms.find(
            (term) =>
              term.role === 'unit' &&
              !stretch.measures.some((measure) => measure.first < term.first && measure.last >= term.first),
          );
    const unit = said === undefined ? undefined : unitByName(said.value as UnitName);
    if (
      said !== undefined &&
      unit !== undefined &&
      isMass(unit) &&
      stretch.terms.some((term) => term.role === 'weighs')
    )
      return unit;
    for (const measure of stretch.measures)
      if (isMass(measure.unit)) counts.set(measure.unit, (counts.get(measure.unit) ?? 0) + 1);
  }
  let best: Unit | undefined;
  for (const [unit, count] of counts) if (best === undefined || count > (counts.get(best) ?? 0)) best = unit;
  return best;
}

function isMass(unit: Unit): boolean {
  return unit.dimension === 'mass' || unit.dimension === 'ounce';
}
