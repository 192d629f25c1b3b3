import type { SettingName } from './settings.js';

/** What a page can reach of the elements besides their settings. The readme's tables are made from these, and tests hold them to the source. */

/** What each attribute sets, and an example of it. */
export const ATTRIBUTES = {
  people: ['How many eat.', '2'],
  days: ['Days of the trip.', '3'],
  mealStyle: ['Water for food rehydrated elsewhere, cooked in the pot, or real cooking.', 'simmer'],
  hotMeals: ['Hot meals a person a day.', '1'],
  drinkFromPot: ['Whether the hot drinks come from the same pot as the meal.', 'yes'],
  season: ['Season of the trip.', 'winter'],
  low: ['Lowest temperature, °C where no unit is written.', '-8'],
  altitude: ['Highest place they cook at, m where no unit is written.', '1800'],
  water: ['Where the water comes from: found liquid, melted from snow, or either.', 'snow'],
  snow: ['Snow as it goes into the pot.', 'settled'],
  cookAt: ['What they cook at.', 'fire'],
  wind: ['Wind where they cook.', 'breeze'],
  name: ['What the pot is called.', 'Humblefern'],
  capacity: ['What the pot holds to the brim, mL where no unit is written.', '1.1 L'],
  diameter: ['Its width at the rim, outside, mm where no unit is written.', '130'],
  baseDiameter: ['Its width at the base, if that is another.', '110'],
  height: ['Its height, outside.', '95'],
  earHeight: ['Height over the base at which the bail is held.', '90'],
  mass: ['What it weighs, g where no unit is written.', '150'],
  material: ['What it is made of.', 'titanium'],
  lid: ['Whether it has a lid.', 'yes'],
  bail: ['Whether it has a bail.', 'no'],
  handles: ['Whether it has any other handle.', 'yes'],
  stove: ['What the stove under the pot burns.', 'gas'],
  stoveForm: ['Whether a gas stove stands on its canister or beside it.', 'upright'],
  burner: ['Width of the flame: burner head, ring of jets or fire-pot, mm where no unit is written.', '60'],
  stands: ['Height at which the pot stands.', '70'],
  arms: ['How many arms the pot stands on.', '3'],
  armGap: ['Width of the free circle between the arms.', '30'],
  armSpan: ['Width across the tips of the arms.', '100'],
  feet: ['Width across the feet of the stove, or of the canister it stands on.', '110'],
  power: ['Power of the flame, W.', '2500'],
  units: ['Units of the words; those the list is written in where left out.', 'us'],
  language: [
    'Language of the words; the nearest `lang` of the page where left out. A region writes numbers its way (`de-CH`), and in English settles US and imperial (`en-GB`).',
    'en-GB',
  ],
  headingLevel: ['Level of the first headings; 2 where left out.', '3'],
  look: [
    'The look: the page’s own ink, paper and face where left out; or that of a notebook, light or dark by the reader’s system or fixed.',
    'notebook',
  ],
  entrance: ['Whether it begins with a kit list or with one pot.', 'pot'],
  from: [
    'Where the list stands in the post, as a selector: a list, a table, a preformatted text, or what holds one. While nothing is found by it, what stands in the element stands.',
    '#kit-list',
  ],
  list: [
    'The list itself, for where an editor takes apart what stands in the element: a line of it is parted from the next by `&#10;`.',
    'Pot 1.3 L&#10;Gas stove',
  ],
  reserve: [
    'Height kept free until it is drawn, in px, rem or em, for a site whose policy blocks `style` attributes: the script sets it.',
    '44rem',
  ],
  show: ['The parts that are there besides headline and findings; all where left out.', 'form drawing'],
  locked: ['Names of attributes whose fields the reader cannot change, and `list` for the list.', 'people meal-style'],
  rows: ['How many findings it tells, worst first; 4 where left out. What can hurt is always told.', '3'],
} as const satisfies Record<SettingName, readonly [sets: string, example: string]>;

/** Custom properties, set on the element or on anything around it. */
export const CUSTOM_PROPERTIES = {
  '--brim-paper': ['the ground under the element', 'Ground of the element.'],
  '--brim-ink': ['the page’s text colour there', 'Words, figures, outlines.'],
  '--brim-pen': ['a blue', 'What one can do: fixes, links, controls.'],
  '--brim-alarm': ['a red', 'Can hurt, and a field in error.'],
  '--brim-words': ['the page’s face there', 'Face of the sentences: a list of fonts.'],
  '--brim-figures': ['the page’s face there', 'Face of figures, labels and drawings: a list of fonts.'],
  '--brim-size': ['the page’s text size there, 14 to 20 px', 'Size of the text; all else follows.'],
  '--brim-head': ['1.75 times the size; 1.44 where narrow', 'Size of the headline.'],
  '--brim-margin': ['8.5 times the size', 'Width of the margin with grades and figures, from 600 px on.'],
  '--brim-pad': ['0', 'Room at the sides; give some where the paper is another than the page’s.'],
  '--brim-max': ['100%', 'Greatest width of the column.'],
  '--brim-edge': ['1.5px solid, in ink', 'The line over and under the element; `0 solid` for none.'],
} as const satisfies Record<string, readonly [without: string, sets: string]>;

/** Regions that a page can style with `::part()`. */
export const PARTS = {
  frame: 'The whole.',
  mast: 'The mark, and the choice between list and pot.',
  trip: 'The trip’s fields.',
  list: 'The list to type or paste into.',
  reading: 'What was understood of the list.',
  form: 'The pot’s and the stove’s fields.',
  headline: 'The verdict in a sentence.',
  finding: 'Each finding.',
  caution: 'A danger that no kit can rule out.',
  drawing: 'The drawing.',
  chart: 'What to look for: the shapes that suit.',
  day: 'A day with this kit.',
  sources: 'What is assumed, and the sources.',
  letter: 'An answer to send, while it is written.',
  actions: 'What can be done with the findings, the units, and the note.',
} as const satisfies Record<string, string>;

/** Events, told only of what the reader does; they leave shadow roots. */
export const EVENTS = {
  'brimwise-draft': ['Draft', 'At every change by the reader, at once: all that stands in the fields, as plain JSON.'],
  'brimwise-report': [
    'Report | null',
    'When such a change has been judged: the report, or null while there is nothing to judge.',
  ],
} as const satisfies Record<string, readonly [detail: string, told: string]>;

/** Properties and methods besides those that mirror the attributes. */
export const MEMBERS = {
  draft: [
    'Draft',
    'What stands in the fields: read it to keep it, set it to give it back. Of `<brimwise-check>` and `<brimwise-pot>`.',
  ],
  report: ['Report | null', 'What is said of it. It cannot be set.'],
  'focus()': ['', 'Puts the caret into the list, or into the first field of the pot.'],
} as const satisfies Record<string, readonly [type: string, means: string]>;
