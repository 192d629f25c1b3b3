/** The kit lists and pot figures among the lists and tables of a page. */
import { readList, type Item } from '../core/index.js';
import { potFigures } from './pot-figures.js';
import type { PagePart } from './seen/page.js';

export interface Offer {
  readonly entrance: 'list' | 'pot';
  readonly heading: string;
  readonly text: string;
  /** How many things of a cook kit it names. */
  readonly items: number;
}

/** What makes a list a kit list: one of these, and another thing beside it. */
const TELLING: readonly Item['kind'][] = ['pot', 'kettle', 'pan', 'mug', 'stove', 'fuel'];
const ONE_POT: readonly Item['kind'][] = ['pot', 'kettle', 'pan', 'mug', 'lid'];
/** A table of one thing is shorter than this, in lines. */
const LONGEST_TABLE = 20;

/** The parts whose reading has cook kit in it, in the order of the page. */
export function offersIn(parts: readonly PagePart[]): Offer[] {
  return parts.flatMap(({ heading, text }): Offer[] => {
    const items = readList(text).items.filter(({ carried }) => carried);
    if (isOnePot(text, items)) return [{ entrance: 'pot', heading, text, items: 1 }];
    const tells = items.some(({ kind }) => TELLING.includes(kind)) && items.length >= 2;
    return tells ? [{ entrance: 'list', heading, text, items: items.length }] : [];
  });
}

/** Volume and a length, and no other thing than a pot with its lid: a recipe has volumes, a mat has lengths. */
function isOnePot(text: string, items: readonly Item[]): boolean {
  if (text.split('\n').length > LONGEST_TABLE || !items.every(({ kind }) => ONE_POT.includes(kind))) return false;
  const { capacity, diameter, height } = potFigures(text)?.pot ?? {};
  return capacity !== undefined && (diameter !== undefined || height !== undefined);
}
