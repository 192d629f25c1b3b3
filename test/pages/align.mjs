/** Which line of a source a line of another text came from: the best way to lay the two texts beside each other, in order. */

/** @param {string} line */
function wordsOf(line) {
  return new Set(
    line
      .toLowerCase()
      .replace(/<[^>]*>/g, ' ')
      .match(/[\p{L}\p{N}]+/gu) ?? [],
  );
}

/** Share of words that two lines have in common, by the smaller; long agreement outweighs short. */
function likeness(/** @type {Set<string>} */ a, /** @type {Set<string>} */ b) {
  if (a.size === 0 || b.size === 0) return 0;
  let same = 0;
  for (const word of a) if (b.has(word)) same += 1;
  return same === 0 ? 0 : same / Math.min(a.size, b.size) + same / Math.max(a.size, b.size);
}

/**
 * @param {string} source
 * @param {string} text
 * @returns {number[]} for each line of the text, the line of the source (1-based), 0 where none is like it
 */
export function align(source, text) {
  const from = source.split('\n').map(wordsOf);
  const to = text.split('\n').map(wordsOf);
  const width = from.length + 1;
  const best = new Float64Array((to.length + 1) * width);
  const way = new Uint8Array(best.length);
  for (let i = 1; i <= to.length; i += 1) {
    for (let j = 1; j <= from.length; j += 1) {
      const like = likeness(to[i - 1], from[j - 1]);
      // A line may come from the same line of the source as the one before it, or from a later one.
      const options = [
        best[(i - 1) * width + j],
        best[i * width + j - 1],
        like > 0.4 ? best[(i - 1) * width + j - 1] + like : -1,
        like > 0.4 ? best[(i - 1) * width + j] + like * 0.99 : -1,
      ];
      let which = 0;
      for (let k = 1; k < 4; k += 1) if (options[k] > options[which]) which = k;
      best[i * width + j] = options[which];
      way[i * width + j] = which;
    }
  }
  const lines = to.map(() => 0);
  for (let i = to.length, j = from.length; i > 0 && j > 0;) {
    const which = way[i * width + j];
    if (which === 2 || which === 3) lines[i - 1] = j;
    if (which === 0 || which === 3) i -= 1;
    else if (which === 1) j -= 1;
    else {
      i -= 1;
      j -= 1;
    }
  }
  return lines;
}
