/** The kit lists and pot figures among the lists and tables of a page. */
import { readList, type Item } from '../core/index.js';
import { potFigures } from './pot-figures.js';
import type { Zone } from './seen/line.js';
import type { PagePart } from './seen/page.js';

export interface Offer {
  readonly entrance: 'list' | 'pot';
  readonly heading: string;
  readonly text: string;
  readonly zone: Zone;
  /** How many things of a cook kit it names. */
  readonly items: number;
  /** All that the page is for. */
  readonly whole?: true;
}

/** What makes a list a kit list: one of these, and another thing beside it. */
const TELLING: readonly Item['kind'][] = ['pot', 'kettle', 'pan', 'mug', 'stove', 'fuel'];
const ONE_POT: readonly Item['kind'][] = ['pot', 'kettle', 'pan', 'mug', 'lid'];
/** A table of one thing is shorter than this, in lines. */
const LONGEST_TABLE = 20;

/** The parts whose reading has cook kit in it, in the order of the page. */
export function offersIn(parts: readonly PagePart[]): Offer[] {
  return parts.flatMap(({ heading, text, zone }): Offer[] => {
    const items = readList(text).items.filter(({ carried }) => carried);
    if (isOnePot(text, items)) return [{ entrance: 'pot', heading, text, zone, items: 1 }];
    return tells(items) ? [{ entrance: 'list', heading, text, zone, items: items.length }] : [];
  });
}

/** Volume and a length, and no other thing than a pot with its lid: a recipe has volumes, a mat has lengths. */
function isOnePot(text: string, items: readonly Item[]): boolean {
  if (text.split('\n').length > LONGEST_TABLE || !items.every(({ kind }) => ONE_POT.includes(kind))) return false;
  const { capacity, diameter, height } = potFigures(text)?.pot ?? {};
  return capacity !== undefined && (diameter !== undefined || height !== undefined);
}

function tells(items: readonly Item[]): boolean {
  return items.length >= 2 && items.some(({ kind }) => TELLING.includes(kind));
}

/** All that a page is for, where that is more than any one of its lists. */
export function wholeOf(text: string, offers: readonly Offer[]): Offer | undefined {
  const items = readList(text).items.filter(({ carried }) => carried);
  const most = Math.max(0, ...offers.map((offer) => offer.items));
  return tells(items) && items.length > most
    ? { entrance: 'list', heading: '', text, zone: 'main', items: items.length, whole: true }
    : undefined;
}

/** A list, with the lines before it in which its page tells of the trip: how many go, how long, how cold. */
export function withTripWords(list: string, page: string): string {
  const { trip } = readList(page);
  const own = new Set(list.split('\n').map((line) => line.trim()));
  const told = Object.values(trip).flatMap((given) => {
    if (typeof given !== 'object' || !('grounds' in given) || given.grounds !== 'stated' || given.span === undefined)
      return [];
    const [start, end] = given.span;
    const from = page.lastIndexOf('\n', start - 1) + 1;
    const to = page.indexOf('\n', end);
    return [page.slice(from, to < 0 ? undefined : to).trim()];
  });
  const lines = [...new Set(told)].filter((line) => !own.has(line) && line.length <= LONGEST_WORDS);
  return lines.length === 0 ? list : `${lines.join('\n')}\n\n${list}`;
}

/** Longer than this, what tells of the trip is a story. */
const LONGEST_WORDS = 300;
