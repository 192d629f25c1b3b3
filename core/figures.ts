/** What a face needs before anything is read or judged: the closed vocabularies, and figures put into words. A door of its own, for it weighs next to nothing. */
export { fillTemplate, formatFigure, formatNumber, unitWord } from './report/format.js';
export { ENGLISH } from './report/language.js';
export { wordSource } from './report/remark.js';
export { GRADES } from './model/finding.js';
export { FUEL_TYPES, ITEM_KINDS, MATERIALS, STOVE_FORMS, STOVE_TYPES } from './model/item.js';
export { UNIT_SYSTEMS } from './model/measure.js';
export { MEAL_STYLES, SEASONS, SNOWS, WATER_FROM, WINDS } from './model/trip.js';
export { MISSING, valueOf } from './model/given.js';
export { suitedHeights } from './suited-heights.js';
