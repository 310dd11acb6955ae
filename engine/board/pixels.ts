/** RGBA, four bytes a pixel, row by row. */
export type Pixels = { width: number; height: number; data: Uint8ClampedArray };
