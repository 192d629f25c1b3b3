import type { Measure } from '../quantities/measures.js';
import { spanOf, stated, type Draft } from './draft.js';
import { termsOf, type Stretch } from './stretch.js';

const LIMIT = 4;

/** "1 L, 2 L if winter": of two sizes one is for a season. Gives the second thing, and says of the first when it comes along. */
export function alternativeOf(stretch: Stretch, draft: Draft): Draft | undefined {
  const volumes = stretch.measures.filter(
    (measure) => measure.unit.dimension === 'volume' && measure.first >= draft.from && measure.last < draft.to,
  );
  const [first, second] = volumes;
  if (first === undefined || second === undefined || volumes.length > 2) return undefined;
  const season = seasonAt(stretch, second);
  if (season === undefined) return undefined;
  draft.capacitiesMl = [capacity(stretch, first)];
  draft.onlyIn = season === 'winter' ? 'summer' : 'winter';
  return { ...draft, capacitiesMl: [capacity(stretch, second)], onlyIn: season, massG: { grounds: 'missing' } };
}

function capacity(stretch: Stretch, measure: Measure): Draft['capacitiesMl'][number] {
  return stated(measure.values[0] ?? 0, spanOf(stretch, measure.first, measure.last));
}

/** The season that a size is for: "2 L if winter", "2 L in winter", "winter: 2 L". */
function seasonAt(stretch: Stretch, measure: Measure): 'summer' | 'winter' | undefined {
  const term = termsOf(stretch, 'season').find((season) => {
    const after = season.first - measure.last;
    const before = measure.first - season.last;
    return (after > 0 && after <= LIMIT) || (before > 0 && before <= 2);
  });
  return term?.value === 'winter' || term?.value === 'summer' ? term.value : undefined;
}
