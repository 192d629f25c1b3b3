/**
 * Milliseconds of processor time that one run takes, over several runs, each on another text. Not by the clock: where other
 * work shares the machine, a long run is put aside more often than a short one, and the ratio of the two would say nothing.
 */
export function cpuMs(runs, run) {
  const before = process.cpuUsage();
  for (let i = 0; i < runs; i++) run(i);
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000 / runs;
}

/** The same, once each text has been gone through. */
export function warmedMs(runs, run) {
  for (let i = 0; i < runs; i++) run(i);
  return cpuMs(runs, run);
}

export function median(values) {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)];
}
