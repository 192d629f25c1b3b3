/** What a page can reach of the elements besides their settings. The readme's tables are made from these, and tests hold them to the source. */

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
  drawing: 'The drawing.',
  day: 'A day with this kit.',
  sources: 'What is assumed, and the sources.',
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
