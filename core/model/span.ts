/** Half-open pair of UTF-16 offsets into the text exactly as pasted: `text.slice(...span)` is what the person wrote. */
export type Span = readonly [start: number, end: number];
