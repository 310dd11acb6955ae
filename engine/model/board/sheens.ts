import { z } from 'zod';
import { angle, at, measure, span, strength } from './measure.ts';

/** Differences of gloss and of film, with little relief, and wear. */
export const SHEENS = [
  z.strictObject({
    kind: z.literal('lap').describe('Straight bands of double film or sheen, one tool-width apart.'),
    'width-mm': measure(40, 5, 120, 'Width of the tool: distance from lap to lap.'),
    'overlap-mm': measure(6, 1, 40, 'Width of the doubled band.'),
    'ridge-um': measure(14, 0, 80, 'Height of its edge in µm.'),
    strength: strength(0.6),
    angle,
  }),
  z.strictObject({
    kind: z.literal('spray-bands').describe('Soft bands of wet and dry spray at hand-width.'),
    'width-mm': measure(24, 5, 120, 'Distance from band to band.'),
    strength: strength(0.6),
    angle,
  }),
  z.strictObject({
    kind: z.literal('sheen-patches').describe('Sheen islands, smooth, seen at a low angle.'),
    'size-mm': measure(16, 3, 80, 'Width of an island.'),
    follows: z
      .enum(['strokes', 'cloth', 'grain'])
      .default('strokes')
      .describe('Soft clouds along the strokes; arcs of a buffing cloth; thirsty bands of the wood.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('dull-spot').describe('One low-sheen place over filler, end grain or a splash.'),
    at,
    'diameter-mm': measure(24, 2, 90, 'Width of the place.'),
    shape: z.enum(['blot', 'splash']).default('blot').describe('One place, or a splash with droplets.'),
    'rim-um': measure(0, 0, 120, 'Raised rim in µm, as of spirit damage.'),
    strength: strength(0.7),
  }),
  z.strictObject({
    kind: z.literal('burnish').describe('Glossy stroke on a matte film; smooth.'),
    at,
    'length-mm': measure(36, 3, 120, 'Length of the rub.'),
    'width-mm': measure(11, 1, 50, 'Width of the rub.'),
    strength: strength(0.7),
    angle,
  }),
  z.strictObject({
    kind: z.literal('holiday').describe('Missed place: dull sharp-edged shape with the sheen of the base.'),
    at,
    'length-mm': measure(34, 3, 120, 'Length along the strokes.'),
    'width-mm': measure(10, 1, 60, 'Width.'),
    angle,
  }),
  z.strictObject({
    kind: z.literal('streaks').describe('Fine irregular light or dull lines along the strokes.'),
    'spacing-mm': measure(2.2, 0.4, 12, 'Distance of the lines.'),
    strength: strength(0.6),
    angle,
  }),
  z.strictObject({
    kind: z.literal('scratches').describe('Straight sanding lines, curls of a sander, or lines of use.'),
    pattern: z
      .enum(['lines', 'swirls', 'use'])
      .default('lines')
      .describe('Parallel sanding lines, 3–10 mm curls, or single lines in all directions.'),
    'width-um': measure(46, 10, 800, 'Width of a groove in µm: P220 68, P320 46, P400 35, P600 26.'),
    'length-mm': span(1, 150, 'Length, or diameter of a curl.').default([8, 30]),
    'per-cm2': measure(7, 0.05, 60, 'How many on a square centimeter.'),
    strength: strength(0.8),
    angle,
  }),
  z.strictObject({
    kind: z.literal('witness-lines').describe('Faint contour edges where a coat was sanded through.'),
    'size-mm': measure(22, 4, 80, 'Width of the contours.'),
    rings: z.int().min(1).max(4).default(2).describe('How many contours.'),
    strength: strength(0.5),
  }),
  z.strictObject({
    kind: z.literal('peel').describe('Clear skin curled up from the base.'),
    at,
    'size-mm': measure(22, 4, 80, 'Width of the bare place.'),
    'lift-um': measure(400, 50, 2000, 'How high the edge stands in µm.'),
    under: z
      .enum(['base', 'white', 'wood'])
      .default('base')
      .describe('What lies bare: the color whole, or primer or wood where the paint let go, too.'),
  }),
] as const;
