import type { Correction, CorrectableField, Passing, Reading } from '../core/index.js';

/** What a correction is about: a place in the text by its own words, a field, and of a set which vessel. */
export type Anchor = Pick<Correction, 'quote' | 'occurrence' | 'item'> & {
  readonly field: CorrectableField;
  readonly vessel?: number;
};

/** The anchor of a field of an item of the reading. */
export function anchorOf(
  text: string,
  reading: Reading,
  index: number,
  field: CorrectableField,
  vessel?: number,
): Anchor {
  const line = reading.items[index]?.line ?? 1;
  const item = itemsOn(reading, line).indexOf(index);
  return { ...lineAnchor(text, reading, line), item, field, ...(vessel === undefined ? {} : { vessel }) };
}

/** The anchor of one more item on a line: its kind. */
export function newItemAnchor(text: string, reading: Reading, line: number): Anchor {
  const item = itemsOn(reading, line).length;
  return { ...lineAnchor(text, reading, line), item, field: 'kind' };
}

/** What counts a thing that a line names in passing: which of those that were read there. */
export function passingAnchor(text: string, asRead: Reading, passing: Passing): Omit<Correction, 'value'> {
  const there = asRead.passing.filter(({ line }) => line === passing.line);
  const item = there.findIndex(({ span }) => span[0] === passing.span[0] && span[1] === passing.span[1]);
  return { ...lineAnchor(text, asRead, passing.line), item, field: 'passing' };
}

function lineAnchor(text: string, reading: Reading, number: number): Pick<Anchor, 'quote' | 'occurrence'> {
  return quotesOf(reading, text)[number - 1] ?? { quote: '', occurrence: 0 };
}

/** Indices of the items that stand on a line, in their order. */
export function itemsOn(reading: Reading, line: number): readonly number[] {
  return itemsByLine(reading).get(line) ?? [];
}

const itemsByLine = onceEach(({ items }: Reading) => {
  const byLine = new Map<number, number[]>();
  items.forEach(({ line }, index) => {
    const there = byLine.get(line);
    if (there) there.push(index);
    else byLine.set(line, [index]);
  });
  return byLine;
});

/** The words of each line, and how often the same stand above. */
const quotesOf = onceEach(({ lines }: Reading, text: string) => {
  const seen = new Map<string, number>();
  return lines.map(({ span }) => {
    const quote = text.slice(...span);
    const occurrence = seen.get(quote) ?? 0;
    seen.set(quote, occurrence + 1);
    return { quote, occurrence };
  });
});

/** Works something out once for each reading: looked for anew for each value, it would take the square of the lines. */
function onceEach<T, More extends unknown[]>(work: (reading: Reading, ...more: More) => T) {
  const known = new WeakMap<Reading, T>();
  return (reading: Reading, ...more: More): T => {
    const before = known.get(reading);
    if (before !== undefined) return before;
    const result = work(reading, ...more);
    known.set(reading, result);
    return result;
  };
}

/** One string for one anchor. */
export function keyOf({ quote, occurrence, item, field, vessel }: Omit<Correction, 'value'>): string {
  return JSON.stringify([quote, occurrence, item, field, vessel ?? 0]);
}

/** The corrections with this one kept, in place of an earlier one of the same value; without it where the value is undefined. */
export function withCorrection(
  corrections: readonly Correction[],
  anchor: Omit<Correction, 'value'>,
  value: Correction['value'] | undefined,
): readonly Correction[] {
  const key = keyOf(anchor);
  const at = corrections.findIndex((correction) => keyOf(correction) === key);
  const next = [...corrections];
  next.splice(at < 0 ? next.length : at, at < 0 ? 0 : 1, ...(value === undefined ? [] : [{ ...anchor, value }]));
  return next;
}
