import type { Correction, CorrectableField, Reading } from '../core/index.js';

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
  const item = reading.items.slice(0, index).filter((other) => other.line === line).length;
  return { ...lineAnchor(text, reading, line), item, field, ...(vessel === undefined ? {} : { vessel }) };
}

/** The anchor of one more item on a line: its kind. */
export function newItemAnchor(text: string, reading: Reading, line: number): Anchor {
  const item = reading.items.filter((other) => other.line === line).length;
  return { ...lineAnchor(text, reading, line), item, field: 'kind' };
}

function lineAnchor(text: string, reading: Reading, number: number): Pick<Anchor, 'quote' | 'occurrence'> {
  const words = reading.lines.slice(0, number).map(({ span }) => text.slice(...span));
  const quote = words.at(-1) ?? '';
  return { quote, occurrence: words.slice(0, -1).filter((other) => other === quote).length };
}

/** One string for one anchor. */
export function keyOf({ quote, occurrence, item, field, vessel }: Anchor): string {
  return JSON.stringify([quote, occurrence, item, field, vessel ?? 0]);
}

/** The corrections with this one kept, in place of an earlier one of the same value; without it where the value is undefined. */
export function withCorrection(
  corrections: readonly Correction[],
  anchor: Anchor,
  value: Correction['value'] | undefined,
): readonly Correction[] {
  const key = keyOf(anchor);
  const at = corrections.findIndex((correction) => keyOf(correction) === key);
  const next = [...corrections];
  next.splice(at < 0 ? next.length : at, at < 0 ? 0 : 1, ...(value === undefined ? [] : [{ ...anchor, value }]));
  return next;
}
