import { OPEN_SURFACE_LOSS } from '../data/stoves.js';
import { assertWithin } from './range.js';

const { airC, rows } = OPEN_SURFACE_LOSS;

/**
 * Heat that an open water surface loses in still air, W/m²: by evaporation and by radiation.
 * Heat Loss from Open Water Tanks, The Engineering ToolBox, for air of 15.6 °C: straight lines between the logarithms of its
 * rows, a straight line from nothing at 15.6 °C to the first row (48.9 °C); the last row's line is carried on above 98.9 °C.
 * A rough estimate by its own account; colder air takes somewhat more.
 * @param waterC 0 to 105 °C; water colder than the air loses nothing.
 */
export function openSurfaceLossWPerM2(waterC: number): number {
  return evaporationLossWPerM2(waterC) + drySurfaceLossWPerM2(waterC);
}

/** The evaporation in `openSurfaceLossWPerM2`, W/m². @param waterC 0 to 105 °C. */
export function evaporationLossWPerM2(waterC: number): number {
  return 1000 * tableAt(waterC, EVAPORATION);
}

/** What a dry surface of that temperature loses in still air, W/m²: a lid, a wall. The same table, total less evaporation. @param waterC 0 to 105 °C. */
export function drySurfaceLossWPerM2(waterC: number): number {
  return 1000 * tableAt(waterC, DRY);
}

type Point = readonly [waterC: number, kwPerM2: number];
const EVAPORATION: readonly Point[] = rows.map((row) => [row.waterC, row.evaporation]);
const DRY: readonly Point[] = rows.map((row) => [row.waterC, row.total - row.evaporation]);

function tableAt(waterC: number, points: readonly Point[]): number {
  assertWithin('The temperature of the water', waterC, 0, 105, ' °C');
  if (waterC <= airC) return 0;
  const [firstC, first] = points[0]!;
  if (waterC <= firstC) return (first * (waterC - airC)) / (firstC - airC);
  let upper = 1;
  while (upper < points.length - 1 && points[upper]![0] < waterC) upper++;
  const [lowC, low] = points[upper - 1]!;
  const [highC, high] = points[upper]!;
  return low * (high / low) ** ((waterC - lowC) / (highC - lowC));
}
