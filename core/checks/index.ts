import type { Check } from '../model/check.js';
import { fireHandling } from './fire-handling.js';
import { hang } from './hang.js';
import { labelVolume } from './label-volume.js';
import { lid } from './lid.js';
import { lift } from './lift.js';
import { mealRoom } from './meal-room.js';
import { proportion } from './proportion.js';
import { standing } from './standing.js';
import { stoveFit } from './stove-fit.js';

/** The checks, in the order of the table in the README: size and shape, standing and lifting, heat and water, cautions. */
export const CHECKS: readonly Check[] = [
  mealRoom,
  proportion,
  stoveFit,
  labelVolume,
  hang,
  standing,
  lift,
  fireHandling,
  lid,
] as readonly Check[];
