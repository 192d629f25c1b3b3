/** Texts to measure on: lines of the practice lists in all their languages and forms, and lines made to hurt. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ROOT } from '../../scripts/files.mjs';

const TEXTS = path.join(ROOT, 'test', 'practice', 'texts');
/** So many lines of one list stand together: a table keeps rows beside each other. */
const RUN = 4;

/** The lines of every practice list but those in HTML, which only counts as such from the first character of a text on. */
const sources = readdirSync(TEXTS)
  .filter((name) => !name.endsWith('.html'))
  .sort()
  .map((name) =>
    readFileSync(path.join(TEXTS, name), 'utf8')
      .split(/\r?\n/)
      .filter((line) => line.trim() !== ''),
  );

/**
 * A list of `count` lines, a few from each practice list in turn. Its figures are moved on by `variant`, and once more each
 * time the lists have been gone through, so that no two lists, and hardly two lines, are the same: nothing remembered helps.
 */
export function listOf(count, variant = 0) {
  const lines = [];
  for (let from = 0, pass = 0; lines.length < count; from += RUN, pass++)
    for (const source of sources)
      for (let i = 0; i < RUN && lines.length < count; i++)
        lines.push(moved(source[(from + i) % source.length] ?? '', variant + Math.floor(pass / RUN)));
  return lines.join('\n') + '\n';
}

/** A list as it is typed: the same text again and again, with one character more in a line further down each time. */
export function typed(text, strokes) {
  const lines = text.split('\n');
  return Array.from({ length: strokes }, (_none, i) => {
    const at = (i * 37) % (lines.length - 1);
    lines[at] += 'x';
    return lines.join('\n');
  });
}

/** Each digit but a leading nought moved on within 1 to 9. */
function moved(line, by) {
  return line.replace(/[1-9]/g, (digit) => String(((Number(digit) - 1 + by) % 9) + 1));
}

const MB = 1_000_000;

/** Lines that make a careless reader freeze. */
export const HOSTILE = {
  'one line of 5 MB': () => 'pot 0.9 l titanium 110 g, '.repeat((5 * MB) / 26),
  '1 MB of 1/1/1/1…': () => '1/'.repeat(MB / 2),
  '1 MB of spaces': () => ' '.repeat(MB),
  '1 MB of (': () => '('.repeat(MB),
  '1 MB of short lines of (': () => '((((((((((((((((\n'.repeat(MB / 17),
  '1 MB of 1/1/1/1… in lines': () => `${'1/'.repeat(2000)}\n`.repeat(MB / 4001),
};
