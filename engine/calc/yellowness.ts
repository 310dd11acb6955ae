import type { Xyz } from './lab.ts';
import { answer, outside, type Result } from './quantity.ts';

/** ASTM E313-15, table 1, for D65 and the 2° observer. */
const RED = 1.2985;
const BLUE = 1.1335;

/**
 * Yellowness index of a near-white or clear sample, ASTM E313: 100 (Cx X − Cz Z) ÷ Y under D65, 2°.
 * White is 0, yellow is above. Made for near-whites only: over a dark or brown ground compare colors instead.
 */
export const yellowness = ([x, y, z]: Xyz): Result<number> =>
  outside(['luminance', y, 0.001, 1.2, '']) ?? answer((100 * (RED * x - BLUE * z)) / y);
