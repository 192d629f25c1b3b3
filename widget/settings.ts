import {
  MATERIALS,
  MEAL_STYLES,
  SEASONS,
  SNOWS,
  STOVE_FORMS,
  STOVE_TYPES,
  UNIT_SYSTEMS,
  WATER_FROM,
  WINDS,
} from '../core/figures.js';
import type { InputProblem, UnitSystem } from '../core/index.js';
import { EMPTY_DRAFT, type Draft, type Fields } from './draft.js';
import { LANGUAGES } from './language.js';

/** The elements, in the order of what they show. */
export const ELEMENTS = ['brimwise-check', 'brimwise-pot', 'brimwise-verdict'] as const;
export type ElementName = (typeof ELEMENTS)[number];

/** What `show` names. Headline and findings, and so the cautions, always stand. */
const REGIONS = ['mast', 'trip', 'list', 'reading', 'form', 'drawing', 'chart', 'day', 'sources', 'actions'] as const;
export type Region = (typeof REGIONS)[number];

const YES_NO = ['yes', 'no'] as const;
/** An attribute without a value is a yes, which some editors write as an empty value and JSX as `true`. */
const SAID = new Map([
  ['yes', true],
  ['', true],
  ['true', true],
  ['no', false],
  ['false', false],
]);
const WITH_INPUT: readonly ElementName[] = ['brimwise-check', 'brimwise-pot'];

/** What a writer sets by an attribute, or by the property of the same name. */
interface Setting {
  /** The words it takes; or a figure as one writes it; or any text; or some of the words, with spaces between. */
  readonly takes: readonly string[] | 'figure' | 'text' | { readonly several: readonly string[] };
  /** The field of the draft that it fills. */
  readonly fills?: `${'trip' | 'pot' | 'stove'}.${string}`;
  /** The elements that know it; all where left out. */
  readonly on?: readonly ElementName[];
}

/** Every attribute of the elements. What each sets is told in surface.ts, which no page loads. */
export const SETTINGS = {
  people: { takes: 'figure', fills: 'trip.people' },
  days: { takes: 'figure', fills: 'trip.days' },
  mealStyle: { takes: MEAL_STYLES, fills: 'trip.mealStyle' },
  hotMeals: { takes: 'figure', fills: 'trip.hotMealsPerDay' },
  drinkFromPot: { takes: YES_NO, fills: 'trip.drinkFromPot' },
  season: { takes: SEASONS, fills: 'trip.season' },
  low: { takes: 'figure', fills: 'trip.lowC' },
  altitude: { takes: 'figure', fills: 'trip.altitudeM' },
  water: { takes: WATER_FROM, fills: 'trip.waterFrom' },
  snow: { takes: SNOWS, fills: 'trip.snow' },
  cookAt: { takes: ['stove', 'fire'], fills: 'trip.cookAt' },
  wind: { takes: WINDS, fills: 'trip.wind' },

  name: { takes: 'text', fills: 'pot.name' },
  capacity: { takes: 'figure', fills: 'pot.capacity' },
  diameter: { takes: 'figure', fills: 'pot.diameter' },
  baseDiameter: { takes: 'figure', fills: 'pot.baseDiameter' },
  height: { takes: 'figure', fills: 'pot.height' },
  earHeight: { takes: 'figure', fills: 'pot.earHeight' },
  mass: { takes: 'figure', fills: 'pot.mass' },
  material: { takes: MATERIALS, fills: 'pot.material' },
  lid: { takes: YES_NO, fills: 'pot.lid' },
  bail: { takes: YES_NO, fills: 'pot.bail' },
  handles: { takes: YES_NO, fills: 'pot.handles' },

  stove: { takes: STOVE_TYPES, fills: 'stove.type' },
  stoveForm: { takes: STOVE_FORMS, fills: 'stove.form' },
  burner: { takes: 'figure', fills: 'stove.burnerDiameter' },
  stands: { takes: 'figure', fills: 'stove.height' },
  arms: { takes: 'figure', fills: 'stove.armCount' },
  armGap: { takes: 'figure', fills: 'stove.armInner' },
  armSpan: { takes: 'figure', fills: 'stove.armSpan' },
  feet: { takes: 'figure', fills: 'stove.footDiameter' },
  power: { takes: 'figure', fills: 'stove.powerW' },

  units: { takes: ['as-written', ...UNIT_SYSTEMS] },
  language: { takes: LANGUAGES },
  headingLevel: { takes: ['1', '2', '3', '4', '5', '6'] },
  look: { takes: ['page', 'notebook', 'notebook-light', 'notebook-dark'] },
  entrance: { takes: ['list', 'pot'], on: ['brimwise-check'] },
  from: { takes: 'text', on: ['brimwise-check'] },
  list: { takes: 'text', on: ['brimwise-check'] },
  reserve: { takes: 'text' },
  show: { takes: { several: REGIONS }, on: WITH_INPUT },
  locked: { takes: 'text', on: WITH_INPUT },
  rows: { takes: 'figure', on: ['brimwise-verdict'] },
} as const satisfies Record<string, Setting>;

export type SettingName = keyof typeof SETTINGS;
/** As the attributes have them; null where there is none. */
export type SettingValues = { [K in SettingName]: string | number | null | undefined };

const ENTRIES = Object.entries(SETTINGS) as readonly [SettingName, Setting][];

/** "mealStyle" is the attribute "meal-style". */
export function attributeOf(name: SettingName): string {
  return name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

/** The settings that an element knows. */
export function settingsOn(element: ElementName): readonly (readonly [SettingName, Setting])[] {
  return ENTRIES.filter(([, { on }]) => on === undefined || on.includes(element));
}

/** The settings once what cannot be used is left out. */
export interface Settled {
  /** What the reader finds: a draft as if it had been typed. */
  readonly draft: Draft;
  readonly language: string | null;
  readonly level: number;
  readonly look: string;
  readonly rows: number;
  /** null: all. */
  readonly show: ReadonlySet<Region> | null;
  /** Fields of the draft ("trip.people") that the reader cannot change, and "text" for the list. */
  readonly locked: ReadonlySet<string>;
  /** One sentence for each setting that cannot be used. */
  readonly unusable: readonly string[];
}

export const NOTHING_SET: Settled = {
  draft: EMPTY_DRAFT,
  language: null,
  level: 2,
  look: 'page',
  rows: 4,
  show: null,
  locked: new Set(),
  unusable: [],
};

/**
 * Settles the values of an element's settings and the list that the page gives it: null where `from` finds none. It never throws. What the figures that fill fields are worth
 * is for the core to say: `problemsOf` tells what it cannot use.
 */
export function settle(
  element: ElementName,
  values: Partial<SettingValues>,
  list: string | null,
  problemsOf: (fields: Pick<Draft, 'trip' | 'pot' | 'stove'>) => readonly InputProblem[],
): Settled {
  const known = settingsOn(element);
  const unusable: string[] = [];
  const usable: Partial<Record<SettingName, string>> = {};
  const leaveOut = (name: SettingName, why: string) => unusable.push(`${attributeOf(name)}="${values[name]}": ${why}`);
  for (const [name, setting] of known) {
    const value = values[name];
    if (value === null || value === undefined) continue;
    const text = String(value).trim();
    const why = misfit(setting, text);
    if (why === null) usable[name] = text;
    else leaveOut(name, why);
  }

  const parts = { trip: {}, pot: {}, stove: {} } as Record<'trip' | 'pot' | 'stove', Record<string, Fields[string]>>;
  const filledBy = new Map<string, SettingName>();
  for (const [name, { fills, takes }] of known) {
    const text = usable[name];
    if (fills === undefined || text === undefined) continue;
    const [part, field] = fills.split('.') as ['trip' | 'pot' | 'stove', string];
    parts[part][field] = takes === YES_NO ? SAID.get(text)! : text;
    filledBy.set(fills, name);
  }
  for (const { field, message } of problemsOf(parts)) {
    const name = filledBy.get(field);
    const [part, key] = field.split('.') as ['trip' | 'pot' | 'stove', string];
    if (name === undefined) continue;
    leaveOut(name, message);
    parts[part] = Object.fromEntries(Object.entries(parts[part]).filter(([other]) => other !== key));
  }

  const isCheck = element === 'brimwise-check';
  const locked = new Set(isCheck ? [] : ['entrance']);
  for (const word of wordsOf(usable.locked)) {
    const fills = known.find(([name]) => attributeOf(name) === word)?.[1].fills;
    if (word === 'list') locked.add('text');
    else if (fills) locked.add(fills);
    else leaveOut('locked', `no field is called ${word}.`);
  }
  if (element === 'brimwise-verdict' && Object.keys(parts.pot).every((name) => name === 'name'))
    unusable.push('nothing, and judges nothing: give a figure of the pot, such as capacity="1.1 L".');
  if (list === null) leaveOut('from', 'nothing on the page is found by it.');
  const { units, entrance } = usable;
  return {
    draft: {
      ...EMPTY_DRAFT,
      ...parts,
      text: list ?? '',
      entrance: isCheck && entrance !== 'pot' ? 'list' : 'pot',
      units: units === undefined || units === 'as-written' ? null : (units as UnitSystem),
    },
    language: usable.language ?? null,
    look: usable.look ?? NOTHING_SET.look,
    level: Number(usable.headingLevel ?? NOTHING_SET.level),
    rows: Number(usable.rows ?? NOTHING_SET.rows),
    show: usable.show === undefined ? null : new Set(wordsOf(usable.show) as Region[]),
    locked,
    unusable,
  };
}

/** Why a value is not one that the setting takes; null where it is. Figures that fill a field are left to the core. */
function misfit({ takes, fills }: Setting, text: string): string | null {
  if (takes === 'text') return null;
  if (takes === YES_NO && SAID.has(text)) return null;
  if (takes === 'figure') return fills !== undefined || /^\d{1,2}$/.test(text) ? null : 'write a whole number.';
  if (takes === LANGUAGES) return LANGUAGES.includes(text.split('-')[0]!) ? null : `it speaks ${LANGUAGES.join(', ')}.`;
  const allowed = 'several' in takes ? takes.several : takes;
  const strange = ('several' in takes ? wordsOf(text) : [text]).filter((word) => !allowed.includes(word));
  return strange.length === 0 ? null : `it takes ${allowed.join(', ')}.`;
}

function wordsOf(text = ''): readonly string[] {
  return text.split(/[\s,]+/).filter((word) => word !== '');
}

/** The draft with the settings' changes from one state to the next, where the person has not set a value of their own. */
export function follow(draft: Draft, from: Draft, to: Draft): Draft {
  return replace(draft, to, (_, value, before) => value === before, from);
}

/** The draft with what is locked as it is set. */
export function withLocked(draft: Draft, { draft: set, locked }: Pick<Settled, 'draft' | 'locked'>): Draft {
  return replace(draft, set, (name) => locked.has(name), set);
}

/** The draft with those of its values taken from another that `takes` says. */
function replace(
  draft: Draft,
  other: Draft,
  takes: (name: string, value: unknown, before: unknown) => boolean,
  from: Draft,
): Draft {
  const one = <K extends 'text' | 'entrance' | 'units'>(name: K): Draft[K] =>
    takes(name, draft[name], from[name]) ? other[name] : draft[name];
  const fields = (part: 'trip' | 'pot' | 'stove'): Fields => {
    const names = new Set([draft, from, other].flatMap((each) => Object.keys(each[part])));
    const values = [...names].map((name) => {
      const taken = takes(`${part}.${name}`, draft[part][name], from[part][name]);
      return [name, (taken ? other : draft)[part][name]] as const;
    });
    return Object.fromEntries(values.filter((entry): entry is [string, Fields[string]] => entry[1] !== undefined));
  };
  return {
    ...draft,
    text: one('text'),
    entrance: one('entrance'),
    units: one('units'),
    trip: fields('trip'),
    pot: fields('pot'),
    stove: fields('stove'),
  };
}
