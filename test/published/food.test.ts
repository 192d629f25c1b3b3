import { describe } from 'vitest';
import type { FoodId } from '../../core/data/food.js';
import { cookedVolumeMl, cookedYield, waterUptakeG } from '../../core/physics/food.js';
import { column, compare, type PrintedRow } from './figure.js';
import { COOKING_LOSS, UPTAKE } from './figures/cimini-2019.js';
import { CUPS, VOLUME, WEIGHED, YIELD } from './figures/usda-sr28.js';

const food = (row: PrintedRow): FoodId => row.at.food as FoodId;

describe('cooked food', () => {
  compare(YIELD, (row) => cookedYield(food(row)));
  compare(WEIGHED, (row) => column(row, 'dry/g') * cookedYield(food(row)));
  compare(VOLUME, (row) => cookedVolumeMl(food(row), column(row, 'dry/g')));
  // As many grams as fill a cup: cooked mass over cooked volume.
  compare(CUPS, (row) => (236.588 * 100 * cookedYield(food(row))) / cookedVolumeMl(food(row), 100));
});

describe('pasta, measured in the pot', () => {
  compare(UPTAKE, (row) => waterUptakeG(food(row), 1));
  compare({ ...UPTAKE, quantity: 'water taken up, with what goes off in the water' }, (row) => {
    const kept = 1 - Number(COOKING_LOSS['loss/%']) / 100;
    return (waterUptakeG(food(row), 1) + 1) * kept - 1;
  });
});
