/** Milliseconds, by the median of several runs, each on another text. */
export function medianMs(runs, run) {
  const times = [];
  for (let i = 0; i < runs; i++) {
    const before = performance.now();
    run(i);
    times.push(performance.now() - before);
  }
  return times.sort((a, b) => a - b)[Math.floor(times.length / 2)];
}

export function warmedMs(runs, run) {
  for (let i = 0; i < runs; i++) run(i);
  return medianMs(runs, run);
}
