import { isSpace } from './lines.js';
import type { SourceLine } from './rows.js';

/** Lists stand side by side where so many lines have a tick box or bullet at the same place. */
const LEAST_LINES = 3;
/** Characters of a line in which a second list may begin. */
const WIDEST = 200;
const TICKS = '☐☑☒□■•▢';

/** Lists that stand side by side, "[ ] Mug          [ ] Torch", one below the other; the lines as they are where there is one list. */
export function unwound(text: string, lines: readonly SourceLine[]): readonly SourceLine[] {
  const places = placesOf(text, lines);
  if (places.length < 2) return lines;
  const ticked = lines.map((line) => places.slice(1).some((place) => isTick(text, line.start + place, line.end)));
  const first = ticked.indexOf(true);
  const last = ticked.lastIndexOf(true);
  // The heads of the columns stand above their first ticks, and a list may end below the others.
  const from = Math.max(0, first - 1);
  const to = Math.min(lines.length, last + 1);
  const part = lines.slice(from, to);
  const columns = places.map((place, i) =>
    part.map((line) => {
      const start = i === 0 ? line.start : Math.min(line.end, line.start + place);
      const end = Math.min(line.end, line.start + (places[i + 1] ?? Infinity));
      return { ...line, start, end };
    }),
  );
  return [...lines.slice(0, from), ...columns.flat(), ...lines.slice(to)];
}

/** Where the lists begin, in characters of their lines: 0 for the first. */
function placesOf(text: string, lines: readonly SourceLine[]): number[] {
  const counts = new Map<number, number>();
  for (const { start, end } of lines) {
    let at = start;
    while (at < end && isSpace(text.charCodeAt(at))) at++;
    if (!isTick(text, at, end)) continue;
    const until = Math.min(end, start + WIDEST);
    for (at++; at < until; at++)
      if (text[at - 1] === ' ' && text[at - 2] === ' ' && isTick(text, at, end))
        counts.set(at - start, (counts.get(at - start) ?? 0) + 1);
  }
  const places = [...counts].filter(([, count]) => count >= LEAST_LINES).map(([place]) => place);
  return [0, ...places.sort((a, b) => a - b)];
}

/** "[ ]", "[x]", "☐". */
function isTick(text: string, at: number, end: number): boolean {
  if (at >= end) return false;
  return TICKS.includes(text.charAt(at)) || (text[at] === '[' && text[at + 2] === ']');
}
