import { ENGLISH } from '../../core/figures.js';
import type {
  CorrectableField,
  FuelType,
  GasMix,
  GearRole,
  Grade,
  ItemKind,
  Material,
  MealStyle,
  Season,
  Snow,
  StoveForm,
  StoveType,
  UnitSystem,
  WaterFrom,
  Wind,
} from '../../core/index.js';

const kinds: Readonly<Record<ItemKind, string>> = {
  pot: 'pot',
  mug: 'mug',
  kettle: 'kettle',
  pan: 'pan',
  lid: 'lid',
  stove: 'stove',
  fuel: 'fuel',
  windscreen: 'windscreen',
  bottle: 'bottle',
  bladder: 'bladder',
  bowl: 'bowl',
  utensil: 'utensil',
  'other-cook': 'other cook gear',
};

/** What other cook gear is there for. */
const roles: Readonly<Record<GearRole, string>> = {
  gripper: 'gripper',
  lighter: 'lighter',
  matches: 'matches',
  board: 'board',
  tripod: 'tripod',
  foil: 'foil',
};

const fuelTypes: Readonly<Record<FuelType, string>> = {
  gas: 'gas',
  alcohol: 'alcohol',
  wood: 'wood',
  'liquid-fuel': 'liquid fuel',
  'solid-fuel': 'solid fuel',
};

const materials: Readonly<Record<Material, string>> = {
  titanium: 'titanium',
  aluminium: 'aluminium',
  steel: 'steel',
  iron: 'iron',
  enamel: 'enamel',
  plastic: 'plastic',
  wood: 'wood',
  metal: 'metal',
};

const stoveTypes: Readonly<Record<StoveType, string>> = { ...fuelTypes, integrated: 'gas, with its own pot' };
const stoveForms: Readonly<Record<StoveForm, string>> = { upright: 'on its canister', remote: 'on a hose' };
const gasMixes: Readonly<Record<GasMix, string>> = {
  butane: 'butane',
  isobutane: 'isobutane',
  winter: 'isobutane and propane',
  propane: 'propane',
};
const mealStyles: Readonly<Record<MealStyle, string>> = {
  'boil-only': 'boil-only',
  simmer: 'simmer',
  scratch: 'scratch',
};
const waterFrom: Readonly<Record<WaterFrom, string>> = { liquid: 'none', either: 'possible', snow: 'all water' };
const winds: Readonly<Record<Wind, string>> = { calm: 'calm', breeze: 'breeze', windy: 'windy' };
const snows: Readonly<Record<Snow, string>> = {
  new: 'new',
  settled: 'settled',
  'wind-packed': 'wind-packed',
  packed: 'pressed by hand',
};
const seasons: Readonly<Record<Season, string>> = {
  spring: 'spring',
  summer: 'summer',
  autumn: 'autumn',
  winter: 'winter',
};
const cookAt: Readonly<Record<'stove' | 'fire', string>> = { stove: 'stove', fire: 'fire' };

const units: Readonly<Record<'as-written' | UnitSystem, string>> = {
  'as-written': 'as written',
  metric: 'metric',
  us: 'US',
  imperial: 'imperial',
};

/** A value's field by its name, as in "capacity of the pot". */
const fields: Readonly<Record<CorrectableField, string>> = {
  kind: 'kind',
  carried: 'carried',
  quantity: 'count',
  capacityMl: 'capacity',
  massG: 'mass',
  diameterMm: 'width',
  baseDiameterMm: 'base width',
  heightMm: 'height',
  sizeMm: 'size',
  burnerMm: 'burner width',
  supportsMm: 'width of the supports',
  material: 'material',
  bail: 'bail',
  lid: 'lid',
  handles: 'handle',
  stoveType: 'fuel it burns',
  stoveForm: 'form',
  fuelType: 'fuel',
  gasMix: 'gas',
  fuelMassG: 'net fuel',
  fuelVolumeMl: 'fuel volume',
};

const tally: Readonly<Record<Grade, (count: number) => string>> = {
  'can-hurt': (n) => `${n} can hurt`,
  'falls-short': (n) => `${n} ${n === 1 ? 'falls' : 'fall'} short`,
  'costs-you': (n) => `${n} ${n === 1 ? 'costs' : 'cost'} you`,
  'cant-tell': (n) => `${n} can’t tell`,
  'holds-up': (n) => `${n} ${n === 1 ? 'holds' : 'hold'} up`,
};

const list = new Intl.ListFormat('en', { type: 'conjunction' });

/** Every text of the interface. Another language is a file of this shape, and a line in ../language.ts. */
export const WORDS = {
  /** The tag that numbers go by: that of the language, or of the page's region. */
  locale: 'en',
  /** What the core says, in this language. */
  language: ENGLISH,
  /** Words that join the figures of a margin: "402 of 473 to 591". */
  joints: ['of', 'to'],

  name: 'Brimwise',
  region: 'Brimwise, a second opinion on a cook kit',
  entrances: { legend: 'What to judge', list: 'Kit list', pot: 'One pot' },

  trip: 'Trip',
  tripFrom: (lines: readonly number[]) =>
    `from ${lines.length === 1 ? 'line' : 'lines'} ${list.format(lines.map(String))}`,
  tripBack: 'Give back',
  tripBackLabel: 'Give back the trip as the list says it',
  more: 'Wind, snow, season',
  change: 'Change',
  tripChange: 'Change the trip',
  /** The trip as a line of values. */
  tripSaid: {
    people: (n: number) => (n === 1 ? '1 person' : `${n} people`),
    days: (n: number) => (n === 1 ? '1 day' : `${n} days`),
    waterFrom: { liquid: 'no snow', either: 'snow possible', snow: 'all water from snow' } as Readonly<
      Record<WaterFrom, string>
    >,
  },
  tripFields: {
    people: 'People',
    days: 'Days',
    mealStyle: 'Meals',
    waterFrom: 'Snow',
    lowC: 'Lowest',
    altitudeM: 'Altitude',
    cookAt: 'Cook at',
    wind: 'Wind',
    snow: 'Snow in the pot',
    season: 'Season',
    hotMealsPerDay: 'Hot meals a day',
    drinkFromPot: 'Hot drinks from the pot',
  },
  assumed: 'assumed',
  setByPage: 'Set by this page:',

  list: 'Kit list',
  clear: 'Clear',
  clearLabel: 'Clear the list',
  placeholder: 'Paste a kit list, or type one: a line for each thing.\npot 1.3 L, lid\ngas stove, canister 230 g',
  noList: 'No list at hand?',
  example: 'An example',
  exampleList:
    'Two of us, 3 days, early November\ncamp at 900 m, −6 °C at night\nHumblefern pot 1.3 L, 140 x 90 mm, aluminium, with lid\nZorvik burner, screws onto the canister\ngas canister 230 g, butane\npot gripper\n2 mugs 450 mL, 2 spoons\nlighter and matches\n2 bottles 1 L\nrice and lentils, cooked in the pot',
  lineToCopy: 'pot 1.3 L, lid',
  useLine: 'Put that line in',
  allLines: (n: number) => `All ${n} lines`,
  otherLines: (n: number) => `Show the other ${n} lines`,

  noKit: 'Nothing here reads as cook kit.',
  noKitRead: (n: number) =>
    `${n} ${n === 1 ? 'line' : 'lines'} read; none names a pot, a stove, fuel, or anything to eat from. Write one thing a line, with its size:`,

  reading: 'Reading',
  readingFold: (counts: string) => `Reading: ${counts}`,
  grounds: { stated: 'stated', 'worked-out': 'worked out', assumed: 'assumed', missing: 'missing' },
  was: 'was',
  yours: 'yours',
  pressToChange: 'Press a value to change it.',
  valueLabel: (field: string, kind: string, value: string, grounds: string, line: number) =>
    `${field} of the ${kind}, ${value}, ${grounds}, line ${line}. Change`,
  kindLabel: (kind: string, line: number) => `${kind}, line ${line}. Change what it is`,
  slotLabel: (field: string, kind: string, line: number) => `${field} of the ${kind}, line ${line}, missing. Add`,
  editLabel: (field: string, kind: string) => `${field} of the ${kind}. Enter keeps it, Escape gives back`,
  notThere: 'not in the kit',
  notCarried: (because: string) => `does not count: ${because}`,
  itCounts: 'It counts',
  alsoNamed: 'Also named',
  alsoNamedWhy: 'In passing; not counted. Do they go along?',
  countIt: (thing: string, line: number) => `It counts: ${thing}, line ${line}`,
  countAll: (n: number) => `Count all ${n}`,
  notCookKit: (n: number) => `${n} ${n === 1 ? 'line' : 'lines'} not cook kit`,
  notUnderstood: 'not understood.',
  sayWhat: 'Say what it is',
  itIs: 'It is',
  whatIsIt: (line: number) => `What line ${line} is`,
  choose: 'choose',
  forget: 'Forget it',
  unused: (value: string, why: string) => `Your “${value}”: ${why}`,
  yesNo: { yes: 'yes', no: 'no' },
  no: (thing: string) => `no ${thing}`,
  fields,
  kinds,
  roles,
  materials,
  stoveTypes,
  stoveForms,
  fuelTypes,
  gasMixes,
  mealStyles,
  waterFrom,
  winds,
  snows,
  seasons,
  cookAt,

  checks: (n: number) => `${n} ${n === 1 ? 'check' : 'checks'}`,
  tally,
  tallyLabel: 'Findings by grade',
  caution: 'Caution',
  line: (n: number) => `Line ${n}`,
  typed: 'Typed:',
  lookedFor: 'Looked for:',
  why: 'Why',
  howWorkedOut: (title: string) => `How it is worked out: ${title}`,
  published: 'published',
  commonPractice: 'common practice',
  Published: 'Published:',
  CommonPractice: 'Common practice:',
  assumedHere: 'Assumed:',
  assumption: (what: string, because: string, replaceWith: string) => `${what}: ${because}; ${replaceWith}.`,
  settle: (answers: number, checks: number) =>
    `${answers === 1 ? 'One answer' : `${answers} answers`} would settle ${checks === 1 ? 'one check' : `${checks} checks`}.`,
  untold: (checks: number) =>
    checks === 1 ? 'One check has no answer here.' : `${checks} checks have no answer here.`,
  settles: (titles: readonly string[]) => `Settles: ${list.format(titles.map(ENGLISH.inside))}.`,
  addLine: (kind: string) => `Add “${kind}” to the list`,

  day: 'A day with this kit',
  boilsAt: (temperature: string) => `Water boils at ${temperature} there.`,
  sources: 'Sources',
  assumptions: 'Assumed',
  problems: 'Left out',

  potForm: {
    pot: 'Pot',
    outside: 'outside measures',
    diameter: 'Width across',
    baseDiameter: 'Base, if tapered',
    height: 'Height',
    capacity: 'Capacity',
    mass: 'Mass',
    material: 'Material',
    has: 'The pot has',
    bail: 'bail',
    handles: 'side handles',
    lid: 'lid',
    more: 'More of pot and stove',
    stove: 'Stove',
    type: 'Burns',
    form: 'Gas stands',
    burnerDiameter: 'Burner across',
    standsAt: 'Base stands at',
    armCount: 'Arms',
    armInner: 'Gap in the arms',
    armSpan: 'Across the arms',
    footDiameter: 'Feet or canister',
  },

  /** Beside the marks of the drawing, and what it shows in words. */
  drawing: {
    unit: { metric: 'mm', us: 'in', imperial: 'in' },
    brim: (volume: string) => `brim ${volume}`,
    meal: (volume: string) => `meal ${volume}`,
    fill: (volume: string) => `fill ${volume}`,
    free: (length: string) => `${length} free`,
    on: (base: string, burner: string) => `pot ${base} on burner ${burner}`,
    fits: (lengths: string) => `fits ${lengths}`,
    tips: (angle: string) => `tips ${angle}`,
    spills: (angle: string) => `spills ${angle}`,
    caption: 'Pot, stand height, feet and burner width to scale. Seen along the stand’s weak side.',
    captionAlone: 'To scale.',
    shape: (rim: string, height: string, base: string | null) =>
      `The pot in section, to scale: ${rim} across${base === null ? '' : `, ${base} at its base,`} and ${height} tall.`,
    burner: (width: string) => `The burner is ${width} across.`,
    stands: (height: string) => `Its base stands ${height} over the ground.`,
    holds: (brim: string, meal: string) => `It holds ${brim} to the brim; one meal takes ${meal}.`,
    filled: (height: string, volume: string, free: string) =>
      `Filled to ${height} with ${volume}, ${free} under the brim.`,
    leans: (tip: string, spill: string) => `It tips at ${tip} and spills at ${spill}.`,
    suits: (lengths: string) => `The burner suits bases ${lengths} across.`,
  },

  verdict: {
    region: 'Brimwise, a verdict on a pot',
    unnamed: 'This pot',
    lid: 'with lid',
    bail: 'with bail',
    stove: (type: string) => `on ${type}`,
    terms: (people: number, style: MealStyle, fromSnow: boolean, shown: number, answered: number, open: number) => {
      const one = people === 1;
      const doing = {
        'boil-only': one ? 'only boils water' : 'only boil water',
        simmer: one ? 'simmers' : 'simmer',
        scratch: one ? 'cooks from scratch' : 'cook from scratch',
      }[style];
      const who = `${one ? 'one person' : `${people} people`} who ${doing}`;
      const left = open === 0 ? '' : ` ${open} more ${open === 1 ? 'has' : 'have'} no answer from these figures.`;
      return `Judged for ${who}${fromSnow ? ', with water from snow' : ''}. ${shown} of ${answered} ${answered === 1 ? 'check' : 'checks'} shown, worst first.${left}`;
    },
    sums: 'The sums',
    sketch: (rim: string, height: string, fill: string | null) =>
      `The pot in section, to scale: ${rim} across and ${height} tall${fill === null ? '' : `, filled to ${fill}`}.`,
  },

  unjudged: 'The part that reads and judges did not load. Copy what is typed, then load the page again.',

  writeLetter: 'An answer to send',
  copy: 'Copy as text',
  copyMarkdown: 'Copy as Markdown',
  copied: 'Copied.',
  copyRefused: 'The browser refused to copy. The text stands here, to copy by hand.',
  copyText: 'The findings as text',
  print: 'Print',
  unitsLegend: 'Units',
  units,
  foot: 'A second opinion. Local fire rules, land managers and licensed instruction come first. Worked out on this page; nothing is sent.',
};

export type Words = Readonly<typeof WORDS>;
