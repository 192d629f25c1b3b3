import type { Range } from '../model/finding.js';
import type { SourceId } from '../model/source.js';
import type { Snow } from '../model/trip.js';

/** How dense snow is as it goes into the pot, kg/m³. */
export const SNOW_KG_PER_M3: Readonly<Record<Snow, Range & { readonly cites: readonly SourceId[] }>> = {
  new: { low: 50, likely: 60, high: 70, cites: ['cuffey-paterson'] },
  settled: { low: 200, likely: 250, high: 300, cites: ['cuffey-paterson'] },
  'wind-packed': { low: 350, likely: 375, high: 400, cites: ['cuffey-paterson'] },
  packed: { low: 350, likely: 400, high: 500, cites: ['cp-snow-loads'] },
};
