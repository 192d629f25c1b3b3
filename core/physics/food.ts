import { FOODS, US_CUP_ML, type Food, type FoodId } from '../data/food.js';
import { assertWithin } from './range.js';

/** g cooked from 1 g dry: as weighed, else (1 − water dry)/(1 − water cooked), all dry matter kept. USDA SR28. */
export function cookedYield(food: FoodId): number {
  const { dryWater, cookedWater, weighedYield }: Food = FOODS[food];
  return weighedYield ?? (100 - dryWater) / (100 - cookedWater);
}

/**
 * Volume of a food once cooked and drained, mL: dry mass × yield ÷ bulk density cooked. USDA SR28.
 * Cooking it needs room for its water and foam besides. @param dryG 0 to 100 000 g.
 */
export function cookedVolumeMl(food: FoodId, dryG: number): number {
  assertDry(dryG);
  return (dryG * cookedYield(food) * US_CUP_ML) / FOODS[food].cookedGPerCup;
}

/** Water a food takes up in cooking, g: dry mass × (yield − 1). USDA SR28. @param dryG 0 to 100 000 g. */
export function waterUptakeG(food: FoodId, dryG: number): number {
  assertDry(dryG);
  return dryG * (cookedYield(food) - 1);
}

function assertDry(dryG: number): void {
  assertWithin('The dry food', dryG, 0, 100_000, ' g');
}
