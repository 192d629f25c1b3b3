/** A number is mL, mm, g or °C; a string carries its unit as people write it ("4 1/2 in", "1,1 l", "38 fl oz imp"). */
export type Measure = number | string;

/** The systems a report can be worded in. */
export const UNIT_SYSTEMS = ['metric', 'us', 'imperial'] as const;
export type UnitSystem = (typeof UNIT_SYSTEMS)[number];
