import { parseMeasure, readList, type Given, type Item, type Reading } from '../core/index.js';
import type { Draft } from '../widget/index.js';

/** What a text says of one pot, as fields of its form. */
export interface PotFigures {
  readonly pot: Draft['pot'];
  readonly stove: Draft['stove'];
  /** Why some figures are guesses, a clause for each. */
  readonly guesses: readonly string[];
}

type Fields = Record<string, string | boolean>;

const VESSELS: readonly Item['kind'][] = ['pot', 'kettle', 'pan', 'mug'];

/** The figures of one pot in a text from a product page; undefined where there are none. */
export function potFigures(text: string): PotFigures | undefined {
  const line = inOneLine(text);
  const [best] = [line, `pot, ${line}`]
    .flatMap((read) => figuresIn(read, readList(read)))
    .sort((a, b) => Object.keys(b.pot).length - Object.keys(a.pot).length);
  return best && Object.keys(best.pot).length > 0 ? best : undefined;
}

/** Such a page names the pot once and sets its figures below: in one line they are figures of one thing. */
function inOneLine(text: string): string {
  const lines = text
    .split('\n')
    .map((line) =>
      line
        .replace(/:(?=\s|$)/g, ' ')
        .replace(/\s+/g, ' ')
        .trim(),
    )
    .filter((line) => line !== '');
  return lines
    .reduce((joined, line, i) => {
      const labelled = !/\d/.test(lines[i - 1] ?? '') && /^[\dØ⌀]/.test(line);
      return joined + (labelled ? ' ' : ', ') + line;
    }, '')
    .replace(/^, /, '');
}

/** The figures of each vessel in a reading. */
function figuresIn(text: string, { items }: Reading): PotFigures[] {
  const carried = items.filter((item) => item.carried);
  const stove = carried.find(({ kind }) => kind === 'stove');
  const hasLid = carried.some(({ kind }) => kind === 'lid');
  return carried
    .filter(({ kind }) => VESSELS.includes(kind))
    .map((vessel) => {
      const guesses = new Set<string>();
      const taken = (field: string, given: Given<string | number | boolean> | undefined): Fields => {
        if (given === undefined || given.grounds === 'missing') return {};
        if (given.grounds === 'assumed') guesses.add(given.because);
        const { value } = given;
        return { [field]: typeof value === 'number' ? written(value, given.span && text.slice(...given.span)) : value };
      };
      return {
        pot: {
          ...taken('capacity', vessel.capacitiesMl[0]),
          ...taken('diameter', vessel.diameterMm),
          ...taken('baseDiameter', vessel.baseDiameterMm),
          ...taken('height', vessel.heightMm),
          ...taken('mass', vessel.massG),
          ...taken('material', vessel.material),
          ...taken('bail', vessel.bail),
          ...taken('handles', vessel.handles),
          ...(hasLid ? { lid: true } : {}),
          ...taken('lid', vessel.lid),
        },
        stove: {
          ...taken('type', stove?.stoveType),
          ...taken('form', stove?.stoveForm),
          ...taken('burnerDiameter', stove?.burnerMm),
          ...taken('armSpan', stove?.supportsMm),
        },
        guesses: [...guesses],
      };
    });
}

/** A figure as the page writes it, where that stands alone; else in the unit of its field (mm, mL, g). */
function written(value: number, quote: string | undefined): string {
  const words = quote?.trim().replace(/[.,;]$/, '') ?? '';
  const read = (['length', 'volume', 'mass'] as const).map((of) => parseMeasure(words, of)?.value ?? 0);
  return read.some((same) => Math.abs(same - value) < 1e-6 * value) ? words : String(Math.round(value * 10) / 10);
}
