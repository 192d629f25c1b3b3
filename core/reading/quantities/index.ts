import { dictionaryOf, languageTags } from '../text/lexicon.js';
import { findTerms } from '../text/terms.js';
import { tokenise } from '../text/tokens.js';
import { findMeasures } from './measures.js';
import { FLUID_OUNCE_ML, IMPERIAL_FLUID_OUNCE_ML, UNITS } from './units.js';

/** What a typed measure means: mL, mm, g or °C; `most` where it is a range. */
export interface ParsedMeasure {
  readonly value: number;
  readonly most?: number;
}

const DECIMAL_COMMA = ['de', 'fr', 'es', 'it', 'pt', 'sv', 'nb', 'no', 'nn', 'da', 'nl', 'pl', 'fi', 'cs', 'ru'];

/**
 * Reads a measure as people type it: "4 1/2 in", "1,1 l", "38 fl oz imp", "750". A number alone is mL, mm, g or °C.
 * Null where it is no such measure.
 */
export function parseMeasure(
  text: string,
  dimension: 'volume' | 'length' | 'mass' | 'temperature',
  locale?: string,
): ParsedMeasure | null {
  if (text.length > 200) return null;
  const base = locale?.split('-')[0] ?? 'en';
  const tags = languageTags();
  const dictionary = dictionaryOf([...tags.filter((tag) => tag === base), ...tags.filter((tag) => tag !== base)]);
  const tokens = tokenise(text, 0, text.length);
  const terms = findTerms(tokens, dictionary);
  const imperial = locale === 'en-GB' || locale === 'en-IE';
  const decimal = DECIMAL_COMMA.includes(base) ? ',' : '.';
  const { measures, bare } = findMeasures(tokens, terms, {
    decimal,
    system: imperial ? 'imperial' : 'us',
    pints: imperial ? 'imperial' : 'us',
    systemKnown: imperial,
    dashed: false,
  });
  const sign =
    tokens.some(
      (token, i) =>
        (token.fold === '-' || token.fold === '−' || token.fold === '–') && tokens[i + 1]?.type === 'number' && i === 0,
    ) || terms.some((term) => term.role === 'minus' && term.first === 0)
      ? -1
      : 1;
  if (sign < 0 && dimension !== 'temperature') return null;
  const [measure] = measures;
  if (measure !== undefined) {
    if (measures.length > 1 || measure.joined === 'times' || measure.joined === 'list') return null;
    const factor =
      measure.unit.dimension === 'ounce'
        ? dimension === 'volume'
          ? measure.system === 'imperial'
            ? IMPERIAL_FLUID_OUNCE_ML
            : FLUID_OUNCE_ML
          : UNITS.oz.factor
        : 1;
    const fits =
      measure.unit.dimension === dimension ||
      (measure.unit.dimension === 'ounce' && (dimension === 'volume' || dimension === 'mass'));
    if (!fits || bare.length > 0) return null;
    const [value = 0, most] = measure.values.map((one) => tidy(one * factor));
    const signed = measure.unit.id === 'f' && sign < 0 ? ((-(value * 9) / 5 - 64) * 5) / 9 : value * sign;
    return most === undefined ? { value: signed } : { value: signed, most };
  }
  const [first, second] = bare;
  if (first === undefined || bare.length > 2) return null;
  if (tokens.some((token) => token.type === 'word')) return null;
  if (second !== undefined)
    return sign > 0 && second.value > first.value ? { value: first.value, most: second.value } : null;
  return { value: first.value * sign };
}

/** Without what binary arithmetic leaves behind: 12 in are 304.8 mm. */
function tidy(value: number): number {
  return Number(value.toPrecision(12));
}
