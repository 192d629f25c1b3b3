import type { Messages } from '../model/check.js';
import type { Figure, FigureUnit, Figures, Range } from '../model/finding.js';
import type { UnitSystem } from '../model/measure.js';
import { ENGLISH, say, type Language } from './language.js';

/** How a report is worded: units, the locale of its numbers (a BCP 47 tag), and the language of its words; English where left out. */
export interface Wording {
  readonly units: UnitSystem;
  readonly locale: string;
  readonly language?: Language;
}

const NBSP = '\u00a0';

/** Factors from the unit of a figure to the unit it is shown in; exact by NIST Handbook 44, App. C, and the UK Weights and Measures Act 1985. */
const SHOWN: Record<UnitSystem, Partial<Record<FigureUnit, { unit: string; from: (value: number) => number }>>> = {
  metric: {},
  us: {
    mL: { unit: 'fl oz', from: (mL) => mL / 29.5735295625 },
    L: { unit: 'qt', from: (l) => l / 0.946352946 },
    mm: { unit: 'in', from: (mm) => mm / 25.4 },
    m: { unit: 'ft', from: (m) => m / 0.3048 },
    g: { unit: 'oz', from: (g) => g / 28.349523125 },
    kg: { unit: 'lb', from: (kg) => kg / 0.45359237 },
    'g/h': { unit: 'oz/h', from: (g) => g / 28.349523125 },
    '°C': { unit: '°F', from: (c) => c * 1.8 + 32 },
  },
  imperial: {
    mL: { unit: 'fl oz', from: (mL) => mL / 28.4130625 },
    L: { unit: 'pt', from: (l) => l / 0.56826125 },
    mm: { unit: 'in', from: (mm) => mm / 25.4 },
    m: { unit: 'ft', from: (m) => m / 0.3048 },
    g: { unit: 'oz', from: (g) => g / 28.349523125 },
    kg: { unit: 'lb', from: (kg) => kg / 0.45359237 },
    'g/h': { unit: 'oz/h', from: (g) => g / 28.349523125 },
  },
};

/** Units that are told by the sentence and not printed behind the number. */
const UNPRINTED = new Set<string>(['', 'days', 'people', 'rounds', 'loads']);
/** Units that stand close to the number. */
const CLOSE = new Set(['°', '%']);

function places(size: number): number {
  if (size >= 10 || Number.isInteger(size)) return 0;
  return size >= 1 ? 1 : 2;
}

function shown(figure: Figure, wording: Wording): { values: readonly number[]; unit: string; places: number } {
  const values = typeof figure.value === 'number' ? [figure.value] : [figure.value.low, figure.value.high];
  const other = SHOWN[wording.units][figure.unit];
  const converted = other ? values.map(other.from) : values;
  const largest = Math.max(...converted.map(Math.abs));
  return {
    values: converted,
    unit: other?.unit ?? figure.unit,
    // Digits worth showing in millilitres are not those worth showing in ounces.
    places: figure.places === undefined || other ? places(largest) : figure.places,
  };
}

/** Formatters are slow to make and are used again and again; so many are kept. */
const MOST_FORMATS = 16;
const numberFormats = new Map<string, Intl.NumberFormat>();
const pluralRules = new Map<string, Intl.PluralRules>();

function kept<T>(map: Map<string, T>, key: string, make: () => T): T {
  const known = map.get(key);
  if (known !== undefined) return known;
  if (map.size >= MOST_FORMATS) map.clear();
  const made = make();
  map.set(key, made);
  return made;
}

function numberFormat(locale: string, digits: number): Intl.NumberFormat {
  return kept(
    numberFormats,
    `${locale} ${digits}`,
    () =>
      new Intl.NumberFormat(locale, {
        minimumFractionDigits: 0,
        maximumFractionDigits: digits,
        useGrouping: 'min2',
      }),
  );
}

function pluralsOf(locale: string): Intl.PluralRules {
  return kept(pluralRules, locale, () => new Intl.PluralRules(locale));
}

/** The number alone: a range with an en dash, a true minus, the decimal mark of the locale. */
export function formatNumber(figure: Figure, wording: Wording): string {
  const { values, places: digits } = shown(figure, wording);
  const format = numberFormat(wording.locale, digits);
  const words = values.map((value) => format.format(value).replace('-', '−'));
  const unique = words.filter((word, i) => word !== words[i - 1]);
  return unique.join(unique.some((word) => word.startsWith('−')) ? ` ${tell('to', wording)} ` : '–');
}

/** The number with its unit, held together by a no-break space. */
export function formatFigure(figure: Figure, wording: Wording): string {
  const { unit } = shown(figure, wording);
  const number = formatNumber(figure, wording);
  if (UNPRINTED.has(unit)) return number;
  return number + (CLOSE.has(unit) ? '' : NBSP) + unitWord(unit, wording);
}

/** A unit as the language writes it. */
export function unitWord(unit: string, { language = ENGLISH }: Pick<Wording, 'language'>): string {
  return (language.units as Readonly<Record<string, string>>)[unit] ?? unit;
}

/** An English sentence in the language of the report. */
export function tell(english: string, { language = ENGLISH, locale }: Pick<Wording, 'language' | 'locale'>): string {
  return say(english, language, (value) => numberFormat(locale, 3).format(value));
}

/** The messages in the language of the report. */
export function told(messages: Messages, wording: Wording): Messages {
  if ((wording.language ?? ENGLISH) === ENGLISH) return messages;
  return Object.fromEntries(Object.entries(messages).map(([key, english]) => [key, tell(english, wording)]));
}

/** Likely value of a figure. */
export function likely(value: number | Range): number {
  return typeof value === 'number' ? value : value.likely;
}

const PLACEHOLDER = /\{(\w+)(#)?(?::([^|{}]*)\|([^|{}]*))?\}/g;

/**
 * Fills a sentence. `{name}` prints a figure with its unit or a word, `{name#}` the number alone, `{name:round|rounds}` the singular
 * or plural word by the figure. A word that is itself a key of `messages` prints that message, filled; `name` is the person's own word and prints as it is.
 * An unknown name is a programming error: TypeError.
 */
export function fillTemplate(template: string, figures: Figures, messages: Messages, wording: Wording): string {
  return template.replace(PLACEHOLDER, (_, name: string, bare?: string, one?: string, many?: string) => {
    const value = figures[name];
    if (value === undefined)
      throw new TypeError(`No figure "${name}" for the message "${template}": add it to the verdict's figures.`);
    if (typeof value === 'string') {
      const message = name === 'name' ? undefined : messages[value];
      return message === undefined ? value : fillTemplate(message, figures, messages, wording);
    }
    if (one !== undefined && many !== undefined) {
      const high = typeof value.value === 'number' ? value.value : value.value.high;
      return pluralsOf(wording.locale).select(high) === 'one' ? one : many;
    }
    return bare ? formatNumber(value, wording) : formatFigure(value, wording);
  });
}
