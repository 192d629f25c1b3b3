import { SCALD_SECONDS, TWO_HANDLES } from '../data/hazards.js';
import { assertWithin } from './range.js';

/**
 * Time in which water burns adult skin, s; null under 44 °C, where it does not. Children's skin takes less.
 * Moritz and Henriques 1947, straight lines between the logarithms of the times; hotter than 68.3 °C, that row's 1 s at most.
 * @param waterC 0 to 105 °C.
 */
export function scaldSeconds(waterC: number): number | null {
  assertWithin('The temperature of the water', waterC, 0, 105, ' °C');
  if (waterC < SCALD_SECONDS[0].waterC) return null;
  const above = SCALD_SECONDS.findIndex((row) => row.waterC >= waterC);
  if (above === -1) return SCALD_SECONDS.at(-1)!.seconds;
  const high = SCALD_SECONDS[above]!;
  const low = SCALD_SECONDS[above - 1] ?? high;
  if (low === high) return high.seconds;
  return low.seconds * (high.seconds / low.seconds) ** ((waterC - low.waterC) / (high.waterC - low.waterC));
}

/**
 * Whether a pot is of the size that is lifted by two handles: over 3.75 L, or over 5 kg filled.
 * EN 12983-1:2000+A1:2004, clause 6. @param capacityMl 0 to 1 000 000. @param filledKg pot and water, 0 to 1000.
 */
export function needsTwoHandles(capacityMl: number, filledKg: number): boolean {
  assertWithin('The capacity', capacityMl, 0, 1_000_000, ' mL');
  assertWithin('The filled mass', filledKg, 0, 1000, ' kg');
  return capacityMl > TWO_HANDLES.aboveCapacityMl || filledKg > TWO_HANDLES.aboveFilledKg;
}
