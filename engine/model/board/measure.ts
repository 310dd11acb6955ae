import { z } from 'zod';

/** A pair low, high; both ends count. */
export const span = (least: number, most: number, what: string) =>
  z
    .tuple([z.number().min(least).max(most), z.number().min(least).max(most)])
    .refine(([low, high]) => low <= high, 'write the smaller number first')
    .describe(what);

/** Where it lies, in mm from the top left corner of the board. */
export const at = z
  .tuple([z.number().min(0), z.number().min(0)])
  .optional()
  .describe('Center in mm from the left and top edge; left out, it is placed by the seed.');

export const strength = (usual: number) =>
  z.number().min(0).max(1).default(usual).describe('How strong, 0 not there, 1 as bad as it gets.');

/** A length with a default. */
export const measure = (usual: number, least: number, most: number, what: string) =>
  z.number().min(least).max(most).default(usual).describe(what);

export const perCm2 = (usual: number, most = 60) =>
  measure(usual, 0, most, 'How many on a square centimeter.');

export const angle = z
  .number()
  .min(-90)
  .max(90)
  .default(0)
  .describe('Direction in degrees, 0 along the board (and the grain), 90 across it.');

export const tone = z
  .enum(['neutral', 'blue', 'pink', 'warm'])
  .default('neutral')
  .describe('Cast of the veil.');
