import type { Check } from '../model/check.js';
import { air } from './air.js';
import { boilWater } from './boil-water.js';
import { canisterHeat } from './canister-heat.js';
import { coldGas } from './cold-gas.js';
import { coldSpirit } from './cold-spirit.js';
import { eatWare } from './eat-ware.js';
import { fireHandling } from './fire-handling.js';
import { fuelAmount } from './fuel-amount.js';
import { fuelMatch } from './fuel-match.js';
import { hang } from './hang.js';
import { hotMeal } from './hot-meal.js';
import { labelVolume } from './label-volume.js';
import { lid } from './lid.js';
import { lift } from './lift.js';
import { material } from './material.js';
import { mealRoom } from './meal-room.js';
import { openWater } from './open-water.js';
import { proportion } from './proportion.js';
import { snowBase } from './snow-base.js';
import { snowMelt } from './snow-melt.js';
import { spark } from './spark.js';
import { spiritRefill } from './spirit-refill.js';
import { stall } from './stall.js';
import { standing } from './standing.js';
import { stoveFit } from './stove-fit.js';
import { sturdiness } from './sturdiness.js';
import { waterStore } from './water-store.js';

/** The checks, in the order of the table in the README: size and shape, standing and lifting, heat and water, cautions. */
export const CHECKS: readonly Check[] = [
  mealRoom,
  proportion,
  stoveFit,
  labelVolume,
  sturdiness,
  material,
  hang,
  standing,
  lift,
  fireHandling,
  lid,
  stall,
  snowMelt,
  fuelMatch,
  fuelAmount,
  coldGas,
  coldSpirit,
  spark,
  waterStore,
  boilWater,
  hotMeal,
  eatWare,
  openWater,
  air,
  spiritRefill,
  canisterHeat,
  snowBase,
] as readonly Check[];
