import type { Assumption } from '../model/finding.js';
import type { Given } from '../model/given.js';

/** The assumptions among these values, each with what it is about: `[['the number of people', trip.people], …]`. */
export function assumed(values: readonly (readonly [what: string, given: Given<unknown>])[]): Assumption[] {
  return values.flatMap(([what, given]) =>
    given.grounds === 'assumed' ? [{ what, because: given.because, replaceWith: given.replaceWith }] : [],
  );
}
