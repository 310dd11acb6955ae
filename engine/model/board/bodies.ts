import { z } from 'zod';
import { angle, at, measure, perCm2, span, strength } from './measure.ts';

const hue = z
  .enum(['dark', 'white', 'yellow', 'red', 'blue', 'gray', 'amber', 'clear'])
  .describe('Color of the body.');

/** Foreign bodies in and on the film. */
export const BODIES = [
  z.strictObject({
    kind: z.literal('nibs').describe('Hard points of dust with tiny halos.'),
    'diameter-mm': span(0.05, 2, 'Width of a nib.').default([0.1, 0.7]),
    'per-cm2': perCm2(5),
  }),
  z.strictObject({
    kind: z.literal('hair').describe('Long thread or bristle with a meniscus on either side.'),
    at,
    'length-mm': measure(26, 2, 120, 'Length.'),
    'thickness-um': measure(80, 15, 400, 'Thickness in µm: hair 50–100, bristle up to 250.'),
    count: z.int().min(1).max(12).default(1).describe('How many.'),
    curl: strength(0.5).describe('0 straight as a bristle, 1 curled.'),
    color: hue.default('dark'),
  }),
  z.strictObject({
    kind: z.literal('fibers').describe('Short curled lint, all one color, along the strokes.'),
    'length-mm': span(0.3, 20, 'Length.').default([1.5, 5]),
    'thickness-um': measure(35, 10, 150, 'Thickness in µm.'),
    'per-cm2': perCm2(1.2),
    color: hue.default('white'),
    angle,
  }),
  z.strictObject({
    kind: z.literal('crumbs').describe('Soft crumbs of a foam tool.'),
    'diameter-mm': span(0.2, 6, 'Width of a crumb.').default([0.6, 2.6]),
    'per-cm2': perCm2(0.6),
    color: hue.default('yellow'),
  }),
  z.strictObject({
    kind: z.literal('gel').describe('Clear or amber jelly specks and skin from the can.'),
    'diameter-mm': span(0.1, 8, 'Width of a lump.').default([0.5, 3]),
    'per-cm2': perCm2(0.9),
    color: hue.default('amber'),
    skins: z.number().min(0).max(1).default(0.3).describe('Share that are flakes of skin.'),
  }),
  z.strictObject({
    kind: z
      .literal('oil-beads')
      .describe('Glossy beads wept from pores, or scabs; none where a finger wiped a veil.'),
    'diameter-mm': span(0.1, 5, 'Width of a bead.').default([0.5, 2]),
    'per-cm2': perCm2(1.6),
    set: z.boolean().default(false).describe('Hardened to scabs.'),
  }),
  z.strictObject({
    kind: z.literal('dry-spray').describe('Dull sandy zone of half-dry spray.'),
    'grain-um': measure(80, 20, 300, 'Width of a grain in µm.'),
    spread: z
      .enum(['even', 'band', 'corner'])
      .default('band')
      .describe('All over, along a pattern edge, or in an inside corner.'),
    strength: strength(0.7),
  }),
  z.strictObject({
    kind: z.literal('spatter').describe('Round raised blobs from a spitting nozzle.'),
    'diameter-mm': span(0.1, 8, 'Width of a blob.').default([0.3, 2.4]),
    'per-cm2': perCm2(2),
    'height-um': measure(70, 5, 400, 'Height of the largest in µm.'),
  }),
  z.strictObject({
    kind: z.literal('cobwebs').describe('Fine threads of finish on or above the surface.'),
    count: z.int().min(1).max(120).default(26).describe('How many threads.'),
    'thickness-um': measure(40, 8, 200, 'Thickness in µm.'),
  }),
  z.strictObject({
    kind: z.literal('drop').describe('Drops of water on the film: they bead or soak in.'),
    at,
    'diameter-mm': measure(9, 2, 30, 'Width of the largest drop.'),
    soaks: z.boolean().default(false).describe('It soaks in and darkens instead of standing.'),
  }),
] as const;
