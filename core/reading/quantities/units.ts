import type { UnitName } from '../../data/words/words.js';

export type Dimension = 'volume' | 'mass' | 'length' | 'temperature' | 'ounce' | 'other';
export type System = 'metric' | 'us' | 'imperial';

/** A unit: what it measures and its size in mL, g or mm. `imperial` where that size differs from the US one. */
export interface Unit {
  readonly id: string;
  readonly dimension: Dimension;
  readonly factor: number;
  readonly imperial?: number;
  readonly metric?: true;
}

/** Exact by definition: NIST Handbook 44, appendix C; the imperial gallon by the UK's Weights and Measures Act 1985. */
const OUNCE_G = 28.349523125;
const POUND_G = 453.59237;
const INCH_MM = 25.4;
const US_GALLON_ML = 3785.411784;
const IMPERIAL_GALLON_ML = 4546.09;

const unit = (id: string, dimension: Dimension, factor: number, imperial?: number): Unit =>
  imperial === undefined ? { id, dimension, factor, metric: true } : { id, dimension, factor, imperial };

export const UNITS = {
  ml: unit('ml', 'volume', 1),
  cl: unit('cl', 'volume', 10),
  dl: unit('dl', 'volume', 100),
  l: unit('l', 'volume', 1000),
  floz: unit('floz', 'volume', US_GALLON_ML / 128, IMPERIAL_GALLON_ML / 160),
  cup: unit('cup', 'volume', US_GALLON_ML / 16, US_GALLON_ML / 16),
  pint: unit('pint', 'volume', US_GALLON_ML / 8, IMPERIAL_GALLON_ML / 8),
  quart: unit('quart', 'volume', US_GALLON_ML / 4, IMPERIAL_GALLON_ML / 4),
  gallon: unit('gallon', 'volume', US_GALLON_ML, IMPERIAL_GALLON_ML),
  g: unit('g', 'mass', 1),
  kg: unit('kg', 'mass', 1000),
  hg: unit('hg', 'mass', 100),
  dag: unit('dag', 'mass', 10),
  /** The pound that cooks use where all else is metric. */
  halfKilo: unit('halfKilo', 'mass', 500),
  lb: unit('lb', 'mass', POUND_G, POUND_G),
  /** Of mass or of volume: the place tells, then plausibility, then a question. */
  oz: unit('oz', 'ounce', OUNCE_G, OUNCE_G),
  mm: unit('mm', 'length', 1),
  cm: unit('cm', 'length', 10),
  m: unit('m', 'length', 1000),
  km: unit('km', 'other', 1),
  in: unit('in', 'length', INCH_MM, INCH_MM),
  ft: unit('ft', 'length', 12 * INCH_MM, 12 * INCH_MM),
  c: unit('c', 'temperature', 1),
  f: unit('f', 'temperature', 1, 1),
  /** Degrees that do not say of what scale. */
  deg: unit('deg', 'temperature', 1),
  /** Rice measures, watts, prices, percent, ages and times: known, so that their numbers are nothing else. */
  other: unit('other', 'other', 1),
} as const;

/** US fluid ounce, mL. */
export const FLUID_OUNCE_ML = UNITS.floz.factor;
export const IMPERIAL_FLUID_OUNCE_ML = UNITS.floz.imperial ?? FLUID_OUNCE_ML;

const SYMBOLS: Readonly<Record<keyof typeof UNITS, string>> = {
  ml: 'ml mls cc ccm cm3 мл',
  cl: 'cl',
  dl: 'dl',
  l: 'l lt lts ltr ltrs lit л リットル',
  floz: 'floz',
  cup: '',
  pint: 'pt pts',
  quart: 'qt qts',
  gallon: 'gal gals',
  g: 'g gr grs gm gms г グラム',
  kg: 'kg kgs kilo kilos кг',
  hg: 'hg',
  dag: 'dkg',
  halfKilo: '',
  lb: 'lb lbs #',
  oz: 'oz ozs onz',
  mm: 'mm',
  cm: 'cm cms',
  m: 'm mtr mts',
  km: 'km mi km2',
  in: "\" '' inch inches",
  ft: "' ft",
  c: '°c',
  f: '°f',
  deg: '°',
  other:
    'w kw mah wh v kcal kj % $ € £ ¥ kr zl eur euro euros chf usd gbp sek nok dkk pln 円 руб hz gb mb btu lm lumens d h hrs min mins sec s den fp cuin €/kg 合 合炊 ' +
    // Ages and cooking times, by language; without accents, as words are folded.
    'year years yr yrs month months minute minutes second seconds jahr jahre jahren monat monate monaten minuten sekunden ans mois secondes ' +
    'ano anos mes meses minuto minutos segundos anno anni mese mesi minuti secondi jaar maand maanden seconden ar maned maneder manad manader ' +
    'minut minuter minutter lat lata rok roku miesiecy minuty год года лет мин минут минуты секунд 年 歳 分',
};

const BY_SYMBOL = new Map<string, Unit>();
for (const [id, symbols] of Object.entries(SYMBOLS))
  for (const symbol of symbols.split(' ')) if (symbol !== '') BY_SYMBOL.set(symbol, UNITS[id as keyof typeof UNITS]);

export function unitBySymbol(symbol: string): Unit | undefined {
  return BY_SYMBOL.get(symbol);
}

const BY_NAME: Readonly<Record<UnitName, Unit>> = {
  millilitre: UNITS.ml,
  centilitre: UNITS.cl,
  decilitre: UNITS.dl,
  litre: UNITS.l,
  'fluid-ounce': UNITS.floz,
  cup: UNITS.cup,
  pint: UNITS.pint,
  quart: UNITS.quart,
  gallon: UNITS.gallon,
  gram: UNITS.g,
  hectogram: UNITS.hg,
  decagram: UNITS.dag,
  'half-kilo': UNITS.halfKilo,
  kilogram: UNITS.kg,
  ounce: UNITS.oz,
  pound: UNITS.lb,
  millimetre: UNITS.mm,
  centimetre: UNITS.cm,
  metre: UNITS.m,
  inch: UNITS.in,
  foot: UNITS.ft,
  'degree-c': UNITS.c,
  'degree-f': UNITS.f,
};

export function unitByName(name: UnitName): Unit {
  return BY_NAME[name];
}
