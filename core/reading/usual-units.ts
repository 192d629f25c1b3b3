import type { Reading } from '../model/reading.js';
import type { Row } from './formats/rows.js';
import type { Stretch } from './items/stretch.js';
import type { Unit } from './quantities/units.js';
import type { Dictionary } from './text/lexicon.js';
import { tokenise } from './text/tokens.js';
import { findTerms } from './text/terms.js';

const SAMPLE = 20_000;
const IMPERIAL_LOCALES = ['en-GB', 'en-IE'];

/** The units a text is mostly written in, and whether anything tells US from imperial pints. */
export function systemOf(
  text: string,
  _rows: readonly Row[],
  dictionary: Dictionary,
  locale: string | undefined,
): { system: Reading['units']; known: boolean } {
  const tokens = tokenise(text, 0, Math.min(text.length, SAMPLE), true);
  const terms = findTerms(tokens, dictionary);
  const signs = terms.filter((term) => term.role === 'imperialSigns').length;
  const said = terms.some((term) => term.role === 'imperial');
  let metric = 0;
  let customary = 0;
  for (const [i, token] of tokens.entries()) {
    if (token.type !== 'number') continue;
    const unit = tokens[i + 1]?.fold ?? '';
    if (
      [
        'ml',
        'l',
        'g',
        'kg',
        'cm',
        'mm',
        'dl',
        'cl',
        'litre',
        'litres',
        'liter',
        'liters',
        'gramm',
        'gr',
        'cc',
        'lt',
        'lts',
      ].includes(unit)
    )
      metric++;
    if (
      [
        'oz',
        'lb',
        'lbs',
        'qt',
        'fl',
        'in',
        '"',
        'pint',
        'pints',
        'quart',
        'quarts',
        'ounces',
        'gal',
        'cup',
        'cups',
        'inches',
        'pt',
      ].includes(unit)
    )
      customary++;
  }
  const imperial = said || signs > 1 || (locale !== undefined && IMPERIAL_LOCALES.includes(locale));
  if (customary > metric) return { system: imperial ? 'imperial' : 'us', known: imperial || locale !== undefined };
  return { system: 'metric', known: imperial || locale !== undefined };
}

/** The unit of most masses, for columns whose heads name none. */
export function usualMassUnit(stretches: readonly Stretch[]): Unit | undefined {
  const counts = new Map<Unit, number>();
  for (const stretch of stretches)
    for (const measure of stretch.measures)
      if (measure.unit.dimension === 'mass' || measure.unit.dimension === 'ounce')
        counts.set(measure.unit, (counts.get(measure.unit) ?? 0) + 1);
  let best: Unit | undefined;
  for (const [unit, count] of counts) if (best === undefined || count > (counts.get(best) ?? 0)) best = unit;
  return best;
}
