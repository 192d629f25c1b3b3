/** Of a food: its water before and after cooking, g/100 g, and what a US cup (236.588 mL) of it weighs. USDA SR28. */
export interface Food {
  readonly dryWater: number;
  readonly cookedWater: number;
  readonly cookedGPerCup: number;
  /** g cooked from 1 g dry where that was weighed; else dry matter is kept. */
  readonly weighedYield?: number;
}

export const FOODS = {
  rice: { dryWater: 11.62, cookedWater: 68.44, cookedGPerCup: 158 },
  spaghetti: { dryWater: 9.9, cookedWater: 62.13, cookedGPerCup: 124 },
  macaroni: { dryWater: 9.9, cookedWater: 62.13, cookedGPerCup: 120 },
  'egg-noodles': { dryWater: 9.01, cookedWater: 67.73, cookedGPerCup: 160 },
  oats: { dryWater: 10.84, cookedWater: 83.61, cookedGPerCup: 234 },
  'instant-oats': { dryWater: 8.92, cookedWater: 84.03, cookedGPerCup: 234, weighedYield: 177 / 28 },
  couscous: {
    dryWater: 8.56,
    cookedWater: 72.57,
    cookedGPerCup: 157,
    weighedYield: 528 / 173,
  },
  bulgur: { dryWater: 9, cookedWater: 77.76, cookedGPerCup: 182 },
  quinoa: { dryWater: 13.28, cookedWater: 71.61, cookedGPerCup: 185 },
  lentils: { dryWater: 8.26, cookedWater: 69.64, cookedGPerCup: 198 },
  'kidney-beans': { dryWater: 11.75, cookedWater: 66.94, cookedGPerCup: 177 },
} as const satisfies Record<string, Food>;
export type FoodId = keyof typeof FOODS;

/** mL in the US cup of the food tables. */
export const US_CUP_ML = 236.5882365;
