import { z } from 'zod';
import { at, measure, perCm2, span, strength } from './measure.ts';

/** Changes of color: in the film, in the paint under it, or in the wood. */
export const TINTS = [
  z.strictObject({
    kind: z.literal('ambering').describe('Even warm cast, darker where the film is thicker.'),
    strength: strength(0.6),
    drift: strength(0.15).describe('How unevenly it lies over the board, 0 even, 1 one side only.'),
    reference: z
      .enum(['none', 'strip'])
      .default('none')
      .describe('A strip that tape kept clear, to compare with.'),
  }),
  z.strictObject({
    kind: z.literal('bleed').describe('Color that rises from below.'),
    from: z
      .enum(['knot', 'tannin', 'dye', 'ink', 'smoke'])
      .default('tannin')
      .describe(
        'knot: rings; tannin: yellow-brown clouds; dye: red blotches; ink: sharp lines; smoke: runs.',
      ),
    at,
    'size-mm': measure(18, 3, 90, 'Width of a blotch or knot.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('dark-blotch').describe('Dark clouds, hard-edged in wax, soft in oil or stain.'),
    edge: z.enum(['hard', 'soft']).default('hard').describe('Hard as of dark wax, soft as of oil on pine.'),
    'size-mm': measure(16, 3, 80, 'Width of a cloud.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('color-drag').describe('Base color that a tool took along.'),
    strength: strength(0.6),
    'width-mm': measure(9, 2, 40, 'Width of a smear.'),
    tool: z
      .enum(['brush', 'cloth'])
      .default('brush')
      .describe('A brush draws one color over the other where two meet; a cloth rubs the color off.'),
    under: z
      .enum(['white', 'wood'])
      .default('white')
      .describe('The other color, or what shows where it is off.'),
  }),
  z.strictObject({
    kind: z.literal('oil-pools').describe('Thick shining puddles of oil left on a face wiped dull.'),
    'size-mm': measure(16, 3, 60, 'Size of a puddle.'),
    'height-um': measure(60, 5, 300, 'Thickness in the middle in µm.'),
    strength: strength(0.6),
  }),
  z.strictObject({
    kind: z.literal('rust').describe('Orange or blue-black points.'),
    'diameter-mm': span(0.05, 2, 'Width of a point.').default([0.1, 1]),
    'per-cm2': perCm2(5),
    color: z.enum(['orange', 'blue-black']).default('orange').describe('Blue-black on oak and walnut.'),
  }),
  z.strictObject({
    kind: z.literal('soapy-streaks').describe('Glossy or tan sticky runs that wipe off.'),
    strength: strength(0.6),
    'width-mm': measure(3, 0.5, 20, 'Width of a run.'),
    count: z.int().min(1).max(30).default(7).describe('How many runs.'),
  }),
  z.strictObject({
    kind: z.literal('sand-through').describe('Halo ring around a bare core.'),
    at,
    'diameter-mm': measure(20, 2, 80, 'Width of the place.'),
    on: z.enum(['flat', 'edge']).default('flat').describe('A spot, or worn along the lower edge.'),
    under: z.enum(['white', 'wood', 'gray']).default('wood').describe('What shows in the core.'),
  }),
] as const;
