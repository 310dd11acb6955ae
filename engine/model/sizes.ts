import { z } from 'zod';

export const LENGTH_UNITS = ['in', 'ft', 'm', 'cm', 'mm'] as const;
const VOLUME_UNITS = ['gallon', 'quart', 'pint', 'fluid-ounce', 'liter', 'milliliter'] as const;
/** What has a size: a top, a front or a side of the plan, a whole piece, and what is only named without one. */
const THINGS = ['top', 'front', 'side', 'piece', 'loose'] as const;
export type LengthUnit = (typeof LENGTH_UNITS)[number];
export type VolumeUnit = (typeof VOLUME_UNITS)[number];
export type Thing = (typeof THINGS)[number];

/** A word or a mark as it stands beside a figure. */
const Token = z
  .string()
  .regex(/^[a-z]+[2²]?$|^[^\sa-z0-9]{1,2}$/, 'write one word in small letters, or a mark');
const tokens = z.array(Token);
const phrases = z.array(z.string().regex(/^[a-z]+(?: [a-z]+)*$/, 'write words in small letters'));
const byUnit = <U extends string>(units: readonly U[]) => z.record(z.enum(units), tokens);

/** How sizes of what is coated are told, and how far a can goes. */
export const Sizes = z
  .strictObject({
    lengths: byUnit(LENGTH_UNITS).describe('Units of length.'),
    areas: byUnit(LENGTH_UNITS).describe('The square of each in one word.'),
    volumes: byUnit(VOLUME_UNITS).describe('Units of volume.'),
    by: tokens.describe('Between two sides.'),
    square: tokens.describe('Before a unit: its square; behind one: as wide as long.'),
    dimension: tokens.describe('What a side is, behind its length.'),
    round: tokens.describe('What tells that it is round.'),
    radius: tokens.describe('That half of its width is told.'),
    to: tokens.describe('Between the ends of a range.'),
    per: tokens.describe('Between an area and the volume that covers it.'),
    covers: tokens.describe('Between a volume and the area that it covers.'),
    single: tokens.describe('Before one part.'),
    apart: tokens.describe('What keeps a number from counting a part.'),
    both: phrases.describe('Both faces are coated.'),
    one: phrases.describe('One face alone is.'),
    'of-them': phrases.describe('Behind a number: it counts what was told before.'),
    each: tokens.describe('What is told behind it holds for each of several.'),
    every: tokens.describe('Behind an area: it is that of each of several.'),
    things: byUnit(THINGS).describe('What has a size, in the singular.'),
  })
  .describe('How sizes are told.');
export type Sizes = z.infer<typeof Sizes>;
